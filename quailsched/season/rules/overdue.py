"""Birds kept past their day: surplus cocks that were to be processed, hens at the end of their lay."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta

from quailsched.farm.records import Batch, Part
from quailsched.farm.units import count_text, day_text
from quailsched.season.clash import Clash
from quailsched.season.season import Season
from quailsched.words import say


def overdue(season: Season, batch: Batch) -> Iterator[Clash]:
    """Surplus cocks after the latest day of figure process_day, a laying group after the end of its lay.

    The cocks' day is the high end of the figure's range, the day on which the usual route ends too. A laying group
    on an open stay leaves by itself when it is replaced; cocks on one would stay as long as the hens, so they count.
    Birds that were never parted are a matter of ``cocks``.
    """
    kind, days = season.kind(batch), season.days(batch)
    latest = max(int(kind.figures["process_day"].high), kind.days("process_day"))
    yield from _kept(season, batch, Part.COCKS, days.hatch + latest)
    yield from _kept(season, batch, Part.HENS, days.replaced)


def _kept(season: Season, batch: Batch, part: Part, day: int) -> Iterator[Clash]:
    """One clash for all stays of ``part`` that go on after ``day`` of the batch, at the place that it begins in."""
    late = [p for place, p in season.stays_of(batch) if p.part is part and not place.role.holds_eggs
            and p.leg.end > day and (part is Part.COCKS or p.leg.stay.to_day is not None)]  # fmt: skip
    if not late:
        return
    due = batch.start + timedelta(days=day)
    first, end = max(due, late[0].start), late[-1].end
    birds = season.birds(batch, first, part)
    if not birds:
        return
    place = season.farm.place(late[0].place_id)
    age = day - season.days(batch).hatch
    yield Clash(
        kind="overdue",
        place_id=place.id,
        batch_ids=(batch.id,),
        first=first,
        last=end - timedelta(days=1),
        worst=first,
        need=age,
        have=age + (end - due).days,
        unit="days",
        birds_over=birds,
        sentence=_sentence(
            part,
            birds,
            batch=batch.name,
            day=day_text(due),
            age=count_text(age, "day"),
            place=place.name,
            until=day_text(end - timedelta(days=1), due),
        ),
    )


def _sentence(part: Part, birds: int, **told: str) -> str:
    if part is Part.COCKS:
        return say(
            "{cocks} of {batch} should be gone by {day}, at {age} old, but stay in {place} until {until}: they eat, "
            "and hardly grow any more."
            if birds > 1
            else "{cocks} of {batch} should be gone by {day}, at {age} old, but stays in {place} until {until}: they "
            "eat, and hardly grow any more.",
            cocks=count_text(birds, "surplus cock"),
            **told,
        )
    return say(
        "{birds} of the laying group of {batch} should be gone by {day}, at {age} old, but stay in {place} until "
        "{until}: their lay falls off, and they go on eating."
        if birds > 1
        else "{birds} of the laying group of {batch} should be gone by {day}, at {age} old, but stays in {place} until "
        "{until}: their lay falls off, and they go on eating.",
        birds=count_text(birds, "bird"),
        **told,
    )
