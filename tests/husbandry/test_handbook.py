"""The handbook is complete and does not contradict itself."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from quailsched.husbandry.bounds import order_faults
from quailsched.husbandry.figure import Figure, Shape
from quailsched.husbandry.handbook import handbook, labels, sources
from quailsched.husbandry.source import Confidence

_FIGURES = """
incubation_days lockdown_day turns_per_day candle_day candle_again_day setter_temp_c setter_rh_pct
hatcher_rh_pct egg_storage_days egg_storage_loss_pct_per_day egg_rest_days hatch_of_fertile_pct
fertility_pct hatch_of_set_pct hatcher_hold_days heat_off_day feathered_day out_day out_min_night_c
hardened_day harden_off_days sex_day cocks_mature_day hens_per_cock process_day first_egg_day half_lay_day
keep_lay_days light_hours light_lead_days calm_area_cm2 clean_out_days quarantine_days
bedding_brooder_days bedding_pen_days drinker_beside_days drain_water_days dust_bath_days pebbles_days
starter_until_day starter_protein_pct grower_protein_pct layer_protein_pct adult_feed_g age_gap_days
grass_move_days heat_source_chicks drinker_cm crowd_birds
"""
FIGURES = _FIGURES.split()
CURVES = ["heat_c", "floor_cm2", "feeder_edge_cm", "feed_g", "weight_g", "alive", "lay_pct"]
KINDS = ["coturnix", "coturnix-heavy", "bobwhite", "button"]


def all_figures() -> Iterator[Figure]:
    for kind in handbook().values():
        yield from kind.figures.values()


def test_every_kind_has_every_figure_and_curve() -> None:
    assert list(handbook()) == KINDS
    for kind in handbook().values():
        assert sorted(kind.figures) == sorted(FIGURES)
        assert sorted(kind.curves) == sorted(CURVES)
    assert sorted(labels()) == sorted(FIGURES + CURVES)


def test_every_value_lies_between_its_low_and_high_and_its_bounds() -> None:
    for figure in all_figures():
        assert figure.low <= figure.value <= figure.high, figure
        assert labels()[figure.key].allows(figure.value), figure


def test_the_unit_of_a_figure_is_the_same_for_every_kind() -> None:
    for key in FIGURES:
        assert len({kind.figures[key].unit for kind in handbook().values()}) == 1, key


def test_a_figure_without_a_reference_says_common_practice_or_from_memory() -> None:
    bare = [figure for figure in all_figures() if not figure.sources]
    assert bare
    assert {figure.confidence for figure in bare} == {Confidence.COMMON_PRACTICE, Confidence.FROM_MEMORY}
    assert all(figure.source_text == figure.confidence for figure in bare)


def test_what_a_kind_takes_from_another_is_common_practice_and_says_so() -> None:
    taken = [f for f in all_figures() if f.note.startswith("No source of its own")]
    assert len(taken) > 40
    for figure in taken:
        assert figure.kind != "coturnix"
        assert figure.confidence in (Confidence.COMMON_PRACTICE, Confidence.FROM_MEMORY)


def test_no_figure_or_curve_rests_on_a_row_that_is_known_to_be_flawed() -> None:
    used = {s.key for kind in handbook().values() for f in kind.figures.values() for s in f.sources}
    used |= {s.key for kind in handbook().values() for c in kind.curves.values() for s in c.sources}
    assert used <= sources().keys()
    assert not used & {"ex.space.bad", "ex.henday3.henday", "ex.henday3.henhoused", "ex.fcr.wk6"}


def test_the_days_of_a_hatch_follow_each_other_for_every_kind() -> None:
    for kind in handbook().values():
        assert list(order_faults(kind.figures)) == []


def test_the_lay_curve_agrees_with_the_figures_of_first_egg_and_half_lay() -> None:
    for kind in handbook().values():
        assert kind.at("lay_pct", kind.value("first_egg_day")) == 0, kind.id
        assert kind.at("lay_pct", kind.value("half_lay_day")) == 50, kind.id


def test_nobody_comes_back_to_life_and_nobody_starts_dead() -> None:
    for kind in handbook().values():
        values = [kind.at("alive", age) for age in range(500)]
        assert values[0] == 1
        assert all(0 < later <= earlier for earlier, later in pairwise(values))


def test_birds_never_have_less_floor_than_the_table_prints() -> None:
    # 9, 6 and 3 birds per ft2 of 929.03 cm2; 103 rounds 103.2 down, 310 rounds 309.7 up.
    for kind in handbook().values():
        for age in range(120):
            birds_per_ft2 = 9 if age < 10 else 6 if age < 42 else 3
            assert kind.at("floor_cm2", age) >= 929.03 / birds_per_ft2 - 0.5


def test_the_published_work_in_aviaries_is_named_with_the_calm_area() -> None:
    figure = handbook()["coturnix"].figures["calm_area_cm2"]
    assert (figure.value, figure.high) == (2787, 24000)
    assert "2.1 to 2.4 m2" in figure.note


def test_the_handbook_is_read_once() -> None:
    assert handbook() is handbook()
    assert handbook()["button"] is handbook()["button"]
    assert {handbook()["button"]: 1}[handbook()["button"]] == 1


def test_every_curve_of_a_growth_model_ends_with_its_data() -> None:
    for kind in handbook().values():
        curve = kind.curves["weight_g"]
        if curve.shape is Shape.GOMPERTZ:
            until = dict(curve.parameters)["until"]
            assert curve.at(until + 100) == curve.at(until) > curve.at(until - 1)
