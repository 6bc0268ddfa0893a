"""The example that a first start shows."""

from __future__ import annotations

from datetime import date, timedelta
from pathlib import Path

import pytest

from quailsched.edits.batches import shift
from quailsched.session.farms import home_example

TODAY = date(2027, 4, 6)  # a Tuesday


@pytest.fixture(autouse=True)
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path))


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
