"""What one batch takes, place by place and day by day, counted from its day 0.

Compiled once for a batch's contents and kept, so that moving the batch costs nothing here.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from datetime import date
from functools import lru_cache

from quailsched.farm.records import Batch, Stay
from quailsched.husbandry.kind import Kind
from quailsched.season.birds import birds_on
from quailsched.season.days import Days, days_of, end_of

_ANY_DAY = date(2000, 1, 1)


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
    """One stay with its end worked out, what it takes, and the number of it in the batch's stays."""

    stay: Stay
    index: int
    start: int
    end: int
    runs: tuple[Run, ...]

    def run_on(self, day: int) -> Run | None:
        return next((run for run in self.runs if run.start <= day < run.end), None)


@dataclass(frozen=True, slots=True)
class Footprint:
    days: Days
    legs: tuple[Leg, ...]


@lru_cache(maxsize=65536)
def _each_cm2(kind: Kind, age_days: int) -> int:
    return math.ceil(kind.at("floor_cm2", age_days))


def _runs(kind: Kind, batch: Batch, stay: Stay, days: Days, egg_place: bool) -> tuple[Run, ...]:
    runs: list[Run] = []
    for day in range(stay.from_day, end_of(stay, days)):
        birds = birds_on(kind, batch, day, stay.part)
        eggs = batch.number if batch.origin.is_eggs and (egg_place or day < days.hatch) else 0
        each = 0 if egg_place or day < days.hatch else _each_cm2(kind, day - days.hatch)
        last = runs[-1] if runs else None
        if last and (last.eggs, last.birds, last.each_cm2) == (eggs, birds, each):
            runs[-1] = replace(last, end=day + 1)
        else:
            runs.append(Run(day, day + 1, eggs, birds, each))
    return tuple(runs)


@lru_cache(maxsize=4096)
def _footprint(kind: Kind, plain: Batch, egg_places: frozenset[str]) -> Footprint:
    days = days_of(kind, plain)
    legs = tuple(
        Leg(stay, i, stay.from_day, end_of(stay, days), _runs(kind, plain, stay, days, stay.place_id in egg_places))
        for i, stay in enumerate(plain.stays)
    )
    return Footprint(days, legs)


def footprint_of(kind: Kind, batch: Batch, egg_places: frozenset[str]) -> Footprint:
    """The footprint of ``batch``; ``egg_places`` are the ids of the places that hold eggs."""
    # What does not change the footprint is blanked, so that a moved or renamed batch hits the cache.
    plain = replace(batch, id="", name="", note="", start=_ANY_DAY, egg_age_days=0)
    return _footprint(kind, plain, egg_places)
