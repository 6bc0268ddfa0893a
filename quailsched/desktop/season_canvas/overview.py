"""A thin strip with all days of the season: how many birds there are, where it clashes, and what is in view."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from itertools import accumulate

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFocusEvent, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen, QPixmap, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from quailsched.desktop.season_canvas.canvas import SeasonCanvas
from quailsched.desktop.season_canvas.fonts import Fonts
from quailsched.desktop.season_canvas.layout import SeasonLayout
from quailsched.desktop.season_canvas.scale import TimeScale, month_ticks
from quailsched.desktop.theme import current
from quailsched.season.severity import Severity, open_clashes, severity_of
from quailsched.words import say

_EDGE_PX = 6.0  # how near to the edge of the window of days a press takes the edge
_LEAST_PX = 8.0  # the window of days is never drawn narrower
_TICK_PX = 3.0


class Overview(QWidget):
    """Belongs to a canvas. A press goes there; the window of days can be pushed along, and its edges pulled."""

    def __init__(self, canvas: SeasonCanvas, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._canvas = canvas
        self._known: tuple[object, ...] = ()
        self._picture = QPixmap()
        self._held: tuple[str, float] | None = None  # what is held, and how far from its start
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setAccessibleName(say("Overview of the season"))
        self.setAccessibleDescription(say("All days; left and right move what is in view, plus and minus zoom"))
        self.setToolTip(
            say("All days: birds in grey, clashes in red. The frame is what is in view: push it, or pull an edge")
        )
        canvas.looked_at.connect(self.update)

    def sizeHint(self) -> QSize:
        return QSize(200, round(self.fontMetrics().height() * 1.9))

    def minimumSizeHint(self) -> QSize:
        return QSize(80, self.sizeHint().height())

    # days and pixels

    def _scale(self) -> TimeScale:
        """The whole season over the width."""
        first, end = self._canvas.first_day(), self._canvas.last_day()
        return TimeScale(first, max(self.width(), 1) / max((end - first).days, 1))

    def window_px(self) -> tuple[float, float]:
        """From where to where the days in view lie, in pixels."""
        scale, (first, end) = self._scale(), self._canvas.scene().days()
        left, right = scale.x(first), scale.x(end)
        return left, max(right, left + _LEAST_PX)

    # drawing

    def paintEvent(self, event: QPaintEvent) -> None:
        layout = self._canvas.layout_shown
        if layout.season is None:
            return
        self._draw_season(layout)
        theme = current()
        painter = QPainter(self)
        try:
            painter.drawPixmap(0, 0, self._picture)
            left, right = self.window_px()
            veil = QColor(theme.paper)
            veil.setAlphaF(0.55)
            painter.fillRect(QRectF(0, 0, left, self.height()), veil)
            painter.fillRect(QRectF(right, 0, self.width() - right, self.height()), veil)
            painter.setPen(QPen(QColor(theme.good if self.hasFocus() else theme.soft), 1.5))
            painter.drawRect(QRectF(left, 0.75, right - left, self.height() - 1.5))
        finally:
            painter.end()

    def _draw_season(self, layout: SeasonLayout) -> None:
        """The picture without the window of days: made anew only when the season, the size or the colours change."""
        rests_on = (layout, self.size(), current(), self._canvas.first_day(), self._canvas.last_day(), self.font())
        if rests_on == self._known:
            return
        self._known = rests_on
        ratio = self.devicePixelRatioF()
        self._picture = QPixmap(self.size() * ratio)
        self._picture.setDevicePixelRatio(ratio)
        theme, scale = current(), self._scale()
        self._picture.fill(QColor(theme.lane))
        painter = QPainter(self._picture)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(theme.shut_line))
            painter.drawPolygon(self._birds(layout, scale))
            self._months(painter, scale)
            self._ticks(painter, layout, scale)
            x = scale.x(self._canvas.today)
            painter.setPen(QPen(QColor(theme.ink), 1.5))
            painter.drawLine(QPointF(x, 0), QPointF(x, self.height()))
        finally:
            painter.end()

    def _birds(self, layout: SeasonLayout, scale: TimeScale) -> QPolygonF:
        """How many eggs and birds there are, column by column."""
        wide, tall = self.width(), self.height() - 2.0
        steps = [0] * (wide + 2)
        for start, end, many in _loads(layout):
            left, right = (min(max(round(scale.x(day)), 0), wide + 1) for day in (start, end))
            steps[left] += many
            steps[max(right, left)] -= many
        heights = list(accumulate(steps))
        most = max([*heights, 1])
        points = [QPointF(x, tall - 0.8 * tall * height / most) for x, height in enumerate(heights)]
        return QPolygonF([QPointF(0, self.height()), *points, QPointF(wide + 1, self.height())])

    def _months(self, painter: QPainter, scale: TimeScale) -> None:
        face = Fonts(self.font()).tiny
        painter.setPen(QPen(QColor(current().soft)))
        room = face.width("September") + 8
        for tick in month_ticks(scale, scale.first, self._canvas.last_day(), room):
            if tick.label:
                face.draw(painter, scale.x(tick.day) + 3, face.ascent + 1, tick.label)

    def _ticks(self, painter: QPainter, layout: SeasonLayout, scale: TimeScale) -> None:
        """A tick where a clash begins, half as high for one to watch, and a line below for as long as it lasts."""
        if layout.season is None:
            return
        colour = QColor(current().clash)
        for clash in open_clashes(layout.season.farm, layout.clashes):
            stops = severity_of(clash.kind) is Severity.STOPS
            top = self.height() * (0.4 if stops else 0.7)
            left, right = scale.x(clash.first), scale.x(clash.last)
            painter.fillRect(QRectF(left, top, _TICK_PX, self.height() - top), colour)
            painter.fillRect(QRectF(left, self.height() - 2.5, right - left, 2.5), colour)

    # mouse and keys

    def mousePressEvent(self, event: QMouseEvent) -> None:
        x = event.position().x()
        left, right = self.window_px()
        part = self._part_at(x)
        if part == "paper":
            self._look_from(x - (right - left) / 2)
            self._held = ("whole", (right - left) / 2)
        else:
            self._held = (part, x - (right if part == "end" else left))

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        x = event.position().x()
        if self._held is None:
            part = self._part_at(x)
            shapes = {"start": Qt.CursorShape.SplitHCursor, "end": Qt.CursorShape.SplitHCursor}
            self.setCursor(shapes.get(part, Qt.CursorShape.ArrowCursor))
            return
        part, away = self._held
        scale = self._scale()
        left, right = self.window_px()
        if part == "whole":
            self._look_from(x - away)
        elif part == "end":
            self._show_days(scale.day(left), scale.day(max(x - away, left + _LEAST_PX)))
        else:
            self._show_days(scale.day(min(x - away, right - _LEAST_PX)), scale.day(right))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        self._held = None

    def _part_at(self, x: float) -> str:
        left, right = self.window_px()
        if abs(x - left) <= _EDGE_PX and right - left > 3 * _EDGE_PX:
            return "start"
        if abs(x - right) <= _EDGE_PX:
            return "end"
        return "whole" if left <= x <= right else "paper"

    def _look_from(self, x: float) -> None:
        self._canvas.look_from(self._scale().day(max(x, 0.0)))

    def _show_days(self, first: date, end: date) -> None:
        self._canvas.show_days(max((end - first).days, 1))
        self._canvas.look_from(first)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        first, end = self._canvas.scene().days()
        step = timedelta(days=max((end - first).days // 8, 1))
        key = Qt.Key(event.key())
        if key in (Qt.Key.Key_Left, Qt.Key.Key_Right):
            self._canvas.look_from(first + (step if key == Qt.Key.Key_Right else -step))
        elif key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            self._canvas.zoom(1.25)
        elif key == Qt.Key.Key_Minus:
            self._canvas.zoom(0.8)
        else:
            super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.update()


def _loads(layout: SeasonLayout) -> Iterator[tuple[date, date, int]]:
    """(first day, end, eggs or birds) of each stay of each batch."""
    if layout.season is None:
        return
    for batch in layout.season.farm.batches:
        for presence in layout.season.presences_of(batch):
            most = presence.leg.most
            yield presence.start, presence.end, most.birds or most.eggs
