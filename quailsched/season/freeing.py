"""When each place frees up: who is there, from which day it is free, who comes next, the room left by week."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Iterator, Sequence
from datetime import date, timedelta
from itertools import takewhile
from operator import attrgetter

from quailsched.farm.records import Part, Place
from quailsched.quick import dataclass
from quailsched.season.occupancy import Emptying, Presence, Spell, emptyings_of, room_of
from quailsched.season.rules.notready import closures
from quailsched.season.season import Season


@dataclass(frozen=True, slots=True)
class Occupant:
    """Who is in a place now: ``number`` eggs or birds of a part of a batch, until ``until`` (they leave then)."""

    batch_id: str
    batch: str
    part: Part
    number: int
    unit: str
    until: date


@dataclass(frozen=True, slots=True)
class Week:
    """Room that is left throughout the seven days from ``start``: egg places or cm2; 0 if it cannot be used."""

    start: date
    room: int


@dataclass(frozen=True, slots=True)
class PlaceState:
    """``free_on``: first day from today on which the place is empty, cleaned out and usable.

    ``next_in`` come next after today, on ``next_day`` (None: nobody is planned). ``ready_on`` while it is being built.
    """

    place: Place
    now: tuple[Occupant, ...]
    free_on: date
    next_day: date | None
    next_in: tuple[str, ...]
    weeks: tuple[Week, ...]


def _occupant(presence: Presence, today: date) -> Occupant:
    run = presence.run_on(today)
    assert run is not None
    number, unit = (run.eggs, "eggs") if run.eggs else (run.birds, "birds")
    return Occupant(presence.batch.id, presence.batch.name, presence.part, number, unit, presence.end)


def _from(season: Season, place: Place, day: date) -> Sequence[Spell]:
    """The spells of ``place`` that are not over on ``day``, and the one before them."""
    spells = season.spells(place)
    return spells[max(bisect_right(spells, day, key=attrgetter("end")) - 1, 0) :]


def _blocked(place: Place, spells: Sequence[Spell]) -> Iterator[tuple[date, date]]:
    """Days of ``spells`` on which the place is taken or being cleaned out, as half-open pairs in order."""
    clean = timedelta(days=place.clean_out_days)
    for spell in spells:
        yield spell.start, spell.end
        if clean:
            yield spell.end, spell.end + clean  # only if it fell empty, but else the next spell takes these days anyway


def free_on(season: Season, place: Place, today: date) -> date:
    """The first day from ``today`` on which ``place`` is empty, cleaned out and usable."""
    day, shut = today, sorted((closure.start, closure.end) for closure in closures(place))
    while True:
        before = day
        for start, end in _blocked(place, _from(season, place, day)):
            if start <= day < end:
                day = end
            elif start > day:
                break
        for start, end in shut:
            if start <= day < end:
                day = end
        if day == before:
            return day


def _room_left(season: Season, place: Place, start: date, end: date) -> int:
    if any(closure.start < end and closure.end > start for closure in closures(place)):
        return 0
    room = room_of(place)
    clean = timedelta(days=place.clean_out_days)
    spells = _from(season, place, start - clean)
    for spell in takewhile(lambda one: one.start < end, spells):
        if spell.end <= start:
            continue
        room = min([room, *(room_of(place) - p.taken(place) for p in spell.slices if p.start < end and p.end > start)])
    if clean and any(e.day < end and e.day + clean > start for e in _emptyings(spells, end)):
        return 0
    return max(room, 0)


def _emptyings(spells: Sequence[Spell], end: date) -> Iterator[Emptying]:
    return takewhile(lambda one: one.day < end, emptyings_of(spells))


def place_states(season: Season, today: date, weeks: int = 12) -> tuple[PlaceState, ...]:
    """The state of each place on ``today`` and the room left in each of ``weeks`` weeks from then."""
    return tuple(place_state(season, place, today, weeks) for place in season.farm.places)


def place_state(season: Season, place: Place, today: date, weeks: int) -> PlaceState:
    """The state of one place; as quick for a farm of ten years as for one of a season."""
    spells = [spell for spell in _from(season, place, today) if spell.end > today]
    here = [p for p in spells[0].presences if p.start <= today < p.end] if spells else []
    next_day = next((p.start for spell in spells for p in spell.presences if p.start > today), None)
    first = next((spell for spell in spells if spell.start == next_day), None)
    starts = [today + timedelta(days=7 * number) for number in range(weeks)]
    return PlaceState(
        place=place,
        now=tuple(_occupant(p, today) for p in sorted(here, key=lambda p: (p.end, p.batch.name))),
        free_on=free_on(season, place, today),
        next_day=next_day,
        next_in=tuple(p.batch.name for p in first.presences if p.start == next_day) if first else (),
        weeks=tuple(Week(start, _room_left(season, place, start, start + timedelta(days=7))) for start in starts),
    )
