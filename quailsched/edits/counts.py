"""Recording, correcting and taking back counts. The plan moves along in the same step (``reflow``)."""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import date, datetime, timedelta

from quailsched.edits.change import Change, Touch, apply
from quailsched.edits.missing import missing_count, short_by
from quailsched.edits.moves import planned_move
from quailsched.edits.records import sound
from quailsched.edits.reflow import planned_end, reflowed
from quailsched.farm.fact_words import count_words, field_words
from quailsched.farm.facts import Count, Sort
from quailsched.farm.faults import FarmError, Fault, Finding, field_of
from quailsched.farm.kinds import kind_of
from quailsched.farm.ledger import standing
from quailsched.farm.records import Batch, Farm, Part, Place
from quailsched.farm.units import count_text, day_text
from quailsched.season.birds import birds_on, by_the_books, hatched
from quailsched.season.days import days_of
from quailsched.season.lived import lived_of
from quailsched.words import number_text, say

_IN_EGGS = (Sort.SET, Sort.CLEAR, Sort.QUIT, Sort.PIPPED, Sort.LAID)


def record(farm: Farm, count: Count, today: date) -> Change:
    """Write down ``count``, with what the plan said, and let the plan follow: one step.

    Birds that a head count or a sexing did not find are written down as missing. Raises FarmError for a count that
    cannot be: of a day to come, of more birds than lived, without what its sort needs.
    """
    not_to_come(count, today)
    told = _with_plan(farm, count)
    return _sound(farm, _written(farm, label_of(farm, told), told), told.id)


def _written(farm: Farm, label: str, count: Count) -> Change:
    """``count`` in the farm, birds that are missing by it beside it, and the plan after both."""
    change = followed(farm, Change(label, (Touch(None, count),)), count)
    after = apply(farm, change)
    missing = missing_count(after, count)
    if missing is None:
        return change
    return replace(change.then(followed(after, Change(label, (Touch(None, missing),)), missing)), label=label)


def _sound(farm: Farm, change: Change, count_id: str) -> Change:
    """As ``sound``; where the count itself is at fault, counts that it leaves no birds for are not told of."""
    try:
        return sound(farm, change)
    except FarmError as error:
        own = [fault for fault in error.faults if fault.record_id == count_id]
        raise FarmError(own or list(error.faults)) from None


def correct(farm: Farm, count_id: str, better: Count, today: date) -> Change:
    """Put ``better`` in the place of a count, which stays as its trace. Raises FarmError as ``record``."""
    old = _standing(farm, count_id)
    _stays_with_both(old)
    not_to_come(better, today)
    told = replace(better, corrects=count_id, plan_day=old.plan_day, plan_number=old.plan_number)
    if better.batch_id != old.batch_id:
        accepted = say("take it back and record it for the other batch instead")
        where = field_of(count_words(old), say("batch"))
        raise FarmError([Fault(where, Finding(say("it is of another batch")), accepted, "batch_id", old.id)])
    if better.sort is Sort.BUILT and better.place_id != old.place_id:
        accepted = say("take it back and record it for the other place instead")
        where = field_of(count_words(old), field_words("place_id"))
        raise FarmError([Fault(where, Finding(say("it is of another place")), accepted, "place_id", old.id)])
    label = say("Correct: {what}", what=label_of(farm, told))
    if old.sort is Sort.MOVED and (old.day, old.place_id, old.part) != (told.day, told.place_id, told.part):
        try:
            return sound(farm, _moved_otherwise(farm, label, old, told))
        except FarmError:  # the plan has gone on from there: what follows from the old move stays
            pass
    return _sound(farm, _written(farm, label, told), told.id)


def _moved_otherwise(farm: Farm, label: str, old: Count, better: Count) -> Change:
    """The plan as if the move of ``old`` had not happened, and then that of ``better``, in one step."""
    undone = replace(old, id=better.id, corrects=old.id, is_taken_back=True)
    back = followed(farm, Change(label, (Touch(None, undone),)), undone)
    between = apply(farm, back)
    if (old.place_id, old.part) != (better.place_id, better.part):
        better = _with_plan(between, replace(better, plan_day=None))
    change = back.then(followed(between, Change(label, (Touch(undone, better),)), better))
    return replace(change, touches=tuple(touch for touch in change.touches if touch.before != touch.after))


