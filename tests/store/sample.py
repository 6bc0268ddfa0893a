"""A small farm that the tests of the store change and break."""

from __future__ import annotations

import json
from dataclasses import replace
from datetime import UTC, date, datetime

from quailsched.edits.change import Change, Touch
from quailsched.farm.facts import Cause, ChoreMark, Count, OwnChore, Sort
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
from quailsched.store.published import Published
from tests.strategies import ids

AT = datetime(2027, 3, 1, 7, 30, tzinfo=UTC)
CLOVER, DILL = ids(300), ids(301)
PUBLISHED = (
    Published(ids(901), "a" * 64, 0, AT),
    Published(ids(902), "b" * 64, 3, AT.replace(microsecond=250_000)),
)


def small_farm() -> Farm:
    """Every type of record, every field that came after version 1 and every list at least once."""
    farm = small_farm_2()
    pen, (ann,), dill = farm.places[2].id, farm.people, farm.batch(DILL)
    day = date(2027, 4, 20)
    pulled = Count(ids(702), Sort.DIED, day, AT, 2, DILL, cause=Cause.TAKEN)
    return replace(
        farm,
        batches=(farm.batch(CLOVER), replace(dill, from_ids=(CLOVER, ids(398)))),
        counts=(
            Count(ids(700), Sort.LAID, day, AT, 9, DILL, pen, person_id=ann.id, plan_day=day, plan_number=8),
            Count(
                ids(701), Sort.SEXED, day, AT.replace(microsecond=500), 12, DILL, "", Part.ALL, 7, 4, words="“odd”\n"
            ),
            pulled,
            Count(ids(703), Sort.DIED, day, AT, 1, DILL, corrects=pulled.id, cause=Cause.HURT),
            Count(ids(704), Sort.DIED, day, AT, 1, DILL, corrects=ids(703), is_taken_back=True),
            Count(ids(705), Sort.PROCESSED, date(2027, 5, 1), AT, 2, DILL, pen, Part.COCKS, 0, 0, 560, 390, 1.5, 7),
            Count(ids(706), Sort.PHOTO, date(2027, 5, 1), AT, file_name="pen.jpg", to_batch_id=CLOVER),
        ),
        marks=(
            ChoreMark(ids(800), "bedding/a/0", day, done_on=day, person_id=ann.id),
            ChoreMark(ids(801), "bedding/a/1", day, left_out="dry yet", moved_to=date(2027, 4, 22)),
        ),
        own_chores=(
            OwnChore(ids(850), "Order feed", day, "FREQ=WEEKLY;INTERVAL=2", "two bags", pen, DILL, ann.id),
            OwnChore(ids(851), "Mend the latch", day),
        ),
    )


def small_farm_2() -> Farm:
    """What version 2 could hold: the farm of ``samples/history_2.sample`` before its first step. Never changed."""
    setter, brooder, pen = small_farm_1().places
    (ann,) = small_farm_1().people
    accepted = Acceptance(ids(500), "calm", pen.id, (CLOVER, ids(399)), 2.5, 3, 14, "they are quiet “ones”")
    bigger = replace(small_farm_1().batch(CLOVER), number=110)
    as_version_2 = {name: value for name, value in tagged(bigger).items() if name != "from_ids"} | {"version": 2}
    otherwise = (TrialRecord(CLOVER, json.dumps(as_version_2)), TrialRecord(DILL, ""))
    return replace(
        small_farm_1(),
        settings=replace(small_farm_1().settings, sure_pct=80),
        places=(
            setter,
            replace(brooder, heat_sources=2, feeder_cm=60, drinker_cm=25),
            replace(pen, light_hours=14.5, work_hours=32.5, work_from=date(2027, 3, 6)),
        ),
        people=(replace(ann, build_hours=6.0),),
        acceptances=(accepted,),
        trials=(Trial(ids(600), "Larger Clover", otherwise, "if Dill does not come"),),
    )


def small_farm_1() -> Farm:
    """What version 1 could hold: the farm of ``samples/history_1.sample`` before its first step. Never changed."""
    setter, brooder, pen = ids(100), ids(101), ids(102)
    route = (
        Stay(setter, 0, 18),
        Stay(brooder, 18, 45),
        Stay(pen, 45, None, Part.HENS),
        Stay(brooder, 45, 60, Part.COCKS, Leaving.PROCESSED),
    )
    return Farm(
        settings=Settings(ids(1), "Mill Lane", Units.US, tuple(float(low) for low in range(12)), 51.5, "“quoted”\n"),
        places=(
            Place(setter, "Setter", Role.CABINET, 0, egg_places=120, turns_itself=True),
            Place(brooder, "Tub", Role.BROODER, 1, floor_cm2=13_000, clean_out_days=3),
            Place(
                pen, "Run", Role.PEN, 2, floor_cm2=68_000, outdoors=True, ready_on=date(2027, 4, 1),
                shut=(Span(date(2027, 6, 1), date(2027, 6, 8), "new roof"), Span(date(2027, 8, 1), date(2027, 8, 2))),
            ),
        ),
        people=(Person(ids(200), "Ann", False, (Span(date(2027, 5, 1), date(2027, 5, 4), "away"),)),),
        batches=(
            Batch(CLOVER, "Clover", "coturnix", Origin.OWN_EGGS, date(2027, 3, 8), 96, route, egg_age_days=5),
            Batch(DILL, "Dill", "button", Origin.BOUGHT_BIRDS, date(2027, 4, 2), 12, (Stay(pen, 0, 50),), 30),
        ),
        choices=(
            FigureChoice(ids(400), "coturnix", "clean_out_days", 4.0, (), "draughty"),
            FigureChoice(ids(401), "coturnix", "heat_c", None, ((0.0, 36.5), (28.0, 20.0)), ""),
        ),
    )  # fmt: skip


def later(farm: Farm, days: int = 1, merge_key: str = "") -> Change:
    """Clover set some days later."""
    batch = farm.batch(CLOVER)
    moved = batch.moved_to(date.fromordinal(batch.start.toordinal() + days))
    return Change(f"Set Clover {days} later", (Touch(batch, moved),), merge_key)


def renamed(farm: Farm, name: str) -> Change:
    """The farm with another name."""
    return Change(f"Call it {name}", (Touch(farm.settings, replace(farm.settings, name=name)),))
