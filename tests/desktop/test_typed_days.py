"""Days by a few typed words. Today is Tuesday, 6 April 2027."""

from collections.abc import Iterator
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quailsched.desktop.typed_days import days_meant
from quailsched.farm.range import EARLIEST, LATEST
from quailsched.farm.units import day_text, named_day_text
from quailsched.words import ENGLISH, Language, use

TODAY = date(2027, 4, 6)
GERMAN = {
    **{"Apr": "Apr", "December": "Dezember", "today": "heute", "week": "Woche", "wk": "KW", "day": "Tag"},
    **{"month": "Monat", "Thursday": "Donnerstag", "Thu": "Do", "in": "Zoll", "ago": "vor", "March": "März"},
}


@pytest.fixture
def german() -> Iterator[None]:
    use(Language(translate=lambda text: GERMAN.get(text, text)))
    yield
    use(ENGLISH)


@pytest.mark.parametrize(
    ("typed", "day"),
    [
        ("12 apr", date(2027, 4, 12)),
        ("apr. 12", date(2027, 4, 12)),
        ("April 12th", date(2027, 4, 12)),
        ("12 April 2028", date(2028, 4, 12)),
        ("Mon 12 Apr 2027", date(2027, 4, 12)),  # as the program itself writes it
        ("12.4.", date(2027, 4, 12)),
        ("12.4.28", date(2028, 4, 12)),
        ("12/4", date(2027, 4, 12)),
        ("2027-04-12", date(2027, 4, 12)),
        ("20270412", date(2027, 4, 12)),
        ("4/27", date(2027, 4, 27)),  # there is no month 27
        ("12 a", date(2027, 4, 12)),  # on the way to "12 apr"
        ("apr", date(2027, 4, 1)),
        ("april 2028", date(2028, 4, 1)),
        ("2028", date(2028, 1, 1)),
        ("12", date(2027, 4, 12)),
        ("5.", date(2027, 5, 5)),  # that of this month is over
        ("29 feb", date(2028, 2, 29)),
        ("today", TODAY),
        ("tomorrow", date(2027, 4, 7)),
        ("next week", date(2027, 4, 13)),
        ("in 3 weeks", date(2027, 4, 27)),
        ("3w", date(2027, 4, 27)),
        ("3 weeks ago", date(2027, 3, 16)),
        ("10 days", date(2027, 4, 16)),
        ("in 2 months", date(2027, 6, 6)),
        ("thu", date(2027, 4, 8)),
        ("next thursday", date(2027, 4, 8)),
        ("last thu", date(2027, 4, 1)),
        ("tuesday", date(2027, 4, 13)),  # the next one, not today
        ("last tuesday", date(2027, 3, 30)),
        ("week 15", date(2027, 4, 12)),  # ISO 8601: 12 April 2027 is the Monday of week 15
        ("w15", date(2027, 4, 12)),
        ("2028-W15", date(2028, 4, 10)),
        ("week 2", date(2028, 1, 10)),  # that of this year is over
        ("week 53", date(2026, 12, 28)),  # 2027 and 2028 have none
    ],
)
def test_days_are_read_as_people_write_them(typed: str, day: date) -> None:
    assert days_meant(typed, TODAY)[0] == day


def test_without_a_year_the_nearest_day_comes_before_that_of_another_year() -> None:
    assert days_meant("12 apr", TODAY) == [date(2027, 4, 12), date(2026, 4, 12)]
    assert days_meant("1 feb", date(2027, 12, 20)) == [date(2028, 2, 1), date(2027, 2, 1)]
    assert days_meant("12 apr 2027", TODAY) == [date(2027, 4, 12)]


def test_figures_that_could_be_either_way_round_are_told_both_ways() -> None:
    april, december = date(2027, 4, 12), date(2026, 12, 4)
    assert [day for day in days_meant("12/4", TODAY) if day in (april, december)] == [april, december]
    assert [day for day in days_meant("12/4", TODAY, month_first=True) if day in (april, december)] == [december, april]
    assert days_meant("12/4/2027", TODAY) == [april, date(2027, 12, 4)]
    assert december not in days_meant("12.4.", TODAY, month_first=True)  # with points the day is always first


@pytest.mark.parametrize(
    "typed",
    [
        *(
            "",
            "  ",
            "xyzzy",
            "a",
            "ap",
            "in",
            "31 feb",
            "99",
            "0",
            "-5",
            "1980",
            "week 60",
            "10:30",
            "3 pm",
            "100 eggs",
        ),
        *("12.13.2027.4", "12 apr 13 may", "9999 months", "9999999999", "marigold", "3 weeks hence"),
    ],
)
def test_what_is_no_day_is_none(typed: str) -> None:
    assert days_meant(typed, TODAY) == []


@pytest.mark.usefixtures("german")
def test_days_are_read_in_the_language_of_the_window_too() -> None:
    for typed, day in (
        ("heute", TODAY),
        ("in 3 Wochen", date(2027, 4, 27)),
        ("vor 3 Wochen", date(2027, 3, 16)),
        ("in 10 Tagen", date(2027, 4, 16)),  # the ending of the case
        ("Woche 15", date(2027, 4, 12)),
        ("KW 15", date(2027, 4, 12)),
        ("do", date(2027, 4, 8)),
        ("donn", date(2027, 4, 8)),
        ("24. Dez", date(2026, 12, 24)),
        ("3. März", date(2027, 3, 3)),
        ("tomorrow", date(2027, 4, 7)),  # English stays
    ):
        assert days_meant(typed, TODAY)[0] == day, typed


@given(typed=st.text(alphabet="0123456789 ./-,:'aprilmyweknodtujs", max_size=12), month_first=st.booleans())
def test_nothing_that_is_typed_fails_and_every_day_is_one_that_a_farm_may_have(typed: str, month_first: bool) -> None:
    assert all(EARLIEST <= day <= LATEST for day in days_meant(typed, TODAY, month_first=month_first))


@given(day=st.dates(EARLIEST, LATEST))
def test_every_day_is_found_by_what_the_program_writes(day: date) -> None:
    for text in (day.isoformat(), f"{day_text(day)} {day.year}", f"{named_day_text(day)} {day.year}"):
        assert days_meant(text, TODAY) == [day], text
