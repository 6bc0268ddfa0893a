"""When each place frees up: who is there, from which day it is free, who comes next, the room left by week."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta

from quailsched.farm.records import Part, Place
from quailsched.season.occupancy import Presence, Slice, room_of
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


def _blocked(season: Season, place: Place) -> list[tuple[date, date]]:
    """Days on which the place is taken, being cleaned out or out of use, as half-open pairs in order."""
    clean = timedelta(days=place.clean_out_days)
    taken = [(piece.start, piece.end) for piece in season.slices(place)]
    taken += [(e.day, e.day + clean) for e in season.emptyings(place)]
    taken += [(closure.start, closure.end) for closure in closures(place)]
    return sorted(taken)


def free_on(season: Season, place: Place, today: date) -> date:
    """The first day from ``today`` on which ``place`` is empty, cleaned out and usable."""
    day = today
    for start, end in _blocked(season, place):
        if start <= day < end:
            day = end
        elif start > day:
            break
    return day


def _room_left(season: Season, place: Place, start: date, end: date, slices: tuple[Slice, ...]) -> int:
    room = room_of(place)
    for piece in slices:
        if piece.start < end and piece.end > start:
            room = min(room, room_of(place) - piece.taken(place))
    blocked = [(c.start, c.end) for c in closures(place)]
    clean = timedelta(days=place.clean_out_days)
    if clean:
        blocked += [(e.day, e.day + clean) for e in season.emptyings(place)]
    if any(first < end and last > start for first, last in blocked):
        return 0
    return max(room, 0)


def place_states(season: Season, today: date, weeks: int = 12) -> tuple[PlaceState, ...]:
    """The state of each place on ``today`` and the room left in each of ``weeks`` weeks from then."""
    states = []
    for place in season.farm.places:
        here = sorted(
            (p for p in season.presences(place) if p.start <= today < p.end), key=lambda p: (p.end, p.batch.name)
        )
        free = free_on(season, place, today)
        coming = [p for p in season.presences(place) if p.start > today]
        next_day = min((p.start for p in coming), default=None)
        slices = season.slices(place)
        starts = [today + timedelta(days=7 * n) for n in range(weeks)]
        states.append(
            PlaceState(
                place=place,
                now=tuple(_occupant(p, today) for p in here),
                free_on=free,
                next_day=next_day,
                next_in=tuple(p.batch.name for p in coming if p.start == next_day),
                weeks=tuple(Week(s, _room_left(season, place, s, s + timedelta(days=7), slices)) for s in starts),
            )
        )
    return tuple(states)
