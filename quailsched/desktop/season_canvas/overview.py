"""A thin strip with all days of the season: how many birds there are, where it clashes, and what is in view.

What it looks like stands in ``strip`` and ``strip_picture``, how birds are counted in ``loads``.
"""

from __future__ import annotations

from datetime import date, timedelta

from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QFocusEvent, QHelpEvent, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QWheelEvent
from PySide6.QtWidgets import QSizePolicy, QToolTip, QWidget

from quailsched.desktop.labels import as_it_is
from quailsched.desktop.season_canvas.canvas import SeasonCanvas
from quailsched.desktop.season_canvas.scale import ZOOM_STEP, TimeScale
from quailsched.desktop.season_canvas.strip import Ticks, draw_focus, draw_today, draw_veil, draw_window
from quailsched.desktop.season_canvas.strip_picture import StripPicture
from quailsched.desktop.theme import current
from quailsched.farm.units import count_text, named_day_text, span_text
from quailsched.quick import dataclass
from quailsched.report.clashes import title_of
from quailsched.season.clash import Clash
from quailsched.season.season import Season
from quailsched.words import say

_EDGE_PX = 6.0  # how near to the edge of the window of days a press takes the edge
_LEAST_PX = 8.0  # the window of days is never drawn narrower
_TOLD_PX = 3.0  # clashes this near to the pointer are told
_MOST_TOLD = 4


_CURSORS = {
    **dict.fromkeys(("start", "end"), Qt.CursorShape.SplitHCursor),
    **{"whole": Qt.CursorShape.OpenHandCursor, "paper": Qt.CursorShape.ArrowCursor},
}


@dataclass(frozen=True, slots=True)
class _Held:
    """The part that is held, how far from its own edge, and the day of the other edge, which stays where it is."""

    part: str
    away_px: float
    fixed: date


