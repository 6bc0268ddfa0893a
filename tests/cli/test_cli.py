"""The command line as a user has it: what is printed, exit codes, faults as sentences."""

import json
import os
import shlex
import subprocess
import sys
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from quailsched.cli import WORDS, main
from quailsched.session.farms import make_farm

TODAY = date(2027, 4, 6)
ROOT = Path(__file__).parent.parent.parent


@pytest.fixture
def example(tmp_path: Path) -> Path:
    path = tmp_path / "x.quail"
    assert main(["example", str(path)], TODAY) == 0
    return path


@pytest.fixture(autouse=True)
def _no_screen_and_an_empty_home(monkeypatch: pytest.MonkeyPatch, tmp_path_factory: pytest.TempPathFactory) -> None:
    for name in ("XDG_DATA_HOME", "XDG_CONFIG_HOME"):
        monkeypatch.setenv(name, str(tmp_path_factory.mktemp("home")))
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        monkeypatch.delenv(name, raising=False)


def run(capsys: pytest.CaptureFixture[str], *words: str) -> tuple[int, str, str]:
    capsys.readouterr()
    code = main(list(words), TODAY)
    out, err = capsys.readouterr()
    return code, out, err


def json_of(capsys: pytest.CaptureFixture[str], *words: str) -> tuple[int, Any]:
    code, out, _ = run(capsys, *words, "--json")
    return code, json.loads(out)


def test_clashes_as_json(example: Path, capsys: pytest.CaptureFixture[str]) -> None:
    code, found = json_of(capsys, "clashes", str(example))
    assert code == 1
    assert list(found) == ["farm", "from", "clashes"]
    assert (found["farm"], found["from"]) == ("Pebble Bank", "2027-04-06")
    keys = ["kind", "place", "batches", "first", "last", "worst", "need", "have", "unit", "birds_over", "sentence"]
    keys += ["severity", "accepted"]
    assert all(list(clash) == keys for clash in found["clashes"])
    firsts = [clash["first"] for clash in found["clashes"]]
    assert firsts == sorted(firsts)
    assert all(c["first"] <= c["worst"] <= c["last"] and c["last"] >= "2027-04-06" for c in found["clashes"])
    assert len({clash["kind"] for clash in found["clashes"]}) >= 4


def test_clashes_from_a_day_on(example: Path, capsys: pytest.CaptureFixture[str]) -> None:
    _, found = json_of(capsys, "clashes", str(example), "--from", "2027-07-01")
    assert found["from"] == "2027-07-01"
    assert found["clashes"]
    assert all(clash["last"] >= "2027-07-01" for clash in found["clashes"])


