"""The landscape of the next sets is what trying each number on each route and day would give."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from itertools import product

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from quailsched.farm.kinds import kind_in
from quailsched.farm.records import Batch, Farm, Leaving, Origin, Part, Person, Place, Role, Stay
from quailsched.outlook.hatch import as_eggs, hatch_odds
from quailsched.planner.next_set import (
    CALM_KINDS,
    NO_MATTER_KINDS,
    ROOM_KINDS,
    SMALLEST_SET,
    broken_by,
    next_sets_of,
    what_stops,
)
from quailsched.planner.routes import Route, choices_of
from quailsched.season.clash import Clash
from quailsched.season.clashes import Checked, checked, clashes_of
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
    bought,
    eggs,
    farm,
    on,
    resized,
    stay,
)

TUB = replace(BROODER, id="tub", name="Tub", position=8)
MEADOW = replace(ARK, id="meadow", name="Meadow", position=9)
MORE = (TUB, RUN, MEADOW, CABINET)


def all_routes(one: Farm) -> list[Route]:
    """Every route there is, place by place."""
    found = [route for choices in choices_of(one, "coturnix") for route in product(*choices)]
    return [route for route in found if len({stay.place_id for stay in route}) == len(route)]


def breaks(now: Checked, day: date, route: Route, eggs: int) -> bool:
    """Whether a set has, or brings to anybody, a clash: of room in a large hatch, of calm in a small one."""
    kind, sure_pct = kind_in(now.season.farm, "coturnix"), now.season.farm.settings.sure_pct
    large, small = (as_eggs(kind, eggs, sure_pct, of_many=of_many) for of_many in (True, False))
    told = ROOM_KINDS | CALM_KINDS | NO_MATTER_KINDS
    for number, is_asked in (
        (eggs, lambda clash: clash.kind not in told),
        (large, lambda clash: clash.kind in ROOM_KINDS),
        (small, lambda clash: clash.kind in CALM_KINDS),
    ):
        batch = Batch("new", "New", "coturnix", Origin.OWN_EGGS, day, number, route)
        for clash in clashes_of(Season(now.season.farm.with_records(set(), (batch,)))):
            was_there = "new" not in clash.batch_ids and any(is_part_of(clash, old) for old in now.clashes)
            if is_asked(clash) and not was_there:
                return True
    return False


def is_part_of(clash: Clash, old: Clash) -> bool:
    """Whether ``clash`` is about no more, and lies on no other days, than ``old``."""
    same = (clash.kind, clash.place_id) == (old.kind, old.place_id) and {*clash.batch_ids} <= {*old.batch_ids}
    no_more = abs(clash.need - clash.have) <= abs(old.need - old.have) and clash.birds_over <= old.birds_over
    return same and no_more and old.first <= clash.first and clash.last <= old.last


def tried(now: Checked, day: date) -> int:
    """The most eggs on any route, by a fresh look at everything for every number that is more than was found before."""
    found = 0
    for route in all_routes(now.season.farm):
        cap = now.season.farm.place(route[0].place_id).egg_places
        numbers = range(cap, max(found, SMALLEST_SET - 1), -1)
        found = next((n for n in numbers if not breaks(now, day, route, n)), found)
    return found


def some_place(draw: st.DrawFn, place: Place) -> Place:
    """``place`` with room and fittings drawn, small enough that numbers stay quick to try."""
    if place.role.holds_eggs:
        return replace(place, egg_places=draw(st.integers(10, 40)), clean_out_days=draw(st.integers(0, 2)))
    edge = st.none() | st.integers(5, 120)
    work = draw(st.sampled_from((0, 0, 0, 10, 30))) if place.role.is_pen else 0
    return replace(
        place,
        work_hours=float(work),
        work_from=MONDAY if work else None,
        floor_cm2=draw(st.integers(2_000, 12_000)),
        clean_out_days=draw(st.integers(0, 5)),
        feeder_cm=draw(edge),
        drinker_cm=draw(edge),
        heat_sources=draw(st.none() | st.integers(0, 2)) if place.role is Role.BROODER else None,
    )


@st.composite
def small_farms(draw: st.DrawFn, more: tuple[Place, ...] = ()) -> Farm:
    """A farm with the usual places and up to three batches on usual routes; it may have places of ``more``."""
    some = [place for place in more if draw(st.booleans())]
    places = [some_place(draw, place) for place in (SETTER, HATCHER, BROODER, PEN, ARK, *some)]
    home = draw(st.sampled_from((PEN, RUN)))
    batches = [
        eggs(
            f"Batch {number}",
            draw(st.integers(4, 30)),
            Stay("setter", 0, 15),
            Stay("hatcher", 15, 18),
            Stay("brooder", 18, draw(st.integers(40, 55))),
            start=MONDAY + timedelta(days=draw(st.integers(-30, 40))),
        )
        for number in range(draw(st.integers(0, 3)))
    ]
    routed = []
    for batch in batches:
        out = batch.stays[-1].to_day
        assert out is not None
        late = draw(
            st.sampled_from(
                [
                    (Stay(home.id, out, out + 20, leaving=Leaving.SOLD),),
                    (Stay(home.id, out, None, Part.HENS), Stay("ark", out, out + 14, Part.COCKS, Leaving.PROCESSED)),
                ]
            )
        )
        routed.append(replace(batch, stays=(*batch.stays, *late)))
    builder = Person("ann", "Ann", build_hours=draw(st.sampled_from((1.0, 3.0, 9.0))))
    return farm(*places, *routed, builder, plain=draw(st.booleans()))


@settings(max_examples=12)
@given(small_farms(), st.integers(0, 60))
def test_it_equals_trying_each_number_one_by_one(one: Farm, days_on: int) -> None:
    now = checked(Season(one))
    assume(all_routes(one))
    day = MONDAY + timedelta(days=days_on)
    found = next_sets_of(now, "coturnix", day, 1)[0]
    assert found.eggs == tried(now, day)


@settings(max_examples=10)
@given(small_farms(MORE), st.integers(0, 60))
def test_it_equals_trying_each_number_on_each_route_of_a_farm_with_several_places_of_a_use(
    one: Farm, days_on: int
) -> None:
    small = [replace(one.place(each), egg_places=14) for each in ("setter", "hatcher")]
    narrow = one.with_records(set(), tuple(small))  # few numbers, for there are many routes
    now, day = checked(Season(narrow)), on(days_on)
    assert next_sets_of(now, "coturnix", day, 1)[0].eggs == tried(now, day)


def test_the_second_brooder_is_found_however_many_pens_there_are() -> None:
    # Birds of one day are in the first brooder, too old for chicks beside them. 6 pens make 30 pairs of them for hens
    # and cocks: the routes through the second brooder are far down the list, and all that there are.
    pens = [Place(f"pen {n}", f"Pen {n}", Role.PEN, 10 + n, floor_cm2=12_000) for n in range(6)]
    other = replace(BROODER, id="other", name="Other", position=9)
    old = bought("Old", 40, 1, stay(BROODER, 0, 300, leaving=Leaving.SOLD))
    one = farm(resized(CABINET, 60), other, *pens, old)
    found = next_sets_of(checked(Season(one)), "coturnix", on(20), 1, with_hens=True)[0]
    assert found.eggs > 0
    assert [stay.place_id for stay in found.route[:2]] == ["cabinet", "other"]


def test_hens_go_where_there_is_more_room_for_them_in_a_pen_of_either_sort() -> None:
    # 100 eggs, 100 birds: 50 hens and 17 cocks of theirs take 13,400 cm2; Pen has 12,000, Ark 14,000. The 33 surplus
    # cocks take 6,600. So the hens go into Ark, the cocks into Pen.
    one = farm(SETTER, HATCHER, BROODER, resized(PEN, 12_000), resized(ARK, 14_000))
    found = next_sets_of(checked(Season(one)), "coturnix", MONDAY, 1, with_hens=True)[0]
    assert found.eggs == 100
    assert [(stay.place_id, stay.part) for stay in found.route[3:]] == [("ark", Part.HENS), ("pen", Part.COCKS)]


def test_no_odds_are_worked_out_for_more_eggs_than_fill_the_brooder() -> None:
    # 20,000 cm2 hold 100 plain birds: of 2,000 eggs that a machine takes, those from 101 on need no look.
    one = farm(resized(CABINET, 2_000), BROODER, PEN, ARK)
    before = hatch_odds.cache_info().misses
    found = next_sets_of(checked(Season(one)), "coturnix", MONDAY, 1)[0]
    assert (found.eggs, found.limit and found.limit.kind) == (100, "floor")
    assert hatch_odds.cache_info().misses - before < 150


@settings(max_examples=25)
@given(small_farms(), st.integers(0, 60))
def test_what_it_names_is_what_stops_one_egg_more_and_of_fewer_it_knows_which_fit(one: Farm, days_on: int) -> None:
    now = checked(Season(one))
    found = next_sets_of(now, "coturnix", MONDAY + timedelta(days=days_on), 1)[0]
    clash = what_stops(now, found)
    assert found.limit is not None
    assert clash is not None or found.limit.kind == "eggs"
    for number in range(SMALLEST_SET, found.eggs + 1):
        fits = broken_by(now, "coturnix", found.day, found.route, number) is None
        assert (found.fewest_from(number) == number) is fits


@pytest.mark.parametrize("days", [0, 3])
def test_days_asked_for_are_days_answered(days: int) -> None:
    one = farm(SETTER, HATCHER, BROODER, PEN, ARK, eggs("Aster", 6, stay(SETTER, 0, 15), stay(HATCHER, 15, 18)))
    assert len(next_sets_of(checked(Season(one)), "coturnix", MONDAY, days)) == days


def test_what_stops_a_day_without_eggs_lies_on_the_route_that_is_told_with_it() -> None:
    # The first brooder empties on day 15 and is cleaned for 7 days: chicks of eggs set today would come on day 18. The
    # second has room for one chick. What is told is the clean-out, and the way through the first.
    first = replace(BROODER, clean_out_days=7)
    old = bought("Old", 40, 1, stay(BROODER, 0, 20, leaving=Leaving.SOLD), start=on(-5))
    one = farm(resized(CABINET, 60), first, replace(TUB, floor_cm2=200), PEN, old)
    now = checked(Season(one))
    found = next_sets_of(now, "coturnix", MONDAY, 1)[0]
    assert found.limit is not None
    assert (found.eggs, found.limit.kind, found.limit.place_id) == (0, "cleanout", "brooder")
    assert [stay.place_id for stay in found.route] == ["cabinet", "brooder", "pen"]
    clash = what_stops(now, found)
    assert clash is not None
    assert (clash.kind, clash.place_id) == ("cleanout", "brooder")
