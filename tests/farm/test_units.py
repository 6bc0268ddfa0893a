"""Quantities and days in words. Factors from NIST Special Publication 811 (1 ft = 0.3048 m, 1 in = 2.54 cm)."""

from datetime import date

import pytest

from quailsched.farm.records import Units
from quailsched.farm.units import (
    area_text,
    count_text,
    day_text,
    hours_text,
    length_text,
    named_day_text,
    names_text,
    span_text,
    two_areas_text,
    two_lengths_text,
    two_warmths_text,
    warmth_step_text,
    warmth_text,
    weekday_text,
)


@pytest.mark.parametrize(
    ("area_cm2", "metric", "us"),
    [(310, "310 cm²", "0.3 sq ft"), (13_000, "1.30 m²", "14.0 sq ft"), (89_187, "8.92 m²", "96.0 sq ft")],
)
def test_areas(area_cm2: int, metric: str, us: str) -> None:
    assert (area_text(area_cm2, Units.METRIC), area_text(area_cm2, Units.US)) == (metric, us)


@pytest.mark.parametrize(
    ("warmth_c", "metric", "us"), [(37.5, "37.5 °C", "100 °F"), (0, "0 °C", "32 °F"), (35, "35 °C", "95 °F")]
)
def test_warmth(warmth_c: float, metric: str, us: str) -> None:
    assert (warmth_text(warmth_c, Units.METRIC), warmth_text(warmth_c, Units.US)) == (metric, us)


@pytest.mark.parametrize(
    ("step_c", "metric", "us"), [(3, "3 °C", "5.4 °F"), (0.5, "0.5 °C", "0.9 °F"), (0.01, "0.1 °C", "0.1 °F")]
)
def test_a_step_of_warmth_has_no_offset_of_32(step_c: float, metric: str, us: str) -> None:
    assert (warmth_step_text(step_c, Units.METRIC), warmth_step_text(step_c, Units.US)) == (metric, us)


def test_two_warmths_that_differ_read_differently() -> None:
    assert two_warmths_text(8, 10, Units.METRIC) == ("8 °C", "10 °C")
    assert two_warmths_text(9.9, 10, Units.METRIC) == ("9.9 °C", "10.0 °C")
    assert two_warmths_text(9.9, 10, Units.US) == ("49.8 °F", "50.0 °F")
    assert two_warmths_text(10, 10, Units.METRIC) == ("10 °C", "10 °C")


def test_a_part_takes_the_unit_of_the_whole() -> None:
    assert area_text(2_832, Units.METRIC) == "2,832 cm²"
    assert area_text(2_832, Units.METRIC, of_cm2=13_000) == "0.28 m²"


def test_weekdays_are_in_the_language_of_the_rest_whatever_the_locale() -> None:
    assert [weekday_text(date(2027, 4, day)) for day in (5, 11)] == ["Monday", "Sunday"]
    assert named_day_text(date(2027, 4, 22)) == "Thu 22 Apr"
    assert named_day_text(date(2027, 4, 22), near=date(2026, 12, 1)) == "Thu 22 Apr 2027"


def test_lengths() -> None:
    assert (length_text(46, Units.METRIC), length_text(46, Units.US)) == ("46 cm", "18 in")


@pytest.mark.parametrize(
    ("first", "last", "text"),
    [
        (date(2027, 4, 22), date(2027, 4, 30), "22 – 30 Apr"),
        (date(2027, 4, 30), date(2027, 5, 2), "30 Apr – 2 May"),
        (date(2027, 4, 22), date(2027, 4, 22), "22 Apr"),
        (date(2027, 12, 30), date(2028, 1, 2), "30 Dec 2027 – 2 Jan 2028"),
    ],
)
def test_spans(first: date, last: date, text: str) -> None:
    assert span_text(first, last) == text


def test_a_year_is_written_where_it_is_another() -> None:
    near = date(2027, 4, 6)
    assert day_text(date(2028, 1, 5), near) == "5 Jan 2028"
    assert span_text(date(2028, 1, 5), date(2028, 1, 9), near) == "5 – 9 Jan 2028"
    assert span_text(date(2027, 5, 5), date(2027, 5, 9), near) == "5 – 9 May"


def test_counts_and_names() -> None:
    assert [count_text(n, "clash", "clashes") for n in (0, 1, 2)] == ["0 clashes", "1 clash", "2 clashes"]
    assert count_text(12_000, "egg") == "12,000 eggs"
    assert [names_text(n) for n in ([], ["A"], ["A", "B"], ["A", "B", "C"])] == ["", "A", "A and B", "A, B and C"]


def test_areas_that_differ_never_read_the_same() -> None:
    assert two_areas_text(22_040, 22_000, Units.METRIC) == ("22,040 cm²", "22,000 cm²")
    assert two_areas_text(22_900, 22_000, Units.METRIC) == ("2.29 m²", "2.20 m²")
    assert two_areas_text(13_020, 13_000, Units.US) == ("14.01 sq ft", "13.99 sq ft")


def test_two_lengths_differ_in_words_too() -> None:
    assert two_lengths_text(218.4, 200, Units.METRIC) == ("218 cm", "200 cm")
    assert two_lengths_text(200.4, 200, Units.METRIC) == ("200.4 cm", "200.0 cm")
    assert two_lengths_text(254, 127, Units.US) == ("100 in", "50 in")  # 2.54 cm to the inch
    assert two_lengths_text(1.0, 1.0, Units.METRIC) == ("1 cm", "1 cm")


def test_hours_are_told_to_a_tenth() -> None:
    assert [hours_text(hours) for hours in (1.0, 22.5, 1200.0, 0.04)] == [
        "1 hour", "22.5 hours", "1,200 hours", "0 hours",
    ]  # fmt: skip