def test_no_clash_is_exit_code_0(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    make_farm(tmp_path / "new.quail", "Thistle Yard")
    code, out, _ = run(capsys, "clashes", str(tmp_path / "new.quail"))
    assert (code, out) == (0, "Thistle Yard: no clash from 2027-04-06 on.\n")


def test_clashes_in_words_say_everything_that_json_says(example: Path, capsys: pytest.CaptureFixture[str]) -> None:
    _, found = json_of(capsys, "clashes", str(example))
    code, out, _ = run(capsys, "clashes", str(example))
    assert code == 1
    assert all(clash["sentence"] in out for clash in found["clashes"])


def test_ways_out_of_one_clash(example: Path, capsys: pytest.CaptureFixture[str]) -> None:
    _, clashes = json_of(capsys, "clashes", str(example))
    number = next(n for n, clash in enumerate(clashes["clashes"], 1) if clash["kind"] == "cleanout")
    code, found = json_of(capsys, "ways-out", str(example), "--clash", str(number))
    assert code == 0
    (answer,) = found["clashes"]
    assert answer["number"] == number
    assert {key: answer[key] for key in clashes["clashes"][number - 1]} == clashes["clashes"][number - 1]
    assert answer["ways_out"][0]["sentence"] == "Set Gorse 1 day later, on 24 Jun; all of its days move along."
    _, out, _ = run(capsys, "ways-out", str(example), "--clash", str(number))
    assert "- Set Gorse 1 day later" in out
    code, _, err = run(capsys, "ways-out", str(example), "--clash", "999")
    assert code == 2
    assert "--clash: 999 cannot be used; a number from 1 to" in err


def test_the_next_set_as_json(example: Path, capsys: pytest.CaptureFixture[str]) -> None:
    code, found = json_of(capsys, "next-set", str(example), "--days", "3")
    assert code == 0
    assert list(found) == ["farm", "days", "best"]
    day = found["days"][0]
    assert day["date"] == "2027-04-06"
    assert {"max_eggs", "limit", "route", "expected_chicks", "hatch_date"} <= set(day)
    assert set(day["limit"]) == {"kind", "place", "from"}
    assert day["hatch_date"] == "2027-04-23"  # day 17


def test_the_next_set_of_a_farm_without_egg_places(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    make_farm(tmp_path / "new.quail", "Thistle Yard")
    code, out, _ = run(capsys, "next-set", str(tmp_path / "new.quail"))
    assert (code, out) == (0, "Thistle Yard: there is no place for eggs. Add a setter or a cabinet first.\n")


def test_when_does_the_brooder_free_up_in_one_line(example: Path, capsys: pytest.CaptureFixture[str]) -> None:
    # Aster: set on 1 March, in the tub to day 46 = 16 April, 3 days of clean-out.
    _, out, _ = run(capsys, "places", str(example))
    line = next(line for line in out.splitlines() if "Tub brooder (" in line)
    assert "53 birds of Aster until 16 Apr; free from 19 Apr (3 days of clean-out counted)" in line
    _, found = json_of(capsys, "places", str(example), "--weeks", "5")
    tub = next(place for place in found["places"] if place["place"] == "Tub brooder")
    assert (tub["free_from"], tub["next"]) == ("2027-04-19", {"day": "2027-04-30", "batches": ["Clover"]})
    assert tub["now"] == [{"batch": "Aster", "part": "all", "number": 53, "unit": "birds", "until": "2027-04-16"}]
    assert [week["start"] for week in tub["weeks"]][:2] == ["2027-04-06", "2027-04-13"]
    assert len(tub["weeks"]) == 5


def test_chores_of_the_coming_days(example: Path, capsys: pytest.CaptureFixture[str]) -> None:
    code, found = json_of(capsys, "chores", str(example), "--days", "3")
    assert code == 0
    assert {chore["day"] for chore in found["chores"]} <= {"2027-04-06", "2027-04-07", "2027-04-08"}
    lockdown = found["chores"][0]
    assert (lockdown["kind"], lockdown["batch"], lockdown["place"]) == ("lockdown", "Bracken", "Hatching tray")
    assert lockdown["who"] == ["Ann", "Leo"]
    _, out, _ = run(capsys, "chores", str(example), "--days", "3")
    assert all(chore["title"] in out for chore in found["chores"])
    assert "Caution: Heat lamps start fires" in out


def test_a_calendar_is_written_and_again_the_same(
    example: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "chores.ics"
    code, told, _ = run(capsys, "calendar", str(example), "--out", str(out))
    assert code == 0
    first = out.read_bytes()
    assert f"{first.count(b'BEGIN:VEVENT')} chores" in told
    run(capsys, "calendar", str(example), "--out", str(out))
    assert out.read_bytes() == first


def test_figures_with_their_sources(example: Path, capsys: pytest.CaptureFixture[str]) -> None:
    code, out, _ = run(capsys, "figures", "coturnix")
    assert code == 0
    assert "Romao" in out
    assert "common practice" in out
    _, found = json_of(capsys, "figures")
    assert "Bobwhite" in json.dumps(found)
    assert run(capsys, "figures", "--farm", str(example))[0] == 0


def test_export_import_export_gives_the_same_bytes(
    example: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    run(capsys, "calendar", str(example), "--out", str(tmp_path / "c.ics"))
    one, two, again = tmp_path / "1.json", tmp_path / "2.json", tmp_path / "again.quail"
    assert run(capsys, "export", str(example), str(one))[0] == 0
    assert run(capsys, "import", str(one), str(again))[0] == 0
    assert run(capsys, "export", str(again), str(two))[0] == 0
    assert one.read_bytes() == two.read_bytes()
    assert run(capsys, "clashes", str(again))[1] == run(capsys, "clashes", str(example))[1]


def test_every_fault_of_a_document_is_told_and_no_file_is_left(
    example: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    document = tmp_path / "bad.json"
    run(capsys, "export", str(example), str(document))
    plain = json.loads(document.read_text(encoding="utf-8"))
    plain["batches"][0]["number"] = -4
    plain["batches"][1]["start"] = "2027-02-30"
    plain["batches"][2]["stays"][1]["from_day"] = 16
    plain["places"][0]["colour"] = "red"
    plain["places"][1]["egg_places"] = "many"
    plain["people"][1]["name"] = plain["people"][0]["name"]
    document.write_text(json.dumps(plain), encoding="utf-8")
    target = tmp_path / "bad.quail"
    code, out, err = run(capsys, "import", str(document), str(target))
    assert (code, out) == (2, "")
    for words in ("-4", "2027-02-30", "leaves a gap: day 15 is accepted", "colour", "“many”", "another person has it"):
        assert words in err
    assert len(err.splitlines()) == 6
    assert sorted(p.name for p in tmp_path.iterdir()) == ["bad.json", "x.quail"]


def test_an_existing_file_is_never_overwritten(example: Path, capsys: pytest.CaptureFixture[str]) -> None:
    before = example.read_bytes()
    code, _, err = run(capsys, "example", str(example))
    assert code == 2
    assert "is there already and was left as it is" in err
    assert example.read_bytes() == before


@pytest.mark.parametrize(
    ("words", "sentence"),
    [
        (["clashes"], "The following arguments are required: FILE. Try: quailsched clashes --help"),
        (["clashes", "no.quail"], "no.quail"),
        (["clashes", "x.quail", "--from", "2027-02-30"], "“2027-02-30” is no day; a day like 2027-04-06 is accepted"),
        (["chores", "x.quail", "--days", "0"], "“0” cannot be used; a whole number from 1 to 400 is accepted"),
        (["chores", "x.quail", "--days", "ten"], "“ten” cannot be used; a whole number from 1 to 400 is accepted"),
        (["figures", "goose"], "“goose” is no kind; one of coturnix, coturnix-heavy, bobwhite, button is accepted"),
        (["hatch", "x.quail"], "“hatch” is no word of the program; one of example, clashes, ways-out, next-set"),
        (["clashes", "x.quail", "--json=3"], "--json: “3” cannot be used; it is accepted without a value"),
        (["chores", "x.quail", "--days"], "--days: nothing is there; a value after it is accepted"),
        (["chores", "x.quail", "b", "c"], "“b c” cannot be used; only what the help tells is accepted here"),
        (["no-such-farm.quail"], "neither a farm file that exists nor a word of the program"),
        (["calendar", "x.quail"], "--out"),
        (["calendar", "x.quail", "--out", "no/such/folder/c.ics"], "c.ics"),
        (["export", "x.quail", "no/such/folder/x.json"], "x.json"),
        (["import", "no.json", "y.quail"], "no.json"),
        (["clashes", "text.quail"], "text.quail"),
        (["clashes", "."], "cannot be opened: it is not a file"),
    ],
)
def test_bad_words_are_told_in_a_sentence(
    example: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], words: list[str], sentence: str
) -> None:
    monkeypatch.chdir(example.parent)
    Path("text.quail").write_text("This is no farm.\n" * 99)
    before = sorted(p.name for p in Path().iterdir())
    code, out, err = run(capsys, *words)
    assert code == 2
    assert sentence in err
    assert out == ""
    assert "Traceback" not in err
    assert sorted(p.name for p in Path().iterdir()) == before


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], max_examples=60)
@given(
    words=st.lists(
        st.one_of(
            st.sampled_from(
                [*WORDS, "--json", "--from", "--days", "--out", "--help", "x.quail", "2027-04-06", "7", "-1"]
            ),
            st.text(st.characters(codec="ascii", exclude_characters="/\\\0"), max_size=6),
        ),
        min_size=1,
        max_size=5,
    )
)
def test_no_words_whatever_end_in_a_traceback(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], words: list[str]
) -> None:
    monkeypatch.chdir(tmp_path)
    if not Path("x.quail").exists():
        make_farm(Path("x.quail"), "Thistle Yard")
    capsys.readouterr()
    try:
        code = main(words, TODAY)
    except SystemExit as end:  # --help and --version end this way
        code = end.code if isinstance(end.code, int) else 0
    _, err = capsys.readouterr()
    assert code in (0, 1, 2)
    assert (code == 2) == bool(err.strip())
    assert "Traceback" not in err


def test_without_a_screen_the_same_job_is_done_in_words(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path))
    code, out, err = run(capsys)
    assert (code, err) == (0, "")
    assert out.startswith("There is no screen here")
    assert "Tub brooder is too small" in out
    assert "Tub brooder (1.30 m²)" in out
    assert "[ ] Stop turning the eggs of Bracken" in out
    written = tmp_path / "quailsched" / "Pebble Bank.ics"
    assert str(written) in out
    assert written.read_bytes().startswith(b"BEGIN:VCALENDAR")


