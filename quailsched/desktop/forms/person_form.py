"""Adding and changing a person."""

from __future__ import annotations

from datetime import date

from PySide6.QtWidgets import QCheckBox, QLineEdit, QWidget

from quailsched.desktop.forms.dates import SpansField
from quailsched.desktop.forms.fields import NumberField, name_field
from quailsched.desktop.forms.record_form import RecordForm, ask
from quailsched.farm.check import HOURS_IN_A_WEEK
from quailsched.farm.records import Person
from quailsched.session.farms import new_id
from quailsched.session.open_farm import OpenFarm
from quailsched.words import say


class PersonForm(RecordForm):
    """Who does chores, when they are away, and how long they build."""

    def __init__(self, parent: QWidget | None, opened: OpenFarm, today: date, person: Person | None = None) -> None:
        super().__init__(parent, opened, say("Change {person}", person=person.name) if person else say("Add a person"))
        shown = person or Person(new_id(), "")
        self._id = shown.id
        self.name = name_field(shown.name)
        self.grown_up = QCheckBox(say("A grown-up: may do what needs knives"))
        self.grown_up.setChecked(shown.is_grown_up)
        self.away = SpansField(shown.away, today, say("Add days away"))
        self.build_hours = NumberField(0, HOURS_IN_A_WEEK, 1, say(" hours a week"))
        self.build_hours.setValue(shown.build_hours)
        self._build_hours_before = shown.build_hours
        self.note = QLineEdit(shown.note)
        self.add_field("name", say("&Name"), self.name)
        self.add_field("is_grown_up", "", self.grown_up)
        self.add_field("away", say("Away"), self.away)
        tip = say("For places that are being built; none of it on days away")
        self.add_field("build_hours", say("&Building"), self.build_hours, tip)
        self.add_field("note", say("N&ote"), self.note)

    def _hours(self) -> float:
        """What the field says; the hours that were there if it still shows the same."""
        self.build_hours.interpretText()
        shown, before = self.build_hours.value(), self._build_hours_before
        return before if abs(shown - before) < 0.051 else shown

    def record(self) -> Person:
        return Person(
            id=self._id,
            name=self.name.text().strip(),
            is_grown_up=self.grown_up.isChecked(),
            away=self.away.spans(),
            note=self.note.text().strip(),
            build_hours=self._hours(),
        )


def edit_person(parent: QWidget | None, opened: OpenFarm, today: date, person: Person | None = None) -> str | None:
    """Ask for a person; the id of the one that was saved."""
    return ask(PersonForm(parent, opened, today, person))
