"""In a place that is still being built or out of use."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta

from quailsched.farm.records import Batch, Place, Span
from quailsched.farm.units import count_text, day_text
from quailsched.season.clash import Clash
from quailsched.season.footprint import Run
from quailsched.season.occupancy import Presence
from quailsched.season.season import Season
from quailsched.words import say

_FOREVER_BACK = date(1900, 1, 1)


def closures(place: Place) -> Iterator[Span]:
    """The days on which ``place`` cannot be used: until it is built, and while it is shut."""
    if place.ready_on is not None:
        yield Span(_FOREVER_BACK, place.ready_on, say("being built"))
    yield from place.shut


def notready(season: Season, batch: Batch) -> Iterator[Clash]:
    """Eggs or birds in a place on days on which it cannot be used. One clash for a batch and a closure."""
    for place, presence in season.stays_of(batch):
        for closure in closures(place):
            start, end = max(presence.start, closure.start), min(presence.end, closure.end)
            run = presence.run_on(start) if start < end else None
            if run is not None and (run.eggs or run.birds):
                yield _clash(place, presence, closure, run, start, end)


def _clash(place: Place, presence: Presence, closure: Span, run: Run, start: date, end: date) -> Clash:
    many, what = (run.eggs, "egg") if run.eggs else (run.birds, "bird")
    is_built = closure.start == _FOREVER_BACK
    return Clash(
        kind="notready",
        place_id=place.id,
        batch_ids=(presence.batch.id,),
        first=start,
        last=end - timedelta(days=1),
        worst=start,
        need=many,
        have=0,
        unit=what + "s",
        birds_over=run.birds,
        sentence=say(
            "{batch} ({number}) is due in {place} on {day}, but it cannot be used: {why}, ready on {until}."
            if is_built
            else "{batch} ({number}) is due in {place} on {day}, but it cannot be used: {why}, until {until}.",
            batch=presence.batch.name,
            number=count_text(many, what),
            place=place.name,
            day=day_text(start),
            why=closure.reason or say("out of use"),
            until=day_text(closure.end if is_built else closure.last_day),
        ),
    )
