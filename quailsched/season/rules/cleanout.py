"""No time to clean a place out between those who leave and those who come."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date, timedelta

from quailsched.farm.records import Place
from quailsched.farm.units import count_text, day_text, names_text
from quailsched.season.clash import Clash
from quailsched.season.occupancy import Emptying, Presence, Spell, emptyings_of
from quailsched.season.season import Season
from quailsched.words import say


def cleanout(_season: Season, place: Place, spells: Sequence[Spell]) -> Iterator[Clash]:
    """The next batch comes before the place's clean-out days are over. Who overlaps is no matter of this rule."""
    if not place.clean_out_days:
        return
    for emptying in emptyings_of(spells):
        if emptying.next_day is None or (have := (emptying.next_day - emptying.day).days) >= place.clean_out_days:
            continue
        left, came = emptying.left, emptying.came
        yield Clash(
            kind="cleanout",
            place_id=place.id,
            batch_ids=tuple(dict.fromkeys(p.batch.id for p in (*left, *came))),
            first=emptying.next_day,
            last=emptying.day + timedelta(days=place.clean_out_days - 1),
            worst=emptying.next_day,
            need=place.clean_out_days,
            have=have,
            unit="days",
            birds_over=0,
            sentence=_sentence(place, emptying, emptying.next_day, have),
        )


def _sentence(place: Place, emptying: Emptying, next_day: date, have: int) -> str:
    left, came = emptying.left, emptying.came
    leaving = say(
        "{names} leave on {day}" if len(left) > 1 else "{names} leaves on {day}",
        names=_names(left),
        day=day_text(emptying.day),
    )
    coming = say(
        "{names} come in on {day}" if len(came) > 1 else "{names} comes in on {day}",
        names=_names(came),
        day=day_text(next_day),
    )
    return say(
        "{place} needs {days} of clean-out after {leaving}, but {coming}, after {had}."
        if have
        else "{place} needs {days} of clean-out after {leaving}, but {coming}, the same day.",
        place=place.name,
        days=count_text(place.clean_out_days, "day"),
        leaving=leaving,
        coming=coming,
        had=count_text(have, "day"),
    )


def _names(presences: tuple[Presence, ...]) -> str:
    return names_text(list(dict.fromkeys(presence.batch.name for presence in presences)))
