"""Clashes on the command line: those that stop the plan, those to watch, those accepted."""

import json
from datetime import date
from pathlib import Path
from typing import Any

import pytest

from quailsched.cli import main
from quailsched.edits.acceptances import accept
from quailsched.edits.records import put
from quailsched.farm.records import Batch, Leaving, Origin, Place, Role, Stay
from quailsched.season.clash import Clash
from quailsched.season.clashes import clashes_of
from quailsched.session.farms import make_farm, new_id, open_farm

TODAY = date(2027, 4, 6)


def run(capsys: pytest.CaptureFixture[str], *words: str) -> tuple[int, str]:
    capsys.readouterr()
    code = main(list(words), TODAY)
    return code, capsys.readouterr().out


def json_of(capsys: pytest.CaptureFixture[str], *words: str) -> tuple[int, Any]:
    code, out = run(capsys, *words, "--json")
    return code, json.loads(out)


@pytest.fixture
def example(tmp_path: Path) -> Path:
    path = tmp_path / "x.quail"
    assert main(["example", str(path)], TODAY) == 0
    return path


@pytest.fixture
def few(tmp_path: Path) -> Path:
    """Ten grown birds for five days in a pen that is calm from 22 on: one clash, to watch."""
    path = tmp_path / "few.quail"
    opened = make_farm(path, "Thistle Yard")
    pen = Place(new_id(), "Pen", Role.PEN, floor_cm2=60_000)
    opened.apply(put(opened.farm, pen))
    stays = (Stay(pen.id, 0, 5, leaving=Leaving.SOLD),)
    aster = Batch(new_id(), "Aster", "coturnix", Origin.BOUGHT_BIRDS, TODAY, 10, stays, age_days=30)
    opened.apply(put(opened.farm, aster))
    return path


def accept_kind(path: Path, kind: str, reason: str) -> Clash:
    """Accept the one clash of ``kind`` in the farm of ``path``."""
    opened = open_farm(path)
    (clash,) = (one for one in clashes_of(opened.season, TODAY) if one.kind == kind)
    opened.apply(accept(opened.farm, clash, reason, new_id))
    return clash


def test_each_clash_stands_under_what_it_is(example: Path, capsys: pytest.CaptureFixture[str]) -> None:
    _, found = json_of(capsys, "clashes", str(example))
    _, out = run(capsys, "clashes", str(example))
    stopping, watched = out.split("To watch (4)\n")
    assert "\nStop the plan (14)\n" in stopping
    for number, clash in enumerate(found["clashes"], 1):
        part = {"stops the plan": stopping, "watch": watched}[clash["severity"]]
        assert f"  {number:>2}. " in part
        assert clash["sentence"] in part
        assert clash["accepted"] is None


def test_an_accepted_clash_stays_listed_with_its_reason_and_its_number(
    example: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    _, before = json_of(capsys, "clashes", str(example))
    clash = accept_kind(example, "crowd", "Low cover all along the north side")
    code, after = json_of(capsys, "clashes", str(example))
    number = next(n for n, one in enumerate(after["clashes"]) if one["kind"] == "crowd")
    expected = [{**one, "accepted": after["clashes"][n]["accepted"]} for n, one in enumerate(before["clashes"])]
    assert (code, after["clashes"]) == (1, expected)  # others are still open
    assert [n for n, one in enumerate(after["clashes"]) if one["accepted"]] == [number]
    _, out = run(capsys, "clashes", str(example))
    accepted = out.split("Accepted (1)\n")[1]
    assert clash.sentence in accepted
    assert f"{number + 1}. 18 – 30 Jun" in accepted
    assert accepted.endswith("Accepted: Low cover all along the north side\n")


def test_the_exit_code_is_0_once_every_clash_is_accepted(few: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(capsys, "clashes", str(few))[0] == 1
    accept_kind(few, "calm", "Sold on Sunday")
    code, out = run(capsys, "clashes", str(few))
    assert code == 0
    assert out.startswith("Thistle Yard: 1 clash from 2027-04-06 on\n\nAccepted (1)\n")


def test_a_grown_clash_comes_back(few: Path, capsys: pytest.CaptureFixture[str]) -> None:
    accept_kind(few, "calm", "Sold on Sunday")
    opened = open_farm(few)
    (aster,) = opened.farm.batches
    longer = Stay(aster.stays[0].place_id, 0, 6, leaving=Leaving.SOLD)
    opened.apply(put(opened.farm, Batch(aster.id, "Aster", aster.kind, aster.origin, TODAY, 10, (longer,), 30)))
    code, found = json_of(capsys, "clashes", str(few))
    assert (code, found["clashes"][0]["accepted"]) == (1, None)


def test_ways_out_leave_accepted_ones_out_but_answer_to_their_number(
    example: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    accept_kind(example, "cleanout", "The litter is dry")
    _, clashes = json_of(capsys, "clashes", str(example))
    number = next(n for n, one in enumerate(clashes["clashes"], 1) if one["kind"] == "cleanout")
    _, found = json_of(capsys, "ways-out", str(example))
    every = range(1, len(clashes["clashes"]) + 1)
    assert [answer["number"] for answer in found["clashes"]] == [n for n in every if n != number]
    code, found = json_of(capsys, "ways-out", str(example), "--clash", str(number))
    assert code == 0
    (answer,) = found["clashes"]
    assert (answer["number"], answer["accepted"]) == (number, "The litter is dry")
    assert answer["ways_out"][0]["sentence"].startswith("Set Gorse 1 day later")


def test_ways_out_where_all_is_accepted(few: Path, capsys: pytest.CaptureFixture[str]) -> None:
    accept_kind(few, "calm", "Sold on Sunday")
    code, out = run(capsys, "ways-out", str(few))
    told = "Thistle Yard: no clash but accepted ones from 2027-04-06 on, so no way out is needed.\n"
    assert (code, out) == (0, told)
