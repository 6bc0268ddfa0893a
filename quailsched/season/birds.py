"""How many birds are alive on a day. Whole birds, expected values; never more than there were before."""

from __future__ import annotations

import math
from functools import lru_cache

from quailsched.farm.records import Batch, Part
from quailsched.husbandry.kind import Kind
from quailsched.season.days import days_of


def whole(number: float) -> int:
    """The nearest whole bird, halves up (Python's round would go to the even neighbour)."""
    return math.floor(number + 0.5)


@lru_cache(maxsize=8192)
def _started(kind: Kind, number: int, is_eggs: bool) -> int:
    return whole(number * kind.value("hatch_of_set_pct") / 100) if is_eggs else number


def hatched(kind: Kind, batch: Batch) -> int:
    """Chicks expected to hatch, or the birds that were brought in."""
    return _started(kind, batch.number, batch.origin.is_eggs)


def split_of(kind: Kind, alive: int) -> tuple[int, int]:
    """(laying group, surplus cocks) of ``alive`` birds: half are cocks, one is kept for each hens_per_cock.

    One in two hatches a cock; an odd bird counts as a hen. The two add up to ``alive``.
    """
    cocks = alive // 2
    hens = alive - cocks
    kept = min(cocks, math.ceil(hens / kind.value("hens_per_cock"))) if hens else 0
    return hens + kept, cocks - kept


def birds_on(kind: Kind, batch: Batch, day: int, part: Part = Part.ALL) -> int:
    """Birds of ``part`` alive on ``day`` (from day 0 of the batch); 0 before they have hatched or come.

    The birds of a part are counted on the day that the batch is split and thinned by survival from there.
    """
    return whole(head_of(kind, batch, part) * share_on(kind, batch, day, part))


def birds_through(kind: Kind, batch: Batch, first: int, end: int, part: Part = Part.ALL) -> list[int]:
    """``birds_on`` for each day from ``first`` to ``end`` (half-open), counted at once."""
    head, days = head_of(kind, batch, part), days_of(kind, batch)
    from_age = _first_age(kind, batch, part)
    return [
        whole(head * _share(kind, from_age, max(day - days.hatch, from_age))) if day >= max(days.hatch, 0) else 0
        for day in range(first, end)
    ]


def head_of(kind: Kind, batch: Batch, part: Part = Part.ALL) -> int:
    """How many birds ``part`` begins with: all at the hatch or when they come, a part when the batch is split."""
    total = hatched(kind, batch)
    if part is Part.ALL:
        return total
    start_age = 0 if batch.origin.is_eggs else batch.age_days
    laying, surplus = split_of(kind, whole(total * _share(kind, start_age, _split_age(kind, batch))))
    return laying if part is Part.HENS else surplus


def share_on(kind: Kind, batch: Batch, day: int, part: Part = Part.ALL) -> float:
    """The part of ``head_of`` that is alive on ``day``; 0 before the birds have hatched or come."""
    days = days_of(kind, batch)
    if day < max(days.hatch, 0):
        return 0.0
    from_age = _first_age(kind, batch, part)
    return _share(kind, from_age, max(day - days.hatch, from_age))


def _first_age(kind: Kind, batch: Batch, part: Part) -> int:
    """The age at which ``head_of`` is counted."""
    if part is Part.ALL:
        return 0 if batch.origin.is_eggs else batch.age_days
    return _split_age(kind, batch)


def _split_age(kind: Kind, batch: Batch) -> int:
    split_day = next(s.from_day for s in batch.stays if s.part is not Part.ALL)
    return max(split_day - days_of(kind, batch).hatch, 0)


@lru_cache(maxsize=65536)
def _share(kind: Kind, start_age: int, age_days: int) -> float:
    """Of the birds alive at ``start_age``, the share that still is at ``age_days``; 0 where none were left."""
    alive = kind.at("alive", start_age)
    return kind.at("alive", age_days) / alive if alive > 0 else 0.0
