"""What is written where: a farm, notes or a device are never replaced; shapes of JSON; odd terminals and days."""

import json
import os
import subprocess
import sys
from datetime import date
from pathlib import Path
from typing import Any

import pytest

from quailsched.cli import main
from quailsched.session.farms import make_farm, open_farm

TODAY = date(2027, 4, 6)
ROOT = Path(__file__).parent.parent.parent


@pytest.fixture
def example(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        monkeypatch.delenv(name, raising=False)
    path = tmp_path / "x.quail"
    assert main(["example", str(path)], TODAY) == 0
    return path


def run(capsys: pytest.CaptureFixture[str], *words: str) -> tuple[int, str, str]:
    capsys.readouterr()
    code = main(list(words), TODAY)
    out, err = capsys.readouterr()
    return code, out, err


def give(word: str, farm: Path, to: Path) -> list[str]:
    return [word, str(farm), *(["--out"] if word == "calendar" else []), str(to)]


@pytest.mark.parametrize("word", ["calendar", "export"])
def test_the_farm_itself_is_never_replaced(word: str, example: Path, capsys: pytest.CaptureFixture[str]) -> None:
    before = example.read_bytes()
    code, out, err = run(capsys, *give(word, example, example))
    assert (code, out) == (2, "")
    assert err.startswith("x.quail is there already, is no ")
    assert example.read_bytes() == before


@pytest.mark.parametrize("word", ["calendar", "export"])
def test_nor_by_way_of_a_link_nor_another_farm_nor_notes(
    word: str, example: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    link, other, notes = tmp_path / "link", tmp_path / "other.quail", tmp_path / "notes.txt"
    link.symlink_to(example)
    make_farm(other, "Thistle Yard")
    notes.write_text("Feed is low.\n")
    before = {path: path.read_bytes() for path in (example, other, notes)}
    for target in (link, other, notes):
        assert run(capsys, *give(word, example, target))[0] == 2
    assert {path: path.read_bytes() for path in before} == before
    assert link.is_symlink()


@pytest.mark.parametrize(
    "kept", ['{"notes": "Feed is low."}\n', "{}\n", '{"format": "another farm", "version": 2}\n', "[1, 2]\n"]
)
def test_another_json_file_is_not_replaced_by_an_export(
    kept: str, example: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    target = tmp_path / "settings.json"
    target.write_text(kept)
    code, _, err = run(capsys, "export", str(example), str(target))
    assert (code, target.read_text()) == (2, kept)
    assert err == (
        "settings.json is there already, is no exported farm, and was left as it is; another file name is accepted.\n"
    )


def test_an_export_is_replaced_by_the_next_one(
    example: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    target = tmp_path / "farm.json"
    assert run(capsys, "export", str(example), str(target))[0] == 0
    first = target.read_bytes()
    target.write_bytes(first.replace(b"Clover", b"Lupin"))
    assert run(capsys, "export", str(example), str(target))[0] == 0
    assert target.read_bytes() == first


@pytest.mark.parametrize(
    ("word", "begins"), [("calendar", b"BEGIN:VCALENDAR"), ("export", b'{\n  "format": "quailsched farm"')]
)
def test_an_older_file_of_the_same_sort_and_an_empty_one_are_replaced(
    word: str, begins: bytes, example: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    for old in (b"", begins + b" old"):
        target = tmp_path / "out"
        target.write_bytes(old)
        assert run(capsys, *give(word, example, target))[0] == 0
        assert target.read_bytes().startswith(begins)
        assert len(target.read_bytes()) > 1_000


def test_a_refused_calendar_leaves_no_trace_in_the_farm(
    example: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    notes = tmp_path / "notes.txt"
    notes.write_text("Feed is low.\n")
    run(capsys, *give("calendar", example, notes))
    assert open_farm(example).file.published() == {}


@pytest.mark.parametrize("to", ["", "."])
@pytest.mark.parametrize("word", ["calendar", "export"])
def test_a_folder_is_refused(
    word: str, to: str, example: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(example.parent)
    code, _, err = run(capsys, *give(word, example, Path())[:-1], to)
    assert code == 2
    assert "it is a folder" in err


@pytest.mark.parametrize("word", ["calendar", "export"])
def test_what_is_no_plain_file_is_refused_and_stays(
    word: str, example: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    # A pipe of our own stands for a device such as /dev/null, which a failing test would replace for everybody.
    pipe = tmp_path / "pipe"
    os.mkfifo(pipe)
    code, _, err = run(capsys, *give(word, example, pipe))
    assert code == 2
    assert "it is no plain file" in err
    assert pipe.is_fifo()


def test_a_farm_named_like_a_calendar_survives_a_start_without_a_screen(
    example: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    farm = example.rename(tmp_path / "farm.ics")
    assert run(capsys, str(farm))[0] == 0
    assert farm.read_bytes().startswith(b"SQLite format 3")
    assert (tmp_path / "farm.ics.ics").read_bytes().startswith(b"BEGIN:VCALENDAR")


@pytest.mark.parametrize("word", ["clashes", "places", "chores", "calendar", "ways-out", "next-set"])
@pytest.mark.parametrize("day", ["0001-01-01", "1989-12-31", "2200-01-01", "9999-12-31"])
def test_a_day_out_of_all_time_is_refused(
    word: str, day: str, example: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    words = give(word, example, tmp_path / "c.ics") if word == "calendar" else [word, str(example)]
    code, _, err = run(capsys, *words, "--from", day)
    assert code == 2
    assert f"“{day}” cannot be used; a day from 1990-01-01 to 2199-12-31 is accepted" in err


@pytest.mark.parametrize("day", ["1990-01-01", "2199-12-31"])
def test_the_first_and_last_day_are_answered(
    day: str, example: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    for word in ("clashes", "places", "chores", "next-set"):
        assert run(capsys, word, str(example), "--from", day)[0] in (0, 1)
    assert run(capsys, *give("calendar", example, tmp_path / "c.ics"), "--from", day)[0] == 0


def test_no_example_is_made_whose_batches_would_be_out_of_all_time(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    code, _, err = run(capsys, "example", str(tmp_path / "old.quail"), "--from", "1990-01-01")
    assert code == 2
    assert "batch Aster, start: “1989-11-27” cannot be used" in err
    assert list(tmp_path.iterdir()) == []


def test_names_and_numbers_too_long_are_told(example: Path, capsys: pytest.CaptureFixture[str]) -> None:
    code, _, err = run(capsys, "a" * 300)
    assert code == 2
    assert "neither a farm file that exists" in err
    code, _, err = run(capsys, "chores", str(example), "--days", "9" * 5_000)
    assert code == 2
    assert "a whole number from 1 to 400 is accepted" in err


def test_a_terminal_without_our_signs_still_gets_its_answer(example: Path) -> None:
    done = subprocess.run(
        [sys.executable, "-P", "-m", "quailsched", "clashes", str(example), "--from", "2027-04-06"],
        cwd=ROOT, env={**os.environ, "PYTHONPATH": str(ROOT), "PYTHONIOENCODING": "ascii"},
        capture_output=True, timeout=120,
    )  # fmt: skip
    assert (done.returncode, done.stderr) == (1, b"")
    assert b"16 ? 19 Apr" in done.stdout


def json_of(capsys: pytest.CaptureFixture[str], *words: str) -> Any:
    return json.loads(run(capsys, *words, "--json")[1])


def test_places_as_json(example: Path, capsys: pytest.CaptureFixture[str]) -> None:
    found = json_of(capsys, "places", str(example))
    assert list(found) == ["farm", "from", "places"]
    keys = ["place", "role", "room", "unit", "now", "free_from", "next", "weeks"]
    assert all(list(place) == keys for place in found["places"])
    assert all(len(place["weeks"]) == 12 for place in found["places"])
    assert all(list(week) == ["start", "room_left"] for place in found["places"] for week in place["weeks"])
    assert {place["unit"] for place in found["places"]} == {"eggs", "cm2"}


def test_chores_as_json(example: Path, capsys: pytest.CaptureFixture[str]) -> None:
    found = json_of(capsys, "chores", str(example), "--days", "60")
    assert list(found) == ["farm", "from", "days", "chores"]
    keys = ["key", "kind", "day", "title", "how", "batch", "place", "who", "caution", "urgent", "needs_grown_up"]
    keys += ["done_on", "put_off_from", "given_to"]
    assert all(list(chore) == keys for chore in found["chores"])
    days = [chore["day"] for chore in found["chores"]]
    assert days == sorted(days)
    assert "2027-04-06" <= days[0] <= days[-1] < "2027-06-05"


def test_room_left_is_in_the_unit_of_its_place(example: Path, capsys: pytest.CaptureFixture[str]) -> None:
    _, out, _ = run(capsys, "places", str(example))
    assert "cm²" not in out
    assert "0.28 m²" in out  # of the tub's 1.30