class Overview(QWidget):
    """Belongs to a canvas. A press goes there; the window of days can be pushed along, and its edges pulled."""

    def __init__(self, canvas: SeasonCanvas, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._canvas = canvas
        self._season: Season | None = None
        self._clashes: tuple[Clash, ...] = ()
        self._picture = StripPicture(self)
        self._ticks: tuple[TimeScale, Ticks] | None = None
        self._held: _Held | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setAccessibleName(say("Overview of the season"))
        self._tell()
        canvas.looked_at.connect(self.update)

    def sizeHint(self) -> QSize:
        return QSize(200, round(self.fontMetrics().height() * 1.8))

    def minimumSizeHint(self) -> QSize:
        return QSize(80, self.sizeHint().height())

    def show_season(self, season: Season, clashes: tuple[Clash, ...], *, is_preview: bool = False) -> None:
        """Show ``season`` with those of its clashes that are open."""
        self._season, self._clashes, self._ticks = season, clashes, None
        self._picture.show_season(season, is_preview=is_preview)
        self.update()

    # days and pixels

    def _scale(self) -> TimeScale:
        """The whole season over the width."""
        first, end = self._canvas.first_day(), self._canvas.last_day()
        return TimeScale(first, max(self.width(), 1) / max((end - first).days, 1))

    def window_px(self) -> tuple[float, float]:
        """From where to where the days in view lie, in pixels."""
        scale, (first, end) = self._scale(), self._canvas.scene().days()
        left, right = max(scale.x(first), 0.0), min(scale.x(end), float(self.width()))
        return min(left, self.width() - _LEAST_PX), max(right, left + _LEAST_PX)

    # drawing

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._season is None:
            return
        scale, theme, tall = self._scale(), current(), float(self.height())
        if self._ticks is None or self._ticks[0] != scale:
            self._ticks = scale, Ticks(self._clashes, scale, tall)
        left, right = self.window_px()
        painter = QPainter(self)
        try:
            painter.drawPixmap(0, 0, self._picture.pixmap(scale, self._canvas.last_day().toordinal()))
            draw_veil(painter, theme, left, right, self.width(), tall)
            self._picture.draw_months(painter)
            self._ticks[1].draw(painter, theme)
            draw_today(painter, theme, scale.x(self._canvas.today), tall)
            draw_window(painter, theme, left + 1, right - 1, tall, has_focus=self.hasFocus())
            if self.hasFocus():
                draw_focus(painter, theme, self.rect())
        finally:
            painter.end()

    # what is told

    def _tell(self) -> None:
        """What a screen reader says of it: the days in view too, when it is come to."""
        text = say("All days; left and right move what is in view, plus and minus zoom")
        if self._season is not None:
            first, end = self._canvas.scene().days()
            days = span_text(first, end - timedelta(days=1), self._canvas.today)
            text = say("{text}. In view: {days}. {clashes} ahead", text=text, days=days,
                       clashes=count_text(len(self._clashes), "clash", "clashes"))  # fmt: skip
        self.setAccessibleDescription(text)

    def told_at(self, x: float) -> str:
        """The day at ``x``, the birds on it, and what clashes there; what the strip is for, where nothing does."""
        if self._season is None:
            return ""
        scale = self._scale()
        day = scale.day(x)
        birds = count_text(self._picture.birds_on(day.toordinal()), "bird")
        lines = [f"{named_day_text(day)} {day.year} · {birds}"]
        low, high = scale.day(x - _TOLD_PX), scale.day(x + _TOLD_PX)
        near = [clash for clash in self._clashes if clash.first <= high and clash.last >= low]
        lines += [title_of(self._season.farm, clash) for clash in near[:_MOST_TOLD]]
        if len(near) > _MOST_TOLD:
            lines.append(say("and {number} more", number=len(near) - _MOST_TOLD))
        if not near:
            lines.append(say("The frame is what is in view: push it, or pull an edge"))
        return "\n".join(lines)

    def event(self, event: QEvent) -> bool:
        if event.type() is QEvent.Type.ToolTip and isinstance(event, QHelpEvent):
            QToolTip.showText(event.globalPos(), as_it_is(self.told_at(event.pos().x())), self)
            return True
        return super().event(event)

    # mouse and keys

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() is not Qt.MouseButton.LeftButton:
            return
        x = event.position().x()
        left, right = self.window_px()
        part = self._part_at(x)
        scene = self._canvas.scene()
        if part == "paper":
            self._look_from(x - (right - left) / 2)
            self._held = _Held("whole", (right - left) / 2, scene.today)
        elif part == "end":
            self._held = _Held(part, x - right, scene.day(scene.left))
        else:
            self._held = _Held(part, x - left, scene.day(scene.width))

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        x, held = event.position().x(), self._held
        if held is None:
            self.setCursor(_CURSORS[self._part_at(x)])
        elif held.part == "whole":
            self._look_from(x - held.away_px)
        else:
            day = self._scale().day(x - held.away_px)
            first, end = (held.fixed, day) if held.part == "end" else (day, held.fixed)
            self._canvas.show_days(max((end - first).days, 1))
            self._canvas.look_from(first)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        self._held = None

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Through time."""
        turned = event.angleDelta().y() or event.angleDelta().x()
        bar = self._canvas.horizontalScrollBar()
        bar.setValue(bar.value() - turned)
        event.accept()

    def _part_at(self, x: float) -> str:
        left, right = self.window_px()
        if abs(x - left) <= _EDGE_PX and right - left > 3 * _EDGE_PX:
            return "start"
        if abs(x - right) <= _EDGE_PX:
            return "end"
        return "whole" if left <= x <= right else "paper"

    def _look_from(self, x: float) -> None:
        self._canvas.look_from(self._scale().day(max(x, 0.0)))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        canvas, (first, end) = self._canvas, self._canvas.scene().days()
        days = (end - first).days
        steps = {Qt.Key.Key_Left: -(days // 8 or 1), Qt.Key.Key_Right: days // 8 or 1}
        steps |= {Qt.Key.Key_PageUp: -days, Qt.Key.Key_PageDown: days}
        key = Qt.Key(event.key())
        if key in steps:
            canvas.look_from(first + timedelta(days=steps[key]))
        elif key in (Qt.Key.Key_Home, Qt.Key.Key_End):
            canvas.look_from(canvas.first_day() if key == Qt.Key.Key_Home else canvas.last_day())
        elif key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            canvas.zoom(ZOOM_STEP)
        elif key == Qt.Key.Key_Minus:
            canvas.zoom(1 / ZOOM_STEP)
        elif key == Qt.Key.Key_Escape:
            canvas.setFocus()
        else:
            super().keyPressEvent(event)
            return
        self._tell()

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self._tell()
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.update()
