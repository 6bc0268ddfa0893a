"""Draws what the overview shows: birds, months, ticks of clashes, the window of days. No mouse, no keys."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date

from PySide6.QtCore import QLineF, QPointF, QRect, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from quailsched.desktop.season_canvas.fonts import Face
from quailsched.desktop.season_canvas.scale import TimeScale, month_ticks
from quailsched.desktop.theme import Theme
from quailsched.season.clash import Clash
from quailsched.season.severity import STOPPING

_BAR_PX, _BOX_PX = 3.0, 4.0  # ticks: a bar for what stops the plan, an open box for what is to be watched
_TICKS_PX = 8.0  # the row of them along the bottom
_BIRDS_SHARE = 0.75  # of the height above that row, at most
_GRIP_PX = 3.0


def draw_birds(painter: QPainter, theme: Theme, heights: Sequence[int], most: int, start: int, tall: float) -> None:
    """Columns of birds from the column ``start`` on, on plain ground."""
    painter.fillRect(QRectF(start, 0, len(heights), tall), QColor(theme.lane))
    painter.setPen(QPen(QColor(theme.shut_line), 1.0))
    base = tall - _TICKS_PX
    room = base * _BIRDS_SHARE / max(most, 1)
    lines = [QLineF(x, base, x, base - min(height, most) * room) for x, height in enumerate(heights, start) if height]
    painter.translate(0.5, 0)
    painter.drawLines(lines)
    painter.translate(-0.5, 0)


def months_of(face: Face, scale: TimeScale, end: int, wide: float) -> list[tuple[float, str]]:
    """Where names of months, or years, stand up to the day ``end`` (an ordinal): as many as have room."""
    months, free = [], 0.0
    for tick in month_ticks(scale, scale.first, date.fromordinal(end), face.width("September") + 8):
        x = scale.x(tick.day)
        if tick.label and x >= free and x + face.width(tick.label) + 3 <= wide:
            months.append((x, tick.label))
            free = x + face.width(tick.label) + 8
    return months


def draw_months(painter: QPainter, theme: Theme, face: Face, months: Iterable[tuple[float, str]]) -> None:
    painter.setPen(QColor(theme.line))
    painter.drawLines([QLineF(x, 2, x, face.height) for x, _ in months])
    painter.setPen(QColor(theme.soft))
    for x, name in months:
        face.draw(painter, x + 3, face.ascent + 1, name)


class Ticks:
    """Where it clashes, in a few shapes that are drawn at once."""

    def __init__(self, clashes: Iterable[Clash], scale: TimeScale, tall: float) -> None:
        """Those that begin in the same few pixels make one tick."""
        bars: dict[int, None] = {}
        boxes: dict[int, None] = {}
        self.lines: list[QRectF] = []
        first_day, day_px, reached = scale.first.toordinal(), scale.day_px, -1.0
        for clash in clashes:  # in order of days
            x = (clash.first.toordinal() - first_day) * day_px
            if clash.kind in STOPPING:
                bars[int(x / _BAR_PX)] = None
            else:
                boxes[int(x / (_BOX_PX + 1))] = None
            right = (clash.last.toordinal() - first_day + 1) * day_px
            if right > reached + 0.5:
                left = max(x, reached)
                self.lines.append(QRectF(left, tall - _TICKS_PX / 2 - 1, right - left, 2))
                reached = right
        top, box_top = tall - _TICKS_PX + 1, tall - (_TICKS_PX + _BOX_PX) / 2
        self.bars = [QRectF(column * _BAR_PX, top, _BAR_PX, _TICKS_PX - 2) for column in bars]
        self.boxes = [QRectF(column * (_BOX_PX + 1) + 0.5, box_top, _BOX_PX, _BOX_PX) for column in boxes]

    def draw(self, painter: QPainter, theme: Theme) -> None:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(theme.clash_tint))
        painter.drawRects(self.lines)
        painter.setBrush(QColor(theme.clash))
        painter.drawRects(self.bars)
        painter.setPen(QPen(QColor(theme.clash), 1.0))
        painter.setBrush(QColor(theme.card))
        painter.drawRects(self.boxes)


def draw_veil(painter: QPainter, theme: Theme, left: float, right: float, wide: float, tall: float) -> None:
    """What is not in view is paler."""
    veil = QColor(theme.paper)
    veil.setAlphaF(0.6)
    painter.fillRect(QRectF(0, 0, left, tall), veil)
    painter.fillRect(QRectF(right, 0, wide - right, tall), veil)


def draw_today(painter: QPainter, theme: Theme, x: float, tall: float) -> None:
    painter.setPen(QPen(QColor(theme.ink), 1.5))
    painter.drawLine(QPointF(x, 0), QPointF(x, tall))


def draw_window(painter: QPainter, theme: Theme, left: float, right: float, tall: float, *, has_focus: bool) -> None:
    """The days in view: a frame with an edge at either side to pull at."""
    colour = QColor(theme.good if has_focus else theme.soft)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(colour, 2.0 if has_focus else 1.2))
    painter.drawRoundedRect(QRectF(left, 1, right - left, tall - 2), 3, 3)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour)
    for x in (left, right):
        painter.drawRoundedRect(QRectF(x - _GRIP_PX / 2, tall * 0.25, _GRIP_PX, tall * 0.5), 1.5, 1.5)


def draw_focus(painter: QPainter, theme: Theme, room: QRect) -> None:
    """A frame round it all while the keys go to it: the one of the days in view may be narrow."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, on=False)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(
        QPen(QColor(theme.good), 2, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap, Qt.PenJoinStyle.MiterJoin)
    )
    painter.drawRect(room.adjusted(1, 1, -1, -1))
