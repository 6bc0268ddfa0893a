"""Ways out of a clash: small changes, each tried on a copy and kept only if the checker says that it helps."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date
from itertools import combinations

from quailsched.edits.change import Change, apply
from quailsched.farm.faults import FarmError
from quailsched.farm.records import Farm
from quailsched.planner.checker import eases, solves
from quailsched.planner.moves import Move, moves
from quailsched.season.clash import Clash
from quailsched.season.clashes import checked
from quailsched.season.season import Season

MOST_OFFERED = 6
_MOST_TO_PAIR = 20  # of the moves that ease a clash, the best are tried in pairs: 190 of them


@dataclass(frozen=True, slots=True)
class WayOut:
    """A change that removes a clash and makes no other, what it costs (``moves``), and what follows in a sentence."""

    change: Change
    cost: float
    sentence: str


def ways_out(farm: Farm, clash: Clash, today: date) -> tuple[WayOut, ...]:
    """The best ways out, cheapest first, of different families; pairs of changes if no single one helps."""
    search = _Search(farm, clash, today)
    found = list(search.singles()) or list(search.pairs())
    return tuple(found[:MOST_OFFERED])


class _Search:
    """One search; remembers which single moves ease the clash without removing it."""

    def __init__(self, farm: Farm, clash: Clash, today: date) -> None:
        self._farm, self._clash, self._today = farm, clash, today
        self._checked = checked(Season(farm))
        self._before = self._checked.since(today)
        self._moves = sorted(moves(self._checked.season, clash, today), key=lambda move: move.cost)
        self._easing: list[tuple[float, Move]] = []

    def singles(self) -> Iterator[WayOut]:
        """Moves that help alone, the cheapest of each family."""
        seen: set[str] = set()
        for move in self._moves:
            if move.family in seen:
                continue
            way, after = self._tried((move,))
            if way is not None:
                seen.add(move.family)
                yield way
                if len(seen) == MOST_OFFERED:
                    return
            elif (left := eases(self._clash, self._before, after)) is not None:
                self._easing.append((left + move.cost / 1000, move))

    def pairs(self) -> Iterator[WayOut]:
        """Pairs of moves that ease the clash alone and remove it together."""
        best = [move for _, move in sorted(self._easing, key=lambda one: one[0])[:_MOST_TO_PAIR]]
        pairs = [pair for pair in combinations(best, 2) if pair[0].family != pair[1].family]
        seen: set[tuple[str, str]] = set()
        for first, second in sorted(pairs, key=lambda pair: pair[0].cost + pair[1].cost):
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
        after = self._checked.after(apply(self._farm, change)).since(self._today)
        if not solves(self._clash, self._before, after):
            return None, after
        sentence = " ".join(move.sentence for move in proposal)
        return WayOut(change, sum(move.cost for move in proposal), sentence), after


def joined(farm: Farm, proposal: tuple[Move, ...]) -> Change | None:
    """The changes of a proposal as one step; None if one of them does not fit the farm that the others leave."""
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
