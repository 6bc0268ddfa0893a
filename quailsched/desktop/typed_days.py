"""The days that a few typed words may mean: "12 apr", "4/12", "in 3 weeks", "week 15", "thu". No Qt.

Words are read in English and in the language of the window. Batches and their days are in ``finding``.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from datetime import date, datetime, timedelta
from functools import partial

from quailsched.desktop.season_canvas.scale import MONTH_NAMES
from quailsched.farm.range import EARLIEST, LATEST
from quailsched.farm.units import MONTHS, SHORT_WEEKDAYS, WEEKDAYS
from quailsched.words import marked, say

_NAMED_DAYS = (
    *((marked("today"), 0), (marked("tomorrow"), 1), (marked("yesterday"), -1)),
    *((marked("next week"), 7), (marked("last week"), -7)),
)
_UNITS = ((marked("day"), 1, 0), (marked("week"), 7, 0), (marked("month"), 0, 1))  # days and months of each
_ENDING = 2  # letters that a word takes on in the plural: "weeks", "Tagen"
_COUNTED = re.compile(r"(?:([^\W\d]+) )?(\d{1,4}) ?([^\W\d]+)(?: ([^\W\d]+))?")
_WEEK = re.compile(r"(?:(\d{4})[- ]?)?([^\W\d]+) ?(\d{1,2})(?:[ /]+(\d{4}))?")
_PAIR = re.compile(r"(\d{1,2})[./ -](\d{1,2})")
_WRITTEN = re.compile(rf"(?:\d{{1,4}}|\d{{8}}|{'|'.join(month.lower() for month in MONTHS)}|(?<=.)[./ -])+")
_YEARS = 4  # a 29 February is found in any year


def days_meant(typed: str, today: date, *, month_first: bool = False) -> list[date]:
    """The days that ``typed`` may mean, the likeliest first; none if it is no day, or one that no farm may have.

    Without a year, the nearest day stands before that of another year. "4/12" is both 4 December and 12 April, in the
    order of ``month_first``; with points, as in "4.12.", the day always comes first.
    """
    wanted = " ".join(typed.casefold().replace(",", " ").split())
    found: list[date] = []
    for read in (_named, _weekday, _week, _counted, _of_month, partial(_written, month_first=month_first)):
        try:
            found += read(wanted, today)
        except (OverflowError, ValueError):  # "9999 months", "31 feb": no day of any calendar
            continue
    return list(dict.fromkeys(day for day in found if EARLIEST <= day <= LATEST))


def said(word: str) -> tuple[str, str]:
    """A word in English and in the language of the window, folded."""
    return word.casefold(), say(word).casefold()


def _named(wanted: str, today: date) -> Iterator[date]:
    for words, days in _NAMED_DAYS:
        if wanted in said(words):
            yield today + timedelta(days=days)


def _weekday(wanted: str, today: date) -> Iterator[date]:
    """ "thu", "next thursday": the first after today; "last thursday": the last before it."""
    first, _, rest = wanted.partition(" ")
    is_last = bool(rest) and first in said(marked("last"))
    name = rest if is_last or first in said(marked("next")) else wanted
    for number, (whole, short) in enumerate(zip(WEEKDAYS, SHORT_WEEKDAYS, strict=True)):
        if name in said(short) or (len(name) >= 3 and any(one.startswith(name) for one in said(whole))):
            ahead = (number - today.weekday() - 1) % 7 + 1
            yield today + timedelta(days=ahead if not is_last else ahead - 7 - 7 * (ahead == 7))


def _week(wanted: str, today: date) -> Iterator[date]:
    """ "week 15", "w15", "2027-W15": its Monday (ISO 8601)."""
    found = _WEEK.fullmatch(wanted)
    if found is None or found[2] not in (*said("week"), *said(marked("wk")), "w"):
        return
    year, number = found[1] or found[4], int(found[3])
    mondays = []
    for in_year in [int(year)] if year else range(today.year - 1, today.year + 2):
        last = date(in_year, 12, 28).isocalendar().week  # not every year has a week 53
        if 1 <= number <= last:
            mondays.append(date.fromisocalendar(in_year, number, 1))
    ahead = [monday for monday in mondays if monday + timedelta(days=6) >= today]
    yield from [*ahead[:1], *[monday for monday in mondays if monday not in ahead][-1:]]


def _counted(wanted: str, today: date) -> Iterator[date]:
    """ "in 3 weeks", "10 days", "2 months ago". In some languages the word for "ago" stands before the number; any
    other word there is one for "in"."""
    found = _COUNTED.fullmatch(wanted)
    if found is None:
        return
    is_past = any(word in said(marked("ago")) for word in (found[1], found[4]))
    if found[4] and not is_past:
        return
    for unit, days, months in _UNITS:
        if any(_is_of(found[3], word) for word in said(unit)):
            from dateutil.relativedelta import relativedelta  # here, for it takes a while to come in

            many = -int(found[2]) if is_past else int(found[2])
            yield today + relativedelta(days=many * days, months=many * months)
            return


def _is_of(typed: str, word: str) -> bool:
    """Whether ``typed`` is the beginning of ``word``, or ``word`` with an ending."""
    return word.startswith(typed) or (typed.startswith(word) and len(typed) <= len(word) + _ENDING)


def _of_month(wanted: str, today: date) -> Iterator[date]:
    """ "12", "12.", "12th": the next day of that number; "2028": its first."""
    found = re.fullmatch(r"(\d{1,2})(?:\.|st|nd|rd|th)?", wanted)
    if found is None:
        if re.fullmatch(r"\d{4}", wanted):
            yield date(int(wanted), 1, 1)
        return
    number = int(found[1])
    days = (today + timedelta(days=ahead) for ahead in range(62))
    yield from [day for day in days if day.day == number][:1]


def _written(wanted: str, today: date, month_first: bool) -> Iterator[date]:
    """A date as people write it: "12 apr", "12.4.", "Mon 12 Apr 2028", "2027-04-12", "april"; "12 a" is on its way."""
    text = re.sub(r"\b(\d{1,2})(?:st|nd|rd|th)\b", r"\1", wanted).rstrip(".")
    words = re.findall(r"[^\W\d]+", text)
    if len(words) == 2 and any(_weekday(words[0], today)):
        text = text.replace(words.pop(0), "", 1).lstrip(" .")
    if not words and not (text.isdigit() and len(text) != 8):
        yield from _in_figures(text, today, month_first)
    if len(words) != 1 or not (len(words[0]) >= 3 or any(letter.isdigit() for letter in text)):
        return
    for month, name in zip(MONTHS, MONTH_NAMES, strict=True):
        if any(one.startswith(words[0]) for one in said(name)):
            plain = " ".join(text.replace(words[0], f" {month.lower()} ").split())
            yield from _in_figures(plain, today, month_first)


def _in_figures(text: str, today: date, month_first: bool) -> Iterator[date]:
    """``text`` is figures and what parts them, and the English name of a month at most."""
    with_points = re.search(r"\d\.", text) is not None
    orders = (True,) if with_points else (False, True) if month_first else (True, False)  # whether the day is first
    pair = _PAIR.fullmatch(text)
    if pair is not None:
        for day_first in orders:
            day, month = (pair[1], pair[2]) if day_first else (pair[2], pair[1])
            yield from _nearest(int(day), int(month), today)
    elif _WRITTEN.fullmatch(text) is not None:
        text = re.sub(r"(?<=\d)\.(?=\d)", "/", text).replace(".", " ")
        for day_first in (False,) if re.match(r"\d{4}", text) else orders:
            yield from _by_dateutil(text, today, day_first)


def _by_dateutil(text: str, today: date, day_first: bool) -> Iterator[date]:
    """What stands in ``text``, with the nearest years where it tells none."""
    from dateutil.parser import parse  # here, for it takes longer to come in than the rest of the field

    one, other = (
        parse(text, default=datetime(year, 1, 1), dayfirst=day_first, ignoretz=True).date() for year in (2000, 2004)
    )
    if one == other:
        yield one
    elif (one.month, one.day) == (other.month, other.day):
        yield from _nearest(one.day, one.month, today)


def _nearest(day: int, month: int, today: date) -> list[date]:
    """The two nearest to today of this day and month, in any year; none if there is no such day."""
    found = []
    for year in range(today.year - _YEARS, today.year + _YEARS + 1):
        try:
            found.append(date(year, month, day))
        except ValueError:
            continue
    return sorted(found, key=lambda one: abs((one - today).days))[:2]
