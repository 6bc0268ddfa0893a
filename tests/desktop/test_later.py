"""What follows the first picture of a window: it comes by itself, and at once for those who do not wait."""

from importlib import import_module

import pytest
from PySide6.QtCore import QObject, QPoint, Qt
from PySide6.QtGui import QAction
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QMenu, QPushButton, QToolButton
from pytestqt.qtbot import QtBot

from quailsched.desktop import after_start
from quailsched.desktop.clash_rows import ClashRows
from quailsched.desktop.later import Later
from quailsched.desktop.main_window import BOOKS, NEXT_SET, SETUP, MainWindow
from quailsched.desktop.main_window import TODAY as TODAY_VIEW
from quailsched.desktop.season_canvas.paint import SeasonPainter
from quailsched.desktop.season_canvas.scale import TimeScale
from quailsched.desktop.theme import LIGHT, dress_app, show_theme
from quailsched.edits.records import remove
from quailsched.session.open_farm import OpenFarm
from tests.desktop.conftest import TODAY, leave_undone

LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def fresh(opened: OpenFarm, qtbot: QtBot, qapp: QApplication) -> MainWindow:
    """A window whose first picture stands, and nothing that follows it."""
    show_theme(qapp, LIGHT)
    made = MainWindow(opened, TODAY, leave_undone)
    made.later.stop()
    qtbot.addWidget(made)
    made.resize(1280, 800)
    with qtbot.waitExposed(made):
        made.show()
    made.activateWindow()
    qtbot.waitUntil(lambda: QApplication.focusWidget() is made.season.canvas)
    return made


def strip_of_last_time(opened: OpenFarm, wide: int) -> int:
    """How tall the strip below the season is in a window that is whole."""
    window = MainWindow(opened, TODAY, leave_undone)
    window.later.stop()
    window.resize(wide, 700)
    window.show()
    strip = window.season.frees_up
    QApplication.processEvents()  # it is given its width
    QApplication.processEvents()  # and the height that it takes by that
    assert window.season.strip_px == strip.height() == strip.sizeHint().height()
    tall = window.season.strip_px
    window.close()
    window.deleteLater()
    return tall


def made_by_now(window: MainWindow) -> set[str]:
    return {"setup_view", "next_set", "commands"} & vars(window).keys()


def test_steps_come_one_by_one_in_their_order_and_end_once(qtbot: QtBot, qapp: QApplication) -> None:
    taken: list[int] = []
    later = Later([lambda n=n: taken.append(n) for n in range(3)], qapp)  # type: ignore[misc]
    ended: list[bool] = []
    later.ended.connect(lambda: ended.append(True))
    assert taken == []  # nothing before it begins
    later.begin()
    later.begin()
    qtbot.waitUntil(lambda: bool(ended))
    assert taken == [0, 1, 2]
    assert not later.step()
    assert len(ended) == 1


def test_a_step_that_fails_does_not_keep_the_others_away(qtbot: QtBot, qapp: QApplication) -> None:
    taken: list[str] = []

    def fail() -> None:
        raise RuntimeError("no")

    later = Later([fail, lambda: taken.append("next")], QObject(qapp))
    with qtbot.captureExceptions() as faults:
        later.begin()
        qtbot.waitUntil(lambda: taken == ["next"])
    assert len(faults) == 1


def test_all_of_it_comes_by_itself_once_the_window_is_seen(opened: OpenFarm, qtbot: QtBot) -> None:
    window = MainWindow(opened, TODAY, leave_undone)
    qtbot.addWidget(window)
    assert made_by_now(window) == set()
    with qtbot.waitSignal(window.later.ended):
        window.show()
    assert made_by_now(window) == {"setup_view", "next_set", "commands"}
    assert window.season.inspector.findChildren(ClashRows)
    assert not window.windowIcon().isNull()


