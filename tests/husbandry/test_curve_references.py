"""Curves stand on their rows of the reference table where tests/outside does not look: heat, feed, lay, borrowed ones.

Fahrenheit: (F - 32) x 5 / 9; a step of 1 degF is 5 / 9 degC. Curves in degC are written to one decimal.
"""

from __future__ import annotations

import pytest

from quailsched.husbandry.handbook import handbook
from tests.husbandry.reference_rows import ROWS, number

COTURNIX, HEAVY, BOBWHITE, BUTTON = handbook().values()


@pytest.mark.parametrize(
    ("kind", "curves"),
    [
        ("coturnix-heavy", ["heat_c", "floor_cm2", "alive"]),
        ("bobwhite", ["floor_cm2", "alive"]),
    ],
)
def test_a_borrowed_curve_is_that_of_standard_coturnix(kind: str, curves: list[str]) -> None:
    for key in curves:
        assert handbook()[kind].curves[key].points == COTURNIX.curves[key].points, key
        assert handbook()[kind].curves[key].confidence == "common practice", key


@pytest.mark.parametrize(("age", "key"), [(0, "brood.b.temp.0_7"), (7, "brood.b.temp.7_14")])
def test_bobwhite_heat_of_two_weeks_is_the_middle_of_the_published_range(age: int, key: str) -> None:
    middle = (number(key, "low") + number(key, "high")) / 2
    assert BOBWHITE.at("heat_c", age) == pytest.approx(middle, abs=0.05)


@pytest.mark.parametrize("week", [2, 3, 4])
def test_bobwhite_heat_falls_by_five_fahrenheit_a_week_after_that(week: int) -> None:
    fall = BOBWHITE.at("heat_c", 7 * (week - 1)) - BOBWHITE.at("heat_c", 7 * week)
    assert fall == pytest.approx(number("brood.temp.F.step") * 5 / 9, abs=0.05)


@pytest.mark.parametrize("week", [0, 1, 2, 3])
def test_button_heat_starts_as_a_keeper_says_and_falls_like_that_of_coturnix(week: int) -> None:
    first = (number("brood.k.temp") - 32) * 5 / 9  # 99 degF: 37.2
    fallen = week * number("brood.temp.step")
    assert BUTTON.at("heat_c", 7 * week) == pytest.approx(first - fallen, abs=0.05)


def test_brooding_of_coturnix_ends_near_the_published_end() -> None:
    # In whole steps of 3.5 from 35 the nearest to 24 is 24.5.
    assert COTURNIX.at("heat_c", 60) == pytest.approx(number("brood.temp.end"), abs=number("brood.temp.step") / 2)


@pytest.mark.parametrize(("age", "low", "high"), [(119, 16.0, 17.0), (203, 22.5, 24.0)])
def test_bobwhite_feed_before_and_in_lay(age: int, low: float, high: float) -> None:
    assert "about 16-17 before lay; 22.5-24 in lay" in ROWS["b.feed.adult"]["notes"]
    assert low <= BOBWHITE.at("feed_g", age) <= high


def test_button_adults_have_a_third_of_a_trios_tank() -> None:
    # 30 x 12 in = 360 in2 = 360 x 6.4516 cm2 = 2322.6 cm2 for three birds; never less than a chick has.
    assert "about 30x12 in" in ROWS["k.space"]["notes"]
    assert BUTTON.at("floor_cm2", 56) == pytest.approx(30 * 12 * 2.54**2 / 3, abs=0.5)
    assert [BUTTON.at("floor_cm2", age) for age in (0, 10, 42)] == [103, 155, 310]


def test_button_feed_ends_at_the_figure_of_a_grown_bird() -> None:
    assert BUTTON.at("feed_g", 42) == BUTTON.value("adult_feed_g")
    assert BUTTON.curves["feed_g"].confidence == "from memory"


def test_button_lay_is_the_middle_of_what_is_published() -> None:
    assert BUTTON.at("lay_pct", 300) == (number("k.lay", "low") + number("k.lay", "high")) / 2


def test_heavy_lay_passes_the_average_of_breeders_and_ends_at_five_eggs_a_week() -> None:
    # Peak age for strains in general: 10 to 20 weeks; 54 + 210 days is the end of 30 weeks of lay.
    peak_age = 7 * 17
    assert number("lay.peak.age", "low") <= peak_age / 7 <= number("lay.peak.age", "high")
    assert HEAVY.at("lay_pct", peak_age) == pytest.approx(number("lay.avg.cage", "high"), abs=0.5)
    end = number("lay.first.heavy") + 7 * number("lay.replace")
    assert HEAVY.at("lay_pct", end) == pytest.approx(number("lay.week.uk") / 7 * 100, abs=0.5)


@pytest.mark.parametrize("kind", list(handbook()))
@pytest.mark.parametrize(
    ("first", "last", "key"),
    [(0, 9, "brood.feeder.1_10"), (10, 41, "brood.feeder.10d_6w"), (42, 400, "brood.feeder.6w")],
)
def test_feeder_edge_steps_as_the_table_does(kind: str, first: int, last: int, key: str) -> None:
    # Half an inch, one, one and a half; an inch is 2.54 cm. At a border the next class's edge is already given.
    edges = [handbook()[kind].at("feeder_edge_cm", age) for age in (first, last)]
    assert edges == pytest.approx([number(key) * 2.54] * 2, abs=0.005)


@pytest.mark.parametrize(("month", "field"), [(6, "typical"), (10, "low")])
def test_coturnix_lay_declines_as_in_a_study_by_months_of_lay(month: int, field: str) -> None:
    # A month of 365.25 / 12 days after the first egg on day 43; the points are set to whole days near that.
    age = COTURNIX.value("first_egg_day") + month * 365.25 / 12
    assert COTURNIX.at("lay_pct", age) == pytest.approx(number("lay.decline", field), abs=0.5)
