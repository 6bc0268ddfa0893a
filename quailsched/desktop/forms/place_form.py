"""Adding and changing a place."""

from __future__ import annotations

from datetime import date

from PySide6.QtWidgets import QCheckBox, QComboBox, QLabel, QLineEdit, QSpinBox, QWidget

from quailsched.desktop.forms.dates import SpansField, day_field, day_of, days_field
from quailsched.desktop.forms.fields import name_field
from quailsched.desktop.forms.floor_field import FloorField
from quailsched.desktop.forms.place_fittings import Fittings, WorkField
from quailsched.desktop.forms.record_form import RecordForm, ask
from quailsched.desktop.narrow import Beside
from quailsched.farm.check import MOST_CLEAN_OUT_DAYS, MOST_EGGS
from quailsched.farm.kinds import kind_in
from quailsched.farm.records import Place, Role
from quailsched.farm.units import count_text
from quailsched.session.farms import new_id
from quailsched.session.open_farm import OpenFarm
from quailsched.words import marked, say

_ROLE_WORDS = {
    Role.SETTER: marked("Setter: turns eggs until lockdown"),
    Role.HATCHER: marked("Hatcher: lockdown and hatch"),
    Role.CABINET: marked("Cabinet: setter and hatcher in one"),
    Role.BROODER: marked("Brooder: heated floor for chicks"),
    Role.PEN: marked("Pen: fixed, for feathered birds"),
    Role.GRASS_PEN: marked("Grass pen: moved over grass"),
}
_USUAL_CLEAN_OUT = {Role.SETTER: 0, Role.HATCHER: 1, Role.CABINET: 1}


