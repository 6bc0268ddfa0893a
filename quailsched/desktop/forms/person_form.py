"""Adding and changing a person."""

from __future__ import annotations

from datetime import date

from PySide6.QtWidgets import QCheckBox, QLineEdit, QWidget

from quailsched.desktop.forms.dates import SpansField
from quailsched.desktop.forms.fields import name_field
from quailsched.desktop.forms.record_form import RecordForm, ask
from quailsched.farm.records import Person
from quailsched.session.farms import new_id
from quailsched.session.open_farm import OpenFarm


class PersonForm(RecordForm):
    """Who does chores, and when they are away."""

    def __init__(self, parent: QWidget | None, opened: OpenFarm, today: date, person: Person | None = None) -> None:
        super().__init__(parent, opened, f"Change {person.name}" if person else "Add a person")
        shown = person or Person(new_id(), "")
        self._id = shown.id
        self.name = name_field(shown.name)
        self.grown_up = QCheckBox("A grown-up: may do what needs knives")
        self.grown_up.setChecked(shown.is_grown_up)
        self.away = SpansField(shown.away, today, "Add days away")
        self.note = QLineEdit(shown.note)
        self.add_field("name", "&Name", self.name)
        self.add_field("is_grown_up", "", self.grown_up)
        self.add_field("away", "Away", self.away)
        self.add_field("note", "N&ote", self.note)

    def record(self) -> Person:
        return Person(
            id=self._id,
            name=self.name.text().strip(),
            is_grown_up=self.grown_up.isChecked(),
            away=self.away.spans(),
            note=self.note.text().strip(),
        )


def edit_person(parent: QWidget | None, opened: OpenFarm, today: date, person: Person | None = None) -> str | None:
    """Ask for a person; the id of the one that was saved."""
    return ask(PersonForm(parent, opened, today, person))
