"""Which table holds which record, and which tables hold the lists inside it. Columns are named as fields.

Read by ``reading`` (standard library) and ``writing`` (SQLModel), so that both agree.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any, Final

from quailsched.farm.facts import ChoreMark, Count, OwnChore
from quailsched.farm.plain import plain_of
from quailsched.farm.records import Acceptance, Batch, FigureChoice, Person, Place, Record, Settings, Trial
from quailsched.farm.versions import VERSION
from quailsched.quick import dataclass

APPLICATION_ID: Final = 0x5155414C  # "QUAL", at byte 68 of the file
SCHEMA_VERSION: Final = VERSION  # at byte 60 of the file

Row = dict[str, Any]


@dataclass(frozen=True, slots=True)
class ListTable:
    """The table of one list field: its items in order, each with the id of the record that owns it.

    An item is a record with the names of the columns, a list of as many values, or, with one column, a value.
    """

    field: str
    table: str
    owner: str
    columns: tuple[str, ...]
    is_record: bool = False

    def row_of(self, item: Any) -> Row:
        if self.is_record:
            return dict(item)
        return dict(zip(self.columns, item if len(self.columns) > 1 else (item,), strict=True))

    def item_of(self, values: tuple[Any, ...]) -> Any:
        if self.is_record:
            return dict(zip(self.columns, values, strict=True))
        return list(values) if len(self.columns) > 1 else values[0]


@dataclass(frozen=True, slots=True)
class RecordTable:
    """The table of one type of record and the tables of its lists."""

    record: type[Record]
    table: str
    lists: tuple[ListTable, ...] = ()


_SPAN: Final = ("start", "end", "reason")
_STAY: Final = ("place_id", "from_day", "to_day", "part", "leaving")
RECORD_TABLES: Final = (
    RecordTable(Settings, "farm", (ListTable("night_lows_c", "night_low", "farm_id", ("low_c",)),)),
    RecordTable(Place, "place", (ListTable("shut", "span", "shut_place_id", _SPAN, is_record=True),)),
    RecordTable(Person, "person", (ListTable("away", "span", "away_person_id", _SPAN, is_record=True),)),
    RecordTable(
        Batch,
        "batch",
        (
            ListTable("stays", "stay", "batch_id", _STAY, is_record=True),
            ListTable("from_ids", "batch_from", "batch_id", ("from_id",)),
        ),
    ),
    RecordTable(
        FigureChoice,
        "figure_choice",
        (ListTable("points", "figure_point", "choice_id", ("age_days", "value")),),
    ),
    RecordTable(Acceptance, "acceptance", (ListTable("batch_ids", "accepted_batch", "acceptance_id", ("batch_id",)),)),
    RecordTable(
        Trial,
        "trial",
        (ListTable("records", "trial_record", "trial_id", ("record_id", "content"), is_record=True),),
    ),
    RecordTable(Count, "count"),
    RecordTable(ChoreMark, "chore_mark"),
    RecordTable(OwnChore, "own_chore"),
)


def table_of(record: Record) -> RecordTable:
    return next(layout for layout in RECORD_TABLES if isinstance(record, layout.record))


def rows_of(record: Record) -> Iterator[tuple[str, Row]]:
    """The rows of one record as (table, columns), its own first."""
    layout = table_of(record)
    plain = plain_of(record)
    items = {part.field: plain.pop(part.field) for part in layout.lists}
    yield layout.table, plain
    for part in layout.lists:
        for position, item in enumerate(items[part.field]):
            yield part.table, {part.owner: record.id, "position": position, **part.row_of(item)}
