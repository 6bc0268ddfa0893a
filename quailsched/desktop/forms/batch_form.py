"""Adding and changing a batch, with its route and what follows from it while it is typed."""

from __future__ import annotations

from datetime import date

from PySide6.QtWidgets import QComboBox, QLabel, QLineEdit, QSpinBox, QWidget

from quailsched.desktop.forms.batch_outlook import clashes_text, clashes_with, follows_text, missing_text
from quailsched.desktop.forms.dates import day_field, day_of, days_field
from quailsched.desktop.forms.fields import name_field
from quailsched.desktop.forms.record_form import RecordForm, ask
from quailsched.desktop.forms.route_field import RouteField
from quailsched.desktop.forms.several_field import SeveralField
from quailsched.desktop.labels import plain
from quailsched.edits.change import apply
from quailsched.edits.records import put
from quailsched.farm.check import MOST_EGGS
from quailsched.farm.records import Batch, Farm, Origin, Stay
from quailsched.husbandry.handbook import handbook
from quailsched.season.route import usual_route
from quailsched.session.farms import new_id
from quailsched.session.faults import FarmError
from quailsched.session.open_farm import OpenFarm
from quailsched.words import marked, say

_ORIGIN_WORDS = {
    Origin.OWN_EGGS: marked("own eggs"),
    Origin.SHIPPED_EGGS: marked("shipped eggs, rested first"),
    Origin.BOUGHT_BIRDS: marked("birds brought in"),
}
_PARTED = {Origin.PARTED: marked("birds of another batch")}  # made by parting them, never chosen here
# Plants of hedge and meadow: a new batch is called by the first that no other has.
_NAMES = (
    *("Aster", "Bracken", "Clover", "Dill", "Elder", "Fern", "Gorse", "Hazel", "Iris", "Juniper", "Knapweed"),
    *("Lovage", "Mallow", "Nettle", "Orache", "Pansy", "Quince", "Rowan", "Sorrel", "Tansy", "Valerian", "Yarrow"),
)


