"""The wheel, two fingers on a touchpad, a pinch: they scroll the season, or zoom it about the pointer."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QNativeGestureEvent, QWheelEvent

from quailsched.desktop.season_canvas.scale import ZOOM_STEP

if TYPE_CHECKING:
    from quailsched.desktop.season_canvas.port import SeasonPort

_NOTCH = 120.0  # eighths of a degree of one click of a wheel
_STRAIGHT = 2.0  # fingers that move so many times as far one way as the other mean only that way
_MOST_PINCH = 0.5  # of the size, in one event: some touchpads tell more at once than anybody means


def turn(port: SeasonPort, event: QWheelEvent) -> None:
    """Zoom with Ctrl; else scroll, through time with Shift or where all lanes are in view."""
    held = event.modifiers()
    if held & Qt.KeyboardModifier.ControlModifier:
        notches = (event.angleDelta().y() or event.angleDelta().x()) / _NOTCH
        port.zoom(ZOOM_STEP**notches, event.position().x())
        return
    dx, dy = _moved_px(event)
    across, down = port.horizontalScrollBar(), port.verticalScrollBar()
    if not dx and (held & Qt.KeyboardModifier.ShiftModifier or down.maximum() == 0):
        dx, dy = dy, 0
    across.setValue(across.value() - dx)
    down.setValue(down.value() - dy)


def _moved_px(event: QWheelEvent) -> tuple[int, int]:
    """How far the season is to follow to the right and down: as far as the fingers went, or by the clicks of a wheel.

    What a driver of X11 calls pixels is none; it tells no phases either.
    """
    is_touch = event.phase() is not Qt.ScrollPhase.NoScrollPhase and not event.pixelDelta().isNull()
    moved = event.pixelDelta() if is_touch else event.angleDelta()
    x, y = float(moved.x()), float(moved.y())
    if abs(x) > _STRAIGHT * abs(y):
        y = 0.0
    elif abs(y) > _STRAIGHT * abs(x):
        x = 0.0
    if is_touch:
        return round(x), round(y)
    is_level = event.modifiers() & Qt.KeyboardModifier.ShiftModifier
    return round(x), round(y if is_level else y / 2)


def pinch(port: SeasonPort, event: QEvent) -> bool:
    """Two fingers that part or close on a touchpad zoom about the pointer; whether that is what they do."""
    if not isinstance(event, QNativeGestureEvent):
        return False
    if event.gestureType() is not Qt.NativeGestureType.ZoomNativeGesture:
        return False
    port.zoom(1 + min(max(event.value(), -_MOST_PINCH), _MOST_PINCH), event.position().x())
    event.accept()  # else it would go on to what lies around the canvas
    return True
