"""What is taken in each place: spells of days with the same presences, and in them slices on which nothing changes.

Exact to the day, whole numbers.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import field
from datetime import date, timedelta
from functools import cached_property
from itertools import pairwise, zip_longest
from typing import Any, NamedTuple

from quailsched.farm.records import Batch, Part, Place
from quailsched.quick import dataclass
from quailsched.season.footprint import Leg, Load, Run


@dataclass(frozen=True, slots=True, eq=False)
class Presence:
    """A leg of a batch in a place, with real days. Compared by identity: it is made once for a batch as it is."""

    batch: Batch
    leg: Leg
    start: date
    end: date
    kept: dict[str, Any] = field(init=False, default_factory=dict, repr=False)  # what was worked out of it alone

    @property
    def part(self) -> Part:
        return self.leg.stay.part

    @property
    def place_id(self) -> str:
        return self.leg.stay.place_id

    def run_on(self, day: date) -> Run | None:
        return self.leg.run_on((day - self.batch.start).days)


class Share(NamedTuple):
    """What one presence takes in a slice."""

    presence: Presence
    run: Run


class Slice(NamedTuple):
    """Days ``start`` to ``end`` (half-open) of a place with the same shares throughout.

    A tuple: it is made in a third of the time, and a drag makes hundreds in each frame.
    """

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
        return self._replace(start=date.fromordinal(start), end=date.fromordinal(end))

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


class Spell:
    """Days ``start`` to ``end`` (half-open) of a place on which the same presences are there.

    What they take at most and at least (``most``, ``least``) is known at once; the slices, on which it is exact, are
    worked out when they are asked for.
    """

    def __init__(self, start: date, end: date, presences: tuple[Presence, ...]) -> None:
        self.start, self.end, self.presences = start, end, presences
        if len(presences) == 1:
            self.most, self.least = presences[0].leg.most, presences[0].leg.least
        else:
            self.most = _sum([presence.leg.most for presence in presences])
            self.least = _sum([presence.leg.least for presence in presences])

    @cached_property
    def slices(self) -> tuple[Slice, ...]:
        first, last = self.start.toordinal(), self.end.toordinal()
        begin: dict[int, list[tuple[int, Share]]] = {first: []}
        there: list[Share] = []
        for number, presence in enumerate(self.presences):
            of_one = _shares_in(presence, first, last)
            there.append(of_one[0][1])
            for day, share in of_one[1:]:
                begin.setdefault(day, []).append((number, share))
        _, _, _, eggs, birds, floor_cm2 = slice_of(self.start, self.end, tuple(there))
        days = sorted(begin)
        dates = [date.fromordinal(day) for day in (*days, last)]
        found = []
        for at, day in enumerate(days):
            for number, share in begin[day]:
                was, run = there[number].run, share.run
                there[number] = share
                eggs += run.eggs - was.eggs
                birds += run.birds - was.birds
                floor_cm2 += run.floor_cm2 - was.floor_cm2
            found.append(Slice(dates[at], dates[at + 1], tuple(there), eggs, birds, floor_cm2))
        return tuple(found)


def _sum(loads: Iterable[Load]) -> Load:
    eggs = birds = floor_cm2 = 0
    for load in loads:
        eggs += load[0]
        birds += load[1]
        floor_cm2 += load[2]
    return Load(eggs, birds, floor_cm2)


def _shares_in(presence: Presence, first: int, last: int) -> list[tuple[int, Share]]:
    """The shares of ``presence`` on days ``first`` to ``last`` with the first day of each, that of the first of them
    being some day up to ``first``; the runs have no gaps."""
    known: tuple[list[int], list[tuple[int, Share]]] | None = presence.kept.get("shares")
    if known is None:
        day_0 = presence.batch.start.toordinal()
        shares = [(day_0 + run.start, Share(presence, run)) for run in presence.leg.runs]
        known = presence.kept["shares"] = [day for day, _ in shares], shares
    days, shares = known
    return shares[max(bisect_right(days, first) - 1, 0) : bisect_left(days, last)]


def spells_of(presences: Iterable[Presence]) -> tuple[Spell, ...]:
    """The spells of one place in order of days; days on which nobody is there have none."""
    arrive: dict[date, list[Presence]] = {}
    leave: dict[date, list[Presence]] = {}
    for presence in sorted(presences, key=_rank):  # those who come stand behind those who are there
        arrive.setdefault(presence.start, []).append(presence)
        leave.setdefault(presence.end, []).append(presence)
    there: list[Presence] = []
    spells: list[Spell] = []
    days = sorted(arrive.keys() | leave.keys())
    for day, next_day in pairwise(days):
        for presence in leave.get(day, ()):
            there.remove(presence)
        there += arrive.get(day, ())
        if there:
            spells.append(Spell(day, next_day, tuple(there)))
    return tuple(spells)


def spells_after(old: tuple[Spell, ...], gone: Sequence[Presence], come: Sequence[Presence]) -> tuple[Spell, ...]:
    """The spells of ``old`` without the presences of ``gone`` and with those of ``come``: only their days are
    worked out anew."""
    if not gone and not come:
        return old
    first, end = min(p.start for p in (*gone, *come)), max(p.end for p in (*gone, *come))
    # One spell more on each side: with a presence gone, two neighbours may become one.
    low = max(bisect_right(old, first, key=_end) - 1, 0)
    high = min(bisect_left(old, end, key=_start) + 1, len(old))
    affected = old[low:high]
    kept = {id(p): p for spell in affected for p in spell.presences}
    for presence in gone:
        kept.pop(id(presence), None)
    if affected:
        first, end = min(first, affected[0].start), max(end, affected[-1].end)
    within = (_cut(spell, first, end) for spell in spells_of((*kept.values(), *come)))
    known = {(spell.start, spell.end, spell.presences): spell for spell in affected}
    fresh = [known.get((spell.start, spell.end, spell.presences), spell) for spell in within if spell.start < spell.end]
    return (*old[:low], *fresh, *old[high:])


def _cut(spell: Spell, first: date, end: date) -> Spell:
    """Its days from ``first`` to ``end``; its end lies before its start if there are none."""
    if spell.start >= first and spell.end <= end:
        return spell
    return Spell(max(spell.start, first), min(spell.end, end), spell.presences)


def _start(spell: Spell) -> date:
    return spell.start


def _end(spell: Spell) -> date:
    return spell.end


def _rank(presence: Presence) -> tuple[date, str, str, int]:
    """Those in a place stand in this order: who came first, then by name."""
    return presence.start, presence.batch.name, presence.batch.id, presence.leg.index


def slice_of(start: date, end: date, shares: tuple[Share, ...]) -> Slice:
    """The slice of ``shares``, summed up."""
    eggs = birds = floor_cm2 = 0
    for share in shares:
        run = share.run
        eggs += run.eggs
        birds += run.birds
        floor_cm2 += run.floor_cm2
    return Slice(start, end, shares, eggs, birds, floor_cm2)


@dataclass(frozen=True, slots=True)
class Emptying:
    """A place fell empty on ``day``; ``left`` were the last out, ``came`` the next in on ``next_day``."""

    day: date
    left: tuple[Presence, ...]
    next_day: date | None
    came: tuple[Presence, ...]


def emptyings_of(spells: Sequence[Spell]) -> Iterator[Emptying]:
    """Each day on which the last one left a place, with who comes next. A batch that stays on has not left."""
    for spell, following in zip_longest(spells, spells[1:]):
        if max([presence.end for presence in spell.presences]) > spell.end:
            continue
        if following is None:
            yield Emptying(spell.end, spell.presences, None, ())
        elif following.start > spell.end or not _goes_on(spell, following):
            yield Emptying(spell.end, spell.presences, following.start, following.presences)


def _goes_on(spell: Spell, following: Spell) -> bool:
    return bool({p.batch.id for p in spell.presences} & {p.batch.id for p in following.presences})
