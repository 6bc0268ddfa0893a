"""The field for finding, by real keys and clicks."""

from datetime import date, timedelta

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from quailsched.desktop.find_box import FindBox
from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.season_canvas.lanes import Grouping
from quailsched.farm.records import Batch

Key = Qt.Key


def batch_in(window: MainWindow, name: str) -> Batch:
    return next(batch for batch in window.opened.farm.batches if batch.name == name)


def type_in(window: MainWindow, qtbot: QtBot, text: str, command: str = "find_something") -> None:
    window.actions_by_name[command].trigger()
    assert window.find_box.hasFocus()
    qtbot.keyClicks(window.find_box, text)


def is_in_view(window: MainWindow, day: date) -> bool:
    scene = window.season.canvas.scene()
    return scene.left <= scene.x(day) <= scene.width


def test_typing_a_name_and_return_picks_the_batch(window: MainWindow, qtbot: QtBot) -> None:
    window.show_setup()
    type_in(window, qtbot, "fer")
    assert window.find_box.found.isVisible()
    qtbot.keyClick(window.find_box, Key.Key_Return)
    assert window.season.picked.batch_id == batch_in(window, "Fern").id
    assert window.season.canvas.hasFocus()
    assert is_in_view(window, batch_in(window, "Fern").start)
    assert window.find_box.text() == ""
    assert not window.find_box.found.isVisible()


def test_arrows_choose_another_row_and_return_takes_that_one(window: MainWindow, qtbot: QtBot) -> None:
    # "e": Elder begins with it; of those that hold it, Clover (12 April) is nearest to today, then Bracken (22 March).
    type_in(window, qtbot, "e")
    for _ in range(2):
        qtbot.keyClick(window.find_box, Key.Key_Down)
    assert window.find_box.text() == "e"  # the field keeps what was typed
    qtbot.keyClick(window.find_box, Key.Key_Return)
    assert window.season.picked.batch_id == batch_in(window, "Bracken").id


def test_up_from_the_first_row_comes_to_the_last(window: MainWindow, qtbot: QtBot) -> None:
    type_in(window, qtbot, "brood")
    qtbot.keyClick(window.find_box, Key.Key_Up)
    qtbot.keyClick(window.find_box, Key.Key_Return)
    shed = next(place for place in window.opened.farm.places if place.name == "Shed brooder")
    assert window.season.canvas.scene().marked_lane == shed.id


def test_a_row_that_is_clicked_is_taken(window: MainWindow, qtbot: QtBot) -> None:
    type_in(window, qtbot, "brood")
    found = window.find_box.found
    row = found.visualRect(found.model().index(1, 0)).center()
    qtbot.mouseMove(found.viewport(), row)
    qtbot.mouseClick(found.viewport(), Qt.MouseButton.LeftButton, pos=row)
    shed = next(place for place in window.opened.farm.places if place.name == "Shed brooder")
    assert window.season.canvas.scene().marked_lane == shed.id
    assert window.season.canvas.hasFocus()


def test_a_place_is_brought_up_as_a_lane_until_something_is_picked(window: MainWindow, qtbot: QtBot) -> None:
    canvas = window.season.canvas
    window.resize(1000, 480)
    QApplication.processEvents()
    canvas.group_by(Grouping.BATCHES)
    ark = next(place for place in window.opened.farm.places if place.name == "Grass ark")
    type_in(window, qtbot, "grass")
    qtbot.keyClick(window.find_box, Key.Key_Return)
    scene = canvas.scene()
    lane = scene.lane_of(ark.id)
    assert lane is not None
    assert scene.head <= scene.top(lane.line_y) < scene.top(lane.base_y) <= scene.height
    assert scene.marked_lane == ark.id
    qtbot.keyClick(canvas, Key.Key_Escape)  # nothing was picked: the mark goes all the same
    assert canvas.scene().marked_lane is None


def test_a_day_that_is_found_is_marked_until_something_is_picked(window: MainWindow, qtbot: QtBot) -> None:
    type_in(window, qtbot, f"1 dec {window.today.year}", "go_to_day")
    qtbot.keyClick(window.find_box, Key.Key_Return)
    assert window.season.canvas.scene().marked_day == date(window.today.year, 12, 1)
    assert is_in_view(window, date(window.today.year, 12, 1))
    window.season.canvas.next_clash()
    assert window.season.canvas.scene().marked_day is None


def test_a_day_far_beyond_the_season_is_gone_to_until_the_season_is_fitted(window: MainWindow, qtbot: QtBot) -> None:
    canvas = window.season.canvas
    end = canvas.last_day()
    far = date(window.today.year + 4, 6, 1)
    type_in(window, qtbot, f"1 jun {far.year}", "go_to_day")
    qtbot.keyClick(window.find_box, Key.Key_Return)
    assert is_in_view(window, far)
    qtbot.keyClick(canvas, Key.Key_Escape)
    assert is_in_view(window, far)  # no jump back
    window.actions_by_name["fit_season"].trigger()
    assert canvas.last_day() == end


