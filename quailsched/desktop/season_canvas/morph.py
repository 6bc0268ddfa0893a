"""The change between the two groupings, drawn: each band goes from its old lane to its new one."""

from __future__ import annotations

from datetime import date
from itertools import pairwise

from PySide6.QtCore import QObject, QPointF, QRectF, Qt, QVariantAnimation
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QStyle, QWidget

from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.lanes import Band
from quailsched.desktop.season_canvas.paint_frame import FramePainter
from quailsched.desktop.season_canvas.pens import Pens
from quailsched.desktop.season_canvas.scene import Scene

_LONGEST_MS = 260


class Morph(QVariantAnimation):
    """Runs from the scene ``old`` to the scene ``new`` and asks ``port`` to be drawn on the way. It takes as long as
    the desktop lets such things take; no time at all if that is none."""

    def __init__(self, old: Scene, new: Scene, port: QWidget, parent: QObject) -> None:
        super().__init__(parent)
        self._old, self._new = old, new
        self._pairs = _pairs(old, new)
        allowed = port.style().styleHint(QStyle.StyleHint.SH_Widget_Animation_Duration, None, port)
        self.setDuration(min(max(allowed, 0), _LONGEST_MS))
        self.setStartValue(0.0)
        self.setEndValue(1.0)
        self.valueChanged.connect(port.update)
        self.finished.connect(port.update)

    @property
    def is_running(self) -> bool:
        return self.state() is QVariantAnimation.State.Running

    def paint(self, pens: Pens) -> None:
        """The bands where they are by now. Names come back when they have arrived."""
        part = float(self.currentValue())
        share = part * part * (3 - 2 * part)  # slow, quick, slow
        p, scene, theme = pens.p, self._new, pens.theme
        p.fillRect(QRectF(0, 0, scene.width, scene.height), QColor(theme.paper))
        p.setRenderHint(QPainter.RenderHint.Antialiasing)
        p.save()
        p.setClipRect(QRectF(scene.left, scene.head, scene.width, scene.height), Qt.ClipOperation.IntersectClip)
        p.setPen(QPen(QColor(theme.paper), 1.0))
        for band, old, new in self._pairs:
            fill = QColor(theme.batch(scene.layout.numbers[band.batch_id]).fill)
            p.setBrush(fill)
            p.drawPolygon(_between(self._old, old, self._new, new, share))
        p.restore()
        frame = FramePainter(pens)
        frame.head()
        frame.names()
        frame.days_told()


_Placed = tuple[Lane, Band]


def _pairs(old: Scene, new: Scene) -> list[tuple[Band, _Placed, _Placed]]:
    """The bands that are in view before or after, with where they are in both."""
    was, now = _placed(old), _placed(new)
    seen = {key for scene, placed in ((old, was), (new, now)) for key in placed if _is_in_view(scene, placed[key])}
    return [(now[key][1], was[key], now[key]) for key in sorted(seen) if key in was and key in now]


def _placed(scene: Scene) -> dict[tuple[str, str, bool, int], _Placed]:
    return {band.key: (lane, band) for lane in scene.lanes for band in lane.content.bands.within(*scene.days())}


def _is_in_view(scene: Scene, placed: _Placed) -> bool:
    lane, _ = placed
    return scene.top(lane.bottom) > scene.head and scene.top(lane.top) < scene.height


def _between(old: Scene, was: _Placed, new: Scene, now: _Placed, share: float) -> QPolygonF:
    """The shape of a band, ``share`` of the way from ``was`` to ``now``: corner for corner on the days of either."""
    days = sorted({day for _, band in (was, now) for piece in band.pieces for day in (piece.start, piece.end)})
    upper: list[QPointF] = []
    lower: list[QPointF] = []
    for start, end in pairwise(days):
        (high_0, low_0), (high_1, low_1) = _span(old, was, start), _span(new, now, start)
        high, low = high_0 + (high_1 - high_0) * share, low_0 + (low_1 - low_0) * share
        left, right = new.x(start), new.x(end)
        upper += [QPointF(left, high), QPointF(right, high)]
        lower += [QPointF(left, low), QPointF(right, low)]
    return QPolygonF(upper + lower[::-1])


def _span(scene: Scene, placed: _Placed, day: date) -> tuple[float, float]:
    """The heights at which a band begins and ends on ``day``."""
    lane, band = placed
    piece = band.piece_on(day)
    if piece is None:
        return scene.top(lane.base_y), scene.top(lane.base_y)
    _, top, _, bottom = scene.rect_of(lane, piece)
    return top, bottom
