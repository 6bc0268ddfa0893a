"""Ways out: each removes its clash, makes no other, changes nothing that is past; found by hand where that can be."""

from dataclasses import replace
from datetime import date, timedelta
from itertools import count
from uuid import UUID

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quailsched.edits.acceptances import accept
from quailsched.edits.change import apply
from quailsched.farm.example import example_farm
from quailsched.farm.records import Farm, Leaving, Person, Span, Stay
from quailsched.planner.ways_out import look_for_ways_out, ways_out
from quailsched.report.ways_out import none_text
from quailsched.season.clashes import checked, clashes_of
from quailsched.season.season import Season
from quailsched.season.severity import WATCHED, open_clashes
from tests.builders import BROODER, HATCHER, MONDAY, PEN, SETTER, eggs, farm, only, resized, stay
from tests.planner.judge import must_help, sentences
from tests.strategies import farms

TODAY = date(2027, 4, 6)


def on(day: int) -> date:
    return MONDAY + timedelta(days=day)


def route(out: int = 46) -> tuple[Stay, ...]:
    return stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, out, leaving=Leaving.SOLD)


def test_every_way_out_of_the_example_helps() -> None:
    numbers = count(1)
    one = example_farm(TODAY, lambda: str(UUID(int=next(numbers))))
    helped = [must_help(one, clash, TODAY) for clash in clashes_of(Season(one), TODAY)]
    assert all(helped)


@settings(max_examples=15)
@given(farms(most_batches=3), st.dates(date(2026, 6, 1), date(2029, 1, 1)))
def test_every_way_out_of_any_farm_helps(one: Farm, today: date) -> None:
    for clash in clashes_of(Season(one), today)[:2]:
        must_help(one, clash, today)


def test_missing_days_of_clean_out_are_won_by_setting_later_or_by_cleaning_faster() -> None:
    # Aster leaves on day 46, five days of clean-out: Bracken may come on day 51 = its day 18: set on day 33.
    # It is planned for day 31; two days later is enough. Three days of cleaning are left, the least that the
    # figure clean_out_days allows.
    tidy = replace(BROODER, clean_out_days=5)
    one = farm(tidy, eggs("Aster", 50, *route()), eggs("Bracken", 50, *route(), start=on(31)))
    found = sentences(one, "cleanout", on(20))
    assert found[0] == "Set Bracken 2 days later, on 3 Apr; all of its days move along."
    assert "Clean out Brooder in 3 days instead of 5, each time." in found


def test_too_many_chicks_are_fewer_eggs_or_sold_or_elsewhere() -> None:
    # 110 plain birds of 200 cm2 in 20,000: 100 fit. 90 % of 110 eggs are 99.
    other = replace(BROODER, id="other", name="Other", position=9)
    places = (resized(SETTER, 200), resized(HATCHER, 200))
    found = sentences(farm(eggs("Aster", 110, *route()), *places), "floor")
    assert "Take 99 eggs for Aster instead of 110: 11 chicks fewer." in found
    wide = resized(other, 30_000)
    found = sentences(farm(eggs("Aster", 110, *route()), *places, wide), "floor")
    assert found[0] == "Give Aster Other instead of Brooder; the days stay as they are."


def test_a_pen_that_is_late_is_finished_sooner_or_waited_for() -> None:
    built = replace(PEN, ready_on=on(50))
    chain = (*route()[:2], stay(BROODER, 18, 46), stay(PEN, 46, 90, leaving=Leaving.SOLD))
    found = sentences(farm(built, eggs("Aster", 50, *chain)), "notready", on(30))
    # The batch is set already: it cannot be moved. Out of the brooder four days later costs less than building.
    assert found == [
        "Take Aster out of Brooder 4 days later, on 20 Apr.",
        "Finish Pen 4 days sooner, by 16 Apr.",
        "Sell the 50 started birds of Aster by 16 Apr, at 29 days old.",
    ]


def test_birds_with_nowhere_to_go_can_be_sold() -> None:
    one = farm(eggs("Aster", 30, *route()[:2], stay(BROODER, 18, 46)))
    assert sentences(one, "nowhere", on(30))[0] == "Sell the 30 started birds of Aster by 16 Apr, at 29 days old."


def test_two_small_changes_together_where_none_helps_alone() -> None:
    # Three batches of 60 plain birds lie in a brooder for 100 at once: whichever goes, 120 are left.
    one = farm(
        *(eggs(name, 60, *route(), start=on(day)) for day, name in enumerate(("Aster", "Bracken", "Clover"))),
        resized(SETTER, 300), resized(HATCHER, 300),
    )  # fmt: skip
    clash = only(clashes_of(Season(one), MONDAY), "floor")
    found = ways_out(one, clash, MONDAY)
    assert found
    assert must_help(one, clash, MONDAY) == len(found)
    assert all(len(way.change.touches) == 2 for way in found)


