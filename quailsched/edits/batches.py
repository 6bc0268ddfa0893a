"""Changes of batches."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

from quailsched.edits.change import Change
from quailsched.edits.records import put
from quailsched.farm.records import Farm, Part
from quailsched.farm.units import day_text
from quailsched.words import say


def start_on(farm: Farm, batch_id: str, start: date) -> Change:
    """Move a whole batch so that its day 0 is ``start``; its route moves along.

    Raises KeyError for an unknown batch and FarmError for a day out of range.
    """
    batch = farm.batch(batch_id)
    # The day itself, not by how many: nudges within a second become one step that must still read true.
    label = say(
        "Set {batch} on {day}" if batch.origin.is_eggs else "Bring in {batch} on {day}",
        batch=batch.name,
        day=day_text(start),
    )
    return put(farm, batch.moved_to(start), label, merge_key=f"start {batch_id}")


def shift(farm: Farm, batch_id: str, days: int) -> Change:
    """Move a whole batch by ``days`` (negative: earlier)."""
    return start_on(farm, batch_id, farm.batch(batch_id).start + timedelta(days=days))


def end_stay(farm: Farm, batch_id: str, index: int, to_day: int) -> Change:
    """Let stay ``index`` end on day ``to_day``; the stays that follow on from it begin there.

    Raises FarmError if a stay would end before it starts.
    """
    batch = farm.batch(batch_id)
    ended = batch.stays[index]
    stays = tuple(
        replace(stay, to_day=to_day)
        if i == index
        else replace(stay, from_day=to_day)
        if i > index and stay.from_day == ended.to_day and stay.part in _parts_after(ended.part)
        else stay
        for i, stay in enumerate(batch.stays)
    )
    moved = batch.start + timedelta(days=to_day)
    place = farm.place(ended.place_id).name
    label = say("{batch} leaves {place} on {day}", batch=batch.name, place=place, day=day_text(moved))
    return put(farm, replace(batch, stays=stays), label)


def _parts_after(part: Part) -> tuple[Part, ...]:
    """The parts whose stays follow on from one of ``part``."""
    return (Part.ALL, Part.HENS, Part.COCKS) if part is Part.ALL else (part,)


def change_place(farm: Farm, batch_id: str, index: int, place_id: str) -> Change:
    """Give stay ``index`` another place."""
    batch = farm.batch(batch_id)
    stays = tuple(replace(s, place_id=place_id) if i == index else s for i, s in enumerate(batch.stays))
    label = say("{batch} goes to {place}", batch=batch.name, place=farm.place(place_id).name)
    return put(farm, replace(batch, stays=stays), label)