class PlaceForm(RecordForm):
    """Name, what it is for, how much it holds, its fittings, and the days on which it cannot be used."""

    def __init__(self, parent: QWidget | None, opened: OpenFarm, today: date, place: Place | None = None) -> None:
        super().__init__(parent, opened, say("Change {place}", place=place.name) if place else say("Add a place"))
        self._before = place
        shown = place or Place(new_id(), "", Role.BROODER, position=_next_position(opened))
        self._id, self._position = shown.id, shown.position
        self.name = name_field(shown.name)
        self.role = QComboBox()
        for role, words in _ROLE_WORDS.items():
            self.role.addItem(say(words), role)
        self.role.setCurrentIndex(list(_ROLE_WORDS).index(shown.role))
        self.egg_places = QSpinBox(maximum=MOST_EGGS, value=shown.egg_places)
        self.floor = FloorField(shown.floor_cm2, opened.farm.settings.units)
        self.clean_out = days_field(0, MOST_CLEAN_OUT_DAYS)
        self.clean_out.setValue(shown.clean_out_days if place else self._usual_clean_out())
        self.outdoors = QCheckBox(say("Birds feel the nights here"))
        self.outdoors.setChecked(shown.outdoors)
        self.turns = QCheckBox(say("Turns the eggs by itself"))
        self.turns.setChecked(shown.turns_itself)
        self.fittings = Fittings(shown, opened.farm.settings.units)
        self.work = WorkField(shown, today)
        self._ready_fields(shown, today)
        self.shut = SpansField(shown.shut, today, say("Add days out of use"))
        self.note = QLineEdit(shown.note)
        self._add_fields()
        self.holds = QLabel()
        self.holds.setObjectName("soft")
        self.holds.setWordWrap(True)
        self.add_line(self.holds)
        self.role.currentIndexChanged.connect(self._role_chosen)
        self.floor.changed.connect(self._tell_room)
        self.egg_places.valueChanged.connect(self._tell_room)
        self._show_fitting()

    def _ready_fields(self, shown: Place, today: date) -> None:
        self.is_built_later = QCheckBox(say("Being built, ready on"))
        self.is_built_later.setChecked(shown.ready_on is not None)
        self.ready = day_field(shown.ready_on or today)
        self.ready.setEnabled(shown.ready_on is not None)
        self.ready.setAccessibleName(say("Ready on"))
        self.is_built_later.toggled.connect(self.ready.setEnabled)
        self.ready_row = Beside(self.is_built_later, self.ready, is_spread=False)
        self.ready_row.setFocusProxy(self.is_built_later)

    def _add_fields(self) -> None:
        self.add_field("name", say("&Name"), self.name)
        self.add_field("role", say("&What it is"), self.role)
        self.add_field("egg_places", say("&Egg places"), self.egg_places)
        self.add_field("floor_cm2", say("&Floor"), self.floor, say("Usable floor; width times length fills it"))
        self.floor.area.setAccessibleName(say("Floor"))
        self.work.hours.setAccessibleName(say("Work left, in hours"))
        self.add_field(
            "clean_out_days", say("&Clean-out"), self.clean_out, say("Days between the last out and the next in")
        )
        self.add_field("outdoors", "", self.outdoors)
        self.add_field("turns_itself", "", self.turns)
        self.fittings.add_to(self)
        self.add_field("ready_on", "", self.ready_row)
        work_tip = say("Set against people's hours of building until somebody is due here")
        self.add_field("work_hours", say("Wo&rk left"), self.work, work_tip)
        self.add_field("shut", say("Out of use"), self.shut)
        self.add_field("note", say("N&ote"), self.note)

    def _chosen(self) -> Role:
        return list(_ROLE_WORDS)[self.role.currentIndex()]

    def _usual_clean_out(self) -> int:
        usual = kind_in(self.opened.farm, "coturnix").days("clean_out_days")
        return _USUAL_CLEAN_OUT.get(self._chosen(), usual)

    def _role_chosen(self) -> None:
        if self._before is None:
            self.clean_out.setValue(self._usual_clean_out())
            self.outdoors.setChecked(self._chosen().is_pen)
            self.turns.setChecked(self._chosen() is Role.SETTER)
        self._show_fitting()

    def _show_fitting(self) -> None:
        role = self._chosen()
        self.show_field("egg_places", role.holds_eggs)
        self.show_field("turns_itself", role in (Role.SETTER, Role.CABINET))
        self.show_field("floor_cm2", not role.holds_eggs)
        self.show_field("outdoors", role.is_pen)
        self.fittings.show_fitting(self, role)
        self._tell_room()

    def _tell_room(self) -> None:
        """What that floor holds by the figures of standard Coturnix."""
        if self._chosen().holds_eggs:
            self.holds.setText("")
            return
        kind = kind_in(self.opened.farm, "coturnix")
        ages = ((10, say("at 10 days")), (25, say("at 25 days")), (42, say("grown")))
        counts = [f"{int(self.floor.floor_cm2() / kind.at('floor_cm2', age)):,} {words}" for age, words in ages]
        text = say("Holds {birds} Coturnix by the figures.", birds=", ".join(counts))
        if self._chosen().is_pen:
            least = -(-self.floor.floor_cm2() // int(kind.value("calm_area_cm2")))
            text += say(" From {count} on a group is calm in it.", count=count_text(least, "bird"))
        self.holds.setText(text if self.floor.floor_cm2() else "")

    def record(self) -> Place:
        role = self._chosen()
        for field in (self.floor.area, self.egg_places, self.clean_out, self.ready):
            field.interpretText()
        heat_sources, feeder_cm, drinker_cm, light_hours = self.fittings.values(role)
        work_hours, work_from = self.work.values()
        return Place(
            id=self._id,
            name=self.name.text().strip(),
            role=role,
            position=self._position,
            egg_places=self.egg_places.value() if role.holds_eggs else 0,
            floor_cm2=0 if role.holds_eggs else self.floor.floor_cm2(),
            clean_out_days=self.clean_out.value(),
            outdoors=self.outdoors.isChecked() and role.is_pen,
            turns_itself=self.turns.isChecked() and role in (Role.SETTER, Role.CABINET),
            ready_on=day_of(self.ready) if self.is_built_later.isChecked() else None,
            shut=self.shut.spans(),
            note=self.note.text().strip(),
            heat_sources=heat_sources,
            feeder_cm=feeder_cm,
            drinker_cm=drinker_cm,
            light_hours=light_hours,
            work_hours=work_hours,
            work_from=work_from,
        )


def _next_position(opened: OpenFarm) -> int:
    return max((place.position for place in opened.farm.places), default=-1) + 1


def edit_place(parent: QWidget | None, opened: OpenFarm, today: date, place: Place | None = None) -> str | None:
    """Ask for a place; the id of the one that was saved."""
    return ask(PlaceForm(parent, opened, today, place))
