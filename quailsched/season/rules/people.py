"""Days on which somebody is needed and nobody who can is at home."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from typing import NamedTuple
from weakref import WeakKeyDictionary

from quailsched.farm.records import Batch, Leaving, Part
from quailsched.farm.units import day_text, weekday_text
from quailsched.season.clash import Clash
from quailsched.season.footprint import Footprint
from quailsched.season.season import Season


def hands(season: Season, batch: Batch) -> Iterator[Clash]:
    """Setting, lockdown, hatch, moves and processing need hands. A farm that names nobody has none to miss."""
    if not season.farm.people:
        return
    footprint = season.footprint(batch)
    works = _KNOWN.get(footprint)
    if works is None:
        works = _KNOWN[footprint] = tuple(_works(batch.origin.is_eggs, footprint))
    for work in works:
        day = batch.start + work.after
        if not season.has_hands(day, work.needs_grown_up):
            yield _clash(season, batch, day, work)


class _Work(NamedTuple):
    """What cannot wait a day: how long after day 0, where, in which words ("{place}" is its name), and who can."""

    after: timedelta
    place_id: str
    words: str
    needs_grown_up: bool = False


# Batches with the same contents have the same work, wherever they are moved to.
_KNOWN: WeakKeyDictionary[Footprint, tuple[_Work, ...]] = WeakKeyDictionary()


def _works(are_eggs: bool, footprint: Footprint) -> Iterator[_Work]:
    days, legs = footprint.days, footprint.legs
    yield _Work(timedelta(0), legs[0].stay.place_id, "is set" if are_eggs else "comes")
    for leg in legs:
        place_id = leg.stay.place_id
        if are_eggs and leg.start <= days.lockdown < leg.end:
            yield _Work(timedelta(days=days.lockdown), place_id, "goes into lockdown")
        if are_eggs and leg.start <= days.hatch < leg.end:
            yield _Work(timedelta(days=days.hatch), place_id, "hatches")
        before = [other for other in legs if other.end == leg.start and other.stay.place_id != leg.stay.place_id]
        if before and leg.start not in (0, days.lockdown):
            yield _Work(timedelta(days=leg.start), place_id, _MOVES[leg.stay.part])
        if leg.stay.leaving is Leaving.PROCESSED:
            yield _Work(timedelta(days=leg.end), place_id, "is to be processed", needs_grown_up=True)


_MOVES = {
    Part.ALL: "moves to {place}",
    Part.HENS: "has a laying group that moves to {place}",
    Part.COCKS: "has surplus cocks that move to {place}",
}


def _clash(season: Season, batch: Batch, day: date, work: _Work) -> Clash:
    who = "no grown-up" if work.needs_grown_up else "nobody"
    what = work.words.replace("{place}", season.farm.place(work.place_id).name)
    return Clash(
        kind="hands",
        place_id=work.place_id,
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
