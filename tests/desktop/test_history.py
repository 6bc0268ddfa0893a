"""The history as a list: readable, found by typing, and any step can be gone to."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QAbstractItemModelTester
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from quailsched.desktop.history import HistoryDialog, HistoryModel
from quailsched.desktop.main_window import MainWindow
from quailsched.edits.batches import shift
from quailsched.session.farms import make_example, open_farm
from quailsched.session.open_farm import Notice, OpenFarm
from tests.desktop.conftest import TODAY


@pytest.fixture
def opened(tmp_path: Path) -> OpenFarm:
    """The example with three steps: Clover, Dill and Elder each two days later."""
    farm = make_example(tmp_path / "farm.quail", TODAY)
    for name in ("Clover", "Dill", "Elder"):
        batch = next(one for one in farm.plan.batches if one.name == name)
        farm.apply(shift(farm.plan, batch.id, 2))
    return farm


@pytest.fixture
def dialog(qtbot: QtBot, opened: OpenFarm) -> Iterator[HistoryDialog]:
    parent = QWidget()
    qtbot.addWidget(parent)
    shown = HistoryDialog(parent, opened, do)
    shown.show()
    yield shown
    shown.close()


def do(action: Callable[[], object]) -> None:
    action()


def shown(dialog: HistoryDialog) -> list[str]:
    model = dialog.table.model()
    return [str(model.index(row, 1).data()) for row in range(model.rowCount())]


def test_steps_are_told_newest_first_down_to_the_beginning(dialog: HistoryDialog) -> None:
    words = shown(dialog)
    assert words[0].startswith("Set Elder on ")
    assert words[0].endswith("(the farm is here)")
    assert [word.split(" on ")[0] for word in words[1:3]] == ["Set Dill", "Set Clover"]
    assert words[3].startswith("The beginning")


def test_the_model_is_sound(qtbot: QtBot, opened: OpenFarm) -> None:
    model = HistoryModel()
    QAbstractItemModelTester(model, QAbstractItemModelTester.FailureReportingMode.Fatal)
    model.show_entries(opened.history())
    assert model.rowCount() == 4


def test_a_step_is_gone_to_and_the_file_has_it_too(qtbot: QtBot, dialog: HistoryDialog, opened: OpenFarm) -> None:
    start = opened.plan
    dialog.table.setFocus()
    qtbot.keyClick(dialog.table, Qt.Key.Key_Down)
    qtbot.keyClick(dialog.table, Qt.Key.Key_Down)
    assert dialog.picked_step() == 1
    assert dialog.go.isEnabled()
    qtbot.mouseClick(dialog.go, Qt.MouseButton.LeftButton)
    words = shown(dialog)
    assert [word.rpartition("  ")[2] for word in words[:3]] == ["(taken back)", "(taken back)", "(the farm is here)"]
    assert open_farm(opened.file.path).plan == opened.plan != start
    dialog.table.selectRow(0)
    qtbot.mouseClick(dialog.go, Qt.MouseButton.LeftButton)
    assert opened.plan == start


def test_where_the_farm_is_there_is_nothing_to_go_to(dialog: HistoryDialog) -> None:
    assert not dialog.go.isEnabled()


def test_a_step_is_found_by_typing(qtbot: QtBot, dialog: HistoryDialog) -> None:
    qtbot.keyClicks(dialog.search, "dill")
    assert [word.split(" on ")[0] for word in shown(dialog)] == ["Set Dill"]
    dialog.table.selectRow(0)
    assert dialog.picked_step() == 2


def test_one_notice_goes_out_however_many_steps_lie_between(opened: OpenFarm) -> None:
    heard: list[Notice] = []
    opened.listen(heard.append)
    opened.go_to(0)
    (notice,) = heard
    assert (notice.how, notice.label, len(notice.ids)) == ("go", "the beginning of the history", 3)


def test_the_menu_opens_it_and_the_window_tells_where_the_farm_is(qtbot: QtBot, window: MainWindow) -> None:
    window.opened.apply(shift(window.opened.plan, window.opened.plan.batches[-1].id, 1))

    def go_back() -> None:
        dialog = window.findChild(HistoryDialog)
        assert dialog is not None
        dialog.table.selectRow(4)
        qtbot.mouseClick(dialog.go, Qt.MouseButton.LeftButton)
        dialog.reject()

    QTimer.singleShot(50, go_back)
    qtbot.keyClick(window, Qt.Key.Key_H, Qt.KeyboardModifier.ControlModifier)
    assert window.opened.redo_label is not None
    assert window.statusBar().currentMessage() == "The farm is now as after this step: the beginning of the history."
