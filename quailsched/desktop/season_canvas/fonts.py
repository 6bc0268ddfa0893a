"""The five faces that the season is lettered in, with their measures; text that is drawn again is laid out once."""

from __future__ import annotations

from functools import cached_property

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QPainter, QStaticText, QTransform

_MOST_KEPT = 4000  # texts of a face: a screenful is a few hundred


class Face:
    """One font. Text drawn with it costs a fifteenth of what ``drawText`` does, from the second time on."""

    def __init__(self, font: QFont) -> None:
        self.font = font
        metrics = QFontMetricsF(font)
        self.height, self.ascent, self.descent = metrics.height(), metrics.ascent(), metrics.descent()
        self._metrics = metrics
        self._widths: dict[str, float] = {}
        self._texts: dict[str, QStaticText] = {}

    def width(self, text: str) -> float:
        """Pixels that ``text`` takes."""
        wide = self._widths.get(text)
        if wide is None:
            if len(self._widths) > _MOST_KEPT:
                self._widths.clear()
            wide = self._widths[text] = self._metrics.horizontalAdvance(text)
        return wide

    def lines(self, text: str, room: float, most: int = 1000) -> list[str]:
        """``text`` in at most ``most`` lines of ``room`` pixels, broken between words; what is left is three dots.

        Only a word that is wider than a line is broken in itself.
        """
        lines = [""]
        for word in text.split():
            longer = f"{lines[-1]} {word}".lstrip()
            if self.width(longer) <= room:
                lines[-1] = longer
                continue
            *whole, rest = self._pieces(word, room)
            lines += [*whole, rest]
        lines = [line for line in lines if line]
        if len(lines) <= most:
            return lines
        return [*lines[: most - 1], self._shortened(lines[most - 1], room)]

    def _pieces(self, word: str, room: float) -> list[str]:
        pieces = [""]
        for letter in word:
            if pieces[-1] and self.width(pieces[-1] + letter) > room:
                pieces.append("")
            pieces[-1] += letter
        return pieces

    def _shortened(self, line: str, room: float) -> str:
        """As many words, or letters of the only word, of ``line`` as leave room for three dots."""
        while line and self.width(f"{line} …") > room:
            line = line.rsplit(" ", 1)[0] if " " in line else line[:-1]
        return f"{line} …".lstrip()

    def draw(self, painter: QPainter, x: float, base: float, text: str) -> None:
        """``text`` from a point of its base line, in the colour of the pen."""
        laid_out = self._texts.get(text)
        if laid_out is None:
            if len(self._texts) > _MOST_KEPT:
                self._texts.clear()
            laid_out = QStaticText(text)
            laid_out.setTextFormat(Qt.TextFormat.PlainText)
            laid_out.prepare(QTransform(), self.font)
            self._texts[text] = laid_out
        painter.setFont(self.font)
        painter.drawStaticText(QPointF(x, base - self.ascent), laid_out)


class Fonts:
    """The faces that go with the font of the widget."""

    def __init__(self, font: QFont) -> None:
        self.font = QFont(font)

    def _face(self, size: float, bold: bool) -> Face:
        font = QFont(self.font)
        if self.font.pointSizeF() > 0:
            font.setPointSizeF(self.font.pointSizeF() * size)
        else:
            font.setPixelSize(max(round(self.font.pixelSize() * size), 1))
        font.setBold(bold)
        return Face(font)

    @cached_property
    def plain(self) -> Face:
        return self._face(1.0, bold=False)

    @cached_property
    def bold(self) -> Face:
        return self._face(1.0, bold=True)

    @cached_property
    def small(self) -> Face:
        return self._face(0.88, bold=False)

    @cached_property
    def small_bold(self) -> Face:
        return self._face(0.88, bold=True)

    @cached_property
    def tiny(self) -> Face:
        return self._face(0.8, bold=False)

    @cached_property
    def tiny_bold(self) -> Face:
        return self._face(0.8, bold=True)
