"""The next set: against trying each number one by one, and by hand."""

import math
from dataclasses import replace
from datetime import date, timedelta

import pytest

from quailsched.edits.acceptances import accept
from quailsched.edits.change import apply
from quailsched.farm.kinds import kind_in
from quailsched.farm.records import Batch, Farm, Leaving, Origin, Person, Span, Stay
from quailsched.outlook.hatch import hatch_odds
from quailsched.planner.next_set import NextSet, best_of, next_sets
from quailsched.season.clashes import clashes_of
from quailsched.season.season import Season
from tests.builders import (
    ARK,
    BROODER,
    CABINET,
    HATCHER,
    MONDAY,
    PEN,
    RUN,
    SETTER,
    SETTINGS,
    bought,
    eggs,
    farm,
    only,
    resized,
    stay,
)

WIDE = (resized(SETTER, 300), resized(HATCHER, 300), PEN, ARK)


def on(day: int) -> date:
    return MONDAY + timedelta(days=day)


def clashes_with(one: Farm, number: int, day: date, route: tuple[Stay, ...]) -> list[str]:
    """The kinds of clash of a farm, that had none, with one more batch."""
    batch = Batch("new", "New", "coturnix", Origin.OWN_EGGS, day, number, route)
    return [clash.kind for clash in clashes_of(Season(one.with_records(set(), (batch,))), MONDAY)]


def fits(one: Farm, number: int, day: date, route: tuple[Stay, ...]) -> bool:
    """Whether ``number`` eggs make no clash: floor, heat, crowd with the chicks that 1 hatch in 10 exceeds, calm with
    those that 9 in 10 reach; chicks are turned into eggs by the expected rate of hatch."""
    kind = kind_in(one, "coturnix")
    rate = kind.value("hatch_of_set_pct") / 100
    odds = hatch_odds(kind, number)
    many, few = math.ceil(odds.exceeded_by(0.1) / rate), max(math.floor(odds.reached_by(0.9) / rate), 1)
    as_set = set(clashes_with(one, number, day, route)) - {"floor", "heat", "crowd", "calm"}
    as_many = set(clashes_with(one, many, day, route)) & {"floor", "heat", "crowd"}
    as_few = set(clashes_with(one, few, day, route)) & {"calm"}
    return not (as_set | as_many | as_few)


@pytest.mark.parametrize("plain", [True, False])
def test_it_equals_trying_each_number_one_by_one(plain: bool) -> None:
    aster = eggs("Aster", 60, stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, 46, leaving=Leaving.SOLD))
    one = farm(aster, PEN, ARK, replace(BROODER, clean_out_days=3), plain=plain)
    assert clashes_of(Season(one), MONDAY) == ()
    for found in next_sets(one, "coturnix", MONDAY, 45)[::4]:
        best = max((n for n in range(1, 101) if fits(one, n, found.day, found.route)), default=0)
        assert found.eggs == best, found.day


def test_the_floor_of_the_brooder_by_hand() -> None:
    # Every egg hatches and every plain bird takes 200 cm2: 20,000 cm2 hold 100.
    found = next_sets(farm(BROODER, *WIDE), "coturnix", MONDAY, 1)[0]
    assert found.eggs == 100
    assert found.limit is not None
    assert (found.limit.kind, found.limit.place_id) == ("floor", "brooder")
    assert (found.hatch, found.many) == (on(17), 100)


def test_the_lamp_of_the_brooder_by_hand() -> None:
    # A lamp warms 100 chicks (figure heat_source_chicks), and every egg hatches.
    lit = replace(BROODER, floor_cm2=90_000, heat_sources=1)
    found = next_sets(farm(lit, *WIDE), "coturnix", MONDAY, 1)[0]
    assert found.eggs == 100
    assert found.limit is not None
    assert (found.limit.kind, found.limit.place_id) == ("heat", "brooder")


def test_short_days_ahead_of_the_hens_are_no_limit() -> None:
    north = replace(SETTINGS, latitude=60.0)
    one = farm(BROODER, *WIDE, settings=north)
    found = next_sets(one, "coturnix", MONDAY, 1)[0]
    assert "dark" in clashes_with(one, found.eggs, MONDAY, found.route)
    assert found.eggs == 100


