"""Small farms in a line each, for hand-made answers."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

from quailsched.farm.check import require_sound
from quailsched.farm.records import (
    Batch,
    Farm,
    FigureChoice,
    Leaving,
    Origin,
    Part,
    Place,
    Record,
    Role,
    Settings,
    Stay,
)
from quailsched.season.clash import Clash
from quailsched.season.clashes import clashes_of
from quailsched.season.season import Season

SETTINGS = Settings("farm", "Thistle Yard")
MONDAY = date(2027, 3, 1)
OUT = Leaving.SOLD

SETTER = Place("setter", "Setter", Role.SETTER, 0, egg_places=100)
HATCHER = Place("hatcher", "Hatcher", Role.HATCHER, 1, egg_places=100)
CABINET = Place("cabinet", "Cabinet", Role.CABINET, 2, egg_places=100)
BROODER = Place("brooder", "Brooder", Role.BROODER, 3, floor_cm2=20_000)
PEN = Place("pen", "Pen", Role.PEN, 4, floor_cm2=60_000)
RUN = Place("run", "Run", Role.PEN, 5, floor_cm2=60_000, outdoors=True)
ARK = Place("ark", "Ark", Role.GRASS_PEN, 6, floor_cm2=12_000, outdoors=True)
ALL_PLACES = (SETTER, HATCHER, CABINET, BROODER, PEN, RUN, ARK)

# Every chick hatches and lives and takes 200 cm2 at any age: what is left to count are days and places.
PLAIN_FIGURES = (
    FigureChoice("f1", "coturnix", "hatch_of_set_pct", 100.0),
    FigureChoice("f2", "coturnix", "alive", None, ((0.0, 1.0),)),
    FigureChoice("f3", "coturnix", "floor_cm2", None, ((0.0, 200.0),)),
)


def stay(place: Place, start: int, end: int | None, part: Part = Part.ALL, leaving: Leaving | None = None) -> Stay:
    return Stay(place.id, start, end, part, leaving)


def on(day: int) -> date:
    """A day counted from ``MONDAY``."""
    return MONDAY + timedelta(days=day)


def hatch_route(out: int = 46) -> tuple[Stay, ...]:
    """Setter to day 15, hatcher to day 18, brooder to ``out``, then sold."""
    return stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, out, leaving=OUT)


def eggs(name: str, number: int, *stays: Stay, start: date = MONDAY, kind: str = "coturnix") -> Batch:
    """Own eggs set on ``start``; its id is its name in small letters."""
    return Batch(name.lower(), name, kind, Origin.OWN_EGGS, start, number, stays)


def bought(name: str, number: int, age: int, *stays: Stay, start: date = MONDAY) -> Batch:
    return Batch(name.lower(), name, "coturnix", Origin.BOUGHT_BIRDS, start, number, stays, age_days=age)


def farm(*records: Record, settings: Settings = SETTINGS, plain: bool = True) -> Farm:
    """A sound farm of these records and the places that they use."""
    batches = [record for record in records if isinstance(record, Batch)]
    given = {record.id for record in records}
    used = {s.place_id for batch in batches for s in batch.stays}
    places = [place for place in ALL_PLACES if place.id in used - given]
    figures = PLAIN_FIGURES if plain else ()
    return require_sound(Farm(settings).with_records(set(), (*places, *figures, *records)))


def clashes(*records: Record, settings: Settings = SETTINGS, plain: bool = True) -> tuple[Clash, ...]:
    return clashes_of(Season(farm(*records, settings=settings, plain=plain)))


def only(found: tuple[Clash, ...], kind: str) -> Clash:
    """The one clash of ``kind``."""
    of_kind = [clash for clash in found if clash.kind == kind]
    assert len(of_kind) == 1, [clash.sentence for clash in found]
    return of_kind[0]


def without(found: tuple[Clash, ...], *kinds: str) -> list[str]:
    """The kinds found, but for ``kinds``."""
    return [clash.kind for clash in found if clash.kind not in kinds]


def resized(place: Place, room: int) -> Place:
    """``place`` with another room, in egg places or cm2."""
    return replace(place, egg_places=room) if place.role.holds_eggs else replace(place, floor_cm2=room)
