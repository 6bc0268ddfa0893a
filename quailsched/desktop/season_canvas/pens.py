"""What all painters of the season share: the painter, the scene, what of it is to be drawn, and a few strokes."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from contextlib import contextmanager
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
_Item = TypeVar("_Item", bound=HasDays)


@lru_cache(maxsize=512)
def mixed(colour: str, ground: str, share: float) -> QColor:
    """``share`` of ``colour`` on ``ground``, opaque: to blend while drawing is ten times as slow."""
    over, under = QColor(colour), QColor(ground)
    channels = ((over.red(), under.red()), (over.green(), under.green()), (over.blue(), under.blue()))
    return QColor(*(round(a * share + b * (1 - share)) for a, b in channels))


def _merged(spans: Iterable[tuple[float, float]]) -> list[tuple[float, float]]:
    """The spans in order, those that touch as one."""
    merged: list[tuple[float, float]] = []
    for left, right in sorted(spans):
        if merged and left <= merged[-1][1]:
            merged[-1] = merged[-1][0], max(right, merged[-1][1])
        else:
            merged.append((left, right))
    return merged


def _is_svg(painter: QPainter) -> bool:
    from PySide6.QtGui import QPaintEngine

    return painter.paintEngine().type() is QPaintEngine.Type.SVG


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
        among = [rect for rect in self._dirty if rect.bottom() > scene.head + 1]
        self._columns = _merged((rect.left(), rect.right()) for rect in among)
        self._region = QRegion()
        for rect in self._dirty:
            self._region += rect.toAlignedRect()

    @contextmanager
    def clipped(self, *shapes: QRectF | QPainterPath) -> Iterator[None]:
        """Draw only what lies inside all of ``shapes``, and inside what is drawn in already."""
        self.p.save()
        for shape in shapes:
            if isinstance(shape, QPainterPath):
                self.p.setClipPath(shape, Qt.ClipOperation.IntersectClip)
            elif self._is_svg:  # rectangles are rounded to whole pixels there
                self.p.setClipPath(_path(shape), Qt.ClipOperation.IntersectClip)
            else:
                self.p.setClipRect(shape, Qt.ClipOperation.IntersectClip)
        try:
            yield
        finally:
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
        return any(left <= x + beside and x - beside <= right for left, right in self._columns)

    def days_to_draw(self, lane: Lane) -> list[tuple[date, date]]:
        """The runs of days of ``lane``, half-open, that have something to be drawn in them, in their order."""
        scene = self.scene
        strip = QRectF(scene.left, scene.top(lane.top), scene.width - scene.left, lane.bottom - lane.top)
        parts = [strip.intersected(one) for one in self._dirty if strip.intersects(one)]
        merged = _merged((part.left() - 2, part.right() + 2) for part in parts)
        return [(scene.day(left), scene.day(right) + _DAY) for left, right in merged]

    def to_draw(self, items: Timed[_Item], runs: Sequence[tuple[date, date]]) -> list[_Item]:
        """Those of ``items`` that share a day with one of ``runs``, each once, in their order."""
        return list(dict.fromkeys(item for run in runs for item in items.within(*run)))

    def outline(self, lane: Lane, band: Band) -> QPolygonF:
        """The stepped shape of a band, cut at the line: what stands above it is drawn as overflow."""
        scene, room = self.scene, max(lane.content.room, 1)
        up = (lane.base_y - lane.line_y) / room
        place = QTransform(scene.scale.day_px, 0, 0, -up, scene.x(band.start), scene.top(lane.base_y))
        return place.map(shape_of(band, room))

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
