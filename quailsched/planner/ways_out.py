"""Ways out of a clash: small changes, each tried on a copy and kept only if the checker says that it helps."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import field, replace
from datetime import date
from itertools import combinations, permutations
from math import inf

from quailsched.edits.change import Change, apply
from quailsched.farm.faults import FarmError
from quailsched.farm.records import Batch, Farm
from quailsched.planner.checker import eases, laid_to, new_ones, solves
from quailsched.planner.move import Move
from quailsched.planner.moves import moves
from quailsched.quick import dataclass
from quailsched.season.clash import Clash
from quailsched.season.clashes import Checked, checked
from quailsched.season.season import Season

MOST_OFFERED = 6
_MOST_TO_PAIR = 20  # of the moves that ease a clash, the best are tried in pairs
_ALL_OF_IT = 1.1  # what is left after each of two moves, which with their costs adds up to 1 where both together do it
_MOST_PAIRS = 60  # 2 ms each on a farm of 500 batches
_ENOUGH = 3  # with so many ways out, what costs far more than the last of them is not tried
_FAR_MORE = 10.0


@dataclass(frozen=True, slots=True)
class WayOut:
    """A change that removes a clash and makes no other, what it costs in days of trouble (``move``), and what follows
    in a sentence."""

    change: Change
    cost: float
    sentence: str


@dataclass(frozen=True, slots=True)
class Looked:
    """The ways out of a clash, and what was tried: ``singles`` changes, then ``pairs`` of them.

    Where nothing helps, ``removed`` of these would remove the clash but bring others: ``brought`` counts by the kind
    of clash how many would bring one. The rest leave some of it.
    """

    ways: tuple[WayOut, ...]
    singles: int
    pairs: int
    removed: int = 0
    brought: Mapping[str, int] = field(default_factory=dict)


def ways_out(farm: Farm, clash: Clash, today: date) -> tuple[WayOut, ...]:
    """The best ways out, cheapest first, of different families; pairs of changes if no single one helps."""
    return look_for_ways_out(checked(Season(farm)), clash, today).ways


def look_for_ways_out(now: Checked, clash: Clash, today: date) -> Looked:
    """The same with what was tried, and what stands against it where nothing helps."""
    search = _Search(now, clash, today)
    found = list(search.singles())
    singles = search.tried
    if not found:
        found = list(search.pairs())
    ways = tuple(sorted(found, key=lambda way: way.cost)[:MOST_OFFERED])
    if ways:
        return Looked(ways, singles, search.tried - singles)
    return Looked((), singles, search.tried - singles, *search.against())


class _Search:
    """One search; remembers which single moves ease the clash without removing it, and what each attempt left."""

    def __init__(self, now: Checked, clash: Clash, today: date) -> None:
        self._farm, self._clash, self._today = now.season.farm, clash, today
        self._checked = now
        self._before = self._checked.since(today)
        self._moves = sorted(moves(self._checked.season, clash, today), key=lambda move: move.cost)
        self._easing: list[tuple[float, Move]] = []
        self._failed: list[Sequence[Clash]] = []  # what is left after changes that would remove the clash
        self.tried = 0

    def singles(self) -> Iterator[WayOut]:
        """Moves that help alone, the cheapest of each family."""
        seen: set[str] = set()
        most = inf
        for move in self._moves:
            if move.cost > most:
                return
            if move.family in seen:
                continue
            way, after = self._tried((move,))
            if way is not None:
                seen.add(move.family)
                yield way
                if len(seen) == MOST_OFFERED:
                    return
                most = way.cost + _FAR_MORE if len(seen) == _ENOUGH else most
            elif (left := eases(self._clash, self._before, after)) is not None:
                self._easing.append((left + move.cost / 1000, move))

    def pairs(self) -> Iterator[WayOut]:
        """Pairs of moves that ease the clash alone and remove it together."""
        best = sorted(self._easing, key=lambda one: one[0])[:_MOST_TO_PAIR]
        pairs = [pair for pair in combinations(best, 2) if pair[0][1].family != pair[1][1].family]
        seen: set[tuple[str, str]] = set()
        for (_, first), (_, second) in sorted(pairs, key=_promise)[:_MOST_PAIRS]:
            family = (first.family, second.family)
            if family in seen:
                continue
            way, _ = self._tried((first, second))
            if way is not None:
                seen.add(family)
                yield way
                if len(seen) == MOST_OFFERED:
                    return

    def _tried(self, proposal: tuple[Move, ...]) -> tuple[WayOut | None, Sequence[Clash]]:
        """The way out that ``proposal`` is, if it is one, and the clashes that it leaves."""
        change = joined(self._farm, proposal)
        if change is None:
            return None, self._before
        self.tried += 1
        after = laid_to(self._checked.after(apply(self._farm, change)).since(self._today), _origins(change, proposal))
        if not solves(self._clash, self._before, after):
            if self._clash not in after:
                self._failed.append(after)
            return None, after
        sentence = " ".join(move.sentence for move in proposal)
        return WayOut(change, sum(move.cost for move in proposal), sentence), after

    def against(self) -> tuple[int, Mapping[str, int]]:
        """How many attempts would remove the clash, and how many of them would bring one of which kind."""
        brought = [
            {clash.kind for clash in new_ones(self._others(self._before), self._others(after))}
            for after in self._failed
            if not any(self._is_still_there(clash) for clash in after)
        ]
        return len(brought), Counter(kind for kinds in brought for kind in kinds)

    def _is_still_there(self, clash: Clash) -> bool:
        """In another place it is the same trouble of the same batch."""
        return clash.kind == self._clash.kind and bool({*clash.batch_ids} & {*self._clash.batch_ids})

    def _others(self, clashes: Sequence[Clash]) -> list[Clash]:
        return [clash for clash in clashes if clash != self._clash]


def _promise(pair: tuple[tuple[float, Move], tuple[float, Move]]) -> tuple[bool, float]:
    """Those first that take away as much as there is: where a place is too full, two moves take away no more
    together than each alone. Of these the cheapest."""
    (left, first), (also_left, second) = pair
    return left + also_left > _ALL_OF_IT, first.cost + second.cost


def _origins(change: Change, proposal: tuple[Move, ...]) -> dict[str, str]:
    """By the id of each new batch of ``change``, the batch that it was split off from."""
    splits = [move.splits for move in proposal if move.splits]
    new = [t.record_id for t in change.touches if t.before is None and isinstance(t.after, Batch)]
    return dict(zip(new, splits, strict=True))


def joined(farm: Farm, proposal: tuple[Move, ...]) -> Change | None:
    """The changes of a proposal as one step; None if one of them does not fit the farm that the others leave, or
    changes what another rests on: a stay that is no longer there, a day or number that its sentence tells."""
    if any(_disturbs(farm, one, other) for one, other in permutations(proposal, 2)):
        return None
    change: Change | None = None
    after = farm
    for move in proposal:
        try:
            step = move.edit(after)
        except FarmError:
            return None
        after = apply(after, step)
        change = step if change is None else replace(change.then(step), label=f"{change.label}; {step.label}")
    return None if change is None else replace(change, merge_key="")


def _disturbs(farm: Farm, one: Move, other: Move) -> bool:
    """Whether ``one`` does not fit ``farm``, or changes what ``other`` rests on."""
    try:
        return other.rests_on(apply(farm, one.edit(farm))) != other.rests_on(farm)
    except FarmError:
        return True
