"""What was found by age as points on a line, and what is expected as a broken line: told apart without colour."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

from quailsched.desktop.books.chart_data import ChartData
from quailsched.desktop.books.plot import Plot
from quailsched.desktop.theme import current

_DOT = 4.5


def paint_curve(p: QPainter, plot: Plot, data: ChartData, at: int) -> None:
    """Scale, curve, points, and a ring around the chosen one."""
    theme = current()
    plot.paint_scale(p, data.unit)
    plot.paint_weeks(p)
    found = [QPointF(plot.x(spot.x), plot.y(spot.y)) for spot in data.spots]
    p.setBrush(Qt.BrushStyle.NoBrush)
    p.setPen(_expected_pen())
    p.drawPolyline(QPolygonF([QPointF(plot.x(age), plot.y(value)) for age, value in data.curve]))
    colour = QColor(theme.batch(0).fill)
    p.setPen(QPen(colour, 1.6))
    p.drawPolyline(QPolygonF(found))
    for number, point in enumerate(found):
        _dot(p, point, colour)
        if number == at:
            p.setBrush(Qt.BrushStyle.NoBrush)
            p.setPen(QPen(QColor(theme.ink), 1.6))
            p.drawEllipse(point, _DOT + 4, _DOT + 4)
    _paint_key(p, plot, data, colour)


def _expected_pen() -> QPen:
    pen = QPen(QColor(current().soft), 2)
    pen.setDashPattern([5, 3])
    return pen


def _dot(p: QPainter, point: QPointF, colour: QColor) -> None:
    p.setPen(QPen(QColor(current().paper), 1.2))
    p.setBrush(colour)
    p.drawEllipse(point, _DOT, _DOT)


def _paint_key(p: QPainter, plot: Plot, data: ChartData, colour: QColor) -> None:
    """Which is which, in the line above the chart."""
    metrics, base = plot.metrics, plot.room.top() - plot.metrics.height() * 1.2
    left, ink = plot.room.left(), QColor(current().ink)
    p.setPen(QPen(colour, 1.6))
    p.drawLine(QPointF(left, base), QPointF(left + 30, base))
    _dot(p, QPointF(left + 15, base), colour)
    left = _words(p, plot, left + 38, base, data.found_name, ink)
    if left + 38 + metrics.horizontalAdvance(data.curve_name) > plot.room.right():
        return
    p.setPen(_expected_pen())
    p.drawLine(QPointF(left, base), QPointF(left + 30, base))
    _words(p, plot, left + 38, base, data.curve_name, ink)


def _words(p: QPainter, plot: Plot, left: float, base: float, text: str, ink: QColor) -> float:
    """Draw ``text`` about the line ``base``; where the next one may begin."""
    metrics = plot.metrics
    room = max(plot.room.right() - left, 20)
    text = metrics.elidedText(text, Qt.TextElideMode.ElideRight, round(room))
    box = QRectF(left, base - metrics.height() / 2, room, metrics.height())
    p.setPen(ink)
    p.drawText(box, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, text)
    return left + metrics.horizontalAdvance(text) + 24
