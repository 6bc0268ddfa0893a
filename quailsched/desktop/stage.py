"""Where the views stand, and the bar above them that says that a trial is looked at."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from quailsched.desktop.labels import label
from quailsched.farm.records import Trial
from quailsched.words import say


class TrialBar(QFrame):
    """The name of the trial, what of it does not fit, and what can be done with it."""

    compare_asked = Signal()
    keep_asked = Signal()
    drop_asked = Signal()
    back_asked = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("trialBar")
        self.text = label("")
        self.misfits = label("", "soft")
        row = QHBoxLayout(self)
        row.setContentsMargins(14, 6, 14, 6)
        words = QVBoxLayout()
        words.setSpacing(2)
        words.addWidget(self.text)
        words.addWidget(self.misfits)
        row.addLayout(words, 1)
        self.buttons = {
            say("Compare"): (self.compare_asked, say("The plan and the trial side by side")),
            say("Keep it"): (self.keep_asked, say("The plan becomes as the trial is; undo takes it back")),
            say("Drop it"): (self.drop_asked, say("The trial goes, the plan stays as it is; undo brings it back")),
            say("Back to the plan"): (self.back_asked, say("The trial stays for later, under Trials in the menu")),
        }
        for text, (asked, tip) in self.buttons.items():
            button = QPushButton(text)
            button.setToolTip(tip)
            button.clicked.connect(lambda _checked=False, signal=asked: signal.emit())
            row.addWidget(button)

    def show_trial(self, trial: Trial, misfits: Sequence[str]) -> None:
        self.text.setText(
            say(
                "You are looking at the trial “{trial}”. What you change stays in it; dashed outlines show the plan.",
                trial=trial.name,
            )
        )
        self.misfits.setText("\n".join(misfits))
        self.misfits.setVisible(bool(misfits))


class Stage(QFrame):
    """The views; while a trial is looked at, in a dashed frame with the bar above them."""

    bar_made = Signal(object)  # TrialBar, when the first trial is looked at

    def __init__(self, views: QWidget) -> None:
        super().__init__()
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(0)
        self._column.addWidget(views, 1)
        self.setObjectName("planStage")

    @cached_property
    def bar(self) -> TrialBar:
        made = TrialBar()
        self._column.insertWidget(0, made)
        made.hide()
        self.bar_made.emit(made)
        return made

    def show_trial(self, trial: Trial | None, misfits: Sequence[str]) -> None:
        """Show that ``trial`` is looked at; None for the plan."""
        if trial is not None:
            self.bar.show_trial(trial, misfits)
        if "bar" in self.__dict__:
            self.bar.setVisible(trial is not None)
        name = "planStage" if trial is None else "trialStage"
        if self.objectName() != name:
            self.setObjectName(name)
            self.style().unpolish(self)
            self.style().polish(self)
