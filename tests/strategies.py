"""Random farms for property tests: sound by ``farm.check``, though most of them are bad plans.

``farms()`` is what tests want; the strategies of single records take what they have to fit to.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Sequence
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from uuid import UUID

from hypothesis import strategies as st

from quailsched.farm.facts import ChoreMark, Count, OwnChore, Sort
from quailsched.farm.plain import tagged
from quailsched.farm.records import (
    Acceptance,
    Batch,
    Farm,
    FigureChoice,
    Leaving,
    Origin,
    Part,
    Person,
    Place,
    Role,
    Settings,
    Span,
    Stay,
    Trial,
    TrialRecord,
    Units,
)
from quailsched.husbandry.handbook import handbook, labels
from quailsched.season.clash import Clash
from quailsched.season.severity import STOPPING, WATCHED

KINDS = ("coturnix", "coturnix-heavy", "bobwhite", "button")
MOMENT = datetime(2027, 3, 1, 7, 30, tzinfo=UTC)
FIRST_DAY, LAST_DAY = date(2026, 1, 1), date(2028, 12, 31)
# Any letters but control characters and the halves of pairs, which no file can hold; notes have lines too.
_LETTERS = st.characters(exclude_categories=("Cs", "Cc"))
_NOTES = st.text(st.one_of(_LETTERS, st.just("\n")), max_size=20)
# Days of a hatch that have to follow each other: a random one may contradict the others of its kind.
_ORDERED = {"candle_day", "candle_again_day", "lockdown_day", "incubation_days"}


def ids(number: int) -> str:
    """The id of a record by number: a UUID, the same in every run."""
    return str(UUID(int=number))


def days() -> st.SearchStrategy[date]:
    return st.dates(FIRST_DAY, LAST_DAY)


def names() -> st.SearchStrategy[str]:
    on_one_line = st.characters(exclude_categories=("Cs", "Cc", "Zl", "Zp"))
    return st.text(on_one_line, min_size=1, max_size=12).filter(lambda name: bool(name.strip()))


@st.composite
def spans(draw: st.DrawFn) -> Span:
    start = draw(days())
    return Span(start, start + timedelta(days=draw(st.integers(1, 40))), draw(_NOTES))


@st.composite
def settings_records(draw: st.DrawFn, record_id: str = "") -> Settings:
    low = st.floats(-60, 40)
    return Settings(
        id=record_id or ids(1),
        name=draw(names()),
        units=draw(st.sampled_from(Units)),
        night_lows_c=tuple(draw(st.one_of(st.just([]), st.lists(low, min_size=12, max_size=12)))),
        latitude=draw(st.none() | st.floats(-90, 90)),
        sure_pct=draw(st.integers(50, 99)),
        note=draw(_NOTES),
    )


@st.composite
def places(draw: st.DrawFn, record_id: str, name: str, roles: Sequence[Role] = tuple(Role)) -> Place:
    role = draw(st.sampled_from(roles))
    edge = st.just(None) if role.holds_eggs else st.none() | st.integers(0, 600)
    work_hours = draw(st.sampled_from([0.0, 0.0, 12.5, 60.0]))
    return Place(
        id=record_id,
        name=name,
        role=role,
        position=draw(st.integers(0, 9)),
        egg_places=draw(st.integers(1, 400)) if role.holds_eggs else 0,
        floor_cm2=0 if role.holds_eggs else draw(st.integers(2_000, 200_000)),
        clean_out_days=draw(st.integers(0, 14)),
        outdoors=draw(st.booleans()),
        turns_itself=draw(st.booleans()),
        ready_on=draw(st.none() | days()),
        shut=tuple(draw(st.lists(spans(), max_size=2))),
        note=draw(_NOTES),
        heat_sources=draw(st.none() | st.integers(0, 6)) if role is Role.BROODER else None,
        feeder_cm=draw(edge),
        drinker_cm=draw(edge),
        light_hours=None if role.holds_eggs else draw(st.none() | st.floats(0, 24)),
        work_hours=work_hours,
        work_from=draw(days()) if work_hours else None,
    )


@st.composite
def people(draw: st.DrawFn, record_id: str, name: str) -> Person:
    away = tuple(draw(st.lists(spans(), max_size=2)))
    hours = draw(st.sampled_from([0.0, 0.0, 6.0, 20.0]))
    return Person(record_id, name, draw(st.booleans()), away, draw(_NOTES), hours)


@st.composite
def chains(
    draw: st.DrawFn, first: Sequence[str], then: Sequence[str], start: int, part: Part, *, goes_on: bool
) -> tuple[Stay, ...]:
    """Stays that follow each other from day ``start``; ``goes_on``: others follow on the last one."""
    stays: list[Stay] = []
    day = start
    for index in range(draw(st.integers(1, 3))):
        end = day + draw(st.integers(1, 40))
        stays.append(Stay(draw(st.sampled_from(first if index == 0 else then)), day, end, part))
        day = end
    last = stays[-1]
    if not goes_on and draw(st.booleans()):
        open_end = draw(st.booleans())
        leaving = None if open_end else draw(st.sampled_from(Leaving))
        stays[-1] = Stay(last.place_id, last.from_day, None if open_end else last.to_day, part, leaving)
    return tuple(stays)


@st.composite
def routes(draw: st.DrawFn, origin: Origin, where: Iterable[Place]) -> tuple[Stay, ...]:
    """All birds together, then perhaps hens, cocks or both apart, from the day on which "all" ends."""
    every = list(where)
    first = [place.id for place in every if place.role.holds_eggs is origin.is_eggs]
    then = [place.id for place in every]
    apart = draw(st.sampled_from([(), (Part.HENS,), (Part.COCKS,), (Part.HENS, Part.COCKS)]))
    together = draw(chains(first, then, 0, Part.ALL, goes_on=bool(apart)))
    if not apart:
        return together
    split_day = together[-1].to_day
    assert split_day is not None
    parts = [draw(chains(then, then, split_day, part, goes_on=False)) for part in apart]
    return together + tuple(stay for chain in parts for stay in chain)


@st.composite
def batches(draw: st.DrawFn, record_id: str, name: str, where: Sequence[Place]) -> Batch:
    """A batch on a route through ``where``, which must not be empty."""
    holds = {place.role.holds_eggs for place in where}
    origin = draw(st.sampled_from([origin for origin in Origin if origin.is_eggs in holds]))
    return Batch(
        id=record_id,
        name=name,
        kind=draw(st.sampled_from(KINDS)),
        origin=origin,
        start=draw(days()),
        number=draw(st.integers(1, 400)),
        stays=draw(routes(origin, where)),
        age_days=0 if origin.is_eggs else draw(st.integers(0, 120)),
        egg_age_days=draw(st.integers(0, 14)) if origin.is_eggs else 0,
        note=draw(_NOTES),
    )


@st.composite
def choices(draw: st.DrawFn, record_id: str, kind: str, key: str) -> FigureChoice:
    """A farm's own figure, within the range of its sources, or curve, within sane bounds."""
    reason = draw(_NOTES)
    label = labels()[key]
    if not label.is_curve:
        figure = handbook()[kind].figures[key]
        return FigureChoice(record_id, kind, key, draw(st.floats(figure.low, figure.high)), (), reason)
    ages = draw(st.lists(st.integers(0, 400), min_size=1, max_size=4, unique=True).map(sorted))
    values = [draw(st.floats(label.least, label.most)) for _ in ages]
    if key == "alive":  # birds do not come back to life
        values.sort(reverse=True)
    points = tuple((float(age), value) for age, value in zip(ages, values, strict=True))
    return FigureChoice(record_id, kind, key, None, points, reason)


