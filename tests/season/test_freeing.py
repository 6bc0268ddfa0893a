"""When places free up, derived by hand. Batches are set on Monday 1 March 2027 = day 0."""

from dataclasses import replace
from datetime import date, timedelta

from quailsched.farm.records import Leaving, Part, Record, Span, Stay
from quailsched.report.places import place_line
from quailsched.season.freeing import PlaceState, place_states
from quailsched.season.season import Season
from tests.builders import BROODER, HATCHER, MONDAY, PEN, SETTER, eggs, farm, stay

TIDY = replace(BROODER, clean_out_days=3)


def on(day: int) -> date:
    return MONDAY + timedelta(days=day)


def route(out: int = 46) -> tuple[Stay, ...]:
    return stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, out, leaving=Leaving.SOLD)


def state_of(name: str, today: date, *records: Record) -> tuple[PlaceState, str]:
    season = Season(farm(*records))
    state = next(s for s in place_states(season, today, weeks=3) if s.place.name == name)
    return state, place_line(season.farm, state, today)


def test_a_brooder_frees_up_after_its_clean_out() -> None:
    # Out on day 46 = 16 April, three days of clean-out: free from day 49 = 19 April.
    state, line = state_of("Brooder", on(20), TIDY, eggs("Aster", 50, *route()))
    assert state.free_on == on(49)
    assert [(o.batch, o.number, o.unit, o.until) for o in state.now] == [("Aster", 50, "birds", on(46))]
    assert line == ("Brooder (2.00 m²): 50 birds of Aster until 16 Apr; free from 19 Apr (3 days of clean-out counted)")


def test_who_comes_next_is_told() -> None:
    _, line = state_of(
        "Brooder", on(20), TIDY, eggs("Aster", 50, *route()), eggs("Bracken", 50, *route(), start=on(40))
    )
    assert line.endswith("; next in: Bracken on 28 Apr")  # day 40 + 18 = 58


def test_an_empty_place_is_free_now_and_during_a_clean_out_it_is_not() -> None:
    batch = eggs("Aster", 50, *route())
    assert state_of("Brooder", on(10), TIDY, batch)[0].free_on == on(10)
    assert state_of("Brooder", on(47), TIDY, batch)[0].free_on == on(49)
    assert state_of("Brooder", on(49), TIDY, batch)[0].free_on == on(49)


def test_batches_that_overlap_free_a_place_when_the_last_one_is_out() -> None:
    # Bracken comes on day 30 and stays to day 58; clean-out until day 61.
    state, _ = state_of(
        "Brooder", on(20), TIDY, eggs("Aster", 50, *route()), eggs("Bracken", 40, *route(), start=on(12))
    )
    assert state.free_on == on(61)


def test_a_place_being_built_is_free_when_it_is_ready() -> None:
    state, line = state_of("Brooder", on(0), replace(TIDY, ready_on=on(12)), eggs("Aster", 50, *route()))
    assert state.free_on == on(12)
    assert line.startswith("Brooder (2.00 m²): being built, ready on 13 Mar; free from 13 Mar")


def test_a_closure_right_after_the_clean_out_counts() -> None:
    shut = replace(TIDY, shut=(Span(on(49), on(55), "painting"),))
    assert state_of("Brooder", on(20), shut, eggs("Aster", 50, *route()))[0].free_on == on(55)


def test_room_left_is_the_least_of_the_week() -> None:
    # 50 plain birds of 200 cm2 leave 10,000 of 20,000 cm2 from day 18. Weeks from day 10: 10-16 empty, 17-23
    # taken from day 18, 24-30 taken.
    state, _ = state_of("Brooder", on(10), TIDY, eggs("Aster", 50, *route()))
    assert [(w.start, w.room) for w in state.weeks] == [(on(10), 20_000), (on(17), 10_000), (on(24), 10_000)]


def test_a_week_with_a_day_of_clean_out_has_no_room() -> None:
    state, _ = state_of("Brooder", on(42), TIDY, eggs("Aster", 50, *route()))
    # Days 42-48 hold the clean-out of 46-48; day 49 on is empty.
    assert [w.room for w in state.weeks] == [0, 20_000, 20_000]


def test_egg_places_count_eggs() -> None:
    state, line = state_of("Setter", on(3), eggs("Aster", 70, *route()))
    assert line == "Setter (100 egg places): 70 eggs of Aster until 16 Mar; free from 16 Mar"
    assert [w.room for w in state.weeks] == [30, 30, 100]  # days 3-9 and 10-16 hold eggs to day 14


def test_the_laying_group_and_the_cocks_are_told_apart() -> None:
    batch = eggs(
        "Aster", 60, stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, 46), stay(PEN, 46, 59),
        stay(PEN, 59, 100, Part.HENS, Leaving.SOLD), stay(PEN, 59, 73, Part.COCKS, Leaving.PROCESSED),
    )  # fmt: skip
    _, line = state_of("Pen", on(60), batch)
    # 60 birds: 30 hens and 10 of the 30 cocks stay, 20 are surplus.
    assert line.startswith(
        "Pen (6.00 m²): 20 birds of Aster (surplus cocks) and 40 birds of Aster (laying group) until 9 Jun"
    )
