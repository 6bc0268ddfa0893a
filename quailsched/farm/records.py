"""The records that a farm is made of. Frozen values only: no clock, no files, nothing that can be derived.

Days inside a batch are counted from the batch's own day 0 (the day of setting, or of arrival), so that
moving a batch changes one field. Ranges are half-open: ``end`` is the first day that no longer counts.
"""

from __future__ import annotations

from bisect import bisect_left, insort
from collections.abc import Callable, Iterable, Mapping
from dataclasses import field, replace
from datetime import date, timedelta
from enum import StrEnum
from typing import Any, Final

from quailsched.farm.facts import ChoreMark, Count, OwnChore
from quailsched.farm.parts import Part as Part
from quailsched.quick import dataclass


class Role(StrEnum):
    """What a place is for. ``holds_eggs`` and ``is_pen`` are asked thousands of times in one look at a season."""

    holds_eggs: bool
    is_pen: bool

    SETTER = "setter"  # turns eggs until lockdown
    HATCHER = "hatcher"  # lockdown and hatch, no turning
    CABINET = "cabinet"  # a setter and a hatcher in one, one job at a time
    BROODER = "brooder"  # heated floor for chicks
    PEN = "pen"  # a fixed pen or cage for feathered birds
    GRASS_PEN = "grass pen"  # a pen moved over grass

    def __init__(self, value: str) -> None:
        self.holds_eggs = value in ("setter", "hatcher", "cabinet")
        self.is_pen = value in ("pen", "grass pen")


class Origin(StrEnum):
    """How a batch came to the farm."""

    OWN_EGGS = "own eggs"
    SHIPPED_EGGS = "shipped eggs"  # rested before setting
    BOUGHT_BIRDS = "bought birds"  # chicks or older birds brought in
    PARTED = "parted"  # birds of another batch, as a batch of their own

    @property
    def is_eggs(self) -> bool:
        return self in (Origin.OWN_EGGS, Origin.SHIPPED_EGGS)


class Leaving(StrEnum):
    """Where the birds of a stay go when it ends and no other stay follows."""

    SOLD = "sold"
    PROCESSED = "processed"


class Units(StrEnum):
    """Which units people read; inside everything is SI."""

    METRIC = "metric"
    US = "us"


@dataclass(frozen=True, slots=True)
class Span:
    """A run of days, half-open, with a word of reason ("away at school", "mending the roof")."""

    start: date
    end: date
    reason: str = ""

    def holds(self, day: date) -> bool:
        return self.start <= day < self.end

    @property
    def last_day(self) -> date:
        return self.end - timedelta(days=1)


@dataclass(frozen=True, slots=True)
class Place:
    """Somewhere that holds eggs or birds.

    ``egg_places`` counts eggs (setter, hatcher, cabinet); ``floor_cm2`` is usable floor (brooder, pen).
    ``clean_out_days`` pass between the last bird (or egg) out and the next one in.
    ``ready_on`` is the first day that it can be used while it is being built; None means that it stands.
    ``heat_sources`` counts lamps or plates of a brooder, ``feeder_cm`` and ``drinker_cm`` are the edges at which
    birds can eat and drink, ``light_hours`` a day are lit by lamps; None where it was not told, and is not checked.
    ``work_hours`` of building were left on ``work_from``.
    """

    id: str
    name: str
    role: Role
    position: int = 0
    egg_places: int = 0
    floor_cm2: int = 0
    clean_out_days: int = 0
    outdoors: bool = False
    turns_itself: bool = False
    ready_on: date | None = None
    shut: tuple[Span, ...] = ()
    note: str = ""
    heat_sources: int | None = None
    feeder_cm: int | None = None
    drinker_cm: int | None = None
    light_hours: float | None = None
    work_hours: float = 0.0
    work_from: date | None = None


@dataclass(frozen=True, slots=True)
class Person:
    """Somebody who does chores. A minor does not do what needs a grown-up (knives, heat lamps).

    ``build_hours`` a week go into places that are being built, on the days that the person is at home.
    """

    id: str
    name: str
    is_grown_up: bool = True
    away: tuple[Span, ...] = ()
    note: str = ""
    build_hours: float = 0.0

    def is_home(self, day: date) -> bool:
        return not any(span.holds(day) for span in self.away)


@dataclass(frozen=True, slots=True)
class Stay:
    """Birds or eggs of one batch in one place, ``from_day`` to ``to_day`` counted from the batch's day 0.

    ``to_day`` is half-open; None means until the birds are replaced, at the end of their lay.
    """

    place_id: str
    from_day: int
    to_day: int | None
    part: Part = Part.ALL
    leaving: Leaving | None = None


