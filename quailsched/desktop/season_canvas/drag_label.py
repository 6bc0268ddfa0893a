"""The quiet label beside the pointer while something is dragged: old day, new day, what gets better and worse."""

from __future__ import annotations

from html import escape

from PySide6.QtCore import QPoint, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QLabel, QWidget

from quailsched.desktop.season_canvas.drag import Verdict
from quailsched.desktop.theme import current

_AWAY = QPoint(16, 22)  # from the pointer, so that it does not cover what is dragged


class DragLabel(QLabel):
    """Lies over the season and lets the mouse through."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._port = parent
        self.verdict: Verdict | None = None
        self.setTextFormat(Qt.TextFormat.RichText)
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setMargin(7)
        self.hide()

    def tell(self, verdict: Verdict) -> None:
        """Say what a drop would bring; the signs say it without the colours."""
        if verdict == self.verdict and self.isVisible():
            return
        self.verdict = verdict
        theme = current()
        lines = [f"<b>{escape(verdict.text)}</b>"]
        lines += [f'<span style="color:{theme.good}">✓ {escape(text)}</span>' for text in verdict.better]
        sign = "!" if verdict.is_possible else "✗"
        lines += [f'<span style="color:{theme.clash}">{sign} {escape(text)}</span>' for text in verdict.worse]
        if verdict.is_possible and not verdict.better and not verdict.worse:
            lines.append(f'<span style="color:{theme.soft}">no clash comes or goes</span>')
        self.setText("<br>".join(lines))
        self.setAccessibleName(". ".join((verdict.text, *verdict.better, *verdict.worse)))
        self.adjustSize()
        self.show()
        self.raise_()

    def paintEvent(self, event: QPaintEvent) -> None:
        theme = current()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(theme.ink), 1))
        painter.setBrush(QColor(theme.card))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5), 6, 6)
        painter.end()
        super().paintEvent(event)

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
