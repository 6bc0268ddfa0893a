"""Adding, changing and removing one record: the common ground of all edits."""

from __future__ import annotations

from quailsched.edits.change import Change, Touch, apply
from quailsched.farm.check import faults_of, faults_of_batch, faults_of_names
from quailsched.farm.faults import FarmError, Fault
from quailsched.farm.records import Acceptance, Batch, Farm, FigureChoice, Place, Record, Settings
from quailsched.farm.terms import named
from quailsched.farm.units import names_text
from quailsched.words import say


def _what(record: Record) -> str:
    if isinstance(record, Acceptance):
        return say("accepted clash ({reason})", reason=record.reason)
    return named(type(record), record.key if isinstance(record, FigureChoice) else record.name)


def put(farm: Farm, record: Record, label: str = "", merge_key: str = "") -> Change:
    """Add ``record``, or replace the one with its id. Raises FarmError if the farm would not be sound."""
    before = farm.find(record.id)
    words = label or say("Add {what}" if before is None else "Change {what}", what=_what(record))
    change = Change(words, (Touch(before, record),), merge_key)
    return sound(farm, change)


def sound(farm: Farm, change: Change) -> Change:
    """``change`` itself. Raises FarmError with the faults that it would bring in."""
    after = apply(farm, change)
    if all(_is_other_plan(touch) for touch in change.touches):
        old, found = _faults_of_batches(farm, change), _faults_of_batches(after, change)
    else:
        old, found = faults_of(farm), faults_of(after)
    new = [fault for fault in found if fault not in old]
    if new:
        raise FarmError(new)
    return change


def _faults_of_batches(farm: Farm, change: Change) -> list[Fault]:
    """The faults of the batches that ``change`` touches, as far as ``farm`` has them; of all names if one is new."""
    own = [record for t in change.touches if isinstance(record := farm.find(t.record_id), Batch)]
    faults = [fault for batch in own for fault in faults_of_batch(farm, batch)]
    is_named_otherwise = any(t.before is None for t in change.touches)
    return [*faults, *faults_of_names("batch", farm.batches)] if is_named_otherwise else faults


def _is_other_plan(touch: Touch) -> bool:
    """Whether a batch is new or has changed under the same name: no other record can have a new fault by that, but
    for a name that two have."""
    before, after = touch.before, touch.after
    if not isinstance(after, Batch):
        return False
    return before is None or (isinstance(before, Batch) and before.name == after.name)


def remove(farm: Farm, record_id: str) -> Change:
    """Take a record away, and with a batch the clashes that were accepted of it alone.

    Raises FarmError for the settings, for a place that batches still use, and for a record without which the others
    would not be sound.
    """
    record = farm.find(record_id)
    if record is None:
        raise FarmError([Fault(say("remove"), record_id, say("the id of a record of this farm is accepted"))])
    if isinstance(record, Settings):
        raise FarmError([Fault(say("remove"), record.name, say("a farm keeps its settings"))])
    if isinstance(record, Place):
        users = [b.name for b in farm.batches if any(s.place_id == record_id for s in b.stays)]
        if users:
            accepted = say("it is on the route of {batches}: give them another place first", batches=names_text(users))
            raise FarmError([Fault(say("remove place"), record.name, accepted, "place")])
    gone = (record, *_left_behind(farm, record_id))
    return sound(farm, Change(say("Remove {what}", what=_what(record)), tuple(Touch(one, None) for one in gone)))


def _left_behind(farm: Farm, record_id: str) -> list[Acceptance]:
    """The accepted clashes of a batch that name no other batch of the farm."""
    others = {batch.id for batch in farm.batches} - {record_id}
    return [one for one in farm.acceptances if record_id in one.batch_ids and others.isdisjoint(one.batch_ids)]
