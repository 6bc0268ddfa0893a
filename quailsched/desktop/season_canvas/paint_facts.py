"""Draws what has happened: a firm upper edge where a band is counted, and marks where days were planned otherwise."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QColor, QPen, QPolygonF

from quailsched.desktop.season_canvas.facts import counted_until
from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.lanes import Band, FactMark
from quailsched.desktop.season_canvas.pens import Pens

_EDGE_PX, _PICKED_EDGE_PX = 2.6, 3.6  # a picked band has an outline of 2 px all round
_LOWEST_PX = 4.0  # a band that is lower would be all edge
_RADIUS_PX = 4.0


class FactPainter:
    """In the ink of the theme, so that it reads on every band, on paper and without colours."""

    def __init__(self, pens: Pens) -> None:
        self.pens, self.p, self.scene, self.theme = pens, pens.p, pens.scene, pens.theme

    def edge(self, lane: Lane, band: Band) -> None:
        """The upper edge of ``band`` over the days that are counted; over those that are expected it stays thin."""
        season, scene = self.scene.layout.season, self.scene
        end = counted_until(season, band) if season is not None else None
        if end is None:
            return
        tall = max((lane.y(piece.low) - lane.y(piece.high) for piece in band.pieces), default=0.0)
        if tall < _LOWEST_PX:
            return
        wide = min(_PICKED_EDGE_PX if scene.picked.batch_id == band.batch_id else _EDGE_PX, tall / 4)
        points: list[QPointF] = []
        for piece in band.pieces:
            if piece.start >= end:
                break
            y = scene.top(lane.y(min(piece.high, lane.content.room))) + wide / 2
            points += [QPointF(scene.x(piece.start), y), QPointF(scene.x(min(piece.end, end)), y)]
        self.p.setPen(QPen(QColor(self.theme.ink), wide, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap))
        self.p.drawPolyline(QPolygonF(points))

    def marks(self, lane: Lane, runs: Sequence[tuple[date, date]]) -> None:
        """A diamond on the day of the fact, and a thin line to an upright where the plan had it."""
        for mark in self.pens.to_draw(lane.content.facts, runs):
            self._mark(lane, mark)

    def _mark(self, lane: Lane, mark: FactMark) -> None:
        scene, p = self.scene, self.p
        y = scene.top(self._level(lane, mark)) - _RADIUS_PX - 1
        at, plan = QPointF(scene.x(mark.day), y), QPointF(scene.x(mark.plan), y)
        halo, ink = QPen(QColor(self.theme.paper), 3.0), QPen(QColor(self.theme.ink), 1.2)
        upright = (QPointF(plan.x(), y - _RADIUS_PX), QPointF(plan.x(), y + _RADIUS_PX))
        for pen in (halo, ink):
            p.setPen(pen)
            p.drawLine(plan, at)
            p.drawLine(*upright)
        p.setPen(QPen(QColor(self.theme.paper), 1.0))
        p.setBrush(QColor(self.theme.ink))
        r = _RADIUS_PX
        p.drawPolygon([at + QPointF(0, -r), at + QPointF(r, 0), at + QPointF(0, r), at + QPointF(-r, 0)])
        p.setBrush(Qt.BrushStyle.NoBrush)

    @staticmethod
    def _level(lane: Lane, mark: FactMark) -> float:
        """Where the band of the batch stands on that day, in the lane; the ground where it has none there."""
        for band in lane.content.bands.within(mark.day, mark.end):
            if band.batch_id == mark.batch_id and (piece := band.piece_on(mark.day)) is not None:
                return lane.y(min(piece.low, lane.content.room))
        return lane.base_y
