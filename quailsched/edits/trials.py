"""Trials: what-if copies of the plan, kept as the records that they have otherwise than the plan.

A record that a trial has not touched follows the plan, and so do the fields that it has not changed of the others
(``merging``). Where both have changed a field since, the trial's holds, and ``overridden`` tells of it. When the plan
has moved on so far that some of a trial's records do not fit any more, the trial is shown without these, and
``misfits`` tells why.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from quailsched.edits.change import Change, Touch, apply
from quailsched.edits.merging import Overridden, merged, was_now
from quailsched.edits.records import put, sound
from quailsched.farm.check import PLACE_OF_A_STAY, faults_of, is_at
from quailsched.farm.faults import FarmError, Fault, Finding
from quailsched.farm.records import Batch, Farm, Person, Place, Record, Settings, Trial, TrialRecord
from quailsched.farm.trial_text import TrialText, read_text, write_text
from quailsched.quick import dataclass
from quailsched.words import say


@dataclass(frozen=True, slots=True)
class Fitted:
    """The farm of a trial, sound if the plan is; why records of the trial were left out of it; and what the plan has
    otherwise by now in the same places as the trial, which holds."""

    farm: Farm
    misfits: tuple[Fault, ...]
    overridden: tuple[Overridden, ...] = ()


_NAMING = ("batch_id", "to_batch_id", "place_id", "person_id")  # fields of counts and chores
_Put = tuple[str, Record | None]  # the id of a record, and it as it becomes; None where it goes


def start_trial(farm: Farm, name: str, new_id: str) -> Change:
    """A trial that is as the plan is. Raises FarmError for a name that is empty or taken."""
    return put(farm, Trial(new_id, name.strip()), say("Start trial “{trial}”", trial=name.strip()))


def rename_trial(farm: Farm, trial_id: str, name: str) -> Change:
    """Another name. Raises FarmError if it is empty or taken, KeyError for an unknown trial."""
    label = say("Call the trial “{trial}”", trial=name.strip())
    return put(farm, replace(trial_in(farm, trial_id), name=name.strip()), label)


def drop_trial(farm: Farm, trial_id: str) -> Change:
    """Take a trial away; the plan stays as it is."""
    trial = trial_in(farm, trial_id)
    return Change(say("Drop trial “{trial}”", trial=trial.name), (Touch(trial, None),))


def keep_trial(farm: Farm, trial_id: str) -> Change:
    """The plan takes what the trial has otherwise, and the trial goes: one step.

    Raises FarmError with a sentence for everything that does not fit the plan of today.
    """
    trial = trial_in(farm, trial_id)
    refused = [fault for one in trial.records if (fault := _refusal(farm, one)) is not None]
    if refused:
        raise FarmError(refused)
    touches = [Touch(farm.find(one.record_id), _merged(farm, one)[0]) for one in trial.records]
    changed = [touch for touch in touches if touch.before != touch.after]
    try:
        return sound(farm, Change(say("Keep trial “{trial}”", trial=trial.name), (*changed, Touch(trial, None))))
    except FarmError as error:
        raise FarmError([_told(farm, fault) for fault in error.faults]) from None


def change_in_trial(farm: Farm, trial_id: str, change: Change) -> Change:
    """``change``, which was made for the farm of the trial, as a change of the trial's record in ``farm``.

    A record that ends as the plan has it is no longer the trial's own. Raises ValueError if ``change`` does not
    fit the farm of the trial.
    """
    trial = trial_in(farm, trial_id)
    apply(farm_of_trial(farm, trial_id), change)
    records = {one.record_id: one for one in trial.records}
    for touch in change.touches:
        known, plan = records.pop(touch.record_id, None), farm.find(touch.record_id)
        if touch.after != plan:
            was = plan if known is None else _was_now(known, plan, touch.after)
            records[touch.record_id] = TrialRecord(touch.record_id, write_text(touch.after, was))
    after = replace(trial, records=tuple(sorted(records.values(), key=lambda one: one.record_id)))
    merge_key = f"trial {trial_id} {change.merge_key}" if change.merge_key else ""
    label = say("{step} (trial “{trial}”)", step=change.label, trial=trial.name)
    return Change(label, (Touch(trial, after),), merge_key)


def trial_in(farm: Farm, trial_id: str) -> Trial:
    """The trial with this id. Raises KeyError if the farm has none."""
    trial = farm.find(trial_id)
    if not isinstance(trial, Trial):
        raise KeyError(trial_id)
    return trial


def farm_of_trial(farm: Farm, trial_id: str) -> Farm:
    """The plan with the trial's records put in and taken out, without any trials, as far as they fit."""
    return fitted(farm, trial_id).farm


