"""What is drawn again after a change or a scroll is all that differs: the picture is the one of a whole paint."""

from collections.abc import Callable
from datetime import date, timedelta

import pytest
from PySide6.QtCore import QPointF
from PySide6.QtGui import QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.season_canvas.canvas import SeasonCanvas
from quailsched.desktop.season_canvas.ghosts import ghosts_of
from quailsched.desktop.season_canvas.lanes import Grouping
from quailsched.desktop.season_canvas.scene import Picked
from quailsched.desktop.theme import DARK, LIGHT, show_theme
from quailsched.season.clashes import checked
from quailsched.season.season import Season
from tests.bench.big_farm import big_farm
from tests.desktop.pointing import Hand, middle_of

_DASHES = 40  # pixels: Qt begins the dashes of an outline elsewhere where most of it is out of sight
_CORNER = 8  # pixels, of all: where corners of several bands meet, a pixel may fall to one or the other
_ROUNDING = 6  # of 255: the edge of a line drawn on its own and in one stroke with others


def on_screen(window: MainWindow) -> QImage:
    """What the canvas has drawn so far, without asking it to draw."""
    QApplication.processEvents()
    canvas = window.season.canvas
    area = canvas.geometry().translated(canvas.mapTo(window, canvas.rect().topLeft()) - canvas.pos())
    return window.screen().grabWindow(window.winId()).toImage().copy(area)


def differing(one: QImage, other: QImage) -> list[tuple[int, int]]:
    assert one.size() == other.size()
    if one == other:
        return []
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


def test_what_is_told_beside_the_pointer_leaves_nothing_behind(window: MainWindow) -> None:
    canvas = window.season.canvas
    hand = Hand(canvas).press(middle_of(canvas, "Clover", "Tub brooder"))
    for px in (60, 35, -50):
        hand.by(px)
        assert canvas.drag.label.isVisible()
        shown = on_screen(window)
        canvas.viewport().update()
        assert len(differing(shown, on_screen(window))) <= _CORNER


def test_what_comes_in_fits_to_what_is_there_before_it_lies_still(window: MainWindow, qtbot: QtBot) -> None:
    """Strip by strip, words come in whole: they stand where they stand in the season, not at the edge of the view."""
    canvas = window.season.canvas
    canvas.zoom(1.7)
    bar = canvas.horizontalScrollBar()
    for sign in (1, -1):
        qtbot.waitUntil(lambda: not canvas.is_scrolling)
        for _ in range(20):
            bar.setValue(bar.value() + sign * 17)
            QApplication.processEvents()
        assert canvas.is_scrolling
        shown = on_screen(window)
        canvas.viewport().update()
        assert len(differing(shown, on_screen(window))) < _DASHES


def test_a_jump_lies_still_at_once(window: MainWindow) -> None:
    canvas = window.season.canvas
    canvas.zoom(1.7)
    day = canvas.scene().days()[1]
    canvas.go_to(day)
    assert canvas.scene().x(day) < canvas.scene().width / 2
    assert not canvas.is_scrolling


def anew(window: MainWindow) -> QImage:
    """The picture of a canvas that has never shown anything else."""
    canvas = window.season.canvas
    other = SeasonCanvas(canvas.today)
    other.setFont(canvas.font())
    other.resize(canvas.size())
    other.show()
    other.show_season(window.opened.checked, canvas.layout_shown.clashes)
    other.group_by(canvas.grouping, is_told=False)
    scene = canvas.scene()
    other.pick(scene.picked)
    other.show_ghosts(scene.ghosts)
    other.zoom(scene.scale.day_px / other.scene().scale.day_px)
    for bar, of in ((other.horizontalScrollBar(), scene.dx), (other.verticalScrollBar(), scene.dy)):
        bar.setValue(round(of))
    other.end_preview()
    QApplication.processEvents()
    image = still(other)
    other.close()
    return image


def still(canvas: SeasonCanvas) -> QImage:
    deadline = 100
    while canvas.is_scrolling and deadline:
        QTest.qWait(10)
        deadline -= 1
    canvas.clearFocus()
    port, left = (
        canvas.viewport().rect(),
        round(canvas.scene().left),
    )  # without the switch, which is a widget of its own
    return canvas.viewport().grab(port.adjusted(left, 0, 0, 0)).toImage()


