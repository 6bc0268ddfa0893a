"""Changes of the groups that a batch is parted into: the laying group and the surplus cocks."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from quailsched.edits.batches import change_place, end_stay
from quailsched.edits.change import Change, apply
from quailsched.edits.records import put
from quailsched.farm.records import Batch, Farm, Leaving, Part, Stay
from quailsched.farm.units import day_text
from quailsched.words import say


def part_cocks(farm: Farm, batch_id: str, index: int, day: int, pen_id: str, gone_on: int, leaving: Leaving) -> Change:
    """The batch is parted on day ``day``, in stay ``index`` of all: the laying group stays and goes on as all would
    have, the surplus cocks go to ``pen_id`` until day ``gone_on``, or until the stays that they have already begin.

    Raises FarmError if that makes no route.
    """
    batch = farm.batch(batch_id)
    together = [stay for stay in batch.stays if stay.part is Part.ALL]
    hens = [stay for stay in batch.stays if stay.part is Part.HENS]
    cocks = [stay for stay in batch.stays if stay.part is Part.COCKS]
    here = batch.stays[index]
    before = together[:index]
    if here.from_day < day:
        before = [*before, replace(here, to_day=day, leaving=None)]
    laying = [replace(here, from_day=max(day, here.from_day), part=Part.HENS), *map(_of_hens, together[index + 1 :])]
    until = cocks[0].from_day if cocks else gone_on
    apart = Stay(pen_id, max(day, here.from_day), until, Part.COCKS, None if cocks else leaving)
    stays = (*before, *laying, *hens, apart, *cocks)
    label = say("Part the cocks of {batch} on {day}", batch=batch.name, day=_day_text(batch, day))
    return put(farm, replace(batch, stays=stays), label)


def _of_hens(stay: Stay) -> Stay:
    return replace(stay, part=Part.HENS)


def leave_on(farm: Farm, batch_id: str, part: Part, day: int, leaving: Leaving) -> Change:
    """The birds of ``part`` are sold or processed on day ``day``; what would follow for them falls away.

    For all birds that takes away the stays of both groups too. Raises FarmError if no stay of theirs is left.
    """
    batch = farm.batch(batch_id)
    chains = {one: [stay for stay in batch.stays if stay.part is one] for one in Part}
    own = [stay for stay in chains[part] if stay.from_day < day]
    if own:
        own[-1] = replace(own[-1], to_day=day, leaving=leaving)
    chains = {Part.ALL: [], Part.HENS: [], Part.COCKS: [], **({} if part is Part.ALL else chains), part: own}
    stays = (*chains[Part.ALL], *chains[Part.HENS], *chains[Part.COCKS])
    label = say("{batch}: {leaving} on {day}", batch=batch.name, leaving=say(leaving), day=_day_text(batch, day))
    return put(farm, replace(batch, stays=stays), label)


def part_and_leave(farm: Farm, batch_id: str, part: Part, day: int, leaving: Leaving, place_id: str) -> Change:
    """The batch is parted on the day before ``day``; the birds of ``part`` spend it in ``place_id`` and leave.

    For birds that are due to leave no later than they would be parted. Raises FarmError if that makes no route.
    """
    batch = farm.batch(batch_id)
    last = sum(1 for stay in batch.stays if stay.part is Part.ALL) - 1
    sooner = end_stay(farm, batch_id, last, day - 1)
    after = apply(farm, sooner)
    index = next(i for i, stay in enumerate(after.batch(batch_id).stays) if stay.part is part)
    there = change_place(after, batch_id, index, place_id)
    return sooner.then(there).then(leave_on(apply(after, there), batch_id, part, day, leaving))


def _day_text(batch: Batch, day: int) -> str:
    return day_text(batch.start + timedelta(days=day))
