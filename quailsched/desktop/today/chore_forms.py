"""Asking what a step about one chore needs: another day, or the reason why it is left out."""

from __future__ import annotations

from datetime import date, timedelta

from PySide6.QtWidgets import QLineEdit, QWidget

from quailsched.chores.chore import Chore
from quailsched.desktop.forms.dates import day_field, day_of
from quailsched.desktop.forms.record_form import RecordForm
from quailsched.desktop.labels import label
from quailsched.edits.change import Change
from quailsched.edits.marks import leave_out, put_off
from quailsched.farm.units import named_day_text
from quailsched.session.open_farm import OpenFarm
from quailsched.words import say


class PlanForm(RecordForm):
    """Its step is one of the plan, whatever is looked at."""

    def take(self, change: Change) -> None:
        self.opened.apply_to_plan(change)


def due_of(chore: Chore) -> date:
    """The day that a chore was due on at first: by it, marks know it."""
    return chore.put_off_from or chore.day


class PutOffForm(PlanForm):
    """Asks for the day on which a chore is done instead."""

    def __init__(self, parent: QWidget | None, opened: OpenFarm, chore: Chore, today: date) -> None:
        super().__init__(parent, opened, say("Put off: {chore}", chore=chore.title))
        self._chore = chore
        self.day = day_field(max(chore.day, today) + timedelta(days=1))
        due = due_of(chore)
        tip = say("It is due on {day}", day=named_day_text(due, today))
        self.add_field("moved_to", say("&On"), self.day, tip)
        self.add_line(label(tip, "soft"))

    def change(self) -> Change:
        chore = self._chore
        return put_off(self.opened.plan, chore.key, due_of(chore), chore.title, day_of(self.day))


class LeaveOutForm(PlanForm):
    """Asks why a chore is not going to be done."""

    def __init__(self, parent: QWidget | None, opened: OpenFarm, chore: Chore) -> None:
        super().__init__(parent, opened, say("Leave out: {chore}", chore=chore.title))
        self._chore = chore
        self.reason = QLineEdit(chore.left_out)
        self.reason.setPlaceholderText(say("dry yet"))
        self.add_field("reason", say("&Why"), self.reason, say("It stays on the page with this reason"))

    def change(self) -> Change:
        chore = self._chore
        return leave_out(self.opened.plan, chore.key, due_of(chore), chore.title, self.reason.text())