def test_an_example_that_nobody_changed_moves_with_the_day(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path))
    capsys.readouterr()
    assert main([], TODAY) == 0
    assert main([], date(2027, 9, 1)) == 0
    assert "Pebble Bank: places on 2027-09-01" in capsys.readouterr().out


def program(*words: str, **more: Any) -> subprocess.CompletedProcess[str]:
    clean = {k: v for k, v in os.environ.items() if k not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")}
    command = [sys.executable, "-P", "-m", "quailsched", *words]
    return subprocess.run(command, cwd=ROOT, env={**clean, "PYTHONPATH": str(ROOT)}, text=True, timeout=120, **more)


def test_as_a_program_of_its_own(example: Path) -> None:
    done = program("clashes", str(example), "--json", "--from", "2027-04-06", capture_output=True)
    assert done.returncode == 1
    assert json.loads(done.stdout)["farm"] == "Pebble Bank"
    assert program("clashes", "nothing.quail", capture_output=True).returncode == 2
    assert program("--version", capture_output=True).stdout.startswith("Quailsched ")


def test_a_pager_that_closes_early_is_no_fault(example: Path) -> None:
    program = f"{shlex.quote(sys.executable)} -P -m quailsched"
    words = f"{program} chores {shlex.quote(str(example))} --from 2027-04-06 --days 400 | head -1"
    env = {**os.environ, "PYTHONPATH": str(ROOT)}
    done = subprocess.run(["bash", "-c", words], cwd=ROOT, env=env, capture_output=True, text=True, timeout=120)
    assert done.stderr == ""
    assert "chores in 400 days" in done.stdout


def test_no_command_needs_qt_and_reading_needs_no_orm(example: Path) -> None:
    code = (
        "import sys; from quailsched.cli import main; "
        f"main(['clashes', {str(example)!r}]); main(['places', {str(example)!r}]); "
        "print(sorted(m for m in sys.modules if m in ('PySide6', 'sqlmodel', 'sqlalchemy', 'icalendar')))"
    )
    done = subprocess.run(
        [sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True, timeout=120, check=True
    )
    assert done.stdout.splitlines()[-1] == "[]"


def test_a_fault_of_the_program_is_a_sentence_with_a_code_of_its_own(
    example: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    def broken(*_: object) -> int:
        raise IndexError("tuple index out of range")

    monkeypatch.setattr("quailsched.commands.clashes", broken)
    code, out, err = run(capsys, "clashes", str(example))
    assert (code, out) == (70, "")  # EX_SOFTWARE; 1 would say that there are clashes
    kept = Path(os.environ["XDG_DATA_HOME"]) / "quailsched" / "faults.txt"
    assert err == f"Something went wrong inside the program; what was saved stays saved. The details are in {kept}.\n"
    assert "tuple index out of range" in kept.read_text(encoding="utf-8")