def _replaceable() -> list[tuple[str, str]]:
    keys = [key for key in labels() if key not in _ORDERED]
    return [(kind, key) for kind in KINDS for key in keys]


@st.composite
def acceptances(draw: st.DrawFn, record_id: str, where: Sequence[Place], who: Sequence[Batch]) -> Acceptance:
    """A clash of some place and batch of the farm that is lived with; most match none."""
    return Acceptance(
        id=record_id,
        kind=draw(st.sampled_from(["calm", "crowd", "cleanout", "stale"])),
        place_id=draw(st.sampled_from(where)).id,
        batch_ids=(draw(st.sampled_from(who)).id,),
        amount=draw(st.floats(0, 100)),
        birds=draw(st.integers(0, 50)),
        days=draw(st.integers(1, 60)),
        reason=draw(names()),
    )


@st.composite
def clashes(draw: st.DrawFn, one: Farm, kinds: Iterable[str] = WATCHED | STOPPING) -> Clash:
    """A clash of some place and batches of ``one``, which must have both. The plan itself may have none like it."""
    first, lasting = draw(days()), draw(st.integers(1, 60))
    who = draw(st.lists(st.sampled_from(one.batches), min_size=1, max_size=3, unique=True))
    return Clash(
        kind=draw(st.sampled_from(sorted(kinds))),
        place_id=draw(st.sampled_from(one.places)).id,
        batch_ids=tuple(batch.id for batch in who),
        first=first,
        last=first + timedelta(days=lasting - 1),
        worst=first + timedelta(days=draw(st.integers(0, lasting - 1))),
        need=draw(st.integers(0, 500)),
        have=draw(st.integers(0, 500)),
        unit="birds",
        birds_over=draw(st.integers(0, 400)),
        sentence="It does not fit.",
    )


