"""Times as ratios to a floor: a fixed piece of work in pure Python, measured in turn with what is measured.

A slow or busy machine slows both. Whether a goal holds is decided by the ratio alone: a goal in milliseconds is meant
for the machine on which the floor takes ``REFERENCE_FLOOR_MS``.
"""

from __future__ import annotations

import gc
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from statistics import median, quantiles
from time import perf_counter

from tests.bench.table import Row

# The median of 3,000 runs by CPython 3.11 on one of the two cores of a rented server (their fastest tenth: 0.65).
REFERENCE_FLOOR_MS = 0.65

Work = Callable[[], object]
Statistic = Callable[[Sequence[float]], float]
_FIRST = date(2027, 1, 4)


def floor() -> int:
    """The fixed work: what checking a season is made of, tuples, dates, dictionaries, sorting and sums."""
    records = [(number * 7919 % 1000, _FIRST + timedelta(days=number), number) for number in range(1000)]
    by_key: dict[int, list[int]] = {}
    for key, day, number in sorted(records):
        by_key.setdefault(key % 97, []).append(day.toordinal() - number)
    return sum(sum(numbers) for numbers in by_key.values())


@dataclass(frozen=True, slots=True)
class Times:
    """Milliseconds of each run of some work and of the floor beside it."""

    work: tuple[float, ...]
    floor: tuple[float, ...]

    def row(self, name: str, goal_ms: float | None, of: Statistic = median, floor_of: Statistic | None = None) -> Row:
        """Its line, by the median or another statistic; of the floor by the same one unless ``floor_of`` is given."""
        work, floor_ms = of(self.work), (floor_of or of)(self.floor)
        ratio = work / floor_ms
        texts = (f"{work:,.2f} ms", f"{floor_ms:.2f} ms", f"{ratio:,.1f}")
        if goal_ms is None:
            return Row(name, *texts)
        most = goal_ms / REFERENCE_FLOOR_MS
        return Row(name, *texts, f"under {goal_ms:g} ms (ratio {most:,.1f})", ratio < most)


def p99(times: Sequence[float]) -> float:
    return quantiles(times, n=100, method="inclusive")[98]


def timed(works: Iterable[Work]) -> Times:
    """Run each of ``works`` once, and the floor before each.

    What is there already is left to the garbage collector's permanent generation and collection stays on: what a work
    leaves behind is its own cost.
    """
    gc.collect()
    gc.freeze()
    try:
        pairs = [(_ms(floor), _ms(work)) for work in works]
    finally:
        gc.unfreeze()
    return Times(tuple(work for _, work in pairs), tuple(floor_ms for floor_ms, _ in pairs))


def repeated(work: Work, least: int = 3, most: int = 30, enough_ms: float = 2_000) -> Iterator[Work]:
    """``work`` at least ``least`` times, and up to ``most`` times while that has not taken ``enough_ms``."""
    start = perf_counter()
    for number in range(most):
        if number >= least and (perf_counter() - start) * 1000 > enough_ms:
            return
        yield work


def _ms(work: Work) -> float:
    start = perf_counter()
    work()
    return (perf_counter() - start) * 1000
