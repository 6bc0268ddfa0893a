"""Every kind of record as a table: CSV as in RFC 4180, days as in ISO 8601, the same in every language.

Also a hatch log and an egg log, which ``edits.tables`` reads in again. Files are written by ``session.tables``.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable
from dataclasses import dataclass, fields
from datetime import date, datetime
from enum import Enum
from typing import Any

from quailsched.farm.facts import ChoreMark, OwnChore, Sort
from quailsched.farm.ledger import FIELDS
from quailsched.farm.records import Acceptance, Batch, Farm, FigureChoice, Person, Place, Settings, Span, Stay, Trial
from quailsched.report.logs import egg_log, hatch_log

# Fields that name another record, by the heading over its name.
_NAMES = {"batch_id": "batch", "to_batch_id": "to batch", "place_id": "place", "person_id": "person"}
_LISTS = {"batch_ids": "batches", "from_ids": "from batches"}
_OF_COUNTS = ("id", "day", "batch_id", "place_id")
_AFTER = ("person_id", "words", "entered", "corrects", "is_taken_back", "plan_day", "plan_number")


@dataclass(frozen=True, slots=True)
class RecordTable:
    """A file by its name, its headings, and its rows."""

    name: str
    headings: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]

    def text(self) -> str:
        """As in RFC 4180: a row of headings, commas, lines that end in CR and LF."""
        return _csv([self.headings, *self.rows])

    def first_line(self) -> str:
        """The line of headings, by which a file is known as one of these."""
        return _csv([self.headings])


def _csv(rows: Iterable[Iterable[str]]) -> str:
    text = io.StringIO(newline="")
    csv.writer(text, lineterminator="\r\n").writerows(rows)
    return text.getvalue()


def record_tables(farm: Farm) -> list[RecordTable]:
    """A table for every kind of record, empty ones too; each sort of count with its own columns."""
    sorts = [_counts(farm, sort) for sort in Sort]
    return [
        _table(farm, "farm", Settings, [farm.settings]),
        _table(farm, "places", Place, farm.places),
        _table(farm, "people", Person, farm.people),
        _table(farm, "batches", Batch, farm.batches, left_out=("stays",)),
        _stays(farm),
        _table(farm, "figures", FigureChoice, farm.choices),
        _table(farm, "accepted-clashes", Acceptance, farm.acceptances),
        _table(farm, "trials", Trial, farm.trials),
        *sorts,
        _table(farm, "chore-marks", ChoreMark, farm.marks),
        _table(farm, "own-chores", OwnChore, farm.own_chores),
        RecordTable("hatch-log.csv", *hatch_log(farm)),
        RecordTable("egg-log.csv", *egg_log(farm)),
    ]


def _table(
    farm: Farm, name: str, cls: type[Any], records: Iterable[object], left_out: tuple[str, ...] = ()
) -> RecordTable:
    names = [field.name for field in fields(cls) if field.name not in left_out]
    rows = tuple(tuple(_cell(farm, one, getattr(record, one)) for one in names) for record in records)
    return RecordTable(f"{name}.csv", tuple(map(_heading, names)), rows)


def _stays(farm: Farm) -> RecordTable:
    names = [field.name for field in fields(Stay)]
    rows = [
        (batch.name, *(_cell(farm, one, getattr(stay, one)) for one in names)) for batch in farm.batches
        for stay in batch.stays
    ]  # fmt: skip
    return RecordTable("stays.csv", ("batch", *map(_heading, names)), tuple(rows))


def _counts(farm: Farm, sort: Sort) -> RecordTable:
    own = [field.rstrip("!") for field in FIELDS[sort]]
    names = list(dict.fromkeys((*_OF_COUNTS, *own, *_AFTER)))
    rows = tuple(
        tuple(_cell(farm, one, getattr(count, one)) for one in names) for count in farm.counts if count.sort is sort
    )
    return RecordTable(f"counts-{sort.replace(' ', '-')}.csv", tuple(map(_heading, names)), rows)


def _heading(field: str) -> str:
    """ "floor_cm2" is "floor cm2", "place_id" is "place", over names."""
    return _NAMES.get(field) or _LISTS.get(field) or field.replace("_", " ")


def _cell(farm: Farm, field: str, value: Any) -> str:
    if field in _NAMES:
        return _name(farm, value)
    if field in _LISTS:
        return "; ".join(_name(farm, one) for one in value)
    if isinstance(value, tuple):
        return str(len(value)) if field == "records" else "; ".join(map(_part, value))
    return _plain(value)


def _name(farm: Farm, record_id: str) -> str:
    """The name of a record; the id of one that has gone."""
    record = farm.find(record_id)
    return record.name if isinstance(record, Batch | Place | Person) else record_id


def _part(value: Any) -> str:
    if isinstance(value, Span):
        reason = f" ({value.reason})" if value.reason else ""
        return f"{value.start.isoformat()} to {value.last_day.isoformat()}{reason}"
    return ":".join(map(_plain, value)) if isinstance(value, tuple) else _plain(value)


def _plain(value: object) -> str:
    if value is None:
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, datetime | date):
        return value.isoformat()
    return str(value.value) if isinstance(value, Enum) else str(value)
