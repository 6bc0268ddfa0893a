"""How many birds are alive on a day. Whole birds: counted ones as far as counts reach, expected ones after that.

Never below zero, and never more than there were before unless some joined.
"""

from __future__ import annotations

import math
from functools import lru_cache

from quailsched.farm.records import Batch, Part
from quailsched.husbandry.kind import Kind
from quailsched.season.days import days_of
from quailsched.season.lived import NOTHING, Lived


def whole(number: float) -> int:
    """The nearest whole bird, halves up (Python's round would go to the even neighbour)."""
    return math.floor(number + 0.5)


@lru_cache(maxsize=8192)
def _started(kind: Kind, number: int, is_eggs: bool) -> int:
    return whole(number * kind.value("hatch_of_set_pct") / 100) if is_eggs else number


def hatched(kind: Kind, batch: Batch, lived: Lived = NOTHING) -> int:
    """Chicks that hatched, or are expected to, or the birds that came.

    Once clear eggs are out, the others hatch as fertile ones do; never more than are left.
    """
    if lived.hatched is not None:
        return lived.hatched
    if not batch.origin.is_eggs or not lived.taken:
        return _started(kind, batch.number, batch.origin.is_eggs)
    left = max(batch.number - lived.eggs_taken, 0)
    if lived.is_candled:
        return whole(left * kind.value("hatch_of_fertile_pct") / 100)
    return min(left, _started(kind, batch.number, True))


def split_of(kind: Kind, alive: int) -> tuple[int, int]:
    """(laying group, surplus cocks) of ``alive`` birds: half are cocks, one is kept for each hens_per_cock.

    One in two hatches a cock; an odd bird counts as a hen. The two add up to ``alive``.
    """
    cocks = alive // 2
    return _groups(kind, alive - cocks, cocks)


def _groups(kind: Kind, hens: int, cocks: int) -> tuple[int, int]:
    """(laying group, surplus cocks) of so many hens and cocks."""
    kept = min(cocks, math.ceil(hens / kind.value("hens_per_cock"))) if hens else 0
    return hens + kept, cocks - kept


def birds_on(kind: Kind, batch: Batch, day: int, part: Part = Part.ALL, lived: Lived = NOTHING) -> int:
    """Birds of ``part`` alive on ``day`` (from day 0 of the batch); 0 before they have hatched or come.

    The birds of a part are counted on the day that the batch is split and thinned by survival from there.
    """
    return birds_through(kind, batch, day, day + 1, part, lived)[0]


def birds_through(
    kind: Kind, batch: Batch, first: int, end: int, part: Part = Part.ALL, lived: Lived = NOTHING
) -> list[int]:
    """``birds_on`` for each day from ``first`` to ``end`` (half-open), counted at once."""
    days = days_of(kind, batch, lived)
    born = max(days.hatch, 0)
    if lived.known_to is None and not lived.gone:
        head, from_age = head_of(kind, batch, part, lived), _first_age(kind, batch, part, lived)
        return [
            whole(head * _share(kind, from_age, max(day - days.hatch, from_age))) if day >= born else 0
            for day in range(first, end)
        ]
    return [_counted(kind, batch, day, part, lived) if day >= born else 0 for day in range(first, end)]


def _counted(kind: Kind, batch: Batch, day: int, part: Part, lived: Lived) -> int:
    """Birds of ``part`` on ``day`` of a batch that has been counted."""
    hatch = days_of(kind, batch, lived).hatch
    known = _known_to(kind, batch, lived)
    till = min(day, known)
    if part is Part.ALL:
        there = hatched(kind, batch, lived) - lived.less_by(till)
    else:
        laying, surplus = _parts_on(kind, batch, till, lived)
        there = laying if part is Part.HENS else surplus
    return whole(max(there, 0) * _share(kind, max(known - hatch, 0), max(day, known) - hatch))


def _known_to(kind: Kind, batch: Batch, lived: Lived) -> int:
    """The last day on which the number of birds is known: that of the hatch, or when they came, at least."""
    born = max(days_of(kind, batch, lived).hatch, 0)
    return born if lived.known_to is None else max(lived.known_to, born)


