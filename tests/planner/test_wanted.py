"""Birds that are wanted by a day: days and numbers by hand, and the reason why not."""

from __future__ import annotations

from datetime import timedelta

from quailsched.farm.records import Farm
from quailsched.outlook.reaching import Aim, Wanted
from quailsched.planner.wanted import Answer, answer_to
from quailsched.report.wanted import wanted_json, wanted_text
from quailsched.season.clashes import checked
from quailsched.season.season import Season
from tests.builders import ARK, BROODER, HATCHER, MONDAY, PEN, SETTER, farm, on, resized

HENS = Aim(Wanted.HENS, 10, 0.9)


def answered(one: Farm, aim: Aim, by: int) -> tuple[Answer, str]:
    now = checked(Season(one))
    answer = answer_to(now, "coturnix", aim, on(by), MONDAY)
    return answer, wanted_text(now, answer, MONDAY)


def test_the_latest_day_leaves_time_to_hatch_and_to_lay() -> None:
    # 17 days to the hatch and 56 to half lay (figures incubation_days, half_lay_day): by day 80, set by day 7.
    answer, _ = answered(farm(SETTER, HATCHER, BROODER, PEN, ARK), HENS, 80)
    assert answer.latest == on(7)
    assert [one.day for one in answer.days] == [on(day) for day in range(8)]


def test_each_day_has_room_for_the_eggs_that_it_takes() -> None:
    # Every egg hatches and every chick lives: 10 of n are hens in 9 of 10 hatches from 26 on
    # (binomial, one half: 0.916 of 26, 0.885 of 25; the rate of hatch itself still varies by the least spread).
    answer, text = answered(farm(SETTER, HATCHER, BROODER, PEN, ARK), HENS, 80)
    assert answer.eggs is not None
    assert 26 <= answer.eggs <= 28
    assert all(one.eggs >= answer.eggs for one in answer.days)
    assert f"{answer.eggs} eggs" in text


def test_where_so_many_find_no_room_the_closest_is_told() -> None:
    # 20 birds of 200 cm2 find room in 4,000 cm2, which is too few for 10 hens in 9 of 10 hatches. In pens of
    # 4,000 cm2 a few birds are calm.
    small = (resized(BROODER, 4_000), resized(PEN, 4_000), resized(ARK, 4_000))
    answer, text = answered(farm(SETTER, HATCHER, *small), HENS, 80)
    assert answer.days == ()
    assert answer.closest is not None
    assert answer.closest.eggs <= 20
    assert 0 < answer.chance < 0.9
    assert "Closest" in text
    assert "too many" in text


def test_a_day_too_near_says_by_how_much() -> None:
    answer, text = answered(farm(SETTER, HATCHER, BROODER, PEN, ARK), HENS, 70)
    assert answer.days == ()
    assert "3 days too late" in text


def test_a_farm_without_egg_places_says_so() -> None:
    assert "no place for eggs" in answered(farm(BROODER, PEN), HENS, 200)[1]


def test_the_document_has_days_and_the_closest() -> None:
    now = checked(Season(farm(SETTER, HATCHER, BROODER, PEN, ARK)))
    answer = answer_to(now, "coturnix", HENS, on(80), MONDAY)
    document = wanted_json(now, answer)
    assert document["want"] == {"what": "hens", "number": 10, "by": on(80).isoformat(), "sure": 0.9}
    assert len(document["days"]) == 8
    assert document["closest"] is None
    assert document["latest"] == (MONDAY + timedelta(days=7)).isoformat()
