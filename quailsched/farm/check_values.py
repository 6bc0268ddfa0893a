"""Whether single values make sense: texts of one line, numbers within bounds, days. What ``check`` is made of."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterator
from datetime import date

from quailsched.farm.faults import Fault, Finding, field_of
from quailsched.words import marked, number_text, say

EARLIEST, LATEST = date(1990, 1, 1), date(2199, 12, 31)
MOST_NAME_LETTERS = 100

# What a name or a reason needs when it is empty, too long or of more than one line: to be said.
_EMPTY = {
    "name": marked("a name of at least one letter is needed"),
    "reason": marked("a reason of at least one letter is needed"),
}
_TOO_LONG = {
    "name": marked("a name of up to {most} letters is accepted"),
    "reason": marked("a reason of up to {most} letters is accepted"),
}
_OF_MORE_LINES = {
    "name": marked("a name on one line, without tabs, is accepted"),
    "reason": marked("a reason on one line, without tabs, is accepted"),
}


def text_faults(what: str, text: str, field: str = "name") -> Iterator[Fault]:
    """Every list shows a name within one line, so it must fit there."""
    where = field_of(what, say(field))
    if not text.strip():
        yield Fault(where, Finding(say("it is empty")), say(_EMPTY[field]), field)
    elif len(text) > MOST_NAME_LETTERS:
        start = " ".join(text[:40].split())
        yield Fault(where, f"{start}…", say(_TOO_LONG[field], most=MOST_NAME_LETTERS), field)
    elif any(unicodedata.category(letter) in ("Cc", "Zl", "Zp") for letter in text):
        shown = "".join(letter if letter.isprintable() else " " for letter in text)
        yield Fault(where, shown, say(_OF_MORE_LINES[field]), field)


def whole_faults(where: str, value: int, least: int, most: int, field: str) -> Iterator[Fault]:
    if not least <= value <= most:
        span = {"least": number_text(least), "most": number_text(most)}
        yield Fault(where, value, say("a whole number from {least} to {most} is accepted", **span), field)


def between_faults(where: str, value: float, least: int, most: int, field: str) -> Iterator[Fault]:
    if not least <= value <= most:
        span = {"least": number_text(least), "most": number_text(most)}
        yield Fault(where, value, say("a number from {least} to {most} is accepted", **span), field)


def date_faults(where: str, day: date, field: str) -> Iterator[Fault]:
    if not EARLIEST <= day <= LATEST:
        accepted = say("a day from {earliest} to {latest} is accepted", earliest=EARLIEST, latest=LATEST)
        yield Fault(where, day.isoformat(), accepted, field)