@dataclass(frozen=True, slots=True)
class Batch:
    """Eggs set together, or birds brought in together. ``number`` counts eggs set or birds that came.

    ``from_ids`` are the batches that it comes from: whose hens laid the eggs, or whose birds it was made of. They may
    have gone since.
    """

    id: str
    name: str
    kind: str
    origin: Origin
    start: date
    number: int
    stays: tuple[Stay, ...] = ()
    age_days: int = 0  # age of bought birds on the day that they came
    egg_age_days: int = 0  # days that the oldest eggs were stored before setting
    note: str = ""
    from_ids: tuple[str, ...] = ()

    def moved_to(self, start: date) -> Batch:
        return replace(self, start=start)


@dataclass(frozen=True, slots=True)
class FigureChoice:
    """A farm's own value for one figure, or its own points (age in days, value) for one curve."""

    id: str
    kind: str
    key: str
    value: float | None = None
    points: tuple[tuple[float, float], ...] = ()
    reason: str = ""


@dataclass(frozen=True, slots=True)
class Acceptance:
    """A clash that the keeper lives with, and why: one rule, one place, a batch in common.

    ``amount`` (need less have, in the clash's unit), ``birds`` and ``days`` are how large it was: it stays accepted
    until it grows. Places and batches may have gone since.
    """

    id: str
    kind: str
    place_id: str
    batch_ids: tuple[str, ...]
    amount: float
    birds: int
    days: int
    reason: str


@dataclass(frozen=True, slots=True)
class TrialRecord:
    """A record as a trial has it: ``content`` is its JSON text (``farm.plain.tagged``), "" where it is taken away."""

    record_id: str
    content: str


@dataclass(frozen=True, slots=True)
class Trial:
    """A what-if copy of the plan: what it has otherwise than the plan, record by record (``edits.trials``)."""

    id: str
    name: str
    records: tuple[TrialRecord, ...] = ()
    note: str = ""


@dataclass(frozen=True, slots=True)
class Settings:
    """What there is one of in a farm."""

    id: str
    name: str
    units: Units = Units.METRIC
    night_lows_c: tuple[float, ...] = ()  # January to December, a cold night of that month; () if not known
    latitude: float | None = None  # degrees, north positive
    note: str = ""
    sure_pct: int = 90  # of all hatches: how many must fit where room, or a number of birds, is at stake


_Key = Callable[[Any], tuple[Any, ...]]
Record = Settings | Place | Person | Batch | FigureChoice | Acceptance | Trial | Count | ChoreMark | OwnChore


@dataclass(frozen=True, slots=True)
class Farm:
    """Everything of one farm. Records are kept in a fixed order, so that equal farms compare equal."""

    settings: Settings
    places: tuple[Place, ...] = ()
    people: tuple[Person, ...] = ()
    batches: tuple[Batch, ...] = ()
    choices: tuple[FigureChoice, ...] = ()
    acceptances: tuple[Acceptance, ...] = ()
    trials: tuple[Trial, ...] = ()
    counts: tuple[Count, ...] = ()
    marks: tuple[ChoreMark, ...] = ()
    own_chores: tuple[OwnChore, ...] = ()
    _by_id: dict[str, Record] = field(init=False, repr=False, compare=False)
    _counts_of: dict[str, tuple[Count, ...]] = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        put = object.__setattr__
        for name, key in _ORDER.items():
            put(self, name, tuple(sorted(getattr(self, name), key=key)))
        put(self, "_by_id", {record.id: record for record in self.records()})
        put(self, "_counts_of", _by_batch(self.counts))

    def records(self) -> tuple[Record, ...]:
        plan: tuple[Record, ...] = (self.settings, *self.places, *self.people, *self.batches)
        return (*plan, *self.choices, *self.acceptances, *self.trials, *self.counts, *self.marks, *self.own_chores)

    def find(self, record_id: str) -> Record | None:
        return self._by_id.get(record_id)

    def place(self, place_id: str) -> Place:
        record = self._by_id[place_id]
        assert isinstance(record, Place)
        return record

    def batch(self, batch_id: str) -> Batch:
        record = self._by_id[batch_id]
        assert isinstance(record, Batch)
        return record

    def counts_of(self, batch_id: str) -> tuple[Count, ...]:
        """All counts of a batch and of birds that went over to it, corrected ones too, in order of days."""
        return self._counts_of.get(batch_id, ())

    def batches_not_in(self, other: Farm) -> list[Batch]:
        """Those that ``other`` lacks, has otherwise, or of which it has other counts."""
        theirs = other._by_id.get
        if self.counts is other.counts:
            unlike: Iterable[Batch] = self.batches
            if len(self.batches) == len(other.batches):  # of hundreds most stand where they stood: a drag asks often
                unlike = [one for one, their in zip(self.batches, other.batches, strict=True) if one is not their]
            return [batch for batch in unlike if theirs(batch.id) is not batch]
        ours, counts = self._counts_of.get, other._counts_of.get
        return [one for one in self.batches if theirs(one.id) is not one or ours(one.id) != counts(one.id)]

    def with_records(self, removed: set[str], put: tuple[Record, ...]) -> Farm:
        """The farm without the records of ``removed`` and with those of ``put`` (same id: replaced).

        Lists that nothing is put into or taken from are the same objects as before.
        """
        gone = removed | {record.id for record in put}
        if self.settings.id in gone or any(isinstance(record, Settings) for record in put):
            return farm_of([record for record in self.records() if record.id not in gone] + list(put))
        lists: dict[str, list[Any]] = {}
        by_id = dict(self._by_id)
        for record_id in gone:
            if (record := by_id.pop(record_id, None)) is not None:
                of_type, key = self._list_for(lists, record)
                del of_type[bisect_left(of_type, key(record), key=key)]
        for record in put:
            of_type, key = self._list_for(lists, record)
            insort(of_type, record, key=key)
            by_id[record.id] = record
        counts_of = self._counts_of
        if "counts" in lists:
            counts_of = self._counts_after(gone, [record for record in put if isinstance(record, Count)])
        return self._with_lists(lists, by_id, counts_of)

    def _counts_after(self, gone: set[str], put: list[Count]) -> dict[str, tuple[Count, ...]]:
        """The counts of each batch; those of batches of which none comes or goes are the same objects as before."""
        came = _by_batch(tuple(sorted(put, key=_ORDER["counts"])))
        taken = [one for record_id in gone if isinstance(one := self._by_id.get(record_id), Count)]
        counts_of = dict(self._counts_of)
        for batch_id in {*came, *_by_batch(tuple(taken))}:
            kept = [count for count in counts_of.pop(batch_id, ()) if count.id not in gone]
            if of_batch := sorted((*kept, *came.get(batch_id, ())), key=_ORDER["counts"]):
                counts_of[batch_id] = tuple(of_batch)
        return counts_of

    def _list_for(self, lists: dict[str, list[Any]], record: Record) -> tuple[list[Any], _Key]:
        """The list in ``lists`` that ``record`` belongs to, copied from this farm's at first, and what orders it."""
        name = _LIST_OF[type(record)]
        if name not in lists:
            lists[name] = list(getattr(self, name))
        return lists[name], _ORDER[name]

    def _with_lists(
        self, lists: dict[str, list[Any]], by_id: dict[str, Record], counts_of: dict[str, tuple[Count, ...]]
    ) -> Farm:
        """Made past ``__post_init__``: the lists are in order, and sorting 500 batches again takes a third of a
        millisecond of every step of a drag."""
        farm = object.__new__(Farm)
        put = object.__setattr__
        put(farm, "settings", self.settings)
        for name in _ORDER:
            put(farm, name, tuple(lists[name]) if name in lists else getattr(self, name))
        put(farm, "_by_id", by_id)
        put(farm, "_counts_of", counts_of)
        return farm


