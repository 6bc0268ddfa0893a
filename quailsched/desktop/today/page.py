"""What the Today view shows of one day: chores by person in walking order, and what comes after it. No Qt."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta

from quailsched.chores.chore import Chore
from quailsched.chores.walk import walk_key
from quailsched.chores.work_out import chores_between, overdue_chores
from quailsched.farm.records import Farm, Span
from quailsched.farm.units import count_text, day_text, weekday_text
from quailsched.report.chores import able_text
from quailsched.season.season import Season
from quailsched.words import say

AHEAD_DAYS = 7
_AWAY_DAYS = 28  # how far ahead it is told that nobody is at home
_DONE_LATE_DAYS = 14  # as far back as chores can be overdue


@dataclass(frozen=True, slots=True)
class Group:
    """The chores of a person, or of whoever of several comes to it. ``note`` is what the farm tells of the person."""

    name: str
    note: str
    chores: tuple[Chore, ...]

    @property
    def left(self) -> int:
        """How many are still to be done."""
        return sum(chore.is_open for chore in self.chores)


@dataclass(frozen=True, slots=True)
class DayPage:
    """``overdue`` chores stand in the groups too. ``ahead`` are the days after it, ``alone`` those without anybody
    at home, with how many chores fall on each run of them."""

    day: date
    groups: tuple[Group, ...]
    overdue: tuple[Chore, ...]
    ahead: tuple[tuple[date, tuple[Chore, ...]], ...]
    alone: tuple[tuple[Span, int], ...]

    @property
    def chores(self) -> tuple[Chore, ...]:
        return tuple(chore for group in self.groups for chore in group.chores)


def day_page(season: Season, day: date, today: date) -> DayPage:
    """The page of ``day``; what is overdue stands on that of ``today`` only."""
    # One look at many days: what takes time is to go through the batches, not the days.
    coming = chores_between(season, day, day + timedelta(days=_AWAY_DAYS), with_left_out=True)
    by_day: dict[date, list[Chore]] = {}
    for chore in coming:
        by_day.setdefault(chore.day, []).append(chore)
    due = tuple(by_day.get(day, ()))
    overdue: tuple[Chore, ...] = ()
    if day == today:
        overdue = overdue_chores(season, today)
        due = (*overdue, *_done_late(season, today), *due)
    walk = walk_key(season, day)
    due = tuple(sorted(due, key=lambda c: (walk(c.place_id), c.day, c.kind, c.key)))
    days = [day + timedelta(days=n + 1) for n in range(AHEAD_DAYS)]
    ahead = tuple((one, tuple(chore for chore in by_day.get(one, ()) if not chore.left_out)) for one in days)
    alone = tuple(_alone(season, day, [chore for chore in coming if not chore.left_out]))
    return DayPage(day, _groups(season.farm, due), overdue, ahead, alone)


def _done_late(season: Season, today: date) -> tuple[Chore, ...]:
    """What was due earlier and was done today: it stays in sight, so that a wrong tick can be taken back."""
    if not any(mark.done_on == today and mark.day < today for mark in season.farm.marks):
        return ()
    marked = {mark.key for mark in season.farm.marks if mark.done_on == today}
    earlier = chores_between(season, today - timedelta(days=_DONE_LATE_DAYS), today)
    return tuple(chore for chore in earlier if chore.key in marked)


def _groups(farm: Farm, chores: tuple[Chore, ...]) -> tuple[Group, ...]:
    """Those whom nobody can do first, for they need a word; then one person's, in the order of the farm; then those
    that any of several may do."""
    names = [person.name for person in farm.people]
    notes = {person.name: person.note for person in farm.people}

    def order(able: tuple[str, ...]) -> tuple[int, list[int]]:
        return (len(able), [names.index(name) if name in names else len(names) for name in able])

    found: dict[tuple[str, ...], list[Chore]] = {}
    for chore in chores:
        found.setdefault(chore.able, []).append(chore)
    return tuple(
        Group(_name(of[0]), notes.get(able[0], "") if len(able) == 1 else "", tuple(of))
        for able, of in sorted(found.items(), key=lambda item: order(item[0]))
    )


def _name(chore: Chore) -> str:
    text = able_text(chore)
    return text[:1].upper() + text[1:]


def _alone(season: Season, day: date, coming: list[Chore]) -> Iterator[tuple[Span, int]]:
    """Runs of days on which nobody is at home, of a farm that names people."""
    if not season.farm.people:
        return
    days = [day + timedelta(days=n) for n in range(_AWAY_DAYS)]
    empty = [one for one in days if not season.has_hands(one, False)]
    while empty:
        first = last = empty.pop(0)
        while empty and empty[0] == last + timedelta(days=1):
            last = empty.pop(0)
        span = Span(first, last + timedelta(days=1))
        yield span, sum(span.start <= chore.day < span.end for chore in coming)


def state_text(chore: Chore, today: date) -> str:
    """ "was due on Sunday, 4 Apr", "put off from 2 Apr", "left out: dry yet": what is to be told beside a chore."""
    told = []
    if chore.is_open and chore.day < today:
        told.append(say("was due on {weekday}, {day}", weekday=weekday_text(chore.day), day=day_text(chore.day, today)))
    if chore.put_off_from is not None:
        told.append(say("put off from {day}", day=day_text(chore.put_off_from, today)))
    if chore.left_out:
        told.append(say("left out: {reason}", reason=chore.left_out))
    if chore.done_on is not None and chore.done_on != chore.day:
        told.append(say("done on {day}", day=day_text(chore.done_on, today)))
    return ", ".join(told)


def number_text_of(page: DayPage) -> str:
    """ "9 chores, 2 of them done"; "1 chore, done"."""
    chores = page.chores
    if not chores:
        return ""
    done = len(chores) - sum(chore.is_open for chore in chores)
    number = count_text(len(chores), "chore")
    if done == len(chores) == 1:
        return say("{chores}, done", chores=number)
    return say("{chores}, {done} of them done", chores=number, done=done) if done else number
