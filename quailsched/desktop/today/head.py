"""Above the cards: which day it is, how much there is to do, the days before and after, and the line for counts."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from quailsched.desktop.labels import label
from quailsched.desktop.today.page import DayPage, number_text_of
from quailsched.desktop.today.record_field import RecordField, day_note
from quailsched.farm.units import day_text, weekday_text
from quailsched.session.open_farm import OpenFarm
from quailsched.words import say


class Head(QWidget):
    """The day is shown by the view; buttons ask for another."""

    day_asked = Signal(object)  # date

    def __init__(self, opened: Callable[[], OpenFarm], day: Callable[[], date], today: Callable[[], date]) -> None:
        super().__init__()
        self._day, self._today = day, today
        self.title, self.number = label("", "dayHeading"), label("", "soft")
        self.title.setWordWrap(False)
        self.trial = label("", "strong")
        self.earlier = self._button("‹", say("The day before (Alt+Left)"), lambda: self._go(-1))
        self.later = self._button("›", say("The day after (Alt+Right)"), lambda: self._go(1))
        self.back = self._button(say("Today"), say("Back to today (Ctrl+T)"), lambda: self.day_asked.emit(today()))
        self.record = RecordField(opened, lambda: min(day(), today()), today)
        row = QHBoxLayout()
        row.setSpacing(6)
        row.addWidget(self.title)
        row.addSpacing(8)
        row.addWidget(self.number, 1, Qt.AlignmentFlag.AlignVCenter)
        for one in (self.back, self.earlier, self.later):
            row.addWidget(one)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addLayout(row)
        column.addWidget(self.trial)
        column.addWidget(self.record)

    def _button(self, text: str, tip: str, action: Callable[[], object]) -> QPushButton:
        made = QPushButton(text)
        made.setObjectName("flat")
        made.setToolTip(tip)
        made.setAccessibleName(tip)
        made.setAutoDefault(False)
        made.clicked.connect(lambda: action())
        return made

    def _go(self, days: int) -> None:
        self.day_asked.emit(self._day() + timedelta(days=days))

    def show_page(self, page: DayPage, trial: str) -> None:
        """``trial`` is the name of the trial that is looked at; "" for the plan."""
        today = self._today()
        self.title.setText(day_title(page.day, today))
        self.number.setText(_summary(page, today))
        self.back.setVisible(page.day != today)
        self.trial.setVisible(bool(trial))
        if trial:
            self.trial.setText(
                say(
                    "These are the chores of the plan, not of the trial “{trial}”: here stands what happens.",
                    trial=trial,
                )
            )


def day_title(day: date, today: date) -> str:
    """ "Tuesday 6 Apr", with the year where it is another than this one."""
    return f"{weekday_text(day)} {day_text(day, today)}"


def _summary(page: DayPage, today: date) -> str:
    """How many chores there are and that they stand in walking order; of which day counts are, if not of today."""
    number = number_text_of(page)
    parts = [f"{number}."] if number else []
    if len(page.chores) > 1:
        parts.append(say("Young before old, healthy before sick, quarantine last."))
    if page.day < today:
        parts.append(day_note(page.day, today))
    return " ".join(parts)