def take_back(farm: Farm, count_id: str, new_id: str, entered: datetime) -> Change:
    """Let a count hold no longer; the trace of it stays. The plan goes back to what it said before, where it can.

    Raises FarmError for birds that parted or joined: the other batch has them.
    """
    old = _standing(farm, count_id)
    _stays_with_both(old)
    gone = replace(old, id=new_id, corrects=count_id, is_taken_back=True, entered=entered)
    label = say("Take back: {what}", what=label_of(farm, old))
    try:
        return sound(farm, _written(farm, label, gone))
    except FarmError:  # the plan has gone on from there: it stays as it is
        change = Change(label, (Touch(None, gone),))
        missing = missing_count(apply(farm, change), gone)
        return sound(farm, change.then(Change(label, (Touch(None, missing),))) if missing else change)


def followed(farm: Farm, change: Change, count: Count) -> Change:
    """``change``, which puts ``count`` into the farm, and what moves along with it."""
    try:
        after = apply(farm, change)
        records = reflowed(farm, after, count)
    except KeyError:  # it names a batch or a place that is not there: ``sound`` tells of it
        return change
    return change.then(Change(change.label, tuple(Touch(after.find(one.id), one) for one in records)))


def not_to_come(count: Count, today: date) -> None:
    """Raises FarmError for a count of a day after ``today``."""
    if count.day > today:
        accepted = say("today, {day}, or a day before is accepted", day=day_text(today))
        where = field_of(count_words(count), say("day"))
        raise FarmError([Fault(where, day_text(count.day, today), accepted, "day")])


def _stays_with_both(count: Count) -> None:
    if count.sort in (Sort.PARTED, Sort.JOINED):
        accepted = say("undo the step in the history instead: the other batch has these birds now")
        raise FarmError([Fault(count_words(count), count.number, accepted, "number", count.id)])


def _standing(farm: Farm, count_id: str) -> Count:
    found = farm.find(count_id)
    if isinstance(found, Count) and found in standing(farm.counts):
        return found
    accepted = say("a count that holds is accepted: this one was corrected or taken back already")
    raise FarmError([Fault(say("count"), count_id, accepted, "corrects")])


def _with_plan(farm: Farm, count: Count) -> Count:
    """``count`` with the day and number that the plan had for it."""
    batch, place = farm.find(count.batch_id), farm.find(count.place_id)
    if count.sort is Sort.BUILT and isinstance(place, Place):
        return replace(count, plan_day=place.ready_on, plan_number=math.ceil(place.work_hours) or None)
    if not isinstance(batch, Batch):
        return count
    kind, lived = kind_of(farm, batch), lived_of(batch, farm.counts_of(batch.id))
    days = days_of(kind, batch, lived)
    if count.sort is Sort.SET:
        return replace(count, plan_day=batch.start, plan_number=batch.number)
    if count.sort is Sort.HATCHED and lived.hatched is None:
        day = batch.start + timedelta(days=days.hatch)
        return replace(count, plan_day=day, plan_number=hatched(kind, batch, lived))
    if count.sort is Sort.MOVED:
        at = planned_move(farm, batch, count)
        return count if at is None else replace(count, plan_day=batch.start + timedelta(days=at))
    if count.sort.takes_birds or count.sort in (Sort.CLEAR, Sort.QUIT):
        return replace(count, plan_day=planned_end(batch, count))
    if count.sort is Sort.FEATHERED:
        return replace(count, plan_day=batch.start + timedelta(days=days.feathered))
    if count.sort in (Sort.COUNTED, Sort.SEXED):
        day_number = (count.day - batch.start).days
        return replace(count, plan_number=birds_on(kind, batch, day_number, Part.ALL, lived))
    return count


