"""Adding and changing a batch, with its route and what follows from it while it is typed."""

from __future__ import annotations

from datetime import date, timedelta

from PySide6.QtWidgets import QComboBox, QLabel, QLineEdit, QSpinBox, QWidget

from quailsched.desktop.forms.dates import day_field, day_of, days_field
from quailsched.desktop.forms.record_form import RecordForm, ask, name_field
from quailsched.desktop.forms.route_field import RouteField
from quailsched.edits.change import apply
from quailsched.edits.records import put
from quailsched.farm.check import MOST_EGGS
from quailsched.farm.records import Batch, Farm, Origin, Stay
from quailsched.farm.units import count_text, day_text, span_text
from quailsched.husbandry.handbook import handbook
from quailsched.report.clashes import title_of
from quailsched.report.inspect import odds_text
from quailsched.season.clash import Clash
from quailsched.season.clashes import clashes_of
from quailsched.season.route import usual_route
from quailsched.season.season import Season
from quailsched.session.farms import new_id
from quailsched.session.faults import FarmError
from quailsched.session.open_farm import OpenFarm

_ORIGIN_WORDS = {
    Origin.OWN_EGGS: "own eggs",
    Origin.SHIPPED_EGGS: "shipped eggs, rested first",
    Origin.BOUGHT_BIRDS: "birds brought in",
}
# Plants of hedge and meadow: a new batch is called by the first that no other has.
_NAMES = (
    *("Aster", "Bracken", "Clover", "Dill", "Elder", "Fern", "Gorse", "Hazel", "Iris", "Juniper", "Knapweed"),
    *("Lovage", "Mallow", "Nettle", "Orache", "Pansy", "Quince", "Rowan", "Sorrel", "Tansy", "Valerian", "Yarrow"),
)


