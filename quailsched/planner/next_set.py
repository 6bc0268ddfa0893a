"""When the next eggs can go in, and how many, without any new clash.

Planned for chance (``outlook.hatch``), as sure as the farm wants to be (``sure_pct``, 90): room (floor, crowd, heat,
drinkers, feeders) for the hatch that only 1 in 10 exceeds, calm pens for the one that 9 in 10 reach, everything else
for the eggs that are set. How many find room comes
from ``landscape``; whether the batch breaks any other rule is asked of the rules, with the batch in the farm.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterator, Sequence
from datetime import date, timedelta

from quailsched.farm.kinds import kind_in
from quailsched.farm.range import LATEST
from quailsched.farm.records import Batch, Farm, Origin, Stay
from quailsched.outlook.hatch import as_eggs, hatch_odds
from quailsched.planner.best_route import Ceiling, Found, best_route
from quailsched.planner.checker import new_ones
from quailsched.planner.landscape import Landscape, Limit
from quailsched.planner.routes import Choices, Route, choices_of, first_route, keeps_hens
from quailsched.quick import dataclass
from quailsched.season.clash import Clash
from quailsched.season.clashes import Checked, checked, clashes_around, clashes_of_farm
from quailsched.season.season import Season
from quailsched.words import say

ROOM_KINDS = frozenset({"floor", "crowd", "heat", "water", "feeder"})
CALM_KINDS = frozenset({"calm"})
# Lamps solve short days whenever they come; they say nothing about when to set eggs, or how many.
NO_MATTER_KINDS = frozenset({"dark"})
SMALLEST_SET = 6  # fewer eggs are not worth a hatch, and whole birds make their numbers jump
_PROBE = "a batch being thought of"
_IN_LANDSCAPE = frozenset({"eggs", "ages"})
_OF_DAYS = frozenset({"hands"})  # the same in every place
_OF_BIRDS = frozenset({"young", "cold", "cocks", "overdue", "nowhere", "quarantine"})
_OF_FARM = frozenset({"build"})  # hours of people, for all places with work together


@dataclass(frozen=True, slots=True)
class NextSet:
    """What can be set on ``day``: at most ``eggs`` by way of ``route``; ``limit`` is what one more would break.

    Not every smaller number does: few birds are not calm in a large pen. ``numbers`` are those that do, as bits.
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
    numbers: int = 0

    def fewest_from(self, eggs: int) -> int | None:
        """The fewest eggs, but no fewer than ``eggs``, that can be set; None if no such number makes no clash."""
        above = self.numbers >> eggs
        return eggs + (above & -above).bit_length() - 1 if above else None


def next_sets(farm: Farm, kind_id: str, today: date, days: int) -> tuple[NextSet, ...]:
    """For each of ``days`` days from ``today`` the most eggs that make no new clash. Empty without egg places."""
    return next_sets_of(checked(Season(farm)), kind_id, today, days)


def next_sets_of(now: Checked, kind_id: str, today: date, days: int, *, with_hens: bool = False) -> tuple[NextSet, ...]:
    """``next_sets`` of a farm that has been looked at already; ``with_hens``: only on routes that keep them.

    Fewer days where the last that a farm may have (``farm.check.LATEST``) comes first.
    """
    days = min(days, (LATEST - today).days + 1)
    routes = choices_of(now.season.farm, kind_id)
    if with_hens:
        routes = tuple(choices for choices in routes if keeps_hens(choices))
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
    """The first clash that a set of ``eggs`` eggs would be part of, or bring to others.

    It counts as part of one that is there before, such as a place too full already, if it comes to it.
    """
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
    brought = new_ones(clashes_of_farm(now.season), clashes_of_farm(after.season))
    return [clash for clash in after.clashes if batch.id in clash.batch_ids or clash in brought]


def _probe(kind_id: str, day: date, route: Route, number: int) -> Batch:
    return Batch(_PROBE, say("New batch"), kind_id, Origin.OWN_EGGS, day, number, route)


