"""Changes that a proposal makes: fewer eggs, birds sold young, a pen ready sooner, a shorter clean-out."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from quailsched.edits.change import Change
from quailsched.edits.records import put
from quailsched.farm.records import Farm, Leaving
from quailsched.farm.units import count_text, day_text


def set_number(farm: Farm, batch_id: str, number: int) -> Change:
    """Another number of eggs set, or of birds brought in. Raises FarmError for a number that makes no batch."""
    batch = farm.batch(batch_id)
    what = "egg" if batch.origin.is_eggs else "bird"
    return put(farm, replace(batch, number=number), f"{count_text(number, what)} for {batch.name}")


def sell_from(farm: Farm, batch_id: str, index: int, to_day: int) -> Change:
    """The birds of stay ``index`` are sold on day ``to_day``; what would follow for them falls away."""
    batch = farm.batch(batch_id)
    sold = replace(batch.stays[index], to_day=to_day, leaving=Leaving.SOLD)
    part = sold.part
    later = [s for s in batch.stays[index + 1 :] if s.part is not part and s.from_day != batch.stays[index].to_day]
    return put(farm, replace(batch, stays=(*batch.stays[:index], sold, *later)), f"Sell {batch.name} young")


def leave_sold(farm: Farm, batch_id: str, index: int) -> Change:
    """The birds of stay ``index`` are sold when it ends."""
    batch = farm.batch(batch_id)
    stays = tuple(replace(s, leaving=Leaving.SOLD) if i == index else s for i, s in enumerate(batch.stays))
    return put(farm, replace(batch, stays=stays), f"Sell {batch.name} when they leave")


def ready_on(farm: Farm, place_id: str, day: date) -> Change:
    """A place that is being built stands on ``day``."""
    place = farm.place(place_id)
    return put(farm, replace(place, ready_on=day), f"{place.name} ready on {day_text(day)}")


def clean_out(farm: Farm, place_id: str, days: int) -> Change:
    """Another length of clean-out for a place."""
    place = farm.place(place_id)
    return put(farm, replace(place, clean_out_days=days), f"{count_text(days, 'day')} of clean-out for {place.name}")
