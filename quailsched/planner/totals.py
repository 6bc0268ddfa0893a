"""What a plan brings from a day on, in whole expected birds: chicks, birds sold and processed, first eggs, hens in lay.

Promises and money are not here: no record holds them.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import date, timedelta

from quailsched.farm.records import Batch, Leaving, Origin, Part
from quailsched.quick import dataclass
from quailsched.season.birds import whole
from quailsched.season.footprint import Leg
from quailsched.season.season import Season

MONTHS = 12


@dataclass(frozen=True, slots=True)
class Totals:
    """Birds, all of them on ``since`` or later.

    ``first_eggs`` by batch id; ``hens_in_lay`` by the first day of each of the twelve months that follow.
    """

    since: date
    hatched: int
    brought_in: int
    sold: int
    processed: int
    first_eggs: Mapping[str, date]
    hens_in_lay: Mapping[date, int]


def totals_of(season: Season, since: date) -> Totals:
    """What the plan of ``season`` brings from ``since`` on."""
    firsts = {batch.id: day for batch in season.farm.batches if (day := first_eggs_on(season, batch)) is not None}
    return Totals(
        since=since,
        hatched=sum(_hatched(season, batch, since) for batch in season.farm.batches if batch.origin.is_eggs),
        brought_in=sum(b.number for b in season.farm.batches if b.origin is Origin.BOUGHT_BIRDS and b.start >= since),
        sold=_left(season, since, Leaving.SOLD),
        processed=_left(season, since, Leaving.PROCESSED),
        first_eggs={batch_id: day for batch_id, day in firsts.items() if day >= since},
        hens_in_lay={day: hens_in_lay(season, day) for day in firsts_of_months(since, MONTHS)},
    )


def firsts_of_months(since: date, number: int) -> Iterator[date]:
    """The first day of each of the ``number`` months after that of ``since``."""
    day = since.replace(day=1)
    for _ in range(number):
        day = (day + timedelta(days=32)).replace(day=1)
        yield day


def first_eggs_on(season: Season, batch: Batch) -> date | None:
    """The day on which hens of ``batch`` begin to lay; None if no hens are kept so long."""
    days = season.days(batch)
    is_kept = any(leg.start <= days.first_egg < leg.end for leg in _laying_legs(season, batch))
    return batch.start + timedelta(days=days.first_egg) if is_kept else None


def hens_in_lay(season: Season, day: date) -> int:
    """Hens on ``day`` that are old enough to lay, without the cocks that are kept with them."""
    return sum(_hens_of(season, batch, day) for batch in season.farm.batches)


def _laying_legs(season: Season, batch: Batch) -> list[Leg]:
    return [leg for leg in season.footprint(batch).legs if leg.stay.part is not Part.COCKS]


def _hatched(season: Season, batch: Batch, since: date) -> int:
    hatch = batch.start + timedelta(days=season.days(batch).hatch)
    return season.birds(batch, hatch) if hatch >= since else 0


def _left(season: Season, since: date, leaving: Leaving) -> int:
    """Birds that leave in one way, as many as are alive on their last day."""
    found = 0
    for batch in season.farm.batches:
        for leg in season.footprint(batch).legs:
            out = batch.start + timedelta(days=leg.end)
            if leg.stay.leaving is leaving and out >= since:
                found += season.birds(batch, out - timedelta(days=1), leg.stay.part)
    return found


def _hens_of(season: Season, batch: Batch, day: date) -> int:
    number = (day - batch.start).days
    if number < season.days(batch).first_egg:
        return 0
    leg = next((leg for leg in _laying_legs(season, batch) if leg.start <= number < leg.end), None)
    if leg is None:
        return 0
    birds = season.birds(batch, day, leg.stay.part)
    if leg.stay.part is Part.ALL:
        return _hens_among(birds)
    # The laying group has lost hens and cocks alike since the day on which it was put together.
    split = batch.start + timedelta(days=next(s.from_day for s in batch.stays if s.part is not Part.ALL))
    group = season.birds(batch, split, Part.HENS)
    return whole(birds * _hens_among(season.birds(batch, split)) / group) if group else 0


def _hens_among(birds: int) -> int:
    """One in two hatches a cock; an odd bird counts as a hen (``season.birds.split_of``)."""
    return birds - birds // 2