def test_where_nothing_helps_nothing_is_offered_and_what_was_tried_is_told() -> None:
    # The eggs will be 20 days old on the day of setting: moving that day, or taking fewer, makes them no fresher.
    # 21 days later, 10 smaller numbers, and before day 0 nothing: it is today.
    one = farm(replace(eggs("Aster", 50, *route()), egg_age_days=20))
    clash = only(clashes_of(Season(one), MONDAY), "stale")
    looked = look_for_ways_out(checked(Season(one)), clash, MONDAY)
    assert (looked.ways, looked.removed) == ((), 0)
    assert looked.singles >= 31
    assert none_text(looked).startswith(f"{looked.singles} small changes")


def test_what_stands_against_a_way_out_is_told_by_kind() -> None:
    # 130 eggs are in a setter for 100 since yesterday, and there is no other. To take them out today, 14 days early,
    # would end it; but the hatcher does not turn. Fewer days early leave too many in the setter until then.
    one = farm(eggs("Aster", 130, *route()), resized(HATCHER, 200), resized(BROODER, 90_000))
    looked = look_for_ways_out(checked(Season(one)), only(clashes_of(Season(one), on(1)), "eggs"), on(1))
    assert (looked.ways, looked.removed, looked.brought) == ((), 1, {"cabinet": 1})
    assert none_text(looked) == (
        f"{looked.singles} small changes were tried, and none helps: 1 would remove it but bring another clash, "
        "mostly turning and lockdown under one lid (1); the others leave some of it. "
        "Change the plan by hand, or add room."
    )


@pytest.mark.parametrize("day", [0, 30])
def test_what_is_past_is_left_alone(day: int) -> None:
    one = farm(eggs("Aster", 110, *route()), resized(SETTER, 200), resized(HATCHER, 200))
    clash = only(clashes_of(Season(one), on(day)), "floor")
    labels = [way.change.label for way in ways_out(one, clash, on(day))]
    assert any("eggs for Aster" in text for text in labels) is (day == 0)


def lived_with(one: Farm, today: date) -> Farm:
    """``one`` with every clash accepted that is to be watched."""
    for number, clash in enumerate(clashes_of(Season(one), today)):
        if clash.kind in WATCHED:
            one = apply(one, accept(one, clash, "We manage", lambda n=number: f"a{n}"))  # type: ignore[misc]
    return one


def test_no_way_out_lets_an_accepted_clash_grow() -> None:
    # Aster leaves on day 46, Bracken, set on day 31, comes on day 49, after 3 of 5 days of clean-out: 2 are missing,
    # and that is accepted. Nobody is at home on day 31. Set on day 30, Bracken would come after 2 days, 3 missing.
    tidy, ann = replace(BROODER, clean_out_days=5), Person("ann", "Ann", away=(Span(on(31), on(32)),))
    one = lived_with(farm(tidy, ann, eggs("Aster", 50, *route()), eggs("Bracken", 50, *route(), start=on(31))), on(20))
    assert [record.kind for record in one.acceptances] == ["cleanout"]
    found = ways_out(one, only(clashes_of(Season(one), on(20)), "hands"), on(20))
    assert found
    for way in found:
        after = apply(one, way.change)
        assert open_clashes(after, clashes_of(Season(after), on(20))) == ()
    starts = {apply(one, way.change).batch("bracken").start for way in found}
    assert min(starts) >= on(31)  # none sets Bracken earlier
    quick = one.with_records(set(), (replace(tidy, clean_out_days=0),))
    found = ways_out(quick, only(clashes_of(Season(quick), on(20)), "hands"), on(20))
    assert on(30) in {apply(quick, way.change).batch("bracken").start for way in found}


def test_what_is_accepted_makes_no_way_out_easier_and_none_harder() -> None:
    numbers = count(1)
    one = example_farm(TODAY, lambda: str(UUID(int=next(numbers))))
    accepting = lived_with(one, TODAY)
    assert len(accepting.acceptances) == 4
    for clash in clashes_of(Season(one), TODAY):
        assert ways_out(accepting, clash, TODAY) == ways_out(one, clash, TODAY)
        for way in ways_out(accepting, clash, TODAY):
            after = apply(accepting, way.change)
            left = open_clashes(after, clashes_of(Season(after), TODAY))
            assert [kind for kind in (c.kind for c in left) if kind in WATCHED] == []
