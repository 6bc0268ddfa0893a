"""A bar a day: the most eggs that make no new clash, and below what stops more. One day is chosen."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from itertools import groupby

from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QWidget

from quailsched.desktop.season_canvas.mark_places import MARK_WORDS
from quailsched.desktop.season_canvas.scale import TimeScale, month_ticks, uncrossed, week_ticks
from quailsched.desktop.theme import current
from quailsched.farm.records import Farm
from quailsched.farm.units import count_text, day_text
from quailsched.planner.next_set import NextSet
from quailsched.words import number_text, say

_STEPS = (1, 2, 5)
_LEAST_CHART_PX = 70  # from none to the most eggs


class Landscape(QWidget):
    """Arrows and the mouse move a point over days and numbers of eggs, never above what the day takes."""

    chosen = Signal(int, int)  # number of the day, eggs

    def __init__(self) -> None:
        super().__init__()
        self._days: Sequence[NextSet] = ()
        self._farm: Farm | None = None
        self._at = self._eggs = 0
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMinimumSize(220, round(self.fontMetrics().height() * 6.2) + _LEAST_CHART_PX)
        self.setAccessibleName(say("Most eggs by day"))

    def show_days(self, farm: Farm, days: Sequence[NextSet], at: int) -> None:
        self._farm, self._days = farm, days
        self.choose(at)

    def choose(self, at: int, eggs: int | None = None) -> None:
        """Move the point to day number ``at`` and ``eggs``, or to the most eggs of that day."""
        if self._days:
            self._at = min(max(at, 0), len(self._days) - 1)
            one = self._days[self._at]
            self._eggs = one.eggs if eggs is None else min(max(eggs, min(1, one.eggs)), one.eggs)
            self.setAccessibleDescription(
                say(
                    "{day}: {count} of {eggs}",
                    day=day_text(one.day),
                    count=count_text(self._eggs, "egg"),
                    eggs=number_text(one.eggs),
                )
            )
            self.chosen.emit(self._at, self._eggs)
        self.update()

    # geometry

    def _chart(self) -> QRectF:
        line = self.fontMetrics().height()
        left = self.fontMetrics().horizontalAdvance("1,000") + 16
        return QRectF(
            left, line * 2.6, max(self.width() - left - 12, 50), max(self.height() - line * 6.2, _LEAST_CHART_PX)
        )

    def _day_px(self) -> float:
        return self._chart().width() / max(len(self._days), 1)

    def _top(self) -> int:
        """The number at the top of the chart: a round one, not below the most."""
        most = max((one.eggs for one in self._days), default=0)
        tens = 10
        while True:
            for step in _STEPS:
                if step * tens >= most:
                    return step * tens
            tens *= 10

    def mousePressEvent(self, event: QMouseEvent) -> None:
        chart, at = self._chart(), event.position()
        share = (chart.bottom() - at.y()) / chart.height()
        self.choose(int((at.x() - chart.left()) // self._day_px()), round(share * self._top()))

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        self.mousePressEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        steps = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1, Qt.Key.Key_PageUp: -7, Qt.Key.Key_PageDown: 7}
        fewer_or_more = {Qt.Key.Key_Up: 1, Qt.Key.Key_Down: -1}
        key, is_coarse = Qt.Key(event.key()), event.modifiers() & Qt.KeyboardModifier.ShiftModifier
        if key in steps:
            self.choose(self._at + steps[key])
        elif key in fewer_or_more:
            self.choose(self._at, self._eggs + fewer_or_more[key] * (10 if is_coarse else 1))
        elif key == Qt.Key.Key_Home:
            self.choose(self._at)
        else:
            super().keyPressEvent(event)

    # painting

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            if self._days:
                self._paint_grid(painter)
                self._paint_bars(painter)
                self._paint_limits(painter)
                self._paint_chosen(painter)
            if self.hasFocus():  # a thin frame while the keys go to the days
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.setPen(QPen(QColor(current().good), 1.5))
                painter.drawRect(QRectF(self.rect()).adjusted(1, 1, -1, -1))
        finally:
            painter.end()

    def _x(self, number: float) -> float:
        return self._chart().left() + number * self._day_px()

    def _y(self, eggs: int) -> float:
        chart = self._chart()
        return chart.bottom() - chart.height() * eggs / self._top()

    def _paint_grid(self, p: QPainter) -> None:
        theme, chart, line = current(), self._chart(), self.fontMetrics().height()
        p.setPen(QPen(QColor(theme.line), 1))
        top = self._top()
        for eggs in (0, top // 2, top):
            p.setPen(QPen(QColor(theme.line), 1))
            p.drawLine(QPointF(chart.left(), self._y(eggs)), QPointF(chart.right(), self._y(eggs)))
            p.setPen(QColor(theme.soft))
            box = QRectF(0, self._y(eggs) - line / 2, chart.left() - 8, line)
            p.drawText(box, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, f"{eggs:,}")
        scale = TimeScale(self._days[0].day, self._day_px())
        end = self._days[-1].day + timedelta(days=1)
        bold = QFont(self.font())
        bold.setBold(True)
        months = list(month_ticks(scale, self._days[0].day, end, 70))
        weeks = week_ticks(scale, self._days[0].day, end, 34)
        for tick in uncrossed(weeks, months, scale, self.fontMetrics().horizontalAdvance("28") + 2):
            if tick.day >= self._days[0].day:
                p.setPen(QPen(QColor(theme.line), 0.6))
                x = chart.left() + scale.x(tick.day)
                p.drawLine(QPointF(x, chart.top()), QPointF(x, chart.bottom()))
                p.setPen(QColor(theme.soft))
                p.drawText(QPointF(x + 2, chart.top() - 5), tick.label)
        p.setFont(bold)
        p.setPen(QColor(theme.ink))
        for tick in months:
            x = chart.left() + max(scale.x(tick.day), 0)
            following = (tick.day + timedelta(days=32)).replace(day=1)
            room = min(scale.x(following), chart.width()) - (x - chart.left())
            if room > QFontMetricsF(bold).horizontalAdvance(tick.label) + 8:
                p.drawText(QPointF(x + 2, chart.top() - 5 - line), tick.label)
        p.setFont(self.font())

    def _paint_bars(self, p: QPainter) -> None:
        theme = current()
        for number, one in enumerate(self._days):
            # On whole pixels: no hairlines between the days of a stretch.
            left, right = round(self._x(number)), round(self._x(number + 1))
            bar = QRectF(left, self._y(one.eggs), right - left, self._chart().bottom() - self._y(one.eggs))
            p.fillRect(bar, QColor(theme.good if number == self._at else theme.shut_line))
            if one.eggs:  # the bars are pale: the number stands where their tops are
                top = theme.good if number == self._at else theme.soft
                p.fillRect(QRectF(left, bar.top(), bar.width(), 2), QColor(top))
            else:  # a day for none: a stroke below the line, so that it is not mistaken for no answer
                p.fillRect(QRectF(bar.left(), self._chart().bottom() + 1, bar.width() - 1, 3), QColor(theme.clash))

    def _paint_limits(self, p: QPainter) -> None:
        """Who or what stops more, in two words under each stretch of days that has room for them."""
        theme, line = current(), self.fontMetrics().height()
        small = QFont(self.font())
        small.setPointSizeF(small.pointSizeF() * 0.85)
        metrics = QFontMetricsF(small)
        p.setFont(small)
        for words, run in groupby(enumerate(self._days), key=lambda pair: self._limit_words(pair[1])):
            numbers = [number for number, _ in run]
            left, right = self._x(numbers[0]), self._x(numbers[-1] + 1)
            p.setPen(QPen(QColor(theme.line), 1))
            p.drawLine(QPointF(left, self._chart().bottom()), QPointF(left, self._chart().bottom() + line * 2.4))
            p.setPen(QColor(theme.soft))
            for row, word in enumerate(words):
                if metrics.horizontalAdvance(word) <= right - left - 6:
                    at = QRectF(left + 3, self._chart().bottom() + 7 + row * line, right - left - 6, line)
                    p.drawText(at, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, word)
        p.setFont(self.font())

    def _limit_words(self, one: NextSet) -> tuple[str, str]:
        if one.limit is None or self._farm is None:
            return say("egg places"), ""
        return self._farm.place(one.limit.place_id).name, say(MARK_WORDS[one.limit.kind])

    def _paint_chosen(self, p: QPainter) -> None:
        theme, one = current(), self._days[self._at]
        x = self._x(self._at + 0.5)
        p.setPen(QPen(QColor(theme.good), 2))
        p.drawLine(QPointF(x, self._chart().top()), QPointF(x, self._chart().bottom()))
        text = f"{day_text(one.day)} · {count_text(self._eggs, 'egg')}"
        wide = self.fontMetrics().horizontalAdvance(text) + 20
        high = self.fontMetrics().height() + 6
        left = min(max(x - wide / 2, 2), self.width() - wide - 2)
        top = max(min(self._y(self._eggs) - high - 8, self._chart().bottom() - high - 8), self._chart().top() + 2)
        p.setPen(Qt.PenStyle.NoPen)
        p.setBrush(QColor(theme.good))
        p.drawRoundedRect(QRectF(left, top, wide, high), high / 2, high / 2)
        p.setPen(QPen(QColor(theme.paper), 1.5))
        p.drawEllipse(QPointF(x, self._y(self._eggs)), 5.5, 5.5)
        p.setPen(QColor(theme.on_good))
        p.drawText(QRectF(left, top, wide, high), Qt.AlignmentFlag.AlignCenter, text)


def number_of(days: Sequence[NextSet], day: date) -> int:
    """The place of ``day`` among ``days``; 0 if it is not there."""
    return next((number for number, one in enumerate(days) if one.day == day), 0)
