"""Chores that a count says are done, though nobody ticked them."""

from __future__ import annotations

from datetime import date

from quailsched.chores.work_out import chores_between
from quailsched.edits.change import apply
from quailsched.edits.counts import take_back
from quailsched.farm.facts import Sort
from quailsched.farm.records import Farm, Part
from quailsched.season.season import Season
from tests.builders import ARK, BROODER, PEN, on
from tests.edits.counted import NOW, clover, fact, known

HATCH = fact(Sort.HATCHED, 17, 70)
TO_BROODER = fact(Sort.MOVED, 20, place_id=BROODER.id)


def done(farm: Farm) -> list[tuple[str, date | None]]:
    """Candling, moves and leaving, as far as they are due, with the day on which each was done."""
    kinds = ("candle", "to brooder", "move out", "cocks out", "process", "sold")
    return [(one.kind, one.done_on) for one in chores_between(Season(farm), on(0), on(120)) if one.kind in kinds]


def open_ones(farm: Farm) -> list[str]:
    return sorted(kind for kind, day in done(farm) if day is None)


def test_eggs_taken_out_tell_of_the_candling_about_that_day_only() -> None:
    # Candling is on days 7 and 14, lockdown on 15.
    candled = [day for kind, day in done(known(clover(), fact(Sort.CLEAR, 8, 10))) if kind == "candle"]
    assert candled == [on(8), None]
    candled = [day for kind, day in done(known(clover(), fact(Sort.QUIT, 13, 2))) if kind == "candle"]
    assert candled == [None, on(13)]


def test_eggs_left_after_the_hatch_tell_of_no_candling() -> None:
    candled = [day for kind, day in done(known(clover(), HATCH, fact(Sort.QUIT, 17, 30))) if kind == "candle"]
    assert candled == [None, None]


def test_birds_that_are_known_to_have_moved_need_no_moving() -> None:
    one = known(clover(), HATCH, TO_BROODER)
    assert open_ones(one) == ["candle", "candle", "cocks out", "move out", "process"]
    assert ("to brooder", on(20)) in done(one)
    one = apply(one, take_back(one, TO_BROODER.id, "gone", NOW))
    assert "to brooder" in open_ones(one)


def test_a_group_that_moved_tells_nothing_of_the_other() -> None:
    one = known(clover(), HATCH, TO_BROODER, fact(Sort.MOVED, 46, place_id=PEN.id, part=Part.HENS))
    assert open_ones(one) == ["candle", "candle", "cocks out", "process"]
    one = known(one, fact(Sort.MOVED, 46, place_id=ARK.id, part=Part.COCKS))
    assert open_ones(one) == ["candle", "candle", "process"]


def test_birds_that_all_went_late_are_gone_and_those_of_which_some_are_left_are_not() -> None:
    # 70 birds: 35 hens with 12 cocks, and 23 more, to be processed on day 60.
    some = known(clover(), HATCH, fact(Sort.PROCESSED, 60, 20, part=Part.COCKS, grams=4000))
    assert ("process", None) in done(some)
    assert ("process", on(62)) in done(known(some, fact(Sort.PROCESSED, 62, 3, part=Part.COCKS, grams=600)))
