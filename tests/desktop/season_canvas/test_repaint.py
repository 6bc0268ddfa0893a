"""What is drawn again after a change or a scroll is all that differs: the picture is the one of a whole paint."""

from collections.abc import Callable
from datetime import timedelta

import pytest
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.season_canvas.lanes import Grouping
from tests.desktop.pointing import Hand, middle_of

_ROUNDING = 6  # of 255: the edge of a line drawn on its own and in one stroke with others


def on_screen(window: MainWindow) -> QImage:
    """What the canvas has drawn so far, without asking it to draw."""
    QApplication.processEvents()
    canvas = window.season.canvas
    area = canvas.geometry().translated(canvas.mapTo(window, canvas.rect().topLeft()) - canvas.pos())
    return window.screen().grabWindow(window.winId()).toImage().copy(area)


def differing(one: QImage, other: QImage) -> list[tuple[int, int]]:
    assert one.size() == other.size()
    return [
        (x, y)
        for y in range(one.height())
        for x in range(one.width())
        if one.pixel(x, y) != other.pixel(x, y) and _is_far(one, other, x, y)
    ]


def _is_far(one: QImage, other: QImage, x: int, y: int) -> bool:
    a, b = one.pixelColor(x, y), other.pixelColor(x, y)
    return max(abs(a.red() - b.red()), abs(a.green() - b.green()), abs(a.blue() - b.blue())) > _ROUNDING


def assert_whole(window: MainWindow) -> None:
    """The picture is that of a whole paint of the same moment."""
    shown = on_screen(window)
    window.season.canvas.viewport().update()
    assert differing(shown, on_screen(window)) == []


@pytest.mark.parametrize("grouping", list(Grouping))
def test_a_drag_leaves_nothing_behind(window: MainWindow, qtbot: QtBot, grouping: Grouping) -> None:
    canvas = window.season.canvas
    canvas.group_by(grouping)
    finish(window, qtbot)
    lane = "Tub brooder" if grouping is Grouping.PLACES else "Clover"
    hand = Hand(canvas).press(middle_of(canvas, "Clover", lane))
    for days in (3, 9, -14, 5):
        hand.by(days * canvas.scene().scale.day_px)
        canvas.drag.label.hide()  # it goes with the pointer and is drawn by itself
        assert_whole(window)
    hand.release()
    assert_whole(window)


def test_a_scroll_leaves_nothing_behind(window: MainWindow, qtbot: QtBot) -> None:
    canvas = window.season.canvas
    canvas.zoom(1.7)
    bar = canvas.horizontalScrollBar()
    for step in (13, 40, -27, -60, 5):
        bar.setValue(bar.value() + step)
        qtbot.waitUntil(lambda: not canvas.is_scrolling)  # words at the edges follow a little later
        assert_whole(window)


def test_a_change_from_elsewhere_leaves_nothing_behind(window: MainWindow) -> None:
    fern = next(batch for batch in window.opened.farm.batches if batch.name == "Fern")
    steps: list[Callable[[], object]] = [
        lambda: window.nudge(fern.id, 3),
        lambda: window.nudge(fern.id, -10),
        window.undo,
    ]
    for step in steps:
        step()
        assert_whole(window)


def finish(window: MainWindow, qtbot: QtBot) -> None:
    """Wait until the change between the groupings has arrived."""
    qtbot.waitUntil(lambda: not window.season.canvas.is_changing)


def test_the_grouping_changes_on_the_way_and_keeps_what_is_picked(window: MainWindow, qtbot: QtBot) -> None:
    canvas = window.season.canvas
    fern = next(batch for batch in window.opened.farm.batches if batch.name == "Fern")
    canvas.go_to(fern.start - timedelta(days=20))
    before = on_screen(window)
    canvas.swap_grouping()
    assert canvas.grouping is Grouping.BATCHES
    finish(window, qtbot)
    by_batch = on_screen(window)
    assert len(differing(before, by_batch)) > 1000
    assert_whole(window)
    canvas.swap_grouping()
    finish(window, qtbot)
    assert differing(before, on_screen(window)) == []
