"""What becomes of the rows of a table, in words and as JSON."""

from __future__ import annotations

from typing import Any

from quailsched.edits.tables.rows import Fate, Taking
from quailsched.edits.tables.sheet import Log
from quailsched.farm.units import count_text
from quailsched.words import marked, number_text, say

DELIMITER_WORDS = {",": marked("comma"), ";": marked("semicolon"), "\t": marked("tab"), "|": marked("bar")}
_AS_LOG = {Log.HATCHES: marked("a hatch log"), Log.EGGS: marked("an egg log")}


def sum_text(taking: Taking, *, is_done: bool = False) -> str:
    """ "112 rows: 100 to take, 10 there already, 2 left out." """
    told = {fate: number_text(len(taking.of(fate))) for fate in Fate}
    return say(
        "{rows}: {taken} taken in, {there} there already, {out} left out."
        if is_done
        else "{rows}: {taken} to take, {there} there already, {out} left out.",
        rows=count_text(len(taking.rows), "row"), taken=told[Fate.TAKEN], there=told[Fate.THERE], out=told[Fate.OUT],
    )  # fmt: skip


def sheet_text(taking: Taking) -> str:
    """How the table was read, in a line or two."""
    sheet = taking.sheet
    told = say(
        "Read as {log}: columns parted by a {delimiter}, days with the {order}, decimals after “{mark}”.",
        log=say(_AS_LOG[sheet.log]), delimiter=say(DELIMITER_WORDS.get(sheet.grid.delimiter, sheet.grid.delimiter)),
        order=say(sheet.orders[0]), mark=sheet.decimal_mark,
    )  # fmt: skip
    if not sheet.unused:
        return told
    return f"{told} " + say("Not taken in: {headings}.", headings=", ".join(sheet.unused))


def taking_text(taking: Taking, *, is_done: bool) -> str:
    """Each row with what becomes of it. Where it is done already, only what was left out is told by row."""
    rows = taking.of(Fate.OUT) if is_done else taking.rows
    lines = [sheet_text(taking), *(f"{row.number:>5}  {say(row.fate)}: {row.words}" for row in rows)]
    return "\n".join([*lines, sum_text(taking, is_done=is_done)])


def taking_json(taking: Taking, *, is_done: bool) -> dict[str, Any]:
    sheet = taking.sheet
    return {
        "log": sheet.log,
        "delimiter": sheet.grid.delimiter,
        "day_order": sheet.orders[0],
        "decimal_mark": sheet.decimal_mark,
        "columns": {str(column): sheet.heading(column) for column in sheet.columns},
        "not_taken_in": list(sheet.unused),
        "changed": is_done and taking.change is not None,
        "rows": [
            {"row": row.number, "fate": row.fate, "words": row.words, "cells": list(row.cells)} for row in taking.rows
        ],
    }
