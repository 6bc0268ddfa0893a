"""Benches of the planner: ways out of a clash, and the landscape of the Next set view."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from itertools import count
from statistics import median

from quailsched.farm.example import example_farm
from quailsched.farm.records import Farm
from quailsched.planner.next_set import next_sets_of
from quailsched.planner.ways_out import look_for_ways_out
from quailsched.season.clash import Clash
from quailsched.season.clashes import Checked, checked
from quailsched.season.season import Season
from tests.bench.big_farm import FIRST_DAY, big_farm
from tests.bench.table import Row
from tests.bench.timing import Work, repeated, timed

_CLASHES = 12
_EXAMPLE_DAY = date(2027, 4, 6)
_BIG_DAY = FIRST_DAY + timedelta(days=3_600)  # towards the end: before, the farm is too full for any eggs to be set
_LANDSCAPE_DAYS = 120


def _example() -> Farm:
    numbers = count(1)
    return example_farm(_EXAMPLE_DAY, lambda: f"r{next(numbers)}")


def ways() -> Iterator[Row]:
    """All ways out of one clash, for a dozen clashes spread over each farm."""
    for name, farm, today in (("the example farm", _example(), _EXAMPLE_DAY), ("a big farm", big_farm(), FIRST_DAY)):
        now = checked(Season(farm))
        clashes = now.since(today)
        some = clashes[:: max(len(clashes) // _CLASHES, 1)][:_CLASHES]
        times = timed([_search(now, clash, today) for clash in some])
        yield times.row(f"ways out of a clash of {name}: median", 300)
        yield times.row(f"the same: longest of {len(some)}", 300, of=max, floor_of=median)


def _search(now: Checked, clash: Clash, today: date) -> Work:
    return lambda: look_for_ways_out(now, clash, today)


def landscape() -> Iterator[Row]:
    """How many eggs can go in on each of 120 days."""
    for name, farm, today, goal_ms in (
        ("the example farm", _example(), _EXAMPLE_DAY, 50),
        ("a big farm", big_farm(), _BIG_DAY, 300),
    ):
        times = timed(repeated(_landscape(checked(Season(farm)), today), least=1))
        yield times.row(f"{_LANDSCAPE_DAYS} days of next sets of {name}: median", goal_ms)


def _landscape(now: Checked, today: date) -> Work:
    return lambda: next_sets_of(now, "coturnix", today, _LANDSCAPE_DAYS)
