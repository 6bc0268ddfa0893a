"""Days and numbers in the cells of a table, and how a whole column shows in which order and with which marks."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from datetime import date
from enum import StrEnum
from itertools import pairwise
from typing import Final

from quailsched.edits.tables.headings import GRAMS, plain


class DayOrder(StrEnum):
    """What stands first in a day that is written in figures alone."""

    YEAR_FIRST = "year first"
    DAY_FIRST = "day first"
    MONTH_FIRST = "month first"


_EMPTY: Final = frozenset(("", "-", "–", "—", "?", "n/a", "na", "k. a.", "k.a."))
_MONTHS: Final = {
    name: number
    for number, names in enumerate(
        (
            *("jan january januar jaenner", "feb february februar", "mar march maerz mrz", "apr april", "may mai"),
            *("jun june juni", "jul july juli", "aug august", "sep sept september"),
            *("oct october okt oktober", "nov november", "dec december dez dezember"),
        ),
        1,
    )
    for name in names.split()
}
_WEEKDAYS: Final = frozenset(
    name
    for names in (
        *("mon tue tues wed thu thur thurs fri sat sun", "mo di mi do fr sa so"),
        *("monday tuesday wednesday thursday friday saturday sunday",),
        *("montag dienstag mittwoch donnerstag freitag samstag sonnabend sonntag",),
    )
    for name in names.split()
)
_TIME = re.compile(r"[T ]+[0-9]{1,2}:[0-9]{2}(:[0-9]{2}(\.[0-9]+)?)?( ?[AaPp]\.?[Mm]\.?)?Z?$")
_FIGURES = re.compile(r"([0-9]{1,4})([-/. ])\s*([0-9]{1,2})\2\s*([0-9]{1,4})\.?")
_NUMBER = re.compile(r"[+-]?[0-9][0-9.,]*")
_MOST_LETTERS = 40


def is_empty(text: str) -> bool:
    """Whether a cell says nothing. "0" does say something."""
    return text.strip().casefold() in _EMPTY


def day_in(text: str, order: DayOrder) -> date | None:
    """The day that ``text`` names; ``order`` is asked only where figures leave it open. None if it names none."""
    text = _TIME.sub("", text.strip()[:_MOST_LETTERS]).strip()
    first, _, rest = text.partition(" ")
    if plain(first) in _WEEKDAYS:
        text = rest.strip()
    figures = _FIGURES.fullmatch(text)
    if figures is None:
        return _named_day(plain(text).split())
    one, mark, two, three = figures.groups()
    if len(one) > 2:
        return _day(one, two, three) if len(one) == 4 and len(three) <= 2 else None
    if len(three) == 3:
        return None
    if mark == ".":  # whoever writes dots writes the day first
        return _day(three, two, one)
    if order is DayOrder.YEAR_FIRST:
        return _day(one, two, three) if len(one) == len(three) == 2 else None
    return _day(three, two, one) if order is DayOrder.DAY_FIRST else _day(three, one, two)


def _named_day(words: list[str]) -> date | None:
    """ "3 Apr 2026", "April 3rd 2026" """
    if len(words) != 3 or not re.fullmatch(r"[0-9]{4}|[0-9]{2}", words[2]):
        return None
    for name, number in ((words[1], words[0]), (words[0], words[1])):
        number = re.sub(r"(st|nd|rd|th)$", "", number)
        if name in _MONTHS and re.fullmatch("[0-9]{1,2}", number):
            return _day(words[2], str(_MONTHS[name]), number)
    return None


def _day(year: str, month: str, day: str) -> date | None:
    try:
        return date(int(year) + (2000 if len(year) <= 2 else 0), int(month), int(day))
    except ValueError:
        return None


def orders_of(columns: Sequence[Sequence[str]]) -> list[DayOrder]:
    """The orders in which most of the cells are days, the likeliest first; more than one where it is open.

    Of orders that read as many, those count in which the days of every column follow each other, as in a log.
    Orders in which the cells are the same days are one.
    """
    read = {order: [[day_in(cell, order) for cell in column if not is_empty(cell)] for column in columns]
            for order in (DayOrder.DAY_FIRST, DayOrder.MONTH_FIRST, DayOrder.YEAR_FIRST)}  # fmt: skip
    most = max(_how_many(days) for days in read.values())
    open_still = [order for order, days in read.items() if _how_many(days) == most]
    rising = [order for order in open_still if all(_is_rising(days) for days in read[order])]
    found: list[DayOrder] = []
    for order in rising or open_still:
        if all(read[order] != read[other] for other in found):
            found.append(order)
    starts_with_year = any(re.match("[0-9]{4}[-/. ]", cell.strip()) for column in columns for cell in column)
    if starts_with_year and read[found[0]] == read[DayOrder.YEAR_FIRST]:
        found[0] = DayOrder.YEAR_FIRST  # as it is called where figures leave nothing open
    return found


def _how_many(columns: Iterable[Iterable[date | None]]) -> int:
    return sum(day is not None for column in columns for day in column)


def _is_rising(days: Iterable[date | None]) -> bool:
    known = [day for day in days if day is not None]
    return all(one <= other for one, other in pairwise(known))


def decimal_mark_of(cells: Iterable[str], usual: str) -> str:
    """ "," or ".": what parts whole from decimals in these cells; ``usual`` where they do not tell."""
    votes = {",": 0, ".": 0}
    for cell in cells:
        marks = [mark for mark in cell if mark in votes]
        if not marks or len(cell) > _MOST_LETTERS:
            continue
        last = marks[-1]
        behind = re.match(r"[0-9]*", cell[cell.rindex(last) + 1 :])
        is_decimal = len(set(marks)) == 2 or (len(marks) == 1 and behind is not None and len(behind[0]) != 3)
        if is_decimal:
            votes[last] += 1
        elif len(marks) > 1:
            votes["." if last == "," else ","] += 1
    if votes[","] == votes["."]:
        return usual
    return max(votes, key=lambda mark: votes[mark])


def number_in(text: str, decimal_mark: str) -> float | None:
    """The number that ``text`` is, marks of thousands and blanks left out. None if it is none."""
    text = re.sub(r"[\s'’_]", "", text[:_MOST_LETTERS])
    if _NUMBER.fullmatch(text) is None:
        return None
    other = "." if decimal_mark == "," else ","
    whole, mark, decimals = text.partition(decimal_mark)
    if other in decimals or decimal_mark in decimals:
        return None
    groups = whole.split(other)
    if len(groups) > 1 and (not 1 <= len(groups[0].lstrip("+-")) <= 3 or any(len(group) != 3 for group in groups[1:])):
        return None
    return float("".join(groups) + ("." + decimals if mark and decimals else ""))


def grams_in(text: str, decimal_mark: str, unit_g: float | None) -> float | None:
    """Grams of a weight; a unit in the cell counts before that of the heading. None without a number or a unit."""
    found = re.fullmatch(r"(.*?)\s*([^\W\d_]+)\.?", text.strip()[:_MOST_LETTERS])
    if found is not None:
        text, unit_g = found[1], GRAMS.get(found[2].casefold())
    number = number_in(text, decimal_mark)
    return None if number is None or unit_g is None else number * unit_g
