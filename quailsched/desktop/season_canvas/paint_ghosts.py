"""Draws ghosts: outlines of bands that are not of the season shown."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPen

from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.pens import Pens

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
        taken: list[QRectF] = []
        for lane, ghost in self._shown():
            self._label(lane, ghost, taken)

    def _shown(self) -> list[tuple[Lane, Ghost]]:
        lanes = {lane.content.id: lane for lane in self.scene.lanes}
        first, end = self.scene.days()
        return [
            (lanes[ghost.band.place_id], ghost)
            for ghost in self.scene.ghosts
            if ghost.band.place_id in lanes and ghost.band.start < end and ghost.band.end > first
        ]

    def _outlines(self, thickness: float, strength: float) -> None:
        ink = QColor(self.theme.ink)
        ink.setAlphaF(strength)
        pen = QPen(ink, thickness, Qt.PenStyle.CustomDashLine)
        pen.setDashPattern([3, 2.5])
        self.p.setPen(pen)
        self.p.setBrush(Qt.BrushStyle.NoBrush)
        for lane, ghost in self._shown():
            self.p.drawPolygon(self.pens.outline(lane, ghost.band))

    def _label(self, lane: Lane, ghost: Ghost, taken: list[QRectF]) -> None:
        """Above the outline or inside it, at either end: where only paper is. Left out if there is no such spot."""
        face = self.pens.fonts.tiny
        wide, tall = face.width(ghost.label) + 4, face.height
        left = max(self.scene.x(ghost.band.start), self.scene.left) + 2
        edge = self.scene.width - 2
        right = min(self.scene.x(ghost.band.end), edge)
        if right - left < tall:
            return
        for x in (min(left, edge - wide), min(max(right - wide, left), edge - wide)):  # never cut at the edge
            top = self._top_between(lane, ghost, x, x + wide)
            for y in (top - tall - 1, top + 1):
                spot = QRectF(x, y, wide, tall)
                if self._is_paper(lane, spot) and not any(spot.intersects(other) for other in taken):
                    taken.append(spot)
                    is_inside = y >= self.scene.top(lane.line_y) - tall / 2
                    ground = self.theme.lane if is_inside else self.theme.paper
                    base = y + face.ascent  # the line of what the place holds does not strike it out
                    self.pens.text_clear(QPointF(x + 2, base), ghost.label, face, self.theme.ink, ground)
                    return

    def _top_between(self, lane: Lane, ghost: Ghost, left: float, right: float) -> float:
        """The highest that the outline gets between two points."""
        high = max(
            (p.high for p in ghost.band.pieces if self.scene.x(p.start) < right and self.scene.x(p.end) > left),
            default=0,
        )
        return self.scene.top(lane.y(min(high, lane.content.room)))

    def _is_paper(self, lane: Lane, spot: QRectF) -> bool:
        """Whether no band with its name and no overflow with its days is under ``spot``."""
        name = self.pens.fonts.small_bold.height
        scene, content = self.scene, lane.content
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