class BatchForm(RecordForm):
    """Name, kind, origin, day, number, route; below it what hatches and which clashes it would bring."""

    def __init__(self, parent: QWidget | None, opened: OpenFarm, today: date, batch: Batch | None = None) -> None:
        super().__init__(parent, opened, f"Change {batch.name}" if batch else "Add a batch")
        self._before = batch
        shown = batch or Batch(new_id(), free_name(opened.farm), "coturnix", Origin.OWN_EGGS, today, 50)
        self._id = shown.id
        self.name = name_field(shown.name)
        self.kind = QComboBox()
        for kind in handbook().values():
            self.kind.addItem(kind.name, kind.id)
        self.kind.setCurrentIndex(list(handbook()).index(shown.kind))
        self.origin = QComboBox()
        self.origin.addItems(list(_ORIGIN_WORDS.values()))
        self.origin.setCurrentIndex(list(_ORIGIN_WORDS).index(shown.origin))
        self.start = day_field(shown.start)
        self.number = QSpinBox(minimum=0, maximum=MOST_EGGS, value=shown.number)
        self.age = days_field(shown.age_days, 1000)
        self.egg_age = days_field(shown.egg_age_days, 60)
        self.route = RouteField(opened.farm)
        self.note = QLineEdit(shown.note)
        for name, text, field, tip in (
            ("name", "&Name", self.name, ""),
            ("kind", "&Kind", self.kind, ""),
            ("origin", "&From", self.origin, ""),
            ("start", "&Set on", self.start, "Day 0 of the batch; its whole route moves along"),
            ("number", "&Eggs", self.number, ""),
            ("age_days", "&Age when they come", self.age, ""),
            ("egg_age_days", "Oldest egg &stored", self.egg_age, "Days before setting"),
            ("stays", "Route", self.route, ""),
            ("note", "N&ote", self.note, ""),
        ):
            self.add_field(name, text, field, tip)
        self.follows = QLabel()
        self.follows.setWordWrap(True)
        self.brings = QLabel()
        self.brings.setWordWrap(True)
        self.add_line(self.follows)
        self.add_line(self.brings)
        self.route.show_route(shown.start, shown.stays if batch else self._usual())
        self._show_fitting()
        self._connect()
        self._tell()

    def _connect(self) -> None:
        self.kind.currentIndexChanged.connect(self._kind_chosen)
        self.origin.currentIndexChanged.connect(self._kind_chosen)
        self.age.valueChanged.connect(self._kind_chosen)
        self.start.dateChanged.connect(self._start_chosen)
        self.number.valueChanged.connect(self._tell)
        self.route.changed.connect(self._tell)
        self.route.usual_asked.connect(self._take_usual)

    def _chosen_origin(self) -> Origin:
        return list(_ORIGIN_WORDS)[self.origin.currentIndex()]

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

    def _start_chosen(self) -> None:
        self.route.show_start(day_of(self.start))
        self._tell()

    def _show_fitting(self) -> None:
        is_eggs = self._chosen_origin().is_eggs
        self.show_field("age_days", not is_eggs)
        self.show_field("egg_age_days", is_eggs)
        self.set_label("start", "&Set on" if is_eggs else "&Come on")
        self.set_label("number", "&Eggs" if is_eggs else "&Birds")

    def _tell(self) -> None:
        """What follows and what it brings, as far as what is typed makes a batch."""
        if not self.route.stays():
            what = "a setter or a cabinet" if self._chosen_origin().is_eggs else "a brooder or a pen"
            self.follows.setText(f"There is no place for its first day: add {what} first.")
            self.brings.setText("")
            return
        try:
            farm = apply(self.opened.farm, put(self.opened.farm, self.record()))
        except FarmError:
            self.follows.setText("")
            self.brings.setText("")
            return
        season = Season(farm)
        self.follows.setText(_follows_text(season, farm.batch(self._id)))
        self._tell_clashes(season)

    def _tell_clashes(self, season: Season) -> None:
        old = {_key(clash) for clash in clashes_of(self.opened.season)}
        own = [c for c in clashes_of(season) if _key(c) not in old or self._id in c.batch_ids]
        if not own:
            self.brings.setObjectName("soft")
            self.brings.setText("It makes no clash.")
        else:
            listed = "\n".join(f"• {title_of(season.farm, c)}, {span_text(c.first, c.last)}" for c in own[:5])
            more = f"\n• and {len(own) - 5} more" if len(own) > 5 else ""
            self.brings.setObjectName("fault")
            self.brings.setText(f"It is in {count_text(len(own), 'clash', 'clashes')}:\n{listed}{more}")
        self.brings.style().unpolish(self.brings)
        self.brings.style().polish(self.brings)

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
        )


def _follows_text(season: Season, batch: Batch) -> str:
    """Like: Lockdown on Tue 6 Apr; about 81 of 132 should hatch on Thu 8 Apr; first eggs about 21 May."""
    days = season.days(batch)

    def on(number: int) -> date:
        return batch.start + timedelta(days=number)

    if not batch.origin.is_eggs:
        return f"First eggs about {day_text(on(days.first_egg))}."
    chicks = season.birds(batch, on(days.hatch))
    return (
        f"Lockdown on {on(days.lockdown):%a} {day_text(on(days.lockdown))}; about {chicks:,} of {batch.number:,} "
        f"should hatch on {on(days.hatch):%a} {day_text(on(days.hatch))} "
        f"({odds_text(season.kind(batch), batch.number)}); "
        f"first eggs about {day_text(on(days.first_egg))}."
    )


def _key(clash: Clash) -> tuple[str, str, tuple[str, ...]]:
    return clash.kind, clash.place_id, clash.batch_ids


def free_name(farm: Farm) -> str:
    taken = {batch.name.casefold() for batch in farm.batches}
    numbered = (f"{name} {number}" if number > 1 else name for number in range(1, 1000) for name in _NAMES)
    return next(name for name in numbered if name.casefold() not in taken)


def edit_batch(parent: QWidget | None, opened: OpenFarm, today: date, batch: Batch | None = None) -> str | None:
    """Ask for a batch; the id of the one that was saved."""
    return ask(BatchForm(parent, opened, today, batch))
