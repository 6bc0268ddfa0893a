"""What a batch gained in live weight, by weighings and by the scales of the day that birds left."""

from __future__ import annotations

from datetime import date, timedelta

from quailsched.farm.facts import Count, Sort
from quailsched.farm.ledger import standing
from quailsched.farm.records import Batch
from quailsched.season.birds import hatched
from quailsched.season.season import Season

_LEAVE = (Sort.PROCESSED, Sort.SOLD, Sort.PARTED, Sort.JOINED)
_FRESH = 1  # days after the hatch, or since they came, in which a weighing tells what they weighed at the start


def gain_of(season: Season, batch: Batch) -> tuple[float, date] | None:
    """(grams gained, the day to which), None where weights do not tell: birds joined, or left before any weighing.

    Live weight of those that left, and of those alive at the last weighing, less the weight of all at the start.
    Birds that died bring nothing. The day is that of the last weighing, or that on which the last bird left.
    """
    counts = standing(season.farm.counts_of(batch.id))
    if any(one.sort is Sort.JOINED and one.to_batch_id == batch.id for one in counts):
        return None
    own = [one for one in counts if one.batch_id == batch.id]
    weighed = [one for one in own if one.sort is Sort.WEIGHED]
    left = [one for one in own if one.sort in _LEAVE]
    last = max((one.day for one in (*weighed, *left)), default=None)
    if last is None:
        return None
    if season.birds(batch, last):  # some are still there: what they weigh is known on days of weighing alone
        if not weighed:
            return None
        last = weighed[-1].day
    out = _weight_out([one for one in left if one.day <= last], weighed)
    alive = season.birds(batch, last)
    each = mean_weight(weighed, last)
    if out is None or (alive and each is None):
        return None
    return out + alive * (each or 0.0) - _weight_in(season, batch, weighed), last


def mean_weight(weighed: list[Count], day: date) -> float | None:
    """Grams a bird by the last weighing on or before ``day``, all of that day together."""
    days = [one.day for one in weighed if one.day <= day]
    if not days:
        return None
    of_day = [one for one in weighed if one.day == max(days)]
    return sum(one.grams for one in of_day) / sum(one.number for one in of_day)


def _weight_out(left: list[Count], weighed: list[Count]) -> float | None:
    total = 0.0
    for one in left:
        each = mean_weight(weighed, one.day)
        if one.sort is Sort.PROCESSED and one.grams:
            total += one.grams
        elif each is None:
            return None
        else:
            total += one.number * each
    return total


def _weight_in(season: Season, batch: Batch, weighed: list[Count]) -> float:
    kind, lived = season.kind(batch), season.lived(batch)
    born = batch.start + timedelta(days=max(season.days(batch).hatch, 0))
    each = mean_weight(weighed, born + timedelta(days=_FRESH))
    at_start = kind.at("weight_g", 0 if batch.origin.is_eggs else batch.age_days) if each is None else each
    return hatched(kind, batch, lived) * at_start