@lru_cache(maxsize=65536)
def _parts_on(kind: Kind, batch: Batch, day: int, lived: Lived) -> tuple[int, int]:
    """(laying group, surplus cocks) on ``day``, which is not after the last count.

    All of them are shared out as they were found at sexing, or by halves; losses that are told of one group are its
    own, however early, and others are shared until the groups part. The two add up to all birds.
    """
    sexed, split = -1 if lived.sexed is None else lived.sexed.day, _split_day(batch)
    of_all = [at <= sexed or (part is Part.ALL and at <= split) for at, part, _ in lived.gone]
    past = [(gone, shared) for gone, shared in zip(lived.gone, of_all, strict=True) if gone[0] <= day]
    out = hatched(kind, batch, lived) - sum(number for at, number in lived.late if at > day)
    together = out - sum(number for (_, _, number), is_of_all in past if is_of_all)
    groups = _shared(kind, max(together, 0), lived)
    for (_, part, number), is_of_all in past:
        if not is_of_all:
            groups = _without(groups, part, number)
    return groups


def _without(groups: tuple[int, int], part: Part, number: int) -> tuple[int, int]:
    """(laying group, surplus cocks) without ``number`` birds of ``part``; what one group lacks, the other has lost.

    Of birds that nobody told the group of, the laying group loses; it also gains those that joined.
    """
    laying, surplus = groups
    if number < 0:
        return laying - number, surplus
    if part is Part.COCKS:
        cocks = min(number, surplus)
        return max(laying - (number - cocks), 0), surplus - cocks
    hens = min(number, laying)
    return laying - hens, max(surplus - (number - hens), 0)


def by_the_books(kind: Kind, batch: Batch, day: int, part: Part, lived: Lived) -> int:
    """Birds of ``part`` that should be there on ``day`` by what was counted, none having died unseen."""
    if part is not Part.ALL and any(stay.part is not Part.ALL for stay in batch.stays):
        return _parts_on(kind, batch, day, lived)[0 if part is Part.HENS else 1]
    return max(hatched(kind, batch, lived) - lived.less_by(day), 0)


def _shared(kind: Kind, total: int, lived: Lived) -> tuple[int, int]:
    """(laying group, surplus cocks) of ``total`` birds, in the proportion found at sexing if they were sexed."""
    found = lived.sexed
    if found is None or not (all_found := found.hens + found.cocks + found.unsure):
        return split_of(kind, total)
    surplus = whole(total * _groups(kind, found.hens + found.unsure, found.cocks)[1] / all_found)
    return total - surplus, surplus


def head_of(kind: Kind, batch: Batch, part: Part = Part.ALL, lived: Lived = NOTHING) -> int:
    """How many birds ``part`` begins with: all at the hatch or when they come, a part when the batch is split."""
    total = hatched(kind, batch, lived)
    if part is Part.ALL:
        return total
    start_age = 0 if batch.origin.is_eggs else batch.age_days
    at_split = whole(total * _share(kind, start_age, _split_age(kind, batch, lived)))
    laying, surplus = _shared(kind, at_split, lived)
    return laying if part is Part.HENS else surplus


def share_on(kind: Kind, batch: Batch, day: int, part: Part = Part.ALL) -> float:
    """The part of ``head_of`` that is alive on ``day``, nothing being counted; 0 before they have hatched or come."""
    days = days_of(kind, batch)
    if day < max(days.hatch, 0):
        return 0.0
    from_age = _first_age(kind, batch, part, NOTHING)
    return _share(kind, from_age, max(day - days.hatch, from_age))


def _first_age(kind: Kind, batch: Batch, part: Part, lived: Lived) -> int:
    """The age at which ``head_of`` is counted."""
    if part is Part.ALL:
        return 0 if batch.origin.is_eggs else batch.age_days
    return _split_age(kind, batch, lived)


def _split_day(batch: Batch) -> int:
    return next(s.from_day for s in batch.stays if s.part is not Part.ALL)


def _split_age(kind: Kind, batch: Batch, lived: Lived) -> int:
    return max(_split_day(batch) - days_of(kind, batch, lived).hatch, 0)


@lru_cache(maxsize=65536)
def _share(kind: Kind, start_age: int, age_days: int) -> float:
    """Of the birds alive at ``start_age``, the share that still is at ``age_days``; 0 where none were left."""
    alive = kind.at("alive", start_age)
    return kind.at("alive", age_days) / alive if alive > 0 else 0.0
