"""One batch made into two, so that a part of it can go through another place."""

from __future__ import annotations

from dataclasses import replace
from itertools import count
from uuid import NAMESPACE_OID, uuid5

from quailsched.edits.change import Change, Touch
from quailsched.edits.records import sound
from quailsched.farm.check import MOST_NAME_LETTERS
from quailsched.farm.faults import FarmError, Fault, field_of
from quailsched.farm.ledger import has_facts
from quailsched.farm.records import Batch, Farm, Stay
from quailsched.words import number_text, say


def split_batch(farm: Farm, batch_id: str, number: int, index: int, from_day: int, place_id: str) -> Change:
    """``number`` of the eggs set (or birds brought in) become a batch of their own, with the same days and stays, but
    for stay ``index``: from day ``from_day`` on it has the place ``place_id`` instead.

    The new batch's name is the first free one after the old one's; its id follows from the arguments, so that the
    same split gives the same farm. Raises FarmError if one of the two would be no batch, and where things were counted:
    nobody knows of which of the two.
    """
    batch = farm.batch(batch_id)
    if has_facts(farm, batch):
        accepted = say("things were counted of it since: birds can part from it instead")
        where = field_of(say("split"), batch.name)
        raise FarmError([Fault(where, number, accepted, "number", batch_id)])
    name = part_name(farm, batch)
    new_id = str(uuid5(NAMESPACE_OID, f"{batch_id} {name} {number} {index} {from_day} {place_id}"))
    rest = replace(batch, number=batch.number - number)
    other = replace(
        batch, id=new_id, name=name, number=number, stays=_with_other_place(batch.stays, index, from_day, place_id)
    )
    place = farm.place(place_id).name
    label = say("Split {batch}: {number} go to {place}", batch=batch.name, number=number_text(number), place=place)
    return sound(farm, Change(label, (Touch(batch, rest), Touch(farm.find(new_id), other))))


def part_name(farm: Farm, batch: Batch) -> str:
    """ "Clover 2", "Clover 3" ...: the first that is free; "Batch 7, part 2" where the name ends in a number itself."""
    taken = {other.name.strip().casefold() for other in farm.batches}
    stem = batch.name.strip()[: MOST_NAME_LETTERS - 12]
    stem = say("{name}, part", name=stem) if stem[-1:].isdigit() else stem
    return next(name for n in count(2) if (name := f"{stem} {n}").casefold() not in taken)


def _with_other_place(stays: tuple[Stay, ...], index: int, from_day: int, place_id: str) -> tuple[Stay, ...]:
    stay = stays[index]
    there: tuple[Stay, ...] = (replace(stay, place_id=place_id),)
    if from_day > stay.from_day:
        before = replace(stay, to_day=from_day, leaving=None)
        there = (before, replace(stay, from_day=from_day, place_id=place_id))
    return (*stays[:index], *there, *stays[index + 1 :])