@st.composite
def trials(draw: st.DrawFn, record_id: str, name: str, who: Sequence[Batch]) -> Trial:
    """Some batches moved, some taken away."""
    changed = draw(st.lists(st.sampled_from(who), max_size=3, unique=True)) if who else []
    records = []
    for batch in changed:
        after = batch.moved_to(draw(days())) if draw(st.booleans()) else None
        records.append(TrialRecord(batch.id, json.dumps(tagged(after)) if after else ""))
    return Trial(record_id, name, tuple(records), draw(_NOTES))


@st.composite
def counts(draw: st.DrawFn, who: Sequence[Batch], where: Sequence[Place]) -> tuple[Count, ...]:
    """A few facts that can be: eggs out and chicks hatched of those set, birds lost of those that lived, eggs laid."""
    facts: list[Count] = []
    for batch in who:
        is_told: bool = draw(st.booleans())
        if not is_told:
            continue
        day = batch.start + timedelta(days=draw(st.integers(0, 20)))
        left = batch.number
        if batch.origin.is_eggs:
            clear, out = draw(st.integers(0, left)), draw(st.integers(0, left))
            facts.append(_count(facts, Sort.CLEAR, day, max(clear, 1), batch))
            left = min(out, left - max(clear, 1))
            facts.append(_count(facts, Sort.HATCHED, day + timedelta(days=draw(st.integers(0, 5))), left, batch))
        day += timedelta(days=draw(st.integers(5, 30)))
        for sort in draw(st.lists(st.sampled_from([Sort.DIED, Sort.SOLD, Sort.PROCESSED]), max_size=3)):
            number = draw(st.integers(0, left))
            if number:
                facts.append(_count(facts, sort, day, number, batch))
                left -= number
    for place in draw(st.lists(st.sampled_from(where), max_size=2)):
        facts.append(Count(ids(700 + len(facts)), Sort.LAID, draw(days()), MOMENT, 5, place_id=place.id))
    is_taken_back = draw(st.booleans())
    if facts and is_taken_back:
        last = facts[-1]
        facts.append(replace(last, id=ids(700 + len(facts)), corrects=last.id, is_taken_back=True))
    return tuple(facts)


def _count(before: list[Count], sort: Sort, day: date, number: int, batch: Batch) -> Count:
    return Count(ids(700 + len(before)), sort, day, MOMENT, number, batch.id)


@st.composite
def marks(draw: st.DrawFn, record_id: str) -> ChoreMark:
    return ChoreMark(
        record_id, f"bedding/{record_id}", draw(days()), draw(st.none() | days()), draw(st.just("") | names())
    )


@st.composite
def own_chores(draw: st.DrawFn, record_id: str, where: Sequence[Place]) -> OwnChore:
    has_place = draw(st.booleans())
    place = draw(st.sampled_from(where)).id if where and has_place else ""
    repeat = draw(st.sampled_from(["", "FREQ=DAILY", "FREQ=WEEKLY;INTERVAL=2;BYDAY=MO,TH"]))
    return OwnChore(record_id, draw(names()), draw(days()), repeat, draw(_NOTES), place)


@st.composite
def farms(draw: st.DrawFn, most_places: int = 6, most_batches: int = 5, *, has_facts: bool = False) -> Farm:
    """A sound farm. It may have no places, and then has no batches; with ``has_facts`` some counts and marks.

    A batch with counts cannot be moved any more, so most properties are of plans alone.
    """

    def some(most: int) -> list[str]:
        unique = st.lists(names(), max_size=most, unique_by=lambda name: name.strip().casefold())
        return draw(unique)

    where = tuple(draw(places(ids(100 + n), name)) for n, name in enumerate(some(most_places)))
    replaced = draw(st.lists(st.sampled_from(_replaceable()), max_size=3, unique=True))
    who = tuple(draw(batches(ids(300 + n), name, where)) for n, name in enumerate(some(most_batches) if where else []))
    accepted = draw(st.integers(0, 2)) if who else 0
    facts = draw(counts(who, where)) if who and has_facts else ()
    most = 2 if has_facts else 0
    return Farm(
        settings=draw(settings_records()),
        counts=facts,
        marks=tuple(draw(marks(ids(800 + n))) for n in range(draw(st.integers(0, most)))),
        own_chores=tuple(draw(own_chores(ids(850 + n), where)) for n in range(draw(st.integers(0, most)))),
        places=where,
        people=tuple(draw(people(ids(200 + n), name)) for n, name in enumerate(some(3))),
        batches=who,
        choices=tuple(draw(choices(ids(400 + n), *pair)) for n, pair in enumerate(replaced)),
        acceptances=tuple(draw(acceptances(ids(500 + n), where, who)) for n in range(accepted)),
        trials=tuple(draw(trials(ids(600 + n), name, who)) for n, name in enumerate(some(2))),
    )
