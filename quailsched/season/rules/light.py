"""Days too short for laying birds."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta

from quailsched.farm.records import Batch, Part, Place
from quailsched.farm.units import count_text, day_text, hours_text
from quailsched.husbandry.daylight import daylight_between
from quailsched.season.clash import Clash, tenth_below
from quailsched.season.occupancy import Presence
from quailsched.season.season import Season
from quailsched.words import say


def dark(season: Season, batch: Batch) -> Iterator[Clash]:
    """Laying birds on days with less light than they need: the longer of daylight and the place's lamps.

    What they need is the low end of figure light_hours, for Coturnix 13 hours, from where light stimulates fully
    (light.min); the figure itself, 14, is what farms give (light.target), and an hour less than that costs no eggs.
    A farm's own figure holds as it stands. One clash for each stay and dark stretch. Not checked where neither the
    farm's latitude nor the place's lamps are told.
    """
    first_egg = season.days(batch).first_egg
    if all(leg.end <= first_egg for leg in season.footprint(batch).legs):
        return
    figure = season.kind(batch).figures["light_hours"]
    need = figure.value if figure.is_replaced else figure.low
    laying_from = batch.start + timedelta(days=first_egg)
    for place, presence in season.stays_of(batch):
        if presence.part is Part.COCKS or place.role.holds_eggs or laying_from >= presence.end:
            continue
        if place.light_hours is not None and place.light_hours >= need:
            continue  # whatever the days are like
        hours = _hours(season, place, presence, max((laying_from - presence.start).days, 0))
        for start, end in _stretches(hours, need):
            yield from _clash(season, place, presence, need, hours, start, end)


def _hours(season: Season, place: Place, presence: Presence, skipped: int) -> list[float]:
    """The light of each day of ``presence`` after the first ``skipped``; [] if nothing is told."""
    start, latitude, lamps = presence.start + timedelta(days=skipped), season.farm.settings.latitude, place.light_hours
    if latitude is None:
        return [] if lamps is None else [lamps] * (presence.end - start).days
    daylight = daylight_between(latitude, start, presence.end)
    return [max(lamps, hours) for hours in daylight] if lamps else daylight


def _stretches(hours: list[float], need: float) -> Iterator[tuple[int, int]]:
    """The runs of days (half-open numbers) with less light than ``need``."""
    start: int | None = None
    for number, light in enumerate([*hours, need]):
        if light < need:
            start = number if start is None else start
        elif start is not None:
            yield start, number
            start = None


def _clash(
    season: Season, place: Place, presence: Presence, need: float, hours: list[float], start: int, end: int
) -> Iterator[Clash]:
    batch = presence.batch
    day_0 = presence.end - timedelta(days=len(hours))  # they run to the end of the stay
    first, last = day_0 + timedelta(days=start), day_0 + timedelta(days=end - 1)
    birds = season.birds(batch, first, presence.part)
    if not birds:
        return
    darkest = min(range(start, end), key=lambda number: hours[number])
    worst = day_0 + timedelta(days=darkest)
    have = max(tenth_below(hours[darkest], need), 0.0)
    is_latitude_known = season.farm.settings.latitude is not None
    yield Clash(
        kind="dark",
        place_id=place.id,
        batch_ids=(batch.id,),
        first=first,
        last=last,
        worst=worst,
        need=need,
        have=have,
        unit="hours",
        birds_over=birds,
        sentence=say(
            "{birds} of {batch} would have {hours} of light in {place} on {day}; with less than {need} they lay less, "
            "or stop."
            if is_latitude_known
            else "{birds} of {batch} would have {hours} of light of lamps in {place} on {day}; with less than {need} "
            "they lay less, or stop. Without the farm's latitude daylight is not counted.",
            birds=count_text(birds, "laying bird"),
            batch=batch.name,
            hours=hours_text(have),
            place=place.name,
            day=day_text(worst),
            need=hours_text(need),
        ),
    )
