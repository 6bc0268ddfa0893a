"""The strip with all days: it shows what is in view, and moves it."""

from datetime import date, timedelta

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QColor, QImage, QWheelEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.season_canvas.overview import Overview
from quailsched.desktop.theme import LIGHT
from quailsched.edits.batches import shift
from quailsched.edits.change import apply
from quailsched.farm.units import day_text
from quailsched.season.clash import Clash
from quailsched.season.severity import Severity, severity_of

LEFT = Qt.MouseButton.LeftButton
Key = Qt.Key


@pytest.fixture
def near(window: MainWindow) -> MainWindow:
    """With a third of the season in view, from somewhere in its middle."""
    canvas = window.season.canvas
    canvas.zoom(3.0)
    canvas.look_from(canvas.first_day() + (canvas.last_day() - canvas.first_day()) / 3)
    QApplication.processEvents()
    return window


def days_in_view(window: MainWindow) -> tuple[date, date]:
    return window.season.canvas.scene().days()


def x_of(window: MainWindow, day: date) -> float:
    canvas, overview = window.season.canvas, window.season.overview
    first, end = canvas.first_day(), canvas.last_day()
    return (day - first).days * overview.width() / (end - first).days


def drag(overview: Overview, qtbot: QtBot, start: QPoint, dx: int, steps: int = 1) -> None:
    qtbot.mousePress(overview, LEFT, pos=start)
    for step in range(1, steps + 1):
        qtbot.mouseMove(overview, start + QPoint(round(dx * step / steps), 0))
    qtbot.mouseRelease(overview, LEFT, pos=start + QPoint(dx, 0))


def test_the_frame_is_what_is_in_view(near: MainWindow) -> None:
    first, end = days_in_view(near)
    left, right = near.season.overview.window_px()
    assert left == pytest.approx(x_of(near, first), abs=1)
    assert right == pytest.approx(x_of(near, end), abs=1)


def test_a_press_beside_the_frame_goes_there(near: MainWindow, qtbot: QtBot) -> None:
    overview = near.season.overview
    qtbot.mouseClick(overview, LEFT, pos=QPoint(round(overview.width() * 0.8), 10))
    left, right = overview.window_px()
    assert (left + right) / 2 == pytest.approx(overview.width() * 0.8, abs=12)


def test_the_frame_is_pushed_along(near: MainWindow, qtbot: QtBot) -> None:
    overview = near.season.overview
    left, right = overview.window_px()
    drag(overview, qtbot, QPoint(round((left + right) / 2), 10), 60, steps=4)
    pushed, end = overview.window_px()
    assert pushed == pytest.approx(left + 60, abs=6)
    assert end - pushed == pytest.approx(right - left, abs=6)


@pytest.mark.parametrize(("at_end", "dx"), [(True, 80), (True, -40), (False, -80), (False, 40)])
def test_an_edge_is_pulled_and_the_other_stays_where_it_is(
    near: MainWindow, qtbot: QtBot, at_end: bool, dx: int
) -> None:
    overview = near.season.overview
    before, edges = days_in_view(near), overview.window_px()
    drag(overview, qtbot, QPoint(round(edges[at_end]), 10), dx, steps=20)
    after, pulled = days_in_view(near), overview.window_px()
    assert abs((after[not at_end] - before[not at_end]).days) <= 1  # twenty small pulls do not add up
    assert pulled[at_end] == pytest.approx(edges[at_end] + dx, abs=8)


def test_keys_move_what_is_in_view(near: MainWindow, qtbot: QtBot) -> None:
    canvas, overview = near.season.canvas, near.season.overview
    overview.setFocus()
    first, end = days_in_view(near)
    qtbot.keyClick(overview, Key.Key_Right)
    assert first < days_in_view(near)[0] < end
    qtbot.keyClick(overview, Key.Key_Left)
    assert days_in_view(near)[0] == first
    qtbot.keyClick(overview, Key.Key_PageDown)
    assert abs((days_in_view(near)[0] - end).days) <= 1
    qtbot.keyClick(overview, Key.Key_Home)
    assert days_in_view(near)[0] == canvas.first_day()
    qtbot.keyClick(overview, Key.Key_End)
    assert abs((days_in_view(near)[1] - canvas.last_day()).days) <= 1
    days = (end - first).days
    qtbot.keyClick(overview, Key.Key_Plus)
    assert (days_in_view(near)[1] - days_in_view(near)[0]).days < days
    qtbot.keyClick(overview, Key.Key_Escape)
    assert canvas.hasFocus()


