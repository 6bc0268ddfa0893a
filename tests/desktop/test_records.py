"""Records from a table in the window, by real keys and clicks; and records as tables."""

from collections.abc import Callable
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QObject, Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog, QFileDialog, QMessageBox
from pytestqt.modeltest import ModelTester
from pytestqt.qtbot import QtBot

from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.tables.take_form import TakeForm
from quailsched.desktop.tasks import run_at_once
from quailsched.farm.facts import Sort
from quailsched.session.open_farm import OpenFarm

TODAY = date(2027, 4, 6)
LEFT = Qt.MouseButton.LeftButton
LOG = "day,place,eggs\n2027-04-01,Long run,12\n2027-04-02,Moon,14\n2027-04-03,Long run,15\n"


@pytest.fixture
def form(opened: OpenFarm, qtbot: QtBot, tmp_path: Path) -> Callable[[str], TakeForm]:
    def made(text: str) -> TakeForm:
        path = tmp_path / "log.csv"
        path.write_text(text, encoding="utf-8")
        one = TakeForm(None, opened, path, TODAY, run_at_once)
        qtbot.addWidget(one)
        with qtbot.waitActive(one):
            one.show()
            one.activateWindow()
        return one

    return made


@pytest.fixture
def quick(opened: OpenFarm, qtbot: QtBot) -> MainWindow:
    """A window whose slow work is done at once."""
    window = MainWindow(opened, TODAY, run_at_once)
    qtbot.addWidget(window)
    with qtbot.waitExposed(window):
        window.show()
    return window


class InDialog(QObject):
    """Does one thing in the dialog that opens."""

    def __init__(self, step: Callable[[TakeForm], None]) -> None:
        super().__init__()
        self._step, self.is_done = step, False
        self._fault: BaseException | None = None
        self._timer = QTimer(self)
        self._timer.timeout.connect(self._try)
        self._timer.start(20)

    def _try(self) -> None:
        dialog = QApplication.activeModalWidget()
        if self.is_done or not isinstance(dialog, TakeForm) or not dialog.isActiveWindow():
            return
        self.is_done = True
        try:
            self._step(dialog)
        except BaseException as fault:  # told by ``require_done``: a dialog left open would wait for ever
            self._fault = fault
            dialog.reject()

    def require_done(self) -> None:
        self._timer.stop()
        if self._fault is not None:
            raise self._fault
        assert self.is_done


def cells(form: TakeForm, column: int) -> list[str]:
    model = form.rows.model
    return [model.index(row, column).data() for row in range(model.rowCount())]


def gives(value: Any) -> Callable[..., Any]:
    return lambda *_args, **_more: value


def test_every_row_says_what_happens_and_a_bad_one_why_not(form: Callable[[str], TakeForm]) -> None:
    made = form(LOG)
    assert cells(made, 0) == ["2", "3", "4"]
    assert cells(made, 1) == ["taken in", "left out", "taken in"]
    assert cells(made, 2)[0] == "Long run, 1 Apr 2027: 12 laid"
    assert cells(made, 2)[1].startswith("place: “Moon” cannot be used; one of")
    assert cells(made, 3)[1] == "2027-04-02 | Moon | 14"
    assert made.total.text() == "3 rows: 2 to take, 0 there already, 1 left out."
    assert made.take.text() == "&Take in 2 rows"
    assert made.fields.order.currentText() == "as found: year first"


def test_the_model_keeps_the_rules_of_qt(form: Callable[[str], TakeForm], qtmodeltester: ModelTester) -> None:
    qtmodeltester.check(form(LOG).rows.model)


def test_a_row_that_is_picked_is_told_in_full(form: Callable[[str], TakeForm]) -> None:
    made = form(LOG)
    assert made.focusWidget() is made.rows.view
    made.rows.view.setCurrentIndex(made.rows.model.index(0, 0))
    QTest.keyClick(made.rows.view, Qt.Key.Key_Down)
    assert made.rows.whole.isVisible()
    assert "Grass ark is accepted" in made.rows.whole.text()


def test_only_the_rows_that_are_left_out_can_be_shown(form: Callable[[str], TakeForm]) -> None:
    made = form(LOG)
    QTest.keyClick(made.shown, Qt.Key.Key_End)
    assert cells(made, 0) == ["3"]
    assert made.take.text() == "&Take in 2 rows"


def test_an_open_order_of_days_is_asked_for_and_answered_by_the_keys(form: Callable[[str], TakeForm]) -> None:
    made = form("day,place,eggs\n3/2/2027,Long run,12\n4/3/2027,Long run,14\n")
    assert "may be 3 Feb 2027 or 2 Mar 2027" in made.fault.text()
    assert made.fault.isVisible()
    assert not made.take.isEnabled()
    assert made.focusWidget() is made.fields.order
    QTest.keyClicks(made.fields.order, "mon")
    assert not made.fault.isVisible()
    assert cells(made, 2) == ["Long run, 2 Mar 2027: 12 laid", "Long run, 3 Apr 2027: 14 laid"]
    assert made.take.isEnabled()


