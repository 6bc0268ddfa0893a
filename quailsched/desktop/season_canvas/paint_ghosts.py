"""Draws ghosts: outlines of bands that are not of the season shown."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPen

from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.ghosts import Ghost
from quailsched.desktop.season_canvas.pens import Pens


class GhostPainter(Pens):
    """Dashes in the ink of the theme: strong behind the bands, faint over them so that they do not cross out names."""

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
        lanes = {lane.content.place.id: lane for lane in self.scene.lanes}
        return [
            (lanes[ghost.band.place_id], ghost)
            for ghost in self.scene.ghosts
            if ghost.band.place_id in lanes and self.is_visible(ghost.band.start, ghost.band.end)
        ]

    def _outlines(self, thickness: float, strength: float) -> None:
        ink = QColor(self.theme.ink)
        ink.setAlphaF(strength)
        pen = QPen(ink, thickness, Qt.PenStyle.CustomDashLine)
        pen.setDashPattern([3, 2.5])
        self.p.setPen(pen)
        self.p.setBrush(Qt.BrushStyle.NoBrush)
        for lane, ghost in self._shown():
            self.p.drawPolygon(self.outline(lane, ghost.band))

    def _label(self, lane: Lane, ghost: Ghost, taken: list[QRectF]) -> None:
        """Above the outline or inside it, at either end: where only paper is. Left out if there is no such spot."""
        metrics = QFontMetricsF(self.tiny)
        wide, tall = metrics.horizontalAdvance(ghost.label) + 4, metrics.height()
        left = max(self.scene.x(ghost.band.start), self.scene.left) + 2
        edge = float(self.p.viewport().width()) - 2
        right = min(self.scene.x(ghost.band.end), edge)
        if right - left < tall:
            return
        for x in (min(left, edge - wide), min(max(right - wide, left), edge - wide)):  # never cut at the edge
            top = self._top_between(lane, ghost, x, x + wide)
            for y in (top - tall - 1, top + 1):
                spot = QRectF(x, y, wide, tall)
                if self._is_paper(lane, spot) and not any(spot.intersects(other) for other in taken):
                    taken.append(spot)
                    self.p.setFont(self.tiny)
                    self.p.setPen(QColor(self.theme.ink))
                    self.p.drawText(spot, Qt.AlignmentFlag.AlignCenter, ghost.label)
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
        name = QFontMetricsF(self.small_bold).height()
        scene, content = self.scene, lane.content
        steps = [(p.start, p.end, p.high, p.low) for band in content.bands for p in band.pieces]
        for start, end, high, low in steps:
            top, bottom = scene.top(lane.y(high)), scene.top(lane.y(low))
            if bottom - top < name:  # it may carry its name on its back
                top -= name
            if spot.intersects(QRectF(scene.x(start), top, scene.x(end) - scene.x(start), bottom - top)):
                return False
        above = spot.top() < scene.top(lane.line_y)
        margin = spot.width()  # the days of an overflow stand above it and may be wider than it is
        return not above or not any(
            scene.x(over.start) - margin < spot.right() and scene.x(over.end) + margin > spot.left()
            for over in content.overs
        )
