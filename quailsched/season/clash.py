"""A rule of the plan that is broken on some days."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from datetime import date

from quailsched.season.occupancy import Slice


@dataclass(frozen=True, slots=True)
class Clash:
    """What is broken, where, for whom, when and by how much. Days are inclusive.

    ``need`` and ``have`` are in ``unit``: eggs, cm2, days, birds, degC. ``birds_over`` is how many birds
    have no room (0 where the clash is not about room).
    """

    kind: str
    place_id: str
    batch_ids: tuple[str, ...]
    first: date
    last: date
    worst: date
    need: float
    have: float
    unit: str
    birds_over: int
    sentence: str


def stretches(slices: Iterable[Slice], broken: Callable[[Slice], bool]) -> Iterator[list[Slice]]:
    """The runs of touching slices in all of which the rule is broken: each run is one clash."""
    run: list[Slice] = []
    for piece in slices:
        if broken(piece) and (not run or run[-1].end == piece.start):
            run.append(piece)
            continue
        if run:
            yield run
        run = [piece] if broken(piece) else []
    if run:
        yield run


def batch_ids_in(run: Iterable[Slice]) -> tuple[str, ...]:
    """The batches of a run of slices, each once, in order of appearance."""
    return tuple(dict.fromkeys(share.presence.batch.id for piece in run for share in piece.shares))
