"""What is taken in each place, as slices of days on which nothing changes. Exact to the day, whole numbers."""

from __future__ import annotations

from bisect import insort
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from datetime import date, timedelta
from itertools import pairwise

from quailsched.farm.records import Batch, Part, Place
from quailsched.season.footprint import Leg, Run


@dataclass(frozen=True, slots=True)
class Presence:
    """A leg of a batch in a place, with real days."""

    batch: Batch
    leg: Leg
    start: date
    end: date

    @property
    def part(self) -> Part:
        return self.leg.stay.part

    @property
    def place_id(self) -> str:
        return self.leg.stay.place_id

    def run_on(self, day: date) -> Run | None:
        return self.leg.run_on((day - self.batch.start).days)


@dataclass(frozen=True, slots=True)
class Share:
    """What one presence takes in a slice."""

    presence: Presence
    run: Run

    @property
    def rank(self) -> tuple[date, str, str, int]:
        """Shares stand in this order: who came first, then by name."""
        batch = self.presence.batch
        return self.presence.start, batch.name, batch.id, self.presence.leg.index


@dataclass(frozen=True, slots=True)
class Slice:
    """Days ``start`` to ``end`` (half-open) of a place with the same shares throughout, in the order of ``rank``."""

    start: date
    end: date
    shares: tuple[Share, ...]
    eggs: int
    birds: int
    floor_cm2: int

    def taken(self, place: Place) -> int:
        """Egg places or square centimetres taken."""
        return self.eggs if place.role.holds_eggs else self.floor_cm2

    @property
    def last(self) -> date:
        return self.end - timedelta(days=1)

    def cut(self, start: int, end: int) -> Slice:
        """The part of it between two day ordinals."""
        return replace(self, start=date.fromordinal(start), end=date.fromordinal(end))

    def parts(self, borders: Iterable[int]) -> Iterator[Slice]:
        """It cut at the day ordinals of ``borders`` that lie within it; whole if none does."""
        first, end = self.start.toordinal(), self.end.toordinal()
        inside = sorted({first, end, *(day for day in borders if first < day < end)})
        if len(inside) == 2:
            yield self
            return
        for start, stop in pairwise(inside):
            yield self.cut(start, stop)


def room_of(place: Place) -> int:
    """Egg places or square centimetres that there are."""
    return place.egg_places if place.role.holds_eggs else place.floor_cm2


def slices_of(presences: list[Presence]) -> tuple[Slice, ...]:
    """The slices of one place in order of days; days on which nobody is there have none."""
    arrive: dict[int, list[Share]] = {}
    leave: dict[int, list[Share]] = {}
    for presence in presences:
        day_0 = presence.batch.start.toordinal()
        for run in presence.leg.runs:
            share = Share(presence, run)
            arrive.setdefault(day_0 + run.start, []).append(share)
            leave.setdefault(day_0 + run.end, []).append(share)
    there: list[Share] = []
    slices: list[Slice] = []
    days = sorted(arrive.keys() | leave.keys())
    for day, next_day in zip(days, days[1:] + days[-1:], strict=True):  # on the last day nobody is left
        for share in leave.get(day, ()):
            there.remove(share)
        for share in arrive.get(day, ()):
            insort(there, share, key=_rank)
        if there:
            slices.append(slice_of(date.fromordinal(day), date.fromordinal(next_day), tuple(there)))
    return tuple(slices)


def _rank(share: Share) -> tuple[date, str, str, int]:
    return share.rank


def slice_of(start: date, end: date, shares: tuple[Share, ...]) -> Slice:
    """The slice of ``shares``, summed up."""
    return Slice(
        start,
        end,
        shares,
        eggs=sum(s.run.eggs for s in shares),
        birds=sum(s.run.birds for s in shares),
        floor_cm2=sum(s.run.floor_cm2 for s in shares),
    )


@dataclass(frozen=True, slots=True)
class Emptying:
    """A place fell empty on ``day``; ``left`` were the last out, ``came`` the next in on ``next_day``."""

    day: date
    left: tuple[Presence, ...]
    next_day: date | None
    came: tuple[Presence, ...]


def emptyings_of(presences: list[Presence]) -> tuple[Emptying, ...]:
    """Each day on which the last one left a place, with who comes next. A batch that stays on has not left."""
    ends: dict[date, list[Presence]] = {}
    starts: dict[date, list[Presence]] = {}
    for presence in presences:
        starts.setdefault(presence.start, []).append(presence)
        ends.setdefault(presence.end, []).append(presence)
    there = 0
    found: list[Emptying] = []
    for day in sorted(starts.keys() | ends.keys()):
        ending, starting = ends.get(day, []), starts.get(day, [])
        there -= len(ending)
        goes_on = {p.batch.id for p in ending} & {p.batch.id for p in starting}
        if ending and there == 0 and not goes_on:
            found.append(Emptying(day, tuple(ending), None, ()))
        there += len(starting)
    first_days = sorted(starts)
    return tuple(
        Emptying(e.day, e.left, nxt, tuple(starts[nxt]) if nxt else ())
        for e in found
        for nxt in [next((d for d in first_days if d >= e.day), None)]
    )
