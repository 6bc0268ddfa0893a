"""What is meant by a few typed letters: a batch, a place, a day. No Qt; the field is in ``find_box``."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta

from dateutil.parser import ParserError, parse

from quailsched.farm.check import EARLIEST, LATEST
from quailsched.farm.records import Farm
from quailsched.farm.units import MONTHS, count_text, named_day_text
from quailsched.words import marked, say

_MOST = 12  # matches that are told
_WEEKDAYS = (
    *(marked("Monday"), marked("Tuesday"), marked("Wednesday"), marked("Thursday")),
    *(marked("Friday"), marked("Saturday"), marked("Sunday")),
)
_NUMBER_AND_UNIT = re.compile(r"(?:\w+\s+)?(\d{1,4})\s*(\w+)")
_WORD_AND_NUMBER = re.compile(r"(\w+)\s*(\d{1,4})")
_DAY_OF = re.compile(r"(\w+)\s+(\d{1,4})\s+(?:\w+\s+)?(\S.*)")


@dataclass(frozen=True, slots=True)
class Match:
    """One thing that may be meant; ``day`` alone, or with the batch that it is a day of."""

    text: str
    batch_id: str | None = None
    place_id: str | None = None
    day: date | None = None


def matches(farm: Farm, typed: str, today: date) -> list[Match]:
    """What ``typed`` may mean, the likeliest first: names that begin with it, names that hold it, days."""
    wanted = typed.strip().casefold()
    if not wanted:
        return []
    named = [(batch.name.casefold(), _batch(farm, batch.id)) for batch in farm.batches]
    named += [(place.name.casefold(), Match(place.name, place_id=place.id)) for place in farm.places]
    first = [match for name, match in named if name.startswith(wanted)]
    then = [match for name, match in named if wanted in name and not name.startswith(wanted)]
    days = list(dict.fromkeys(_days(farm, wanted, today)))
    return [*first, *then, *days][:_MOST]


def _batch(farm: Farm, batch_id: str) -> Match:
    batch = farm.batch(batch_id)
    number = count_text(batch.number, "egg" if batch.origin.is_eggs else "bird")
    text = say("{batch}, {number}, {day}", batch=batch.name, number=number, day=_told(batch.start))
    return Match(text, batch_id=batch_id)


def _told(day: date) -> str:
    return f"{named_day_text(day)} {day.year}"


def _days(farm: Farm, wanted: str, today: date) -> Iterator[Match]:
    """The days that ``wanted`` may be, and days of batches: "day 30 of Clover"."""
    for day in (_near(wanted, today), _of_week(wanted, today), _ahead(wanted, today), _written(wanted, today)):
        if day is not None and EARLIEST <= day <= LATEST:
            yield Match(_told(day), day=day)
    found = _DAY_OF.fullmatch(wanted)
    if found is not None and found[1] in _said("day"):
        for batch in farm.batches:
            if batch.name.casefold().startswith(found[3]):
                day = batch.start + timedelta(days=int(found[2]))
                text = say("day {number} of {batch}: {day}", number=found[2], batch=batch.name, day=_told(day))
                yield Match(text, batch_id=batch.id, day=day)


def _said(word: str) -> tuple[str, str]:
    """A word in English and as it is said, folded."""
    return word.casefold(), say(word).casefold()


def _near(wanted: str, today: date) -> date | None:
    """Today, tomorrow, yesterday, or the next Thursday."""
    for word, days in ((marked("today"), 0), (marked("tomorrow"), 1), (marked("yesterday"), -1)):
        if wanted in _said(word):
            return today + timedelta(days=days)
    for number, weekday in enumerate(_WEEKDAYS):
        if len(wanted) >= 3 and any(name.startswith(wanted) for name in _said(weekday)):
            return today + timedelta(days=(number - today.weekday() - 1) % 7 + 1)
    return None


def _of_week(wanted: str, today: date) -> date | None:
    """The Monday of a week by its number, in this year or the next (ISO 8601)."""
    found = _WORD_AND_NUMBER.fullmatch(wanted)
    if found is None or found[1] not in _said(marked("week")) or not 1 <= int(found[2]) <= 53:
        return None
    for year in (today.year, today.year + 1):
        try:
            monday = date.fromisocalendar(year, int(found[2]), 1)
        except ValueError:  # not every year has a week 53
            continue
        if monday + timedelta(days=6) >= today:
            return monday
    return None


def _ahead(wanted: str, today: date) -> date | None:
    """In so many days or weeks."""
    found = _NUMBER_AND_UNIT.fullmatch(wanted)
    if found is None:
        return None
    units = ((1, (*_said(marked("day")), *_said("days"))), (7, (*_said("week"), *_said(marked("weeks")))))
    for days, names in units:
        if found[2] in names:
            return today + timedelta(days=days * int(found[1]))
    return None


def _written(wanted: str, today: date) -> date | None:
    """A date as people write it: "12 apr", "12.4.", "2027-04-12", "april". The day comes before the month."""
    text = wanted
    for number, month in enumerate(MONTHS, 1):
        for name in (month, say(month)):
            text = re.sub(rf"\b{re.escape(name.casefold())}\w*", f" {MONTHS[number - 1]} ", text)
    text = text.replace(".", " ").strip() if text.count(".") == 2 and text.endswith(".") else text
    if text.isdigit() and not 1 <= int(text) <= 31:
        return None  # a number alone is no year
    if not re.search(r"\d", text) and not any(month in text for month in MONTHS):
        return None
    is_iso = re.match(r"\d{4}", text) is not None
    text = re.sub(r"^(\d{1,2}) (\d{1,2})$", r"\1/\2", text)
    try:
        first = datetime.combine(today.replace(day=1), time())
        return parse(text, default=first, dayfirst=not is_iso).date()
    except (ParserError, OverflowError, ValueError):
        return None