def test_egg_places_limit_where_there_is_floor_enough() -> None:
    found = next_sets(farm(SETTER, HATCHER, PEN, ARK, resized(BROODER, 90_000)), "coturnix", MONDAY, 1)[0]
    assert found.eggs == 100
    assert found.limit is not None
    assert found.limit.kind == "eggs"


def test_a_set_takes_no_hours_of_building_from_a_pen_that_others_wait_for() -> None:
    # Old comes into Run on day 60. Ann has a quarter of an hour a day: 15 hours until then, and Run needs 14. Pen needs
    # 5, and birds set on day 0 are out of the brooder before day 60: it would be built first, and take 5 of Run's.
    pen = replace(PEN, work_hours=5.0, work_from=MONDAY)
    run = replace(RUN, work_hours=14.0, work_from=MONDAY, outdoors=False)
    old = bought("Old", 40, 30, Stay("run", 0, 60, leaving=Leaving.SOLD), start=on(60))
    one = farm(
        resized(SETTER, 300), resized(HATCHER, 300), BROODER, pen, run, old, Person("ann", "Ann", build_hours=1.75)
    )
    found = next_sets(one, "coturnix", MONDAY, 40)
    for each in found[::5]:
        if each.eggs:
            assert "build" not in clashes_with(one, each.eggs, each.day, each.route)
    assert found[0].limit is not None
    assert (found[0].eggs, found[0].limit.kind) == (0, "build")


def test_days_on_which_nobody_is_home_for_the_hatch_take_none() -> None:
    # Ann is away on day 30 alone: hatch of what is set on day 13 (17 days), lockdown of day 15's, the move of
    # day 12's to the brooder (18 days); setting on day 30 itself is later than asked for here.
    ann = Person("ann", "Ann", away=(Span(on(30), on(31), "market"),))
    found = next_sets(farm(BROODER, *WIDE, ann), "coturnix", MONDAY, 20)
    assert [(one.day - MONDAY).days for one in found if not one.eggs] == [12, 13, 15]
    assert all(one.limit is not None and one.limit.kind == "hands" for one in found if not one.eggs)


def test_another_brooder_or_cabinet_is_tried() -> None:
    big = replace(BROODER, id="big", name="Big", position=9, floor_cm2=40_000)
    yard = resized(ARK, 40_000)
    found = next_sets(farm(BROODER, big, *WIDE[:3], yard), "coturnix", MONDAY, 1)[0]
    assert found.eggs == 200
    assert "big" in [one.place_id for one in found.route]
    only_cabinet = next_sets(farm(CABINET, BROODER, PEN, ARK), "coturnix", MONDAY, 1)[0]
    assert only_cabinet.eggs == 100


def test_a_farm_that_wants_to_be_surer_sets_fewer_eggs() -> None:
    def most(sure_pct: int) -> int:
        surer = farm(BROODER, *WIDE, settings=replace(SETTINGS, sure_pct=sure_pct), plain=False)
        return next_sets(surer, "coturnix", MONDAY, 1)[0].eggs

    assert 0 < most(99) < most(90) < most(60)


def test_a_farm_without_egg_places_has_no_next_set() -> None:
    assert next_sets(farm(BROODER, PEN), "coturnix", MONDAY, 5) == ()


def test_the_best_day_is_the_earliest_of_those_for_most_eggs() -> None:
    def one(day: int, number: int) -> NextSet:
        return NextSet(on(day), number, (), None, on(day + 17), 0, 0, 0)

    assert best_of((one(0, 5), one(1, 9), one(2, 9))) == one(1, 9)
    assert best_of((one(0, 0),)) is None
    assert best_of(()) is None


def test_the_next_set_lets_an_accepted_clash_not_grow() -> None:
    # 210 plain chicks of Aster are together from day 17 on, 200 is the most: 10 over, and that is accepted. Each egg
    # set on the same day would make it one more; there are 90 egg places and floor for 240 birds left.
    route = stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, 46, leaving=Leaving.SOLD)
    one = farm(eggs("Aster", 210, *route), resized(BROODER, 90_000), *WIDE)
    crowd = only(clashes_of(Season(one), MONDAY), "crowd")
    assert crowd.need - crowd.have == 10
    accepting = apply(one, accept(one, crowd, "They have always been calm", lambda: "a1"))
    for plan in (one, accepting):
        found = next_sets(plan, "coturnix", MONDAY, 1)[0]
        assert found.eggs == 0
        assert found.limit is not None
        assert (found.limit.kind, found.limit.place_id) == ("crowd", "brooder")
