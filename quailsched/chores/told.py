"""Which chores a count says are done, whoever ticked them. Pure; marks of the keeper: ``work_out``."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

from quailsched.chores.chore import Chore
from quailsched.farm.facts import Count, Sort
from quailsched.farm.ledger import standing
from quailsched.farm.records import Batch, Part
from quailsched.season.season import Season

_ONCE = {"set": Sort.SET, "hatch": Sort.HATCHED, "sex": Sort.SEXED}
_MOVES = ("to brooder", "move out", "move", "cocks out")
_LEAVING = {"process": Sort.PROCESSED, "sold": Sort.SOLD}
_CANDLED_AROUND = 3  # days; common practice: two looks at the eggs are a week apart


def own_counts(season: Season, batch: Batch) -> list[Count]:
    """What stands of ``batch`` itself, in order of days."""
    return [count for count in standing(season.farm.counts_of(batch.id)) if count.batch_id == batch.id]


def done_on(season: Season, batch: Batch, chore: Chore, own: Sequence[Count]) -> date | None:
    """The day on which ``chore`` of ``batch`` was done by its counts ``own``; None if they do not tell."""
    if chore.kind in _ONCE:
        return chore.day if any(count.sort is _ONCE[chore.kind] for count in own) else None
    if chore.kind in _MOVES:
        moves = [count for count in own if count.sort is Sort.MOVED and count.part in (Part.ALL, chore.part)]
        is_told = any((count.day, count.place_id) == (chore.day, chore.place_id) for count in moves)
        return chore.day if is_told else None
    if chore.kind in _LEAVING:
        return _left_on(season, batch, chore, own)
    return _candled_on(season, batch, chore, own) if chore.kind == "candle" else None


def _left_on(season: Season, batch: Batch, chore: Chore, own: Sequence[Count]) -> date | None:
    """The day on which the last birds of the chore went its way; None while some are there."""
    parts = (chore.part, Part.ALL)
    went = [count.day for count in own if count.sort is _LEAVING[chore.kind] and count.part in parts]
    known_to = season.lived(batch).known_to
    if not went or known_to is None:
        return None
    return None if season.birds(batch, batch.start + timedelta(days=known_to), chore.part) else went[-1]


def _candled_on(season: Season, batch: Batch, chore: Chore, own: Sequence[Count]) -> date | None:
    """The day on which eggs were taken out about that time. Those that are left after the hatch were not candled."""
    lockdown = batch.start + timedelta(days=season.days(batch).lockdown)
    looks = [count.day for count in own if count.sort in (Sort.CLEAR, Sort.QUIT) and count.day <= lockdown]
    return next((day for day in looks if abs((day - chore.day).days) <= _CANDLED_AROUND), None)
