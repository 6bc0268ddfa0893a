"""A rule of the plan that is broken on some days."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from datetime import date

from quailsched.farm.records import Place
from quailsched.quick import dataclass
from quailsched.season.occupancy import Slice, room_of


@dataclass(frozen=True, slots=True)
class Clash:
    """What is broken, where, for whom, when and by how much. Days are inclusive.

    ``need`` and ``have`` are in ``unit``: eggs, cm2, cm, days, hours, birds, chicks, people, degC. ``birds_over``
    is how many birds have no room or fare ill (0 where it is not about birds).
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


def tenth_below(have: float, need: float) -> float:
    """``have``, which is less than ``need``, to a tenth, so that it is not shown as ``need`` itself."""
    return min(round(have, 1), round(need - 0.1, 1))


def overfull(place: Place, slices: Iterable[Slice]) -> Iterator[tuple[list[Slice], Slice]]:
    """Each run of days on which a place holds more than it has room for, and the worst slice of it."""
    room = room_of(place)
    for run in stretches(slices, lambda piece: piece.taken(place) > room):
        yield run, max(run, key=lambda piece: piece.taken(place))


def clash_of_run(
    kind: str,
    place: Place,
    run: list[Slice],
    worst: Slice,
    need: float,
    have: float,
    unit: str,
    sentence: str,
    birds_over: int = 0,
) -> Clash:
    """The clash of a run of slices of ``place``; its worst day is the first of ``worst``."""
    return Clash(
        kind=kind,
        place_id=place.id,
        batch_ids=batch_ids_in(run),
        first=run[0].start,
        last=run[-1].last,
        worst=worst.start,
        need=need,
        have=have,
        unit=unit,
        birds_over=birds_over,
        sentence=sentence,
    )


def batch_ids_in(run: Iterable[Slice]) -> tuple[str, ...]:
    """The batches of a run of slices, each once, in order of appearance."""
    return tuple(dict.fromkeys(share.presence.batch.id for piece in run for share in piece.shares))