def _dark(window: MainWindow) -> None:
    show_theme(QApplication.instance(), DARK)  # type: ignore[arg-type]


def _outlines(window: MainWindow) -> None:
    season = window.opened.season
    window.season.canvas.show_ghosts(ghosts_of(season, [batch.id for batch in season.farm.batches[:3]], "plan"))


_CHANGES: dict[str, Callable[[MainWindow], object]] = {
    "theme": _dark,
    "zoom": lambda window: window.season.canvas.zoom(1.6),
    "size": lambda window: window.resize(1000, 700),
    "picked": lambda window: window.season.canvas.pick(Picked(batch_id=window.opened.farm.batches[0].id)),
    "clash": lambda window: window.season.canvas.pick(Picked(clash=window.season.canvas.layout_shown.clashes[0])),
    "outlines": _outlines,
    "grouping": lambda window: window.season.canvas.group_by(Grouping.BATCHES, is_told=False),
    "scrolled": lambda window: window.season.canvas.horizontalScrollBar().setValue(3),
}


@pytest.mark.parametrize("what", list(_CHANGES))
def test_nothing_of_what_is_kept_from_frame_to_frame_is_seen_when_it_no_longer_holds(
    window: MainWindow, what: str
) -> None:
    """The picture is that of a canvas made anew, which cannot have kept anything."""
    canvas = window.season.canvas
    canvas.zoom(1.2)
    hand = Hand(canvas).press(middle_of(canvas, "Clover", "Tub brooder"))
    hand.by(40)
    canvas.cancel_drag()
    before = still(canvas)
    _CHANGES[what](window)
    QApplication.processEvents()
    assert still(canvas) != before
    assert differing(still(canvas), anew(window)) == []


def test_on_a_crowded_farm_neither_drags_nor_scrolls_leave_anything_behind(qtbot: QtBot, qapp: QApplication) -> None:
    """Bands that stand on what is dragged move with it, and the curves of their batches across other lanes."""
    show_theme(qapp, LIGHT)
    canvas = crowded(qtbot)
    batches = [batch for batch in canvas.season.farm.batches if abs((batch.start - _DAY).days) < 40]  # type: ignore[union-attr]
    layers = next(batch for batch in batches if len(batch.stays) > _STAYS_OF_SALE)
    for batch in (layers, batches[0]):
        scene = canvas.scene()
        lane = scene.lane_of(batch.stays[2].place_id)
        assert lane is not None
        band = next(one for one in lane.content.bands.items if one.batch_id == batch.id)
        left, top, right, bottom = scene.rect_of(lane, band.pieces[len(band.pieces) // 2])
        at = QPointF((left + right) / 2, (top + bottom) / 2)
        assert canvas.take_hold(at)
        for px in (9, 13, 40, 36, -22):
            canvas.drag.move(at + QPointF(px, 0), weeks=False)
            assert_whole_canvas(canvas)
        canvas.cancel_drag()
        assert_whole_canvas(canvas)
    for step in (20, 20, 20, -5):
        canvas.horizontalScrollBar().setValue(canvas.horizontalScrollBar().value() + step)
        QApplication.processEvents()
    qtbot.waitUntil(lambda: not canvas.is_scrolling)
    assert_whole_canvas(canvas)


_DAY, _STAYS_OF_SALE = date(2029, 3, 5), 4


def crowded(qtbot: QtBot) -> SeasonCanvas:
    """A canvas with the farm of ten years, four pixels a day, about ``_DAY``."""
    canvas = SeasonCanvas(_DAY)
    qtbot.addWidget(canvas)
    canvas.resize(1000, 800)
    canvas.show()
    now = checked(Season(big_farm()))
    canvas.show_season(now, now.since(_DAY))
    canvas.zoom(4.0 / canvas.scene().scale.day_px)
    canvas.go_to(_DAY)
    return canvas


def assert_whole_canvas(canvas: SeasonCanvas) -> None:
    """As ``assert_whole``, of a canvas that stands for itself."""
    QApplication.processEvents()
    shown = canvas.screen().grabWindow(canvas.winId()).toImage()
    canvas.viewport().update()
    QApplication.processEvents()
    assert differing(shown, canvas.screen().grabWindow(canvas.winId()).toImage()) == []


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
