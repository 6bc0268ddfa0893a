"""Days to pixels and back."""

from datetime import date, timedelta
from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st

from quailsched.desktop.season_canvas.scale import (
    LEAST_PX,
    MOST_PX,
    TimeScale,
    day_ticks,
    month_ticks,
    uncrossed,
    week_ticks,
)

FIRST = date(2027, 1, 1)


@given(day_px=st.floats(LEAST_PX, MOST_PX), number=st.integers(-3000, 3000), along=st.floats(0.05, 0.95))
def test_every_point_of_a_day_is_that_day(day_px: float, number: int, along: float) -> None:
    scale = TimeScale(FIRST, day_px)
    day = FIRST + timedelta(days=number)
    assert scale.day(scale.x(day) + along * day_px) == day


@given(factor=st.floats(0.001, 1000))
def test_zoom_stays_in_its_bounds(factor: float) -> None:
    assert LEAST_PX <= TimeScale(FIRST, 5).zoomed(factor).day_px <= MOST_PX


def test_months_carry_their_names_and_january_its_year_where_there_is_room() -> None:
    # 30 days of 5 px are 150 px: enough for a label of 80 px, and for 1.5 of them.
    ticks = list(month_ticks(TimeScale(FIRST, 5), date(2026, 12, 10), date(2027, 3, 2), 80))
    assert [(tick.day, tick.label) for tick in ticks] == [
        (date(2026, 12, 1), "December"),
        (date(2027, 1, 1), "January 2027"),
        (date(2027, 2, 1), "February"),
        (date(2027, 3, 1), "March"),
    ]


def test_narrow_months_shorten_and_then_leave_only_the_year() -> None:
    end = date(2027, 3, 2)
    short = [tick.label for tick in month_ticks(TimeScale(FIRST, 2), FIRST, end, 80)]  # 60 px for 80
    assert short == ["Jan", "Feb", "Mar"]
    none = [tick.label for tick in month_ticks(TimeScale(FIRST, 1), FIRST, end, 80)]  # 30 px for 80
    assert none == ["2027", "", ""]


def test_week_labels_never_stand_closer_than_their_width() -> None:
    for day_px in (1.0, 2.0, 3.5, 6.0, 20.0):
        scale = TimeScale(FIRST, day_px)
        labelled = [t.day for t in week_ticks(scale, FIRST, FIRST + timedelta(days=400), 30) if t.label]
        gaps = [(b - a).days * day_px for a, b in pairwise(labelled)]
        assert all(gap >= 30 for gap in gaps)
        assert all(day.weekday() == 0 for day in labelled)


def test_a_monday_just_before_a_new_month_has_no_number_under_its_name() -> None:
    # 17 px are four days and a bit of 4 px: 31 May lies one day before June, 24 May eight; 26 April five before May.
    scale, start, end = TimeScale(FIRST, 4), date(2027, 4, 19), date(2027, 6, 8)
    weeks = list(uncrossed(week_ticks(scale, start, end, 20), list(month_ticks(scale, start, end, 80)), scale, 17))
    assert [week.label for week in weeks] == ["19", "26", "3", "10", "17", "24", "", "7"]
    assert len(weeks) == 8  # the lines all stay


def test_weeks_too_narrow_to_tell_have_no_lines() -> None:
    assert list(week_ticks(TimeScale(FIRST, 0.9), FIRST, FIRST + timedelta(days=100), 30)) == []


def test_days_are_named_where_each_has_room_and_not_at_all_where_not() -> None:
    end = date(2027, 1, 4)
    assert [tick.label for tick in day_ticks(TimeScale(FIRST, 60), FIRST, end, 60)] == ["Fri 1", "Sat 2", "Sun 3"]
    assert list(day_ticks(TimeScale(FIRST, 59), FIRST, end, 60)) == []
