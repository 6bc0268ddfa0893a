"""Draws the curves that carry a batch from lane to lane."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date, timedelta
from functools import lru_cache
from typing import NamedTuple

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainterPath, QPen

from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.layout import Link
from quailsched.desktop.season_canvas.pens import Pens, mixed
from quailsched.desktop.season_canvas.scene import Scene

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
        pens: dict[str, QPen] = {}
        self.p.setBrush(Qt.BrushStyle.NoBrush)
        for link in links_about(scene):
            if self.pens.is_column_dirty(scene.x(link.day), bend + 3):
                curve = curve_of(scene, lanes, link)
                if curve is not None and self.pens.is_dirty(curve.around):
                    pen = pens.get(curve.batch_id)
                    if pen is None:
                        pen = pens[curve.batch_id] = self._pen(curve.batch_id)
                    self.p.setPen(pen)
                    path = _path(round(curve.end - curve.start, 1), bend)
                    self.p.drawPath(path.translated(curve.x, curve.start))

    def _pen(self, batch_id: str) -> QPen:
        fill = self.theme.batch(self.scene.layout.numbers[batch_id]).fill
        is_picked = self.scene.picked.batch_id == batch_id
        colour = mixed(fill, self.theme.lane, 0.95 if is_picked else 0.5)
        return QPen(colour, 2.8 if is_picked else 2.2)


class Curve(NamedTuple):
    """The curve of a batch on the widget: about ``x``, from ``start`` down (or up) to ``end``."""

    batch_id: str
    x: float
    start: float
    end: float
    bend: float

    @property
    def around(self) -> QRectF:
        top, high, beside = min(self.start, self.end), abs(self.end - self.start), self.bend + 3
        return QRectF(self.x - beside, top - 3, 2 * beside, high + 6)


def links_about(scene: Scene) -> list[Link]:
    """The links whose curves may be in view."""
    days = timedelta(days=round(bend_of(scene.scale.day_px) / scene.scale.day_px) + 1)
    first, end = scene.days()
    return scene.layout.links.within(first - days, end + days)


def curve_of(scene: Scene, lanes: Mapping[str, Lane], link: Link) -> Curve | None:
    """The curve of ``link``; None if there is nothing at one of its ends. ``lanes`` are those of the scene by ids."""
    start = _end("leaves", link, lanes[link.from_place], link.day - _DAY, link.was_cocks)
    end = _end("comes", link, lanes[link.to_place], link.day, link.is_cocks)
    if start is None or end is None:
        return None
    return Curve(link.batch_id, scene.x(link.day), scene.top(start), scene.top(end), bend_of(scene.scale.day_px))


def _end(which: str, link: Link, lane: Lane, day: date, is_cocks: bool) -> float | None:
    """The height at which a curve begins or ends; kept with the link as long as the lane is the same."""
    known: tuple[Lane, float | None] | None = link.kept.get(which)
    if known is None or known[0] is not lane:
        known = link.kept[which] = lane, _middle(lane, link, day, is_cocks)
    return known[1]


def _middle(lane: Lane, link: Link, day: date, is_cocks: bool) -> float | None:
    """The middle of the band of the batch on ``day``."""
    for band in lane.content.bands.within(day, day + _DAY):
        if band.batch_id == link.batch_id and band.is_cocks is is_cocks:
            piece = band.piece_on(day)
            return (lane.y(piece.low) + lane.y(piece.high)) / 2 if piece is not None else None
    return None
