"""The words by which counts are typed, and what stands in a typed line: words, days, weights. No Qt."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Sequence
from datetime import date
from typing import Final

from quailsched.desktop.typed_days import days_meant, said
from quailsched.farm.fact_words import CAUSE_WORDS
from quailsched.farm.facts import Cause, Sort
from quailsched.farm.units import MONTHS
from quailsched.words import marked, say

# The commonest first: of two that begin alike, it is meant. Another language has its own lists, also with commas.
_SORT_WORDS: Final[tuple[tuple[Sort, str], ...]] = (
    (Sort.DIED, marked("died, dead")),
    (Sort.LAID, marked("eggs, laid, egg")),
    (Sort.HATCHED, marked("hatched")),
    (Sort.CLEAR, marked("clear, infertile")),
    (Sort.QUIT, marked("quit")),
    (Sort.SOLD, marked("sold")),
    (Sort.FED, marked("fed, feed")),
    (Sort.WEIGHED, marked("weighed, weight")),
    (Sort.COUNTED, marked("counted")),
    (Sort.MOVED, marked("moved")),
    (Sort.PROCESSED, marked("processed, slaughtered")),
    (Sort.SET, marked("set")),
    (Sort.SEXED, marked("sexed")),
    (Sort.FEATHERED, marked("feathered")),
    (Sort.PIPPED, marked("pipped")),
    (Sort.BEDDING, marked("bedding, litter")),
    (Sort.BUILT, marked("built, finished")),
    (Sort.FEED_BOUGHT, marked("bought")),
    (Sort.HOURS, marked("hours, worked")),
    (Sort.NOTE, marked("note")),
)
_FILLERS = marked("of, in, the, from, at, on, to, for, and, with, eggs, egg, chicks, chick, birds, bird, feed")
_PARTS = {"hens": marked("hens, hen"), "cocks": marked("cocks, cock"), "unsure": marked("unsure")}
_GRAMS: Final = {"g": 1.0, "kg": 1000.0, "oz": 28.349523125, "lb": 453.59237, "lbs": 453.59237}  # NIST SP 811
_GLUED = re.compile(r"(\d+(?:[.,]\d+)?)(g|kg|oz|lbs?|h)")
_NUMBER = re.compile(r"\d+(?:[.,]\d+)*")
_DATE = re.compile(r"\d{4}-\d{1,2}-\d{1,2}|\d{1,2}/\d{1,2}(/\d{2,4})?|\d{1,2}\.\d{1,2}\.(\d{2,4})?")
_LONGEST_DAY = 4  # words of "on 12 apr 2027"
_HALF_YEAR = 183  # days
_HOURS = marked("h, hours, hour")


def fold(text: str) -> str:
    """Without capitals, accents and blanks to spare."""
    plain = "".join(one for one in unicodedata.normalize("NFKD", text) if not unicodedata.combining(one))
    return " ".join(plain.casefold().split())


def split(typed: str) -> list[str]:
    """The words of a line. A number and the unit after it are one word: "2.5kg", "3h"."""
    raw = [word.strip(";:!?") for word in fold(typed).split()]
    words: list[str] = []
    for word in [one.rstrip(",") for one in raw]:
        is_after_number = bool(words) and _NUMBER.fullmatch(words[-1]) is not None
        if is_after_number and word in _GRAMS:
            words[-1] += word
        elif is_after_number and word in _list_of(_HOURS):
            words[-1] += "h"
        elif word:
            words.append(word)
    return words


def _list_of(text: str) -> list[str]:
    """The words of a list in English and in the language of the window."""
    return [fold(word) for side in dict.fromkeys((text, say(text))) for word in side.split(",")]


def is_filler(word: str) -> bool:
    """Whether ``word`` may stand there and says nothing."""
    return word in _list_of(_FILLERS)


def part_of(word: str) -> str | None:
    """ "hens", "cocks" or "unsure" if ``word`` says one of these."""
    return next((name for name, words in _PARTS.items() if word in _list_of(words)), None)


def sort_in(words: Sequence[str]) -> tuple[Sort | None, int | None]:
    """The sort that one of ``words`` names, and where that word stands: a whole word before a beginning, the commonest
    sort before others. "5 clear eggs" are clear: eggs are laid only if nothing else is said."""
    for is_meant in (_is_same, _is_first, _is_beginning, _is_filler_of):
        for sort, text in _SORT_WORDS:
            for at, word in enumerate(words):
                if not word[:1].isdecimal() and is_filler(word) == (is_meant is _is_filler_of) and is_meant(word, text):
                    return sort, at
    return None, None


def _is_same(word: str, text: str) -> bool:
    return word in _list_of(text)


def _is_first(word: str, text: str) -> bool:
    """Whether it begins the first word of the list."""
    return any(fold(side.split(",")[0]).startswith(word) for side in (say(text), text))


def _is_beginning(word: str, text: str) -> bool:
    return any(one.startswith(word) for one in _list_of(text))


def _is_filler_of(word: str, text: str) -> bool:
    return _is_same(word, text)


def cause_of(word: str, *, exactly: bool = False) -> Cause | None:
    """The cause that ``word`` is, or begins."""
    for cause, text in zip(Cause, CAUSE_WORDS, strict=True):
        if any(word == one or (not exactly and one.startswith(word)) for one in said(text)):
            return cause
    return None


def hours_of(word: str) -> float | None:
    """The hours of "1.5h"."""
    glued = _GLUED.fullmatch(word)
    return float(glued[1].replace(",", ".")) if glued is not None and glued[2] == "h" else None


def after_word(typed: str, word: str) -> str:
    """What of a typed line stands after ``word``, as it was typed."""
    parts = typed.split()
    at = next((n for n, part in enumerate(parts) if fold(part).strip(",;:!?") == word), len(parts))
    return " ".join(parts[at + 1 :])


def weights_in(words: list[str]) -> tuple[list[int], list[str]]:
    """The weights in grams, and the other words. Ounces right after pounds are of the same weight."""
    found: list[float] = []
    others: list[str] = []
    unit_before = ""
    for word in words:
        glued = _GLUED.fullmatch(word)
        unit = glued[2] if glued is not None else ""
        if glued is None or unit == "h":
            others.append(word)
            unit_before = ""
            continue
        grams = float(glued[1].replace(",", ".")) * _GRAMS[unit]
        if unit == "oz" and unit_before in ("lb", "lbs"):
            found[-1] += grams
        else:
            found.append(grams)
        unit_before = unit
    return [round(grams) for grams in found], others


def days_in(words: list[str], today: date, names: Sequence[str]) -> tuple[list[str], date | None]:
    """``words`` without those that name a day, and that day; None if none does. A day that has been is meant
    before one that comes. What is the name of something in ``names`` is no day."""
    for length in range(min(_LONGEST_DAY, len(words)), 0, -1):
        for at in range(len(words) - length + 1):
            some = words[at : at + length]
            if any(word in names for word in some):
                continue
            day = _day_of(some, today, names)
            if day is not None:
                return [*words[:at], *words[at + length :]], day
    return words, None


def _day_of(some: list[str], today: date, names: Sequence[str]) -> date | None:
    text = " ".join(some)
    if len(some) == 1:
        if _DATE.fullmatch(text):
            return _past(days_meant(text, today), today)
        is_name = any(name.startswith(text) for name in names)
        if text[:1].isdecimal() or (len(text) < 3 and is_name):
            return None
        return _named_day(text, today)
    numbers = [word for word in some if word[:1].isdecimal()]
    is_counted = len(some) <= 3 and bool(numbers) and any(word in said(marked("ago")) for word in some)
    short = [number for number in numbers if len(number.rstrip(".")) < 4]
    has_month = len(short) == 1 and any(_is_month(word) for word in some)
    is_last = len(some) == 2 and some[0] in said(marked("last"))
    return _past(days_meant(text, today), today) if is_counted or has_month or is_last else None


def _named_day(text: str, today: date) -> date | None:
    """ "yesterday"; of a weekday the last one, or today."""
    found, last = days_meant(text, today), days_meant(f"last {text}", today)
    if found and last:
        return today if last[0].weekday() == today.weekday() else last[0]
    return found[0] if found else None


def _is_month(word: str) -> bool:
    return len(word) >= 3 and any(one[:3] == word[:3] for month in MONTHS for one in map(fold, said(month)))


def _past(days: Sequence[date], today: date) -> date | None:
    """The likeliest day of the last half year, or the likeliest of all."""
    return next((day for day in days if 0 <= (today - day).days <= _HALF_YEAR), next(iter(days), None))
