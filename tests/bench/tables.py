"""Bench of taking tables in: what becomes of a thousand rows of a hatch log and of an egg log, on a big farm."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from itertools import count

from quailsched.edits.tables.pieces import Now
from quailsched.edits.tables.rows import Fate
from quailsched.edits.tables.sheet import Options
from quailsched.edits.tables.taking import taking_of
from quailsched.farm.records import Farm
from tests.bench.big_farm import FIRST_DAY, big_farm
from tests.bench.table import Row
from tests.bench.timing import Work, repeated, timed

_ROWS = 1_000
_TODAY = FIRST_DAY + timedelta(days=_ROWS)


def tables() -> Iterator[Row]:
    """From the text to the change; the whole farm is looked at once."""
    farm = big_farm()
    days = [FIRST_DAY + timedelta(days=number - 100) for number in range(_ROWS)]
    hatches = "".join(f"New {number};{day};100;5;6;70\n" for number, day in enumerate(days))
    place = next(one for one in farm.places if one.role.is_pen).name
    eggs = "".join(f"{day};{place};{number % 40};2,5\n" for number, day in enumerate(days))
    for name, text in (
        ("a hatch log", f"batch;set on;eggs set;clear;quit;hatched\n{hatches}"),
        ("an egg log", f"day;place;eggs;feed (kg)\n{eggs}"),
    ):
        times = timed(repeated(_taking(farm, text)))
        yield times.row(f"{_ROWS} rows of {name} on a big farm: median", 2_000)


def _taking(farm: Farm, text: str) -> Work:
    numbers = count(1)
    now = Now(_TODAY, datetime(2027, 1, 1, tzinfo=UTC), lambda: f"n{next(numbers)}")

    def work() -> None:
        assert len(taking_of(farm, text, Options(), now).of(Fate.TAKEN)) == _ROWS

    return work
