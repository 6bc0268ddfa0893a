"""Each gesture of the mouse on the season beside the keys that do the same: both end at the same farm, or view.

What keys reach besides: the wheel and a pinch are + and -; a double click on a band is Return; the strip with all days
has its own tests.
"""

from collections.abc import Callable

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QContextMenuEvent
from PySide6.QtWidgets import QApplication, QMenu, QPushButton
from pytestqt.qtbot import QtBot

from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.season_canvas.scene import Picked
from quailsched.farm.records import Batch, Farm
from tests.desktop.pointing import Hand, edge_of, middle_of

Key, Held = Qt.Key, Qt.KeyboardModifier


@pytest.fixture
def shown(window: MainWindow, qtbot: QtBot) -> MainWindow:
    """The window with the keys in the season."""
    with qtbot.waitActive(window):
        window.activateWindow()
    window.season.canvas.setFocus()
    return window


def batch_of(farm: Farm, name: str) -> Batch:
    return next(batch for batch in farm.batches if batch.name == name)


def pick(window: MainWindow, qtbot: QtBot, name: str) -> None:
    """Come to a batch with the arrow keys."""
    canvas = window.season.canvas
    wanted = batch_of(window.opened.farm, name).id
    for _ in window.opened.farm.batches:
        if canvas.scene().picked.batch_id != wanted:
            qtbot.keyClick(canvas, Key.Key_Right)
    assert canvas.scene().picked.batch_id == wanted


def in_menu(window: MainWindow, qtbot: QtBot, *path: str) -> None:
    """Open the menu of what is picked by its key, and go along ``path`` with arrows and Return."""
    qtbot.keyClick(window.season.canvas, Key.Key_F10, Held.ShiftModifier)
    menu = QApplication.activePopupWidget()
    for number, text in enumerate(path):
        assert isinstance(menu, QMenu)
        for _ in menu.actions():
            active = menu.activeAction()
            if active is not None and active.text().startswith(text):
                break
            qtbot.keyClick(menu, Key.Key_Down)
        assert menu.activeAction().text().startswith(text), text
        qtbot.keyClick(menu, Key.Key_Return if number == len(path) - 1 else Key.Key_Right)
        menu = QApplication.activePopupWidget()


def px(window: MainWindow) -> float:
    return window.season.canvas.scene().scale.day_px


def drag_two_days(window: MainWindow) -> None:
    canvas = window.season.canvas
    Hand(canvas).press(middle_of(canvas, "Fern", "Old cabinet")).by(2 * px(window)).release()


def drag_the_end(window: MainWindow) -> None:
    canvas = window.season.canvas
    Hand(canvas).press(edge_of(canvas, "Fern", "Tub brooder", at_end=True)).by(2 * px(window)).release()


def drag_the_start(window: MainWindow) -> None:
    canvas = window.season.canvas
    Hand(canvas).press(edge_of(canvas, "Fern", "Tub brooder", at_end=False)).by(2 * px(window)).release()


def drag_to_another_lane(window: MainWindow) -> None:
    canvas = window.season.canvas
    at = middle_of(canvas, "Fern", "Tub brooder")
    lane = next(lane for lane in canvas.scene().lanes if lane.content.title == "Shed brooder")
    to = QPoint(at.x(), round(canvas.scene().top((lane.line_y + lane.base_y) / 2)))
    Hand(canvas).press(at).move(to).release()


@pytest.mark.parametrize(
    ("gesture", "keys"),
    [
        (drag_two_days, ()),
        (drag_the_end, ("In Tub brooder", "Leave a day later")),
        (drag_the_start, ("In Old cabinet", "Leave a day later")),
        (drag_to_another_lane, ("In Tub brooder", "Another place", "Shed brooder")),
    ],
    ids=["a band", "its end", "its start", "another lane"],
)
def test_what_is_dragged_is_done_by_keys_too(
    shown: MainWindow, qtbot: QtBot, gesture: Callable[[MainWindow], None], keys: tuple[str, ...]
) -> None:
    before = shown.opened.farm
    gesture(shown)
    dragged = shown.opened.farm
    assert batch_of(dragged, "Fern") != batch_of(before, "Fern")
    shown.undo()
    assert shown.opened.farm == before
    shown.season.pick(Picked())
    pick(shown, qtbot, "Fern")
    for _ in range(1 if gesture is drag_to_another_lane else 2):
        if keys:
            in_menu(shown, qtbot, *keys)
        else:
            qtbot.keyClick(shown.season.canvas, Key.Key_Right, Held.AltModifier)
    assert shown.opened.farm == dragged


def test_the_key_for_menus_opens_the_one_of_what_is_picked(shown: MainWindow, qtbot: QtBot) -> None:
    canvas = shown.season.canvas
    pick(shown, qtbot, "Fern")
    QApplication.sendEvent(canvas, QContextMenuEvent(QContextMenuEvent.Reason.Keyboard, QPoint(1, 1), QPoint(1, 1)))
    menu = QApplication.activePopupWidget()
    assert isinstance(menu, QMenu)
    assert menu.actions()[0].text() == "Change…"
    menu.close()


def test_the_menu_by_key_is_there_only_while_a_batch_is_picked(shown: MainWindow, qtbot: QtBot) -> None:
    shown.season.pick(Picked())
    assert not shown.actions_by_name["move_picked"].isEnabled()
    pick(shown, qtbot, "Fern")
    assert shown.actions_by_name["move_picked"].isEnabled()


def test_picking_a_band_a_clash_and_nothing(shown: MainWindow, qtbot: QtBot) -> None:
    canvas = shown.season.canvas
    Hand(canvas).press(middle_of(canvas, "Fern", "Old cabinet")).release()
    by_mouse = canvas.scene().picked
    shown.season.pick(Picked())
    pick(shown, qtbot, "Fern")
    assert canvas.scene().picked == by_mouse
    qtbot.keyClick(canvas, Key.Key_Down)
    assert canvas.scene().picked.clash is not None
    qtbot.keyClick(canvas, Key.Key_Escape)
    assert canvas.scene().picked == Picked()


def test_pushing_the_paper_along_and_up(shown: MainWindow, qtbot: QtBot) -> None:
    shown.resize(1280, 420)
    canvas = shown.season.canvas
    across, down = canvas.horizontalScrollBar(), canvas.verticalScrollBar()
    across.setValue(across.minimum())
    down.setValue(0)
    assert down.maximum() > 0
    qtbot.keyClick(canvas, Key.Key_PageDown)
    assert (across.value() > across.minimum(), down.value()) == (True, 0)
    here = across.value()
    qtbot.keyClick(canvas, Key.Key_PageDown, Held.ShiftModifier)
    assert (across.value(), down.value() > 0) == (here, True)
    qtbot.keyClick(canvas, Key.Key_PageUp, Held.ShiftModifier)
    assert down.value() == 0


def test_the_name_of_a_place_opens_it_by_a_double_click_and_below_by_keys(
    shown: MainWindow, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    opened: list[str] = []
    monkeypatch.setattr("quailsched.desktop.record_commands.edit_place", lambda *args: opened.append(args[-1].name))
    canvas = shown.season.canvas
    lane = canvas.scene().lanes[0]
    name = QPoint(20, round(canvas.scene().top((lane.line_y + lane.base_y) / 2)))
    qtbot.mouseDClick(canvas.viewport(), Qt.MouseButton.LeftButton, pos=name)
    button = next(one for one in shown.season.frees_up.findChildren(QPushButton) if one.text() == "Bench setter")
    button.setFocus()
    qtbot.keyClick(button, Key.Key_Space)
    assert opened == ["Bench setter", "Bench setter"]