def fitted(farm: Farm, trial_id: str) -> Fitted:
    """The farm of a trial and what of it does not fit the plan of today. Raises KeyError for an unknown trial."""
    trial = trial_in(farm, trial_id)
    refusals = {one: _refusal(farm, one) for one in trial.records}
    misfits = [fault for fault in refusals.values() if fault is not None]
    both = [(one, _merged(farm, one)) for one, fault in refusals.items() if fault is None]
    wanted = [(one.record_id, record) for one, (record, _) in both]
    plan = replace(farm, trials=())
    old = frozenset(faults_of(plan))
    shown, left = _with_as_many(plan, wanted, old)
    shown, left = _with_as_many(shown, left, old)  # what was in the way of one may be in place by now
    for one in left:
        misfits += [_told(farm, fault) for fault in _new_faults(_with(shown, [one]), old)]
    missing = {record_id for record_id, _ in left}
    overridden = tuple(over for one, (_, over) in both if over is not None and one.record_id not in missing)
    return Fitted(shown, tuple(dict.fromkeys(misfits)), overridden)


def _with_as_many(farm: Farm, wanted: Sequence[_Put], old: frozenset[Fault]) -> tuple[Farm, list[_Put]]:
    """``farm`` with all of ``wanted`` that make no new fault, and those that do. Halved until they are found."""
    if not wanted:
        return farm, []
    whole = _with(farm, wanted)
    if not _new_faults(whole, old):
        return whole, []
    if len(wanted) == 1:
        return farm, list(wanted)
    middle = len(wanted) // 2
    first, left = _with_as_many(farm, wanted[:middle], old)
    both, more = _with_as_many(first, wanted[middle:], old)
    return both, left + more


def _with(farm: Farm, wanted: Sequence[_Put]) -> Farm:
    removed = {record_id for record_id, record in wanted if record is None}
    return farm.with_records(removed, tuple(record for _, record in wanted if record is not None))


def _new_faults(farm: Farm, old: frozenset[Fault]) -> list[Fault]:
    return [fault for fault in faults_of(farm) if fault not in old]


def _refusal(farm: Farm, one: TrialRecord) -> Fault | None:
    """Why a record of a trial can be in no farm like this one; None if it can."""
    where = say("record of the trial")
    try:
        record = read_text(one.content).after
    except (ValueError, RecursionError, FarmError):
        return Fault(where, one.record_id, say("the JSON text of a record is accepted"), "records")
    was = farm.find(one.record_id)
    if isinstance(was, Trial) or isinstance(record, Trial):
        return Fault(where, one.record_id, say("a trial holds no trials"), "records")
    if isinstance(was, Settings) is not isinstance(record, Settings):
        return Fault(where, one.record_id, say("a farm keeps its one settings record"), "records")
    return None


def _told(farm: Farm, fault: Fault) -> Fault:
    """``fault`` as the keeper of ``farm`` understands it: places, batches and people by name, not by id."""
    if fault.field in _NAMING:
        return _told_of_named(farm, fault)
    if not is_at(fault, PLACE_OF_A_STAY):
        return fault
    place = farm.find(str(fault.value))
    if isinstance(place, Place):
        accepted = say("the trial takes this place away, so the batch needs another one")
        return replace(fault, value=place.name, accepted=accepted)
    accepted = say("change the batch anew in the trial, or drop the trial")
    return replace(fault, value=say("a place that the plan no longer has"), accepted=accepted)


def _told_of_named(farm: Farm, fault: Fault) -> Fault:
    """``fault`` of a count or a chore that names a record which the farm of the trial has not."""
    named = farm.find(str(fault.value))
    if isinstance(named, Batch | Place | Person):
        found = say("the trial takes {name} away", name=named.name)
        accepted = say("it is needed here by now: change it anew in the trial, or drop the trial")
    else:
        found = say("the plan no longer has it")
        accepted = say("change this anew in the trial, or drop the trial")
    return replace(fault, value=Finding(found), accepted=accepted)


def _merged(farm: Farm, one: TrialRecord) -> tuple[Record | None, Overridden | None]:
    """The record of a trial in the plan ``farm``. Whole, where the trial did not keep what it was."""
    text = read_text(one.content)
    return merged(text.was, farm.find(one.record_id), text.after) if text.knows_was else (text.after, None)


def _was_now(known: TrialRecord, plan: Record | None, after: Record | None) -> Record | None:
    try:
        text = read_text(known.content)
    except (ValueError, RecursionError, FarmError):
        text = TrialText(None)
    return was_now(text.was, plan, text.after, after) if text.knows_was else plan