def test_what_is_no_table_is_told_and_cannot_be_taken(form: Callable[[str], TakeForm]) -> None:
    made = form("hello\n")
    assert "headings: “hello” cannot be used" in made.fault.text()
    assert not made.take.isEnabled()
    assert cells(made, 0) == []


def test_another_file_takes_the_place_of_the_first(
    form: Callable[[str], TakeForm], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    made = form("hello\n")
    (tmp_path / "other.csv").write_text(LOG)
    monkeypatch.setattr(QFileDialog, "getOpenFileName", gives((str(tmp_path / "other.csv"), "")))
    QTest.mouseClick(made.other, LEFT)
    assert made.file_name.text() == "other.csv"
    assert len(cells(made, 0)) == 3
    monkeypatch.setattr(QFileDialog, "getOpenFileName", gives((str(tmp_path / "gone.csv"), "")))
    QTest.mouseClick(made.other, LEFT)
    assert "gone.csv cannot be read" in made.fault.text()
    assert not made.take.isEnabled()


def test_the_sort_of_log_can_be_said_and_then_its_own_fields_count(form: Callable[[str], TakeForm]) -> None:
    made = form("day,eggs\n2027-03-01,40\n2027-03-02,41\n")
    assert made.fields.place.isEnabled()
    assert not made.fields.kind.isEnabled()
    QTest.keyClicks(made.fields.log, "hatch")
    assert cells(made, 2)[0] == "new batch Eggs of 1 Mar 2027: 40 eggs set on 1 Mar 2027"
    assert made.fields.kind.isEnabled()
    assert not made.fields.place.isEnabled()


def test_an_answer_that_comes_after_the_window_has_gone_is_passed_over(
    opened: OpenFarm, tmp_path: Path, qtbot: QtBot
) -> None:
    waiting: list[Callable[[], None]] = []
    (tmp_path / "log.csv").write_text(LOG)
    made = TakeForm(None, opened, tmp_path / "log.csv", TODAY, lambda work, done: waiting.append(lambda: done(work())))
    qtbot.addWidget(made)
    assert made.total.text() == "Reading the rows…"
    made.reject()
    waiting[0]()
    assert made.taking is None


def test_the_good_rows_are_taken_in_from_the_menu_and_one_undo_takes_them_back(
    quick: MainWindow, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, qtbot: QtBot
) -> None:
    (tmp_path / "log.csv").write_text(LOG)
    monkeypatch.setattr(QFileDialog, "getOpenFileName", gives((str(tmp_path / "log.csv"), "")))
    doing = InDialog(lambda dialog: QTest.mouseClick(dialog.take, LEFT))
    quick.actions_by_name["take_records"].trigger()
    doing.require_done()
    assert [(one.sort, one.number) for one in quick.opened.plan.counts] == [(Sort.LAID, 12), (Sort.LAID, 15)]
    assert "Take in 2 rows of a table (egg log)" in quick.statusBar().currentMessage()
    with qtbot.waitActive(quick):
        quick.activateWindow()
    qtbot.keyClick(quick, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert quick.opened.plan.counts == ()


def test_a_dialog_that_is_left_changes_nothing_and_is_freed(
    quick: MainWindow, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, qtbot: QtBot
) -> None:
    (tmp_path / "log.csv").write_text(LOG)
    monkeypatch.setattr(QFileDialog, "getOpenFileName", gives((str(tmp_path / "log.csv"), "")))
    doing = InDialog(lambda dialog: QTest.keyClick(dialog, Qt.Key.Key_Escape))
    quick.actions_by_name["take_records"].trigger()
    doing.require_done()
    assert quick.opened.history() == []
    qtbot.waitUntil(lambda: not quick.findChildren(QDialog))


def test_records_as_tables_go_into_a_folder(quick: MainWindow, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(QFileDialog, "getExistingDirectory", gives(str(tmp_path / "out")))
    quick.actions_by_name["give_records"].trigger()
    assert (tmp_path / "out" / "batches.csv").read_text().count("\n") == 8  # headings and seven batches
    assert "tables in out" in quick.statusBar().currentMessage()


def test_a_folder_with_a_file_of_somebody_else_is_refused_in_words(
    quick: MainWindow, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "places.csv").write_text("mine")
    told: list[str] = []
    monkeypatch.setattr(QMessageBox, "warning", lambda *words: told.append(words[2]))
    monkeypatch.setattr(QFileDialog, "getExistingDirectory", gives(str(tmp_path)))
    quick.actions_by_name["give_records"].trigger()
    assert "places.csv is there already" in told[0]
