"""The word ``picture``: files that are made, and what is refused without a trace."""

from __future__ import annotations

import os
import subprocess
import sys
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication

from quailsched.cli import main
from quailsched.desktop.paper.papers import Paper
from quailsched.session.farms import make_farm
from tests.desktop.paper.reading import read, size_pt, words_of

TODAY = date(2027, 4, 6)
ROOT = Path(__file__).parent.parent.parent
BEGINNINGS = {".pdf": b"%PDF-", ".png": b"\x89PNG", ".svg": b"<?xml"}


@pytest.fixture
def example(tmp_path: Path, qapp: QApplication) -> Path:
    """The example farm, alone in a folder. ``qapp``: letters are drawn with it, as none can be made after another."""
    path = tmp_path / "farms" / "x.quail"
    path.parent.mkdir()
    assert main(["example", str(path)], TODAY) == 0
    return path


@pytest.fixture
def out(tmp_path: Path) -> Path:
    """A folder with nothing in it."""
    folder = tmp_path / "out"
    folder.mkdir()
    return folder


def run(capsys: pytest.CaptureFixture[str], *words: object) -> tuple[int, str, str]:
    capsys.readouterr()
    code = main(["picture", *map(str, words)], TODAY)
    told, fault = capsys.readouterr()
    return code, told, fault


