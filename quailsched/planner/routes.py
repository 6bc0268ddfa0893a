"""The routes that a new set may take: the usual one, and the same through other places of each role."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from itertools import product

from quailsched.farm.kinds import kind_in
from quailsched.farm.records import Batch, Farm, Leaving, Origin, Part, Place, Role, Stay
from quailsched.season.days import days_of
from quailsched.season.route import usual_route

Route = tuple[Stay, ...]
_MOST_ROUTES = 24
_ANY_DAY = date(2000, 1, 1)


def routes_of(farm: Farm, kind_id: str) -> tuple[Route, ...]:
    """Every route worth trying, the usual one first; none without egg places.

    After those on which hens are kept come those on which all birds are sold when the cocks mature. Surplus cocks
    never go where their hens are.
    """
    usual = usual_route(farm, kind_id, Origin.OWN_EGGS)
    if not usual:
        return ()
    kept = [route for route in _through_places(farm, usual) if _keeps_parts_apart(route)]
    sold = list(_through_places(farm, _sold_started(farm, kind_id, usual)))
    return tuple(dict.fromkeys((*kept[:_MOST_ROUTES], *sold[:_MOST_ROUTES])))


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


def _through_places(farm: Farm, route: Route) -> Iterator[Route]:
    choices = [_alternatives(farm, farm.place(stay.place_id)) for stay in route]
    for places in product(*choices):
        yield tuple(replace(stay, place_id=place.id) for stay, place in zip(route, places, strict=True))
    if len(route) < 2 or not farm.place(route[1].place_id).role.holds_eggs:
        return
    for cabinet in farm.places:
        if cabinet.role is Role.CABINET:
            for places in product(*choices[2:]):
                rest = (replace(stay, place_id=place.id) for stay, place in zip(route[2:], places, strict=True))
                yield (Stay(cabinet.id, 0, route[1].to_day), *rest)


def _alternatives(farm: Farm, place: Place) -> list[Place]:
    return [place, *(other for other in farm.places if other.role is place.role and other.id != place.id)]


def _keeps_parts_apart(route: Route) -> bool:
    homes = {part: {stay.place_id for stay in route if stay.part is part} for part in (Part.HENS, Part.COCKS)}
    return not homes[Part.HENS] & homes[Part.COCKS]
