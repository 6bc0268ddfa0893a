"""Birds that are wanted by a day: days and numbers by hand, and the reason why not."""

from __future__ import annotations

from datetime import date, timedelta

from quailsched.farm.range import LATEST
from quailsched.farm.records import Farm
from quailsched.outlook.reaching import Aim, Wanted
from quailsched.planner.next_set import broken_by, next_sets_of
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
    assert [offer.one.day for offer in answer.offers] == [on(day) for day in range(8)]


def test_each_day_has_room_for_the_eggs_that_it_takes() -> None:
    # Every egg hatches and every chick lives: 10 of n are hens in 9 of 10 hatches from 26 on
    # (binomial, one half: 0.916 of 26, 0.885 of 25; the rate of hatch itself still varies by the least spread).
    answer, text = answered(farm(SETTER, HATCHER, BROODER, PEN, ARK), HENS, 80)
    assert answer.eggs is not None
    assert 26 <= answer.eggs <= 28
    assert all(answer.eggs <= offer.eggs <= offer.one.eggs for offer in answer.offers)
    assert f"{answer.eggs} eggs" in text


def test_where_so_many_find_no_room_the_closest_is_told() -> None:
    # 20 birds of 200 cm2 find room in 4,000 cm2, which is too few for 10 hens in 9 of 10 hatches. In pens of
    # 4,000 cm2 a few birds are calm.
    small = (resized(BROODER, 4_000), resized(PEN, 4_000), resized(ARK, 4_000))
    answer, text = answered(farm(SETTER, HATCHER, *small), HENS, 80)
    assert answer.offers == ()
    assert answer.closest is not None
    assert answer.closest.eggs <= 20
    assert 0 < answer.chance < 0.9
    assert "Closest" in text
    assert "too many" in text


def test_a_day_too_near_says_by_how_much() -> None:
    answer, text = answered(farm(SETTER, HATCHER, BROODER, PEN, ARK), HENS, 70)
    assert answer.offers == ()
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


def test_a_number_too_small_to_be_calm_is_not_offered_but_the_next_that_is() -> None:
    # Ten plain chicks take ten eggs. Pen, of 30,000 cm2, is calm from 30,000 / 1,000 birds on at the most (figure
    # calm_area_cm2), and these birds go there and are sold, or are parted.
    one = farm(SETTER, HATCHER, BROODER, PEN, ARK)
    now = checked(Season(one))
    answer, text = answered(one, Aim(Wanted.CHICKS, 10, 0.9), 60)
    assert answer.offers
    assert answer.eggs is not None
    for offer in answer.offers:
        route, day = offer.one.route, offer.one.day
        assert broken_by(now, "coturnix", day, route, offer.eggs) is None
        assert all(broken_by(now, "coturnix", day, route, few) for few in range(answer.eggs, offer.eggs))
    assert answer.offers[0].eggs > answer.eggs
    assert "Why more than would be enough on" in text


def test_what_a_farm_lacks_for_hens_is_told() -> None:
    assert "one pen only" in answered(farm(SETTER, HATCHER, BROODER, PEN), HENS, 80)[1]
    assert "no pen to keep hens in" in answered(farm(SETTER, HATCHER, BROODER), HENS, 80)[1]
    assert "no brooder" in answered(farm(SETTER, HATCHER, PEN, ARK), HENS, 80)[1]
    assert "no place for eggs" in answered(farm(BROODER, PEN, ARK), HENS, 80)[1]
    chicks = answered(farm(SETTER, HATCHER, BROODER, PEN), Aim(Wanted.CHICKS, 10, 0.9), 80)
    assert chicks[0].missing is None


def test_hens_in_lay_are_said_to_be_half_laying() -> None:
    text = answered(farm(SETTER, HATCHER, BROODER, PEN, ARK), HENS, 80)[1]
    assert "10 hens in lay by" in text
    assert text.count("half of them are laying") == 1


def test_a_day_far_ahead_tells_how_far_was_looked() -> None:
    # 366 days from 1 March 2027 on end on 29 February 2028. There is room for no more than 20 chicks on any.
    small = (resized(BROODER, 4_000), resized(PEN, 4_000), resized(ARK, 4_000))
    answer, text = answered(farm(SETTER, HATCHER, *small), Aim(Wanted.CHICKS, 50, 0.9), 1_200)
    assert answer.last == date(2028, 2, 29)
    assert "On no day until Tue 29 Feb 2028 do so many find room; later days were not tried." in text


def test_no_day_after_the_last_of_all_days_is_tried() -> None:
    now = checked(Season(farm(SETTER, HATCHER, BROODER, PEN, ARK)))
    found = next_sets_of(now, "coturnix", LATEST - timedelta(days=2), 10)
    assert [one.day for one in found] == [LATEST - timedelta(days=n) for n in (2, 1, 0)]
