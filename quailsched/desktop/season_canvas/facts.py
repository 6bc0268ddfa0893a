"""What of the season has happened: up to which day a band is counted, and days that were planned otherwise. No Qt."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date, timedelta
from typing import TYPE_CHECKING

from quailsched.desktop.season_canvas.lanes import Band, FactMark, Timed
from quailsched.farm.facts import Count, Sort
from quailsched.farm.records import Batch
from quailsched.season.season import Season

if TYPE_CHECKING:
    from quailsched.report.plan_and_fact import FactDay

_DAY = timedelta(days=1)
_BESIDE = 4 * _DAY  # a mark is wider than its day where many days are in view
# After these it is known how many there are: eggs in the machine, or birds.
_TELLS = (
    *(Sort.SET, Sort.CLEAR, Sort.QUIT, Sort.HATCHED, Sort.COUNTED, Sort.DIED, Sort.MOVED),
    *(Sort.SEXED, Sort.SOLD, Sort.PROCESSED, Sort.PARTED, Sort.JOINED),
)
_KNOWN: dict[str, tuple[tuple[Count, ...], date, tuple[FactDay, ...]]] = {}
_MOST_KNOWN = 4096
_NONE: Timed[FactMark] = Timed(())


def counted_until(season: Season, band: Band) -> date | None:
    """The end (half-open) of the days on which the numbers of ``band`` are counted, not expected; None for none."""
    counts = season.farm.counts_of(band.batch_id)
    if not counts:
        return None
    known: tuple[tuple[Count, ...], date | None] | None = band.kept.get("counted")
    if known is None or known[0] is not counts:
        known = band.kept["counted"] = counts, _last_counted(counts)
    end = known[1]
    return min(end, band.end) if end is not None and end > band.start else None


def _last_counted(counts: Sequence[Count]) -> date | None:
    from quailsched.farm.ledger import standing

    days = [one.day for one in standing(counts) if one.sort in _TELLS]
    return max(days) + _DAY if days else None


def marks_by_place(season: Season) -> Mapping[str, Timed[FactMark]]:
    """By place, what happened there on another day than was planned. Places without are left out."""
    found: dict[str, list[FactMark]] = {}
    for batch in _with_counts(season):
        for place_id, mark in _marks(season, batch):
            found.setdefault(place_id, []).append(mark)
    return {place_id: Timed(sorted(marks, key=lambda one: one.start)) for place_id, marks in found.items()}


def marks_of_batch(season: Season, batch: Batch) -> Timed[FactMark]:
    """What of ``batch`` happened on another day than was planned."""
    if not season.farm.counts_of(batch.id):
        return _NONE
    return Timed(sorted((mark for _, mark in _marks(season, batch)), key=lambda one: one.start))


def _with_counts(season: Season) -> Sequence[Batch]:
    farm = season.farm
    return [batch for batch in farm.batches if farm.counts_of(batch.id)] if farm.counts else ()


def _facts(season: Season, batch: Batch) -> Sequence[FactDay]:
    """Looked up once as long as the counts stay the same: a frame of a drag asks for those of all batches."""
    counts = season.farm.counts_of(batch.id)
    known = _KNOWN.get(batch.id)
    if known is None or known[0] is not counts or known[1] != batch.start:
        from quailsched.report.plan_and_fact import fact_days  # here, as a farm that begins has no counts

        if len(_KNOWN) > _MOST_KNOWN:
            _KNOWN.clear()
        known = _KNOWN[batch.id] = counts, batch.start, tuple(fact_days(season.farm, batch))
    return known[2]


def _marks(season: Season, batch: Batch) -> list[tuple[str, FactMark]]:
    """With the place in which each happened."""
    presences = season.presences_of(batch)
    found = []
    for fact in _facts(season, batch):
        there = [p for p in presences if p.start <= fact.day < p.end]
        place_id = fact.place_id or (there[0].place_id if there else batch.stays[0].place_id if batch.stays else "")
        start, end = min(fact.day, fact.plan) - _BESIDE, max(fact.day, fact.plan) + _DAY + _BESIDE
        found.append((place_id, FactMark(batch.id, fact.day, fact.plan, fact.words, start, end)))
    return found
