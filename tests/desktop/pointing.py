"""Where things are on the season, and a mouse that is moved as a hand moves it."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QApplication

from quailsched.desktop.season_canvas.canvas import SeasonCanvas
from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.lanes import Band

_LEFT = Qt.MouseButton.LeftButton


def band_of(canvas: SeasonCanvas, batch: str, lane_title: str) -> tuple[Lane, Band]:
    """The lane with this title and the band of ``batch`` in it."""
    assert canvas.season is not None
    names = {one.id: one.name for one in canvas.season.farm.batches}
    lane = next(lane for lane in canvas.scene().lanes if lane.content.title == lane_title)
    return lane, next(band for band in lane.content.bands.items if names[band.batch_id] == batch)


def middle_of(canvas: SeasonCanvas, batch: str, lane_title: str) -> QPoint:
    """A point of the widget inside the band of ``batch`` in a lane."""
    scene = canvas.scene()
    lane, band = band_of(canvas, batch, lane_title)
    day = band.start + (band.end - band.start) // 2
    piece = band.piece_on(day)
    assert piece is not None
    y = scene.top((lane.y(piece.low) + lane.y(min(piece.high, lane.content.room))) / 2)
    return QPoint(round(scene.x(day) + scene.scale.day_px / 2), round(y))


def edge_of(canvas: SeasonCanvas, batch: str, lane_title: str, at_end: bool) -> QPoint:
    """A point just inside the first or the last day of a band."""
    scene = canvas.scene()
    lane, band = band_of(canvas, batch, lane_title)
    piece = band.pieces[-1 if at_end else 0]
    y = scene.top((lane.y(piece.low) + lane.y(min(piece.high, lane.content.room))) / 2)
    return QPoint(round(scene.x(band.end) - 2 if at_end else scene.x(band.start) + 2), round(y))


class Hand:
    """Presses, moves and lets go of the left button, event by event."""

    def __init__(self, canvas: SeasonCanvas) -> None:
        self._canvas, self._at = canvas, QPoint()

    def press(self, at: QPoint) -> Hand:
        self._at = at
        return self._send(QEvent.Type.MouseButtonPress, _LEFT, _LEFT)

    def move(self, to: QPoint, held: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier, steps: int = 6) -> Hand:
        start = self._at
        for step in range(1, steps + 1):
            self._at = start + (to - start) * step / steps
            self._send(QEvent.Type.MouseMove, Qt.MouseButton.NoButton, _LEFT, held)
        return self

    def by(self, dx: float, dy: float = 0, held: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> Hand:
        return self.move(self._at + QPoint(round(dx), round(dy)), held)

    def release(self) -> Hand:
        return self._send(QEvent.Type.MouseButtonRelease, _LEFT, Qt.MouseButton.NoButton)

    def _send(
        self,
        kind: QEvent.Type,
        button: Qt.MouseButton,
        buttons: Qt.MouseButton,
        held: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier,
    ) -> Hand:
        port = self._canvas.viewport()
        event = QMouseEvent(kind, QPointF(self._at), QPointF(port.mapToGlobal(self._at)), button, buttons, held)
        QApplication.sendEvent(port, event)
        QApplication.processEvents()
        return self
