"""The records that a farm is made of. Frozen values only: no clock, no files, nothing that can be derived.

Days inside a batch are counted from the batch's own day 0 (the day of setting, or of arrival), so that
moving a batch changes one field. Ranges are half-open: ``end`` is the first day that no longer counts.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from datetime import date, timedelta
from enum import StrEnum


class Role(StrEnum):
    """What a place is for."""

    SETTER = "setter"  # turns eggs until lockdown
    HATCHER = "hatcher"  # lockdown and hatch, no turning
    CABINET = "cabinet"  # a setter and a hatcher in one, one job at a time
    BROODER = "brooder"  # heated floor for chicks
    PEN = "pen"  # a fixed pen or cage for feathered birds
    GRASS_PEN = "grass pen"  # a pen moved over grass

    @property
    def holds_eggs(self) -> bool:
        return self in (Role.SETTER, Role.HATCHER, Role.CABINET)

    @property
    def is_pen(self) -> bool:
        return self in (Role.PEN, Role.GRASS_PEN)


class Origin(StrEnum):
    """How a batch came to the farm."""

    OWN_EGGS = "own eggs"
    SHIPPED_EGGS = "shipped eggs"  # rested before setting
    BOUGHT_BIRDS = "bought birds"  # chicks or older birds brought in

    @property
    def is_eggs(self) -> bool:
        return self is not Origin.BOUGHT_BIRDS


class Part(StrEnum):
    """Which birds of a batch a stay holds."""

    ALL = "all"
    HENS = "hens"  # the laying group: the hens and the cocks kept with them
    COCKS = "cocks"  # the surplus cocks


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


@dataclass(frozen=True, slots=True)
class Person:
    """Somebody who does chores. A minor does not do what needs a grown-up (knives, heat lamps)."""

    id: str
    name: str
    is_grown_up: bool = True
    away: tuple[Span, ...] = ()
    note: str = ""

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
    """Eggs set together, or birds brought in together. ``number`` counts eggs set or birds that came."""

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
class Settings:
    """What there is one of in a farm."""

    id: str
    name: str
    units: Units = Units.METRIC
    night_lows_c: tuple[float, ...] = ()  # January to December, a cold night of that month; () if not known
    latitude: float | None = None  # degrees, north positive
    note: str = ""


Record = Settings | Place | Person | Batch | FigureChoice


@dataclass(frozen=True, slots=True)
class Farm:
    """Everything of one farm. Records are kept in a fixed order, so that equal farms compare equal."""

    settings: Settings
    places: tuple[Place, ...] = ()
    people: tuple[Person, ...] = ()
    batches: tuple[Batch, ...] = ()
    choices: tuple[FigureChoice, ...] = ()
    _by_id: dict[str, Record] = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        put = object.__setattr__
        put(self, "places", tuple(sorted(self.places, key=lambda p: (p.position, p.name, p.id))))
        put(self, "people", tuple(sorted(self.people, key=lambda p: (p.name, p.id))))
        put(self, "batches", tuple(sorted(self.batches, key=lambda b: (b.start, b.name, b.id))))
        put(self, "choices", tuple(sorted(self.choices, key=lambda c: (c.kind, c.key, c.id))))
        put(self, "_by_id", {record.id: record for record in self.records()})

    def records(self) -> tuple[Record, ...]:
        return (self.settings, *self.places, *self.people, *self.batches, *self.choices)

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

    def with_records(self, removed: set[str], put: tuple[Record, ...]) -> Farm:
        """The farm without the records of ``removed`` and with those of ``put`` (same id: replaced)."""
        gone = removed | {record.id for record in put}
        kept = [record for record in self.records() if record.id not in gone]
        return farm_of(kept + list(put))


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
    )
