"""Changes of who is at home, and who builds."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from uuid import NAMESPACE_OID, uuid5

from quailsched.edits.change import Change
from quailsched.edits.records import put
from quailsched.farm.faults import FarmError, Fault
from quailsched.farm.range import EARLIEST, LATEST
from quailsched.farm.records import Farm, Person, Span
from quailsched.farm.units import MONTHS, day_text, hours_text
from quailsched.words import say

_A_DAY = timedelta(days=1)


def home_on(farm: Farm, person_id: str, day: date) -> Change:
    """A person who would be away on ``day`` is at home on it after all; the days around it stay as they are."""
    person = person_in(farm, person_id)
    away = tuple(piece for span in person.away for piece in _around(span, day))
    label = say("{person} is at home on {day}", person=person.name, day=day_text(day))
    return put(farm, replace(person, away=away), label)


def _around(span: Span, day: date) -> tuple[Span, ...]:
    """What is left of ``span`` without ``day``."""
    if not span.holds(day):
        return (span,)
    pieces = (replace(span, end=day), replace(span, start=day + _A_DAY))
    return tuple(piece for piece in pieces if piece.start < piece.end)


def stand_in(farm: Farm, day: date) -> Change:
    """A grown-up who comes on ``day`` and on no other. Raises FarmError if there is one for that day already."""
    reason = say("comes on one day only")
    away = (Span(EARLIEST, day, reason), Span(day + _A_DAY, LATEST, reason))
    name = say("Stand-in on {day} {year}", day=day_text(day), year=day.year)
    person = Person(_stand_in_id(farm, day), name, away=away)
    if farm.find(person.id) is not None:
        raise FarmError([Fault(say("stand-in"), name, say("one for each day is accepted"), "name")])
    return put(farm, person, say("Ask somebody to come on {day}", day=day_text(day)))


def _stand_in_id(farm: Farm, day: date) -> str:
    """From words that are the same in every language."""
    return str(uuid5(NAMESPACE_OID, f"{farm.settings.id} Stand-in on {day.day} {MONTHS[day.month - 1]} {day.year}"))


def build_for(farm: Farm, person_id: str, hours_a_week: float) -> Change:
    """Another number of hours a week that a person builds."""
    person = person_in(farm, person_id)
    changed = replace(person, build_hours=hours_a_week)
    label = say("{person} builds {hours} a week", person=person.name, hours=hours_text(hours_a_week))
    return put(farm, changed, label)


def person_in(farm: Farm, person_id: str) -> Person:
    """The person with this id. Raises KeyError if there is none."""
    person = farm.find(person_id)
    if not isinstance(person, Person):
        raise KeyError(person_id)
    return person
