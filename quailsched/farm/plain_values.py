"""Single values as JSON types and back, by the type that a field is declared with. Records: ``plain``.

A reader adds a fault and returns ``BROKEN`` instead of raising, so that a document tells all its faults at once.
"""

from __future__ import annotations

import math
import re
from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, date, datetime
from enum import StrEnum
from types import NoneType, UnionType
from typing import Any, Final, Union, get_args, get_origin

from quailsched.farm.faults import Fault, Finding, Words
from quailsched.farm.units import count_text
from quailsched.words import marked, say

Spot = tuple[str | int, ...]  # where a value stands: names of records and fields, numbers of items from 1
Reader = Callable[[object, Spot, list[Fault]], object]
Writer = Callable[[Any], object]

BROKEN: Final = object()
MISSING: Final = Finding(marked("this field is missing"))  # to be said
MOST_DIGITS = 15  # JSON readers that hold numbers as doubles keep whole numbers of up to 15 digits
LONGEST_SHOWN = 60  # letters of a wrong value that a sentence repeats
_DAY = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")


def shown(value: object) -> object:
    """A value of JSON as a sentence shows it: short, and in words where it is neither text nor a number."""
    if isinstance(value, str):
        clean = "".join(letter if letter.isprintable() else "\N{REPLACEMENT CHARACTER}" for letter in value)
        return clean if len(clean) <= LONGEST_SHOWN else clean[: LONGEST_SHOWN - 1] + "…"
    if isinstance(value, bool):
        return Words(str(value).lower())
    if isinstance(value, int):
        return value if abs(value) < 10**LONGEST_SHOWN else Words(say("a very long number"))
    if value is None:
        return Finding(say("it is empty (null)"))
    if isinstance(value, list | tuple):
        return Finding(say("a list stands here"))
    if value is MISSING:
        return Finding(say(MISSING.text))
    return Finding(say("a group of fields stands here")) if isinstance(value, dict) else value


def place_in_words(spot: Spot) -> str:
    """ "batch Clover, stays, item 2, from_day"."""
    return ", ".join(say("item {number}", number=step) if isinstance(step, int) else step for step in spot)


def fault_at(spot: Spot, value: object, accepted: str) -> Fault:
    """The fault of one value; its field is the one right below the record (the first step)."""
    field = spot[1] if len(spot) > 1 else ""
    return Fault(place_in_words(spot), shown(value), accepted, field if isinstance(field, str) else "")


def missing_at(spot: Spot, read: Reader) -> Fault:
    """The fault of a field that is not there: what its reader would accept is needed."""
    refused: list[Fault] = []
    read(MISSING, spot, refused)
    return refused[0]


def accepted_for(value: object, what: str) -> str:
    """That ``what``, already said, would be accepted in the place of ``value``; needed, where nothing is there."""
    return say("{what} is needed" if value is MISSING else "{what} is accepted", what=what)


def reader_for(hint: Any, read_nested: Callable[[type], Reader]) -> Reader:
    """The reader of a declared type; ``read_nested`` makes the one of a dataclass inside it."""
    if hint in _SIMPLE:
        return _SIMPLE[hint]
    if isinstance(hint, type) and issubclass(hint, StrEnum):
        return _enum_reader(hint)
    if get_origin(hint) in (Union, UnionType):
        return _optional_reader(reader_for(_inner(hint), read_nested))
    if get_origin(hint) is tuple:
        items = get_args(hint)
        if items[-1] is Ellipsis:
            return _list_reader(reader_for(items[0], read_nested))
        return _fixed_reader([reader_for(item, read_nested) for item in items])
    return read_nested(hint)


def writer_for(hint: Any, write_nested: Callable[[type], Writer]) -> Writer:
    """The writer of a declared type: the way back of ``reader_for``."""
    if hint is float:
        return lambda number: float(number) + 0.0  # equal numbers are written alike: 28 as 28.0, -0.0 as 0.0
    if hint is date:
        return date.isoformat
    if hint is datetime:
        return lambda moment: moment.astimezone(UTC).isoformat()
    if hint in (str, int, bool):
        return _as_it_is
    if isinstance(hint, type) and issubclass(hint, StrEnum):
        return lambda member: member.value
    if get_origin(hint) in (Union, UnionType):
        write = writer_for(_inner(hint), write_nested)
        return lambda value: None if value is None else write(value)
    if get_origin(hint) is tuple:
        items = get_args(hint)
        if items[-1] is Ellipsis:
            write_item = writer_for(items[0], write_nested)
            return lambda values: [write_item(value) for value in values]
        writers = [writer_for(item, write_nested) for item in items]
        return lambda values: [write(value) for write, value in zip(writers, values, strict=True)]
    return write_nested(hint)


