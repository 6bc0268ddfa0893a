"""A table as rows with what becomes of each, and one change with all the good ones: the way in to this package."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from quailsched.edits.tables.eggs import Eggs
from quailsched.edits.tables.grid import Line
from quailsched.edits.tables.hatches import Hatches
from quailsched.edits.tables.pieces import Now, Pieces
from quailsched.edits.tables.rows import Fate, Row, Taking, row_of
from quailsched.edits.tables.sheet import LOG_WORDS, Log, Options, Sheet, open_order_fault, sheet_of
from quailsched.farm.records import Farm
from quailsched.farm.units import count_text
from quailsched.words import say


@dataclass(frozen=True, slots=True)
class Twice:
    """A row that stands in the table before, word by word."""

    line: Line
    first: int


def taking_of(farm: Farm, text: str, options: Options, now: Now) -> Taking:
    """What would happen if the table ``text`` was taken into ``farm`` (the plan).

    Raises FarmError if it is no table that can be read, or if the order of its days is open and not said.
    """
    sheet = sheet_of(text, options)
    if sheet.is_order_open:
        raise open_order_fault(sheet)
    return taken(farm, sheet, options, now)


def taken(farm: Farm, sheet: Sheet, options: Options, now: Now) -> Taking:
    """As ``taking_of``, for a table that is read already, by the first of its orders of days."""
    once, twice = _parted(sheet)
    pieces = Pieces(farm, now)
    of_log = Hatches if sheet.log is Log.HATCHES else Eggs
    rows = [*of_log(once, options, pieces).rows(), *_told(twice)]
    rows.sort(key=lambda row: row.number)
    many = sum(row.fate is Fate.TAKEN for row in rows)
    label = say("Take in {rows} of a table ({log})", rows=count_text(many, "row"), log=say(LOG_WORDS[sheet.log]))
    return Taking(sheet, tuple(rows), pieces.whole(label))


def _parted(sheet: Sheet) -> tuple[Sheet, list[Twice]]:
    """The sheet without the rows that stand in it twice, and these."""
    seen: dict[tuple[str, ...], int] = {}
    once, twice = [], []
    for line in sheet.grid.lines:
        cells = tuple(cell.strip() for cell in line.cells)
        if cells in seen:
            twice.append(Twice(line, seen[cells]))
        else:
            seen[cells] = line.number
            once.append(line)
    return replace(sheet, grid=replace(sheet.grid, lines=tuple(once))), twice


def _told(twice: list[Twice]) -> Iterator[Row]:
    for one in twice:
        yield row_of(one.line, Fate.THERE, say("the same as row {number}", number=one.first))
