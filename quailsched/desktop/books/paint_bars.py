"""Bars of hatch by incubator: of eggs set a filled one, of fertile ones a hatched one, a diamond for each batch."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPainterPath, QPen, QPolygonF

from quailsched.desktop.books.chart_data import Bar, ChartData
from quailsched.desktop.books.plot import Plot
from quailsched.desktop.theme import current
from quailsched.words import number_text, say

_WIDEST = 64.0
_APART = 7.0  # pixels between the lines of a hatched bar
_DIAMOND = 5.0


def paint_bars(p: QPainter, plot: Plot, data: ChartData, at: int) -> None:
    """Scale, a pair of bars in each slot, what they are of below; the chosen name is bold."""
    plot.paint_scale(p, data.unit)
    for number, bar in enumerate(data.bars):
        _paint_pair(p, plot, number, bar)
        _paint_names(p, plot, number, bar, number == at)
    _paint_key(p, plot, data)


def _paint_pair(p: QPainter, plot: Plot, number: int, bar: Bar) -> None:
    slot = plot.x(1) - plot.x(0)
    wide = min(slot * 0.34, _WIDEST)
    middle = round(plot.x(number + 0.5))
    _filled(p, _box(plot, middle - wide - 2, wide, bar.of_set))
    _paint_value(p, plot, middle - wide / 2 - 2, bar.of_set)
    if bar.of_fertile is not None:
        _hatched(p, _box(plot, middle + 2, wide, bar.of_fertile))
        _paint_value(p, plot, middle + wide / 2 + 2, bar.of_fertile)
    if len(bar.batches) > 1:
        for value in bar.batches:
            _diamond(p, QPointF(middle - wide - 2 - _DIAMOND - 4, plot.y(value)))


def _box(plot: Plot, left: float, wide: float, value: float) -> QRectF:
    top = plot.y(value)
    return QRectF(left, top, wide, plot.room.bottom() - top)


def _filled(p: QPainter, box: QRectF) -> None:
    p.fillRect(box, QColor(current().batch(0).fill))


def _hatched(p: QPainter, box: QRectF) -> None:
    colour = QColor(current().batch(3).fill)
    path = QPainterPath()
    path.addRect(box)
    p.save()
    p.setClipPath(path)
    p.setPen(QPen(colour, 1.4))
    across = box.height()
    start = box.left() - across
    while start < box.right():
        p.drawLine(QPointF(start, box.bottom()), QPointF(start + across, box.top()))
        start += _APART
    p.restore()
    p.setBrush(Qt.BrushStyle.NoBrush)
    p.setPen(QPen(colour, 1.6))
    p.drawRect(box)


def _diamond(p: QPainter, at: QPointF) -> None:
    p.setPen(QPen(QColor(current().ink), 1.4))
    p.setBrush(QColor(current().paper))
    p.drawPolygon(
        QPolygonF(
            [
                at + QPointF(0, -_DIAMOND),
                at + QPointF(_DIAMOND, 0),
                at + QPointF(0, _DIAMOND),
                at - QPointF(_DIAMOND, 0),
            ]
        )
    )


def _paint_value(p: QPainter, plot: Plot, middle: float, value: float) -> None:
    line = plot.metrics.height()
    p.setPen(QColor(current().ink))
    box = QRectF(middle - 40, plot.y(value) - line - 2, 80, line)
    p.drawText(box, Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignBottom, f"{number_text(value)} %")


def _paint_names(p: QPainter, plot: Plot, number: int, bar: Bar, is_chosen: bool) -> None:
    line, slot = plot.metrics.height(), plot.x(1) - plot.x(0)
    font = QFont(p.font())
    for row, (text, ink) in enumerate(
        ((bar.name, current().ink), (bar.use, current().soft), (bar.eggs, current().soft))
    ):
        font.setBold(is_chosen and row == 0)
        p.save()
        p.setFont(font)
        p.setPen(QColor(ink))
        short = p.fontMetrics().elidedText(text, Qt.TextElideMode.ElideRight, round(slot - 8))
        box = QRectF(plot.x(number) + 4, plot.room.bottom() + 6 + row * line, slot - 8, line)
        p.drawText(box, Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignVCenter, short)
        p.restore()


def _paint_key(p: QPainter, plot: Plot, data: ChartData) -> None:
    """What is what, in the line above the chart."""
    line = plot.metrics.height()
    base, left = plot.room.top() - line * 1.5, plot.room.left()
    for draw, words, is_shown in (
        (_filled, say("of eggs set"), True),
        (_hatched, say("of fertile eggs"), any(bar.of_fertile is not None for bar in data.bars)),
        (_diamond_in, say("each batch, of eggs set"), any(len(bar.batches) > 1 for bar in data.bars)),
    ):
        wide = plot.metrics.horizontalAdvance(words)
        if not is_shown or left + 26 + wide > plot.room.right():
            continue
        draw(p, QRectF(left, base - line * 0.35, 20, line * 0.7))
        p.setPen(QColor(current().ink))
        box = QRectF(left + 26, base - line / 2, wide + 4, line)
        p.drawText(box, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, words)
        left += 26 + wide + 24


def _diamond_in(p: QPainter, box: QRectF) -> None:
    _diamond(p, box.center())
