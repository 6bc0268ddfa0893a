"""On which start days a batch finds room in all places of its route, all days of a range at once.

Days are bits of Python's whole numbers, bit 0 the first day of the window, so that shifting and "and" look at thousands
of days in one go. Only room counts here (egg places, floor) and whether a place can be used; the other rules do not.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterator
from datetime import date, timedelta
from itertools import pairwise

from quailsched.farm.records import Batch, Place
from quailsched.season.footprint import Load, Run
from quailsched.season.occupancy import Slice, Spell, room_of
from quailsched.season.rules.notready import closures
from quailsched.season.season import Season


def fitting_starts(season: Season, batch: Batch, first: date, end: date) -> list[date]:
    """The days from ``first`` to ``end`` (half-open) on which ``batch`` can start and fit in everywhere.

    It fits if each place of its stays can be used and holds no more than it has room for, on all days on which the
    batch takes something there. The others are the batches of ``season`` with another id: ``batch`` may be one of its
    own, or one being thought of. Raises KeyError if a stay names no place of the farm.
    """
    number = (end - first).days
    if number <= 0:
        return []
    legs = season.footprint(batch).legs
    before = min(leg.start for leg in legs)
    days = max(leg.end for leg in legs) - before + number
    starts = _ones(number)
    for place_id in dict.fromkeys(leg.stay.place_id for leg in legs):
        place = season.farm.place(place_id)
        needs = _needs(place, [run for leg in legs if leg.stay.place_id == place_id for run in leg.runs])
        room = _Room(season, place, batch.id, first.toordinal() + before, days, {need for _, _, need in needs})
        free = room.by_need()
        for start, stop, need in needs:
            starts &= _throughout(free[need], stop - start) >> (start - before)
    return [first + timedelta(days=day) for day in _bits(starts)]


def _needs(place: Place, runs: list[Run]) -> list[tuple[int, int, int]]:
    """(start, end, load) of the days on which a batch takes something in ``place``; parts that meet there add up."""
    needs = []
    for start, end in pairwise(sorted({day for run in runs for day in (run.start, run.end)})):
        there = [run for run in runs if run.start <= start < run.end]
        if any(run.eggs or run.birds for run in there):
            needs.append((start, end, sum(_load(place, run) for run in there)))
    return needs


def _load(place: Place, run: Run | Load) -> int:
    return run.eggs if place.role.holds_eggs else run.floor_cm2


class _Room:
    """The room that the others leave in a place, on ``days`` days from the ordinal ``zero``, for loads of ``needs``."""

    def __init__(self, season: Season, place: Place, without: str, zero: int, days: int, needs: set[int]) -> None:
        self._place, self._without, self._zero, self._days = place, without, zero, days
        self._needs = sorted(needs, reverse=True)
        # What others may take beside each need. A day is of class n if that leaves room for the needs from n on: class
        # 0 has room for all of them, and is not kept.
        self._limits = [room_of(place) - need for need in self._needs]
        self._classes = [0] * (len(needs) + 1)
        self._closed = 0
        for closure in closures(place):
            self._closed |= self._days_of(closure.start, closure.end)
        for spell in season.spells(place):
            if spell.end.toordinal() > zero and spell.start.toordinal() < zero + days:
                self._take(spell)

    def by_need(self) -> dict[int, int]:
        """For each need the days on which there is room for it and the place can be used."""
        full, free = self._closed, {}
        for number in range(len(self._needs) - 1, -1, -1):
            full |= self._classes[number + 1]
            free[self._needs[number]] = _ones(self._days) & ~full if self._limits[number] >= 0 else 0
        return free

    def _take(self, spell: Spell) -> None:
        """Put the days of ``spell`` into their classes. Where its bounds tell the class, it need not be cut up."""
        if self._class_of(_load(self._place, spell.most)) == 0:
            return
        others = [presence.leg for presence in spell.presences if presence.batch.id != self._without]
        most = self._class_of(sum(_load(self._place, leg.most) for leg in others))
        if most and most == self._class_of(sum(_load(self._place, leg.least) for leg in others)):
            self._classes[most] |= self._days_of(spell.start, spell.end)
        elif most:
            self._take_slices(spell.slices, has_own=len(others) < len(spell.presences))

    def _take_slices(self, slices: tuple[Slice, ...], has_own: bool) -> None:
        start, known = slices[0].start, 0
        for piece in slices:
            taken = piece.taken(self._place)
            if has_own:
                own = (share.run for share in piece.shares if share.presence.batch.id == self._without)
                taken -= sum(_load(self._place, run) for run in own)
            number = self._class_of(taken)
            if number != known:
                self._classes[known] |= self._days_of(start, piece.start)
                start, known = piece.start, number
        self._classes[known] |= self._days_of(start, slices[-1].end)

    def _class_of(self, taken: int) -> int:
        return bisect_left(self._limits, taken)

    def _days_of(self, start: date, end: date) -> int:
        first, stop = max(start.toordinal() - self._zero, 0), min(end.toordinal() - self._zero, self._days)
        return _ones(stop - first) << first if first < stop else 0


def _throughout(mask: int, days: int) -> int:
    """The days from which on ``mask`` holds for ``days`` days: each step doubles how many are looked at."""
    held = 1
    while held < days:
        step = min(held, days - held)
        mask &= mask >> step
        held += step
    return mask


def _ones(days: int) -> int:
    return (1 << days) - 1


def _bits(mask: int) -> Iterator[int]:
    return (day for day, bit in enumerate(reversed(f"{mask:b}")) if bit == "1")