def test_a_reader_is_told_what_is_in_view_when_it_comes_to_the_strip(near: MainWindow) -> None:
    overview = near.season.overview
    near.season.canvas.setFocus()
    overview.setFocus()
    told = overview.accessibleDescription()
    assert str(days_in_view(near)[0].day) in told
    assert near.top.clashes.text() in told


def test_the_wheel_goes_through_time(near: MainWindow) -> None:
    overview = near.season.overview
    first, _ = days_in_view(near)
    at = QPointF(20, 10)
    event = QWheelEvent(
        *(at, overview.mapToGlobal(at), QPoint(), QPoint(0, -120), Qt.MouseButton.NoButton),
        *(Qt.KeyboardModifier.NoModifier, Qt.ScrollPhase.NoScrollPhase, False),
    )
    QApplication.sendEvent(overview, event)
    assert days_in_view(near)[0] > first


def strip_of(window: MainWindow) -> QImage:
    QApplication.processEvents()
    return window.season.overview.grab().toImage()


def reds_at(image: QImage, window: MainWindow, clash: Clash) -> int:
    """Pixels of the red that means clash in the few columns where a clash begins."""
    x, red = round(x_of(window, clash.first)), QColor(LIGHT.clash).rgb()
    columns = range(max(x - 5, 0), min(x + 6, image.width()))
    return sum(image.pixel(column, row) == red for column in columns for row in range(image.height()))


def test_every_clash_that_is_open_has_a_tick_and_only_those(window: MainWindow) -> None:
    image = strip_of(window)
    for clash in window.opened.checked.since(window.today):
        assert reds_at(image, window, clash), clash.sentence
    window.season.overview.show_season(window.opened.season, ())
    assert not any(reds_at(strip_of(window), window, c) for c in window.opened.checked.since(window.today))


def test_what_stops_the_plan_is_a_filled_bar_and_what_is_watched_an_open_box(window: MainWindow) -> None:
    clashes = window.opened.checked.since(window.today)
    stop = next(clash for clash in clashes if severity_of(clash.kind) is Severity.STOPS)
    watch = next(clash for clash in clashes if severity_of(clash.kind) is Severity.WATCH)
    season, card = window.opened.season, QColor(LIGHT.card).rgb()
    shapes = {}
    for clash in (stop, watch):
        window.season.overview.show_season(season, (clash,))
        image = strip_of(window)
        x = round(x_of(window, clash.first))
        shapes[clash.kind] = [
            image.pixel(x + dx, y) for dx in range(-5, 7) for y in range(image.height() - 8, image.height())
        ]
        assert reds_at(image, window, clash) > 8
    assert card not in shapes[stop.kind]
    assert card in shapes[watch.kind]


def test_the_strip_follows_what_is_previewed_as_if_it_were_drawn_anew(window: MainWindow) -> None:
    canvas, overview, now = window.season.canvas, window.season.overview, window.opened.checked
    before = strip_of(window)
    clover = next(batch for batch in now.season.farm.batches if batch.name == "Clover")
    after = now.after(
        apply(now.season.farm, shift(now.season.farm, clover.id, -5))
    )  # most birds at once: 285 as before
    canvas.preview(after)
    previewed = strip_of(window)
    assert previewed != before
    overview.show_season(after.season, after.since(window.today))  # anew
    assert strip_of(window) == previewed
    canvas.end_preview()
    assert strip_of(window) == before


def test_the_strip_tells_the_day_the_birds_and_what_clashes(window: MainWindow) -> None:
    overview = window.season.overview
    floor = next(clash for clash in window.opened.checked.since(window.today) if clash.kind == "floor")
    told = overview.told_at(x_of(window, floor.worst) + 0.5)
    assert day_text(floor.worst) in told
    assert "birds" in told
    assert "Tub brooder is too small" in told
    empty = overview.told_at(x_of(window, window.season.canvas.first_day() + timedelta(days=2)))
    assert "0 birds" in empty


def test_a_farm_without_batches_has_a_strip_too(window: MainWindow, empty: object) -> None:
    window.show_farm(empty)  # type: ignore[arg-type]
    assert strip_of(window).width() == window.season.overview.width()
    assert window.season.overview.told_at(10).startswith(("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"))
