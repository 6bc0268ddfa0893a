"""How curves run between their points, how days are rounded, and how a farm's own values come in."""

from __future__ import annotations

from dataclasses import replace
from math import e, exp

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quailsched.farm.records import Units
from quailsched.farm.units import length_text
from quailsched.husbandry.bounds import order_faults
from quailsched.husbandry.cautions import TOPICS, caution
from quailsched.husbandry.figure import Curve, Shape
from quailsched.husbandry.handbook import Choice, handbook, kind_with
from quailsched.husbandry.source import Cited, Confidence, Source

COTURNIX = handbook()["coturnix"]


def curve(
    shape: Shape, points: tuple[tuple[float, float], ...] = (), parameters: tuple[tuple[str, float], ...] = ()
) -> Curve:
    return Curve("coturnix", "weight_g", "Weight", shape, "g", points, parameters, Cited(), "computed", "")


def test_a_linear_curve_runs_straight_and_is_held_outside_its_points() -> None:
    # From 103 at day 0 to 155 at day 10 it rises 5.2 a day; to 310 at day 42 it rises 155 / 32 a day.
    floor = curve(Shape.LINEAR, ((0, 103), (10, 155), (42, 310)))
    assert floor.at(-3) == 103
    assert floor.at(5) == 103 + 5 * 5.2
    assert floor.at(10) == 155
    assert floor.at(26) == 155 + 155 / 2
    assert floor.at(42) == floor.at(1000) == 310


def test_a_step_curve_keeps_each_value_up_to_the_next_point() -> None:
    heat = curve(Shape.STEP, ((0, 35), (7, 31.5), (14, 28)))
    assert [heat.at(age) for age in (-1, 0, 6.99, 7, 13, 14, 99)] == [35, 35, 35, 31.5, 31.5, 28, 28]


def test_a_gompertz_curve_has_its_greatest_gain_at_a_third_of_its_end_weight() -> None:
    # W = A exp(-b exp(-k t)): at t = ln(b) / k, b exp(-k t) is 1 and W is A / e. With b = e and k = 0.1, t = 10.
    growth = curve(Shape.GOMPERTZ, parameters=(("A", 200.0), ("b", e), ("k", 0.1)))
    assert growth.at(10) == pytest.approx(200 / e)
    assert growth.at(0) == pytest.approx(200 * exp(-e))
    assert growth.at(-5) == growth.at(0)
    assert growth.at(10_000) == pytest.approx(200)


def test_a_gompertz_curve_is_held_after_the_last_age_of_its_data() -> None:
    growth = curve(Shape.GOMPERTZ, parameters=(("A", 200.0), ("b", e), ("k", 0.1), ("until", 10.0)))
    assert growth.at(50) == pytest.approx(200 / e)


@given(st.floats(-50, 600), st.sampled_from(sorted(handbook())), st.sampled_from(sorted(COTURNIX.curves)))
def test_a_linear_or_stepped_curve_never_leaves_the_values_of_its_points(age: float, kind: str, key: str) -> None:
    found = handbook()[kind].curves[key]
    if found.points:
        values = [value for _, value in found.points]
        assert min(values) - 1e-9 <= found.at(age) <= max(values) + 1e-9


@pytest.mark.parametrize(("value", "days"), [(17.0, 17), (17.4, 17), (17.5, 18), (24.5, 25), (18.5, 19)])
def test_half_days_are_rounded_up(value: float, days: int) -> None:
    assert kind_with(COTURNIX, (("incubation_days", value, ()),)).days("incubation_days") == days


def test_a_key_that_no_kind_has_is_a_key_error() -> None:
    with pytest.raises(KeyError):
        COTURNIX.days("wingspan")
    with pytest.raises(KeyError):
        COTURNIX.value("weight_g")
    with pytest.raises(KeyError):
        COTURNIX.at("lockdown_day", 3)


def test_a_choice_of_a_figure_that_has_gone_changes_nothing() -> None:
    own = kind_with(COTURNIX, (("feeder_cm", 3.0, ()),))
    assert dict(own.figures) == dict(COTURNIX.figures)
    assert dict(own.curves) == dict(COTURNIX.curves)


def test_a_farms_own_figure_replaces_ours_and_says_so() -> None:
    own = kind_with(COTURNIX, (("lockdown_day", 14.0, ()),))
    figure = own.figures["lockdown_day"]
    assert (figure.value, figure.is_replaced, figure.confidence) == (14, True, Confidence.OWN)
    assert figure.source_text == "this farm's own"
    assert figure.sources == COTURNIX.figures["lockdown_day"].sources
    assert not COTURNIX.figures["lockdown_day"].is_replaced
    untouched = {key: f for key, f in own.figures.items() if key != "lockdown_day"}
    assert untouched == {key: f for key, f in COTURNIX.figures.items() if key != "lockdown_day"}


@given(st.floats(21, 400))
def test_the_range_of_an_own_figure_still_holds_its_value(value: float) -> None:
    figure = kind_with(COTURNIX, (("process_day", value, ()),)).figures["process_day"]
    assert figure.low == min(35, value)
    assert figure.high == max(42, value)


def test_a_farms_own_points_replace_a_curve() -> None:
    own = kind_with(COTURNIX, (("floor_cm2", None, ((0, 200), (20, 400))), ("weight_g", None, ((0, 8), (10, 48)))))
    assert own.at("floor_cm2", 5) == 250
    assert own.at("weight_g", 2.5) == 18  # a straight line now, no growth model
    assert own.curves["weight_g"].is_replaced
    assert own.curves["weight_g"].source_text == "this farm's own"


