"""The line for counts in a small window of its own, over the season: of the batch that is picked."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QDialog, QVBoxLayout, QWidget

from quailsched.desktop.today.record_field import RecordField
from quailsched.desktop.today.view import TodayView
from quailsched.edits.change import Change
from quailsched.words import say


class RecordDialog(QDialog):
    """Return records and closes, Escape closes."""

    def __init__(self, parent: QWidget, view: TodayView, batch_id: str) -> None:
        """``view`` takes the step, so that it can tell what has moved by it."""
        super().__init__(parent)
        self._view = view
        self.setWindowTitle(say("Record a count"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.field = RecordField(lambda: view.opened, lambda: view.today, lambda: view.today)
        self.field.begin(batch_id)
        self.field.change_asked.connect(self._take)
        self.field.left.connect(self.reject)
        column = QVBoxLayout(self)
        column.addWidget(self.field)
        self.setMinimumWidth(min(self.fontMetrics().averageCharWidth() * 84, parent.width() - 40))

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.field.take_focus()

    def _take(self, change: Change) -> None:
        if self._view.take_counted(change):
            self.accept()
