"""What is meant by a few typed letters: a batch, a place, a day. No Qt.

The field is in ``find_box``; how days are read, in ``typed_days``.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterator
from datetime import date, timedelta

from quailsched.desktop.typed_days import days_meant, said
from quailsched.farm.range import EARLIEST, LATEST
from quailsched.farm.records import Batch, Farm, Place, Units
from quailsched.farm.units import area_text, count_text, named_day_text
from quailsched.quick import dataclass
from quailsched.words import say

_MOST = 12  # matches that are told
_DAY_OF = re.compile(r"([^\W\d]+) ?(\d{1,4}) (?:\w+ )?(\S.*)")
_DAY_BEHIND = re.compile(r"(\S.*?),? ([^\W\d]+) ?(\d{1,4})")


@dataclass(frozen=True, slots=True)
class Match:
    """One thing that may be meant: a batch, a place, a day, or a day of a batch. ``more`` tells it from others."""

    text: str
    more: str = ""
    batch_id: str | None = None
    place_id: str | None = None
    day: date | None = None


def matches(farm: Farm, typed: str, today: date) -> list[Match]:
    """What ``typed`` may mean, the likeliest first: names by how well they fit, batches near today before others;
    then days."""
    wanted = _folded(typed)
    if not wanted:
        return []
    batches = [(rank, abs((batch.start - today).days), batch) for batch in farm.batches
               if (rank := _rank(batch.name, wanted)) is not None]  # fmt: skip
    places = [(rank, place) for place in farm.places if (rank := _rank(place.name, wanted)) is not None]
    # Batches before places that fit as well: there is more to find among them.
    named: list[tuple[int, int, int, Batch | Place]] = [(rank, 0, away, batch) for rank, away, batch in batches]
    named += [(rank, 1, place.position, place) for rank, place in places]
    named.sort(key=lambda one: one[:3])
    found = [_of(farm, one[3]) for one in named[:_MOST]]
    return [*found, *days(farm, typed, today)][:_MOST]


def days(farm: Farm, typed: str, today: date) -> list[Match]:
    """The days that ``typed`` may mean, and the days of batches: "day 30 of Clover", "Clover day 30"."""
    meant = days_meant(typed, today, month_first=farm.settings.units is Units.US)
    plain = [Match(_told(day), _away(day, today), day=day) for day in meant]
    return [*plain, *_days_of_batches(farm, _folded(typed), today)][:_MOST]


def _folded(text: str) -> str:
    """Without capitals, accents and blanks to spare, so that "kafig" finds "Käfig"."""
    plain = "".join(one for one in unicodedata.normalize("NFKD", text) if not unicodedata.combining(one))
    return " ".join(plain.casefold().split())


def _rank(name: str, wanted: str) -> int | None:
    """How well a name fits, 0 the best: it is that, begins with it, has a word that does, or holds it; else None."""
    folded = _folded(name)
    if folded == wanted:
        return 0
    if folded.startswith(wanted):
        return 1
    if f" {wanted}" in folded:
        return 2
    return 3 if wanted in folded else None


def _of(farm: Farm, record: Batch | Place) -> Match:
    if isinstance(record, Batch):
        number = count_text(record.number, "egg" if record.origin.is_eggs else "bird")
        return Match(record.name, f"{number}, {_told(record.start)}", batch_id=record.id)
    if record.role.holds_eggs:
        return Match(record.name, count_text(record.egg_places, "egg place"), place_id=record.id)
    return Match(record.name, area_text(record.floor_cm2, farm.settings.units), place_id=record.id)


def _told(day: date) -> str:
    return f"{named_day_text(day)} {day.year}"


def _away(day: date, today: date) -> str:
    """ "today", "in 6 days", "6 days ago"."""
    ahead = (day - today).days
    if ahead == 0:
        return say("today")
    if ahead > 0:
        return say("in {days}", days=count_text(ahead, "day"))
    return say("{days} ago", days=count_text(-ahead, "day"))


def _days_of_batches(farm: Farm, wanted: str, today: date) -> Iterator[Match]:
    asked = [(found[1], found[2], found[3]) for found in [_DAY_OF.fullmatch(wanted)] if found]
    asked += [(found[2], found[3], found[1]) for found in [_DAY_BEHIND.fullmatch(wanted)] if found]
    for word, number, name in asked:
        if word not in said("day"):
            continue
        for batch in farm.batches:
            day = batch.start + timedelta(days=int(number))
            if _rank(batch.name, name) in (0, 1) and EARLIEST <= day <= LATEST:
                text = say("Day {number} of {batch}", number=number, batch=batch.name)
                yield Match(text, f"{_told(day)}, {_away(day, today)}", batch_id=batch.id, day=day)