def _by_batch(counts: tuple[Count, ...]) -> dict[str, tuple[Count, ...]]:
    """Each batch's own counts, and those of birds that joined it."""
    found: dict[str, list[Count]] = {}
    for count in counts:
        for batch_id in {count.batch_id, count.to_batch_id} - {""}:
            found.setdefault(batch_id, []).append(count)
    return {batch_id: tuple(of_batch) for batch_id, of_batch in found.items()}


_ORDER: Final[Mapping[str, _Key]] = {
    "places": lambda place: (place.position, place.name, place.id),
    "people": lambda person: (person.name, person.id),
    "batches": lambda batch: (batch.start, batch.name, batch.id),
    "choices": lambda choice: (choice.kind, choice.key, choice.id),
    "acceptances": lambda acceptance: (acceptance.kind, acceptance.place_id, acceptance.id),
    "trials": lambda trial: (trial.name, trial.id),
    "counts": lambda count: (count.day, count.entered, count.id),
    "marks": lambda mark: (mark.day, mark.key, mark.id),
    "own_chores": lambda chore: (chore.first, chore.name, chore.id),
}
_LIST_OF: Final[Mapping[type, str]] = {
    Place: "places",
    Person: "people",
    Batch: "batches",
    FigureChoice: "choices",
    Acceptance: "acceptances",
    Trial: "trials",
    Count: "counts",
    ChoreMark: "marks",
    OwnChore: "own_chores",
}


def farm_of(records: list[Record]) -> Farm:
    """A farm from its records in any order. Raises ValueError unless exactly one of them is Settings."""
    settings = [r for r in records if isinstance(r, Settings)]
    if len(settings) != 1:
        raise ValueError(f"a farm has one settings record, not {len(settings)}")
    return Farm(
        settings=settings[0],
        places=tuple(r for r in records if isinstance(r, Place)),
        people=tuple(r for r in records if isinstance(r, Person)),
        batches=tuple(r for r in records if isinstance(r, Batch)),
        choices=tuple(r for r in records if isinstance(r, FigureChoice)),
        acceptances=tuple(r for r in records if isinstance(r, Acceptance)),
        trials=tuple(r for r in records if isinstance(r, Trial)),
        counts=tuple(r for r in records if isinstance(r, Count)),
        marks=tuple(r for r in records if isinstance(r, ChoreMark)),
        own_chores=tuple(r for r in records if isinstance(r, OwnChore)),
    )
