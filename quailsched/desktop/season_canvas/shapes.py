"""The stepped shapes of bands in days and loads, made once a band: a transform brings them to any zoom and lane."""

from __future__ import annotations

from PySide6.QtCore import QPointF
from PySide6.QtGui import QPolygonF

from quailsched.desktop.season_canvas.lanes import Band


def shape_of(band: Band, cap: int) -> QPolygonF:
    """The outline of ``band``: x in days from its first, y in loads, no higher than ``cap``."""
    known: tuple[int, QPolygonF] | None = band.kept.get("shape")
    if known is not None and known[0] == cap:
        return known[1]
    day_0 = band.start.toordinal()
    upper: list[QPointF] = []
    lower: list[QPointF] = []
    for piece in band.pieces:
        left, right = piece.start.toordinal() - day_0, piece.end.toordinal() - day_0
        high, low = min(piece.high, cap), min(piece.low, cap)
        _step(upper, left, right, high)
        _step(lower, left, right, low)
    shape = QPolygonF(upper + lower[::-1])
    band.kept["shape"] = (cap, shape)
    return shape


def _step(points: list[QPointF], left: int, right: int, height: int) -> None:
    """Go on at ``height``; a level that goes on needs no new corner."""
    if points and points[-1].y() == height:
        points[-1] = QPointF(right, height)
    else:
        points += [QPointF(left, height), QPointF(right, height)]
