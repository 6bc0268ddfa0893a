"""``quailsched trials``: every trial beside the plan, in words and as JSON."""

import json
from datetime import date
from pathlib import Path

import pytest

from quailsched.cli import main
from quailsched.edits.batches import shift
from quailsched.edits.records import remove
from quailsched.session import trials
from quailsched.session.farms import make_example, open_farm

TODAY = date(2027, 4, 6)


@pytest.fixture
def tried(tmp_path: Path) -> Path:
    """The example with two trials: Elder six days later and no Fern; and one with nothing otherwise."""
    opened = make_example(tmp_path / "x.quail", TODAY)
    ids = {batch.name: batch.id for batch in opened.plan.batches}
    trials.start(opened, "More hens?")
    opened.apply(shift(opened.farm, ids["Elder"], 6))
    opened.apply(remove(opened.farm, ids["Fern"]))
    trials.start(opened, "Nothing yet")
    return opened.file.path


def run(capsys: pytest.CaptureFixture[str], *words: str) -> tuple[int, str, str]:
    capsys.readouterr()
    code = main(list(words), TODAY)
    out, err = capsys.readouterr()
    return code, out, err


def test_trials_in_words(tried: Path, capsys: pytest.CaptureFixture[str]) -> None:
    code, out, err = run(capsys, "trials", str(tried))
    assert (code, err) == (0, "")
    assert out.startswith("Pebble Bank: 2 trials beside the plan\n")
    assert "    Elder set 6 days later, on 30 May\n    Fern gone\n" in out  # planned for 24 May
    assert "Gone: Too many eggs for Old cabinet, 7 – 10 Jun" in out
    assert "Nothing otherwise than in the plan." in out
    assert out.rstrip().endswith("Promises and money are not compared: the program does not keep them yet.")


def test_trials_as_json(tried: Path, capsys: pytest.CaptureFixture[str]) -> None:
    code, out, _ = run(capsys, "trials", str(tried), "--json")
    found = json.loads(out)
    assert code == 0
    assert list(found) == ["farm", "from", "trials", "not_compared"]
    more, nothing = found["trials"]
    assert list(more) == ["trial", "note", "changes", "left_out", "changed_in_both", "plan", "with_trial", "clashes"]
    assert (more["trial"], nothing["trial"]) == ("More hens?", "Nothing yet")
    assert nothing["plan"] == nothing["with_trial"] == more["plan"]
    assert (nothing["changes"], nothing["clashes"]["gone"], nothing["clashes"]["new"]) == ([], [], [])
    # Fern: 54 eggs x 61.31 % = 33.1 chicks fewer.
    assert more["plan"]["chicks"] - more["with_trial"]["chicks"] == 33
    assert {"kind", "place", "sentence"} <= set(more["clashes"]["gone"][0])


def test_trials_change_no_other_answer(tried: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    plain = tmp_path / "plain.quail"
    opened = open_farm(tried)
    for trial in opened.plan.trials:
        trials.drop(opened, trial.id)
    tried.rename(plain)
    again = make_copy_with_a_trial(plain, tmp_path / "with.quail")
    for words in (("clashes",), ("places",), ("chores",), ("next-set", "--days", "5"), ("ways-out", "--clash", "1")):
        word, *more = words
        assert run(capsys, word, str(again), *more) == run(capsys, word, str(plain), *more)


def make_copy_with_a_trial(farm: Path, to: Path) -> Path:
    to.write_bytes(farm.read_bytes())
    opened = open_farm(to)
    trials.start(opened, "Nobody left")
    for batch in opened.farm.batches:
        opened.apply(remove(opened.farm, batch.id))
    return to


def test_a_farm_without_trials(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = make_example(tmp_path / "x.quail", TODAY).file.path
    code, out, _ = run(capsys, "trials", str(path))
    assert (code, out) == (0, "Pebble Bank: no trial. In the window, Trials › Start a trial begins one.\n")
    assert json.loads(run(capsys, "trials", str(path), "--json")[1])["trials"] == []


@pytest.mark.parametrize(
    ("words", "sentence"),
    [
        (["trials"], "The following arguments are required: FILE"),
        (["trials", "nothing.quail"], "nothing.quail cannot be opened"),
        (["trials", "x.quail", "--from", "soon"], "“soon” is no day; a day like 2027-04-06 is accepted"),
        (["trials", "x.quail", "more"], "“more” cannot be used"),
    ],
)
def test_bad_input_ends_in_a_sentence(
    words: list[str], sentence: str, tried: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(tried.parent)
    code, out, err = run(capsys, *words)
    assert (code, out) == (2, "")
    assert sentence in err
    assert "Traceback" not in err
