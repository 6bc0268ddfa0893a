"""Out of the brooder too early: not feathered or still on heat, or into nights that are too cold."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta

from quailsched.farm.records import Batch
from quailsched.farm.units import count_text, day_text, two_warmths_text
from quailsched.season.clash import Clash, tenth_below
from quailsched.season.nights import night_low_c
from quailsched.season.occupancy import Presence
from quailsched.season.season import Season
from quailsched.words import say


def young(season: Season, batch: Batch) -> Iterator[Clash]:
    """In a pen before the birds are feathered and off heat (figures feathered_day, heat_off_day).

    Figure out_day, the usual age for going out, is no rule: feathered birds may go sooner where nights allow it
    (``cold``), and no published least age was found. The usual route takes it (``season.route``).
    """
    days = season.days(batch)
    for place, presence in season.stays_of(batch):
        if not place.role.is_pen:
            continue
        least = batch.start + timedelta(days=days.may_leave_brooder)
        hatch = batch.start + timedelta(days=days.hatch)
        first = max(presence.start, hatch)
        last = min(presence.end, least) - timedelta(days=1)
        run = presence.run_on(first) if first <= last else None
        if run is None or not run.birds:
            continue
        birds = run.birds
        age = (first - hatch).days
        yield Clash(
            kind="young",
            place_id=place.id,
            batch_ids=(batch.id,),
            first=first,
            last=last,
            worst=first,
            need=days.may_leave_brooder - days.hatch,
            have=age,
            unit="days",
            birds_over=birds,
            sentence=say(
                "{birds} of {batch} would be in {place} at {age} old; they are not feathered before day {number}, on "
                "{day}."
                if days.feathered >= days.heat_off
                else "{birds} of {batch} would be in {place} at {age} old; they are not off heat before day {number}, "
                "on {day}.",
                birds=count_text(birds, "bird"),
                batch=batch.name,
                place=place.name,
                age=count_text(age, "day"),
                number=days.may_leave_brooder - days.hatch,
                day=day_text(least),
            ),
        )


def cold(season: Season, batch: Batch) -> Iterator[Clash]:
    """Young birds outdoors on nights below out_min_night_c, until they are hardened (hardened_day)."""
    for place, presence in season.stays_of(batch):
        if place.outdoors and place.role.is_pen:
            yield from _cold_runs(season, place.name, presence)


def _cold_runs(season: Season, place: str, presence: Presence) -> Iterator[Clash]:
    batch, days = presence.batch, season.days(presence.batch)
    limit = season.kind(batch).value("out_min_night_c")
    start = max(presence.start, batch.start + timedelta(days=days.hatch))
    end = min(presence.end, batch.start + timedelta(days=days.hardened))
    lows = {}
    for number in range(max((end - start).days, 0)):
        day = start + timedelta(days=number)
        low = night_low_c(season.farm.settings, day)
        if low is not None and low < limit:
            lows[day] = low
    if not lows:
        return
    first, last = min(lows), max(lows)
    worst = min(lows, key=lambda day: (lows[day], day))
    run = presence.run_on(first)
    if run is None or not run.birds:
        return
    birds = run.birds
    age = (first - batch.start).days - days.hatch
    have = tenth_below(lows[worst], limit)
    low_text, limit_text = two_warmths_text(have, limit, season.farm.settings.units)
    yield Clash(
        kind="cold",
        place_id=presence.leg.stay.place_id,
        batch_ids=(batch.id,),
        first=first,
        last=last,
        worst=worst,
        need=limit,
        have=have,
        unit="degC",
        birds_over=birds,
        sentence=say(
            "{birds} of {batch} would be out in {place} at {age} old, in nights down to {low}; below {limit} is too "
            "cold before day {number}.",
            birds=count_text(birds, "bird"),
            batch=batch.name,
            place=place,
            age=count_text(age, "day"),
            low=low_text,
            limit=limit_text,
            number=days.hardened - days.hatch,
        ),
    )
