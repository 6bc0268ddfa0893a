"""What one batch takes, place by place and day by day, counted from its day 0.

Compiled once for a batch's contents and kept, so that moving the batch costs nothing here.
"""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import date
from functools import lru_cache
from itertools import groupby
from typing import NamedTuple

from quailsched.farm.records import Batch, Role, Stay
from quailsched.husbandry.kind import Kind
from quailsched.quick import dataclass
from quailsched.season.birds import birds_through
from quailsched.season.days import Days, days_of, end_of
from quailsched.season.lived import NOTHING, Lived

_ANY_DAY = date(2000, 1, 1)


class Load(NamedTuple):
    """What is taken: egg places, birds, square centimetres."""

    eggs: int
    birds: int
    floor_cm2: int


@dataclass(frozen=True, slots=True)
class Run:
    """Days ``start`` to ``end`` (half-open) on which a batch takes the same.

    ``birds`` on a floor take ``each_cm2`` each; ``eggs`` take one egg place each. Chicks that still sit
    in the hatcher take the egg places of their eggs, so there both may be more than 0.
    """

    start: int
    end: int
    eggs: int
    birds: int
    each_cm2: int

    @property
    def floor_cm2(self) -> int:
        return self.birds * self.each_cm2


@dataclass(frozen=True, slots=True)
class Leg:
    """One stay with its end worked out, what it takes, and the number of it in the batch's stays.

    ``most`` and ``least`` are what it takes at most and at least on any of its days.
    """

    stay: Stay
    index: int
    start: int
    end: int
    runs: tuple[Run, ...]
    most: Load
    least: Load

    def run_on(self, day: int) -> Run | None:
        return next((run for run in self.runs if run.start <= day < run.end), None)


@dataclass(frozen=True, slots=True, eq=False, weakref_slot=True)
class Footprint:
    """Batches with the same contents share one: it is compared by identity."""

    days: Days
    legs: tuple[Leg, ...]


@lru_cache(maxsize=65536)
def _each_cm2(kind: Kind, age_days: int) -> int:
    return math.ceil(kind.at("floor_cm2", age_days))


def _runs(kind: Kind, batch: Batch, stay: Stay, days: Days, egg_place: bool, lived: Lived) -> tuple[Run, ...]:
    end = end_of(stay, days)
    birds = birds_through(kind, batch, stay.from_day, end, stay.part, lived)
    loads = []
    for day, there in zip(range(stay.from_day, end), birds, strict=True):
        left = batch.number - sum(n for at, n in lived.taken if at <= day) if lived.taken else batch.number
        eggs = max(left, 0) if batch.origin.is_eggs and (egg_place or day < days.hatch) else 0
        each = 0 if egg_place or day < days.hatch else _each_cm2(kind, day - days.hatch)
        loads.append((eggs, there, each))
    runs, day = [], stay.from_day
    for load, same in groupby(loads):
        start, day = day, day + sum(1 for _ in same)
        runs.append(Run(start, day, *load))
    return tuple(runs)


@lru_cache(maxsize=4096)
def _footprint(kind: Kind, plain: Batch, roles: tuple[Role, ...], lived: Lived) -> Footprint:
    days = days_of(kind, plain, lived)
    legs = []
    for index, stay in enumerate(plain.stays):
        runs = _runs(kind, plain, stay, days, roles[index].holds_eggs, lived)
        loads = [Load(run.eggs, run.birds, run.floor_cm2) for run in runs]
        most, least = Load(*map(max, zip(*loads, strict=True))), Load(*map(min, zip(*loads, strict=True)))
        legs.append(Leg(stay, index, stay.from_day, end_of(stay, days), runs, most, least))
    return Footprint(days, tuple(legs))


def footprint_of(kind: Kind, batch: Batch, roles: tuple[Role, ...], lived: Lived = NOTHING) -> Footprint:
    """The footprint of ``batch``; ``roles`` are those of the places of its stays, in their order."""
    # What does not change the footprint is blanked, so that a moved or renamed batch hits the cache.
    plain = replace(batch, id="", name="", note="", start=_ANY_DAY, egg_age_days=0, from_ids=())
    return _footprint(kind, plain, roles, lived)
