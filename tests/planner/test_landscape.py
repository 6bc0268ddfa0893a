"""The landscape of the next sets is what trying each number on each route and day would give."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from quailsched.farm.records import Farm, Leaving, Part, Place, Role, Stay
from quailsched.planner.next_set import SMALLEST_SET, broken_by, next_sets_of, what_stops
from quailsched.planner.routes import routes_of
from quailsched.season.clashes import Checked, checked
from quailsched.season.season import Season
from tests.builders import ARK, BROODER, HATCHER, MONDAY, PEN, RUN, SETTER, eggs, farm, stay


def tried(now: Checked, day: date) -> int:
    """The most eggs on any route, by asking the rules about every number there is."""
    found = 0
    for route in routes_of(now.season.farm, "coturnix"):
        cap = now.season.farm.place(route[0].place_id).egg_places
        found = max(
            [found, *(n for n in range(SMALLEST_SET, cap + 1) if not broken_by(now, "coturnix", day, route, n))]
        )
    return found


def some_place(draw: st.DrawFn, place: Place) -> Place:
    """``place`` with room and fittings drawn, small enough that numbers stay quick to try."""
    if place.role.holds_eggs:
        return replace(place, egg_places=draw(st.integers(10, 40)), clean_out_days=draw(st.integers(0, 2)))
    edge = st.none() | st.integers(5, 120)
    return replace(
        place,
        floor_cm2=draw(st.integers(2_000, 12_000)),
        clean_out_days=draw(st.integers(0, 5)),
        feeder_cm=draw(edge),
        drinker_cm=draw(edge),
        heat_sources=draw(st.none() | st.integers(0, 2)) if place.role is Role.BROODER else None,
    )


@st.composite
def small_farms(draw: st.DrawFn) -> Farm:
    """A farm with the usual places and up to three batches on usual routes."""
    places = [some_place(draw, place) for place in (SETTER, HATCHER, BROODER, PEN, ARK)]
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
    return farm(*places, *routed, plain=draw(st.booleans()))


@settings(max_examples=12)
@given(small_farms(), st.integers(0, 60))
def test_it_equals_trying_each_number_one_by_one(one: Farm, days_on: int) -> None:
    now = checked(Season(one))
    assume(routes_of(one, "coturnix"))
    day = MONDAY + timedelta(days=days_on)
    found = next_sets_of(now, "coturnix", day, 1)[0]
    assert found.eggs == tried(now, day)


@settings(max_examples=25)
@given(small_farms(), st.integers(0, 60))
def test_what_it_names_is_what_stops_one_egg_more(one: Farm, days_on: int) -> None:
    now = checked(Season(one))
    found = next_sets_of(now, "coturnix", MONDAY + timedelta(days=days_on), 1)[0]
    clash = what_stops(now, found)
    assert found.limit is not None
    assert clash is not None or found.limit.kind == "eggs"
    if found.eggs:
        assert broken_by(now, "coturnix", found.day, found.route, found.eggs) is None


@pytest.mark.parametrize("days", [0, 3])
def test_days_asked_for_are_days_answered(days: int) -> None:
    one = farm(SETTER, HATCHER, BROODER, PEN, ARK, eggs("Aster", 6, stay(SETTER, 0, 15), stay(HATCHER, 15, 18)))
    assert len(next_sets_of(checked(Season(one)), "coturnix", MONDAY, days)) == days
