"""Draws what does not fit: overflow above the line, its days, and the marks of the other clashes.

Where marks and words stand is found in ``mark_places``.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date
from functools import lru_cache

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainterPath, QPainterPathStroker, QPen

from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.lanes import Mark, Over
from quailsched.desktop.season_canvas.mark_places import MarkPlace, MarkPlaces
from quailsched.desktop.season_canvas.pens import Pens
from quailsched.season.severity import Severity

_DASHES_PX = 7.2  # after this the dashes and the dots of an outline are as they were


def _beyond(more: float) -> float:
    """How far an outline is drawn that goes on for ``more`` pixels where nobody sees it: so far that all of its dashes,
    and those on the way back from its end, are where they would be."""
    return _DASHES_PX + more % _DASHES_PX if more > 2 * _DASHES_PX else max(more, 0.0)


@lru_cache(maxsize=256)
def _broken(wide: float, high: float, style: Qt.PenStyle) -> QPainterPath:
    """The broken outline of a mark. Of a line, Qt would begin the dashes elsewhere where a part alone is drawn."""
    path = QPainterPath()
    path.addRoundedRect(QRectF(0, 0, wide, high), 3, 3)
    return QPainterPathStroker(QPen(QColor(0, 0, 0), 1.2, style)).createStroke(path)


class ClashPainter:
    """The one red of the season; what the keeper has accepted is not red."""

    def __init__(self, pens: Pens, marks: MarkPlaces) -> None:
        self.pens, self.p, self.scene, self.theme = pens, pens.p, pens.scene, pens.theme
        self._marks, self._reaches = marks, pens.reaches(pens.scene.left, pens.scene.width)

    def overflow(self, lane: Lane, first: date, end: date) -> None:
        """What stands over the line from ``first`` to ``end``."""
        scene, p = self.scene, self.p
        overs = lane.content.overs.within(first, end)
        if not overs:
            return
        for over in overs:
            top, line = scene.top(lane.y(over.total)), scene.top(lane.line_y)
            rect = QRectF(scene.x(over.start), top, scene.x(over.end) - scene.x(over.start), line - top)
            with self.pens.clipped(rect):
                p.fillRect(rect, QColor(self.theme.clash_tint))
                self.pens.hatch(rect, QColor(self.theme.clash), 7.0, 2.6, leaning=1)
        self._overflow_outline(lane, overs)

    def _overflow_outline(self, lane: Lane, overs: Sequence[Over]) -> None:
        scene = self.scene
        self.p.setPen(QPen(QColor(self.theme.clash), 1.4))
        last: tuple[date, float] | None = None
        line = scene.top(lane.line_y)
        for over in overs:
            y = scene.top(lane.y(over.total))
            x0, x1 = scene.x(over.start), scene.x(over.end)
            joins = last is not None and last[0] == over.start
            self.p.drawLine(QPointF(x0, last[1] if joins and last else line), QPointF(x0, y))
            self.p.drawLine(QPointF(x0, y), QPointF(x1, y))
            if last is not None and not joins:
                self.p.drawLine(QPointF(scene.x(last[0]), last[1]), QPointF(scene.x(last[0]), line))
            last = (over.end, y)
        if last is not None:
            self.p.drawLine(QPointF(scene.x(last[0]), last[1]), QPointF(scene.x(last[0]), line))

    def marks(self, lane: Lane) -> None:
        """The marks of the lane's clashes, and the days of those over the line."""
        for place in self._marks.of(self.scene, lane, self.pens.fonts, self._reaches):
            if place.bar is not None:
                left, top, right, bottom = place.bar
                if self.pens.is_dirty(QRectF(left, top, right - left, bottom - top).adjusted(-2, -2, 2, 2)):
                    for near, far in self._cuts(place.left, max(place.right, right)):
                        bar = QRectF(near, top, far - near, bottom - top)
                        self._bar(place.mark, bar, near == place.left, place.is_on)
            if place.text and self.pens.is_dirty(place.words):
                self._words(place)

    def _cuts(self, left: float, right: float) -> Iterator[tuple[float, float]]:
        """What of an outline from ``left`` to ``right`` is drawn: long dashes take their time."""
        for first, last in self.pens.reaches(left, right):
            near = max(left, first, self.scene.left)
            far = max(min(right, last, self.scene.width), near)
            yield near - _beyond(near - left), far + _beyond(right - far)

    def _words(self, place: MarkPlace) -> None:
        theme, at = self.theme, QPointF(place.x, place.base)
        ink = theme.soft if place.mark.is_accepted and place.bar is not None else theme.clash
        if place.is_in_bar:
            is_filled = place.is_on and place.mark.severity is Severity.STOPS
            self.pens.text(place.face, at, place.text, theme.on_clash if is_filled else ink)
            return
        self.pens.text_clear(at, place.text, place.face, ink, theme.paper)
        if place.is_on and place.bar is None:
            end = place.x + place.face.width(place.text)
            self.p.drawLine(QPointF(place.x, place.base + 2), QPointF(end, place.base + 2))

    def _bar(self, mark: Mark, rect: QRectF, begins_here: bool, is_on: bool) -> None:
        """Filled, with a block where it begins: stops the plan. A broken outline: to watch. In grey: accepted."""
        theme, p = self.theme, self.p
        if mark.severity is Severity.STOPS:
            p.setPen(QPen(QColor(theme.clash), 1.0))
            p.setBrush(QColor(theme.clash if is_on else theme.clash_tint))
        else:
            colour = QColor(theme.soft if mark.is_accepted else theme.clash)
            p.setPen(QPen(colour, 2.0) if is_on else Qt.PenStyle.NoPen)
            p.setBrush(QColor(theme.paper))
            if not is_on:
                p.drawRoundedRect(rect, 3, 3)
                dashed = Qt.PenStyle.DotLine if mark.is_accepted else Qt.PenStyle.DashLine
                p.fillPath(_broken(rect.width(), rect.height(), dashed).translated(rect.topLeft()), colour)
                return
        p.drawRoundedRect(rect, 3, 3)
        if begins_here and mark.severity is Severity.STOPS:
            p.fillRect(QRectF(rect.left(), rect.top(), 4.0, rect.height()), QColor(theme.clash))
