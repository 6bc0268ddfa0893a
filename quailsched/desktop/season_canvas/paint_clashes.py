"""Draws what does not fit: overflow above the line, its days, and the marks of the other clashes."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPen

from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.lanes import Mark, Over
from quailsched.desktop.season_canvas.pens import Pens
from quailsched.farm.units import span_text
from quailsched.season.severity import Severity
from quailsched.words import marked, say

MARK_WORDS = {
    "eggs": marked("too many eggs"),
    "floor": marked("too small"),
    "cabinet": marked("turning and lockdown"),
    "cleanout": marked("no clean-out"),
    "notready": marked("not ready"),
    "young": marked("too young"),
    "cold": marked("cold nights"),
    "calm": marked("too few birds"),
    "nowhere": marked("no place"),
    "stale": marked("old eggs"),
    "ages": marked("two ages"),
    "crowd": marked("a crowd"),
    "cocks": marked("too many cocks"),
    "quarantine": "quarantine",
    "hands": marked("nobody home"),
    "heat": marked("too little heat"),
    "water": marked("short drinkers"),
    "feeder": marked("short feeders"),
    "overdue": marked("past their day"),
    "build": marked("not built"),
    "dark": marked("short days"),
}


_DASHES_PX = 7.2  # after this the dashes and the dots of an outline are as they were


def _beyond(left: float, edge: float) -> float:
    """How far before the ``edge`` of the view an outline that began at ``left`` is drawn: its dashes scroll with it."""
    return _DASHES_PX + (edge - left) % _DASHES_PX if left < edge - 2 * _DASHES_PX else max(edge - left, 0.0)


class ClashPainter:
    """The one red of the season; what the keeper has accepted is not red."""

    def __init__(self, pens: Pens) -> None:
        self.pens, self.p, self.scene, self.theme = pens, pens.p, pens.scene, pens.theme
        self._taken: list[QRectF] = []  # where words of marks stand already

    def overflow(self, lane: Lane, first: date, end: date) -> None:
        """What stands over the line from ``first`` to ``end``."""
        scene, p = self.scene, self.p
        overs = lane.content.overs.within(first, end)
        for over in overs:
            top, line = scene.top(lane.y(over.total)), scene.top(lane.line_y)
            rect = QRectF(scene.x(over.start), top, scene.x(over.end) - scene.x(over.start), line - top)
            with self.pens.clipped(rect):
                p.fillRect(rect, QColor(self.theme.clash_tint))
                self.pens.hatch(rect, QColor(self.theme.clash), 7.0, 2.6, leaning=1)
        self._overflow_outline(lane, overs)

    def _overflow_outline(self, lane: Lane, overs: Sequence[Over]) -> None:
        scene = self.scene
        self.p.setPen(QPen(QColor(self.theme.clash), 1.4))
        last: tuple[date, float] | None = None
        line = scene.top(lane.line_y)
        for over in overs:
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
        """The marks of the lane's clashes, and the days of those over the line: all in view, so that their words come
        to stand where they would in a whole paint."""
        scene, p, face = self.scene, self.p, self.pens.fonts.small_bold
        taken_until = float("-inf")
        for mark in lane.content.marks.within(*scene.days()):
            left, right = scene.x(mark.start), scene.x(mark.end)
            is_on = mark.clash in (scene.picked.clash, scene.hovered.clash)
            if mark.row >= 0:
                self._strip(lane, mark, left, right, is_on)
                continue
            text = span_text(mark.clash.first, mark.clash.last)
            wide = face.width(text)
            at = min(max((left + right) / 2 - wide / 2, scene.left + 2), scene.width - wide - 4)
            if at < taken_until + 6:
                continue
            taken_until = at + wide
            worst = mark.clash.worst
            peak = max((o.total for o in lane.content.overs.within(worst, worst + timedelta(days=1))), default=0)
            y = max(scene.top(lane.y(peak)) - 4, scene.top(lane.top) + face.ascent)
            self.pens.text_clear(QPointF(at, y), text, face, self.theme.clash, self.theme.paper)
            if is_on:
                p.drawLine(QPointF(at, y + 2), QPointF(at + wide, y + 2))

    def _strip(self, lane: Lane, mark: Mark, left: float, right: float, is_on: bool) -> None:
        """A clash that is not about room: a bar below the lane, its idea in two words in or after it."""
        scene = self.scene
        y, high = scene.top(lane.mark_y(mark.row)), lane.mark_height - 2
        shown_left = max(left, scene.left)
        shown_right = max(min(right, scene.width - 2.0), shown_left + 5)
        bar = QRectF(shown_left, y, shown_right - shown_left, high)
        if self.pens.is_dirty(bar.adjusted(-2, -2, 2, 2)):
            self._bar(mark, bar.adjusted(-_beyond(left, scene.left), 0, 0, 0), left >= scene.left, is_on)
        self._mark_words(lane, mark, bar, is_on)

    def _mark_words(self, lane: Lane, mark: Mark, bar: QRectF, is_on: bool) -> None:
        """The words of a mark in its bar, else after it, else before it; where all is taken, the pointer tells."""
        text = (
            say("{clash}, accepted", clash=say(MARK_WORDS[mark.clash.kind]))
            if mark.is_accepted
            else say(MARK_WORDS[mark.clash.kind])
        )
        ink = self.theme.soft if mark.is_accepted else self.theme.clash
        face = self.pens.fonts.tiny
        wide = face.width(text)
        base = bar.center().y() + (face.ascent - face.descent) / 2
        if wide + 12 <= bar.width():
            is_filled = is_on and mark.severity is Severity.STOPS
            at = QPointF(bar.left() + 8, base)
            self.pens.text(face, at, text, self.theme.on_clash if is_filled else ink)
            return
        others = [m for m in lane.content.marks.within(*self.scene.days()) if m.row == mark.row and m is not mark]
        after = [self.scene.x(other.start) for other in others if other.start > mark.start]
        before = [self.scene.x(other.end) for other in others if other.start < mark.start]
        for at_x, least, most in (
            (bar.right() + 4, self.scene.left, min([*after, self.scene.width])),
            (bar.left() - 4 - wide, max([*before, self.scene.left]) + 2, bar.left()),
        ):
            room = QRectF(at_x - 2, bar.top(), wide + 4, bar.height())
            if at_x >= least and at_x + wide <= most and not any(room.intersects(one) for one in self._taken):
                self._taken.append(room)
                self.pens.text_clear(QPointF(at_x, base), text, face, ink, self.theme.paper)
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
