"""Draws the curves that carry a batch from lane to lane."""

from __future__ import annotations

from datetime import date, timedelta
from functools import lru_cache

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainterPath, QPen

from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.lanes import LaneContent
from quailsched.desktop.season_canvas.layout import Link
from quailsched.desktop.season_canvas.pens import Pens, mixed

_DAY = timedelta(days=1)


def bend_of(day_px: float) -> float:
    """How far a curve swings out to either side, in pixels."""
    return min(max(3.0, day_px * 1.2), 12.0)


@lru_cache(maxsize=4096)
def _path(down: float, bend: float) -> QPainterPath:
    """The curve from the origin to ``down`` pixels below it."""
    path = QPainterPath(QPointF(-1, 0))
    path.cubicTo(QPointF(bend, 0), QPointF(bend, down * 0.15), QPointF(0, down * 0.5))
    path.cubicTo(QPointF(-bend, down * 0.85), QPointF(-bend, down), QPointF(1, down))
    return path


class LinkPainter:
    """Behind the bands, in a paler tone of the batch's colour."""

    def __init__(self, pens: Pens) -> None:
        self.pens, self.p, self.scene, self.theme = pens, pens.p, pens.scene, pens.theme

    def links(self) -> None:
        scene, bend = self.scene, bend_of(self.scene.scale.day_px)
        lanes = {lane.content.id: lane for lane in scene.lanes}
        days = timedelta(days=round(bend / scene.scale.day_px) + 1)
        first, end = scene.days()
        self.p.setBrush(Qt.BrushStyle.NoBrush)
        for link in scene.layout.links.within(first - days, end + days):
            x = scene.x(link.day)
            if not self.pens.is_column_dirty(x, bend + 3):
                continue
            loads = _loads(link, lanes[link.from_place].content, lanes[link.to_place].content)
            if loads is None:
                continue
            y0 = scene.top(_middle(lanes[link.from_place], *loads[0]))
            y1 = scene.top(_middle(lanes[link.to_place], *loads[1]))
            around = QRectF(x - bend - 3, min(y0, y1) - 3, 2 * bend + 6, abs(y1 - y0) + 6)
            if self.pens.is_dirty(around):
                self._curve(link, x, y0, y1, bend)

    def _curve(self, link: Link, x: float, y0: float, y1: float, bend: float) -> None:
        fill = self.theme.batch(self.scene.layout.numbers[link.batch_id]).fill
        is_picked = self.scene.picked.batch_id == link.batch_id
        colour = mixed(fill, self.theme.lane, 0.95 if is_picked else 0.5)
        self.p.setPen(QPen(colour, 2.8 if is_picked else 2.2))
        self.p.drawPath(_path(round(y1 - y0, 1), bend).translated(x, y0))


_Loads = tuple[tuple[int, int], tuple[int, int]]


def _loads(link: Link, old: LaneContent, new: LaneContent) -> _Loads | None:
    """(low, high) of the bands where the curve leaves and arrives; kept with the link while the lanes show the same."""
    known: tuple[LaneContent, LaneContent, _Loads | None] | None = link.kept.get("loads")
    if known is None or known[0] is not old or known[1] is not new:
        ends = _span(old, link, link.day - _DAY, link.was_cocks), _span(new, link, link.day, link.is_cocks)
        loads = (ends[0], ends[1]) if ends[0] is not None and ends[1] is not None else None
        known = link.kept["loads"] = (old, new, loads)
    return known[2]


def _span(content: LaneContent, link: Link, day: date, is_cocks: bool) -> tuple[int, int] | None:
    for band in content.bands.within(day, day + _DAY):
        if band.batch_id == link.batch_id and band.is_cocks is is_cocks:
            piece = band.piece_on(day)
            return (piece.low, piece.high) if piece is not None else None
    return None


def _middle(lane: Lane, low: int, high: int) -> float:
    return (lane.y(low) + lane.y(high)) / 2
