"""The most eggs for each day, from what is left in the places: no number is tried but the answer.

A batch of eggs is an amount in each leg of its route: eggs, birds, and a part's birds. For each leg, place and day
there is a most (for a large hatch) and a least (calm, for a small hatch, as sure as the farm wants to be); the eggs
that keep to all of them are a bit set over numbers of eggs, and its highest bit is the answer.
"""

from __future__ import annotations

import math
from bisect import bisect_right
from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from datetime import date, timedelta
from functools import cached_property
from itertools import accumulate, pairwise
from operator import or_

from quailsched.farm.records import Batch, Origin, Part, Place, Role, Stay
from quailsched.husbandry.kind import Kind
from quailsched.outlook.hatch import as_eggs
from quailsched.planner.room import NO_LIMIT, Left, empty, left_in
from quailsched.planner.routes import Choices
from quailsched.quick import dataclass
from quailsched.season.birds import head_of, share_on, whole
from quailsched.season.season import Season

_ANY_DAY = date(2000, 1, 1)


@dataclass(frozen=True, slots=True)
class Limit:
    """What one egg more would break: the kind of clash, where, and from which day on."""

    kind: str
    place_id: str
    first: date


@dataclass(frozen=True, slots=True)
class Fit:
    """The numbers of eggs that a leg takes on a day of setting, as bits, and what stops more."""

    eggs: int
    limit: Limit


@dataclass(frozen=True, slots=True)
class _Step:
    """Days ``start`` to ``end`` of a leg, from day 0, on which a bird needs the same."""

    start: int
    end: int
    each_cm2: int
    edge_cm: float
    is_on_heat: bool