@pytest.mark.parametrize("ending", [".pdf", ".png", ".svg", ".PDF"])
def test_the_ending_of_the_name_says_what_is_made(
    ending: str, example: Path, out: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = out / f"season{ending}"
    assert run(capsys, example, "--out", path) == (0, f"Pebble Bank, season 2027 is in {path}.\n", "")
    assert path.read_bytes().startswith(BEGINNINGS[ending.lower()])
    assert list(out.iterdir()) == [path]


@pytest.mark.parametrize(("word", "paper"), [("A4", Paper.A4), ("a3", Paper.A3), ("letter", Paper.LETTER)])
def test_the_paper_is_chosen_in_letters_of_any_size(
    word: str, paper: Paper, example: Path, out: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    run(capsys, example, "--out", out / "s.pdf", "--paper", word)
    assert size_pt((out / "s.pdf").read_bytes())[0] == {Paper.A4: 842, Paper.A3: 1191, Paper.LETTER: 792}[paper]


def test_the_day_is_another_if_one_is_named(example: Path, out: Path, capsys: pytest.CaptureFixture[str]) -> None:
    run(capsys, example, "--out", out / "s.pdf", "--from", "2027-05-01")
    assert "as on 1 May 2027, printed Tue 6 Apr 2027" in words_of((out / "s.pdf").read_bytes())


def test_chores_are_of_two_weeks_or_as_many_as_are_wanted(
    example: Path, out: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = out / "c.pdf"
    code, told, _ = run(capsys, example, "--out", path, "--chores")
    assert (code, told) == (0, f"Pebble Bank, chores 6 – 19 Apr 2027, is in {path}.\n")
    assert len(read(path.read_bytes()).pages) == 2
    _, told, _ = run(capsys, example, "--out", path, "--chores", "--weeks", "4", "--paper", "A3")
    assert told == f"Pebble Bank, chores 6 Apr – 3 May 2027, is in {path}.\n"
    assert size_pt(path.read_bytes()) == (842, 1191)  # A3, upright


def test_a_sharper_picture_has_as_many_dots_as_were_asked_for(
    example: Path, out: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    run(capsys, example, "--out", out / "1.png")
    run(capsys, example, "--out", out / "3.png", "--sharp", "3")
    assert QImage(str(out / "3.png")).width() == 3 * QImage(str(out / "1.png")).width()


@pytest.mark.parametrize(
    ("words", "fault"),
    [
        (("--out", "x.gif"), "“x.gif” cannot be used; a name that ends in .pdf, .png or .svg is accepted"),
        (("--out", "x"), "“x” cannot be used; a name that ends in .pdf, .png or .svg is accepted"),
        (("--out", "x.pdf", "--paper", "B5"), "“B5” is no paper that is known; one of A4, A3, Letter is accepted"),
        (("--out", "x.png", "--paper", "A4"), "--paper: “A4” cannot be used; it is accepted for a .pdf."),
        (("--out", "x.pdf", "--weeks", "2"), "--weeks: 2 cannot be used; it is accepted together with --chores."),
        (("--out", "x.pdf", "--chores", "--weeks", "1"), "a whole number from 2 to 4 is accepted"),
        (("--out", "x.pdf", "--chores", "--weeks", "5"), "a whole number from 2 to 4 is accepted"),
        (("--out", "x.svg", "--chores"), "--out: “x.svg” cannot be used; with --chores a name that ends in .pdf is"),
        (("--out", "x.svg", "--sharp", "2"), "--sharp: 2 cannot be used; it is accepted for a .png."),
        (("--out", "x.png", "--sharp", "9"), "a whole number from 1 to 4 is accepted"),
        (("--out", "x.pdf", "--from", "2200-01-01"), "a day from 1990-01-01 to 2199-12-31 is accepted"),
        (("--out", "nowhere/x.pdf"), "x.pdf cannot be written: there is no such file or folder."),
        ((), "--out"),
    ],
    ids=lambda value: " ".join(value) if isinstance(value, tuple) else "",
)
def test_what_cannot_be_done_is_told_and_leaves_nothing(
    words: tuple[str, ...],
    fault: str,
    example: Path,
    out: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    monkeypatch.chdir(out)
    code, told, said = run(capsys, example, *words)
    assert (code, told) == (2, "")
    assert fault in said
    assert list(out.iterdir()) == []


@pytest.mark.parametrize("kept", [b"%PDF-1.7\n/Creator (Somebody else)\n", b"Feed is low.\n"])
def test_a_file_of_somebody_else_is_left_as_it_is(
    kept: bytes, example: Path, out: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = out / "bill.pdf"
    path.write_bytes(kept)
    code, _, fault = run(capsys, example, "--out", path)
    assert (code, path.read_bytes()) == (2, kept)
    assert fault == (
        "bill.pdf is there already, is no page or picture by Quailsched, and was left as it is; "
        "another file name is accepted.\n"
    )


def test_a_farm_is_never_replaced_whatever_it_is_called(
    example: Path, out: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    farm = example.rename(out / "farm.pdf")
    before = farm.read_bytes()
    assert run(capsys, farm, "--out", farm)[0] == 2
    assert farm.read_bytes() == before


@pytest.mark.parametrize("ending", [".pdf", ".png", ".svg"])
def test_an_older_one_is_replaced_also_behind_a_link(
    ending: str, example: Path, out: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path, link = out / f"s{ending}", out / f"link{ending}"
    path.write_bytes(b"")
    link.symlink_to(path)
    assert run(capsys, example, "--out", path, "--from", "2027-05-01")[0] == 0
    old = path.read_bytes()
    assert run(capsys, example, "--out", link)[0] == 0
    assert link.is_symlink()
    assert path.read_bytes() != old
    assert {one.name for one in out.iterdir()} == {path.name, link.name}


def test_names_as_long_as_can_be_do_not_hide_the_maker(
    example: Path, out: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    # In the title of a PDF a letter takes two bytes, and a bracket four.
    farm = out.parent / "long.quail"
    make_farm(farm, "(" * 100)
    for _ in range(2):  # the second time, the first is recognised
        assert run(capsys, farm, "--out", out / "s.pdf")[0] == 0


@pytest.mark.parametrize("display", ["", ":77"])
def test_it_needs_no_screen_and_asks_none(display: str, example: Path, out: Path) -> None:
    """In a process of its own: with no display, and with one that does not answer."""
    hidden = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")
    env = {name: value for name, value in os.environ.items() if name not in hidden} | {"PYTHONPATH": str(ROOT)}
    if display:
        env["DISPLAY"] = display
    path = out / "s.pdf"
    done = subprocess.run(
        [sys.executable, "-P", "-m", "quailsched", "picture", str(example), "--out", str(path), "--from", "2027-04-06"],
        cwd=ROOT, env=env, capture_output=True, text=True, timeout=120, check=False,
    )  # fmt: skip
    assert (done.returncode, done.stderr) == (0, "")
    assert "Clover" in words_of(path.read_bytes())
