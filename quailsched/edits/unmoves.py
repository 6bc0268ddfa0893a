"""The stays of a batch after it turned out that its birds were not moved. What a move does: ``moves``."""

from __future__ import annotations

from dataclasses import replace

from quailsched.edits.borders import in_line
from quailsched.edits.moves import moved, waiting
from quailsched.farm.facts import Count, Sort
from quailsched.farm.ledger import standing
from quailsched.farm.records import Batch, Farm, Part, Stay

_GROUPS = (Part.HENS, Part.COCKS)


def unmoved(after: Farm, batch: Batch, count: Count) -> Batch:
    """The move of ``count``, which did not happen, on its planned day again; one that was not planned falls away.

    A group that parted from the others by it is with them again.
    """
    day = (count.day - batch.start).days
    others = [one for one in standing(after.counts_of(batch.id)) if one.sort is Sort.MOVED]
    if any((one.day, one.place_id) == (count.day, count.place_id) for one in others):
        return batch
    at = next((i for i, s in enumerate(batch.stays) if (s.place_id, s.from_day) == (count.place_id, day)), None)
    if at is None:
        return batch
    planned = None if count.plan_day is None else (count.plan_day - batch.start).days
    is_beside = any(
        s.place_id == count.place_id and s.from_day == planned and i > at for i, s in enumerate(batch.stays)
    )
    are_groups_known = any(one.part is not Part.ALL for one in others)
    if count.part is not Part.ALL and not are_groups_known:
        together = _in_one(_with_the_others(batch, count.part, day) if planned is None or is_beside else batch)
        if together != batch:
            return together
    if count.plan_day is not None and not is_beside:
        back = moved(after, batch, replace(count, day=count.plan_day))
        return back if are_groups_known or count.part is Part.ALL else _in_one(back)
    for part in Part if count.part is Part.ALL else (Part.ALL, count.part):
        batch = _without_stay(batch, count.place_id, day, part)
    return batch


def _without_stay(batch: Batch, place_id: str, day: int, part: Part) -> Batch:
    """``batch`` without the stay of ``part`` that begins in a place on ``day``: the one before it goes on."""
    stays = list(batch.stays)
    here = (place_id, day, part)
    at = next((i for i, s in enumerate(stays) if (s.place_id, s.from_day, s.part) == here), 0)
    if at == 0 or stays[at - 1].part is not part:
        return batch
    stays[at - 1] = replace(stays[at - 1], to_day=stays[at].to_day, leaving=stays[at].leaving)
    del stays[at]
    return replace(batch, stays=tuple(stays))


def _with_the_others(batch: Batch, part: Part, day: int) -> Batch:
    """The group of ``part``, which did not go on ``day``, on the way of the others, if it was to leave with them; else
    it goes where it is thought to be once they go on."""
    chains = _chains(batch)
    together, own, others = chains[Part.ALL], chains[part], chains[Part.COCKS if part is Part.HENS else Part.HENS]
    if not together or not own or not others or own[0].from_day != day:
        return batch
    if (own[-1].to_day, own[-1].leaving) == (others[-1].to_day, others[-1].leaving):
        chains[part] = [replace(stay, part=part) for stay in others]
    elif others[0].place_id == together[-1].place_id and len(others) > 1 and others[0].to_day is not None:
        chains[part] = waiting(together, [replace(own[0], from_day=others[0].to_day), *own[1:]])
    return _of_chains(batch, chains)


def _in_one(batch: Batch) -> Batch:
    """Groups that go the same way are one; those that both stay on in the place of all part on the day that the first
    of them leaves it."""
    chains = _chains(batch)
    together, hens, cocks = (chains[part] for part in Part)
    if not together or not hens or not cocks:
        return batch
    end, place_id = together[-1].to_day, together[-1].place_id
    if [replace(stay, part=Part.ALL) for stay in hens] == [replace(stay, part=Part.ALL) for stay in cocks]:
        rest = [replace(stay, part=Part.ALL) for stay in hens]
        if rest[0].place_id == place_id:
            rest[0] = replace(rest[0], from_day=together.pop().from_day)
        return _of_chains(batch, {Part.ALL: [*together, *rest], Part.HENS: [], Part.COCKS: []})
    ends = [chain[0].to_day for chain in (hens, cocks) if chain[0].to_day is not None]
    if not ends or any((chain[0].place_id, chain[0].from_day) != (place_id, end) for chain in (hens, cocks)):
        return batch
    first = min(ends)
    if any(chain[0].to_day == first and len(chain) == 1 for chain in (hens, cocks)):
        return batch
    together[-1] = replace(together[-1], to_day=first)
    for part in _GROUPS:
        head, *rest = chains[part]
        chains[part] = rest if head.to_day == first else [replace(head, from_day=first), *rest]
    return _of_chains(batch, chains)


def _chains(batch: Batch) -> dict[Part, list[Stay]]:
    return {part: [stay for stay in batch.stays if stay.part is part] for part in (Part.ALL, *_GROUPS)}


def _of_chains(batch: Batch, chains: dict[Part, list[Stay]]) -> Batch:
    return replace(batch, stays=in_line(tuple(stay for part in (Part.ALL, *_GROUPS) for stay in chains[part])))
