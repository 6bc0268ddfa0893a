"""Records from tables and as tables, on the command line."""

import json
from datetime import date
from pathlib import Path

import pytest

from quailsched.cli import main
from quailsched.session.farms import open_farm

TODAY = date(2027, 4, 6)
HATCHES = "batch,set on,eggs set,clear,quit,hatched\nAutumn,2026-10-03,120,12,8,84\nWinter,2026-12-03,60,1,2,3\n"


@pytest.fixture
def example(tmp_path: Path) -> Path:
    path = tmp_path / "x.quail"
    assert main(["example", str(path)], TODAY) == 0
    return path


def run(capsys: pytest.CaptureFixture[str], *words: object) -> tuple[int, str, str]:
    capsys.readouterr()
    code = main([str(word) for word in words], TODAY)
    out, err = capsys.readouterr()
    return code, out, err


def table(folder: Path, text: str, name: str = "log.csv") -> Path:
    path = folder / name
    path.write_text(text, encoding="utf-8")
    return path


def test_all_rows_are_taken_in_once(example: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    log = table(tmp_path, HATCHES)
    code, out, _ = run(capsys, "import-records", log, example)
    assert code == 0
    assert "2 rows: 2 taken in, 0 there already, 0 left out." in out
    assert len(open_farm(example).plan.counts) == 8
    code, out, _ = run(capsys, "import-records", log, example)
    assert code == 0
    assert "0 taken in, 2 there already" in out
    assert len(open_farm(example).history()) == 1


def test_a_preview_tells_every_row_and_changes_nothing(
    example: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    before = example.read_bytes()
    code, out, _ = run(capsys, "import-records", table(tmp_path, HATCHES), example, "--preview")
    assert code == 0
    assert "    2  taken in: new batch Autumn: 120 eggs set on 3 Oct 2026" in out
    assert "2 to take" in out
    assert open_farm(example).plan.counts == ()
    assert example.read_bytes() == before


def test_rows_that_are_left_out_are_told_by_number(
    example: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    log = table(tmp_path, HATCHES + "Spring,2027-02-30,60,,,\n")
    code, out, _ = run(capsys, "import-records", log, example)
    assert code == 1
    assert "    4  left out: set on: “2027-02-30” cannot be used" in out
    assert len(open_farm(example).plan.counts) == 8


@pytest.mark.parametrize("text", ["hello\n", "", "batch,set on,eggs set\nA,never,60\n"])
def test_where_nothing_can_be_read_the_code_is_2_and_nothing_changes(
    text: str, example: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    code, out, err = run(capsys, "import-records", table(tmp_path, text), example)
    assert code == 2
    assert out + err
    assert open_farm(example).history() == []


def test_an_open_order_of_days_names_the_word_that_tells_it(
    example: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    log = table(tmp_path, "day,place,eggs\n3/2/2027,Long run,4\n")
    code, _, err = run(capsys, "import-records", log, example)
    assert code == 2
    assert "may be 3 Feb 2027 or 2 Mar 2027; say what comes first: --day-order day, month or year" in err
    code, _, _ = run(capsys, "import-records", log, example, "--day-order", "month")
    assert code == 0
    assert open_farm(example).plan.counts[0].day == date(2027, 3, 2)


def test_what_is_said_counts(example: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    log = table(tmp_path, "date;eggs\n1/2/2027;1.000\n")
    words = ("--sort", "hatches", "--delimiter", "semicolon", "--decimal", "comma", "--kind", "bobwhite")
    code, _, _ = run(capsys, "import-records", log, example, *words, "--day-order", "day")
    assert code == 0
    new = next(one for one in open_farm(example).plan.batches if one.kind == "bobwhite")
    assert (new.start, new.number) == (date(2027, 2, 1), 1000)


def test_a_place_for_rows_that_name_none(example: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    log = table(tmp_path, "day,eggs\n2027-04-01,12\n")
    code, _, err = run(capsys, "import-records", log, example, "--place", "Moon")
    assert code == 2
    assert "--place: “Moon” cannot be used; one of Bench setter" in err
    assert run(capsys, "import-records", log, example, "--place", "long run")[0] == 0
    plan = open_farm(example).plan
    assert plan.place(plan.counts[0].place_id).name == "Long run"


@pytest.mark.parametrize(
    "words", [("--sort", "hens"), ("--day-order", "week"), ("--delimiter", "x"), ("--kind", "moa")]
)
def test_words_that_are_not_known_are_told(
    words: tuple[str, str], example: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    code, _, err = run(capsys, "import-records", table(tmp_path, HATCHES), example, *words)
    assert code == 2
    assert f"“{words[1]}”" in err


def test_json_for_machines(example: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    log = table(tmp_path, HATCHES)
    code, out, _ = run(capsys, "import-records", log, example, "--json", "--preview")
    found = json.loads(out)
    assert code == 0
    assert (found["log"], found["delimiter"], found["changed"]) == ("hatches", ",", False)
    assert found["columns"]["eggs set"] == "eggs set"
    assert [(row["row"], row["fate"]) for row in found["rows"]] == [(2, "taken in"), (3, "taken in")]


def test_records_are_given_out_and_taken_in_again(
    example: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    run(capsys, "import-records", table(tmp_path, HATCHES), example)
    code, out, _ = run(capsys, "records", example, "--out", tmp_path / "out")
    assert code == 0
    assert "tables in" in out
    code, out, _ = run(capsys, "import-records", tmp_path / "out" / "hatch-log.csv", example)
    assert code == 0
    assert "2 there already" in out
    (tmp_path / "out" / "stays.csv").write_text("mine")
    code, _, err = run(capsys, "records", example, "--out", tmp_path / "out")
    assert code == 2
    assert "stays.csv is there already" in err
