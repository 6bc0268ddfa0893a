"""Where the views stand, and the bar above them that says that a trial is looked at."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property

from PySide6.QtCore import Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout, QWidget

from quailsched.desktop.labels import ShortLabel
from quailsched.desktop.narrow import FewLines, ShortButton, shorten
from quailsched.farm.records import Trial
from quailsched.words import say

_SIDE_PX = 14


class TrialBar(QFrame):
    """The name of the trial, what of it does not fit, and what can be done with it."""

    compare_asked = Signal()
    keep_asked = Signal()
    drop_asked = Signal()
    back_asked = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("trialBar")
        self.name, self.hint = ShortLabel(9), ShortLabel(0)
        self.hint.setObjectName("soft")
        self.misfits = FewLines(3)
        row = self._row = QHBoxLayout()
        row.addWidget(self.name)
        row.addWidget(self.hint, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(_SIDE_PX, 6, _SIDE_PX, 6)
        column.setSpacing(4)
        column.addLayout(row)
        column.addWidget(self.misfits)
        self.buttons: list[ShortButton] = []
        for text, picture, asked, tip in (
            (say("Compare"), "compare", self.compare_asked, say("The plan and the trial side by side")),
            (say("Keep it"), "keep", self.keep_asked, say("The plan becomes as the trial is; undo takes it back")),
            (say("Drop it"), "drop", self.drop_asked, say("The trial goes, the plan stays; undo brings it back")),
            (say("Back to the plan"), "back", self.back_asked, say("The trial stays for later, in the Trials menu")),
        ):
            button = ShortButton(text, picture)
            button.setToolTip(tip)
            button.clicked.connect(lambda _checked=False, signal=asked: signal.emit())
            row.addWidget(button)
            self.buttons.append(button)

    def show_trial(self, trial: Trial, misfits: Sequence[str]) -> None:
        self.name.setText(say("Trial “{trial}”", trial=trial.name))
        self.hint.setText(say("What you change stays in it; dashed outlines show the plan."))
        self.misfits.setText("\n".join(misfits))
        self.misfits.setVisible(bool(misfits))
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        """The name of the trial has room before the words of the buttons."""
        of_the_name = self.name.sizeHint().width() - self.name.minimumSizeHint().width()
        shorten(self.buttons, self.width() - 2 * _SIDE_PX - self._row.minimumSize().width() - of_the_name)


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
