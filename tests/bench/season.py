"""Benches of the season: moving a batch, looking at everything, days that fit, memory, and the plain recount."""

from __future__ import annotations

import tracemalloc
from collections.abc import Iterator
from datetime import timedelta
from multiprocessing import get_context
from random import Random
from statistics import median
from time import perf_counter

from hypothesis import HealthCheck, given, settings

from quailsched.farm.records import Batch, Farm
from quailsched.season.clashes import Checked, checked, clashes_of
from quailsched.season.fits import fitting_starts
from quailsched.season.season import Season
from tests.bench.big_farm import BATCHES, FIRST_DAY, YEARS, big_farm
from tests.bench.recount import broken_days, days_of_clashes
from tests.bench.table import Row
from tests.bench.timing import Times, Work, p99, repeated, timed
from tests.strategies import farms

_DAYS = YEARS * 365
_MOVES = 2_000
_FARMS = 1_000
_LEAST_FASTER = 200


def move() -> Iterator[Row]:
    """A batch moved by a day, and every clash of the farm that this makes."""
    times = _moves(big_farm())
    yield times.row("move a batch by a day: median", 1)
    yield times.row("move a batch by a day: 99th of 100", 4, p99)


def _moves(farm: Farm) -> Times:
    """Moves of one batch after the other, each by a day to or fro, on the farm that the one before left."""
    rng = Random(2)
    ids = [batch.id for batch in farm.batches]
    found = checked(Season(farm))
    assert found.clashes

    def moved(batch_id: str, days: int) -> Work:
        def work() -> None:
            nonlocal found
            farm = found.season.farm
            batch = farm.batch(batch_id)
            found = found.after(farm.with_records(set(), (batch.moved_to(batch.start + timedelta(days=days)),)))
            assert found.clashes

        return work

    times = timed(moved(rng.choice(ids), rng.choice((-1, 1))) for _ in range(_MOVES))
    assert found.clashes == checked(Season(found.season.farm)).clashes
    return times


def fits() -> Iterator[Row]:
    """All start days of ten years on which a batch fits in, batch by batch."""
    season = Season(big_farm())
    assert checked(season).clashes
    works = [_fit(season, season.farm.batches[number]) for number in range(0, BATCHES, 5)]
    yield timed(works).row(f"fits in on which of {_DAYS:,} days: median", 5)


def _fit(season: Season, batch: Batch) -> Work:
    return lambda: fitting_starts(season, batch, FIRST_DAY, FIRST_DAY + timedelta(days=_DAYS))


def check() -> Iterator[Row]:
    """Every clash from nothing; footprints are compiled already."""
    farm = big_farm()

    def work() -> Checked:
        found = checked(Season(farm))
        assert found.clashes
        return found

    work()
    yield timed(repeated(work)).row(f"look at all of {BATCHES} batches: median", 30)


def memory() -> Iterator[Row]:
    """What a season that has been looked at holds, footprints and all; no goal. In a process of its own: fresh."""
    with get_context("spawn").Pool(1) as pool:
        held, most = pool.apply(_memory)
    yield Row(f"memory of {BATCHES} batches looked at", f"{held / 1e6:.1f} MB")
    yield Row("the same: most while looking", f"{most / 1e6:.1f} MB")


def _memory() -> tuple[int, int]:
    """(bytes held after a look at everything, most held at once)."""
    farm = big_farm()
    clashes_of(Season(big_farm(batches=1)))  # reads the handbook, which any farm needs
    tracemalloc.start()
    found = checked(Season(farm))
    assert found.clashes
    held = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    return held


def recount() -> Iterator[Row]:
    """A move against a plain recount of every day, and the same clashes from both on random farms."""
    farm = big_farm()
    move_ms = median(_moves(farm).work)
    start = perf_counter()
    plain = broken_days(farm)
    recount_ms = (perf_counter() - start) * 1000
    assert plain == days_of_clashes(clashes_of(Season(farm)))
    ratio = recount_ms / move_ms
    texts = (f"{move_ms:.2f} ms", f"{recount_ms:,.0f} ms", f"1 : {ratio:,.0f}")
    yield Row("move against a plain recount", *texts, f"at least {_LEAST_FASTER} times faster", ratio >= _LEAST_FASTER)
    looked_at, alike = _alike()
    name, goal = "random farms with the recount's clashes", f"all of {_FARMS:,}"
    yield Row(name, f"{alike:,} of {looked_at:,}", goal=goal, holds=alike == looked_at >= _FARMS)


def _alike() -> tuple[int, int]:
    """(random farms looked at, those on which look and recount agree)."""
    agree: list[bool] = []

    @settings(max_examples=_FARMS, database=None, deadline=None, suppress_health_check=list(HealthCheck))
    @given(farms(most_batches=6))
    def compare(farm: Farm) -> None:
        agree.append(days_of_clashes(clashes_of(Season(farm))) == broken_days(farm))

    compare()
    return len(agree), sum(agree)
