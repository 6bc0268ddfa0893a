"""Bands dragged with the mouse: the season answers on the way, one step of undo comes of it, Escape takes it back."""

from datetime import timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QWidget
from pytestqt.qtbot import QtBot

from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.season_canvas.drag import Verdict
from quailsched.desktop.season_canvas.lanes import Grouping
from quailsched.farm.records import Batch
from tests.desktop.pointing import Hand, band_of, edge_of, middle_of


def batch_in(window: MainWindow, name: str) -> Batch:
    return next(batch for batch in window.opened.farm.batches if batch.name == name)


def words(widget: QWidget) -> list[str]:
    return [label.text() for label in widget.findChildren(QLabel)]


def told(window: MainWindow) -> Verdict:
    verdict = window.season.canvas.drag.told()
    assert verdict is not None
    return verdict


def test_a_band_dragged_by_days_moves_its_batch_in_one_step(window: MainWindow) -> None:
    canvas = window.season.canvas
    fern, steps = batch_in(window, "Fern"), len(window.opened.history())
    hand = Hand(canvas).press(middle_of(canvas, "Fern", "Old cabinet"))
    hand.by(4 * canvas.scene().scale.day_px)
    assert batch_in(window, "Fern").start == fern.start  # nothing is changed on the way
    _, band = band_of(canvas, "Fern", "Old cabinet")
    assert band.start == fern.start + timedelta(days=4)  # but shown
    assert "4 days later" in told(window).text
    hand.release()
    assert batch_in(window, "Fern").start == fern.start + timedelta(days=4)
    assert len(window.opened.history()) == steps + 1
    window.undo()
    assert batch_in(window, "Fern") == fern


def test_the_window_answers_while_the_mouse_moves(window: MainWindow) -> None:
    canvas = window.season.canvas
    ahead = window.top.clashes.text()
    freed = words(window.season.frees_up)
    hand = Hand(canvas).press(middle_of(canvas, "Clover", "Tub brooder"))
    hand.by(21 * canvas.scene().scale.day_px)
    assert window.top.clashes.text() != ahead
    assert words(window.season.frees_up) != freed
    assert told(window).better or told(window).worse
    hand.release()
    window.undo()
    assert window.top.clashes.text() == ahead


def test_shift_drags_by_whole_weeks(window: MainWindow) -> None:
    canvas = window.season.canvas
    fern = batch_in(window, "Fern")
    hand = Hand(canvas).press(middle_of(canvas, "Fern", "Old cabinet"))
    hand.by(9 * canvas.scene().scale.day_px, held=Qt.KeyboardModifier.ShiftModifier)
    hand.release()
    assert (batch_in(window, "Fern").start - fern.start).days == 7


def test_escape_puts_everything_back(window: MainWindow, qtbot: QtBot) -> None:
    canvas = window.season.canvas
    canvas.setFocus()
    fern, ahead, steps = batch_in(window, "Fern"), window.top.clashes.text(), len(window.opened.history())
    hand = Hand(canvas).press(middle_of(canvas, "Fern", "Old cabinet"))
    hand.by(30 * canvas.scene().scale.day_px)
    qtbot.keyClick(canvas, Qt.Key.Key_Escape)
    assert canvas.layout_shown.season is window.opened.season
    assert window.top.clashes.text() == ahead
    assert not canvas.drag.label.isVisible()
    hand.by(10).release()  # the button is still down: that does nothing more
    assert batch_in(window, "Fern") == fern
    assert len(window.opened.history()) == steps
    assert window.season.picked.batch_id == fern.id  # what was picked by the press stays picked


def test_a_click_that_trembles_moves_nothing(window: MainWindow) -> None:
    canvas = window.season.canvas
    steps = len(window.opened.history())
    Hand(canvas).press(middle_of(canvas, "Fern", "Old cabinet")).by(3, 2).release()
    assert len(window.opened.history()) == steps


