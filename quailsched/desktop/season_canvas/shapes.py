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
    was_high = was_low = -1
    for start, _, low, high in band.pieces:  # a level that goes on needs no corner
        low, high = (low if low < cap else cap), (high if high < cap else cap)  # a drag asks for hundreds a frame
        if high != was_high or low != was_low:
            left = start.toordinal() - day_0
            if high != was_high:
                _step(upper, left, was_high, high)
            if low != was_low:
                _step(lower, left, was_low, low)
            was_high, was_low = high, low
    right = band.end.toordinal() - day_0
    upper.append(QPointF(right, was_high))
    lower.append(QPointF(right, was_low))
    shape = QPolygonF(upper + lower[::-1])
    band.kept["shape"] = (cap, shape)
    return shape


def _step(points: list[QPointF], at: int, old: int, new: int) -> None:
    """Go on at another height, ``new``; -1 is none."""
    if old >= 0:
        points.append(QPointF(at, old))
    points.append(QPointF(at, new))
