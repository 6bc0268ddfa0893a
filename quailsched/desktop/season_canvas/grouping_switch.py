"""Two small buttons over the names: one lane for each place, or one for each batch."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QToolButton, QWidget

from quailsched.desktop.season_canvas.lanes import Grouping
from quailsched.words import marked, say

_WORDS = {
    Grouping.PLACES: (marked("Places"), marked("One lane for each place: what is taken of it (Ctrl+L)")),
    Grouping.BATCHES: (marked("Batches"), marked("One lane for each batch: its stays and numbers (Ctrl+L)")),
}


class GroupingSwitch(QWidget):
    """Says which is chosen; shows what it is told."""

    chosen = Signal(object)  # Grouping

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._group = QButtonGroup(self)
        self.buttons: dict[Grouping, QToolButton] = {}
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        for grouping, (text, tip) in _WORDS.items():
            button = QToolButton()
            button.setText(say(text))
            button.setToolTip(say(tip))
            button.setAccessibleDescription(say(tip))
            button.setCheckable(True)
            button.setAutoRaise(True)
            button.setCursor(Qt.CursorShape.ArrowCursor)
            button.setObjectName("grouping")
            button.clicked.connect(lambda _checked=False, one=grouping: self.chosen.emit(one))
            self._group.addButton(button)
            self.buttons[grouping] = button
            row.addWidget(button)
        self.show_chosen(Grouping.PLACES)

    def show_chosen(self, grouping: Grouping) -> None:
        self.buttons[grouping].setChecked(True)
