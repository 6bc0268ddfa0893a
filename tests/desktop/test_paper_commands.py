"""Print and Save a picture in the window, by real keys and clicks."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QObject, Qt, QTimer
from PySide6.QtPrintSupport import QPrintDialog
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QComboBox, QDialog, QFileDialog, QLineEdit, QPushButton
from pytestqt.qtbot import QtBot

from quailsched.desktop.main_window import TODAY, MainWindow
from quailsched.desktop.paper.print_form import PrintForm
from quailsched.desktop.season_canvas.lanes import Grouping
from quailsched.edits.batches import shift
from quailsched.session import trials
from tests.desktop.paper.reading import read, size_pt, words_of

LEFT = Qt.MouseButton.LeftButton


class InDialogs(QObject):
    """Does one thing after the other, each in the dialog that is open by then."""

    def __init__(self, *steps: Callable[[QDialog], None]) -> None:
        super().__init__()
        self.steps = list(steps)
        self._fault: BaseException | None = None
        self._timer = QTimer(self)
        self._timer.timeout.connect(self._next)
        self._timer.start(20)

    def _next(self) -> None:
        dialog = QApplication.activeModalWidget()
        if self.steps and isinstance(dialog, QDialog) and dialog.isActiveWindow():
            try:
                self.steps.pop(0)(dialog)
            except BaseException as fault:  # told by ``require_done``: a dialog left open would wait for ever
                self._fault = fault
                dialog.reject()

    def require_done(self) -> None:
        self._timer.stop()
        if self._fault is not None:
            raise self._fault
        assert self.steps == []


def asks(path: Path, kind: str = "") -> Callable[..., tuple[str, str]]:
    return lambda *_args, **_more: (str(path), kind)


def choose_chores(weeks: int, paper: str) -> Callable[[QDialog], None]:
    def step(dialog: QDialog) -> None:
        assert isinstance(dialog, PrintForm)
        QTest.keyClick(dialog.focusWidget(), Qt.Key.Key_Down)
        assert dialog.is_chores
        for _ in range(weeks - dialog.weeks):
            QTest.keyClick(dialog.weeks_field, Qt.Key.Key_Up)
        QTest.keyClicks(dialog.paper_field, paper)
        QTest.mouseClick(dialog.save_button, LEFT)

    return step


def press_print(dialog: QDialog) -> None:
    assert isinstance(dialog, PrintForm)
    QTest.keyClick(dialog, Qt.Key.Key_Return)


def print_to(path: Path) -> Callable[[QDialog], None]:
    """In the print dialog: never on a printer that there may be, but into a file, which is the last choice."""

    def step(dialog: QDialog) -> None:
        assert isinstance(dialog, QPrintDialog)
        printers = next(one for one in dialog.findChildren(QComboBox) if one.objectName() == "printers")
        printers.setCurrentIndex(printers.count() - 1)
        assert "PDF" in printers.currentText()
        name = next(one for one in dialog.findChildren(QLineEdit) if one.objectName() == "filename")
        assert name.isVisible()
        name.selectAll()
        QTest.keyClicks(name, str(path))
        button = next(one for one in dialog.findChildren(QPushButton) if one.text() == "&Print")
        QTest.mouseClick(button, LEFT)

    return step


@pytest.mark.qt_log_ignore("This plugin does not support (raise|grabbing the keyboard)", extend=True)
def test_the_season_goes_through_the_print_dialog_on_one_page(window: MainWindow, tmp_path: Path) -> None:
    doing = InDialogs(press_print, print_to(tmp_path / "printed.pdf"))
    window.actions_by_name["print_out"].trigger()
    doing.require_done()
    pdf = (tmp_path / "printed.pdf").read_bytes()
    assert (len(read(pdf).pages), size_pt(pdf)) == (1, (842, 595))
    assert "Pebble Bank season 2027" in words_of(pdf)
    assert "on its way to the printer" in window.statusBar().currentMessage()


def test_a_print_dialog_that_is_left_prints_nothing(window: MainWindow, tmp_path: Path) -> None:
    said = window.statusBar().currentMessage()
    doing = InDialogs(press_print, lambda dialog: QTest.keyClick(dialog, Qt.Key.Key_Escape))
    window.actions_by_name["print_out"].trigger()
    doing.require_done()
    assert window.statusBar().currentMessage() == said


def test_the_sheet_of_chores_begins_with_the_keys_on_what_is_chosen(window: MainWindow, qtbot: QtBot) -> None:
    seen: list[bool] = []

    def look(dialog: QDialog) -> None:
        assert isinstance(dialog, PrintForm)
        QTest.keyClick(dialog.focusWidget(), Qt.Key.Key_Space)
        seen.append(dialog.is_chores)
        QTest.keyClick(dialog, Qt.Key.Key_Escape)

    doing = InDialogs(look)
    window.show_view(TODAY)
    qtbot.mouseClick(window.day_view.side.paper, LEFT)
    doing.require_done()
    assert seen == [True]


def test_chores_are_saved_as_pdf_for_the_weeks_and_the_paper_that_are_chosen(
    window: MainWindow, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(QFileDialog, "getSaveFileName", asks(tmp_path / "chores"))
    doing = InDialogs(choose_chores(3, "A3"))
    window.actions_by_name["print_out"].trigger()
    doing.require_done()
    pdf = (tmp_path / "chores.pdf").read_bytes()
    assert size_pt(pdf) == (842, 1191)
    assert "chores 6 – 26 Apr 2027" in words_of(pdf)  # 21 days from 6 April
    assert "chores.pdf" in window.statusBar().currentMessage()


def test_the_paper_is_remembered(window: MainWindow, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(QFileDialog, "getSaveFileName", asks(tmp_path / "x.pdf"))
    doing = InDialogs(choose_chores(2, "Letter"))
    window.actions_by_name["print_out"].trigger()
    doing.require_done()
    papers: list[str] = []

    def look(dialog: QDialog) -> None:
        assert isinstance(dialog, PrintForm)
        papers.append(dialog.paper)
        QTest.keyClick(dialog, Qt.Key.Key_Escape)

    again = InDialogs(look)
    window.actions_by_name["print_out"].trigger()
    again.require_done()
    assert papers == ["Letter"]


@pytest.mark.parametrize(
    ("name", "kind", "written", "begins"),
    [
        ("s.png", "", "s.png", b"\x89PNG"),
        ("s.SVG", "", "s.SVG", b"<?xml"),
        ("s", "A picture (*.png)", "s.png", b"\x89PNG"),
        ("s", "", "s.pdf", b"%PDF-"),
    ],
)
def test_a_picture_is_of_the_sort_that_is_named_or_chosen(
    name: str,
    kind: str,
    written: str,
    begins: bytes,
    window: MainWindow,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(QFileDialog, "getSaveFileName", asks(tmp_path / name, kind))
    window.actions_by_name["save_picture"].trigger()
    assert (tmp_path / written).read_bytes().startswith(begins)
    assert window.statusBar().currentMessage() == f"Pebble Bank, season 2027 is in {written}."


def test_a_sort_that_is_not_known_is_told_and_not_written(
    window: MainWindow, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    said: list[str] = []
    monkeypatch.setattr("PySide6.QtWidgets.QMessageBox.warning", lambda _parent, _title, text: said.append(text))
    monkeypatch.setattr(QFileDialog, "getSaveFileName", asks(tmp_path / "s.gif"))
    window.actions_by_name["save_picture"].trigger()
    assert said == ["s.gif cannot be written: a name that ends in .pdf, .png, .svg is accepted."]
    assert not (tmp_path / "s.gif").exists()


def test_lanes_are_those_of_the_window(window: MainWindow, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    window.season.canvas.group_by(Grouping.BATCHES)
    monkeypatch.setattr(QFileDialog, "getSaveFileName", asks(tmp_path / "s.pdf"))
    window.actions_by_name["save_picture"].trigger()
    assert "Clover 140 eggs, 12 Apr" in words_of((tmp_path / "s.pdf").read_bytes())


def test_of_a_trial_the_season_is_printed_with_its_name_and_the_chores_of_the_plan(
    window: MainWindow, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, qtbot: QtBot
) -> None:
    trials.start(window.opened, "a week later")
    clover = next(batch for batch in window.opened.farm.batches if batch.name == "Clover")
    window.opened.apply(shift(window.opened.farm, clover.id, 7))
    monkeypatch.setattr(QFileDialog, "getSaveFileName", asks(tmp_path / "season.pdf"))
    window.actions_by_name["save_picture"].trigger()
    assert "season 2027, trial “a week later”" in words_of((tmp_path / "season.pdf").read_bytes())
    monkeypatch.setattr(QFileDialog, "getSaveFileName", asks(tmp_path / "chores.pdf"))
    doing = InDialogs(choose_chores(2, "A4"))
    window.actions_by_name["print_out"].trigger()
    doing.require_done()
    words = words_of((tmp_path / "chores.pdf").read_bytes())
    # Set on 12 April in the plan, on the 19th in the trial.
    assert words.index("Monday 12 Apr") < words.index("Set 140 eggs of Clover") < words.index("Thursday 15 Apr")
