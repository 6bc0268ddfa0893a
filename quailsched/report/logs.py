"""The hatch log and the egg log of a farm, from its standing counts: rows as ``edits.tables`` reads them in."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date

from quailsched.edits.tables.headings import Column
from quailsched.farm.facts import Count, Sort
from quailsched.farm.ledger import standing, total
from quailsched.farm.records import Batch, Farm, Place

Log = tuple[tuple[str, ...], tuple[tuple[str, ...], ...]]

_OF_HATCHES = (
    *(Column.NAME, Column.KIND, Column.PLACE, Column.SET_DAY, Column.NUMBER_SET, Column.CANDLE_DAY, Column.CLEAR),
    *(Column.QUIT_DAY, Column.QUIT, Column.HATCH_DAY, Column.HATCHED, Column.NOTE),
)
_IN_EGGS = (Sort.SET, Sort.CLEAR, Sort.QUIT, Sort.HATCHED)
_OF_EGGS = (Sort.LAID, Sort.DIED, Sort.FED, Sort.FEED_BOUGHT, Sort.WEIGHED)
_EGG_HEADINGS = (
    *(Column.DAY, Column.PLACE, Column.NAME, Column.LAID, Column.DIED, f"{Column.FED} (g)", f"{Column.BOUGHT} (g)"),
    *(Column.WEIGHED, f"{Column.WEIGHT} (g)"),
)


def hatch_log(farm: Farm) -> Log:
    """A row for each batch of eggs of which anything is known: what was set, clear, quit, hatched, and the last day
    of each."""
    rows = []
    for batch in farm.batches:
        own = [count for count in standing(farm.counts_of(batch.id)) if count.batch_id == batch.id]
        if batch.origin.is_eggs and any(count.sort in _IN_EGGS for count in own):
            rows.append(_hatch(farm, batch, own))
    return tuple(map(str, _OF_HATCHES)), tuple(rows)


def _hatch(farm: Farm, batch: Batch, counts: list[Count]) -> tuple[str, ...]:
    told = {sort: [count for count in counts if count.sort is sort] for sort in _IN_EGGS}
    cells = [batch.name, batch.kind, _name(farm, batch.stays[0].place_id), batch.start.isoformat(), str(batch.number)]
    for sort in (Sort.CLEAR, Sort.QUIT, Sort.HATCHED):
        cells += [told[sort][-1].day.isoformat(), str(total(told[sort], sort))] if told[sort] else ["", ""]
    return (*cells, batch.note)


def egg_log(farm: Farm) -> Log:
    """A row for each day of each place or batch: eggs, deaths, feed, weights, each together."""
    found: dict[tuple[date, str, str], list[Count]] = {}
    for count in standing(farm.counts):
        if count.sort in _OF_EGGS:
            found.setdefault((count.day, count.place_id, count.batch_id), []).append(count)
    rows = []
    for (day, place_id, batch_id), counts in found.items():
        laid, died, weighed = (_number(counts, sort) for sort in (Sort.LAID, Sort.DIED, Sort.WEIGHED))
        fed, bought, grams = (_grams(counts, sort) for sort in (Sort.FED, Sort.FEED_BOUGHT, Sort.WEIGHED))
        where = (day.isoformat(), _name(farm, place_id), _name(farm, batch_id))
        rows.append((*where, laid, died, fed, bought, weighed, grams))
    return tuple(map(str, _EGG_HEADINGS)), tuple(rows)


def _number(counts: Iterable[Count], sort: Sort) -> str:
    own = [count.number for count in counts if count.sort is sort]
    return str(sum(own)) if own else ""


def _grams(counts: Iterable[Count], sort: Sort) -> str:
    own = [count.grams for count in counts if count.sort is sort]
    return str(sum(own)) if own else ""


def _name(farm: Farm, record_id: str) -> str:
    record = farm.find(record_id)
    return record.name if isinstance(record, Place | Batch) else ""