def test_steps_stay_steps_with_a_farms_own_points() -> None:
    own = kind_with(COTURNIX, (("heat_c", None, ((0, 37), (7, 34))),))
    assert own.at("heat_c", 6) == 37


def test_no_choices_leave_the_kind_as_it_is() -> None:
    own = kind_with(COTURNIX, ())
    assert dict(own.figures) == dict(COTURNIX.figures)
    assert own.curves == COTURNIX.curves


@pytest.mark.parametrize(
    ("choice", "told"),
    [
        (("wingspan", 3.0, ()), "Coturnix standard: it has no figure or curve “wingspan”"),
        (("incubation_days", 170.0, ()), "170 cannot be used; from 12 to 35 days is possible."),
        (("hatch_of_set_pct", -1.0, ()), "-1 cannot be used; from 1 to 100 % is possible."),
        (("incubation_days", float("nan"), ()), "nan cannot be used"),
        (("incubation_days", float("inf"), ()), "inf cannot be used"),
        (("incubation_days", None, ()), "one value is needed"),
        (("incubation_days", 17.0, ((0.0, 1.0),)), "not points"),
        (("weight_g", 100.0, ()), "points of age and value are needed"),
        (("weight_g", None, ()), "a curve needs points"),
        (("weight_g", None, ((0.0, 8.0), (0.0, 9.0))), "age 0 comes after 0; ages must rise"),
        (("weight_g", None, ((-1.0, 8.0),)), "age -1 cannot be used"),
        (("weight_g", None, ((float("nan"), 8.0),)), "age nan cannot be used"),
        (("alive", None, ((0.0, 1.5),)), "at 0 days: 1.5 cannot be used; from 0 to 1 fraction is possible."),
    ],
)
def test_a_choice_that_makes_no_sense_is_refused_with_a_sentence(choice: Choice, told: str) -> None:
    with pytest.raises(ValueError) as caught:
        kind_with(COTURNIX, (choice,))
    assert told in str(caught.value)
    assert str(caught.value).endswith(".")


def test_one_figure_cannot_be_replaced_twice() -> None:
    with pytest.raises(ValueError, match="replaced twice"):
        kind_with(COTURNIX, (("sex_day", 20.0, ()), ("sex_day", 21.0, ())))


def test_hatch_days_that_contradict_each_other_are_told() -> None:
    late = kind_with(COTURNIX, (("lockdown_day", 17.0, ()),))
    assert list(order_faults(late.figures)) == [
        "Day of lockdown: turning stops, into the hatcher: 17 cannot be used;"
        " less than 17 is possible (Days from setting to hatch)."
    ]
    early = kind_with(COTURNIX, (("lockdown_day", 13.0, ()),))
    assert ["at most 13 is possible" in fault for fault in order_faults(early.figures)] == [True]


def test_the_weakest_source_decides_how_far_a_figure_is_trusted() -> None:
    def source(confidence: Confidence) -> Source:
        return Source("k", f"A {confidence} text", "1990", "", "", confidence, "")

    def cited(*sources: Source) -> Cited:
        return Cited(tuple(one.text for one in sources), lambda: {one.text: one for one in sources})

    published, practice = source(Confidence.PUBLISHED), source(Confidence.COMMON_PRACTICE)
    figure = replace(COTURNIX.figures["sex_day"], cited=cited(published, practice))
    assert figure.confidence is Confidence.COMMON_PRACTICE
    assert replace(figure, cited=cited(published)).confidence is Confidence.PUBLISHED
    assert replace(figure, cited=cited(published), basis="computed").confidence is Confidence.COMPUTED
    assert replace(figure, cited=cited(practice), basis="computed").confidence is Confidence.COMMON_PRACTICE
    assert replace(figure, cited=cited(), basis="from memory").confidence is Confidence.FROM_MEMORY
    assert figure.source_text == "A published text, 1990; A common practice text, 1990"


@pytest.mark.parametrize("topic", TOPICS)
def test_a_caution_is_short_and_has_its_source(topic: str) -> None:
    found = caution(topic)
    assert found.topic == topic
    assert found.source.key.startswith("safe.")
    assert found.text.endswith(".")
    assert len(found.text) < 240


def test_how_far_a_lamp_hangs_is_told_in_the_units_of_the_farm() -> None:
    # safe.lamp.dist: 18 in (Livingston Co. emergency management), better 3 ft (Maine Fire Chiefs Assn)
    metric = caution("heat_lamp").text
    inches = caution("heat_lamp", lambda cm: length_text(cm, Units.US)).text
    assert all(length in metric for length in ("46 cm", "91 cm"))
    assert all(length in inches for length in ("18 in", "36 in"))
    assert "cm" not in inches


def test_the_cautions_that_the_keeper_needs_are_there() -> None:
    kept = {"heat_lamp", "hands", "dust", "processing", "food_eggs", "food_meat", "bird_flu", "sick", "permit"}
    assert set(TOPICS) == kept
    assert "Salmonella" in caution("hands").text
    assert "vet" in caution("sick").text
    assert "local rules come first" in caution("processing").text
    with pytest.raises(KeyError):
        caution("weather")


def test_birds_do_not_come_back_to_life() -> None:
    kind = handbook()["coturnix"]
    with pytest.raises(ValueError, match="do not come back to life"):
        kind_with(kind, (("alive", None, ((0.0, 0.5), (10.0, 1.0))),))
    assert kind_with(kind, (("alive", None, ((0.0, 1.0), (10.0, 1.0), (20.0, 0.5))),)).at("alive", 20) == 0.5
