"""What becomes of a row of a table, and the words for it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from typing import Final, TypeVar

from quailsched.edits.change import Change
from quailsched.edits.tables.grid import Line
from quailsched.edits.tables.headings import Column
from quailsched.edits.tables.sheet import Sheet
from quailsched.farm.faults import FarmError, Words
from quailsched.farm.records import Batch, Farm, Place
from quailsched.farm.units import day_text
from quailsched.words import marked, say

_MOST_NAMES = 8
_Named = TypeVar("_Named", Place, Batch)


class Fate(StrEnum):
    TAKEN = "taken in"
    THERE = "there already"
    OUT = "left out"


FATE_WORDS: Final = (marked("taken in"), marked("there already"), marked("left out"))


@dataclass(frozen=True, slots=True)
class Row:
    """A row by the number that a spreadsheet gives it, as it stands, what becomes of it, and in words how or why."""

    number: int
    cells: tuple[str, ...]
    fate: Fate
    words: str


@dataclass(frozen=True, slots=True)
class Taking:
    """What would happen if the table was taken in: each row, and all the good ones as one change (None: nothing)."""

    sheet: Sheet
    rows: tuple[Row, ...]
    change: Change | None

    def of(self, fate: Fate) -> tuple[Row, ...]:
        return tuple(row for row in self.rows if row.fate is fate)


def row_of(line: Line, fate: Fate, words: str) -> Row:
    return Row(line.number, line.cells, fate, words)


def out(line: Line, error: FarmError) -> Row:
    """A row that is left out, and why."""
    return row_of(line, Fate.OUT, " ".join(fault.sentence() for fault in error.faults))


def full_day(day: date) -> str:
    """ "3 Apr 2026": rows are of any year."""
    return f"{day_text(day)} {day.year}"


def place_in(farm: Farm, sheet: Sheet, line: Line) -> Place | None:
    """The place that a row names, None if it names none. Raises FarmError for one that the farm does not have."""
    name = sheet.words(line, Column.PLACE)
    return _named(farm.places, name, sheet, line, Column.PLACE) if name else None


def batch_in(farm: Farm, sheet: Sheet, line: Line) -> Batch | None:
    """The batch that a row names, as ``place_in``."""
    name = sheet.words(line, Column.NAME)
    return _named(farm.batches, name, sheet, line, Column.NAME) if name else None


def _named(records: tuple[_Named, ...], name: str, sheet: Sheet, line: Line, column: Column) -> _Named:
    for record in records:
        if record.name.strip().casefold() == name.casefold():
            return record
    names = ", ".join(record.name for record in records[:_MOST_NAMES]) + ("…" if len(records) > _MOST_NAMES else "")
    accepted = say("one of {choices} is accepted", choices=names) if names else say("the farm has none yet")
    raise sheet.fault(column, name, accepted)


def told_already(sheet: Sheet, line: Line, column: Column, found: object, there: str) -> FarmError:
    """What a cell says is otherwise in the farm, where it stays."""
    accepted = say("the farm has {there}: what happened stays, correct the count there", there=there)
    return sheet.fault(column, Words(str(found)), accepted)