class Slot:
    """One stay of a route, whatever the place: what it asks of a place for each number of eggs."""

    def __init__(self, season: Season, kind: Kind, probe: Batch, stay: Stay) -> None:
        """``probe`` is a batch on the route."""
        self._kind, self._probe = kind, probe
        self.cap = 0  # the most eggs that are thought of
        self._sure_pct = season.farm.settings.sure_pct
        self.leg = next(leg for leg in season.footprint(probe).legs if leg.stay == stay)
        self._days = season.days(probe)
        self.hatch = timedelta(days=self._days.hatch)
        self.shares = [share_on(kind, probe, day, stay.part) for day in range(self.leg.start, self.leg.end)]

    @cached_property
    def steps(self) -> list[_Step]:
        cuts = {run.start for run in self.leg.runs} | {self._days.heat_off}
        cuts |= {self._days.hatch + math.ceil(age) for age, _ in self._kind.curves["feeder_edge_cm"].points}
        inside = sorted({self.leg.start, self.leg.end, *(day for day in cuts if self.leg.start < day < self.leg.end)})
        found: list[_Step] = []
        for start, end in pairwise(inside):
            run = self.leg.run_on(start)
            assert run is not None
            edge = self._kind.at("feeder_edge_cm", start - self._days.hatch)
            step = _Step(start, end, run.each_cm2, edge, start < self._days.heat_off)
            last = found[-1] if found else None
            if last is not None and (last.each_cm2, last.edge_cm, last.is_on_heat) == (
                *(step.each_cm2, step.edge_cm),
                step.is_on_heat,
            ):
                found[-1] = replace(last, end=end)
            else:
                found.append(step)
        return found

    @cached_property
    def _most_masks(self) -> list[int]:
        """By number of birds at the start of the part: the eggs of which no more come of a large hatch."""
        return list(accumulate(self._heads(of_many=True), or_))

    @cached_property
    def _calm_masks(self) -> list[int]:
        """By number of birds: the eggs of which as many come of a small hatch."""
        return list(accumulate(reversed(self._few), or_))[::-1]

    @cached_property
    def _few(self) -> list[int]:
        return self._heads(of_many=False)

    def _heads(self, *, of_many: bool) -> list[int]:
        """The eggs by number of birds that the part begins with, as bits."""
        by_head: dict[int, int] = {}
        for eggs in range(1, self.cap + 1):
            number = as_eggs(self._kind, eggs, self._sure_pct, of_many=of_many)
            head = head_of(self._kind, replace(self._probe, number=number), self.leg.stay.part)
            by_head[head] = by_head.get(head, 0) | 1 << eggs
        return [by_head.get(head, 0) for head in range(max(by_head, default=0) + 2)]

    def most_eggs(self, places: Sequence[tuple[Place, Left]], cap: int) -> int:
        """The most eggs, up to ``cap``, that any of ``places`` takes with nobody else in it (``Left`` then)."""
        if self.leg.stay.part is not Part.ALL:
            return cap  # an egg more may be a surplus cock less: not a matter of halving
        steps = [(self.shares[step.start - self.leg.start], step) for step in self.steps]
        heads = max(
            min(_most_heads(left.most(step.each_cm2, step.edge_cm, step.is_on_heat)[0], share) for share, step in steps)
            for _, left in places
        )
        return bisect_right(range(1, cap + 1), heads, key=self._large_hatch)

    def _large_hatch(self, eggs: int) -> int:
        number = as_eggs(self._kind, eggs, self._sure_pct, of_many=True)
        return head_of(self._kind, replace(self._probe, number=number), self.leg.stay.part)

    def fit(self, place: Place, left: tuple[Left, ...], day: int) -> Fit:
        """What ``place`` takes of the leg if the eggs are set on ordinal ``day``; ``left`` covers the leg's days."""
        most, kind, first, least, is_alone = NO_LIMIT, "", day, 0, True
        for step in self.steps:
            start, end = day + step.start, day + step.end
            at = bisect_right(left, start, key=_end)
            while at < len(left) and left[at].start < end:
                one = left[at]
                from_day, to_day = max(one.start, start), min(one.end, end)
                share = self.shares[from_day - day - self.leg.start]
                birds, why = one.most(step.each_cm2, step.edge_cm, step.is_on_heat)
                heads = _most_heads(birds, share)
                if heads < most:
                    most, kind, first = heads, why, from_day
                if one.calm > one.there:
                    last_share = self.shares[to_day - 1 - day - self.leg.start]
                    least = max(least, _least_heads(one.calm - one.there, last_share))
                    is_alone = is_alone and not one.there
                at += 1
        few = self._calm_masks[min(least, len(self._calm_masks) - 1)]
        if is_alone:
            few |= self._few[0]  # nobody is not lonely
        many = self._most_masks[min(most, len(self._most_masks) - 1)] if most >= 0 else 0
        return Fit(many & few, Limit(kind if many & few or not many else "calm", place.id, date.fromordinal(first)))


def mixed_ages(season: Season, place: Place, kind: Kind, hatch: date, first: date, end: date) -> date | None:
    """The first day from ``first`` to ``end`` on which chicks hatched on ``hatch`` would share a brooder with birds
    that are too much older or younger (``rules.groups.ages``); None if there is none.
    """
    days = []
    for spell in season.spells(place):
        if place.role is not Role.BROODER or spell.end <= first or spell.start >= end:
            continue
        for other in spell.presences:
            gap = abs((other.batch.start - hatch).days + season.days(other.batch).hatch)
            if gap > min(kind.days("age_gap_days"), season.kind(other.batch).days("age_gap_days")):
                days.append(max(spell.start, first))
    return min(days, default=None)


def _end(left: Left) -> int:
    return left.end


def eggs_fit(season: Season, place: Place, first: date, end: date) -> Fit:
    """How many eggs more a setter, hatcher or cabinet takes on all days from ``first`` to ``end``."""
    most, worst = place.egg_places, first
    for spell in season.spells(place):
        if spell.start < end and spell.end > first:
            for piece in spell.slices:
                if piece.start < end and piece.end > first and place.egg_places - piece.eggs < most:
                    most, worst = place.egg_places - piece.eggs, max(piece.start, first)
    return Fit((1 << most + 1) - 2 if most > 0 else 0, Limit("eggs", place.id, worst))


