"""Wheel, touchpad and pinch: what is under the pointer stays there, from three years to a week in view."""

from datetime import date

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QNativeGestureEvent, QPointingDevice, QWheelEvent
from PySide6.QtWidgets import QApplication

from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.season_canvas.canvas import SeasonCanvas
from quailsched.desktop.season_canvas.scale import LEAST_PX, MOST_PX

CTRL, SHIFT, NONE = (
    Qt.KeyboardModifier.ControlModifier,
    Qt.KeyboardModifier.ShiftModifier,
    Qt.KeyboardModifier.NoModifier,
)


@pytest.fixture
def canvas(window: MainWindow) -> SeasonCanvas:
    return window.season.canvas


def turn(
    canvas: SeasonCanvas, angle: tuple[int, int], held: Qt.KeyboardModifier = NONE,
    pixels: tuple[int, int] = (0, 0), at: QPointF | None = None,
) -> None:  # fmt: skip
    port = canvas.viewport()
    at = at or QPointF(port.width() * 0.6, port.height() / 2)
    is_touch = pixels != (0, 0)
    phase = Qt.ScrollPhase.ScrollUpdate if is_touch else Qt.ScrollPhase.NoScrollPhase
    event = QWheelEvent(
        at, port.mapToGlobal(at), QPoint(*pixels), QPoint(*angle), Qt.MouseButton.NoButton, held, phase, False
    )
    QApplication.sendEvent(port, event)
    QApplication.processEvents()


def pinch(canvas: SeasonCanvas, part: float, at: QPointF) -> bool:
    port = canvas.viewport()
    kind, pad = Qt.NativeGestureType.ZoomNativeGesture, QPointingDevice.primaryPointingDevice()
    event = QNativeGestureEvent(kind, pad, 2, at, at, port.mapToGlobal(at), part, QPointF())
    return QApplication.sendEvent(port, event)


def px(canvas: SeasonCanvas) -> float:
    return canvas.scene().scale.day_px


def exact_day(canvas: SeasonCanvas, x: float) -> float:
    scene = canvas.scene()
    return scene.scale.first.toordinal() + (x - scene.left + scene.dx) / scene.scale.day_px


@pytest.mark.parametrize("notch", [120, -120])
def test_the_day_under_the_pointer_stays_under_it_to_either_end_of_the_scale(canvas: SeasonCanvas, notch: int) -> None:
    canvas.show_days(120)
    canvas.look_from(date(2027, 6, 1))
    x = canvas.scene().left + 80  # near the edge: what lies there cannot be held by the end of the paper
    for _ in range(60):
        day, before = exact_day(canvas, x), px(canvas)
        turn(canvas, (0, notch), CTRL, at=QPointF(x, 200))
        bar = canvas.horizontalScrollBar()
        if 0 < bar.value() < bar.maximum():
            assert exact_day(canvas, x) == pytest.approx(day, abs=1 / px(canvas))  # to the pixel
        if px(canvas) == before:
            break
    assert px(canvas) == (MOST_PX if notch > 0 else LEAST_PX)


def test_a_fitted_season_fits_with_larger_letters_too(canvas: SeasonCanvas) -> None:
    canvas.fit()
    before = canvas.scene()
    font = canvas.font()
    font.setPointSizeF(font.pointSizeF() * 1.6)
    canvas.setFont(font)
    changed = canvas.scene()
    assert changed.left != before.left  # the names of lanes take another part of the width
    canvas.fit()
    assert (changed.scale, changed.dx) == (canvas.scene().scale, canvas.scene().dx)


def test_a_week_fills_the_canvas_and_three_years_fit_in(window: MainWindow, canvas: SeasonCanvas) -> None:
    for wide in (1280, 1920):
        window.resize(wide, 720)
        QApplication.processEvents()
        for command, days in (
            *(("show_week", 7), ("show_month", 31), ("show_quarter", 92)),
            *(("show_year", 366), ("show_three_years", 1096)),
        ):
            window.actions_by_name[command].trigger()
            scene = canvas.scene()
            assert (scene.width - scene.left) / px(canvas) == pytest.approx(days, abs=0.01), (wide, command)


def test_what_is_picked_stays_in_view_when_a_week_is_shown(window: MainWindow, canvas: SeasonCanvas) -> None:
    for clash in window.opened.checked.since(window.today)[:4]:
        window.actions_by_name["show_year"].trigger()
        canvas.show_clash(clash)
        window.actions_by_name["show_week"].trigger()
        scene = canvas.scene()
        assert scene.left <= scene.x(clash.worst) <= scene.width, clash.sentence


def test_fingers_on_a_touchpad_move_the_season_as_far_as_they_go(canvas: SeasonCanvas) -> None:
    canvas.zoom(3.0)
    canvas.window().resize(1000, 420)  # so that not all lanes are in view
    QApplication.processEvents()
    across, down = canvas.horizontalScrollBar(), canvas.verticalScrollBar()
    across.setValue(300)
    down.setValue(20)
    turn(canvas, (90, 0), pixels=(33, 0))
    assert (across.value(), down.value()) == (267, 20)
    turn(canvas, (0, -60), pixels=(0, -17))
    assert (across.value(), down.value()) == (267, 37)
    turn(canvas, (-90, 9), pixels=(-30, 4))  # a little aslant is straight
    assert (across.value(), down.value()) == (297, 37)
    turn(canvas, (-90, -60), pixels=(-30, -20))
    assert (across.value(), down.value()) == (327, 57)


def test_a_wheel_goes_down_where_there_is_more_and_through_time_where_not(canvas: SeasonCanvas) -> None:
    across, down = canvas.horizontalScrollBar(), canvas.verticalScrollBar()
    canvas.zoom(3.0)
    canvas.window().resize(1000, 420)
    QApplication.processEvents()
    start = across.value()
    turn(canvas, (0, -120))
    assert (across.value(), down.value()) == (start, 60)
    turn(canvas, (0, -120), SHIFT)
    assert (across.value(), down.value()) == (start + 120, 60)
    canvas.window().resize(1280, 1400)
    QApplication.processEvents()
    assert down.maximum() == 0
    start = across.value()
    turn(canvas, (0, -120))
    assert across.value() == start + 60


def test_a_pinch_zooms_about_the_pointer(canvas: SeasonCanvas) -> None:
    canvas.zoom(2.0)
    canvas.look_from(date(2027, 5, 1))
    at = QPointF(canvas.viewport().width() * 0.5, 200)
    day, before = exact_day(canvas, at.x()), px(canvas)
    assert pinch(canvas, 0.25, at)
    assert px(canvas) == pytest.approx(before * 1.25)
    assert exact_day(canvas, at.x()) == pytest.approx(day, abs=1 / px(canvas))
    pinch(canvas, -0.2, at)
    assert px(canvas) == pytest.approx(before)
    pinch(canvas, -3.0, at)  # nonsense of a driver does not turn the season inside out
    assert px(canvas) == pytest.approx(before / 2)
