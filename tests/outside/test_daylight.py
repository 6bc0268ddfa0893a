"""Daylight against the worked example of FAO-56 and printed tables of other places.

FAO Irrigation and Drainage Paper 56 (1998), equation 34. The tables (US Naval Observatory by way of a weather blog;
WDAY) count from the sun's upper edge (16 minutes of arc) through bending air (34): its middle is then 0.833 degrees
below the horizon. That takes 2 x 0.833 x 4 minutes / (cos(latitude) cos(declination) sin(hour angle)) a day: 9.8
minutes at both solstices in San Francisco, 10 to 12 in Fargo; FAO's day is shorter by it. FAO's declination is right
at the solstices and up to 1.1 degrees low in autumn (-3.9 on 30 September, when it is -2.8), which at 46.9 degrees is
8 x 1.1 x tan(46.9) = 9 minutes more.
"""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quailsched.husbandry.daylight import daylight_between, daylight_hours
from tests.husbandry.reference_rows import ROWS, number

SAN_FRANCISCO, FARGO = 37.77, 46.88


def minutes(text: str) -> int:
    hours, _, rest = text.partition(":")
    return int(hours) * 60 + int(rest)


def test_the_worked_example_of_fao() -> None:
    assert "lat -20.0, day-of-year 246" in ROWS["sun.fao"]["quantity"]
    assert daylight_hours(-20.0, 246) == pytest.approx(number("sun.fao"), abs=0.000_01)


@pytest.mark.parametrize(("key", "day"), [("sun.sf.max", date(2007, 6, 21)), ("sun.sf.min", date(2007, 12, 22))])
def test_san_francisco_is_shorter_by_the_bending_of_the_air(key: str, day: date) -> None:
    shorter = minutes(ROWS[key]["typical"]) - 60 * daylight_hours(SAN_FRANCISCO, day.timetuple().tm_yday)
    assert 6 < shorter < 13


@pytest.mark.parametrize(("month", "day", "number_of_it"), [(8, 31, 0), (9, 30, 1), (10, 31, 2), (12, 21, 3)])
def test_fargo_is_shorter_by_the_bending_of_the_air(month: int, day: int, number_of_it: int) -> None:
    printed = minutes(ROWS["sun.fargo"]["typical"].split(" / ")[number_of_it])
    assert 8 < printed - 60 * daylight_hours(FARGO, date(2018, month, day).timetuple().tm_yday) < 22


def test_the_poles_have_one_day_and_one_night() -> None:
    for latitude in (90.0, 75.0, 68.0):
        assert (daylight_hours(latitude, 172), daylight_hours(latitude, 355)) == (24.0, 0.0)
        assert (daylight_hours(-latitude, 172), daylight_hours(-latitude, 355)) == (0.0, 24.0)


@given(st.floats(-90, 90), st.integers(1, 366))
def test_both_halves_of_the_earth_share_the_hours(latitude: float, day: int) -> None:
    north, south = daylight_hours(latitude, day), daylight_hours(-latitude, day)
    assert 0 <= north <= 24
    assert north + south == pytest.approx(24)
    assert daylight_hours(0.0, day) == pytest.approx(12)


@given(st.floats(-90, 90), st.dates(date(1999, 1, 1), date(2030, 1, 1)), st.integers(0, 900))
def test_a_row_of_days_is_each_of_them(latitude: float, start: date, length: int) -> None:
    days = [start + timedelta(days=number) for number in range(length)]
    each = [daylight_hours(latitude, day.timetuple().tm_yday) for day in days]
    assert daylight_between(latitude, start, start + timedelta(days=length)) == each


@pytest.mark.parametrize(("latitude", "day"), [(90.1, 10), (-91.0, 10), (float("nan"), 10), (10.0, 0), (10.0, 367)])
def test_what_is_not_on_earth_is_refused(latitude: float, day: int) -> None:
    with pytest.raises(ValueError, match="is possible"):
        daylight_hours(latitude, day)
