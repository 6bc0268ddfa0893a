"""The next set turned round: birds that are wanted by a day, to days and numbers of eggs."""

from __future__ import annotations

from datetime import date, timedelta
from enum import StrEnum

from quailsched.farm.kinds import kind_in
from quailsched.farm.records import Farm, Role
from quailsched.outlook.reaching import Aim, Wanted, chance_of, fewest_eggs, ready_age
from quailsched.planner.next_set import NextSet, next_sets_of
from quailsched.planner.routes import choices_of, keeps_hens
from quailsched.quick import dataclass
from quailsched.season.clashes import Checked

MOST_DAYS = 366  # further ahead is another season


class Missing(StrEnum):
    """What a farm lacks for a route, so that no day is looked at."""

    EGG_PLACES = "egg places"
    BROODER = "brooder"
    PEN = "pen"
    SECOND_PEN = "second pen"  # surplus cocks do not stay with their hens


@dataclass(frozen=True, slots=True)
class Offer:
    """``eggs`` eggs on the day and the route of ``one``: the fewest that are enough and make no clash."""

    one: NextSet
    eggs: int


@dataclass(frozen=True, slots=True)
class Answer:
    """What reaches ``aim`` by ``by``: at least ``eggs`` eggs, set by ``latest``, as one of ``offers`` (earliest first).

    The days until ``last`` were looked at. Without an offer, ``closest`` is the day for most eggs in time (perhaps
    none) and ``chance`` what it gives; it is None if it is too late, or something is ``missing``. ``eggs`` is None if
    no number would be sure enough.
    """

    aim: Aim
    by: date
    latest: date
    last: date
    eggs: int | None
    offers: tuple[Offer, ...]
    closest: NextSet | None
    chance: float
    missing: Missing | None


def answer_to(now: Checked, kind_id: str, aim: Aim, by: date, today: date) -> Answer:
    """When eggs can be set for ``aim`` by ``by`` without a new clash. Hens are kept; other birds may be sold."""
    kind = kind_in(now.season.farm, kind_id)
    latest = by - timedelta(days=kind.days("incubation_days") + ready_age(kind, aim.what))
    eggs = fewest_eggs(kind, aim)
    days = min(max((latest - today).days + 1, 0), MOST_DAYS)
    found = next_sets_of(now, kind_id, today, days, with_hens=aim.what is Wanted.HENS)
    fitting = ((one, one.fewest_from(eggs)) for one in found if eggs is not None)
    offers = tuple(Offer(one, number) for one, number in fitting if number is not None)
    closest = None if offers else max(found, key=lambda one: one.eggs, default=None)
    return Answer(
        aim=aim,
        by=by,
        latest=latest,
        last=found[-1].day if found else latest,
        eggs=eggs,
        offers=offers,
        closest=closest,
        chance=chance_of(kind, aim, closest.eggs) if closest is not None else 0.0,
        missing=_missing(now.season.farm, kind_id, aim.what),
    )


def _missing(farm: Farm, kind_id: str, what: Wanted) -> Missing | None:
    """What stands against every route for ``what``."""
    routes = choices_of(farm, kind_id)
    if not routes and not any(place.role.holds_eggs for place in farm.places):
        return Missing.EGG_PLACES
    if what is not Wanted.HENS or any(keeps_hens(choices) for choices in routes):
        return None
    if not any(place.role is Role.BROODER for place in farm.places):
        return Missing.BROODER
    return Missing.SECOND_PEN if any(place.role.is_pen for place in farm.places) else Missing.PEN
