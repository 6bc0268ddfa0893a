"""What a table is: a hatch log or an egg log, which column is which, how its days and numbers are written.

Found from the whole table; what the keeper says (``Options``) counts before what is found.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from typing import Final

from quailsched.edits.tables.cells import DayOrder, day_in, decimal_mark_of, grams_in, is_empty, number_in, orders_of
from quailsched.edits.tables.grid import Grid, Line, grid_of
from quailsched.edits.tables.headings import Column, meaning
from quailsched.farm.faults import FarmError, Fault, Finding
from quailsched.farm.units import day_text, names_text
from quailsched.words import marked, number_text, say

MOST_IN_CELL = 1_000_000


class Log(StrEnum):
    """The sorts of tables that are taken in."""

    HATCHES = "hatches"
    EGGS = "eggs"


LOG_WORDS: Final = {Log.HATCHES: marked("hatch log"), Log.EGGS: marked("egg log")}
ORDER_WORDS: Final = (marked("year first"), marked("day first"), marked("month first"))
_OF_HATCHES: Final = (Column.SET_DAY, Column.NUMBER_SET, Column.CLEAR, Column.QUIT, Column.HATCHED, Column.HATCH_DAY)
_OF_EGGS: Final = (Column.LAID, Column.EGGS, Column.FED, Column.BOUGHT, Column.DIED, Column.WEIGHT, Column.WEIGHT_EACH)
_USED: Final[Mapping[Log, tuple[Column, ...]]] = {
    Log.HATCHES: (
        *(Column.NAME, Column.KIND, Column.PLACE, Column.SET_DAY, Column.NUMBER_SET, Column.CANDLE_DAY),
        *(Column.CLEAR, Column.QUIT_DAY, Column.QUIT, Column.HATCH_DAY, Column.HATCHED, Column.NOTE),
    ),
    Log.EGGS: (
        *(Column.DAY, Column.NAME, Column.PLACE, Column.LAID, Column.FED, Column.BOUGHT, Column.DIED),
        *(Column.WEIGHED, Column.WEIGHT, Column.WEIGHT_EACH, Column.NOTE),
    ),
}


@dataclass(frozen=True, slots=True)
class Options:
    """What the keeper says of a table; None is found from the table itself. ``kind`` is that of new batches
    without a kind of their own, ``place_id`` the place of rows that name neither place nor batch."""

    log: Log | None = None
    delimiter: str | None = None
    day_order: DayOrder | None = None
    decimal_mark: str | None = None
    kind: str = "coturnix"
    place_id: str = ""


@dataclass(frozen=True, slots=True)
class Sheet:
    """A table that can be read. ``orders`` are those in which its days make sense, the one that counts first.

    ``columns`` gives the place of each column in a row, ``units_g`` the grams of the unit in its heading.
    ``unused`` are the headings of columns that are not taken in.
    """

    log: Log
    grid: Grid
    columns: Mapping[Column, int]
    units_g: Mapping[Column, float]
    unused: tuple[str, ...]
    orders: tuple[DayOrder, ...]
    decimal_mark: str

    @property
    def is_order_open(self) -> bool:
        """Whether its days could be others, and the keeper has to say which."""
        return len(self.orders) > 1

    def words(self, line: Line, column: Column) -> str:
        """The words of a cell, "" for one that says nothing or is not there."""
        text = line.cell(self.columns[column]) if column in self.columns else ""
        return "" if is_empty(text) else text

    def day(self, line: Line, column: Column) -> date | None:
        """The day in a cell, None if it is empty. Raises FarmError for anything else."""
        text = self.words(line, column)
        if not text:
            return None
        found = day_in(text, self.orders[0])
        if found is None:
            accepted = say("a day like 2027-04-06 or 6 Apr 2027 is accepted, figures alone with the {order}",
                           order=say(self.orders[0]))  # fmt: skip
            raise self.fault(column, text, accepted)
        return found

    def whole(self, line: Line, column: Column) -> int | None:
        """The whole number in a cell, None if it is empty. Raises FarmError for anything else."""
        text = self.words(line, column)
        if not text:
            return None
        found = number_in(text, self.decimal_mark)
        if found is None or found != int(found) or not 0 <= found <= MOST_IN_CELL:
            accepted = say("a whole number from 0 to {most} is accepted", most=number_text(MOST_IN_CELL))
            raise self.fault(column, text, accepted)
        return int(found)

    def grams(self, line: Line, column: Column) -> float | None:
        """The grams in a cell, None if it is empty. Raises FarmError for anything else, or if no unit is told."""
        text = self.words(line, column)
        if not text:
            return None
        found = grams_in(text, self.decimal_mark, self.units_g.get(column))
        if found is None or not 0 <= found <= MOST_IN_CELL * 1_000:
            accepted = say("a weight with its unit in the cell or the heading is accepted: g, kg, oz or lb")
            raise self.fault(column, text, accepted)
        return found

    def heading(self, column: Column) -> str:
        """The heading of a column as it stands in the table; where there is none, as it would."""
        return self.grid.headings[self.columns[column]] if column in self.columns else say(column)

    def fault(self, column: Column, value: object, accepted: str) -> FarmError:
        """What is wrong with a cell, by the heading of its column as it stands in the table."""
        return FarmError([Fault(self.heading(column), value, accepted, column)])


def sheet_of(text: str, options: Options = Options()) -> Sheet:
    """What the table ``text`` is. Raises FarmError if it has no headings that are known, or not those that it needs."""
    grid = grid_of(text, options.delimiter)
    found: dict[Column, int] = {}
    grams: dict[Column, float] = {}
    for index, heading in enumerate(grid.headings):
        column, unit_g = meaning(heading)
        if column is not None and column not in found:
            found[column] = index
            if unit_g is not None and column.is_weight:
                grams[column] = unit_g
    log = options.log or _log_of(found)
    columns = _of_log(log, found)
    _require(log, columns, [grid.headings[index] for index in columns.values()])
    if not grid.lines:
        accepted = say("rows below its headings are needed")
        raise FarmError([Fault(say("table"), Finding(say("it has none")), accepted, "file")])
    days = [[line.cell(at) for line in grid.lines] for column, at in columns.items() if column.is_day]
    orders = (options.day_order,) if options.day_order else tuple(orders_of(days))
    numbers = [line.cell(at) for line in grid.lines for column, at in columns.items()
               if not column.is_day and not column.is_words]  # fmt: skip
    mark = options.decimal_mark or decimal_mark_of(numbers, "," if grid.delimiter == ";" else ".")
    unused = tuple(h for i, h in enumerate(grid.headings) if h and i not in columns.values())
    return Sheet(log, grid, columns, grams, unused, orders, mark)


def _log_of(found: Mapping[Column, int]) -> Log:
    if any(column in found for column in _OF_HATCHES):
        return Log.HATCHES
    return Log.EGGS


def _of_log(log: Log, found: Mapping[Column, int]) -> dict[Column, int]:
    """The columns that ``log`` takes in; "date" and "eggs" mean one thing or the other in each."""
    stands_for = {Column.DAY: Column.SET_DAY, Column.EGGS: Column.NUMBER_SET} if log is Log.HATCHES else {
        Column.SET_DAY: Column.DAY, Column.EGGS: Column.LAID}  # fmt: skip
    columns = dict(found)
    for column, other in stands_for.items():
        if column in columns and other not in columns:
            columns[other] = columns.pop(column)
    return {column: index for column, index in columns.items() if column in _USED[log]}


def _require(log: Log, columns: Collection[Column], headings: list[str]) -> None:
    if log is Log.HATCHES:
        is_enough = Column.NAME in columns or {Column.SET_DAY, Column.NUMBER_SET} <= set(columns)
        needed = say("a hatch log needs headings for the day of setting and the eggs set, or for the batch")
    else:
        is_enough = Column.DAY in columns and any(column in columns for column in (*_OF_EGGS, Column.NOTE))
        needed = say("an egg log needs headings for the day and for eggs, feed, deaths or weights")
    if not is_enough:
        names = names_text([f"“{heading}”" for heading in headings]) or say("none")
        raise FarmError([Fault(say("headings"), Finding(say("these are known: {names}", names=names)), needed, "file")])


def open_order_fault(sheet: Sheet) -> FarmError:
    """The days of ``sheet`` could be others: what has to be said, with the first day that shows it."""
    cells = (line.cell(at) for line in sheet.grid.lines for column, at in sheet.columns.items() if column.is_day)
    for cell in cells:
        days = [day for order in sheet.orders if (day := day_in(cell, order)) is not None]
        if len(set(days)) > 1:
            told = say(" or ").join(f"{day_text(day)} {day.year}" for day in days)
            found = Finding(say("“{cell}” may be {days}", cell=cell, days=told))
            return FarmError([Fault(say("order of days"), found, say("say what comes first"), "day_order")])
    accepted = say("say what comes first")
    return FarmError([Fault(say("order of days"), Finding(say("it is open")), accepted, "day_order")])
