"""Days on which somebody is needed and nobody who can is at home."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta

from quailsched.farm.records import Batch, Leaving, Part
from quailsched.farm.units import day_text, weekday_text
from quailsched.season.clash import Clash
from quailsched.season.season import Season


def hands(season: Season, batch: Batch) -> Iterator[Clash]:
    """Setting, lockdown, hatch, moves and processing need hands. A farm that names nobody has none to miss."""
    if not season.farm.people:
        return
    for number, place_id, what, needs_grown_up in _days_with_work(season, batch):
        day = batch.start + timedelta(days=number)
        if not season.has_hands(day, needs_grown_up):
            yield _clash(batch, place_id, day, what, needs_grown_up)


def _days_with_work(season: Season, batch: Batch) -> Iterator[tuple[int, str, str, bool]]:
    """(day number, place, what happens, whether it takes a grown-up) of what cannot wait a day."""
    days, legs = season.days(batch), season.footprint(batch).legs
    farm = season.farm
    yield 0, legs[0].stay.place_id, "is set" if batch.origin.is_eggs else "comes", False
    for leg in legs:
        place = farm.place(leg.stay.place_id)
        if batch.origin.is_eggs and leg.start <= days.lockdown < leg.end:
            yield days.lockdown, place.id, "goes into lockdown", False
        if batch.origin.is_eggs and leg.start <= days.hatch < leg.end:
            yield days.hatch, place.id, "hatches", False
        before = [other for other in legs if other.end == leg.start and other.stay.place_id != leg.stay.place_id]
        if before and leg.start not in (0, days.lockdown):
            yield leg.start, place.id, _move_words(leg.stay.part, place.name), False
        if leg.stay.leaving is Leaving.PROCESSED:
            yield leg.end, place.id, "is to be processed", True


def _move_words(part: Part, place: str) -> str:
    words = {Part.ALL: "moves", Part.HENS: "has a laying group that moves", Part.COCKS: "has surplus cocks that move"}
    return f"{words[part]} to {place}"


def _clash(batch: Batch, place_id: str, day: date, what: str, needs_grown_up: bool) -> Clash:
    who = "no grown-up" if needs_grown_up else "nobody"
    return Clash(
        kind="hands",
        place_id=place_id,
        batch_ids=(batch.id,),
        first=day,
        last=day,
        worst=day,
        need=1,
        have=0,
        unit="people",
        birds_over=0,
        sentence=f"{batch.name} {what} on {weekday_text(day)} {day_text(day)}, and {who} is at home.",
    )
