"""Where a chart's values stand in its room, and the lines of its scale."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetrics, QPainter, QPen

from quailsched.desktop.theme import current
from quailsched.words import number_text, say

_WEEKS = (1, 2, 4, 8, 13, 26, 52)
_PARTS = 4  # of the scale at the side


class Plot:
    """``room`` is where points can stand: ``x`` from ``first`` to ``last``, ``y`` from 0 to ``top``."""

    def __init__(
        self, room: QRectF, first: float, last: float, top: float, metrics: QFontMetrics, has_bars: bool
    ) -> None:
        self.room, self.top, self.metrics, self._has_bars = room, top, metrics, has_bars
        self.first, self.last = first, max(last, first + 1.0)

    def middle(self, x: float) -> float:
        """A bar stands in the middle of its slot, a point where it is."""
        return x + 0.5 if self._has_bars else x

    def x(self, value: float) -> float:
        return self.room.left() + self.room.width() * (value - self.first) / (self.last - self.first)

    def y(self, value: float) -> float:
        return self.room.bottom() - self.room.height() * value / self.top

    def week_step(self) -> int:
        """Weeks from one mark of age to the next, so that their numbers stand apart."""
        apart = self.metrics.horizontalAdvance("000") * 1.6
        px = self.room.width() * 7 / (self.last - self.first)
        return next((weeks for weeks in _WEEKS if weeks * px >= apart), _WEEKS[-1])

    def weeks(self) -> Iterator[int]:
        step = self.week_step()
        yield from range(-(-int(self.first // 7) // step) * step, int(self.last // 7) + 1, step)

    def paint_scale(self, p: QPainter, unit: str) -> None:
        """Lines across with their values at the left."""
        theme, line = current(), self.metrics.height()
        for part in range(_PARTS + 1):
            value = self.top * part / _PARTS
            y = round(self.y(value)) + 0.5
            p.setPen(QPen(QColor(theme.edge if part == 0 else theme.line), 1))
            p.drawLine(QPointF(self.room.left(), y), QPointF(self.room.right(), y))
            p.setPen(QColor(theme.soft))
            text = f"{number_text(value, 0 if value.is_integer() else 1)} {unit}"
            box = QRectF(0, y - line / 2, self.room.left() - 8, line)
            p.drawText(box, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, text)

    def paint_weeks(self, p: QPainter) -> None:
        """Ages along the bottom."""
        theme, line = current(), self.metrics.height()
        for week in self.weeks():
            x = round(self.x(week * 7)) + 0.5
            p.setPen(QPen(QColor(theme.edge), 1))
            p.drawLine(QPointF(x, self.room.bottom()), QPointF(x, self.room.bottom() + 4))
            p.setPen(QColor(theme.soft))
            box = QRectF(x - 30, self.room.bottom() + 5, 60, line)
            p.drawText(box, Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop, number_text(week))
        box = QRectF(self.room.left(), self.room.bottom() + 5 + line, self.room.width(), line * 1.2)
        p.drawText(box, Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop, say("age in weeks"))
