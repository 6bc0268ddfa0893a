"""What the keeper says about chores: done, left out, put off, given to somebody; and chores of the keeper's own."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from uuid import NAMESPACE_OID, uuid5

from quailsched.edits.change import Change, Touch, apply
from quailsched.edits.counts import record
from quailsched.edits.records import put, sound
from quailsched.farm.facts import ChoreMark, Count, OwnChore
from quailsched.farm.faults import FarmError, Fault, field_of
from quailsched.farm.records import Farm, Person
from quailsched.farm.units import day_text
from quailsched.words import say


def tick(farm: Farm, key: str, due: date, title: str, on: date, counts: Sequence[Count] = ()) -> Change:
    """The chore ``key``, due on ``due``, is done; what was counted with it is recorded in the same step.

    Raises FarmError for counts that cannot be, and for a day ``on`` that is to come (see ``counts.record``).
    """
    mark = replace(_mark_of(farm, key, due), done_on=on, left_out="")
    change = Change(say("Done: {chore}", chore=title), (Touch(farm.find(mark.id), mark),))
    after = apply(farm, change)
    for count in counts:
        step = record(after, count, on)
        change = replace(change.then(step), label=change.label)
        after = apply(farm, change)
    return sound(farm, change)


def untick(farm: Farm, key: str, due: date, title: str) -> Change:
    """Not done after all. What was counted with it stays: counts are taken back one by one."""
    return _marked(farm, replace(_mark_of(farm, key, due), done_on=None), say("Not done: {chore}", chore=title))


def leave_out(farm: Farm, key: str, due: date, title: str, reason: str) -> Change:
    """The chore is not going to be done, for a reason. Raises FarmError without one."""
    if not reason.strip():
        accepted = say("a reason of at least one letter is needed")
        raise FarmError([Fault(field_of(title, say("reason")), reason, accepted, "reason")])
    mark = replace(_mark_of(farm, key, due), left_out=" ".join(reason.split()), done_on=None)
    return _marked(farm, mark, say("Leave out: {chore}", chore=title))


def put_off(farm: Farm, key: str, due: date, title: str, day: date) -> Change:
    """The chore is done on another day; on its own one it is no longer put off."""
    mark = replace(_mark_of(farm, key, due), moved_to=None if day == due else day, left_out="")
    return _marked(farm, mark, say("{chore}: on {day}", chore=title, day=day_text(day)))


def give(farm: Farm, key: str, due: date, title: str, person_id: str) -> Change:
    """Somebody is to do the chore; "" for anybody who can."""
    person = farm.find(person_id)
    who = person.name if isinstance(person, Person) else say("anybody")
    mark = replace(_mark_of(farm, key, due), person_id=person_id)
    return _marked(farm, mark, say("{chore}: for {person}", chore=title, person=who))


def put_own(farm: Farm, chore: OwnChore) -> Change:
    """Add a chore of the keeper's own, or change it. Raises FarmError if it makes no sense."""
    return put(farm, chore)


def _mark_of(farm: Farm, key: str, due: date) -> ChoreMark:
    """The mark of a chore as it is. Its id follows from the key: a chore has one mark at most."""
    mark_id = str(uuid5(NAMESPACE_OID, f"{farm.settings.id} {key}"))
    found = farm.find(mark_id)
    return found if isinstance(found, ChoreMark) else ChoreMark(mark_id, key, due)


def _marked(farm: Farm, mark: ChoreMark, label: str) -> Change:
    """A mark that says nothing any more is taken away."""
    is_empty = mark == ChoreMark(mark.id, mark.key, mark.day)
    before = farm.find(mark.id)
    if is_empty and before is None:
        return Change(label, ())
    return sound(farm, Change(label, (Touch(before, None if is_empty else mark),)))
