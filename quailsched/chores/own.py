"""Chores that the keeper has added, once or by a recurrence rule."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date, datetime, time, timedelta

from quailsched.chores.chore import Chore
from quailsched.chores.make import able_people
from quailsched.farm.facts import OwnChore
from quailsched.farm.records import Batch, Farm, Person, Place


def own_chores(farm: Farm, start: date, end: date) -> Iterator[Chore]:
    """Those of the days from ``start`` to ``end`` (half-open). The key has the day: a rule has no other number."""
    for own in farm.own_chores:
        for day in days_of_own(own, start, end):
            yield _chore(farm, own, day)


def days_of_own(own: OwnChore, start: date, end: date) -> list[date]:
    """The days of a chore from ``start`` to ``end`` (half-open)."""
    if not own.repeat:
        return [own.first] if start <= own.first < end else []
    if end <= own.first:
        return []
    from dateutil.rrule import rrulestr  # here, for it takes a while to come in, and most farms need it never

    rule = rrulestr(own.repeat, dtstart=datetime.combine(own.first, time()), ignoretz=True)
    last = datetime.combine(end - timedelta(days=1), time())
    return [moment.date() for moment in rule.between(datetime.combine(start, time()), last, inc=True)]


def _chore(farm: Farm, own: OwnChore, day: date) -> Chore:
    batch, place, person = farm.find(own.batch_id), farm.find(own.place_id), farm.find(own.person_id)
    chore = Chore(
        key=f"own/{own.id}/{day.isoformat()}",
        kind="own chore",
        day=day,
        title=own.name,
        how=own.words,
        batch_id=batch.id if isinstance(batch, Batch) else None,
        batch=batch.name if isinstance(batch, Batch) else "",
        place_id=place.id if isinstance(place, Place) else None,
        place=place.name if isinstance(place, Place) else "",
        able=able_people(farm, day, needs_grown_up=False),
        has_people=bool(farm.people),
    )
    if isinstance(person, Person):
        return replace(chore, given_to=person.name, able=(person.name,))
    return chore
