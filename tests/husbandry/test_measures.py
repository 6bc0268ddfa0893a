"""Sums of the trade refuse what cannot be. Their values against published ones: tests/outside."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quailsched.husbandry.measures import (
    birds_per_m2,
    dressing_pct,
    feed_conversion,
    feed_per_dozen_g,
    fertility_pct,
    floor_each_cm2,
    hatch_of_fertile_pct,
    hatch_of_set_of_rates_pct,
    hatch_of_set_pct,
    hen_day_pct,
    hen_housed_pct,
    livability_pct,
)


@pytest.mark.parametrize("measure", [fertility_pct, hatch_of_set_pct, hatch_of_fertile_pct])
@pytest.mark.parametrize(("whole", "part"), [(0, 1), (-5, 1), (10, 11), (10, -1)])
def test_impossible_counts_are_refused(measure: Callable[[int, int], float | None], whole: int, part: int) -> None:
    with pytest.raises(ValueError, match="cannot be used"):
        measure(whole, part)


@pytest.mark.parametrize("measure", [fertility_pct, hatch_of_set_pct, hatch_of_fertile_pct, livability_pct,
                                     hen_day_pct, feed_conversion, dressing_pct, feed_per_dozen_g])  # fmt: skip
def test_nothing_is_told_where_the_divisor_is_0(measure: Callable[[int, int], float | None]) -> None:
    assert measure(0, 0) is None


@pytest.mark.parametrize(("hens", "days"), [(0, 7), (10, 0)])
def test_no_lay_is_told_of_no_hens_or_no_days(hens: int, days: int) -> None:
    assert hen_housed_pct(0, hens, days) is None


@pytest.mark.parametrize("measure", [hen_day_pct, feed_conversion, feed_per_dozen_g])
@pytest.mark.parametrize("amounts", [(-1, 10), (1, -10), (float("nan"), 10)])
def test_amounts_below_0_are_refused(
    measure: Callable[[float, float], float | None], amounts: tuple[float, float]
) -> None:
    with pytest.raises(ValueError, match="a number from 0"):
        measure(*amounts)


def test_more_is_dressed_than_weighed_is_refused() -> None:
    with pytest.raises(ValueError, match="dressed weight: 190"):
        dressing_pct(188, 190)


def test_the_refusal_names_the_count_and_what_is_possible() -> None:
    with pytest.raises(ValueError) as caught:
        hatch_of_set_pct(10, 11)
    assert str(caught.value) == "chicks hatched: 11 cannot be used; from 0 to 10 (eggs set) is possible."


@pytest.mark.parametrize(("width", "depth", "birds"), [(0, 33, 12), (96, -1, 12), (96, 33, 0), (float("nan"), 33, 2)])
def test_floor_needs_sizes_and_birds_above_0(width: float, depth: float, birds: int) -> None:
    with pytest.raises(ValueError, match="above 0"):
        floor_each_cm2(width, depth, birds)


@pytest.mark.parametrize("floor", [0, -1, float("nan")])
def test_birds_per_m2_needs_floor(floor: float) -> None:
    with pytest.raises(ValueError, match="above 0"):
        birds_per_m2(floor)


@pytest.mark.parametrize("rates", [(101, 50), (50, -1)])
def test_rates_outside_0_to_100_are_refused(rates: tuple[float, float]) -> None:
    with pytest.raises(ValueError, match="0 to 100 %"):
        hatch_of_set_of_rates_pct(*rates)


@given(st.integers(1, 5000), st.data())
def test_fertility_times_hatch_of_fertile_is_hatch_of_set(eggs: int, data: st.DataObject) -> None:
    infertile = data.draw(st.integers(0, eggs - 1))
    hatched = data.draw(st.integers(0, eggs - infertile))
    fertility, of_fertile = fertility_pct(eggs, infertile), hatch_of_fertile_pct(eggs - infertile, hatched)
    assert fertility is not None
    assert of_fertile is not None
    assert hatch_of_set_of_rates_pct(fertility, of_fertile) == pytest.approx(hatch_of_set_pct(eggs, hatched))
