"""Rules of recurrence from what a form asks, and back."""

from __future__ import annotations

from datetime import date

import pytest

from quailsched.chores.own import days_of_own
from quailsched.desktop.today.repeats import Often, Repeat, repeat_of, repeat_text, rule_of
from quailsched.farm.facts import OwnChore

FIRST = date(2027, 4, 6)  # a Tuesday
RULES = [
    (Repeat(), ""),
    (Repeat(Often.DAILY), "FREQ=DAILY"),
    (Repeat(Often.DAILY, 3), "FREQ=DAILY;INTERVAL=3"),
    (Repeat(Often.WEEKLY, 2, (0, 3)), "FREQ=WEEKLY;INTERVAL=2;BYDAY=MO,TH"),
    (Repeat(Often.MONTHLY), "FREQ=MONTHLY"),
    (Repeat(Often.YEARLY), "FREQ=YEARLY"),
]


@pytest.mark.parametrize(("repeat", "rule"), RULES)
def test_a_repeat_becomes_a_rule_and_is_read_from_it(repeat: Repeat, rule: str) -> None:
    assert rule_of(repeat, FIRST) == rule
    assert repeat_of(rule) == repeat


@pytest.mark.parametrize("rule", ["FREQ=WEEKLY;UNTIL=20271231", "FREQ=MONTHLY;BYDAY=2TU", "FREQ=DAILY;COUNT=3"])
def test_a_rule_that_the_form_cannot_ask_for_is_none(rule: str) -> None:
    assert repeat_of(rule) is None


def test_the_31st_of_a_month_is_the_last_day_of_a_shorter_one() -> None:
    first = date(2027, 1, 31)
    rule = rule_of(Repeat(Often.MONTHLY), first)
    assert repeat_of(rule) == Repeat(Often.MONTHLY)
    days = days_of_own(OwnChore("x", "Feed", first, rule), first, date(2027, 6, 1))
    assert days == [first, date(2027, 2, 28), date(2027, 3, 31), date(2027, 4, 30), date(2027, 5, 31)]


def test_a_repeat_in_words() -> None:
    assert repeat_text(Repeat(Often.WEEKLY, 2, (0, 3))) == "every 2 weeks on Mon and Thu"
    assert repeat_text(Repeat(Often.MONTHLY)) == "every month"