def stand_in_for(hint: Any) -> object:
    """Any value of a declared type, to go on with after a fault; never kept."""
    if isinstance(hint, type) and issubclass(hint, StrEnum):
        return next(iter(hint))
    if get_origin(hint) in (Union, UnionType):
        return None
    if get_origin(hint) is tuple:
        return ()
    simple: dict[Any, object] = {date: date(2000, 1, 1), datetime: datetime(2000, 1, 1, tzinfo=UTC)}
    return simple[hint] if hint in simple else hint()


def _inner(hint: Any) -> Any:
    inner = [option for option in get_args(hint) if option is not NoneType]
    if len(inner) != 1:
        raise TypeError(f"{hint} is not a value or None")
    return inner[0]


def _as_it_is(value: object) -> object:
    return value


def _read_text(value: object, spot: Spot, faults: list[Fault]) -> object:
    if type(value) is not str:
        return _broken(spot, value, say("text in quotation marks"), faults)
    if "\0" in value or any("\ud800" <= letter <= "\udfff" for letter in value):
        return _broken(spot, value, say("text of letters that can be written to a file"), faults)
    return value


def _read_whole(value: object, spot: Spot, faults: list[Fault]) -> object:
    if type(value) is not int or abs(value) >= 10**MOST_DIGITS:
        return _broken(spot, value, say("a whole number of up to {most} digits", most=MOST_DIGITS), faults)
    return value


def _read_number(value: object, spot: Spot, faults: list[Fault]) -> object:
    if isinstance(value, bool) or not isinstance(value, int | float):
        return _broken(spot, value, say("a number"), faults)
    if abs(value) >= 10**MOST_DIGITS or not math.isfinite(value):
        return _broken(spot, value, say("a number of up to {most} digits", most=MOST_DIGITS), faults)
    return float(value)


def _read_yes_no(value: object, spot: Spot, faults: list[Fault]) -> object:
    if not isinstance(value, bool):
        return _broken(spot, value, say("true or false"), faults)
    return value


def _read_day(value: object, spot: Spot, faults: list[Fault]) -> object:
    if isinstance(value, str) and _DAY.fullmatch(value):
        try:
            return date.fromisoformat(value)
        except ValueError:
            faults.append(
                fault_at(spot, value, say("there is no such day; year-month-day as in 2027-02-28 is accepted"))
            )
            return BROKEN
    return _broken(spot, value, say("a day as year-month-day, such as 2027-02-28,"), faults)


def _read_moment(value: object, spot: Spot, faults: list[Fault]) -> object:
    try:
        moment = datetime.fromisoformat(value) if isinstance(value, str) else None
        if moment is not None and moment.tzinfo is not None:
            return moment.astimezone(UTC)
    except (ValueError, OverflowError):
        pass
    return _broken(spot, value, say("a moment with its offset, such as 2027-02-28T07:30:00+00:00,"), faults)


_SIMPLE: Final[dict[Any, Reader]] = {
    str: _read_text,
    int: _read_whole,
    float: _read_number,
    bool: _read_yes_no,
    date: _read_day,
    datetime: _read_moment,
}


def _enum_reader(cls: type[StrEnum]) -> Reader:
    members = {member.value: member for member in cls}

    def read(value: object, spot: Spot, faults: list[Fault]) -> object:
        if isinstance(value, str) and value in members:
            return members[value]
        return _broken(spot, value, say("one of {choices}", choices=", ".join(members)), faults)

    return read


def _optional_reader(read_inner: Reader) -> Reader:
    def read(value: object, spot: Spot, faults: list[Fault]) -> object:
        if value is None:
            return None
        told = len(faults)
        inner = read_inner(value, spot, faults)
        faults[told:] = [
            replace(fault, accepted=say("{accepted}, or null", accepted=fault.accepted)) for fault in faults[told:]
        ]
        return inner

    return read


def _list_reader(read_item: Reader) -> Reader:
    def read(value: object, spot: Spot, faults: list[Fault]) -> object:
        if not isinstance(value, list):
            return _broken(spot, value, say("a list in square brackets"), faults)
        items = tuple(read_item(item, (*spot, place), faults) for place, item in enumerate(value, 1))
        return BROKEN if BROKEN in items else items

    return read


def _fixed_reader(readers: list[Reader]) -> Reader:
    def read(value: object, spot: Spot, faults: list[Fault]) -> object:
        if not isinstance(value, list) or len(value) != len(readers):
            number = count_text(len(value), "value") if isinstance(value, list) else ""
            found = Words(say("a list of {values}", values=number)) if number else value
            return _broken(spot, found, say("a list of {number} values", number=len(readers)), faults)
        items = tuple(
            read_item(item, (*spot, place), faults)
            for place, (read_item, item) in enumerate(zip(readers, value, strict=True), 1)
        )
        return BROKEN if BROKEN in items else items

    return read


def _broken(spot: Spot, value: object, what: str, faults: list[Fault]) -> object:
    """The fault of a value in whose place ``what`` would be accepted."""
    faults.append(fault_at(spot, value, accepted_for(value, what)))
    return BROKEN
