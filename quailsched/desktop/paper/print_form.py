"""Asking what is to be printed, on which paper, and whether by a printer or into a file."""

from __future__ import annotations

from PySide6.QtWidgets import (
    QButtonGroup,
    QComboBox,
    QDialog,
    QFormLayout,
    QHBoxLayout,
    QPushButton,
    QRadioButton,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from quailsched.desktop.forms.fields import dress
from quailsched.desktop.labels import label
from quailsched.desktop.paper.papers import LEAST_WEEKS, MOST_WEEKS, Paper
from quailsched.words import marked, say

_OF_TRIAL = marked("The season is that of the trial “{trial}”, the chores are those of the plan.")


class PrintForm(QDialog):
    """After ``exec`` is accepted: ``is_chores``, ``weeks``, ``paper`` and ``is_file`` tell what is wanted."""

    def __init__(self, parent: QWidget | None, paper: Paper, trial: str = "") -> None:
        """``trial`` is the name of the trial that is looked at; "" for the plan."""
        super().__init__(parent)
        self.setWindowTitle(say("Print"))
        self.is_file = False
        self.season = QRadioButton(say("The &season on one page"))
        self.chores = QRadioButton(say("The &chores, each with a box to tick"))
        self._either = QButtonGroup(self)
        self.weeks_field, self.paper_field = QSpinBox(), QComboBox()
        self.weeks_field.setRange(LEAST_WEEKS, MOST_WEEKS)
        self.weeks_field.setAccessibleName(say("Weeks of chores"))
        self.paper_field.addItems(list(Paper))
        self.paper_field.setCurrentText(paper)
        self.paper_field.setAccessibleName(say("Paper"))
        form = QFormLayout()
        form.addRow(say("&Weeks of chores"), self.weeks_field)
        form.addRow(say("P&aper"), self.paper_field)
        column = QVBoxLayout(self)
        for choice in (self.season, self.chores):
            self._either.addButton(choice)
            column.addWidget(choice)
        if trial:
            column.addWidget(label(say(_OF_TRIAL, trial=trial), "soft"))
        column.addLayout(form)
        column.addStretch()
        column.addLayout(self._buttons())
        self.chores.toggled.connect(self.weeks_field.setEnabled)
        self.choose(chores=False)
        self.weeks_field.setEnabled(False)
        dress(self)

    def choose(self, *, chores: bool) -> None:
        """Begin with the sheet of chores, or with the season."""
        chosen = self.chores if chores else self.season
        chosen.setChecked(True)
        chosen.setFocus()

    def _buttons(self) -> QHBoxLayout:
        cancel, self.save_button = QPushButton(say("Cancel")), QPushButton(say("Save as P&DF…"))
        self.print_button = QPushButton(say("&Print…"))
        self.print_button.setObjectName("main")
        self.print_button.setDefault(True)
        for button in (cancel, self.save_button):
            button.setAutoDefault(False)
        cancel.clicked.connect(self.reject)
        self.save_button.clicked.connect(self._save)
        self.print_button.clicked.connect(self.accept)
        row = QHBoxLayout()
        row.addStretch()
        for button in (cancel, self.save_button, self.print_button):
            row.addWidget(button)
        return row

    def _save(self) -> None:
        self.is_file = True
        self.accept()

    @property
    def is_chores(self) -> bool:
        return self.chores.isChecked()

    @property
    def weeks(self) -> int:
        return self.weeks_field.value()

    @property
    def paper(self) -> Paper:
        return Paper(self.paper_field.currentText())
