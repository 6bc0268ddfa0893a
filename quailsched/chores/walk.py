"""In which order a keeper goes round: hands and boots carry nothing from old to young, from sick to healthy."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta

from quailsched.farm.facts import Cause, Sort
from quailsched.farm.ledger import standing
from quailsched.farm.records import Origin, Place
from quailsched.season.season import Season

# Young before old, healthy before sick, quarantine last (common practice, row "order" of the reference). Among places
# without birds: eggs, brooders, then pens.
_ROLES = {"setter": 0, "hatcher": 1, "cabinet": 2, "brooder": 3, "pen": 4, "grass pen": 5}
_SICK_FOR = timedelta(days=14)  # after the last death by sickness (our own convention)

WalkKey = Callable[[str | None], tuple[int, ...]]


def walk_key(season: Season, day: date) -> WalkKey:
    """What sorts the places of chores on ``day``; chores without a place come last."""
    places = {place.id: _key(season, place, day) for place in season.farm.places}
    return lambda place_id: places.get(place_id or "", (9,))


def _key(season: Season, place: Place, day: date) -> tuple[int, ...]:
    # On the day that they leave, the chore is still about the birds that were there.
    there = season.slice_on(place, day) or season.slice_on(place, day - timedelta(days=1))
    batches = [share.presence.batch for share in there.shares] if there is not None else []
    ages = [(day - batch.start).days - season.days(batch).hatch for batch in batches]
    is_apart = any(
        batch.origin is Origin.BOUGHT_BIRDS and (day - batch.start).days < season.kind(batch).days("quarantine_days")
        for batch in batches
    )
    is_sick = any(
        count.sort is Sort.DIED and count.cause is Cause.SICK and timedelta(0) <= day - count.day <= _SICK_FOR
        for batch in batches
        for count in standing(season.farm.counts_of(batch.id))
    )
    eggs_first = 0 if place.role.holds_eggs else 1
    youngest = max(min(ages), 0) if ages else 0  # an empty place is to stay clean, so it comes early
    return (2 if is_apart else 1 if is_sick else 0, eggs_first, youngest, _ROLES[place.role], place.position)
