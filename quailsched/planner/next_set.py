"""When the next eggs can go in, and how many, without any new clash.

Planned for chance (``outlook.hatch``): floor, heat, drinkers, feeders and crowd for the hatch that only 1 in 10
exceeds, calm pens for the one that 9 in 10 reach, everything else for the eggs that are set. Every number is judged by
the rules themselves, on a copy of the farm with the batch in it. Short days ahead of the hens (``dark``) are no limit:
a lamp helps there, not fewer eggs or another day.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date, timedelta
from itertools import product

from quailsched.farm.kinds import kind_in
from quailsched.farm.records import Batch, Farm, Origin, Place, Role, Stay
from quailsched.outlook.hatch import HatchOdds, hatch_odds
from quailsched.planner.checker import new_ones
from quailsched.season.clash import Clash
from quailsched.season.clashes import clashes_of
from quailsched.season.route import usual_route
from quailsched.season.season import Season

ROOM_KINDS, CALM_KINDS = {"floor", "heat", "water", "feeder", "crowd"}, {"calm"}
_NO_LIMIT = {"dark"}
EXCEEDED, REACHED = 0.1, 0.9  # one hatch in ten exceeds what there is room for, nine in ten reach what is counted on
_MOST_ROUTES = 12
_PROBE = "a batch being thought of"


@dataclass(frozen=True, slots=True)
class NextSet:
    """What can be set on ``day``: at most ``eggs`` by way of ``route``; ``limit`` is what one more would break.

    ``expected`` chicks hatch on ``hatch``, ``few`` are reached by 9 hatches in 10, ``many`` exceeded by 1 in 10.
    """

    day: date
    eggs: int
    route: tuple[Stay, ...]
    limit: Clash | None
    hatch: date
    expected: int
    few: int
    many: int


def next_sets(farm: Farm, kind_id: str, today: date, days: int) -> tuple[NextSet, ...]:
    """For each of ``days`` days from ``today`` the most eggs that make no new clash. Empty without egg places."""
    routes = list(_routes(farm, kind_id))
    if not routes:
        return ()
    found = []
    hints = [0] * len(routes)
    before = clashes_of(Season(farm), today)
    for number in range(days):
        day = today + timedelta(days=number)
        search = _Day(farm, kind_id, day, today, before)
        answers = [search.most(route, hint) for route, hint in zip(routes, hints, strict=True)]
        hints = [answer.eggs for answer in answers]
        found.append(max(answers, key=lambda answer: answer.eggs))
    return tuple(found)


def best_of(found: tuple[NextSet, ...]) -> NextSet | None:
    """The day for most eggs, the earliest of several; None if there is no day for any."""
    best = max(found, key=lambda one: (one.eggs, -one.day.toordinal()), default=None)
    return best if best is not None and best.eggs else None


def _routes(farm: Farm, kind_id: str) -> Iterator[tuple[Stay, ...]]:
    """The usual route and the same through other places of each role."""
    usual = usual_route(farm, kind_id, Origin.OWN_EGGS)
    if not usual:
        return
    seen: set[tuple[Stay, ...]] = set()
    choices = [_alternatives(farm, farm.place(stay.place_id)) for stay in usual]
    for places in product(*choices):
        route = tuple(replace(stay, place_id=place.id) for stay, place in zip(usual, places, strict=True))
        if route not in seen and len(seen) < _MOST_ROUTES:
            seen.add(route)
            yield route
    for cabinet in farm.places:
        if cabinet.role is Role.CABINET and len(usual) > 1 and usual[1].to_day is not None:
            both = Stay(cabinet.id, 0, usual[1].to_day)
            if farm.place(usual[1].place_id).role.holds_eggs:
                yield (both, *usual[2:])


def _alternatives(farm: Farm, place: Place) -> list[Place]:
    return [place, *(other for other in farm.places if other.role is place.role and other.id != place.id)]


class _Day:
    """The search for one day of setting."""

    def __init__(self, farm: Farm, kind_id: str, day: date, today: date, before: tuple[Clash, ...]) -> None:
        self._farm, self._kind_id, self._day, self._today = farm, kind_id, day, today
        self._kind = kind_in(farm, kind_id)
        self._before = before

    def most(self, route: tuple[Stay, ...], hint: int) -> NextSet:
        """The most eggs on ``route``; ``hint`` is where to look first (what the day before allowed)."""
        cap = self._farm.place(route[0].place_id).egg_places
        low, high = 0, cap + 1  # low is allowed, high is not (or more than there are places)
        for guess in (1, hint, hint + 1):
            if low < guess < high:
                low, high = (guess, high) if self._breaks(route, guess) is None else (low, guess)
        while high - low > 1:
            middle = (low + high) // 2
            low, high = (middle, high) if self._breaks(route, middle) is None else (low, middle)
        limit = self._breaks(route, high)
        lonely = self._new(route, low, CALM_KINDS) if low else None
        eggs, limit = (0, lonely) if lonely is not None else (low, limit)
        odds = hatch_odds(self._kind, eggs)
        return NextSet(
            day=self._day,
            eggs=eggs,
            route=route,
            limit=limit,
            hatch=self._day + timedelta(days=self._kind.days("incubation_days")),
            expected=round(odds.expected),
            few=odds.reached_by(REACHED),
            many=odds.exceeded_by(EXCEEDED),
        )

    def _breaks(self, route: tuple[Stay, ...], eggs: int) -> Clash | None:
        """The first new clash that ``eggs`` eggs make, but for calm, which wants more and not fewer."""
        return self._new(route, eggs, None) or self._new(route, eggs, ROOM_KINDS)

    def _new(self, route: tuple[Stay, ...], eggs: int, kinds: set[str] | None) -> Clash | None:
        number = _as_eggs(hatch_odds(self._kind, eggs), eggs, self._kind.value("hatch_of_set_pct"), kinds)
        if number < 1:
            return None
        batch = Batch(_PROBE, "New batch", self._kind_id, Origin.OWN_EGGS, self._day, number, route)
        after = clashes_of(Season(self._farm.with_records(set(), (batch,))), self._today)
        here = {stay.place_id for stay in route}
        for clash in new_ones(self._before, after):
            is_asked = clash.kind in kinds if kinds else clash.kind not in ROOM_KINDS | CALM_KINDS | _NO_LIMIT
            if is_asked and (_PROBE in clash.batch_ids or clash.place_id in here):
                return clash
        return None


def _as_eggs(odds: HatchOdds, eggs: int, hatch_pct: float, kinds: set[str] | None) -> int:
    """Eggs of which, at the expected rate, as many hatch as are to be planned for."""
    if kinds is None:
        return eggs
    chicks = odds.exceeded_by(EXCEEDED) if kinds == ROOM_KINDS else odds.reached_by(REACHED)
    if kinds == ROOM_KINDS:
        return math.ceil(chicks * 100 / hatch_pct)
    return max(math.floor(chicks * 100 / hatch_pct), 1)  # one bird alone is not calm, where none would break no rule
