"""What stands where there is nothing to show yet: a word on what belongs there, and the button that begins it."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QLabel, QPushButton, QVBoxLayout, QWidget

from quailsched.desktop.labels import label

_LETTERS = 36  # in a line


class EmptyPage(QWidget):
    """A heading, a few lines and one button, in the middle of what would stand there."""

    asked = Signal()

    def __init__(self, heading: str = "") -> None:
        super().__init__()
        self.heading, self.text = label(heading, "heading"), label("", "soft")
        self.button = QPushButton()
        self.button.setObjectName("main")
        self.button.clicked.connect(lambda: self.asked.emit())
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(10)
        column.addStretch(2)
        for part in (self.heading, self.text):
            part.setAlignment(Qt.AlignmentFlag.AlignCenter)
            _give_lines(part)
        for widget in (self.heading, self.text, self.button):
            column.addWidget(widget, alignment=Qt.AlignmentFlag.AlignHCenter)
        column.addStretch(3)
        self.heading.setVisible(bool(heading))

    def tell(self, text: str, button: str) -> None:
        """Show ``text`` above a button with the words ``button``."""
        self.text.setText(text)
        _give_lines(self.text)
        self.button.setText(button)


def _give_lines(part: QLabel) -> None:
    """Lines of a width to read; a label that wraps would take a square."""
    letters = part.fontMetrics()
    wide = min(letters.horizontalAdvance(part.text()) + 4, letters.averageCharWidth() * _LETTERS)
    part.setFixedWidth(wide)
    part.setMinimumHeight(max(part.heightForWidth(wide), 0))  # -1 while it has no text
