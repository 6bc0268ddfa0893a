"""Changes of who is at home, and who builds."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from uuid import NAMESPACE_OID, uuid5

from quailsched.edits.change import Change
from quailsched.edits.records import put
from quailsched.farm.check import EARLIEST, LATEST
from quailsched.farm.faults import FarmError, Fault
from quailsched.farm.records import Farm, Person, Span
from quailsched.farm.units import day_text, hours_text

_A_DAY = timedelta(days=1)


def home_on(farm: Farm, person_id: str, day: date) -> Change:
    """A person who would be away on ``day`` is at home on it after all; the days around it stay as they are."""
    person = person_in(farm, person_id)
    away = tuple(piece for span in person.away for piece in _around(span, day))
    return put(farm, replace(person, away=away), f"{person.name} is at home on {day_text(day)}")


def _around(span: Span, day: date) -> tuple[Span, ...]:
    """What is left of ``span`` without ``day``."""
    if not span.holds(day):
        return (span,)
    pieces = (replace(span, end=day), replace(span, start=day + _A_DAY))
    return tuple(piece for piece in pieces if piece.start < piece.end)


def stand_in(farm: Farm, day: date) -> Change:
    """A grown-up who comes on ``day`` and on no other. Raises FarmError if there is one for that day already."""
    away = (Span(EARLIEST, day, "comes on one day only"), Span(day + _A_DAY, LATEST, "comes on one day only"))
    name = f"Stand-in on {day_text(day)} {day.year}"
    person = Person(str(uuid5(NAMESPACE_OID, f"{farm.settings.id} {name}")), name, away=away)
    if farm.find(person.id) is not None:
        raise FarmError([Fault("stand-in", name, "one for each day is accepted", "name")])
    return put(farm, person, f"Ask somebody to come on {day_text(day)}")


def build_for(farm: Farm, person_id: str, hours_a_week: float) -> Change:
    """Another number of hours a week that a person builds."""
    person = person_in(farm, person_id)
    changed = replace(person, build_hours=hours_a_week)
    return put(farm, changed, f"{person.name} builds {hours_text(hours_a_week)} a week")


def person_in(farm: Farm, person_id: str) -> Person:
    """The person with this id. Raises KeyError if there is none."""
    person = farm.find(person_id)
    if not isinstance(person, Person):
        raise KeyError(person_id)
    return person
