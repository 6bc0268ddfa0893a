"""What a count has moved, in words: days and numbers of batches, clashes that come and go, chores on other days."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta

from quailsched.chores.work_out import chores_between
from quailsched.farm.records import Batch, Part, Place
from quailsched.farm.units import count_text, day_text
from quailsched.planner.compare import clash_changes
from quailsched.quick import dataclass
from quailsched.report.clashes import title_of
from quailsched.season.clash import Clash
from quailsched.season.clashes import Checked
from quailsched.season.season import Season
from quailsched.words import marked, say

_CHORE_DAYS = 120  # ahead of today in which chores are compared
_WHO = {
    Part.ALL: marked("{batch}: to {place} on {day}, not {old}"),
    Part.HENS: marked("{batch}: laying group to {place} on {day}, not {old}"),
    Part.COCKS: marked("{batch}: surplus cocks to {place} on {day}, not {old}"),
}


@dataclass(frozen=True, slots=True)
class Moved:
    """One thing that is otherwise now. ``is_clash``: a clash that has come or has grown."""

    sentence: str
    is_clash: bool = False


def what_moved(before: Checked, after: Checked, today: date) -> tuple[Moved, ...]:
    """What of the days from ``today`` on is otherwise after a change; empty where nothing moved."""
    old, new = before.season, after.season
    found = [Moved(words) for batch in new.farm.batches for words in _of_batch(old, new, batch, today)]
    found += [Moved(words) for place in new.farm.places for words in _of_place(old, place)]
    changes = clash_changes(before.since(today), after.since(today))
    found += [Moved(_clash_words(new, clash, marked("new: {clash}")), True) for clash in changes.new]
    found += [Moved(_clash_words(new, clash, marked("worse: {clash}")), True) for clash in changes.worse]
    found += [Moved(_clash_words(old, clash, marked("no longer: {clash}"))) for clash in changes.gone]
    found += [Moved(_clash_words(new, clash, marked("less: {clash}"))) for clash in changes.eased]
    if chores := _chores_moved(old, new, today):
        what = count_text(chores, "chore")
        found.append(Moved(say("{chores} on other days, in the calendar too", chores=what)))
    return tuple(found)


def _of_batch(old: Season, new: Season, batch: Batch, today: date) -> Iterator[str]:
    was = old.farm.find(batch.id)
    if not isinstance(was, Batch):
        yield say("{batch} is new", batch=batch.name)
        return
    if was is batch and old.farm.counts_of(batch.id) == new.farm.counts_of(batch.id):
        return
    days, days_before = new.days(batch), old.days(was)
    for number, number_before, words in (
        (days.hatch, days_before.hatch, marked("{batch}: hatch on {day}, not {old}")),
        (days.may_leave_brooder, days_before.may_leave_brooder, marked("{batch}: feathered by {day}, not {old}")),
    ):
        yield from _day_words(batch, was, number, number_before, words)
    yield from _stay_words(new, batch, was)
    is_kept = any(stay.part is not Part.COCKS and stay.to_day is None for stay in batch.stays)
    if is_kept and _day(batch, days.first_egg) != _day(was, days_before.first_egg):
        yield say("{batch}: hens lay from about {day}", batch=batch.name, day=_day(batch, days.first_egg))
    yield from _number_words(old, new, batch, was, today)


def _day_words(batch: Batch, was: Batch, number: int, before: int, words: str) -> Iterator[str]:
    day, old = batch.start + timedelta(days=number), was.start + timedelta(days=before)
    if day != old and number > 0:
        yield say(words, batch=batch.name, day=day_text(day), old=day_text(old))


def _stay_words(new: Season, batch: Batch, was: Batch) -> Iterator[str]:
    before, now = _arrivals(was), _arrivals(batch)
    for (place_id, part, visit), day in now.items():
        old, place = before.get((place_id, part, visit)), new.farm.place(place_id).name
        if old is None:
            yield say("{batch}: to {place} on {day}", batch=batch.name, place=place, day=day_text(day))
        elif day != old:
            yield say(_WHO[part], batch=batch.name, place=place, day=day_text(day), old=day_text(old))
    ends = {(stay.place_id, stay.part) for stay in batch.stays}
    for place_id, part, visit in before:
        place_gone = new.farm.find(place_id)
        if visit == 0 and (place_id, part) not in ends and isinstance(place_gone, Place):
            yield say("{batch}: no longer to {place}", batch=batch.name, place=place_gone.name)


def _arrivals(batch: Batch) -> dict[tuple[str, Part, int], date]:
    """The day of each arrival by place, group, and how often they were there before. A group that stays on where all
    were does not arrive."""
    found: dict[tuple[str, Part, int], date] = {}
    stay_on = {(stay.place_id, stay.to_day) for stay in batch.stays if stay.part is Part.ALL}
    for stay in batch.stays:
        if stay.part is Part.ALL or (stay.place_id, stay.from_day) not in stay_on:
            visit = sum(key[:2] == (stay.place_id, stay.part) for key in found)
            found[stay.place_id, stay.part, visit] = batch.start + timedelta(days=stay.from_day)
    return found


def _number_words(old: Season, new: Season, batch: Batch, was: Batch, today: date) -> Iterator[str]:
    """Birds on the first day from ``today`` on on which there are any, before and now."""
    day = max(today, batch.start + timedelta(days=max(new.days(batch).hatch, 0)))
    birds, before = new.birds(batch, day), old.birds(was, max(day, was.start + timedelta(days=old.days(was).hatch)))
    if birds != before:
        yield say("{batch}: {birds}, not {before}", batch=batch.name, birds=count_text(birds, "bird"), before=before)


def _of_place(old: Season, place: Place) -> Iterator[str]:
    was = old.farm.find(place.id)
    if isinstance(was, Place) and was.ready_on != place.ready_on and place.ready_on is not None:
        yield say("{place} is ready on {day}", place=place.name, day=day_text(place.ready_on))


def _clash_words(season: Season, clash: Clash, words: str) -> str:
    return say(words, clash=title_of(season.farm, clash))


def _day(batch: Batch, number: int) -> str:
    return day_text(batch.start + timedelta(days=number))


def _chores_moved(old: Season, new: Season, today: date) -> int:
    """How many chores of the days to come are on another day than before."""
    end = today + timedelta(days=_CHORE_DAYS)
    days = {chore.key: chore.day for chore in chores_between(old, today, end)}
    return sum(days.get(chore.key, chore.day) != chore.day for chore in chores_between(new, today, end))
