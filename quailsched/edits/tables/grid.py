"""The cells of a table: what parts its columns, where its headings stand. What they mean is in ``sheet``."""

from __future__ import annotations

import csv
import io
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from quailsched.edits.tables.headings import meaning
from quailsched.farm.faults import FarmError, Fault, Finding, Words
from quailsched.farm.units import count_text
from quailsched.words import number_text, say

DELIMITERS: Final = (",", ";", "\t", "|")
MOST_ROWS = 20_000
_BEFORE_HEADINGS = 10  # rows with a title, a farm's name
_MOST_COLUMNS = 200


@dataclass(frozen=True, slots=True)
class Line:
    """A row by its number as a spreadsheet counts it, from 1, and its cells."""

    number: int
    cells: tuple[str, ...]

    @property
    def is_blank(self) -> bool:
        return not any(cell.strip() for cell in self.cells)

    def cell(self, index: int) -> str:
        return self.cells[index].strip() if index < len(self.cells) else ""


@dataclass(frozen=True, slots=True)
class Grid:
    """The headings of a table, and the rows below them that are not blank."""

    delimiter: str
    headings: tuple[str, ...]
    lines: tuple[Line, ...]


def grid_of(text: str, delimiter: str | None = None) -> Grid:
    """The cells of ``text``; without ``delimiter`` the one is taken with which most headings are known.

    Raises FarmError for a text without headings that are known, or with too many rows.
    """
    text = text.lstrip("\ufeff").replace("\r\n", "\n").replace("\r", "\n")
    told = text[4] if text[:4].casefold() == "sep=" and text[5:6] == "\n" else None  # a first line of spreadsheets
    body = "\n" + text[6:] if told is not None else text  # the line still counts
    beginning = "\n".join(body.split("\n", 40)[:40])
    tried = [delimiter or told] if delimiter or told else list(DELIMITERS)
    best = max(tried, key=lambda mark: _known(_lines(beginning, mark or ",")[:_BEFORE_HEADINGS])) or ","
    lines = _lines(body, best)
    at = max(range(min(len(lines), _BEFORE_HEADINGS)), key=lambda i: _known(lines[i : i + 1]), default=None)
    if at is None or not _known(lines[at : at + 1]):
        raise FarmError([_no_headings(lines)])
    rows = tuple(line for line in lines[at + 1 :] if not line.is_blank)
    if len(rows) > MOST_ROWS:
        accepted = say("up to {most} at a time are accepted", most=number_text(MOST_ROWS))
        raise FarmError([Fault(say("table"), Words(count_text(len(rows), "row")), accepted, "file")])
    return Grid(best, tuple(cell.strip() for cell in lines[at].cells), rows)


def _lines(text: str, delimiter: str) -> list[Line]:
    """Every row, blank ones too. A quotation mark that is never closed would swallow all the rows after it: then
    marks are letters like others."""
    for quoting in (csv.QUOTE_MINIMAL, csv.QUOTE_NONE):
        is_plain = quoting == csv.QUOTE_NONE
        reader = csv.reader(io.StringIO(text, newline=""), delimiter=delimiter, quoting=quoting, strict=not is_plain)
        try:
            lines = [tuple(cells[:_MOST_COLUMNS]) for cells in reader]
        except csv.Error:
            continue
        if is_plain:
            lines = [tuple(map(_without_marks, cells)) for cells in lines]
        return [Line(number, cells) for number, cells in enumerate(lines, 1)]
    accepted = say("a table with commas, semicolons or tabs is accepted (a spreadsheet saves it as CSV)")
    raise FarmError([Fault(say("table"), Finding(say("its cells cannot be told apart")), accepted, "file")])


def _without_marks(cell: str) -> str:
    cell = cell.strip()
    return cell[1:-1] if len(cell) > 1 and cell[0] == cell[-1] == '"' else cell


def _known(lines: Sequence[Line]) -> int:
    """The most columns with a heading that is known, in one of these rows."""
    return max((len({meaning(cell)[0] for cell in line.cells} - {None}) for line in lines), default=0)


def _no_headings(lines: Sequence[Line]) -> Fault:
    first = next((line for line in lines if not line.is_blank), None)
    accepted = say("a row of headings such as day, batch, eggs set, clear, quit, hatched, or day, place, eggs, "
                   "is accepted")  # fmt: skip
    if first is None:
        return Fault(say("table"), Finding(say("it is empty")), accepted, "file")
    return Fault(say("headings"), " | ".join(first.cells)[:80], accepted, "file")
