"""Beside a clash to watch: accepting it with a word of reason, or taking that back."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QPushButton, QVBoxLayout, QWidget

from quailsched.desktop.buttons import button
from quailsched.desktop.forms.fields import dress
from quailsched.desktop.labels import label
from quailsched.edits.acceptances import MOST_REASON_LETTERS
from quailsched.words import say


class AcceptanceBox(QWidget):
    """A button that opens a line for the reason: Return accepts, Escape leaves it. Of an accepted clash, one button."""

    reason_given = Signal(str)
    take_back_asked = Signal()
    grown = Signal()  # it shows more than before, or has the focus: it wants to be seen

    def __init__(self, is_accepted: bool) -> None:
        super().__init__()
        self._is_accepted = is_accepted
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self.first = (
            button(say("Take acceptance back"), self.take_back_asked.emit)
            if is_accepted
            else button(say("Accept…"), self.begin)
        )
        self.first.setToolTip("" if is_accepted else say("Live with it, with a word of why. Key: Ctrl+Shift+A"))
        self._column.addWidget(self.first)
        self.reason = QLineEdit()
        self._asking = self._reason_line()
        self._asking.hide()
        self._column.addWidget(self._asking)

    def _reason_line(self) -> QWidget:
        asking = QWidget()
        column = QVBoxLayout(asking)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(label(say("Why do you live with it? It is a clash again when it grows.")))
        self.reason.setMaxLength(MOST_REASON_LETTERS)
        self.reason.setAccessibleName(say("Why do you live with it?"))
        self.reason.setPlaceholderText(say("sold on Friday"))
        self.reason.returnPressed.connect(self._give)
        dress(self.reason)
        column.addWidget(self.reason)
        self._fault = label("", "fault")
        self._fault.hide()
        column.addWidget(self._fault)
        row = QHBoxLayout()
        self.accept: QPushButton = button(say("Accept"), self._give)
        self.accept.setObjectName("main")
        self.accept.setToolTip(say("Key: Return"))
        cancel = button(say("Cancel"), self.end)
        cancel.setToolTip(say("Key: Escape"))
        row.addWidget(self.accept)
        row.addWidget(cancel)
        row.addStretch()
        column.addLayout(row)
        return asking

    def begin(self) -> None:
        """Ask for the reason; where the clash is accepted already, lead to the button that takes it back."""
        if self._is_accepted:
            self.first.setFocus()
            self.grown.emit()
            return
        self.first.hide()
        self._asking.show()
        self.reason.setFocus()
        self.grown.emit()

    def end(self) -> None:
        """Ask no longer, and forget what was typed."""
        self._asking.hide()
        self.reason.clear()
        self.tell_fault("")
        self.first.show()
        self.first.setFocus()

    def tell_fault(self, text: str) -> None:
        """Why the reason cannot be used; who hears the field hears it as well."""
        self._fault.setText(text)
        self._fault.setVisible(bool(text))
        self.reason.setAccessibleDescription(text)
        if text:
            self.reason.setFocus()
            self.grown.emit()

    def _give(self) -> None:
        self.tell_fault("")
        self.reason_given.emit(self.reason.text())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape and not self._asking.isHidden():
            self.end()
        else:
            super().keyPressEvent(event)
