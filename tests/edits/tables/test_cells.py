"""Days and numbers in cells, as people and spreadsheets write them."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quailsched.edits.tables.cells import DayOrder, day_in, decimal_mark_of, grams_in, number_in, orders_of

DAY, MONTH, YEAR = DayOrder.DAY_FIRST, DayOrder.MONTH_FIRST, DayOrder.YEAR_FIRST
THIRD = date(2027, 4, 3)


@pytest.mark.parametrize("text", [
    *("2027-04-03", "2027/4/3", "2027.04.03", "3 Apr 2027", "3. April 2027", "April 3rd, 2027", "Apr 3 2027"),
    *("Sat 3 Apr 2027", "Sa, 03.04.2027", "03.04.2027", "3.4.27", "2027-04-03 08:15", "2027-04-03T08:15:00Z"),
    *("3. Apr. 27", " 3.4.2027 "),
])  # fmt: skip
@pytest.mark.parametrize("order", DayOrder)
def test_a_day_that_can_only_be_one_is_read_in_any_order(text: str, order: DayOrder) -> None:
    assert day_in(text, order) == THIRD


def test_figures_between_strokes_follow_the_order() -> None:
    assert day_in("3/4/2027", DAY) == date(2027, 4, 3)
    assert day_in("3/4/2027", MONTH) == date(2027, 3, 4)
    assert day_in("27-04-03", YEAR) == THIRD
    assert day_in("13/4/2027", MONTH) is None


@pytest.mark.parametrize(
    "text", ["", "soon", "3/4", "31.11.2027", "2027-13-01", "3-4/2027", "3/4/20277", "46115", "²/4/2027"]
)
def test_what_is_no_day_is_none(text: str) -> None:
    assert [day_in(text, order) for order in DayOrder] == [None] * 3


def test_a_day_after_the_twelfth_tells_the_order_of_the_whole_column() -> None:
    assert orders_of([["3/4/2027", "13/4/2027", "oops"]]) == [DAY]
    assert orders_of([["4/3/2027", "4/13/2027"]]) == [MONTH]


def test_days_that_follow_each_other_in_one_order_only_tell_it() -> None:
    # 5 and 12 February, 5 March follow each other; 2 May, 2 December, 3 May do not.
    assert orders_of([["5/2/2027", "12/2/2027", "5/3/2027"]]) == [DAY]


def test_an_order_that_stays_open_is_told_as_open() -> None:
    assert orders_of([["3/4/2027", "4/5/2027"]]) == [DAY, MONTH]
    assert orders_of([["4/4/2027", "2027-05-06"]]) == [DAY]  # the same days either way
    assert orders_of([["13/4/2027", "4/13/2027"]]) == [DAY, MONTH]  # one of the two is wrong, and which is not known


@given(st.lists(st.dates(date(2001, 1, 1), date(2099, 12, 31)), min_size=1, max_size=40))
def test_a_log_written_in_one_order_is_never_read_in_another(days: list[date]) -> None:
    written = [f"{day.day}/{day.month}/{day.year}" for day in sorted(days)]
    assert DAY in orders_of([written]) or all(day.day == day.month for day in days)
    assert [day_in(text, DAY) for text in written] == sorted(days)


@pytest.mark.parametrize(("text", "mark", "number"), [
    *[("12", ".", 12), ("1,300", ".", 1300), ("1.300", ",", 1300), ("1,5", ",", 1.5), ("1.300,25", ",", 1300.25)],
    *[("1 300", ",", 1300), ("1'300.5", ".", 1300.5), ("1\u202f300", ".", 1300), ("-3", ".", -3), ("007", ".", 7)],
])  # fmt: skip
def test_numbers_with_marks(text: str, mark: str, number: float) -> None:
    assert number_in(text, mark) == number


@pytest.mark.parametrize("text", ["", "twelve", "1,2,3", "1.2.3", "1,30", "12a", "1e9", "٣", "9" * 5000, "--3", ",5"])
def test_what_is_no_number_is_none(text: str) -> None:
    # "1,30" has a mark of thousands before two figures; Python itself would read the Arabic three, and 1e9.
    assert number_in(text, ".") is None or text == "9" * 5000


def test_the_decimal_mark_is_found_from_the_column() -> None:
    assert decimal_mark_of(["1,300", "12,5"], ".") == ","
    assert decimal_mark_of(["1.300", "12"], ",") == ","  # either: as is usual
    assert decimal_mark_of(["1.300.000"], ".") == ","  # twice: thousands
    assert decimal_mark_of(["1,300.50"], ",") == "."
    assert decimal_mark_of([], ".") == "."


def test_weights_come_with_their_unit() -> None:
    assert grams_in("1,5", ",", 1000.0) == 1500
    assert grams_in("1.5 kg", ".", 1.0) == 1500  # the unit in the cell counts
    assert grams_in("2lb", ".", None) == pytest.approx(907.18474)
    assert grams_in("3 oz.", ".", None) == pytest.approx(85.0485, abs=1e-4)  # NIST SP 811: 28.349523 g
    assert grams_in("250", ".", None) is None
    assert grams_in("3 stone", ".", 1.0) is None


def test_days_far_apart_are_read_back() -> None:
    start = date(2026, 12, 25)
    for step in range(0, 400, 13):
        day = start + timedelta(days=step)
        assert day_in(day.isoformat(), DAY) == day
