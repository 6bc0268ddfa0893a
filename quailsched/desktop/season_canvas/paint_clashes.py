"""Draws what does not fit: overflow above the line, its days, and the marks of the other clashes."""

from __future__ import annotations

from datetime import date, timedelta

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen

from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.lanes import Mark
from quailsched.desktop.season_canvas.pens import Pens
from quailsched.desktop.season_canvas.scene import Scene
from quailsched.desktop.theme import Theme
from quailsched.farm.records import Units
from quailsched.farm.units import span_text
from quailsched.season.severity import Severity

MARK_WORDS = {
    "cabinet": "turning and lockdown",
    "cleanout": "no clean-out",
    "notready": "not ready",
    "young": "too young",
    "cold": "cold nights",
    "calm": "too few birds",
    "nowhere": "no place",
    "stale": "old eggs",
    "ages": "two ages",
    "crowd": "a crowd",
    "cocks": "too many cocks",
    "quarantine": "quarantine",
    "hands": "nobody home",
    "heat": "too little heat",
    "water": "short drinkers",
    "feeder": "short feeders",
    "overdue": "past their day",
    "build": "not built",
    "dark": "short days",
}


class ClashPainter(Pens):
    """The one red of the season; what the keeper has accepted is not red."""

    def __init__(
        self, painter: QPainter, scene: Scene, theme: Theme, font: QFont, units: Units, has_focus: bool
    ) -> None:
        super().__init__(painter, scene, theme, font, units, has_focus)
        self._taken: list[QRectF] = []  # where words of marks stand already

    def overflow(self, lane: Lane) -> None:
        scene, p = self.scene, self.p
        for over in lane.content.overs:
            if not self.is_visible(over.start, over.end):
                continue
            top, line = scene.top(lane.y(over.total)), scene.top(lane.line_y)
            rect = QRectF(scene.x(over.start), top, scene.x(over.end) - scene.x(over.start), line - top)
            p.save()
            p.setClipRect(rect, Qt.ClipOperation.IntersectClip)
            p.fillRect(rect, QColor(self.theme.clash_tint))
            self.hatch(rect, QColor(self.theme.clash), 7.0, 2.6, leaning=1)
            p.restore()
        self._overflow_outline(lane)

    def _overflow_outline(self, lane: Lane) -> None:
        scene = self.scene
        self.p.setPen(QPen(QColor(self.theme.clash), 1.4))
        last: tuple[date, float] | None = None
        line = scene.top(lane.line_y)
        for over in lane.content.overs:
            y = scene.top(lane.y(over.total))
            x0, x1 = scene.x(over.start), scene.x(over.end)
            joins = last is not None and last[0] == over.start
            self.p.drawLine(QPointF(x0, last[1] if joins and last else line), QPointF(x0, y))
            self.p.drawLine(QPointF(x0, y), QPointF(x1, y))
            if last is not None and not joins:
                self.p.drawLine(QPointF(scene.x(last[0]), last[1]), QPointF(scene.x(last[0]), line))
            last = (over.end, y)
        if last is not None:
            self.p.drawLine(QPointF(scene.x(last[0]), last[1]), QPointF(scene.x(last[0]), line))

    def marks(self, lane: Lane) -> None:
        scene, p = self.scene, self.p
        taken_until = float("-inf")
        metrics = QFontMetricsF(self.small_bold)
        for mark in lane.content.marks:
            left, right = scene.x(mark.clash.first), scene.x(mark.clash.last + timedelta(days=1))
            if right < scene.left or left > p.viewport().width():
                continue
            is_on = mark.clash in (scene.picked.clash, scene.hovered.clash)
            if mark.row >= 0:
                self._strip(lane, mark, left, right, is_on)
                continue
            text = span_text(mark.clash.first, mark.clash.last)
            wide = metrics.horizontalAdvance(text)
            at = min(max((left + right) / 2 - wide / 2, scene.left + 2), p.viewport().width() - wide - 4)
            if at < taken_until + 6:
                continue
            taken_until = at + wide
            peak = max(o.total for o in lane.content.overs if o.start <= mark.clash.worst < o.end)
            y = scene.top(lane.y(peak)) - 4
            self.text_clear(QPointF(at, y), text, self.small_bold, self.theme.clash, self.theme.paper)
            if is_on:
                p.drawLine(QPointF(at, y + 2), QPointF(at + wide, y + 2))

    def _strip(self, lane: Lane, mark: Mark, left: float, right: float, is_on: bool) -> None:
        """A clash that is not about room: a bar below the lane, its idea in two words in or after it."""
        scene, p = self.scene, self.p
        y, high = scene.top(lane.mark_y(mark.row)), lane.mark_height - 2
        shown_left = max(left, scene.left)
        shown_right = max(min(right, p.viewport().width() - 2.0), shown_left + 5)
        bar = QRectF(shown_left, y, shown_right - shown_left, high)
        self._bar(mark, bar, left >= scene.left, is_on)
        self._mark_words(lane, mark, bar, is_on)

    def _mark_words(self, lane: Lane, mark: Mark, bar: QRectF, is_on: bool) -> None:
        """The words of a mark in its bar, else after it, else before it; where all is taken, the pointer tells."""
        text = f"{MARK_WORDS[mark.clash.kind]}, accepted" if mark.is_accepted else MARK_WORDS[mark.clash.kind]
        ink = self.theme.soft if mark.is_accepted else self.theme.clash
        metrics = QFontMetricsF(self.tiny)
        wide = metrics.horizontalAdvance(text)
        base = bar.center().y() + (metrics.ascent() - metrics.descent()) / 2
        if wide + 12 <= bar.width():
            self.p.setFont(self.tiny)
            is_filled = is_on and mark.severity is Severity.STOPS
            self.p.setPen(QColor(self.theme.on_clash if is_filled else ink))
            self.p.drawText(QPointF(bar.left() + 8, base), text)
            return
        others = [m.clash for m in lane.content.marks if m.row == mark.row and m is not mark]
        after = [self.scene.x(c.first) for c in others if c.first > mark.clash.first]
        before = [self.scene.x(c.last + timedelta(days=1)) for c in others if c.first < mark.clash.first]
        for at, least, most in (
            (bar.right() + 4, self.scene.left, min([*after, float(self.p.viewport().width())])),
            (bar.left() - 4 - wide, max([*before, self.scene.left]) + 2, bar.left()),
        ):
            room = QRectF(at - 2, bar.top(), wide + 4, bar.height())
            if at >= least and at + wide <= most and not any(room.intersects(one) for one in self._taken):
                self._taken.append(room)
                self.text_clear(QPointF(at, base), text, self.tiny, ink, self.theme.paper)
                return

    def _bar(self, mark: Mark, rect: QRectF, begins_here: bool, is_on: bool) -> None:
        """Filled, with a block where it begins: stops the plan. A broken outline: to watch. In grey: accepted."""
        theme, p = self.theme, self.p
        if mark.severity is Severity.STOPS:
            p.setPen(QPen(QColor(theme.clash), 1.0))
            p.setBrush(QColor(theme.clash if is_on else theme.clash_tint))
        else:
            colour = QColor(theme.soft if mark.is_accepted else theme.clash)
            dashed = Qt.PenStyle.DotLine if mark.is_accepted else Qt.PenStyle.DashLine
            p.setPen(QPen(colour, 2.0) if is_on else QPen(colour, 1.2, dashed))
            p.setBrush(QColor(theme.paper))
        p.drawRoundedRect(rect, 3, 3)
        if begins_here and mark.severity is Severity.STOPS:
            p.fillRect(QRectF(rect.left(), rect.top(), 4.0, rect.height()), QColor(theme.clash))
