"""``next-set --want``: answers, exit codes, and sentences for what cannot be used."""

from __future__ import annotations

import json
from datetime import date
from pathlib import Path

import pytest

from quailsched.cli import main
from quailsched.edits.records import put
from quailsched.session.farms import make_farm
from tests.builders import ARK, BROODER, HATCHER, PEN, SETTER

TODAY = date(2027, 4, 6)


@pytest.fixture
def yard(tmp_path: Path) -> str:
    path = tmp_path / "yard.quail"
    opened = make_farm(path, "Thistle Yard")
    for record in (SETTER, HATCHER, BROODER, PEN, ARK):
        opened.apply(put(opened.farm, record))
    return str(path)


def test_days_and_numbers_for_hens_by_a_day(yard: str, capsys: pytest.CaptureFixture[str]) -> None:
    words = ["next-set", yard, "--want", "hens:15", "--by", "2027-07-24"]
    assert main(words, TODAY) == 0
    told = capsys.readouterr().out
    assert "15 hens in lay by Sat 24 Jul 2027, in 90% of hatches or more" in told
    assert main([*words, "--json"], TODAY) == 0
    found = json.loads(capsys.readouterr().out)
    assert found["want"] == {"what": "hens", "number": 15, "by": "2027-07-24", "sure": 0.9}
    assert all(day["max_eggs"] >= found["eggs"] for day in found["days"])
    assert {stay["part"] for day in found["days"] for stay in day["route"]} == {"all", "hens", "cocks"}


def test_without_a_word_120_days_are_tried(yard: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["next-set", yard, "--json"], TODAY) == 0
    assert len(json.loads(capsys.readouterr().out)["days"]) == 120


@pytest.mark.parametrize(
    ("want", "told"),
    [("started:900", "Closest: "), ("hens:9999", "Not even 3,000 eggs are that sure")],
)
def test_what_cannot_be_reached_says_why_and_ends_with_one(
    yard: str, capsys: pytest.CaptureFixture[str], want: str, told: str
) -> None:
    assert main(["next-set", yard, "--want", want, "--by", "2027-09-30"], TODAY) == 1
    assert told in capsys.readouterr().out


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (["--want", "cows:3", "--by", "2027-09-30"], "“cows:3” cannot be used; what and how many is accepted"),
        (["--want", "hens:0", "--by", "2027-09-30"], "“hens:0” cannot be used"),
        (["--want", "hens:3"], "--by: it is missing; --want and --by are accepted together"),
        (["--by", "2027-09-30"], "--want: it is missing"),
        (["--want", "hens:3", "--by", "soon"], "“soon” is no day"),
        (["--want", "hens:3", "--by", "2027-09-30", "--sure", "100"], "a whole number from 1 to 99 is accepted"),
        (["--sure", "90"], "--sure: 90 cannot be used; it is accepted together with --want and --by."),
        (["--want", "hens:3", "--by", "2027-09-30", "--days", "5"], "--days: 5 cannot be used; with --want every day"),
    ],
)
def test_what_cannot_be_used_is_told_in_a_sentence(
    yard: str, capsys: pytest.CaptureFixture[str], words: list[str], told: str
) -> None:
    assert main(["next-set", yard, *words], TODAY) == 2
    assert told in capsys.readouterr().err