def _most_heads(birds: int, share: float) -> int:
    """The most birds at the start of which no more than ``birds`` are alive at ``share``."""
    if birds < 0:
        return -1
    if share <= 0 or birds >= NO_LIMIT:
        return NO_LIMIT
    heads = int((birds + 0.5) / share)
    while whole(heads * share) > birds:
        heads -= 1
    while whole((heads + 1) * share) <= birds:
        heads += 1
    return heads


def _least_heads(birds: int, share: float) -> int:
    """The fewest birds at the start of which ``birds`` are alive at ``share``."""
    if share <= 0:
        return NO_LIMIT
    heads = max(int((birds - 0.5) / share), 0)
    while whole(heads * share) < birds:
        heads += 1
    while heads and whole((heads - 1) * share) >= birds:
        heads -= 1
    return heads


class Landscape:
    """What each stay of a route finds in each place and day; each is worked out once."""

    def __init__(self, season: Season, kind: Kind, routes: Sequence[Choices], first: date, end: date) -> None:
        """``first`` to ``end``: the days on which eggs may be set."""
        self._farm, self._season, self._kind = season.farm, season, kind
        self._known: dict[tuple[int, int | None, Part, bool], Slot] = {}
        self._slots = {choices: tuple(self._slots_of(choices)) for choices in routes}
        longest = max(slot.leg.end for slots in self._slots.values() for slot in slots)
        self._first, self._end = first, end + timedelta(days=longest)
        self._set_caps()
        self._left: dict[str, tuple[Left, ...]] = {}
        self._fits: dict[tuple[Slot, str, date], Fit] = {}

    def fits(self, choices: Choices, day: date) -> Callable[[int, Stay], Fit]:
        """What stay number ``n`` of ``choices`` finds in its place if the eggs are set on ``day``."""
        slots = self._slots[choices]
        return lambda number, stay: self._fit(slots[number], stay.place_id, day)

    def _set_caps(self) -> None:
        """No more eggs than there are places for, or than fill the largest brooder: the odds of each number cost as
        many steps as it has eggs."""
        for choices, slots in self._slots.items():
            cap = max(self._farm.place(stay.place_id).egg_places for stay in choices[0])
            for slot, stays in zip(slots, choices, strict=True):
                places = [self._farm.place(stay.place_id) for stay in stays]
                if not places[0].role.holds_eggs:
                    cap = slot.most_eggs([(place, empty(self._season, place, self._kind)) for place in places], cap)
            for slot in slots:
                slot.cap = max(slot.cap, cap)

    def _slots_of(self, choices: Choices) -> Iterator[Slot]:
        """What a stay asks for is the same in each place that it may have, so that any route tells it."""
        route = tuple(stays[0] for stays in choices)
        probe = Batch("", "", self._kind.id, Origin.OWN_EGGS, _ANY_DAY, 1, route)
        for stay in route:
            key = (stay.from_day, stay.to_day, stay.part, self._farm.place(stay.place_id).role.holds_eggs)
            if key not in self._known:
                self._known[key] = Slot(self._season, self._kind, probe, stay)
            yield self._known[key]

    def _fit(self, slot: Slot, place_id: str, day: date) -> Fit:
        key = slot, place_id, day
        if key not in self._fits:
            place = self._farm.place(place_id)
            first, end = day + timedelta(days=slot.leg.start), day + timedelta(days=slot.leg.end)
            if place.role.holds_eggs:
                self._fits[key] = eggs_fit(self._season, place, first, end)
            elif mixed := mixed_ages(self._season, place, self._kind, day + slot.hatch, first, end):
                self._fits[key] = Fit(0, Limit("ages", place_id, mixed))
            else:
                self._fits[key] = slot.fit(place, self._left_in(place), day.toordinal())
        return self._fits[key]

    def _left_in(self, place: Place) -> tuple[Left, ...]:
        if place.id not in self._left:
            self._left[place.id] = left_in(self._season, place, self._kind, self._first, self._end)
        return self._left[place.id]
