"""A chart of the Books view: points against a curve, or bars. Arrows and the mouse choose; what is chosen is told.

What is shown stands in ``chart_data``; how bars and curves are drawn in ``paint_bars`` and ``paint_curve``.
"""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QWidget

from quailsched.desktop.books.chart_data import ChartData
from quailsched.desktop.books.paint_bars import paint_bars
from quailsched.desktop.books.paint_curve import paint_curve
from quailsched.desktop.books.plot import Plot
from quailsched.desktop.theme import current


class Chart(QWidget):
    """Nothing is drawn before data is given. ``chosen`` is sent with the number of the point that is chosen."""

    chosen = Signal(int)

    def __init__(self) -> None:
        super().__init__()
        self.data = ChartData("")
        self.at = 0
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMinimumSize(200, 120)

    def show_data(self, data: ChartData) -> None:
        self.data = data
        self.setAccessibleName(data.name)
        self.choose(min(self.at, max(len(data.spots) - 1, 0)))

    def choose(self, number: int) -> None:
        """Choose the point of this number, or the nearest there is."""
        spots = self.data.spots
        if spots:
            self.at = min(max(number, 0), len(spots) - 1)
            self.setAccessibleDescription(spots[self.at].words)
            self.chosen.emit(self.at)
        self.update()

    def plot(self) -> Plot:
        """Where everything stands at the present size."""
        line = self.fontMetrics().height()
        left = self.fontMetrics().horizontalAdvance("1,000 g") + 14
        lines_below = 4.2 if self.data.bars else 2.6
        room = QRectF(
            left, line * 2.4, max(self.width() - left - 16, 60), max(self.height() - line * (2.4 + lines_below), 40)
        )
        last = len(self.data.bars) if self.data.bars else self.data.last_day
        return Plot(room, self.data.first_day, last, self.data.top, self.fontMetrics(), bool(self.data.bars))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key, last = Qt.Key(event.key()), len(self.data.spots) - 1
        goes_to = {
            Qt.Key.Key_Left: self.at - 1,
            Qt.Key.Key_Right: self.at + 1,
            Qt.Key.Key_Home: 0,
            Qt.Key.Key_End: last,
        }
        if key in goes_to and self.data.spots:
            self.choose(goes_to[key])
        else:
            super().keyPressEvent(event)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        plot, at = self.plot(), event.position()
        if self.data.spots:
            spots = enumerate(self.data.spots)
            self.choose(min(spots, key=lambda one: abs(plot.x(plot.middle(one[1].x)) - at.x()))[0])

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        self.mousePressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            if self.data.spots:
                plot = self.plot()
                (paint_bars if self.data.bars else paint_curve)(painter, plot, self.data, self.at)
                self._paint_chosen(painter, plot)
            if self.hasFocus():
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.setPen(QPen(QColor(current().good), 1.5))
                painter.drawRect(QRectF(self.rect()).adjusted(1, 1, -1, -1))
        finally:
            painter.end()

    def _paint_chosen(self, p: QPainter, plot: Plot) -> None:
        """The words of the chosen point, on a plate beside it."""
        theme, spot = current(), self.data.spots[self.at]
        metrics = self.fontMetrics()
        text = metrics.elidedText(spot.words, Qt.TextElideMode.ElideRight, self.width() - 40)
        wide, high = metrics.horizontalAdvance(text) + 20, metrics.height() + 6
        at = QPointF(plot.x(plot.middle(spot.x)), plot.y(spot.y))
        left = min(max(at.x() - wide / 2, 4), self.width() - wide - 4)
        above, below = at.y() - high - 12, at.y() + 12
        top = above if above >= plot.room.top() - high else min(below, plot.room.bottom() - high - 2)
        if self.data.bars:  # at the foot of the bars, where it hides none of their ends
            top = plot.room.bottom() - high - 6
        p.setPen(Qt.PenStyle.NoPen)
        p.setBrush(QColor(theme.good))
        p.drawRoundedRect(QRectF(left, top, wide, high), high / 2, high / 2)
        p.setPen(QColor(theme.on_good))
        p.drawText(QRectF(left, top, wide, high), Qt.AlignmentFlag.AlignCenter, text)
