"""What all painters of the season share: the painter, the scene, fonts, and a few strokes."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen, QPolygonF

from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.lanes import Band
from quailsched.desktop.season_canvas.scene import Scene
from quailsched.desktop.theme import Theme
from quailsched.farm.records import Units


class Pens:
    """One painter on one scene; made anew for each paint."""

    def __init__(
        self, painter: QPainter, scene: Scene, theme: Theme, font: QFont, units: Units, has_focus: bool
    ) -> None:
        self.p, self.scene, self.theme, self.units, self.has_focus = painter, scene, theme, units, has_focus
        self.font = QFont(font)
        self.bold = QFont(font)
        self.bold.setBold(True)
        self.small = QFont(font)
        self.small.setPointSizeF(font.pointSizeF() * 0.88)
        self.tiny = QFont(font)
        self.tiny.setPointSizeF(font.pointSizeF() * 0.8)
        self.small_bold = QFont(self.small)
        self.small_bold.setBold(True)
        self.tiny_bold = QFont(self.tiny)
        self.tiny_bold.setBold(True)

    def is_visible(self, start: date, end: date) -> bool:
        return self.scene.x(end) >= self.scene.left and self.scene.x(start) <= self.p.viewport().width()

    def outline(self, lane: Lane, band: Band) -> QPolygonF:
        """The stepped shape of a band, cut at the line: what stands above it is drawn as overflow."""
        scene, cap = self.scene, lane.content.room
        upper: list[QPointF] = []
        lower: list[QPointF] = []
        for piece in band.pieces:
            x0, x1 = scene.x(piece.start), scene.x(piece.end)
            high, low = scene.top(lane.y(min(piece.high, cap))), scene.top(lane.y(min(piece.low, cap)))
            upper += [QPointF(x0, high), QPointF(x1, high)]
            lower += [QPointF(x0, low), QPointF(x1, low)]
        return QPolygonF(upper + lower[::-1])

    def hatch(
        self, rect: QRectF, colour: QColor, step: float, thickness: float, leaning: int, dotted: bool = False
    ) -> None:
        """Own lines, since brush patterns neither scale with the screen nor print well."""
        pen = QPen(colour, thickness)
        if dotted:
            pen.setStyle(Qt.PenStyle.DotLine)
        self.p.setPen(pen)
        height = rect.height()
        x = rect.left() - height - (rect.left() % step)
        lines = []
        while x < rect.right() + height:
            if leaning > 0:
                lines.append((QPointF(x, rect.bottom()), QPointF(x + height, rect.top())))
            else:
                lines.append((QPointF(x, rect.top()), QPointF(x + height, rect.bottom())))
            x += step
        for start, end in lines:
            self.p.drawLine(start, end)

    def text_clear(self, at: QPointF, text: str, font: QFont, ink: str, ground: str) -> None:
        """Text from a point of its base line that no curve or line behind it crosses: the ground is laid first."""
        metrics = QFontMetricsF(font)
        wide = metrics.horizontalAdvance(text)
        ground_rect = QRectF(at.x() - 1, at.y() - metrics.ascent() + 1, wide + 2, metrics.ascent() + 1)
        self.p.fillRect(ground_rect, QColor(ground))
        self.p.setFont(font)
        self.p.setPen(QColor(ink))
        self.p.drawText(at, text)
