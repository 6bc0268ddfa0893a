"""The rows of a chore sheet: the heading of a day, and a chore with its box, place and people. How they are painted."""

from __future__ import annotations

from datetime import date
from typing import Final

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

from quailsched.chores.chore import Chore
from quailsched.desktop.paper.lines import Block, Line, block, draw
from quailsched.desktop.paper.sheet import ON_PAPER
from quailsched.desktop.season_canvas.fonts import Fonts
from quailsched.farm.units import day_text, weekday_text
from quailsched.quick import dataclass
from quailsched.report.chores import able_text
from quailsched.words import say

_BOX: Final = 13.0
_BESIDE_BOX: Final = 9.0
_GAP: Final = 14.0
_PAD: Final = 4.5
_FOR_PLACE, _FOR_PEOPLE = 0.2, 0.16  # of the width


@dataclass(frozen=True, slots=True)
class Row:
    """``words`` within ``height``; a heading stands on a band, a chore has a box and a line below it. The box of one
    that is done already is ticked."""

    words: Block
    height: float
    is_heading: bool
    is_done: bool = False

    def paint(self, painter: QPainter, top: float, width: float) -> None:
        if self.is_heading:
            painter.fillRect(QRectF(0, top, width, self.height), QColor(ON_PAPER.lane))
        else:
            painter.setPen(QPen(QColor(ON_PAPER.ink), 1.2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(QRectF(1.0, top + _PAD + 0.5, _BOX, _BOX))
            if self.is_done:
                corners = ((0.2, 0.52), (0.42, 0.76), (0.82, 0.24))
                points = [QPointF(1.0 + x * _BOX, top + _PAD + 0.5 + y * _BOX) for x, y in corners]
                painter.setPen(QPen(QColor(ON_PAPER.ink), 1.8))
                painter.drawPolyline(QPolygonF(points))
            painter.setPen(QPen(QColor(ON_PAPER.line), 0.8))
            painter.drawLine(QLineF(0, top + self.height, width, top + self.height))
        draw(painter, self.words.moved(0, top))


class ChoreRows:
    """Makes rows of one width."""

    def __init__(self, fonts: Fonts, width: float) -> None:
        self._fonts, self._width = fonts, width
        self._text_x = _BOX + _BESIDE_BOX
        self._place_x = width * (1 - _FOR_PLACE - _FOR_PEOPLE)
        self._people_x = width * (1 - _FOR_PEOPLE)

    def heading(self, day: date, near: date, is_continued: bool) -> Row:
        """ "Tuesday 6 Apr"; and that it goes on, at the top of a page; what the columns are, at the right."""
        face, small = self._fonts.bold, self._fonts.tiny
        text = f"{weekday_text(day)} {day_text(day, near)}"
        if is_continued:
            text = say("{day}, continued", day=text)
        base = 2 + face.ascent
        lines = (
            Line(face, text, ON_PAPER.ink, 6.0, base),
            Line(small, say("where"), ON_PAPER.soft, self._place_x, base),
            Line(small, say("who"), ON_PAPER.soft, self._people_x, base),
        )
        return Row(Block(lines, face.height), face.height + 4, is_heading=True)

    def chore(self, chore: Chore, tells_caution: bool, today: date) -> Row:
        """What, where, who; below it how, and the caution that belongs to it if ``tells_caution``."""
        fonts, room = self._fonts, self._place_x - self._text_x - _GAP
        is_done = chore.done_on is not None
        title = block(
            fonts.small_bold, chore.title, ON_PAPER.soft if is_done else ON_PAPER.ink, room, self._text_x, _PAD
        )
        how = block(fonts.tiny, _how(chore, today), ON_PAPER.soft, room, self._text_x, _PAD + title.height)
        height = title.height + how.height
        lines = [*title.lines, *how.lines]
        if tells_caution and chore.caution and not is_done:
            caution = self._caution(chore.caution, room, _PAD + height)
            lines += caution.lines
            height += caution.height
        place = block(
            fonts.small, chore.place, ON_PAPER.ink, self._people_x - self._place_x - _GAP, self._place_x, _PAD
        )
        face = fonts.small if chore.able else fonts.small_bold
        able = block(face, able_text(chore), ON_PAPER.ink, self._width - self._people_x, self._people_x, _PAD)
        height = max(height, place.height, able.height, _BOX + 1)
        return Row(Block((*lines, *place.lines, *able.lines), height), height + 2 * _PAD, False, is_done)

    def _caution(self, text: str, room: float, top: float) -> Block:
        """The word before it in bold; the words after it stand beside it."""
        fonts, word = self._fonts, say("Caution:")
        wide = fonts.tiny_bold.width(f"{word}  ")
        words = block(fonts.tiny, text, ON_PAPER.ink, room - wide, self._text_x + wide, top)
        return Block((Line(fonts.tiny_bold, word, ON_PAPER.ink, self._text_x, words.lines[0].base), *words.lines),
                     words.height)  # fmt: skip


def _how(chore: Chore, today: date) -> str:
    """How it is done; before that, on which day it was due, or due at first."""
    if chore.day < today:
        weekday, day = weekday_text(chore.day), day_text(chore.day, today)
        return say("Was due on {weekday}, {day}. {how}", weekday=weekday, day=day, how=chore.how).strip()
    if chore.put_off_from is None:
        return chore.how
    return say("Put off from {day}. {how}", day=day_text(chore.put_off_from, chore.day), how=chore.how).strip()