class BatchForm(RecordForm):
    """Name, kind, origin, day, number, route; below it what hatches and which clashes it would bring."""

    def __init__(self, parent: QWidget | None, opened: OpenFarm, today: date, batch: Batch | None = None) -> None:
        super().__init__(parent, opened, say("Change {batch}", batch=batch.name) if batch else say("Add a batch"))
        self._before = batch
        shown = batch or Batch(new_id(), free_name(opened.farm), "coturnix", Origin.OWN_EGGS, today, 50)
        self._id = shown.id
        self.name = name_field(shown.name)
        self.kind = QComboBox()
        for kind in handbook().values():
            self.kind.addItem(say(kind.name), kind.id)
        self.kind.setCurrentIndex(list(handbook()).index(shown.kind))
        self.origin = QComboBox()
        words = _PARTED if shown.origin in _PARTED else _ORIGIN_WORDS
        for origin, text in words.items():
            self.origin.addItem(say(text), origin)
        self.origin.setCurrentIndex(list(words).index(shown.origin))
        self.origin.setEnabled(shown.origin not in _PARTED)
        self.mothers = SeveralField(shown.from_ids)
        self.start = day_field(shown.start)
        self.number = QSpinBox(minimum=0, maximum=MOST_EGGS, value=shown.number)
        self.age = days_field(shown.age_days, 1000)
        self.egg_age = days_field(shown.egg_age_days, 60)
        self.route = RouteField(opened.farm)
        self.note = QLineEdit(shown.note)
        self._now = opened.checked
        self._add_fields()
        self.follows, self.brings = plain(QLabel()), plain(QLabel())
        for foot in (self.follows, self.brings):
            foot.setWordWrap(True)
            foot.setContentsMargins(11, 0, 11, 0)  # in line with the fields
            self.add_foot(foot)
        self.route.show_route(shown.start, shown.stays if batch else self._usual())
        self._show_fitting()
        self._connect()
        self._tell()

    def _add_fields(self) -> None:
        for name, text, field, tip in (
            ("name", say("&Name"), self.name, ""),
            ("kind", say("&Kind"), self.kind, ""),
            ("origin", say("&From"), self.origin, ""),
            ("start", say("&Set on"), self.start, say("Day 0 of the batch; its whole route moves along")),
            ("number", say("&Eggs"), self.number, ""),
            ("age_days", say("&Age when they come"), self.age, ""),
            ("egg_age_days", say("Oldest egg s&tored"), self.egg_age, say("Days before setting")),
            ("from_ids", say("Eggs fro&m"), self.mothers, say("The batches whose hens laid them")),
        ):
            self.add_field(name, text, field, tip)
        self.add_field("stays", say("Route"), self.route, is_wide=True)
        self.add_field("note", say("N&ote"), self.note)

    def _connect(self) -> None:
        self.kind.currentIndexChanged.connect(self._kind_chosen)
        self.origin.currentIndexChanged.connect(self._kind_chosen)
        self.age.valueChanged.connect(self._kind_chosen)
        self.start.dateChanged.connect(self._start_chosen)
        self.number.valueChanged.connect(self._tell)
        self.route.changed.connect(self._tell)
        self.route.usual_asked.connect(self._take_usual)

    def _chosen_origin(self) -> Origin:
        return Origin(self.origin.currentData())

    def _usual(self) -> tuple[Stay, ...]:
        origin = self._chosen_origin()
        age = self.age.value() if not origin.is_eggs else 0
        return usual_route(self.opened.farm, self.kind.currentData(), origin, age)

    def _take_usual(self) -> None:
        self.route.show_route(day_of(self.start), self._usual())
        self.route.touched = False
        self._tell()

    def _kind_chosen(self) -> None:
        self._show_fitting()
        if self._before is None and not self.route.touched:
            self._take_usual()
        self._tell()

    def _show_mothers(self) -> None:
        """The batches that may have laid the eggs: of the kind, old enough on the day of setting."""
        farm, season, day = self.opened.farm, self._now.season, day_of(self.start)
        laying = [
            (one.name, one.id)
            for one in farm.batches
            if one.id != self._id
            and one.kind == self.kind.currentData()
            and (day - one.start).days >= season.days(one).first_egg
        ]
        self.mothers.show_choices(laying, {one.id: one.name for one in farm.batches})
        is_of_own = self._chosen_origin() is Origin.OWN_EGGS
        self.show_field("from_ids", is_of_own and self.mothers.has_choices())

    def _start_chosen(self) -> None:
        self._show_mothers()
        self.route.show_start(day_of(self.start))
        self._tell()

    def _show_fitting(self) -> None:
        is_eggs = self._chosen_origin().is_eggs
        self.show_field("age_days", not is_eggs)
        self.show_field("egg_age_days", is_eggs)
        self._show_mothers()
        self.set_label("start", say("&Set on") if is_eggs else say("&Come on"))
        self.set_label("number", say("&Eggs") if is_eggs else say("&Birds"))

    def _tell(self) -> None:
        """What follows and what it brings, as far as what is typed makes a batch."""
        self.follows.clear()
        self.brings.clear()
        if not self.route.stays():
            self.follows.setText(missing_text(self.opened.farm, self._chosen_origin()))
            return
        try:
            farm = apply(self.opened.farm, put(self.opened.farm, self.record()))
        except FarmError:
            return
        after = self._now.after(farm)
        batch = farm.batch(self._id)
        self.follows.setText(follows_text(after.season, batch))
        listed, fresh = clashes_with(self._id, self._now.clashes, after.clashes)
        self.brings.setObjectName("fault" if listed else "soft")
        self.brings.setText(clashes_text(farm, listed, fresh, batch.start))
        self.brings.style().unpolish(self.brings)
        self.brings.style().polish(self.brings)
        if self.isVisible():
            self.grow()

    def record(self) -> Batch:
        origin = self._chosen_origin()
        return Batch(
            id=self._id,
            name=self.name.text().strip(),
            kind=self.kind.currentData(),
            origin=origin,
            start=day_of(self.start),
            number=self.number.value(),
            stays=self.route.stays(),
            age_days=0 if origin.is_eggs else self.age.value(),
            egg_age_days=self.egg_age.value() if origin.is_eggs else 0,
            note=self.note.text().strip(),
            from_ids=self._from_ids(origin),
        )

    def _from_ids(self, origin: Origin) -> tuple[str, ...]:
        if origin is Origin.OWN_EGGS:
            return self.mothers.chosen()
        return self._before.from_ids if self._before is not None and origin is self._before.origin else ()


def free_name(farm: Farm) -> str:
    taken = {batch.name.casefold() for batch in farm.batches}
    numbered = (f"{name} {number}" if number > 1 else name for number in range(1, 1000) for name in _NAMES)
    return next(name for name in numbered if name.casefold() not in taken)


def edit_batch(parent: QWidget | None, opened: OpenFarm, today: date, batch: Batch | None = None) -> str | None:
    """Ask for a batch; the id of the one that was saved."""
    return ask(BatchForm(parent, opened, today, batch))