def test_the_first_picture_shows_the_season_where_it_stays(
    opened: OpenFarm, qtbot: QtBot, qapp: QApplication, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Put together as at a start: the sheet, which gives letters their size, comes when all is there."""
    painted: list[tuple[TimeScale, float, float]] = []
    paint = SeasonPainter.paint

    def note(painter: SeasonPainter) -> None:
        painted.append((painter.scene.scale, painter.scene.left, painter.scene.dx))
        paint(painter)

    monkeypatch.setattr(SeasonPainter, "paint", note)
    qapp.setStyleSheet("")
    window = MainWindow(opened, TODAY, leave_undone)
    qtbot.addWidget(window)
    dress_app(qapp)
    window.resize(1280, 800)
    with qtbot.waitSignal(window.later.ended):
        window.show()
    qtbot.waitUntil(lambda: bool(painted))
    assert {*painted} == {painted[0]}


def test_no_other_window_shows_meanwhile(fresh: MainWindow, qapp: QApplication) -> None:
    """Qt makes a window of whatever is shown before it has a parent."""
    for step in after_start.steps(fresh):
        step()
        assert [one for one in qapp.topLevelWidgets() if one.isVisible()] == [fresh]


@pytest.mark.parametrize("wide", [1280, 700])
def test_the_season_stays_where_it_is_when_what_stands_around_it_comes(
    fresh: MainWindow, opened: OpenFarm, qapp: QApplication, wide: int
) -> None:
    fresh.resize(wide, 700)
    fresh.season.keep_strip(strip_of_last_time(opened, wide))
    qapp.processEvents()

    def place() -> tuple[QPoint, int, int, float]:
        canvas = fresh.season.canvas
        return canvas.mapTo(fresh, QPoint()), canvas.width(), canvas.height(), canvas.scene().scale.day_px

    before = place()
    for step in after_start.steps(fresh):
        step()
        qapp.processEvents()
        assert place() == before


@pytest.mark.parametrize("name", [*after_start.MODULES])
def test_every_module_that_is_loaded_ahead_is_there(name: str) -> None:
    import_module(name)


# asked for before their turn, by those who are quick


def test_a_view_is_made_when_it_is_pressed(fresh: MainWindow, qtbot: QtBot) -> None:
    buttons = {one.text(): one for one in fresh.rail.findChildren(QToolButton)}
    qtbot.mouseClick(buttons["Setup"], LEFT)
    assert fresh.stack.currentIndex() == SETUP
    assert fresh.setup_view.isVisible()
    assert fresh.setup_view.pages[0].model.rowCount() == len(fresh.opened.farm.places)
    qtbot.mouseClick(buttons["Next set"], LEFT)
    assert fresh.stack.currentIndex() == NEXT_SET
    assert fresh.next_set.isVisible()


@pytest.mark.parametrize(
    ("key", "number"),
    [(Qt.Key.Key_2, TODAY_VIEW), (Qt.Key.Key_3, NEXT_SET), (Qt.Key.Key_4, BOOKS), (Qt.Key.Key_5, SETUP)],
)
def test_keys_of_the_menus_hold_at_once(fresh: MainWindow, qtbot: QtBot, key: Qt.Key, number: int) -> None:
    qtbot.keyClick(fresh.season.canvas, key, Qt.KeyboardModifier.ControlModifier)
    assert fresh.stack.currentIndex() == number


@pytest.mark.qt_log_ignore("does not support grabbing the", extend=True)
def test_a_menu_is_full_when_it_opens(fresh: MainWindow, qtbot: QtBot) -> None:
    bar = fresh.menuBar()
    title = next(one for one in bar.actions() if one.text() == "&Change")
    menu = next(one for one in bar.findChildren(QMenu) if one.menuAction() is title)
    assert menu.actions() == []
    qtbot.mouseClick(bar, LEFT, pos=bar.actionGeometry(title).center())
    qtbot.waitUntil(menu.isVisible)
    assert fresh.actions_by_name["add_batch"] in menu.actions()
    assert not fresh.actions_by_name["add_batch"].icon().isNull()
    assert menu.width() > fresh.fontMetrics().horizontalAdvance("Remove what is picked…")
    menu.close()


def test_what_can_be_done_is_right_in_a_menu_made_at_once(fresh: MainWindow) -> None:
    actions = fresh.actions_by_name
    assert not actions["undo"].isEnabled()
    assert not actions["change_picked"].isEnabled()
    assert not actions["keep_trial"].isEnabled()
    assert isinstance(actions["look_at_plan"], QAction)
    assert actions["look_at_plan"].isChecked()


def test_a_batch_that_is_pressed_shows_in_the_panel(fresh: MainWindow, qtbot: QtBot) -> None:
    canvas = fresh.season.canvas
    canvas.setFocus()
    QTest.keyClick(canvas, Qt.Key.Key_Right)
    batch_id = fresh.season.picked.batch_id
    assert batch_id is not None
    panel = fresh.season.side.currentWidget()
    assert panel is fresh.season.inspector
    change = next(one for one in panel.findChildren(QPushButton) if one.text() == "A day later")
    before = fresh.opened.farm.batch(batch_id).start
    qtbot.mouseClick(change, LEFT)
    assert (fresh.opened.farm.batch(batch_id).start - before).days == 1


def test_the_clash_button_leads_to_a_clash(fresh: MainWindow, qtbot: QtBot) -> None:
    qtbot.mouseClick(fresh.top.clashes, LEFT)
    assert fresh.season.picked.clash is not None
    assert fresh.season.inspector.cards is not None


def test_the_panel_tells_of_the_farm_as_it_is_when_it_comes(fresh: MainWindow) -> None:
    fresh.season.make_panel()
    clashing = fresh.season._clashes
    assert clashing
    for batch in fresh.opened.farm.batches:  # nothing is left that could clash
        fresh.take_change(remove(fresh.opened.farm, batch.id))
    words = [one.text() for one in fresh.season.inspector.findChildren(QLabel)]
    assert "Now a batch" in words
