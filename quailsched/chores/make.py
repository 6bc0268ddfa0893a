"""How a rule makes a chore: names and able people are filled in here, in one place."""

from __future__ import annotations

from datetime import date, timedelta
from functools import partial

from quailsched.chores.chore import Chore
from quailsched.farm.records import Batch, Farm, Part, Place
from quailsched.farm.units import length_text
from quailsched.husbandry.cautions import caution


def able_people(farm: Farm, day: date, needs_grown_up: bool) -> tuple[str, ...]:
    """Names of those at home on ``day`` who can do it. A minor does not do what needs a grown-up."""
    return tuple(p.name for p in farm.people if p.is_home(day) and (p.is_grown_up or not needs_grown_up))


def chore_of(
    farm: Farm,
    kind: str,
    title: str,
    how: str,
    *,
    day: date,
    number: int = 0,
    batch: Batch | None = None,
    place: Place | None = None,
    leg: int | None = None,
    run_of: str = "",
    cautions: tuple[str, ...] = (),
    urgent: bool = False,
    needs_grown_up: bool = False,
    part: Part = Part.ALL,
) -> Chore:
    """A chore; its key is made of ids and ``number``, so it survives any change of days and names.

    ``leg`` is the number of the stay that the chore belongs to, where a batch may have several like it.
    ``run_of`` names the stay that opened a place's run of occupancy, for chores about a place.
    """
    in_units = partial(length_text, units=farm.settings.units)
    ids = [i for i in (batch.id if batch else "", place.id if place and run_of else "", run_of) if i]
    if leg is not None:
        ids.append(str(leg))
    return Chore(
        key="/".join([kind, *ids, str(number)]),
        kind=kind,
        day=day,
        title=title,
        how=how,
        batch_id=batch.id if batch else None,
        batch=batch.name if batch else "",
        place_id=place.id if place else None,
        place=place.name if place else "",
        able=able_people(farm, day, needs_grown_up),
        caution=" ".join(caution(topic, in_units).text for topic in cautions),
        urgent=urgent,
        needs_grown_up=needs_grown_up,
        has_people=bool(farm.people),
        part=part,
    )


def on_day(batch: Batch, number: int) -> date:
    """The date of day ``number`` of a batch."""
    return batch.start + timedelta(days=number)
