"""What has moved after a count, in sentences, with a button that takes it back."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from quailsched.desktop.labels import label
from quailsched.report.what_moved import Moved
from quailsched.words import say


class MovedBox(QFrame):
    """Hidden as long as nothing has moved."""

    undo_asked = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("movedBox")
        self.undo = QPushButton(say("Undo"))
        self.undo.setObjectName("flat")
        self.undo.setToolTip(say("Take the count back, and all of this with it (Ctrl+Z)"))
        self.undo.clicked.connect(lambda: self.undo_asked.emit())
        head = QHBoxLayout()
        head.addWidget(label(say("What has moved"), "moved"), 1)
        head.addWidget(self.undo, 0, Qt.AlignmentFlag.AlignTop)
        self._lines = QVBoxLayout()
        self._lines.setSpacing(4)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 8, 10, 14)
        column.addLayout(head)
        column.addLayout(self._lines)
        self.hide()

    def show_moved(self, moved: Sequence[Moved]) -> None:
        while (item := self._lines.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        for one in moved:
            self._lines.addWidget(self._line(one))
        self.setVisible(bool(moved))

    @staticmethod
    def _line(one: Moved) -> QWidget:
        line = label(f"• {one.sentence}", "fault" if one.is_clash else "")
        line.setAccessibleName(one.sentence)
        return line