def label_of(farm: Farm, count: Count) -> str:
    """A count as a step of the history: "Clover: 70 chicks hatched, 3 May"."""
    batch, place = farm.find(count.batch_id), farm.find(count.place_id)
    what = _what(count)
    if count.sort in (Sort.MOVED, Sort.BEDDING, Sort.BUILT) and isinstance(place, Place):
        what = f"{what}, {place.name}"
    of = batch.name if isinstance(batch, Batch) else place.name if isinstance(place, Place) else ""
    words = {"what": what, "day": day_text(count.day), "of": of}
    is_place_told = not isinstance(batch, Batch) and count.sort in (Sort.BEDDING, Sort.BUILT)
    return say("{of}: {what}, {day}" if of and not is_place_told else "{what}, {day}", **words)


def _what(count: Count) -> str:
    """ "70 hatched", "2,500 g fed", "moved"."""
    sort = say(count.sort)
    if count.sort in (Sort.FEED_BOUGHT, Sort.FED):
        return say("{grams} g {sort}", grams=number_text(count.grams), sort=sort)
    if count.sort is Sort.HOURS:
        return say("{hours} hours worked", hours=number_text(count.hours, 1))
    if count.sort is Sort.NOTE:
        return say("note: {words}", words=" ".join(count.words.split())[:40])
    if not count.number and count.sort not in (Sort.HATCHED, Sort.LAID):
        return sort
    return say("{number} {sort}", number=number_text(count.number), sort=sort)


def odd_about(farm: Farm, count: Count) -> list[str]:
    """What is merely odd about ``count``, a sentence each, to be asked before it is recorded."""
    batch = farm.find(count.batch_id)
    if not isinstance(batch, Batch):
        return []
    kind, lived = kind_of(farm, batch), lived_of(batch, farm.counts_of(batch.id))
    days, day = days_of(kind, batch, lived), (count.day - batch.start).days
    found = []
    if count.sort is Sort.HATCHED and lived.hatch is None and abs(day - days.hatch) > 3:
        found.append(say("{batch} was to hatch on {day}.", batch=batch.name,
                         day=day_text(batch.start + timedelta(days=days.hatch), count.day)))  # fmt: skip
    alive = birds_on(kind, batch, day, Part.ALL, lived)
    if count.sort is Sort.DIED and count.number > max(5, alive // 5):
        found.append(say("{number} of {alive} died in one day.", number=number_text(count.number),
                         alive=count_text(alive, "bird")))  # fmt: skip
    if count.sort in (Sort.COUNTED, Sort.SEXED) and (missing := short_by(farm, count)):
        found.append(say("{number} birds should be there: {missing} would be written down as missing.",
                         number=number_text(count.number + missing), missing=number_text(missing)))  # fmt: skip
    is_of_birds = count.sort.takes_birds or count.sort in (Sort.COUNTED, Sort.SEXED, Sort.WEIGHED, Sort.FEATHERED)
    if is_of_birds and day < days.hatch - 1:
        found.append(say("{batch} hatches on {day}: there are no birds yet.", batch=batch.name,
                         day=day_text(batch.start + timedelta(days=days.hatch), count.day)))  # fmt: skip
    there = by_the_books(kind, batch, day, count.part, lived)
    if count.sort is Sort.MOVED and lived.hatched is not None and 0 < count.number < there * 9 // 10:
        words = {"number": number_text(count.number), "alive": count_text(there, "bird"), "batch": batch.name}
        found.append(
            say(
                "{number} of {alive} moved, but in the plan all of them do. For some only, part them from {batch}.",
                **words,
            )
        )
    if count.sort is Sort.WEIGHED and count.number and count.grams:
        expected, each = kind.at("weight_g", max(day - days.hatch, 0)), count.grams / count.number
        if not expected / 2 <= each <= expected * 2:
            found.append(say("{each} g each, where about {expected} g are usual at this age.",
                             each=number_text(each), expected=number_text(expected)))  # fmt: skip
    if count.sort is Sort.SET and abs(day) > 14:
        found.append(say("{batch} was to be set on {day}.", batch=batch.name, day=day_text(batch.start, count.day)))
    if count.sort in _IN_EGGS or count.sort is Sort.HATCHED:
        found += _twice(farm, batch, count)
    return found


def _twice(farm: Farm, batch: Batch, count: Count) -> list[str]:
    same = [one for one in standing(farm.counts_of(batch.id)) if (one.sort, one.day) == (count.sort, count.day)]
    if not same:
        return []
    return [say("{what} stands there already: this one comes on top.", what=label_of(farm, same[-1]))]
