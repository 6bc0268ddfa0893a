"""A text to read in a window of its own: it scrolls where the screen is small or the letters are large."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QFrame, QTextBrowser, QVBoxLayout, QWidget

_LETTERS = 72  # in a line
_BESIDE_PX = 60  # of the screen that stay free


class Reading(QDialog):
    """``text`` is markup of our own; names must not stand in it."""

    def __init__(self, parent: QWidget | None, title: str, text: str) -> None:
        super().__init__(parent)
        self.setWindowTitle(title)
        self.page = QTextBrowser()
        self.page.setFrameShape(QFrame.Shape.NoFrame)
        self.page.setAccessibleName(title)
        self.page.setHtml(text)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        column.addWidget(self.page, 1)
        column.addWidget(buttons)
        self._fit(buttons.sizeHint().height())

    def _fit(self, foot_px: int) -> None:
        """As tall as the text, within the screen."""
        room = self.screen().availableSize() - QSize(_BESIDE_PX, _BESIDE_PX)
        wide = min(self.fontMetrics().averageCharWidth() * _LETTERS, room.width())
        document = self.page.document().clone(self)  # the page's own takes the width that the page has by now
        document.setDefaultFont(self.page.document().defaultFont())
        document.setTextWidth(wide - 40)  # margins and a bar
        self.resize(wide, min(round(document.size().height()) + foot_px + 40, room.height()))


def read(parent: QWidget, title: str, text: str) -> None:
    """Show ``text`` until it is closed."""
    shown = Reading(parent, title, text)
    shown.exec()
    shown.deleteLater()
