"""The plan after a count: facts win, and what follows from them moves along. Pure; the counts themselves: ``counts``.

A border between two stays on which birds are known to have moved never moves again.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from itertools import pairwise

from quailsched.farm.facts import Count, Sort
from quailsched.farm.kinds import kind_of
from quailsched.farm.records import Batch, Farm, Part, Place, Role, Stay
from quailsched.season.birds import birds_on
from quailsched.season.days import Days, days_of, end_of
from quailsched.season.lived import lived_of

_PARTS = (Part.ALL, Part.HENS, Part.COCKS)


def reflowed(before: Farm, after: Farm, count: Count) -> tuple[Batch | Place, ...]:
    """The batches and places that are not as ``after`` has them once ``count`` is believed.

    ``after`` is ``before`` with the count in it (or, where it is corrected, with what stands in its place).
    """
    if count.sort is Sort.BUILT:
        return tuple(_built(after, count))
    found = []
    for batch_id in {count.batch_id, count.to_batch_id} - {""}:
        batch = after.batch(batch_id)
        changed = _replanned(before, after, batch, count)
        if changed != batch:
            found.append(changed)
    return tuple(found)


def _replanned(before: Farm, after: Farm, batch: Batch, count: Count) -> Batch:
    if count.sort is Sort.SET:
        return replace(batch, start=count.day, number=count.number)
    if count.sort is Sort.MOVED:
        return moved(after, batch, count)
    if count.sort in (Sort.HATCHED, Sort.FEATHERED):
        old, new = _days(before, batch), _days(after, batch)
        fixed = lived_of(batch, after.counts_of(batch.id)).moved
        batch = _shifted(batch, new.hatch - old.hatch, old, frozenset(fixed))
        return _feathered(after, batch, new, frozenset(fixed)) if count.sort is Sort.FEATHERED else batch
    return _left(after, batch, count) if count.sort.takes_birds and count.batch_id == batch.id else batch


def _days(farm: Farm, batch: Batch) -> Days:
    return days_of(kind_of(farm, batch), batch, lived_of(batch, farm.counts_of(batch.id)))


def _shifted(batch: Batch, by: int, old: Days, fixed: frozenset[int]) -> Batch:
    """Every border after lockdown ``by`` days later, but for those of ``fixed``."""
    if not by:
        return batch
    borders = {day for stay in batch.stays for day in (stay.from_day, stay.to_day) if day is not None}
    return _with_borders(batch, {day: day + by for day in borders if day > old.lockdown and day not in fixed})


def _with_borders(batch: Batch, moved_to: dict[int, int]) -> Batch:
    """The stays with borders on other days; what then has no day left between its borders gets one."""
    stays = []
    for stay in batch.stays:
        start = moved_to.get(stay.from_day, stay.from_day)
        end = stay.to_day if stay.to_day is None else moved_to.get(stay.to_day, stay.to_day)
        stays.append(replace(stay, from_day=start, to_day=end))
    return replace(batch, stays=_in_line(tuple(stays)))


def _in_line(stays: tuple[Stay, ...]) -> tuple[Stay, ...]:
    """Each stay at least a day long and beginning where the one before it ends."""
    due: dict[Part, int] = {}
    found = []
    for stay in stays:
        start = max(stay.from_day, due.get(stay.part, due.get(Part.ALL, stay.from_day)))
        end = stay.to_day if stay.to_day is None else max(stay.to_day, start + 1)
        found.append(replace(stay, from_day=start, to_day=end))
        if end is not None:
            due[stay.part] = end
    return tuple(found)


def _feathered(farm: Farm, batch: Batch, days: Days, fixed: frozenset[int]) -> Batch:
    """Out of the brooder no earlier than they are feathered."""
    for stay in batch.stays:
        is_brooder = farm.place(stay.place_id).role is Role.BROODER
        if is_brooder and stay.to_day is not None and stay.to_day < days.may_leave_brooder and stay.to_day not in fixed:
            return _with_borders(batch, {stay.to_day: days.may_leave_brooder})
    return batch


def _built(farm: Farm, count: Count) -> Iterator[Batch | Place]:
    """The place stands from that day on; birds that were to go there before it stood wait where they are."""
    place = farm.place(count.place_id)
    was_building = bool(place.work_hours) or place.ready_on is not None
    finished = replace(place, ready_on=count.day, work_hours=0.0, work_from=None)
    if finished != place:
        yield finished
    for batch in farm.batches if was_building else ():
        fixed = lived_of(batch, farm.counts_of(batch.id)).moved
        ready = (count.day - batch.start).days
        waits = {
            stay.from_day: ready
            for earlier, stay in pairwise(batch.stays)
            if stay.place_id == place.id and earlier.place_id != place.id and stay.from_day < ready
            and stay.from_day not in fixed
        }  # fmt: skip
        changed = _with_borders(batch, waits) if waits else batch
        if changed != batch:
            yield changed


def _left(farm: Farm, batch: Batch, count: Count) -> Batch:
    """The stays of birds of which none is left end on that day."""
    kind, lived = kind_of(farm, batch), lived_of(batch, farm.counts_of(batch.id))
    day = (count.day - batch.start).days
    if birds_on(kind, batch, day, Part.ALL, lived) == 0:
        empty = set(_PARTS)
    else:
        apart = {stay.part for stay in batch.stays if stay.part is not Part.ALL and stay.from_day <= day}
        empty = {part for part in apart if birds_on(kind, batch, day, part, lived) == 0}
    days = _days(farm, batch)
    stays = []
    for stay in batch.stays:
        if stay.part not in empty or end_of(stay, days) <= day:
            stays.append(stay)
        elif stay.from_day < day or not stays:
            stays.append(replace(stay, to_day=max(day, stay.from_day + 1), leaving=None))
    return replace(batch, stays=tuple(stays))


def moved(farm: Farm, batch: Batch, count: Count) -> Batch:
    """``batch`` with birds in the place of ``count`` from its day on: the planned move, on that day, or a new stay.

    A part that moves while all are still together parts from the rest then.
    """
    day = (count.day - batch.start).days
    days = _days(farm, batch)
    chains = {part: [stay for stay in batch.stays if stay.part is part] for part in _PARTS}
    apart_from = min((stay.from_day for stay in batch.stays if stay.part is not Part.ALL), default=None)
    if count.part is not Part.ALL and (apart_from is None or day < apart_from):
        chains = _parted(chains, count, day)
    elif count.part is Part.ALL and (apart_from is None or day < apart_from or _plans(chains[Part.ALL], count)):
        chains[Part.ALL] = _chain_moved(chains[Part.ALL], count, day, days)
        end = chains[Part.ALL][-1].to_day
        for part in (Part.HENS, Part.COCKS):
            if chains[part] and end is not None:
                chains[part][0] = replace(chains[part][0], from_day=end)
    else:
        parts = (Part.HENS, Part.COCKS) if count.part is Part.ALL else (count.part,)
        wanted = [part for part in parts if chains[part]]
        planned = [part for part in wanted if _plans(chains[part], count)]
        for part in planned or wanted:
            chains[part] = _chain_moved(chains[part], count, day, days)
        if chains[Part.ALL] and all(chains[part] for part in parts) and _begins(chains, day):
            chains[Part.ALL][-1] = replace(chains[Part.ALL][-1], to_day=day)
    return replace(batch, stays=_in_line(tuple(stay for part in _PARTS for stay in chains[part])))


def _plans(chain: list[Stay], count: Count) -> bool:
    return any(stay.place_id == count.place_id for stay in chain)


def _begins(chains: dict[Part, list[Stay]], day: int) -> bool:
    """Whether the parts all begin on ``day``, and the rest together before it."""
    firsts = [chains[part][0].from_day for part in (Part.HENS, Part.COCKS) if chains[part]]
    return bool(firsts) and all(first == day for first in firsts) and chains[Part.ALL][-1].from_day < day


def _chain_moved(chain: list[Stay], count: Count, day: int, days: Days) -> list[Stay]:
    """Stays of the same birds, which were put into another place on ``day``."""
    planned = [i for i, stay in enumerate(chain) if stay.place_id == count.place_id]
    if planned:
        at = min(planned, key=lambda i: abs(chain[i].from_day - day))
        length = None if chain[at].to_day is None else (chain[at].to_day or 0) - chain[at].from_day
        before = [stay for stay in chain[:at] if stay.from_day < day]
        later = chain[at + 1 :]
        end = chain[at].to_day
        if end is not None and end <= day:
            end = day + max(length or 1, 1)
            later = [stay for stay in later if stay.to_day is None or stay.to_day > end]
        stays = [*before, replace(chain[at], from_day=day, to_day=end), *later]
        if before:
            stays[len(before) - 1] = replace(before[-1], to_day=day)
        return _joined_up(stays)
    at = max((i for i, stay in enumerate(chain) if stay.from_day <= day), default=0)
    here = chain[at]
    if here.from_day >= day:
        return [*chain[:at], replace(here, place_id=count.place_id), *chain[at + 1 :]]
    end = here.to_day if here.to_day is None or here.to_day > day else max(end_of(here, days), day + 1)
    there = replace(here, place_id=count.place_id, from_day=day, to_day=end)
    return _joined_up([*chain[:at], replace(here, to_day=day, leaving=None), there, *chain[at + 1 :]])


def _joined_up(chain: list[Stay]) -> list[Stay]:
    """Each stay from where the one before it ends."""
    stays = chain[:1]
    for stay in chain[1:]:
        start = stays[-1].to_day
        assert start is not None
        end = stay.to_day if stay.to_day is None else max(stay.to_day, start + 1)
        stays.append(replace(stay, from_day=start, to_day=end))
    return stays


def _parted(chains: dict[Part, list[Stay]], count: Count, day: int) -> dict[Part, list[Stay]]:
    """The part of ``count`` in its place from ``day`` on, the other where all were until its own plan begins."""
    together = chains[Part.ALL]
    at = max((i for i, stay in enumerate(together) if stay.from_day < day), default=0)
    here = together[at]
    other = Part.COCKS if count.part is Part.HENS else Part.HENS
    ends = [chain[-1] for chain in (chains[count.part], together) if chain]
    goes = Stay(count.place_id, day, ends[0].to_day, count.part, ends[0].leaving)
    if goes.to_day is not None and goes.to_day <= day:
        goes = replace(goes, to_day=day + 1)
    rest = [replace(stay, part=other, from_day=max(stay.from_day, day)) for stay in together[at:]]
    rest = [stay for stay in rest if stay.to_day is None or stay.to_day > stay.from_day]
    return {
        Part.ALL: [*together[:at], replace(here, to_day=day, leaving=None)],
        count.part: [goes],
        other: _joined_up([*rest, *chains[other]]),
    }
