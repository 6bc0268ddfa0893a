"""Places that will not be built in time: the hours of work left, against the hours that people have for it."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import pairwise

from quailsched.farm.records import Person, Place
from quailsched.farm.units import day_text, hours_text, names_text
from quailsched.season.clash import Clash, tenth_below
from quailsched.season.occupancy import Presence
from quailsched.season.season import Season
from quailsched.words import say

_MOST_DAYS = 36_500  # a pace that takes a century is none
_LEAST_HOURS = 1e-6  # sevenths of a week do not add up to the last digit


@dataclass(slots=True)
class _Job:
    """The work on one place: from ``start``, due on ``due`` when ``who`` are in it; ``left`` is worked down."""

    place: Place
    start: date
    due: date
    who: tuple[Presence, ...]
    left: float
    had: float = 0.0  # hours until ``due``
    done: date | None = None  # the first day on which it can be used; None if that is never


def build(season: Season) -> Iterator[Clash]:
    """Hours of building left (``work_hours`` on ``work_from``) that people do not have until somebody is due.

    Each person has build_hours / 7 on every day at home. All of them work on the place that is needed first, then
    on the next. Somebody is due on the first day from ``work_from`` on that a batch is in the place.
    """
    jobs = sorted(_jobs(season), key=lambda job: (job.due, job.place.position, job.place.id))
    if not jobs:
        return
    _work(season.farm.people, jobs)
    for job in jobs:
        if job.place.work_hours - job.had > _LEAST_HOURS:
            yield _clash(season, job)


def _jobs(season: Season) -> Iterator[_Job]:
    for place in season.farm.places:
        start = place.work_from
        if not place.work_hours or start is None:
            continue
        ahead = [presence for presence in season.presences(place) if presence.end > start]
        if ahead:
            due = min(max(presence.start, start) for presence in ahead)
            who = tuple(p for p in ahead if p.start <= due)
            yield _Job(place, start, due, who, place.work_hours)


def _work(people: Sequence[Person], jobs: Sequence[_Job]) -> None:
    """Give out the hours, in stretches of days on which the same people are at home and the same jobs are open."""
    away = (day for person in people for span in person.away for day in (span.start, span.end))
    first = min(job.start for job in jobs)
    borders = sorted({*away, *(job.start for job in jobs), *(job.due for job in jobs)})
    borders = [day for day in borders if day >= first]
    for start, end in pairwise([*borders, borders[-1] + timedelta(days=_MOST_DAYS)]):
        at_home = sum(person.build_hours for person in people if person.is_home(start))
        _give(start, (end - start).days, at_home / 7, [job for job in jobs if job.start <= start])


def _give(start: date, days: int, hours_a_day: float, jobs: Sequence[_Job]) -> None:
    given = 0.0
    for job in jobs:
        if job.left <= _LEAST_HOURS:
            continue
        taken = min(job.left, max(hours_a_day * days - given, 0.0))
        given += taken
        job.left -= taken
        if start < job.due:
            job.had += taken
        if job.left <= _LEAST_HOURS:
            job.done = start + timedelta(days=max(math.ceil(given / hours_a_day - _LEAST_HOURS), 1))


def _clash(season: Season, job: _Job) -> Clash:
    place, need = job.place, job.place.work_hours
    have = max(tenth_below(job.had, need), 0.0)
    in_it_until = max(presence.end for presence in job.who)
    end = in_it_until if job.done is None else min(job.done, in_it_until)
    return Clash(
        kind="build",
        place_id=place.id,
        batch_ids=tuple(sorted({presence.batch.id for presence in job.who})),
        first=job.due,
        last=end - timedelta(days=1),
        worst=job.due,
        need=need,
        have=have,
        unit="hours",
        birds_over=0,
        sentence=_sentence(season, job, have),
    )


def _sentence(season: Season, job: _Job, have: float) -> str:
    place, hours = job.place.name, hours_text(job.place.work_hours)
    is_in_use = all(presence.start < job.due for presence in job.who)
    if not any(person.build_hours for person in season.farm.people):
        return say(
            "{place} needs {hours} of building, {due}, and nobody has hours for building.",
            place=place,
            hours=hours,
            due=_in_it_on(job) if is_in_use else _coming(job),
        )
    if is_in_use:
        return say(
            "{place} needs {hours} of building, and {due} already: {pace}.",
            place=place,
            hours=hours,
            due=_in_it(job),
            pace=_pace(job),
        )
    return say(
        "{place} needs {hours} of building, and people have {there} for it until {due}: {pace}."
        if have
        else "{place} needs {hours} of building, and people have none for it until {due}: {pace}.",
        place=place,
        hours=hours,
        there=hours_text(have),
        due=_coming(job),
        pace=_pace(job),
    )


def _pace(job: _Job) -> str:
    if job.done is None:
        return say("at that pace it is never done")
    return say("at that pace it is done by {day}", day=day_text(job.done, job.due))


def _names(job: _Job) -> list[str]:
    return sorted({presence.batch.name for presence in job.who})


def _coming(job: _Job) -> str:
    names = _names(job)
    return say(
        "{who} come on {day}" if len(names) > 1 else "{who} comes on {day}",
        who=names_text(names),
        day=day_text(job.due),
    )


def _in_it_on(job: _Job) -> str:
    names = _names(job)
    return say(
        "{who} are in it on {day}" if len(names) > 1 else "{who} is in it on {day}",
        who=names_text(names),
        day=day_text(job.due),
    )


def _in_it(job: _Job) -> str:
    names = _names(job)
    return say(
        "on {day} {who} are in it" if len(names) > 1 else "on {day} {who} is in it",
        who=names_text(names),
        day=day_text(job.due),
    )
