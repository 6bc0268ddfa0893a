"""What was found by age, beside the curve of the kind: lay by week, weights by day."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta

from quailsched.farm.facts import Sort
from quailsched.farm.ledger import standing
from quailsched.farm.records import Batch
from quailsched.husbandry.measures import hen_day_pct
from quailsched.outlook.batch_measures import Books


@dataclass(frozen=True, slots=True)
class Found:
    """A point of a chart: found at ``age_days``, and what the kind's curve has there. ``of`` are the hen-days or the
    birds that it rests on."""

    age_days: float
    value: float
    expected: float
    of: int


def lay_by_week(books: Books, batch: Batch) -> list[Found]:
    """Hen-day lay in % of each week of age in which eggs were counted, at the middle of the days counted."""
    season, weeks = books.season, dict[int, list[tuple[int, float, int]]]()
    hatch = season.days(batch).hatch
    for one in books.eggs.get(batch.id, ()):
        age = (one.day - batch.start).days - hatch
        weeks.setdefault(age // 7, []).append((age, float(one.amount), books.flock.hens(batch, one.day)))
    found = []
    for _, days in sorted(weeks.items()):
        hen_days = sum(hens for _, _, hens in days)
        lay, middle = hen_day_pct(sum(eggs for _, eggs, _ in days), hen_days), _mean([one[0] for one in days])
        if lay is not None:
            found.append(Found(middle, lay, season.kind(batch).at("lay_pct", middle), hen_days))
    return found


def weights(books: Books, batch: Batch) -> list[Found]:
    """Mean live weight in grams on each day of weighing."""
    season, days = books.season, dict[int, list[tuple[int, int]]]()
    born = batch.start + timedelta(days=season.days(batch).hatch)
    for one in standing(season.farm.counts_of(batch.id)):
        if one.sort is Sort.WEIGHED and one.batch_id == batch.id:
            days.setdefault((one.day - born).days, []).append((one.grams, one.number))
    return [
        Found(age, sum(g for g, _ in pairs) / number, season.kind(batch).at("weight_g", age), number)
        for age, pairs in sorted(days.items())
        if (number := sum(n for _, n in pairs))
    ]


def _mean(ages: list[int]) -> float:
    return sum(ages) / len(ages)
