"""What all painters of the season share: the painter, the scene, what of it is to be drawn, and a few strokes."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Iterable, Sequence
from datetime import date, timedelta
from functools import lru_cache
from typing import TypeVar

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPolygonF, QRegion, QTransform

from quailsched.desktop.season_canvas.fonts import Face, Fonts
from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.lanes import Band, HasDays, Timed
from quailsched.desktop.season_canvas.scene import Scene
from quailsched.desktop.season_canvas.shapes import shape_of
from quailsched.desktop.theme import Theme
from quailsched.farm.records import Units

_DAY = timedelta(days=1)
_AROUND_PX = 8.0  # what is drawn in one go reaches this far beyond what has to be drawn
_Item = TypeVar("_Item", bound=HasDays)


@lru_cache(maxsize=512)
def mixed(colour: str, ground: str, share: float) -> QColor:
    """``share`` of ``colour`` on ``ground``, opaque: to blend while drawing is ten times as slow."""
    over, under = QColor(colour), QColor(ground)
    channels = ((over.red(), under.red()), (over.green(), under.green()), (over.blue(), under.blue()))
    return QColor(*(round(a * share + b * (1 - share)) for a, b in channels))


_Point = TypeVar("_Point", float, date)


def merged(spans: Iterable[tuple[_Point, _Point]]) -> list[tuple[_Point, _Point]]:
    """The spans in order, those that touch as one."""
    found: list[tuple[_Point, _Point]] = []
    for left, right in sorted(spans):
        if found and left <= found[-1][1]:
            found[-1] = found[-1][0], max(right, found[-1][1])
        else:
            found.append((left, right))
    return found


def _is_svg(painter: QPainter) -> bool:
    from PySide6.QtGui import QPaintEngine

    return painter.paintEngine().type() is QPaintEngine.Type.SVG


class _Clipped:
    """Clips while it is entered; a generator would take three times as long, dozens of times a frame."""

    __slots__ = ("_pens", "_shapes")

    def __init__(self, pens: Pens, shapes: tuple[QRectF | QPainterPath, ...]) -> None:
        self._pens, self._shapes = pens, shapes

    def __enter__(self) -> None:
        self._pens.begin_clip(self._shapes)

    def __exit__(self, *_fault: object) -> None:
        self._pens.end_clip()


class Pens:
    """One painter on one scene; made anew for each paint, and handed to all who draw.

    ``dirty`` are the rectangles that are to be drawn; what lies outside need not be. All of it if none are given.
    ``grain`` is how far the lines of hatches and textures stand apart, the distance on the screen being 1.
    ``is_still``: nobody can scroll or point at it; names stand where they are in view, on plain ground in their bands.
    """

    def __init__(
        self,
        painter: QPainter,
        scene: Scene,
        theme: Theme,
        fonts: Fonts,
        units: Units,
        has_focus: bool = False,
        dirty: Sequence[QRectF] = (),
        grain: float = 1.0,
        is_still: bool = False,
    ) -> None:
        self.p, self.scene, self.theme, self.fonts = painter, scene, theme, fonts
        self.units, self.has_focus, self.grain = units, has_focus, grain
        self.is_still = is_still
        self._is_svg = is_still and _is_svg(painter)
        self._dirty = tuple(dirty) or (QRectF(0, 0, scene.width, scene.height),)
        among = [rect for rect in self._dirty if rect.bottom() > scene.head]
        self._columns = merged((rect.left(), rect.right()) for rect in among)
        self._lefts = [left for left, _ in self._columns]
        apart = merged((left - _AROUND_PX - 16, right + _AROUND_PX + 16) for left, right in self._columns)
        self._reaches = [(left + 16, right - 16) for left, right in apart]
        self._looked_from = scene.scale, scene.left, scene.head, scene.dx, scene.dy
        self._edges = [(rect.left(), rect.top(), rect.right(), rect.bottom()) for rect in self._dirty]
        self._region = QRegion()
        for rect in self._dirty:
            self._region += rect.toAlignedRect()

    def reaches(self, left: float, right: float) -> list[tuple[float, float]]:
        """From where to where there is something to be drawn between two points, and some way around; far apart."""
        return [one for one in self._reaches if one[0] <= right and left <= one[1]]

    def clipped(self, *shapes: QRectF | QPainterPath) -> _Clipped:
        """Draw only what lies inside all of ``shapes``, and inside what is drawn in already."""
        return _Clipped(self, shapes)

    def begin_clip(self, shapes: Iterable[QRectF | QPainterPath]) -> None:
        self.p.save()
        for shape in shapes:
            if isinstance(shape, QPainterPath):
                self.p.setClipPath(shape, Qt.ClipOperation.IntersectClip)
            elif self._is_svg:  # rectangles are rounded to whole pixels there
                self.p.setClipPath(_path(shape), Qt.ClipOperation.IntersectClip)
            else:
                self.p.setClipRect(shape, Qt.ClipOperation.IntersectClip)

    def end_clip(self) -> None:
        self.p.restore()
        if self._is_svg:
            self._clip_again()

    def _clip_again(self) -> None:
        """WORKAROUND (Qt 6.11): an SVG goes on with the inner clip after restore(); remove when it does not."""
        if self.p.hasClipping():
            self.p.setClipPath(self.p.clipPath())
        else:
            self.p.setClipping(False)

    def is_dirty(self, rect: QRectF) -> bool:
        return self._region.intersects(rect.toAlignedRect())

    def is_column_dirty(self, x: float, beside: float) -> bool:
        """Whether anything within ``beside`` pixels of ``x`` is to be drawn, at whatever height among the lanes."""
        at = bisect_right(self._lefts, x + beside) - 1
        return at >= 0 and x - beside <= self._columns[at][1]

    def days_to_draw(self, lane: Lane) -> list[tuple[date, date]]:
        """The runs of days of ``lane``, half-open, that have something to be drawn in them, in their order; so far
        apart that the dashes of one do not reach into another."""
        scene = self.scene
        edge, far_edge, top, bottom = scene.left, scene.width, scene.top(lane.top), scene.top(lane.foot)
        spans = merged(
            (max(left, edge) - 6, min(right, far_edge) + 6)
            for left, high, right, low in self._edges
            if high < bottom and low > top and left < far_edge and right > edge
        )
        return merged((scene.day(left + 4), scene.day(right - 4) + _DAY) for left, right in spans)

    def to_draw(self, items: Timed[_Item], runs: Sequence[tuple[date, date]]) -> list[_Item]:
        """Those of ``items`` that share a day with one of ``runs``, each once, in their order."""
        if len(runs) == 1:
            return items.within(*runs[0])
        return list(dict.fromkeys(item for run in runs for item in items.within(*run)))

    def outline(self, lane: Lane, band: Band) -> QPolygonF:
        """The stepped shape of a band, cut at the line: what stands above it is drawn as overflow."""
        known: tuple[Lane, object, QPolygonF] | None = band.kept.get("outline")
        if known is not None and known[0] is lane and known[1] == self._looked_from:
            return known[2]
        scene, room = self.scene, max(lane.content.room, 1)
        up = (lane.base_y - lane.line_y) / room
        place = QTransform(scene.scale.day_px, 0, 0, -up, scene.x(band.start), scene.top(lane.base_y))
        shape = place.map(shape_of(band, room))
        band.kept["outline"] = lane, self._looked_from, shape
        return shape

    def hatch(
        self, rect: QRectF, colour: QColor, step: float, thickness: float, leaning: int, dotted: bool = False
    ) -> None:
        """Own lines, since brush patterns neither scale with the screen nor print well; anchored to the season, so
        that they scroll with it."""
        self.p.setPen(QPen(colour, thickness, Qt.PenStyle.DotLine if dotted else Qt.PenStyle.SolidLine))
        height = rect.height()
        step *= self.grain
        anchor = -self.scene.dx % step
        x = rect.left() - height - ((rect.left() - height - anchor) % step)
        lines = []
        while x < rect.right() + height:
            top, bottom = rect.top(), rect.bottom()
            lines.append(QLineF(x, bottom, x + height, top) if leaning > 0 else QLineF(x, top, x + height, bottom))
            x += step
        self.p.drawLines(lines)

    def text(self, face: Face, at: QPointF, text: str, ink: str) -> None:
        """``text`` from a point of its base line."""
        self.p.setPen(QColor(ink))
        face.draw(self.p, at.x(), at.y(), text)

    def text_clear(self, at: QPointF, text: str, face: Face, ink: str, ground: str) -> None:
        """Text that no curve or line behind it crosses: the ground is laid first."""
        rect = QRectF(at.x() - 1, at.y() - face.ascent + 1, face.width(text) + 2, face.ascent + 1)
        self.p.fillRect(rect, QColor(ground))
        self.text(face, at, text, ink)


def _path(rect: QRectF) -> QPainterPath:
    path = QPainterPath()
    path.addRect(rect)
    return path
