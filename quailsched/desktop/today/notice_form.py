"""Asking whether the desktop is to tell in the morning what is due, and when."""

from __future__ import annotations

from datetime import time

from PySide6.QtCore import QTime
from PySide6.QtWidgets import QCheckBox, QDialog, QFormLayout, QHBoxLayout, QPushButton, QTimeEdit, QVBoxLayout, QWidget

from quailsched.desktop.forms.fields import dress
from quailsched.desktop.labels import label
from quailsched.desktop.today.morning import Morning
from quailsched.words import say


class NoticeForm(QDialog):
    """After ``exec`` is accepted, ``morning`` is what is wanted."""

    def __init__(self, parent: QWidget | None, morning: Morning, *, has_tray: bool) -> None:
        super().__init__(parent)
        self.setWindowTitle(say("Morning notice"))
        self.wanted = QCheckBox(say("&Tell me in the morning how many chores are due"))
        self.wanted.setChecked(morning.is_wanted and has_tray)
        self.wanted.setEnabled(has_tray)
        self.at = QTimeEdit(QTime(morning.at.hour, morning.at.minute))
        self.at.setDisplayFormat("HH:mm")
        self.at.setAccessibleName(say("From when on"))
        self.at.setEnabled(self.wanted.isChecked())
        self.wanted.toggled.connect(self.at.setEnabled)
        form = QFormLayout()
        form.addRow(say("&From"), self.at)
        told = (
            say("Once a day, while Quailsched is open; the window may be minimised. An icon in the tray brings it up.")
            if has_tray
            else say(
                "This desktop has no tray for notices, so there is none. The phone can tell: Farm › Calendar file."
            )
        )
        column = QVBoxLayout(self)
        column.addWidget(self.wanted)
        column.addLayout(form)
        self.told = label(told, "soft")
        column.addWidget(self.told)
        column.addStretch(1)
        column.addLayout(self._buttons())
        self.setMinimumWidth(self.fontMetrics().averageCharWidth() * 64)
        dress(self)

    def _buttons(self) -> QHBoxLayout:
        cancel, self.save_button = QPushButton(say("Cancel")), QPushButton(say("Save"))
        cancel.setAutoDefault(False)
        cancel.clicked.connect(self.reject)
        self.save_button.setObjectName("main")
        self.save_button.setDefault(True)
        self.save_button.clicked.connect(self.accept)
        row = QHBoxLayout()
        row.addStretch()
        row.addWidget(cancel)
        row.addWidget(self.save_button)
        return row

    @property
    def morning(self) -> Morning:
        at = self.at.time()
        return Morning(self.wanted.isChecked(), time(at.hour(), at.minute()))
