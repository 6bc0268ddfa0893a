"""The example that a first start shows."""

from __future__ import annotations

from datetime import date, timedelta
from pathlib import Path

import pytest

from quailsched.edits.batches import shift
from quailsched.session.farms import farm_ahead, home_example, make_farm
from quailsched.session.faults import StoreError
from quailsched.session.paths import example_path, remember

TODAY = date(2027, 4, 6)  # a Tuesday


@pytest.fixture(autouse=True)
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    for name in ("DATA", "CONFIG"):
        monkeypatch.setenv(f"XDG_{name}_HOME", str(tmp_path))


@pytest.mark.parametrize(("days", "is_kept"), [(-2, False), (-1, True), (0, True), (5, True), (6, False), (400, False)])
def test_an_example_that_nobody_changed_is_made_anew_in_each_week(days: int, is_kept: bool) -> None:
    first = home_example(TODAY)
    later = home_example(TODAY + timedelta(days=days))
    assert (later.plan.settings.id == first.plan.settings.id) == is_kept
    assert (later.plan.batches[0].start == first.plan.batches[0].start) == is_kept


def test_one_that_was_changed_is_kept() -> None:
    first = home_example(TODAY)
    batch = first.plan.batches[0]
    first.apply(shift(first.plan, batch.id, 1))
    assert home_example(TODAY + timedelta(days=400)).plan == first.plan


# what the window shows, before there is one


def test_the_farm_of_last_time_is_shown_again(tmp_path: Path) -> None:
    assert farm_ahead(None, TODAY) is None
    ours = make_farm(tmp_path / "ours.quail", "Pebble Bank")
    remember(last_farm=str(ours.file.path.absolute()))
    again = farm_ahead(None, TODAY + timedelta(days=400))
    assert again is not None
    assert again.plan == ours.plan


def test_an_example_of_last_time_is_shown_again_in_its_week_alone() -> None:
    first = home_example(TODAY)
    remember(last_farm=str(example_path().absolute()))
    again = farm_ahead(None, TODAY + timedelta(days=5))
    assert again is not None
    assert again.plan == first.plan
    assert farm_ahead(None, TODAY + timedelta(days=6)) is None
    first.apply(shift(first.plan, first.plan.batches[0].id, 1))
    assert farm_ahead(None, TODAY + timedelta(days=6)) is not None


def test_a_farm_that_cannot_be_opened_is_told_where_it_was_asked_for(tmp_path: Path) -> None:
    broken = tmp_path / "broken.quail"
    broken.write_text("no farm", encoding="utf-8")
    remember(last_farm=str(broken))
    assert farm_ahead(None, TODAY) is None  # told in the window, in its language
    with pytest.raises(StoreError, match=r"broken\.quail"):
        farm_ahead(broken, TODAY)
