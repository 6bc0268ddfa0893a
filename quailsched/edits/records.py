"""Adding, changing and removing one record: the common ground of all edits."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from quailsched.edits.change import Change, Touch, apply
from quailsched.farm.check import faults_of, faults_of_batch, faults_of_names
from quailsched.farm.check_counts import chore_faults, count_faults, mark_faults
from quailsched.farm.fact_words import count_words
from quailsched.farm.facts import ChoreMark, Count, OwnChore
from quailsched.farm.faults import FarmError, Fault, field_of
from quailsched.farm.ledger import has_facts
from quailsched.farm.records import Acceptance, Batch, Farm, FigureChoice, Place, Record, Settings
from quailsched.farm.terms import named
from quailsched.farm.units import count_text, day_text, names_text
from quailsched.words import say


def _what(record: Record) -> str:
    if isinstance(record, Count):
        return count_words(record)
    if isinstance(record, ChoreMark):
        return say("chore mark")
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
    if frozen := list(_frozen_faults(farm, change)):
        raise FarmError(frozen)
    if all(_is_by_itself(touch) for touch in change.touches):
        old, found = _faults_of_touched(farm, change), _faults_of_touched(after, change)
    else:
        old, found = faults_of(farm), faults_of(after)
    new = [fault for fault in found if fault not in old]
    if new:
        raise FarmError(new)
    return change


def _frozen_faults(farm: Farm, change: Change) -> Iterator[Fault]:
    """Of batches that would get another day 0, though things have happened to them on days counted from it."""
    told = {touch.after.batch_id for touch in change.touches if isinstance(touch.after, Count)}
    for touch in change.touches:
        before, after = touch.before, touch.after
        if not isinstance(before, Batch) or not isinstance(after, Batch) or before.id in told:
            continue
        if before.start != after.start and has_facts(farm, before):
            where = field_of(named(Batch, before.name), say("start"))
            accepted = say("{day} stays, for counts were recorded since", day=day_text(before.start))
            yield Fault(where, day_text(after.start, before.start), accepted, "start", before.id)


def _faults_of_touched(farm: Farm, change: Change) -> list[Fault]:
    """The faults of the records that ``change`` touches, as far as ``farm`` has them; of all names of batches if one
    is new."""
    touched = [record for t in change.touches if (record := farm.find(t.record_id)) is not None]
    counts = [record for record in touched if isinstance(record, Count)]
    touched += [batch for one in counts for id in (one.batch_id, one.to_batch_id) if (batch := farm.find(id))]
    own = {record.id: record for record in touched if isinstance(record, Batch)}
    faults = [fault for batch in own.values() for fault in faults_of_batch(farm, batch)]
    faults += [replace(fault, record_id=one.id) for one in counts for fault in count_faults(farm, one)]
    faults += [fault for one in touched if isinstance(one, ChoreMark) for fault in mark_faults(farm, one)]
    faults += [fault for one in touched if isinstance(one, OwnChore) for fault in chore_faults(farm, one)]
    is_named_otherwise = any(t.before is None and isinstance(t.after, Batch) for t in change.touches)
    return [*faults, *faults_of_names("batch", farm.batches)] if is_named_otherwise else faults


def _is_by_itself(touch: Touch) -> bool:
    """Whether no other record can have a new fault by ``touch``, but for a name that two have: a batch or a count is
    new, a batch has changed under the same name, or it is about a chore."""
    before, after = touch.before, touch.after
    if isinstance(before or after, ChoreMark | OwnChore) or (before is None and isinstance(after, Count)):
        return True
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
    if uses := _uses(farm, record_id):
        accepted = say("it stands in {counts}: what happened stays", counts=count_text(uses, "record"))
        raise FarmError([Fault(say("remove"), _what(record), accepted)])
    if isinstance(record, Place):
        users = [b.name for b in farm.batches if any(s.place_id == record_id for s in b.stays)]
        if users:
            accepted = say("it is on the route of {batches}: give them another place first", batches=names_text(users))
            raise FarmError([Fault(say("remove place"), record.name, accepted, "place")])
    gone = (record, *_left_behind(farm, record_id))
    return sound(farm, Change(say("Remove {what}", what=_what(record)), tuple(Touch(one, None) for one in gone)))


def _uses(farm: Farm, record_id: str) -> int:
    """How many counts, marks and chores name a record."""
    counts = sum(record_id in (c.batch_id, c.to_batch_id, c.place_id, c.person_id, c.corrects) for c in farm.counts)
    marks = sum(record_id == mark.person_id for mark in farm.marks)
    return counts + marks + sum(record_id in (c.batch_id, c.place_id, c.person_id) for c in farm.own_chores)


def _left_behind(farm: Farm, record_id: str) -> list[Acceptance]:
    """The accepted clashes of a batch that name no other batch of the farm."""
    others = {batch.id for batch in farm.batches} - {record_id}
    return [one for one in farm.acceptances if record_id in one.batch_ids and others.isdisjoint(one.batch_ids)]
