"""Moves of people: somebody is at home after all, somebody comes for a day, somebody builds more."""

from __future__ import annotations

import math
from collections.abc import Iterator
from datetime import date, timedelta
from functools import partial

from quailsched.edits.people import build_for, home_on, stand_in
from quailsched.farm.records import Farm, Person
from quailsched.farm.units import day_text, hours_text, weekday_text
from quailsched.planner.move import Move
from quailsched.season.clash import Clash
from quailsched.words import marked, say, value_text

_LONGEST_TRIP_DAYS = 31  # who is away for longer lives elsewhere
_MOST_HOURS_A_WEEK = 40.0


def person_moves(farm: Farm, clash: Clash, today: date) -> Iterator[Move]:
    """What people can do about a day without hands or a place that is not built in time."""
    if clash.kind == "hands":
        yield from _hands(farm, clash.first)
    if clash.kind == "build":
        for person in farm.people:
            yield from _builds_more(farm, person, clash, today)


def _hands(farm: Farm, day: date) -> Iterator[Move]:
    """Whether a person is able to do it is the checker's to say."""
    on = f"{weekday_text(day)} {day_text(day)}"
    sentence = say("Ask somebody grown up to come on {day}; nobody else's days change.", day=on)
    yield Move(partial(stand_in, day=day), "stand-in", 4, sentence)
    for person in farm.people:
        span = next((span for span in person.away if span.holds(day)), None)
        if span is None or (span.end - span.start).days > _LONGEST_TRIP_DAYS:
            continue
        reason = f" ({span.reason})" if span.reason else ""
        words = {"person": person.name, "day": on, "reason": reason}
        sentence = say("{person} stays at home on {day} and is away only on the other days{reason}.", **words)
        if (span.end - span.start).days == 1:
            sentence = say("{person} stays at home on {day} after all{reason}.", **words)
        yield Move(partial(home_on, person_id=person.id, day=day), f"home {person.id}", 5, sentence)


def _builds_more(farm: Farm, person: Person, clash: Clash, today: date) -> Iterator[Move]:
    """Enough hours a week from today on, in half hours.

    A person has one pace, which is counted from ``work_from`` on, before today too. The hours are worked out from
    today on, so that they are enough although those of the past have not been worked.
    """
    place = farm.place(clash.place_id)
    start = max(today, place.work_from or today)
    ahead = (start + timedelta(days=n) for n in range((clash.first - start).days))
    days = sum(1 for day in ahead if person.is_home(day))
    if not days:
        return
    missing = (clash.need - clash.have + 0.05) * 7 / days  # ``have`` is rounded to a tenth
    for more in (missing, missing * 1.5):  # some of it may go into another place that is due sooner
        hours = math.ceil((person.build_hours + more) * 2) / 2
        if hours > _MOST_HOURS_A_WEEK:
            return
        words = {
            "person": person.name,
            "hours": hours_text(hours),
            "place": place.name,
            "day": day_text(clash.first),
        }
        sentence = say("{person} builds {hours} a week, until {place} is done by {day}.", **words)
        if person.build_hours:
            form = marked("{person} builds {hours} a week instead of {old}, until {place} is done by {day}.")
            sentence = say(form, old=value_text(person.build_hours), **words)
        cost = 1 + (hours - person.build_hours) / 2
        edit = partial(build_for, person_id=person.id, hours_a_week=hours)
        yield Move(edit, f"build {person.id}", cost, sentence)
