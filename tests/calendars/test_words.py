"""The words of an entry."""

from __future__ import annotations

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quailsched.calendars.words import any_of, clean, description_of, one_line, summary_of
from tests.calendars.sample import chore

DAY = date(2027, 3, 11)


def test_a_summary_is_title_batch_and_place() -> None:
    assert summary_of(chore("a", DAY, "Move chicks")) == "Move chicks · Clover · Tub brooder"


def test_a_summary_leaves_out_what_the_chore_is_not_about() -> None:
    assert summary_of(chore("a", DAY, "Clean out", batch="")) == "Clean out · Tub brooder"
    assert summary_of(chore("a", DAY, "Order feed", batch="", place="")) == "Order feed"


def test_a_summary_does_not_say_twice_what_the_title_says() -> None:
    assert summary_of(chore("a", DAY, "Candle the eggs of Clover")) == "Candle the eggs of Clover · Tub brooder"
    assert summary_of(chore("a", DAY, "Cloverleaf hay into tub brooder")) == "Cloverleaf hay into tub brooder · Clover"


def test_a_summary_is_one_line() -> None:
    assert summary_of(chore("a", DAY, "Move\r\nchicks ", batch="Clo\x00ver")) == "Move chicks · Clover · Tub brooder"


def test_a_description_says_how_who_and_the_caution() -> None:
    said = description_of(chore("a", DAY, how="Lamp low.", caution="Fire."))
    assert said == "Lamp low.\nWho can do it: Ann or Leo.\nCaution: Fire."


def test_a_description_without_caution_or_how_has_no_empty_lines() -> None:
    assert description_of(chore("a", DAY, how=" ", caution="\n")) == "Who can do it: Ann or Leo."


def test_when_nobody_can_the_description_says_why() -> None:
    assert "nobody is at home that day" in description_of(chore("a", DAY, able=()))
    assert "no grown-up is at home that day" in description_of(chore("a", DAY, able=(), needs_grown_up=True))


@pytest.mark.parametrize(
    ("names", "said"),
    [(["Ann"], "Ann"), (["Ann", "Leo"], "Ann or Leo"), (["Ann", "Leo", "Mia"], "Ann, Leo or Mia")],
)
def test_names_are_joined_as_a_choice(names: list[str], said: str) -> None:
    assert any_of(names) == said


@pytest.mark.parametrize("line_break", ["\n", "\r\n", "\r", "\x0b", "\x0c", "\x85", "\u2028", "\u2029"])
def test_every_kind_of_line_break_becomes_a_line_feed(line_break: str) -> None:
    assert clean(f"a{line_break}b") == "a\nb"


def test_control_characters_marks_and_lone_surrogates_go_and_tabs_stay() -> None:
    assert clean("\ufeffa\x00\x07\x1b\x7f\x9b\ud83d\tÄ 🐣") == "a\tÄ 🐣"


@given(st.text(st.characters(exclude_categories=())))
def test_cleaned_text_can_be_written_and_cleaning_twice_changes_nothing(text: str) -> None:
    assert clean(clean(text)) == clean(text)
    assert clean(text).encode().decode() == clean(text)
    assert "\n" not in one_line(text)
