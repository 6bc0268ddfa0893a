"""A table as rows with what becomes of each, and one change with all the good ones: the way in to this package."""

from __future__ import annotations

from dataclasses import replace

from quailsched.edits.tables.eggs import Eggs
from quailsched.edits.tables.hatches import Hatches
from quailsched.edits.tables.pieces import Now, Pieces
from quailsched.edits.tables.rows import Fate, Row, Taking, row_of
from quailsched.edits.tables.sheet import LOG_WORDS, Log, Options, Sheet, open_order_fault, sheet_of
from quailsched.farm.records import Farm
from quailsched.farm.units import count_text
from quailsched.words import say


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
    good, others = _parted(sheet)
    pieces = Pieces(farm, now)
    of_log = Hatches if sheet.log is Log.HATCHES else Eggs
    rows = [*of_log(good, options, pieces).rows(), *others]
    rows.sort(key=lambda row: row.number)
    many = sum(row.fate is Fate.TAKEN for row in rows)
    label = say("Take in {rows} of a table ({log})", rows=count_text(many, "row"), log=say(LOG_WORDS[sheet.log]))
    return Taking(sheet, tuple(rows), pieces.whole(label))


def _parted(sheet: Sheet) -> tuple[Sheet, list[Row]]:
    """The sheet without the rows that stand in it twice, or that have more cells than it has headings: theirs."""
    seen: dict[tuple[str, ...], int] = {}
    good, others = [], []
    many = len(sheet.grid.headings)
    for line in sheet.grid.lines:
        cells = tuple(cell.strip() for cell in line.cells)
        if cells in seen:
            others.append(row_of(line, Fate.THERE, say("the same as row {number}", number=seen[cells])))
        elif any(cells[many:]):
            words = say("it has {cells} for {headings}: a cell that holds a “{mark}” needs quotation marks around it",
                        cells=count_text(len(cells), "cell"), headings=count_text(many, "heading"),
                        mark=sheet.grid.delimiter)  # fmt: skip
            others.append(row_of(line, Fate.OUT, words))
        else:
            seen[cells] = line.number
            good.append(line)
    return replace(sheet, grid=replace(sheet.grid, lines=tuple(good))), others
