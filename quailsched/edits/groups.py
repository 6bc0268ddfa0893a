"""Birds that leave their batch to be one of their own, or go over to another. No bird is lost or counted twice."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

from quailsched.edits.change import Change, Touch
from quailsched.edits.counts import followed, not_to_come
from quailsched.edits.records import sound
from quailsched.farm.facts import Count, Sort
from quailsched.farm.faults import FarmError, Fault, field_of
from quailsched.farm.kinds import kind_of
from quailsched.farm.records import Batch, Farm, Origin, Part, Place, Stay
from quailsched.farm.terms import named
from quailsched.farm.units import count_text, day_text
from quailsched.season.days import days_of
from quailsched.season.lived import lived_of
from quailsched.words import number_text, say


def part_off(
    farm: Farm,
    count: Count,
    name: str,
    today: date,
) -> Change:
    """The birds of ``count`` (a count PARTED) are a batch of their own from its day on, in the place of the count.

    The new batch has the id ``to_batch_id`` and the name ``name``, is as old as the others, and stays for as long as
    was planned for its part. Raises FarmError for more birds than lived, before the hatch, for a day to come.
    """
    count = replace(count, sort=Sort.PARTED)
    batch = _batch(farm, count.batch_id)
    not_to_come(count, today)
    age = _age(farm, batch, count.day)
    if age < 0:
        accepted = say("it hatches on {day}: then birds can part", day=day_text(count.day - timedelta(days=age)))
        raise FarmError([Fault(field_of(named(Batch, batch.name), say("day")), day_text(count.day), accepted, "day")])
    new = Batch(
        count.to_batch_id, name.strip(), batch.kind, Origin.PARTED, count.day, max(count.number, 1),
        (_stay(farm, batch, count),), age_days=age, from_ids=(batch.id,),
    )  # fmt: skip
    place = farm.place(count.place_id).name
    words = {"number": number_text(count.number), "batch": batch.name, "new": new.name, "place": place}
    label = say("{number} of {batch} become {new}, in {place}", **words)
    told = Change(label, (Touch(farm.find(new.id), new), Touch(None, count)))
    return sound(farm, followed(farm, told, count))


def join(farm: Farm, count: Count, today: date) -> Change:
    """The birds of ``count`` (a count JOINED) go over to the batch ``to_batch_id`` on its day.

    Raises FarmError for birds of another kind, for more than lived, and where the other batch has not hatched.
    """
    count = replace(count, sort=Sort.JOINED)
    batch, other = _batch(farm, count.batch_id), _batch(farm, count.to_batch_id)
    not_to_come(count, today)
    where = field_of(named(Batch, batch.name), say("other batch"))
    if batch.kind != other.kind:
        accepted = say("a batch of the same kind, {kind}, is accepted", kind=batch.kind)
        raise FarmError([Fault(where, other.name, accepted, "to_batch_id")])
    if min(_age(farm, batch, count.day), _age(farm, other, count.day)) < 0:
        accepted = say("two batches that have hatched by {day} are accepted", day=day_text(count.day))
        raise FarmError([Fault(where, other.name, accepted, "to_batch_id")])
    words = {"number": number_text(count.number), "batch": batch.name, "other": other.name}
    label = say("{number} of {batch} join {other}", **words)
    return sound(farm, followed(farm, Change(label, (Touch(None, count),)), count))


def odd_about_joining(farm: Farm, batch_id: str, other_id: str, day: date) -> list[str]:
    """What to think of before two batches are joined, a sentence each: the gap in age, strangers that meet."""
    batch, other = _batch(farm, batch_id), _batch(farm, other_id)
    ages = _age(farm, batch, day), _age(farm, other, day)
    gap, most = abs(ages[0] - ages[1]), kind_of(farm, batch).days("age_gap_days")
    found = []
    if gap > most:
        found.append(
            say("They are {gap} apart in age; up to {most} is usual.", gap=count_text(gap, "day"),
                most=count_text(most, "day"))
        )  # fmt: skip
    if max(ages) >= kind_of(farm, batch).days("cocks_mature_day"):
        found.append(
            say("Grown birds that do not know each other fight: put them together at dusk, in a place that is new to "
                "all, and look after an hour.")
        )  # fmt: skip
    return found


def _batch(farm: Farm, batch_id: str) -> Batch:
    batch = farm.find(batch_id)
    if isinstance(batch, Batch):
        return batch
    accepted = say("the id of a record of this farm is accepted")
    raise FarmError([Fault(say("batch"), batch_id, accepted, "batch_id")])


def _age(farm: Farm, batch: Batch, day: date) -> int:
    """Days since the hatch; less than 0 before it."""
    days = days_of(kind_of(farm, batch), batch, lived_of(batch, farm.counts_of(batch.id)))
    return (day - batch.start).days - days.hatch


def _stay(farm: Farm, batch: Batch, count: Count) -> Stay:
    """Where the birds that part are from then on, for as long as was planned for them."""
    if not isinstance(farm.find(count.place_id), Place):
        accepted = say("the id of a place of this farm is accepted")
        raise FarmError([Fault(say("place"), count.place_id, accepted, "place_id")])
    day = (count.day - batch.start).days
    part = Part.COCKS if count.part is Part.COCKS else Part.HENS
    last = next((stay for stay in reversed(batch.stays) if stay.part in (part, Part.ALL)), batch.stays[-1])
    if last.to_day is None or last.to_day <= day:
        return Stay(count.place_id, 0, None)
    return Stay(count.place_id, 0, last.to_day - day, Part.ALL, last.leaving)
