"""When the next eggs can go in, and how many, without any new clash.

Planned for chance (``outlook.hatch``), as sure as the farm wants to be (``sure_pct``, 90): room (floor, crowd, heat,
drinkers, feeders) for the hatch that only 1 in 10 exceeds, calm pens for the one that 9 in 10 reach, everything else
for the eggs that are set. How many find room comes
from ``landscape``; whether the batch breaks any other rule is asked of the rules, with the batch in the farm.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta

from quailsched.farm.kinds import kind_in
from quailsched.farm.records import Batch, Farm, Origin, Part
from quailsched.outlook.hatch import as_eggs, hatch_odds
from quailsched.planner.landscape import Fit, Landscape, Limit
from quailsched.planner.routes import Route, routes_of
from quailsched.season.clash import Clash
from quailsched.season.clashes import Checked, checked, clashes_around
from quailsched.season.season import Season

ROOM_KINDS = frozenset({"floor", "crowd", "heat", "water", "feeder"})
CALM_KINDS = frozenset({"calm"})
# Lamps solve short days whenever they come; they say nothing about when to set eggs, or how many.
NO_MATTER_KINDS = frozenset({"dark"})
SMALLEST_SET = 6  # fewer eggs are not worth a hatch, and whole birds make their numbers jump
_PROBE = "a batch being thought of"
_IN_LANDSCAPE = frozenset({"eggs", "ages"})
_WHEREVER = frozenset({"hands"})  # the same on every route


@dataclass(frozen=True, slots=True)
class NextSet:
    """What can be set on ``day``: at most ``eggs`` by way of ``route``; ``limit`` is what one more would break.

    ``expected`` chicks hatch on ``hatch``; in ``sure_pct`` of 100 hatches ``few`` or more, and in as many ``many`` or
    fewer.
    """

    day: date
    eggs: int
    route: Route
    limit: Limit | None
    hatch: date
    expected: int
    few: int
    many: int
    kind_id: str = ""


def next_sets(farm: Farm, kind_id: str, today: date, days: int) -> tuple[NextSet, ...]:
    """For each of ``days`` days from ``today`` the most eggs that make no new clash. Empty without egg places."""
    return next_sets_of(checked(Season(farm)), kind_id, today, days)


def next_sets_of(
    now: Checked, kind_id: str, today: date, days: int, *, keeps_hens: bool = False
) -> tuple[NextSet, ...]:
    """``next_sets`` of a farm that has been looked at already; ``keeps_hens``: only on routes that keep them."""
    routes = routes_of(now.season.farm, kind_id)
    if keeps_hens:
        routes = tuple(route for route in routes if any(stay.part is Part.HENS for stay in route))
    if not routes or days < 1:
        return ()
    search = _Search(now, kind_id, routes, today, days)
    return tuple(search.on(today + timedelta(days=number)) for number in range(days))


def best_of(found: tuple[NextSet, ...]) -> NextSet | None:
    """The day for most eggs, the earliest of several; None if there is no day for any."""
    best = max(found, key=lambda one: (one.eggs, -one.day.toordinal()), default=None)
    return best if best is not None and best.eggs else None


def what_stops(now: Checked, one: NextSet) -> Clash | None:
    """The clash that one egg more would make on the day and route of ``one``; None if it would make none."""
    return broken_by(now, one.kind_id, one.day, one.route, max(one.eggs + 1, SMALLEST_SET))


def broken_by(now: Checked, kind_id: str, day: date, route: Route, eggs: int) -> Clash | None:
    """The first clash that a set of ``eggs`` eggs would be part of."""
    kind, sure_pct = kind_in(now.season.farm, kind_id), now.season.farm.settings.sure_pct
    for number, of_room, of_calm in (
        (eggs, False, False),
        (as_eggs(kind, eggs, sure_pct, of_many=True), True, False),
        (as_eggs(kind, eggs, sure_pct, of_many=False), False, True),
    ):
        for clash in _new_clashes(now, kind_id, day, route, number):
            is_asked = (clash.kind in ROOM_KINDS) is of_room and (clash.kind in CALM_KINDS) is of_calm
            if is_asked and clash.kind not in NO_MATTER_KINDS:
                return clash
    return None


def _new_clashes(now: Checked, kind_id: str, day: date, route: Route, number: int) -> list[Clash]:
    farm, batch = now.season.farm, _probe(kind_id, day, route, number)
    after = now.after(farm.with_records(set(), (batch,)))
    return [clash for clash in after.clashes if batch.id in clash.batch_ids]


def _probe(kind_id: str, day: date, route: Route, number: int) -> Batch:
    return Batch(_PROBE, "New batch", kind_id, Origin.OWN_EGGS, day, number, route)


class _Search:
    """The search over the days; what is left in the places is worked out once."""

    def __init__(self, now: Checked, kind_id: str, routes: tuple[Route, ...], first: date, days: int) -> None:
        self._now, self._kind_id, self._routes = now, kind_id, routes
        self._kind = kind_in(now.season.farm, kind_id)
        self._landscape = Landscape(now.season, self._kind, routes, first, first + timedelta(days=days))

    def on(self, day: date) -> NextSet:
        """The answer for one day: the route with most room that breaks no other rule."""
        by_room = sorted((self._room(route, day) for route in self._routes), key=lambda one: -one[0])
        refused: Limit | None = None
        tabu: set[object] = set()
        for eggs, limit, route in by_room:
            if not eggs:
                return self._answer(day, 0, route, refused or limit)
            if tabu & set(route):
                continue
            clash = self._other_clash(day, route, eggs)
            if clash is None:
                return self._answer(day, eggs, route, limit)
            refused = refused or Limit(clash.kind, clash.place_id, clash.first)
            if clash.kind in _WHEREVER:
                break
            tabu |= {stay for stay in route if stay.place_id == clash.place_id}
        return self._answer(day, 0, by_room[0][2], refused)

    def _room(self, route: Route, day: date) -> tuple[int, Limit, Route]:
        """The most eggs that find room on ``route``, what stops more, and the route itself."""
        fits: list[Fit] = []
        numbers = -1
        for fit in self._landscape.fits(route, day):
            fits.append(fit)
            numbers &= fit.eggs
            if numbers >> SMALLEST_SET == 0:
                return 0, fit.limit, route
        eggs = numbers.bit_length() - 1
        return eggs, next((fit.limit for fit in fits if not fit.eggs >> eggs + 1 & 1), fits[0].limit), route

    def _other_clash(self, day: date, route: Route, eggs: int) -> Clash | None:
        """What the batch breaks beside what the landscape has counted."""
        farm = self._now.season.farm
        batch = _probe(self._kind_id, day, route, eggs)
        season = self._now.season.after(farm.with_records(set(), (batch,)), (), (batch,))
        found = clashes_around(season, batch, ROOM_KINDS | CALM_KINDS | _IN_LANDSCAPE)
        return next((clash for clash in found if clash.kind not in NO_MATTER_KINDS), None)

    def _answer(self, day: date, eggs: int, route: Route, limit: Limit | None) -> NextSet:
        odds, sure = hatch_odds(self._kind, eggs), self._now.season.farm.settings.sure_pct / 100
        return NextSet(
            day=day,
            eggs=eggs,
            route=route,
            limit=limit,
            hatch=day + timedelta(days=self._kind.days("incubation_days")),
            expected=round(odds.expected),
            few=odds.reached_by(sure),
            many=odds.exceeded_by(1 - sure),
            kind_id=self._kind_id,
        )
