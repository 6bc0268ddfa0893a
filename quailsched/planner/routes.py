"""The routes that a new set may take: the days of the usual one, and for each stay every place that can have it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date

from quailsched.farm.kinds import kind_in
from quailsched.farm.records import Batch, Farm, Leaving, Origin, Part, Role, Stay
from quailsched.season.days import days_of
from quailsched.season.route import usual_route

Route = tuple[Stay, ...]
Choices = tuple[Route, ...]  # for each stay of a route in turn: it in each place that it may have, the usual one first
_ANY_DAY = date(2000, 1, 1)


def choices_of(farm: Farm, kind_id: str) -> tuple[Choices, ...]:
    """The routes worth trying, those first on which hens are kept, then those on which all birds are sold when the
    cocks mature; of each, those through a setter and a hatcher before those through one cabinet. None without egg
    places.

    A route takes one of the choices for each stay, and no place twice: surplus cocks never go where their hens are.
    """
    usual = usual_route(farm, kind_id, Origin.OWN_EGGS)
    if not usual:
        return ()
    days = [route for each in (usual, _sold_started(farm, kind_id, usual)) for route in _with_cabinet(farm, each)]
    found = (tuple(_in_each_place(farm, stay) for stay in route) for route in dict.fromkeys(days))
    return tuple(choices for choices in found if first_route(choices) is not None)


def first_route(choices: Choices, before: Route = ()) -> Route | None:
    """The route through the first places that go together; None if there are too few places for one."""
    if len(before) == len(choices):
        return before
    for stay in choices[len(before)]:
        if goes_with(before, stay) and (whole := first_route(choices, (*before, stay))) is not None:
            return whole
    return None


def keeps_hens(choices: Choices) -> bool:
    """Whether a laying group is kept on these routes."""
    return any(stays[0].part is Part.HENS for stays in choices)


def goes_with(before: Route, stay: Stay) -> bool:
    """Whether ``stay`` can follow the stays of ``before``: its place is none of theirs."""
    return all(other.place_id != stay.place_id for other in before)


def _sold_started(farm: Farm, kind_id: str, usual: Route) -> Route:
    """``usual`` without parting the birds: all go to the hens' pen and are sold on the day the cocks mature."""
    probe = Batch("", "", kind_id, Origin.OWN_EGGS, _ANY_DAY, 1)
    mature = days_of(kind_in(farm, kind_id), probe).mature
    return tuple(
        replace(stay, to_day=max(mature, stay.from_day + 1), part=Part.ALL, leaving=Leaving.SOLD)
        if stay.part is Part.HENS
        else stay
        for stay in usual
        if stay.part is not Part.COCKS
    )


def _with_cabinet(farm: Farm, route: Route) -> Iterator[Route]:
    """``route``, and the same with one cabinet in the place of a setter and a hatcher."""
    yield route
    cabinet = next((place for place in farm.places if place.role is Role.CABINET), None)
    if cabinet is not None and len(route) > 1 and farm.place(route[1].place_id).role.holds_eggs:
        yield (Stay(cabinet.id, 0, route[1].to_day), *route[2:])


def _in_each_place(farm: Farm, stay: Stay) -> Route:
    """``stay`` in its own place and in all others of the same use."""
    here = farm.place(stay.place_id)
    others = (place for place in farm.places if place.id != here.id and _is_for_the_same(here.role, place.role))
    return (stay, *(replace(stay, place_id=place.id) for place in others))


def _is_for_the_same(here: Role, there: Role) -> bool:
    """A pen of either sort does for a pen. Eggs stay with machines of one role: what a cabinet can do in the place of
    two others is a route of its own."""
    return here is there or (here.is_pen and there.is_pen)
