"""Changes that a proposal makes: fewer eggs, birds sold, a pen ready sooner, a shorter clean-out, better fittings."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from quailsched.edits.change import Change
from quailsched.edits.records import put
from quailsched.farm.records import Farm, Leaving
from quailsched.farm.units import count_text, day_text, hours_text
from quailsched.words import say


def set_number(farm: Farm, batch_id: str, number: int) -> Change:
    """Another number of eggs set, or of birds brought in. Raises FarmError for a number that makes no batch."""
    batch = farm.batch(batch_id)
    what = count_text(number, "egg" if batch.origin.is_eggs else "bird")
    return put(farm, replace(batch, number=number), say("{number} for {batch}", number=what, batch=batch.name))


def leave_sold(farm: Farm, batch_id: str, index: int) -> Change:
    """The birds of stay ``index`` are sold when it ends."""
    batch = farm.batch(batch_id)
    stays = tuple(replace(s, leaving=Leaving.SOLD) if i == index else s for i, s in enumerate(batch.stays))
    return put(farm, replace(batch, stays=stays), say("Sell {batch} when they leave", batch=batch.name))


def ready_on(farm: Farm, place_id: str, day: date) -> Change:
    """A place that is being built stands on ``day``."""
    place = farm.place(place_id)
    return put(farm, replace(place, ready_on=day), say("{place} ready on {day}", place=place.name, day=day_text(day)))


def clean_out(farm: Farm, place_id: str, days: int) -> Change:
    """Another length of clean-out for a place."""
    place = farm.place(place_id)
    label = say("{days} of clean-out for {place}", days=count_text(days, "day"), place=place.name)
    return put(farm, replace(place, clean_out_days=days), label)


def fit_heat(farm: Farm, place_id: str, sources: int) -> Change:
    """Another number of lamps or plates in a brooder."""
    place = farm.place(place_id)
    label = say("{sources} in {place}", sources=count_text(sources, "heat source"), place=place.name)
    return put(farm, replace(place, heat_sources=sources), label)


def fit_drinker(farm: Farm, place_id: str, edge_cm: int) -> Change:
    """Another length of drinker space."""
    place = farm.place(place_id)
    return put(farm, replace(place, drinker_cm=edge_cm), say("Drinker space of {place}", place=place.name))


def fit_feeder(farm: Farm, place_id: str, edge_cm: int) -> Change:
    """Another length of feeder space."""
    place = farm.place(place_id)
    return put(farm, replace(place, feeder_cm=edge_cm), say("Feeder space of {place}", place=place.name))


def fit_lamps(farm: Farm, place_id: str, hours_a_day: float) -> Change:
    """Another number of hours a day that lamps burn."""
    place = farm.place(place_id)
    label = say("{hours} of light in {place}", hours=hours_text(hours_a_day), place=place.name)
    return put(farm, replace(place, light_hours=hours_a_day), label)