def test_a_day_of_a_batch_picks_it_and_marks_the_day(window: MainWindow, qtbot: QtBot) -> None:
    clover = batch_in(window, "Clover")
    type_in(window, qtbot, "day 30 of clo")
    qtbot.keyClick(window.find_box, Key.Key_Return)
    scene = window.season.canvas.scene()
    assert scene.picked.batch_id == clover.id
    assert scene.marked_day == clover.start + timedelta(days=30)


def test_names_are_not_found_where_a_day_is_asked_for(window: MainWindow, qtbot: QtBot) -> None:
    type_in(window, qtbot, "fern", "go_to_day")
    qtbot.keyClick(window.find_box, Key.Key_Return)  # there is nothing to take
    assert window.find_box.hasFocus()
    assert window.season.picked.batch_id is None
    window.actions_by_name["find_something"].trigger()  # what is typed is looked for anew
    qtbot.keyClick(window.find_box, Key.Key_Return)
    assert window.season.picked.batch_id == batch_in(window, "Fern").id


def test_the_field_is_for_everything_again_once_it_is_left(window: MainWindow, qtbot: QtBot) -> None:
    placeholder = window.find_box.placeholderText()
    type_in(window, qtbot, "1 dec", "go_to_day")
    assert window.find_box.placeholderText() != placeholder
    qtbot.keyClick(window.find_box, Key.Key_Escape)
    assert window.find_box.placeholderText() == placeholder


def test_escape_leaves_the_field_and_changes_nothing(window: MainWindow, qtbot: QtBot) -> None:
    window.season.canvas.setFocus()
    type_in(window, qtbot, "fern")
    qtbot.keyClick(window.find_box, Key.Key_Escape)
    assert window.season.picked.batch_id is None
    assert window.season.canvas.hasFocus()
    assert window.find_box.text() == ""
    assert not window.find_box.found.isVisible()


def test_escape_gives_the_keys_back_to_the_view_that_had_them(window: MainWindow, qtbot: QtBot) -> None:
    window.show_next_set()
    landscape = window.next_set.landscape
    assert landscape.hasFocus()
    type_in(window, qtbot, "fern")
    qtbot.keyClick(window.find_box, Key.Key_Escape)
    assert landscape.hasFocus()


def test_a_click_elsewhere_closes_the_list(window: MainWindow, qtbot: QtBot) -> None:
    type_in(window, qtbot, "fern")
    canvas = window.season.canvas
    qtbot.mouseClick(canvas.viewport(), Qt.MouseButton.LeftButton, pos=QPoint(20, canvas.viewport().height() - 6))
    assert not window.find_box.found.isVisible()
    assert window.find_box.text() == ""


def test_the_list_stays_inside_a_small_window(window: MainWindow, qtbot: QtBot) -> None:
    small = QWidget()
    qtbot.addWidget(small)
    small.resize(200, 120)
    field = FindBox(lambda: window.opened.farm, window.today, small)
    field.setGeometry(120, 10, 70, 24)
    small.show()
    with qtbot.waitActive(small):
        small.activateWindow()
    field.setFocus()
    qtbot.keyClicks(field, "e")
    assert field.found.isVisible()
    assert small.rect().contains(field.found.geometry())
    assert field.found.geometry().top() >= 34
    assert field.found.width() > field.width()  # as wide as the window lets it be


def test_a_hint_tells_what_can_be_typed_and_cannot_be_taken(window: MainWindow, qtbot: QtBot) -> None:
    type_in(window, qtbot, "")
    found = window.find_box.found
    assert "in 3 weeks" in found.model().index(0, 0).data()
    qtbot.mouseClick(
        found.viewport(), Qt.MouseButton.LeftButton, pos=found.visualRect(found.model().index(0, 0)).center()
    )
    qtbot.keyClick(window.find_box, Key.Key_Down)
    qtbot.keyClick(window.find_box, Key.Key_Return)
    assert window.find_box.hasFocus()
    assert found.row is None


@pytest.mark.parametrize("typed", ["grass", "1 dec"])
def test_what_shows_only_on_lanes_is_shown_on_lanes(window: MainWindow, qtbot: QtBot, typed: str) -> None:
    window.actions_by_name["swap_table"].trigger()
    type_in(window, qtbot, typed)
    qtbot.keyClick(window.find_box, Key.Key_Return)
    assert not window.season.is_table
    scene = window.season.canvas.scene()
    assert scene.marked_lane is not None or scene.marked_day is not None
