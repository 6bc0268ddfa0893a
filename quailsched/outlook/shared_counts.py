"""Eggs and feed by batch. What was counted for a place is shared by the batches that are there on that day.

Fractions, so that nothing is lost or made by sharing; "" stands for what no batch can be told of.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from fractions import Fraction

from quailsched.farm.facts import Count, Sort
from quailsched.farm.ledger import standing
from quailsched.farm.records import Batch, Part, Place
from quailsched.outlook.hens import Flock
from quailsched.season.occupancy import Presence
from quailsched.season.season import Season

_Amount = Callable[[Count], int]
_Weights = Callable[[Season, Flock, Place, date], dict[str, Fraction]]


@dataclass(frozen=True, slots=True)
class Share:
    """What of one day's counts falls to one batch: eggs, or grams of feed."""

    day: date
    amount: Fraction


def eggs_by_batch(season: Season, flock: Flock) -> dict[str, list[Share]]:
    """Eggs laid by batch id, one share for each day with a count, 0 too, in order of days.

    Eggs of a place are shared by hens: those of an age to lay, or all where none should yet.
    """
    return _shared(season, flock, Sort.LAID, lambda count: count.number, _hens_in)


def feed_by_batch(season: Season, flock: Flock) -> dict[str, list[Share]]:
    """Grams fed by batch id, one share for each day, in order of days.

    Feed of a place is shared by what birds of that age and kind are expected to eat.
    """
    return _shared(season, flock, Sort.FED, lambda count: count.grams, _appetite_in)


def _shared(
    season: Season, flock: Flock, sort: Sort, amount_of: _Amount, weights_in: _Weights
) -> dict[str, list[Share]]:
    found: dict[str, dict[date, Fraction]] = {}
    for count in standing(season.farm.counts):
        if count.sort is not sort:
            continue
        for batch_id, part in _parts(season, flock, count, weights_in):
            days = found.setdefault(batch_id, {})
            days[count.day] = days.get(count.day, Fraction(0)) + amount_of(count) * part
    return {batch_id: [Share(*one) for one in sorted(days.items())] for batch_id, days in found.items()}


def _parts(season: Season, flock: Flock, count: Count, weights_in: _Weights) -> list[tuple[str, Fraction]]:
    """(batch id, which part of the count is its)."""
    if count.batch_id or not count.place_id:
        return [(count.batch_id, Fraction(1))]
    weights = weights_in(season, flock, season.farm.place(count.place_id), count.day)
    total = sum(weights.values())
    if not total:
        return [("", Fraction(1))]
    return [(batch_id, weight / total) for batch_id, weight in weights.items() if weight]


def present(season: Season, place: Place, day: date) -> list[Presence]:
    """Whose birds are in ``place`` on ``day``."""
    taken = season.slice_on(place, day)
    there = [share.presence for share in taken.shares] if taken is not None else []
    return [one for one in there if (day - one.batch.start).days >= season.days(one.batch).hatch]


def _hens_in(season: Season, flock: Flock, place: Place, day: date) -> dict[str, Fraction]:
    there = [one.batch for one in present(season, place, day) if one.part is not Part.COCKS]
    laying = [batch for batch in there if _age(season, batch, day) >= season.kind(batch).days("first_egg_day")]
    return {batch.id: Fraction(flock.hens(batch, day)) for batch in laying or there}


def _appetite_in(season: Season, flock: Flock, place: Place, day: date) -> dict[str, Fraction]:
    weights: dict[str, Fraction] = {}
    for one in present(season, place, day):
        each_mg = round(season.kind(one.batch).at("feed_g", _age(season, one.batch, day)) * 1000)
        eaten = Fraction(each_mg * flock.birds(one.batch, day, one.part))
        weights[one.batch.id] = weights.get(one.batch.id, Fraction(0)) + eaten
    return weights


def _age(season: Season, batch: Batch, day: date) -> int:
    return (day - batch.start).days - season.days(batch).hatch
