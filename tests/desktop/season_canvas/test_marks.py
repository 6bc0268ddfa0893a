"""Marks of clashes: which row each has, and that those of a lane after a change are as if all were made anew."""

from datetime import date, timedelta

from hypothesis import given
from hypothesis import strategies as st

from quailsched.desktop.season_canvas.lanes import marks_of
from quailsched.farm.records import Farm, Settings
from quailsched.season.clash import Clash

FARM = Farm(Settings("farm", "Pebble Bank"))
DAY_0 = date(2027, 3, 1)


def clash(kind: str, first: int, days: int, name: str = "a") -> Clash:
    start = DAY_0 + timedelta(days=first)
    return Clash(kind, "place", (name,), start, start + timedelta(days=days), start, 2, 1, "birds", 1, "why")


CLASHES = st.lists(
    st.builds(
        clash, st.sampled_from(["floor", "ages", "dark"]), st.integers(0, 40), st.integers(0, 12), st.text("abc")
    ),
    max_size=14,
    unique=True,
)


def rows(found: list[Clash], over_line: bool = True) -> list[int]:
    return [mark.row for mark in marks_of(FARM, found, over_line).items]


def test_marks_that_overlap_in_time_are_in_rows_of_their_own() -> None:
    # The second begins on the last day of the first; the third after both, so that the first row is free again.
    assert rows([clash("ages", 0, 4), clash("dark", 4, 2), clash("ages", 7, 1)]) == [0, 1, 0]
    assert rows([clash("floor", 0, 4), clash("dark", 2, 2)]) == [-1, 0]
    assert rows([clash("floor", 0, 4), clash("dark", 2, 2)], over_line=False) == [0, 1]


@given(CLASHES, CLASHES, st.booleans())
def test_after_a_change_they_are_as_if_all_were_made_anew(before: list[Clash], come: list[Clash], over: bool) -> None:
    old = marks_of(FARM, before, over).items
    now = [*before[::2], *(one for one in come if one not in before[::2])]
    after = marks_of(FARM, now, over, old)
    assert after.items == marks_of(FARM, now, over).items


def test_those_that_have_not_changed_are_the_very_same() -> None:
    first, second, third = clash("ages", 0, 4), clash("ages", 3, 2), clash("ages", 20, 2)
    old = marks_of(FARM, [first, second, third], over_line=True).items
    after = marks_of(FARM, [first, clash("ages", 3, 3), third], over_line=True, old=old).items
    assert (after[0] is old[0], after[1] is old[1], after[2] is old[2]) == (True, False, True)
