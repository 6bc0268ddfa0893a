"""Facts on the season: a firm edge where numbers are counted, a mark where a day was planned otherwise."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta

import pytest
from PySide6.QtCore import QPoint, QPointF
from PySide6.QtGui import QColor, QImage
from PySide6.QtWidgets import QApplication, QToolTip
from pytestqt.qtbot import QtBot

from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.season_canvas.facts import counted_until, marks_by_place, marks_of_batch
from quailsched.desktop.season_canvas.lanes import Grouping
from quailsched.desktop.season_canvas.scene import Picked
from quailsched.desktop.season_table import stay_rows
from quailsched.desktop.theme import DARK, LIGHT, Theme, show_theme
from quailsched.edits.change import apply
from quailsched.edits.counts import record
from quailsched.farm.facts import Count, Sort
from quailsched.farm.records import Batch
from tests.desktop.pointing import Hand, band_of, middle_of
from tests.desktop.season_canvas.test_repaint import assert_whole, on_screen

NOW = datetime(2027, 4, 6, 7, tzinfo=UTC)
HATCHED, PLANNED, COUNTED = date(2027, 3, 19), date(2027, 3, 18), date(2027, 3, 28)


def named(window: MainWindow, name: str) -> Batch:
    return next(batch for batch in window.opened.plan.batches if batch.name == name)


def tell(window: MainWindow, count: Count) -> None:
    window.opened.apply_to_plan(record(window.opened.plan, count, window.today))


@pytest.fixture
def aster(window: MainWindow) -> Batch:
    """52 Asters hatched a day late; 4 died by 28 March, and that is the last that is known."""
    found = named(window, "Aster")
    tell(window, Count("hatch", Sort.HATCHED, HATCHED, NOW, 52, found.id))
    tell(window, Count("died", Sort.DIED, COUNTED, NOW, 4, found.id))
    return named(window, "Aster")


def test_a_band_is_counted_up_to_the_last_count(window: MainWindow, aster: Batch) -> None:
    season = window.opened.season
    _, band = band_of(window.season.canvas, "Aster", "Tub brooder")
    assert counted_until(season, band) == COUNTED + timedelta(days=1)
    _, band = band_of(window.season.canvas, "Aster", "Hatching tray")
    assert counted_until(season, band) == band.end  # whole
    for name, place in (("Aster", "Long run"), ("Clover", "Tub brooder")):
        assert counted_until(season, band_of(window.season.canvas, name, place)[1]) is None


def test_another_count_is_seen_on_a_band_that_stays_the_same(window: MainWindow, aster: Batch) -> None:
    band = band_of(window.season.canvas, "Aster", "Tub brooder")[1]
    assert counted_until(window.opened.season, band) == COUNTED + timedelta(days=1)
    there = window.opened.season.birds(aster, window.today)
    tell(window, Count("head", Sort.COUNTED, window.today, NOW, there, aster.id))
    assert counted_until(window.opened.season, band) == window.today + timedelta(days=1)


def test_a_day_that_was_planned_otherwise_is_marked_where_it_happened(window: MainWindow, aster: Batch) -> None:
    marks = marks_by_place(window.opened.season)
    tray = next(place.id for place in window.opened.plan.places if place.name == "Hatching tray")
    assert list(marks) == [tray]
    (mark,) = marks[tray].items
    assert (mark.day, mark.plan, mark.words) == (HATCHED, PLANNED, "hatched 19 Mar, planned 18 Mar")
    assert mark.start < PLANNED
    assert mark.end > HATCHED
    assert marks_of_batch(window.opened.season, aster).items == (mark,)
    assert marks_of_batch(window.opened.season, named(window, "Dill")).items == ()


def test_a_lane_keeps_its_marks_through_a_drag_of_others(window: MainWindow, aster: Batch, qtbot: QtBot) -> None:
    canvas = window.season.canvas
    before = [lane.content.facts.items for lane in canvas.scene().lanes]
    assert sum(map(len, before)) == 1
    window.nudge(named(window, "Bracken").id, 3)  # it goes through the tray as well
    assert [lane.content.facts.items for lane in canvas.scene().lanes] == before
    window.opened.undo()
    window.opened.undo()
    window.opened.undo()  # the nudge, the deaths, the hatch
    assert sum(len(lane.content.facts.items) for lane in canvas.scene().lanes) == 0


def picture(window: MainWindow) -> QImage:
    QApplication.processEvents()
    return window.season.canvas.viewport().grab().toImage()


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=["light", "dark"])
def test_the_edge_is_in_the_ink_where_it_is_counted_and_not_where_it_is_expected(
    theme: Theme, window: MainWindow, aster: Batch, qapp: QApplication
) -> None:
    show_theme(qapp, theme)
    window.season.pick(Picked())
    canvas = window.season.canvas
    lane, band = band_of(canvas, "Aster", "Tub brooder")
    image, scene = picture(window), canvas.scene()

    def edge(day: date) -> str:
        piece = band.piece_on(day)
        assert piece is not None
        x, y = scene.x(day) + scene.scale.day_px / 2, scene.top(lane.y(piece.high)) + 1.5
        return image.pixelColor(round(x), round(y)).name()

    ink = QColor(theme.ink).name()
    assert edge(COUNTED - timedelta(days=3)) == ink
    assert edge(COUNTED + timedelta(days=4)) != ink


def test_a_count_that_moves_nothing_is_painted_all_the_same(window: MainWindow) -> None:
    window.season.pick(Picked())
    canvas, now, aster = window.season.canvas, window.opened.checked, named(window, "Aster")
    count = Count("set", Sort.SET, aster.start, NOW, aster.number, aster.id)  # as planned
    after = now.after(apply(now.season.farm, record(now.season.farm, count, window.today)))
    before = on_screen(window)
    canvas.show_season(after, after.since(window.today))
    assert on_screen(window) != before  # the edge is firm now
    assert_whole(window)


@pytest.mark.parametrize("picked", [True, False])
def test_a_scroll_past_facts_leaves_nothing_behind(window: MainWindow, aster: Batch, picked: bool) -> None:
    canvas = window.season.canvas
    window.season.pick(Picked(batch_id=aster.id) if picked else Picked())
    canvas.zoom(1.7)
    bar = canvas.horizontalScrollBar()
    mark = canvas.scene().x(HATCHED) - canvas.scene().left
    bar.setValue(bar.value() + round(mark) - 4)  # the mark stands at the edge of the view
    assert_whole(window)
    for step in (3, 9, -14, 40, -27, -60, 5):
        bar.setValue(bar.value() + step)
        assert_whole(window)


def test_a_drag_over_a_mark_leaves_nothing_behind(window: MainWindow, aster: Batch) -> None:
    canvas = window.season.canvas
    canvas.zoom(1.7)
    canvas.go_to(HATCHED)
    hand = Hand(canvas).press(middle_of(canvas, "Bracken", "Hatching tray"))
    for days in (-12, -6, 9):  # to the days of the mark
        hand.by(days * canvas.scene().scale.day_px)
        canvas.drag.label.hide()
        assert_whole(window)
    hand.release()
    assert_whole(window)


def test_lanes_of_batches_show_what_moves_nothing_else(window: MainWindow, aster: Batch) -> None:
    canvas = window.season.canvas
    canvas.group_by(Grouping.BATCHES, is_told=False)
    lane = next(lane for lane in canvas.scene().lanes if lane.content.id == aster.id)
    assert [mark.words for mark in lane.content.facts.items] == ["hatched 19 Mar, planned 18 Mar"]
    window.opened.undo()
    window.opened.undo()
    lane = next(lane for lane in canvas.scene().lanes if lane.content.id == aster.id)
    assert lane.content.facts.items == ()


def test_the_pointer_tells_the_plan_beside_the_fact(window: MainWindow, aster: Batch, qtbot: QtBot) -> None:
    canvas = window.season.canvas
    scene = canvas.scene()
    lane, _ = band_of(canvas, "Aster", "Hatching tray")
    at = QPoint(round(scene.x(HATCHED) + scene.scale.day_px / 2), round(scene.top(lane.base_y)) - 3)
    canvas._hover(QPointF(at))
    assert "Aster: hatched 19 Mar, planned 18 Mar" in QToolTip.text()
    lane, _ = band_of(canvas, "Aster", "Tub brooder")
    x = scene.x(COUNTED) + scene.scale.day_px / 2
    canvas._hover(QPointF(x, scene.top(lane.base_y) - 5))
    assert "Aster: 48 birds counted, 9 days old" in QToolTip.text()
    canvas._hover(QPointF(x + 10 * scene.scale.day_px, scene.top(lane.base_y) - 5))
    assert "counted" not in QToolTip.text()
    QToolTip.hideText()


def test_the_table_says_the_same(window: MainWindow, aster: Batch) -> None:
    rows = {row.cells[:2]: row.cells for row in stay_rows(window.opened.season, ())}
    assert rows["Aster", "Hatching tray"][6] == "hatched 19 Mar, planned 18 Mar; counted until 19 Mar"
    assert rows["Aster", "Tub brooder"][6] == "counted until 28 Mar"
    assert rows["Clover", "Tub brooder"][6] == ""


def test_a_batch_with_facts_says_before_the_release_that_its_day_0_stays(
    window: MainWindow, aster: Batch, qtbot: QtBot
) -> None:
    canvas, before = window.season.canvas, window.opened.plan
    hand = Hand(canvas).press(middle_of(canvas, "Aster", "Tub brooder")).by(6 * canvas.scene().scale.day_px)
    told = canvas.drag.told()
    assert told is not None
    assert not told.is_possible
    assert told.worse == ("1 Mar stays, for counts were recorded since",)
    hand.release()
    assert window.opened.plan == before