def test_an_edge_dragged_lets_the_birds_leave_later_and_come_later_into_the_next_place(window: MainWindow) -> None:
    canvas = window.season.canvas
    before = batch_in(window, "Clover")
    brooder = next(
        n for n, stay in enumerate(before.stays) if window.opened.farm.place(stay.place_id).role == "brooder"
    )
    hand = Hand(canvas).press(edge_of(canvas, "Clover", "Tub brooder", at_end=True))
    hand.by(2 * canvas.scene().scale.day_px)
    assert told(window).text.startswith("Clover leaves Tub brooder")
    hand.release()
    after = batch_in(window, "Clover")
    day = before.stays[brooder].to_day
    assert day is not None
    assert after.start == before.start
    assert after.stays[brooder].to_day == after.stays[brooder + 1].from_day == day + 2


def test_the_first_edge_of_a_later_stay_moves_the_day_between_both(window: MainWindow) -> None:
    canvas = window.season.canvas
    before = batch_in(window, "Clover")
    brooder = next(
        n for n, stay in enumerate(before.stays) if window.opened.farm.place(stay.place_id).role == "brooder"
    )
    px = canvas.scene().scale.day_px
    Hand(canvas).press(edge_of(canvas, "Clover", "Tub brooder", at_end=False)).by(2 * px).release()
    after = batch_in(window, "Clover")
    assert after.stays[brooder].from_day == after.stays[brooder - 1].to_day == before.stays[brooder].from_day + 2


def test_a_band_dragged_into_another_lane_changes_its_place(window: MainWindow) -> None:
    canvas = window.season.canvas
    start = middle_of(canvas, "Clover", "Tub brooder")
    lane = next(lane for lane in canvas.scene().lanes if lane.content.title == "Shed brooder")
    down = canvas.scene().top((lane.line_y + lane.base_y) / 2) - start.y()
    hand = Hand(canvas).press(start).by(0, down)
    assert "Shed brooder in place of Tub brooder" in told(window).text
    hand.release()
    places = [window.opened.farm.place(stay.place_id).name for stay in batch_in(window, "Clover").stays]
    assert "Shed brooder" in places
    assert "Tub brooder" not in places


def test_what_cannot_be_says_why_before_it_is_let_go(window: MainWindow) -> None:
    canvas = window.season.canvas
    before, steps = batch_in(window, "Clover"), len(window.opened.history())
    start = middle_of(canvas, "Clover", "Tub brooder")
    lane = next(lane for lane in canvas.scene().lanes if lane.content.title == "Bench setter")
    hand = Hand(canvas).press(start).by(0, canvas.scene().top((lane.line_y + lane.base_y) / 2) - start.y())
    assert not told(window).is_possible
    assert told(window).worse[0]
    hand.release()
    assert batch_in(window, "Clover") == before
    assert len(window.opened.history()) == steps


def test_up_and_down_inside_a_lane_splits_a_batch_over_two_places(window: MainWindow) -> None:
    canvas = window.season.canvas
    before = batch_in(window, "Clover")
    lane, band = band_of(canvas, "Clover", "Tub brooder")
    piece = band.pieces[len(band.pieces) // 2]
    start = middle_of(canvas, "Clover", "Tub brooder")
    third = (lane.y(piece.low) - lane.y(piece.high)) / 6
    hand = Hand(canvas).press(start).by(0, -third)  # from the middle up by a sixth: a third of the band is above
    assert told(window).text.startswith("Split Clover: ")
    hand.release()
    first, second = batch_in(window, "Clover"), batch_in(window, "Clover 2")
    assert first.number + second.number == before.number
    assert second.number == pytest.approx(before.number / 3, rel=0.15)
    places = {window.opened.farm.place(stay.place_id).name for stay in second.stays}
    assert "Shed brooder" in places
    window.undo()
    assert batch_in(window, "Clover") == before


def test_by_batch_a_band_moves_in_days_only(window: MainWindow) -> None:
    canvas = window.season.canvas
    canvas.group_by(Grouping.BATCHES)
    fern = batch_in(window, "Fern")
    Hand(canvas).press(middle_of(canvas, "Fern", "Fern")).by(3 * canvas.scene().scale.day_px, 60).release()
    after = batch_in(window, "Fern")
    assert after.start == fern.start + timedelta(days=3)
    assert after.stays == fern.stays
