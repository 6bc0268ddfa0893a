"""The stays of a batch after its birds were moved. That they were not after all: ``unmoves``."""

from __future__ import annotations

from dataclasses import replace

from quailsched.edits.borders import in_line
from quailsched.farm.facts import Count
from quailsched.farm.kinds import kind_of
from quailsched.farm.records import Batch, Farm, Part, Stay
from quailsched.season.days import Days, days_of, end_of
from quailsched.season.lived import lived_of

_PARTS = (Part.ALL, Part.HENS, Part.COCKS)
_MOST_LATE = 14  # days by which a move is late at most; after that birds were put back into a place


def moved(farm: Farm, batch: Batch, count: Count) -> Batch:
    """``batch`` with birds in the place of ``count`` from its day on: the planned move, on that day, or a new stay.

    A part that moves while all are still together parts from the rest then.
    """
    day = (count.day - batch.start).days
    lived = lived_of(batch, farm.counts_of(batch.id))
    days = days_of(kind_of(farm, batch), batch, lived)
    chains = {part: [stay for stay in batch.stays if stay.part is part] for part in _PARTS}
    known = frozenset(lived.moved) - {day}
    planned = {part: _planned(chains[part], count.place_id, day, known) for part in _PARTS}
    apart_from = min((stay.from_day for stay in batch.stays if stay.part is not Part.ALL), default=None)
    are_together = apart_from is None or day < apart_from
    if count.part is not Part.ALL and are_together:
        chains = _parted(chains, count, day)
    elif count.part is Part.ALL and (are_together or planned[Part.ALL] is not None):
        chains[Part.ALL] = _chain_moved(chains[Part.ALL], count, planned[Part.ALL], day, days)
        end = chains[Part.ALL][-1].to_day
        for part in (Part.HENS, Part.COCKS):
            if chains[part] and end is not None:
                chains[part][0] = replace(chains[part][0], from_day=end)
    else:
        parts = (Part.HENS, Part.COCKS) if count.part is Part.ALL else (count.part,)
        wanted = [part for part in parts if chains[part]]
        for part in [part for part in wanted if planned[part] is not None] or wanted:
            chains[part] = _chain_moved(chains[part], count, planned[part], day, days)
        if chains[Part.ALL] and all(chains[part] for part in parts) and _begins(chains, day):
            chains[Part.ALL][-1] = replace(chains[Part.ALL][-1], to_day=day)
        for part in parts:
            chains[part] = waiting(chains[Part.ALL], chains[part])
    return replace(batch, stays=in_line(tuple(stay for part in _PARTS for stay in chains[part])))


def planned_move(farm: Farm, batch: Batch, count: Count) -> int | None:
    """The day on which the plan has the move of ``count``; None if it has none there, or has long gone on from it."""
    day = (count.day - batch.start).days
    known = frozenset(lived_of(batch, farm.counts_of(batch.id)).moved) - {day}
    parts = _PARTS if count.part is Part.ALL else (Part.ALL, count.part)
    chains = [[stay for stay in batch.stays if stay.part is part] for part in parts]
    found = [chain[at].from_day for chain in chains
             if (at := _planned(chain, count.place_id, day, known)) is not None]  # fmt: skip
    return min(found, key=lambda one: abs(day - one), default=None)


def _planned(chain: list[Stay], place_id: str, day: int, known: frozenset[int]) -> int | None:
    """The number of the stay that is begun by a move to a place on ``day``: the nearest there, unless birds are known
    to have moved since, or went on from it by the plan long ago."""
    found = [
        i for i, stay in enumerate(chain)
        if stay.place_id == place_id and stay.from_day not in known
        and not any(later.from_day in known and later.from_day < day for later in chain[i + 1 :])
        and (stay.to_day is None or day < stay.to_day or day - stay.from_day <= _MOST_LATE)
    ]  # fmt: skip
    return min(found, key=lambda i: abs(chain[i].from_day - day), default=None)


def waiting(together: list[Stay], chain: list[Stay]) -> list[Stay]:
    """The stays of a group that begin later than all part: until then it is where all were."""
    end = together[-1].to_day if together else None
    if not chain or end is None or chain[0].from_day <= end:
        return chain
    return [Stay(together[-1].place_id, end, chain[0].from_day, chain[0].part), *chain]


def _begins(chains: dict[Part, list[Stay]], day: int) -> bool:
    """Whether the parts all begin on ``day``, and the rest together before it."""
    firsts = [chains[part][0].from_day for part in (Part.HENS, Part.COCKS) if chains[part]]
    return bool(firsts) and all(first == day for first in firsts) and chains[Part.ALL][-1].from_day < day


def _chain_moved(chain: list[Stay], count: Count, at: int | None, day: int, days: Days) -> list[Stay]:
    """Stays of the same birds, which were put into another place on ``day``: by stay ``at``, or as was not planned."""
    if at is not None:
        stay = chain[at]
        before = [one for one in chain[:at] if one.from_day < day]
        if not before and at == 0 and stay.from_day < day and stay.part is Part.ALL:
            before = [stay]  # into the first place once more: they cannot have been nowhere before
        later, end = chain[at + 1 :], stay.to_day
        if end is not None and end <= day:
            end = day + end - stay.from_day
            later = [one for one in later if one.to_day is None or one.to_day > end]
        stays = [*before, replace(stay, from_day=day, to_day=end), *later]
        if before:
            stays[len(before) - 1] = replace(before[-1], to_day=day, leaving=None)
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
