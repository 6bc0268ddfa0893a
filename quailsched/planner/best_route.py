"""The route for most eggs: a place for each stay, found without trying each route there is.

What finds room in a place is a set of numbers of eggs, as bits (``landscape.Fit``); a route takes the numbers that all
of its places take. Pure search: what makes a ceiling is for ``next_set`` to say.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from quailsched.farm.records import Stay
from quailsched.planner.landscape import Fit, Limit
from quailsched.planner.routes import Choices, Route, goes_with
from quailsched.quick import dataclass

FitOf = Callable[[int, Stay], Fit]  # what a stay, the number of which it is told, finds in its place


@dataclass(frozen=True, slots=True)
class Ceiling:
    """A route with all of ``stays`` takes no more than ``eggs`` eggs: one more breaks ``limit``."""

    stays: frozenset[Stay]
    eggs: int
    limit: Limit


@dataclass(frozen=True, slots=True)
class Found:
    """``numbers`` are all that the route takes, as bits; ``eggs`` is the highest, ``limit`` what stops more."""

    eggs: int
    numbers: int
    route: Route
    limit: Limit


def best_route(choices: Choices, fit_of: FitOf, ceilings: Sequence[Ceiling], least: int, beaten: int) -> Found | None:
    """The route for most eggs, the first of several; None if none takes ``least`` or more than ``beaten``."""
    search = _Search(choices, fit_of, ceilings, max(least - 1, beaten))
    search.look((), -1 << least)
    return search.found


class _Search:
    """Depth first, in the order of the choices. A place is tried only while it may lead to more than was found."""

    def __init__(self, choices: Choices, fit_of: FitOf, ceilings: Sequence[Ceiling], beaten: int) -> None:
        self._choices, self._fit_of, self._ceilings, self._beaten = choices, fit_of, ceilings, beaten
        self._most: list[int] = []  # of each stay where it fits best, as far as they have been asked for
        self.found: Found | None = None

    def look(self, before: Route, numbers: int) -> None:
        """All routes that begin with ``before``, which takes ``numbers``."""
        number = len(before)
        if number and _top(numbers) <= self._beaten:
            return
        if number == len(self._choices):
            self._beaten = _top(numbers)
            self.found = Found(self._beaten, numbers, before, self._limit(before, self._beaten))
            return
        for stay in self._choices[number]:
            if (number and _top(numbers) <= self._beaten) or not self._can_beat(number):
                return
            if goes_with(before, stay):
                route = (*before, stay)
                self.look(route, numbers & self._fit_of(number, stay).eggs & self._under_ceilings(route))

    def _can_beat(self, number: int) -> bool:
        """Whether every stay has a place for more than was found. Before there is a route only the first is asked."""
        if self.found is None and number:
            return True
        while len(self._most) < len(self._choices):
            if self._most and min(self._most) <= self._beaten:
                return False
            stays = self._choices[len(self._most)]
            self._most.append(max(_top(self._fit_of(len(self._most), stay).eggs) for stay in stays))
            if self.found is None:
                break
        return min(self._most) > self._beaten

    def _under_ceilings(self, route: Route) -> int:
        most = min((one.eggs for one in self._ceilings if one.stays <= {*route}), default=None)
        return -1 if most is None else (1 << most + 1) - 1

    def _limit(self, route: Route, eggs: int) -> Limit:
        """What one egg more than ``eggs`` breaks."""
        fits = [self._fit_of(number, stay) for number, stay in enumerate(route)]
        stops = [fit.limit for fit in fits if not fit.eggs >> eggs + 1 & 1]
        stops += [one.limit for one in self._ceilings if one.stays <= {*route} and one.eggs == eggs]
        return stops[0] if stops else fits[0].limit


def _top(numbers: int) -> int:
    """The highest number; -1 if there is none."""
    return numbers.bit_length() - 1
