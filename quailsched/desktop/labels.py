"""Labels in the sizes and colours that the window uses; sizes follow the font of the desktop."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QHelpEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QLabel, QToolTip

# The style sheet colours by these names; sizes stand here, since a sheet knows none relative to the font.
_SIZES = {
    "heading": (1.5, True),
    "clashHeading": (1.3, True),
    "quietHeading": (1.3, True),
    "source": (0.88, False),
    "strong": (1.0, True),
    "dayHeading": (1.65, True),
    "panelHeading": (1.12, True),
    "moved": (1.0, True),
    "state": (0.88, True),
    "caution": (0.88, False),
    "strongSource": (0.88, True),
}


def label(text: str, role: str = "") -> QLabel:
    """Text that wraps and can be selected.

    ``role``: heading, clashHeading, quietHeading, dayHeading, panelHeading, strong, soft, source, state, caution,
    fault, moved, or plain.
    """
    made = plain(QLabel(text))
    made.setWordWrap(True)
    made.setObjectName(role)
    made.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
    if role in _SIZES:
        factor, is_bold = _SIZES[role]
        font = made.font()
        font.setPointSizeF(font.pointSizeF() * factor)
        font.setBold(is_bold)
        made.setFont(font)
    return made


def plain(made: QLabel) -> QLabel:
    """``made`` itself, which shows a name such as "<b>Ann</b>" letter by letter. Qt would take it for markup."""
    made.setTextFormat(Qt.TextFormat.PlainText)
    return made


def as_it_is(text: str) -> str:
    """``text`` for a tip or a message box, which have no setting for plain text."""
    if "<" not in text:
        return text
    from html import escape

    return f"<qt>{escape(text)}</qt>".replace("\n", "<br>")


def on_button(text: str) -> str:
    """``text`` for a button or a menu: there "&" would underline the next letter."""
    return text.replace("&", "&&")


class ShortLabel(QLabel):
    """A text of one line that gives way where the window is narrow: to ``fewest`` letters and an ellipsis.

    With 0 letters it is shown whole or not at all.
    """

    def __init__(self, fewest: int) -> None:
        super().__init__()
        plain(self)
        self._fewest = fewest

    def minimumSizeHint(self) -> QSize:
        hint = super().minimumSizeHint()
        return QSize(min(hint.width(), self.fontMetrics().averageCharWidth() * self._fewest), hint.height())

    @property
    def is_cut(self) -> bool:
        """Whether there is no room for the whole of it; the tip tells it then."""
        return self.fontMetrics().horizontalAdvance(self.text()) > self.contentsRect().width()

    def event(self, event: QEvent) -> bool:
        if event.type() is QEvent.Type.ToolTip and not self.toolTip() and self.is_cut and isinstance(event, QHelpEvent):
            QToolTip.showText(event.globalPos(), as_it_is(self.text()), self)
            return True
        return super().event(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        room, text = self.contentsRect(), self.text()
        if self.is_cut:
            elided = self.fontMetrics().elidedText(text, Qt.TextElideMode.ElideRight, room.width())
            text = elided if self._fewest else ""
        painter = QPainter(self)
        painter.drawText(room, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, text)
        painter.end()
