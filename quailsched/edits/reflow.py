"""The plan after a count: facts win, and what follows from them moves along. Pure; the counts themselves: ``counts``.

A border between two stays on which birds are known to have moved never moves again.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date, timedelta

from quailsched.edits.borders import shifted, with_borders
from quailsched.edits.moves import moved as moved
from quailsched.edits.unmoves import unmoved
from quailsched.farm.facts import Count, Sort
from quailsched.farm.kinds import kind_of
from quailsched.farm.ledger import standing
from quailsched.farm.records import Batch, Farm, Origin, Part, Place, Role
from quailsched.husbandry.kind import Kind
from quailsched.season.birds import by_the_books, hatched
from quailsched.season.days import Days, days_of, end_of
from quailsched.season.lived import Lived, lived_of

_PARTS = (Part.ALL, Part.HENS, Part.COCKS)


def reflowed(before: Farm, after: Farm, count: Count) -> tuple[Batch | Place, ...]:
    """The batches and places that are not as ``after`` has them once ``count`` is believed.

    ``after`` is ``before`` with the count in it (or, where it is corrected, with what stands in its place).
    """
    if count.sort is Sort.BUILT:
        return tuple(one for one in _built(after, count) if one != after.find(one.id))
    batch = after.find(count.batch_id)
    if not isinstance(batch, Batch):
        return ()
    changed = _replanned(before, after, batch, count)
    older = (_born(before, before.batch(batch.id)) - _born(after, changed)).days
    parted = _parted_as_old(after, batch.id, older) if older else []
    return (changed, *parted) if changed != batch else tuple(parted)


def _born(farm: Farm, batch: Batch) -> date:
    """The day on which it hatched, or is going to."""
    return batch.start + timedelta(days=_days(farm, batch).hatch)


def _parted_as_old(farm: Farm, batch_id: str, older: int) -> list[Batch]:
    """The batches that parted from one which turns out to be ``older`` than was thought by days: they are too."""
    parents, found = [batch_id], []
    for parent in parents:  # grows while those are found that parted from them in turn
        for one in farm.batches:
            if one.origin is Origin.PARTED and parent in one.from_ids and one.id not in parents:
                parents.append(one.id)
                found.append(replace(one, age_days=max(one.age_days + older, 0)))
    return found


def planned_end(batch: Batch, count: Count) -> date | None:
    """The day on which the stay ends in which the birds of ``count`` are; None if it is left open."""
    day = (count.day - batch.start).days
    here = [
        s for s in batch.stays if s.from_day <= day and (s.part in (count.part, Part.ALL) or count.part is Part.ALL)
    ]
    return None if not here or here[-1].to_day is None else batch.start + timedelta(days=here[-1].to_day)


def _replanned(before: Farm, after: Farm, batch: Batch, count: Count) -> Batch:
    if count.sort is Sort.SET:
        return _set(before, batch, count)
    if count.sort is Sort.MOVED:
        return unmoved(after, batch, count) if count.is_taken_back else moved(after, batch, count)
    fixed = frozenset(lived_of(batch, after.counts_of(batch.id)).moved)
    if count.sort is Sort.HATCHED:
        batch = _hatched(before, after, batch, fixed)
    if count.sort is Sort.FEATHERED and not count.is_taken_back:
        batch = _feathered(after, batch, _days(after, batch), fixed)
    if count.corrects:
        batch = _returned(before, after, batch)
    if count.sort.takes_birds or count.sort in (Sort.CLEAR, Sort.QUIT, Sort.HATCHED):
        return _left(after, batch)
    return batch


def _set(before: Farm, batch: Batch, count: Count) -> Batch:
    """Set on the day of ``count``, or as was planned before it; what has happened since stays on its days."""
    start, number = count.day, count.number
    if count.is_taken_back:
        start, number = count.plan_day or batch.start, count.plan_number or batch.number
    lived, days = lived_of(batch, before.counts_of(batch.id)), _days(before, batch)
    later = (start - batch.start).days
    fixed = {day: day - later for stay in batch.stays for day in (stay.from_day, stay.to_day) if day is not None
             and (day in lived.moved or (lived.hatch is not None and day > days.lockdown))}  # fmt: skip
    return replace(with_borders(batch, fixed) if later else batch, start=start, number=number)


def _days(farm: Farm, batch: Batch) -> Days:
    return days_of(kind_of(farm, batch), batch, lived_of(batch, farm.counts_of(batch.id)))


def _hatched(before: Farm, after: Farm, batch: Batch, fixed: frozenset[int]) -> Batch:
    """What follows the hatch as many days later as it is. A move that an earlier count of the hatch could not bring on
    by as many days, or not at all, does not go back by them either."""
    old, new, lived = _days(before, batch), _days(after, batch), lived_of(batch, before.counts_of(batch.id))
    plan = days_of(kind_of(before, batch), batch, replace(lived, hatch=None))
    by, out = old.hatch - plan.hatch, _out_of_machines(after, batch)
    if by and out is not None:
        back = shifted(batch, -by, plan.lockdown, fixed)
        at = _out_of_machines(after, back)
        squeezed = batch if at is None else with_borders(back, {at: plan.dry}, fixed)
        for one in (batch, squeezed):
            if (
                one != back
                and _out_of_machines(after, one) == plan.dry
                and shifted(one, by, plan.lockdown, fixed) == batch
            ):
                return shifted(one, new.hatch - plan.hatch, plan.lockdown, fixed)
    return shifted(batch, new.hatch - old.hatch, old.lockdown, fixed)


def _out_of_machines(farm: Farm, batch: Batch) -> int | None:
    """The day on which the chicks go to where they are reared."""
    ends = [stay.to_day for stay in batch.stays if farm.place(stay.place_id).role.holds_eggs]
    return ends[-1] if ends else None


def _feathered(farm: Farm, batch: Batch, days: Days, fixed: frozenset[int]) -> Batch:
    """Out of the brooder no earlier than they are feathered."""
    for stay in batch.stays:
        is_brooder = farm.place(stay.place_id).role is Role.BROODER
        if is_brooder and stay.to_day is not None and stay.to_day < days.may_leave_brooder and stay.to_day not in fixed:
            return with_borders(batch, {stay.to_day: days.may_leave_brooder}, fixed)
    return batch


def _built(farm: Farm, count: Count) -> Iterator[Batch | Place]:
    """The place stands from that day on; birds that were to go there before it stood wait where they are."""
    place = farm.place(count.place_id)
    if count.is_taken_back:
        yield _unbuilt(farm, place, count)
        return
    if not (place.work_hours or place.ready_on is not None or count.corrects):
        return  # it stood already
    yield replace(place, ready_on=count.day, work_hours=0.0, work_from=None)
    for batch in farm.batches:
        fixed = lived_of(batch, farm.counts_of(batch.id)).moved
        ready = (count.day - batch.start).days
        waits = {
            stay.from_day: ready
            for stay in batch.stays
            if stay.place_id == place.id and stay.from_day < ready and stay.from_day not in fixed
            and any(one.place_id != place.id and one.to_day == stay.from_day and one.part in (stay.part, Part.ALL)
                    for one in batch.stays)
        }  # fmt: skip
        yield with_borders(batch, waits, fixed) if waits else batch


def _unbuilt(farm: Farm, place: Place, count: Count) -> Place:
    """The place as was planned before ``count``; on which day its hours were left is lost, so they are left on that of
    the count. Where it was finished by another count too, that one holds."""
    others = [one for one in standing(farm.counts) if one.sort is Sort.BUILT and one.place_id == place.id]
    if others:
        return replace(place, ready_on=max(others, key=lambda one: one.entered).day)
    if count.plan_day is None and not count.plan_number:
        return place
    hours = float(count.plan_number or 0)
    return replace(place, ready_on=count.plan_day, work_hours=hours, work_from=count.day if hours else None)


def _left(farm: Farm, batch: Batch) -> Batch:
    """The stays of birds of which none is left end on the day on which the last went, but not before a known move."""
    kind, lived = kind_of(farm, batch), lived_of(batch, farm.counts_of(batch.id))
    days = days_of(kind, batch, lived)
    gone: dict[Part, int | None] = dict.fromkeys(_PARTS, _gone_on(kind, batch, Part.ALL, lived))
    apart = {stay.part for stay in batch.stays} - {Part.ALL}
    for part in apart if gone[Part.ALL] is None else ():
        begins = min(stay.from_day for stay in batch.stays if stay.part is part)
        left_on = _gone_on(kind, batch, part, lived)
        gone[part] = left_on if left_on is not None and begins <= left_on else None
    stays = []
    for stay in batch.stays:
        day = gone[stay.part]
        if day is not None:
            day = max([day, *(last + 1 for last in lived.moved)])
        if day is None or end_of(stay, days) <= day:
            stays.append(stay)
        elif stay.from_day < day or not stays:
            stays.append(replace(stay, to_day=max(day, stay.from_day + 1), leaving=None))
    return replace(batch, stays=tuple(stays))


def _gone_on(kind: Kind, batch: Batch, part: Part, lived: Lived) -> int | None:
    """The day on which the last birds of ``part`` went, or it was plain that none hatch; None while some are left."""
    eggs = batch.number - lived.eggs_taken - (lived.hatched or 0) if batch.origin.is_eggs else 0
    if not hatched(kind, batch, lived) and not any(number < 0 for _, _, number in lived.gone):
        return None if eggs > 0 else max([*(day for day, _ in lived.taken), lived.known_to or 0])
    went = sorted({at for at, _, number in lived.gone if number > 0})
    is_hatching = eggs > 0 and bool(went) and went[-1] < days_of(kind, batch, lived).dry
    if not went or is_hatching or by_the_books(kind, batch, max(went[-1], lived.known_to or 0), part, lived):
        return None
    last = went[-1]
    for day in reversed(went):
        if by_the_books(kind, batch, day, part, lived):
            break
        last = day
    return last


def _returned(before: Farm, after: Farm, batch: Batch) -> Batch:
    """Stays that ended because nobody was left go on as was planned before, where there are some again, or were longer.

    What was to come after them was lost then.
    """
    kind, lived = kind_of(after, batch), lived_of(batch, after.counts_of(batch.id))
    plans = {(one.day - batch.start).days: one for one in standing(before.counts_of(batch.id))
             if one.batch_id == batch.id and (one.sort.takes_birds or one.sort in (Sort.CLEAR, Sort.QUIT))}  # fmt: skip
    gone_on = {part: _gone_on(kind, batch, part, lived) for part in _PARTS}
    apart = any(stay.part is not Part.ALL for stay in batch.stays)
    stays = list(batch.stays)
    for part, left_on in gone_on.items():
        at = max((i for i, stay in enumerate(stays) if stay.part is part), default=None)
        if at is None or (part is Part.ALL and apart) or stays[at].leaving is not None:
            continue
        end = stays[at].to_day
        gone = [day for day in plans if end in (day, day + 1)]
        if end is None or not gone or (left_on is not None and left_on <= end):
            continue
        count = plans[gone[-1]]
        # Of two groups a count of all keeps the end of the cocks; layers mostly stay until they are replaced.
        is_of_cocks = part is Part.HENS and count.part is Part.ALL and stays[-1].part is Part.COCKS
        plan = None if is_of_cocks else count.plan_day
        planned = None if plan is None else (plan - batch.start).days
        if planned is None or planned > end:
            stays[at] = replace(stays[at], to_day=planned)
    return replace(batch, stays=tuple(stays))
