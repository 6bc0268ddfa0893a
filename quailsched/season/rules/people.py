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
from quailsched.words import marked, say


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
    """What cannot wait a day: how long after day 0, where, in which words (to be said), and who can."""

    after: timedelta
    place_id: str
    words: str
    needs_grown_up: bool = False


# Batches with the same contents have the same work, wherever they are moved to.
_KNOWN: WeakKeyDictionary[Footprint, tuple[_Work, ...]] = WeakKeyDictionary()


def _works(are_eggs: bool, footprint: Footprint) -> Iterator[_Work]:
    days, legs = footprint.days, footprint.legs
    yield _Work(timedelta(0), legs[0].stay.place_id, _IS_SET if are_eggs else _COMES)
    for leg in legs:
        place_id = leg.stay.place_id
        if are_eggs and leg.start <= days.lockdown < leg.end:
            yield _Work(timedelta(days=days.lockdown), place_id, marked("{batch} goes into lockdown on {day}"))
        if are_eggs and leg.start <= days.hatch < leg.end:
            yield _Work(timedelta(days=days.hatch), place_id, marked("{batch} hatches on {day}"))
        before = [other for other in legs if other.end == leg.start and other.stay.place_id != leg.stay.place_id]
        if before and leg.start not in (0, days.lockdown):
            yield _Work(timedelta(days=leg.start), place_id, _MOVES[leg.stay.part])
        if leg.stay.leaving is Leaving.PROCESSED:
            words = marked("{batch} is to be processed on {day}")
            yield _Work(timedelta(days=leg.end), place_id, words, needs_grown_up=True)


_IS_SET, _COMES = marked("{batch} is set on {day}"), marked("{batch} comes on {day}")
_MOVES = {
    Part.ALL: marked("{batch} moves to {place} on {day}"),
    Part.HENS: marked("{batch} has a laying group that moves to {place} on {day}"),
    Part.COCKS: marked("{batch} has surplus cocks that move to {place} on {day}"),
}


def _clash(season: Season, batch: Batch, day: date, work: _Work) -> Clash:
    on = say("{weekday} {day}", weekday=weekday_text(day), day=day_text(day))
    what = say(work.words, batch=batch.name, place=season.farm.place(work.place_id).name, day=on)
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
        sentence=say(
            "{what}, and no grown-up is at home." if work.needs_grown_up else "{what}, and nobody is at home.",
            what=what,
        ),
    )