class _Search:
    """The search over the days; what is left in the places is worked out once."""

    def __init__(self, now: Checked, kind_id: str, routes: tuple[Choices, ...], first: date, days: int) -> None:
        self._now, self._kind_id, self._routes = now, kind_id, routes
        self._kind = kind_in(now.season.farm, kind_id)
        self._of_farm = clashes_of_farm(now.season)
        self._landscape = Landscape(now.season, self._kind, routes, first, first + timedelta(days=days))

    def on(self, day: date) -> NextSet:
        """The answer for one day: the route with most room that breaks no other rule.

        What a rule refuses is a ceiling over the stays that it is about, and the next best route is looked at.
        """
        routes, ceilings = list(self._routes), list[Ceiling]()
        refused: tuple[Route, Limit] | None = None
        while found := self._most(routes, ceilings, day):
            choices, best = found
            clash = self._other_clash(day, best.route, best.eggs)
            if clash is None:
                return self._answer(day, best.eggs, best.numbers, best.route, best.limit)
            limit = Limit(clash.kind, clash.place_id, clash.first)
            refused = refused or (best.route, limit)
            if clash.kind in _OF_DAYS:
                routes.remove(choices)
            else:
                most = self._most_without(clash, day, best)
                ceilings.append(Ceiling(self._stays_of(clash, best.route), most, limit))
        return self._answer(day, 0, 0, *(refused or self._without_room(day)))

    def _most(self, routes: Sequence[Choices], ceilings: Sequence[Ceiling], day: date) -> tuple[Choices, Found] | None:
        """The route for most eggs under the ceilings, the first of several, and what it was chosen from."""
        best: tuple[Choices, Found] | None = None
        for choices in routes:
            beaten = best[1].eggs if best is not None else 0
            found = best_route(choices, self._landscape.fits(choices, day), ceilings, SMALLEST_SET, beaten)
            best = best if found is None else (choices, found)
        return best

    def _stays_of(self, clash: Clash, route: Route) -> frozenset[Stay]:
        """The stays that ``clash`` rests on: the one in its place; of work on places, all in places with work."""
        farm = self._now.season.farm
        if clash.kind in _OF_FARM:
            return frozenset(stay for stay in route if farm.place(stay.place_id).work_hours)
        return frozenset(stay for stay in route if stay.place_id == clash.place_id)

    def _most_without(self, clash: Clash, day: date, best: Found) -> int:
        """The most of the numbers of ``best`` that do without ``clash``; 0 where it comes of any number.

        Only rules of birds are asked: of very few eggs there may be no surplus cock for them to be about.
        """
        if clash.kind not in _OF_BIRDS:
            return 0
        numbers = [number for number in range(SMALLEST_SET, best.eggs) if best.numbers >> number & 1]
        if not numbers or self._has(clash, day, best.route, numbers[0]):
            return 0
        return numbers[bisect_left(numbers, True, key=lambda eggs: self._has(clash, day, best.route, eggs)) - 1]

    def _has(self, clash: Clash, day: date, route: Route, eggs: int) -> bool:
        return any((one.kind, one.place_id) == (clash.kind, clash.place_id) for one in self._others(day, route, eggs))

    def _without_room(self, day: date) -> tuple[Route, Limit]:
        """The first route, which as any other has no room, and what it is short of."""
        choices = self._routes[0]
        route, numbers = first_route(choices), -1 << SMALLEST_SET
        assert route is not None
        fit_of = self._landscape.fits(choices, day)
        for number, stay in enumerate(route):
            fit = fit_of(number, stay)
            numbers &= fit.eggs
            if not numbers:
                return route, fit.limit
        raise AssertionError(f"{route} has room on {day}")

    def _other_clash(self, day: date, route: Route, eggs: int) -> Clash | None:
        """What the batch breaks beside what the landscape has counted."""
        return next(iter(self._others(day, route, eggs)), None)

    def _others(self, day: date, route: Route, eggs: int) -> Iterator[Clash]:
        farm = self._now.season.farm
        batch = _probe(self._kind_id, day, route, eggs)
        season = self._now.season.after(farm.with_records(set(), (batch,)), (), (batch,))
        found = clashes_around(season, batch, ROOM_KINDS | CALM_KINDS | _IN_LANDSCAPE)
        yield from (clash for clash in found if clash.kind not in NO_MATTER_KINDS)
        of_farm = clashes_of_farm(season)
        brought = new_ones(self._of_farm, of_farm)
        yield from (clash for clash in of_farm if batch.id in clash.batch_ids or clash in brought)

    def _answer(self, day: date, eggs: int, numbers: int, route: Route, limit: Limit | None) -> NextSet:
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
            numbers=numbers,
        )
