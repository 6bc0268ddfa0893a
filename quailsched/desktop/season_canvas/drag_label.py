"""The quiet label beside the pointer while something is dragged: old day, new day, what gets better and worse."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QWidget

from quailsched.desktop.season_canvas.drag import Verdict
from quailsched.desktop.season_canvas.fonts import Face, Fonts
from quailsched.desktop.theme import current
from quailsched.words import say

_AWAY = QPoint(16, 22)  # from the pointer, so that it does not cover what is dragged
_MARGIN = 8
_Line = tuple[Face, str, str]  # face, text, colour


class DragLabel(QWidget):
    """Lies over the season and lets the mouse through."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._port = parent
        self._lines: list[_Line] = []
        self._fonts = Fonts(self.font())
        self.verdict: Verdict | None = None
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        # Square corners and all: the season under it need not be drawn in every frame, and it is moved as a picture.
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self.hide()

    def tell(self, verdict: Verdict) -> None:
        """Say what a drop would bring; the signs say it without the colours."""
        if verdict == self.verdict and self.isVisible():
            return
        if self.isHidden():
            self._fonts = Fonts(self.font())
        self.verdict = verdict
        self._lines = self._said(verdict)
        self.setAccessibleName(". ".join((verdict.text, *verdict.better, *verdict.worse)))
        wide = max(face.width(text) for face, text, _ in self._lines)
        tall = sum(face.height for face, _, _ in self._lines)
        self.resize(round(wide) + 2 * _MARGIN + 1, round(tall) + 2 * _MARGIN)
        self.update()
        self.show()

    def _said(self, verdict: Verdict) -> list[_Line]:
        theme, plain = current(), self._fonts.plain
        lines = [(self._fonts.bold, verdict.text, theme.ink)]
        lines += [(plain, f"✓ {text}", theme.good) for text in verdict.better]
        sign = "!" if verdict.is_possible else "✗"
        lines += [(plain, f"{sign} {text}", theme.clash) for text in verdict.worse]
        if verdict.is_possible and not verdict.better and not verdict.worse:
            lines.append((plain, say("no clash comes or goes"), theme.soft))
        return lines

    def paintEvent(self, event: QPaintEvent) -> None:
        theme = current()
        painter = QPainter(self)
        try:
            painter.fillRect(self.rect(), QColor(theme.card))
            painter.setPen(QPen(QColor(theme.ink), 1))
            painter.drawRect(QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5))
            y = float(_MARGIN)
            for face, text, colour in self._lines:
                painter.setPen(QColor(colour))
                face.draw(painter, _MARGIN, y + face.ascent, text)
                y += face.height
        finally:
            painter.end()

    def stand_at(self, at: QPoint) -> None:
        """Beside the point ``at`` of the season, and within it."""
        room, own = self._port.rect(), self.rect()
        x = at.x() + _AWAY.x()
        if x + own.width() > room.right() - 4:
            x = at.x() - _AWAY.x() - own.width()
        y = at.y() + _AWAY.y()
        if y + own.height() > room.bottom() - 4:
            y = at.y() - _AWAY.y() - own.height()
        self.move(max(x, 4), max(y, 4))
