"""Draws ghosts: outlines of bands that are not of the season shown."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING, NamedTuple

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPen

from quailsched.desktop.season_canvas.fonts import Fonts
from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.pens import Pens
from quailsched.desktop.season_canvas.scene import Scene

if TYPE_CHECKING:
    from quailsched.desktop.season_canvas.ghosts import Ghost


class GhostPainter:
    """Dashes in the ink of the theme: strong behind the bands, faint over them so that they do not cross out names."""

    def __init__(self, pens: Pens) -> None:
        self.pens, self.p, self.scene, self.theme = pens, pens.p, pens.scene, pens.theme

    def behind(self) -> None:
        """The outlines; to be drawn before the bands."""
        self._outlines(1.4, 1.0)

    def over(self) -> None:
        """What of the outlines bands have covered, and the labels; to be drawn after the bands."""
        self._outlines(1.0, 0.45)
        face = self.pens.fonts.tiny
        for label in ghost_labels(self.scene, self.pens.fonts):
            ground = self.theme.lane if label.is_inside else self.theme.paper
            base = label.y + face.ascent  # the line of what the place holds does not strike it out
            self.pens.text_clear(QPointF(label.x + 2, base), label.text, face, self.theme.ink, ground)

    def _outlines(self, thickness: float, strength: float) -> None:
        ink = QColor(self.theme.ink)
        ink.setAlphaF(strength)
        pen = QPen(ink, thickness, Qt.PenStyle.CustomDashLine)
        pen.setDashPattern([3, 2.5])
        self.p.setPen(pen)
        self.p.setBrush(Qt.BrushStyle.NoBrush)
        for lane, ghost in _shown(self.scene):
            self.p.drawPolygon(self.pens.outline(lane, ghost.band))


class GhostLabel(NamedTuple):
    """The words of an outline with their upper left corner."""

    place_id: str
    text: str
    x: float
    y: float
    wide: float
    is_inside: bool  # of the lane, below the line


def ghost_labels(scene: Scene, fonts: Fonts) -> list[GhostLabel]:
    """Above an outline or inside it, at either end: where only paper is. Left out if there is no such spot."""
    taken: list[QRectF] = []
    found = (_label(scene, fonts, lane, ghost, taken) for lane, ghost in _shown(scene))
    return [label for label in found if label is not None]


def _shown(scene: Scene) -> list[tuple[Lane, Ghost]]:
    lanes = {lane.content.id: lane for lane in scene.lanes}
    first, end = scene.days_about()
    return [
        (lanes[ghost.band.place_id], ghost)
        for ghost in scene.ghosts
        if ghost.band.place_id in lanes and ghost.band.start < end and ghost.band.end > first
    ]


def _label(scene: Scene, fonts: Fonts, lane: Lane, ghost: Ghost, taken: list[QRectF]) -> GhostLabel | None:
    face, (least, most) = fonts.tiny, scene.held()
    wide, tall = face.width(ghost.label) + 4, face.height
    left, edge = max(scene.x(ghost.band.start), least) + 2, most - 2
    right = min(scene.x(ghost.band.end), edge)
    if right - left < tall:
        return None
    for x in (min(left, edge - wide), min(max(right - wide, left), edge - wide)):  # never cut at the edge
        top = _top_between(scene, lane, ghost, x, x + wide)
        for y in (top - tall - 1, top + 1):
            spot = QRectF(x, y, wide, tall)
            if _is_paper(scene, fonts, lane, spot) and not any(spot.intersects(other) for other in taken):
                taken.append(spot)
                is_inside = y >= scene.top(lane.line_y) - tall / 2
                return GhostLabel(lane.content.id, ghost.label, x, y, wide, is_inside)
    return None


def _top_between(scene: Scene, lane: Lane, ghost: Ghost, left: float, right: float) -> float:
    """The highest that the outline gets between two points."""
    high = max(
        (p.high for p in ghost.band.pieces if scene.x(p.start) < right and scene.x(p.end) > left),
        default=0,
    )
    return scene.top(lane.y(min(high, lane.content.room)))


def _is_paper(scene: Scene, fonts: Fonts, lane: Lane, spot: QRectF) -> bool:
    """Whether no band with its name and no overflow with its days is under ``spot``."""
    name, content = fonts.small_bold.height, lane.content
    first, end = scene.day(spot.left()), scene.day(spot.right()) + timedelta(days=1)
    for band in content.bands.within(first, end):
        for piece in band.pieces:
            left, top, right, bottom = scene.rect_of(lane, piece)
            if bottom - top < name:  # it may carry its name on its back
                top -= name
            if spot.intersects(QRectF(left, top, right - left, bottom - top)):
                return False
    above = spot.top() < scene.top(lane.line_y)
    margin = spot.width()  # the days of an overflow stand above it and may be wider than it is
    days = timedelta(days=round(margin / scene.scale.day_px) + 1)
    return not above or not any(
        scene.x(over.start) - margin < spot.right() and scene.x(over.end) + margin > spot.left()
        for over in content.overs.within(first - days, end + days)
    )
