"""The measures of the trade for one batch, by its counts. What was never counted has none, rather than 0.

Formulas: ``husbandry.measures``; what each means, for people: ``husbandry.definitions``; of several batches
together: ``hatch_groups``.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, timedelta
from functools import cached_property

from quailsched.farm.facts import Count, Sort
from quailsched.farm.ledger import standing, total
from quailsched.farm.records import Batch
from quailsched.husbandry import measures
from quailsched.outlook.gain import gain_of
from quailsched.outlook.hens import Flock
from quailsched.outlook.shared_counts import Share, eggs_by_batch, feed_by_batch
from quailsched.season.birds import hatched
from quailsched.season.season import Season


@dataclass(frozen=True, slots=True)
class Measured:
    """A measure with what it was worked out from: ``part`` of ``whole``, or ``part`` for ``whole``.

    Eggs, birds, grams or hen-days, as the formula has them; of hens housed, ``whole`` are the hens and ``days`` the
    days on which eggs were counted.
    """

    key: str
    value: float
    part: float
    whole: float
    days: int = 0


Measures = Mapping[str, Measured]


@dataclass(frozen=True, slots=True)
class Lay:
    """Eggs of one batch on the ``days`` with a count, from ``first`` to ``last``; ``hen_days`` are of those days."""

    eggs: float
    days: int
    hen_days: int
    hens_housed: int
    first: date
    last: date


def measured(key: str, value: float | None, part: float, whole: float, days: int = 0) -> dict[str, Measured]:
    """The measure under its key; nothing where there is no value."""
    return {} if value is None else {key: Measured(key, value, part, whole, days)}


@dataclass(frozen=True, eq=False)
class Books:
    """What the counts of a farm add up to, till ``today``. Nothing is worked out before it is asked for."""

    season: Season
    today: date

    @cached_property
    def flock(self) -> Flock:
        return Flock(self.season)

    @cached_property
    def eggs(self) -> dict[str, list[Share]]:
        return eggs_by_batch(self.season, self.flock)

    @cached_property
    def feed(self) -> dict[str, list[Share]]:
        return feed_by_batch(self.season, self.flock)

    @cached_property
    def hours(self) -> dict[str, float]:
        """Hours worked by batch id, "" for those of no batch."""
        found: dict[str, float] = {}
        for count in standing(self.season.farm.counts):
            if count.sort is Sort.HOURS:
                found[count.batch_id] = found.get(count.batch_id, 0.0) + count.hours
        return found

    def feed_g(self, batch_id: str) -> float | None:
        """Feed of a batch in grams; None if none was recorded."""
        return float(sum(one.amount for one in self.feed[batch_id])) if batch_id in self.feed else None

    def eggs_laid(self, batch_id: str) -> float | None:
        """Eggs of a batch; None if none were counted."""
        return float(sum(one.amount for one in self.eggs[batch_id])) if batch_id in self.eggs else None

    def of(self, batch: Batch) -> Measures:
        """The measures of ``batch`` by key, those that its counts tell."""
        own = [one for one in standing(self.season.farm.counts_of(batch.id)) if one.batch_id == batch.id]
        found = {**hatch_measures(HatchCounts.of(batch, own)), **self._livability(batch, own, self.today)}
        if lay := self.lay(batch):
            found |= measured("hen_day", measures.hen_day_pct(lay.eggs, lay.hen_days), lay.eggs, lay.hen_days)
            housed = measures.hen_housed_pct(lay.eggs, lay.hens_housed, lay.days)
            found |= measured("hen_housed", housed, lay.eggs, lay.hens_housed, lay.days)
            found |= self._feed_per_dozen(batch, lay)
        return {**found, **self._feed_conversion(batch), **_dressing(own)}

    def livability(self, batch: Batch, day: date) -> Measured | None:
        """Of the birds that hatched, came or joined, those that had not died by the end of ``day``."""
        own = [one for one in standing(self.season.farm.counts_of(batch.id)) if one.batch_id == batch.id]
        return self._livability(batch, own, day).get("livability")

    def _livability(self, batch: Batch, own: list[Count], day: date) -> dict[str, Measured]:
        till = [one for one in own if one.day <= day]
        lived = self.flock.lived(batch)
        was_looked_at = any(one.sort in (Sort.DIED, Sort.COUNTED, Sort.SEXED) for one in till)
        if not was_looked_at or (batch.origin.is_eggs and lived.hatched is None):
            return {}
        counts = standing(self.season.farm.counts_of(batch.id))
        joined = [one for one in counts if one.to_batch_id == batch.id and one.sort is Sort.JOINED and one.day <= day]
        started = hatched(self.season.kind(batch), batch, lived) + total(joined, Sort.JOINED)
        died = total(till, Sort.DIED)
        return measured("livability", measures.livability_pct(started, died), started - died, started)

    def lay(self, batch: Batch) -> Lay | None:
        """What the batch laid; None if none of its eggs were counted."""
        if not (shares := self.eggs.get(batch.id)):
            return None
        first, last = shares[0].day, shares[-1].day
        hen_days = sum(self.flock.hens(batch, one.day) for one in shares)
        housed = self.flock.hens(batch, self._housed(batch, first))
        return Lay(float(sum(one.amount for one in shares)), len(shares), hen_days, housed, first, last)

    def _housed(self, batch: Batch, day: date) -> date:
        """When the hens went into the place where they are on ``day``: that day itself if they are nowhere."""
        there = [one for one in self.season.presences_of(batch) if one.start <= day < one.end]
        born = batch.start + timedelta(days=max(self.season.days(batch).hatch, 0))
        return max(min((one.start for one in there), default=day), born)

    def _feed_per_dozen(self, batch: Batch, lay: Lay) -> dict[str, Measured]:
        fed = [one.amount for one in self.feed.get(batch.id, ()) if lay.first <= one.day <= lay.last]
        hen_days = self._hen_days(batch, lay) if fed else 0
        if not hen_days:
            return {}
        feed_g = float(sum(fed)) * lay.hen_days / hen_days
        return measured("feed_per_dozen", measures.feed_per_dozen_g(feed_g, lay.eggs), feed_g, lay.eggs)

    def _hen_days(self, batch: Batch, lay: Lay) -> int:
        """Of all days from the first on which eggs were counted to the last."""
        days = (lay.last - lay.first).days + 1
        if days == lay.days:
            return lay.hen_days
        return sum(self.flock.hens(batch, lay.first + timedelta(days=n)) for n in range(days))

    def _feed_conversion(self, batch: Batch) -> dict[str, Measured]:
        gained = gain_of(self.season, batch)
        fed = [one for one in self.feed.get(batch.id, ()) if gained is not None and one.day <= gained[1]]
        if gained is None or not fed or gained[0] <= 0:
            return {}
        feed_g = float(sum(one.amount for one in fed))
        return measured("feed_conversion", measures.feed_conversion(feed_g, gained[0]), feed_g, gained[0])


@dataclass(frozen=True, slots=True)
class HatchCounts:
    """Eggs set, and what is known of them: clear ones, and chicks; None for what was never counted."""

    set: int
    clear: int | None
    hatched: int | None

    @classmethod
    def of(cls, batch: Batch, own: list[Count]) -> HatchCounts | None:
        """By the standing counts of ``batch``; None for birds that came as birds."""
        if not batch.origin.is_eggs:
            return None
        sorts = {one.sort for one in own}
        return cls(
            batch.number,
            total(own, Sort.CLEAR) if Sort.CLEAR in sorts else None,
            total(own, Sort.HATCHED) if Sort.HATCHED in sorts else None,
        )


def hatch_measures(*counts: HatchCounts | None) -> dict[str, Measured]:
    """Fertility, hatch of fertile and hatch of set of batches together, each of those batches that tell it."""
    found: dict[str, Measured] = {}
    known = [one for one in counts if one is not None]
    if candled := [(one.set, one.clear) for one in known if one.clear is not None]:
        eggs, clear = sum(one[0] for one in candled), sum(one[1] for one in candled)
        found |= measured("fertility", measures.fertility_pct(eggs, clear), eggs - clear, eggs)
    both = [(one.set - one.clear, one.hatched) for one in known if one.clear is not None and one.hatched is not None]
    if both:
        fertile, chicks = sum(one[0] for one in both), sum(one[1] for one in both)
        found |= measured("hatch_of_fertile", measures.hatch_of_fertile_pct(fertile, chicks), chicks, fertile)
    if hatches := [(one.set, one.hatched) for one in known if one.hatched is not None]:
        eggs, chicks = sum(one[0] for one in hatches), sum(one[1] for one in hatches)
        found |= measured("hatch_of_set", measures.hatch_of_set_pct(eggs, chicks), chicks, eggs)
    return found


def _dressing(own: list[Count]) -> dict[str, Measured]:
    weighed = [one for one in own if one.sort is Sort.PROCESSED and one.grams and one.dressed_g]
    live, dressed = sum(one.grams for one in weighed), sum(one.dressed_g for one in weighed)
    return measured("dressing", measures.dressing_pct(live, dressed), dressed, live)
