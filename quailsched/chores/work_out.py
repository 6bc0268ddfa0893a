"""All chores of a season between two days, as the keeper has marked them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import date, timedelta

from quailsched.chores.chicks import chick_chores
from quailsched.chores.chore import Chore
from quailsched.chores.eggs import egg_chores
from quailsched.chores.grown import grown_chores
from quailsched.chores.own import own_chores
from quailsched.chores.places import place_chores
from quailsched.chores.told import done_on, own_counts
from quailsched.chores.walk import walk_key
from quailsched.farm.facts import ChoreMark
from quailsched.farm.records import Batch, Farm, Person
from quailsched.season.season import Season

_AROUND = timedelta(days=60)  # no chore of a batch lies further before its start or after its end: tested


def chores_between(season: Season, start: date, end: date, *, with_left_out: bool = False) -> tuple[Chore, ...]:
    """The chores of the days from ``start`` to ``end`` (half-open), by day and then in walking order.

    One that was put off is on its new day. Those left out are there only if they are asked for.
    """
    marks = {mark.key: mark for mark in season.farm.marks}
    due = [*_unmarked(season, start, end)]
    seen = {chore.key for chore in due}
    put_off = [mark for mark in marks.values() if mark.moved_to is not None and start <= mark.moved_to < end]
    due += _by_keys(season, [mark for mark in put_off if mark.key not in seen])
    found = [_marked(season.farm, chore, marks.get(chore.key)) for chore in due]
    shown = [chore for chore in found if start <= chore.day < end and (with_left_out or not chore.left_out)]
    keys = {day: walk_key(season, day) for day in {chore.day for chore in shown}}
    return tuple(sorted(shown, key=lambda c: (c.day, keys[c.day](c.place_id), c.kind, c.key)))


def overdue_chores(season: Season, today: date, days: int = 14) -> tuple[Chore, ...]:
    """What was due on the ``days`` before ``today`` and still has to be done: of what comes round again, the last time.

    Nothing before the farm's first count or mark: until then nobody said what was done. But what was asked for once,
    by a chore of one's own, is.
    """
    farm, earliest = season.farm, today - timedelta(days=days)
    told = [*(count.day for count in farm.counts), *(mark.day for mark in farm.marks)]
    once = {f"own/{own.id}/{own.first.isoformat()}" for own in farm.own_chores if not own.repeat}
    first = max(min(told), earliest) if told else today
    found: dict[str, Chore] = {}
    for chore in chores_between(season, earliest if once else first, today, with_left_out=True):
        if chore.kind not in PASSED_BY_EVENING and (chore.day >= first or chore.key in once):
            found[_round_of(chore)] = chore
    return tuple(chore for chore in found.values() if chore.is_open)


PASSED_BY_EVENING = ("turn", "collect", "watch")  # what was not done on the day itself cannot be done any more


def _round_of(chore: Chore) -> str:
    """What two turns of the same chore have in common."""
    is_round = chore.batch_id is None or chore.kind == "own chore"
    return chore.key.rpartition("/")[0] if is_round else chore.key


def _unmarked(season: Season, start: date, end: date) -> Iterator[Chore]:
    for batch in season.farm.batches:
        if _may_have_chores(season, batch, start, end):
            yield from (chore for chore in _of_batch(season, batch) if start <= chore.day < end)
    yield from _of_no_batch(season, start, end)


def _of_batch(season: Season, batch: Batch) -> Iterator[Chore]:
    """All chores of ``batch``; those done of which a count says so."""
    own = own_counts(season, batch)
    for rule in (egg_chores, chick_chores, grown_chores):
        for chore in rule(season, batch):
            told = done_on(season, batch, chore, own) if own else None
            yield replace(chore, done_on=told) if told is not None else chore


def _of_no_batch(season: Season, start: date, end: date) -> Iterator[Chore]:
    """Those of places, and the keeper's own."""
    for place in season.farm.places:
        yield from (chore for chore in place_chores(season, place, start, end) if start <= chore.day < end)
    yield from own_chores(season.farm, start, end)


def _by_keys(season: Season, marks: Sequence[ChoreMark]) -> Iterator[Chore]:
    """The chores of these marks, whatever day each is due on by now: the plan may have moved since it was marked."""
    if not marks:
        return
    keys = {mark.key for mark in marks}
    for batch in season.farm.batches:
        if any(f"/{batch.id}/" in key for key in keys):
            yield from (chore for chore in _of_batch(season, batch) if chore.key in keys)
    days = [mark.day for mark in marks]
    around = _of_no_batch(season, min(days) - _AROUND, max(days) + _AROUND)
    yield from (chore for chore in around if chore.key in keys)


def _marked(farm: Farm, chore: Chore, mark: ChoreMark | None) -> Chore:
    if mark is None:
        return chore
    person = farm.find(mark.person_id)
    given_to = person.name if isinstance(person, Person) else chore.given_to
    day = mark.moved_to or chore.day
    return replace(
        chore,
        day=day,
        done_on=mark.done_on or chore.done_on,
        left_out=mark.left_out,
        put_off_from=chore.day if day != chore.day else None,
        given_to=given_to,
        able=(given_to,) if given_to else chore.able,
    )


def _may_have_chores(season: Season, batch: Batch, start: date, end: date) -> bool:
    """Whether ``batch`` is on the farm about these days: of ten years' batches most are not."""
    last = max((presence.end for presence in season.presences_of(batch)), default=batch.start)
    return batch.start - _AROUND < end and max(last, batch.start + _AROUND) + _AROUND > start
