"""Lines of words at their places on a page, and the head that every page has."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from dataclasses import replace
from datetime import date

from PySide6.QtGui import QColor, QPaintDevice, QPainter

from quailsched.desktop.paper.sheet import ON_PAPER, fonts_on_paper
from quailsched.desktop.season_canvas.fonts import Face
from quailsched.farm.units import day_text, named_day_text
from quailsched.quick import dataclass
from quailsched.session.faults import StoreError
from quailsched.words import say

_NAME_PX, _ABOUT_PX = 17, 12


@dataclass(frozen=True, slots=True)
class Line:
    """Words from a point of their base line, in pixels of the page."""

    face: Face
    text: str
    ink: str
    x: float
    base: float

    def moved(self, x: float, y: float) -> Line:
        return replace(self, x=self.x + x, base=self.base + y)


@dataclass(frozen=True, slots=True)
class Block:
    """Lines that stand together; ``height`` from the top of the first to the bottom of the last."""

    lines: tuple[Line, ...]
    height: float

    def moved(self, x: float, y: float) -> tuple[Line, ...]:
        return tuple(line.moved(x, y) for line in self.lines)


def block(face: Face, text: str, ink: str, room: float, x: float = 0.0, top: float = 0.0, most: int = 1000) -> Block:
    """``text`` in lines of ``room`` pixels, the first with its top at ``top``."""
    texts = face.lines(text, room, most)
    lines = tuple(Line(face, one, ink, x, top + face.ascent + at * face.height) for at, one in enumerate(texts))
    return Block(lines, len(texts) * face.height)


@contextmanager
def painting_on(device: QPaintDevice) -> Iterator[QPainter]:
    """A painter that lets go of ``device`` whatever happens: Qt ends the program if one outlives its device.

    Raises StoreError if the device, such as a printer, does not take one.
    """
    painter = QPainter()
    if not painter.begin(device):
        raise StoreError(say("The printer takes no pages; another printer, or a PDF file, is accepted."))
    try:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        yield painter
    finally:
        painter.end()


def draw(painter: QPainter, lines: Iterable[Line]) -> None:
    for line in lines:
        painter.setPen(QColor(line.ink))
        line.face.draw(painter, line.x, line.base, line.text)


def head(width: float, name: str, about: str, at_right: str) -> Block:
    """The farm's name, what the page is about after it or below it, and more at the right of the first line."""
    bold, plain = fonts_on_paper(_NAME_PX).bold, fonts_on_paper(_ABOUT_PX).plain
    right = Line(plain, at_right, ON_PAPER.soft, width - plain.width(at_right), bold.ascent)
    named = block(bold, name, ON_PAPER.ink, right.x - 20, most=3)
    last = named.lines[-1]
    x, base, height = bold.width(last.text) + 10, last.base, named.height
    if x + plain.width(about) + 20 > right.x:
        x, base, height = 0.0, named.height + plain.ascent, named.height + plain.height
    return Block((*named.lines, Line(plain, about, ON_PAPER.soft, x, base), right), height + 9)


def printed_words(today: date, printed: date) -> str:
    """Of when a page tells, and when it was printed."""
    on = f"{named_day_text(printed)} {printed.year}"
    if today == printed:
        return say("printed {day}", day=on)
    return say("as on {day}, printed {printed}", day=f"{day_text(today)} {today.year}", printed=on)
