"""Tables of records: read from a file and taken into a farm, and written into a folder."""

from __future__ import annotations

import re
from datetime import date
from pathlib import Path

from quailsched.edits.tables.letters import MOST_BYTES, text_of
from quailsched.edits.tables.pieces import Now
from quailsched.edits.tables.rows import Taking
from quailsched.edits.tables.sheet import Options
from quailsched.edits.tables.taking import taking_of
from quailsched.report.record_tables import RecordTable, record_tables
from quailsched.session.farms import new_id
from quailsched.session.open_farm import OpenFarm, utc_now
from quailsched.session.replacing import Sort, require_replaceable
from quailsched.session.whole_files import write_whole
from quailsched.store.errors import told_as_store_error
from quailsched.words import marked, say

_TABLE = marked("table of this kind by Quailsched")


def read_table(path: Path) -> str:
    """The text of the table in ``path``. Raises StoreError, and FarmError for what is no text."""
    with told_as_store_error(path, say("cannot be read")), path.open("rb") as file:
        data = file.read(MOST_BYTES + 1)
    return text_of(data)


def look_at_table(opened: OpenFarm, text: str, options: Options, today: date) -> Taking:
    """What would become of the rows of a table. Facts go into the plan, whatever is looked at. Raises FarmError."""
    return taking_of(opened.plan, text, options, Now(today, utc_now(), new_id))


def take_table(opened: OpenFarm, taking: Taking) -> None:
    """Take all the good rows in, as one step. Raises StoreError; then nothing has changed."""
    if taking.change is not None:
        opened.apply_to_plan(taking.change)


def give_tables(opened: OpenFarm, folder: Path) -> list[RecordTable]:
    """Every record of the plan as tables in ``folder``, which is made if it is not there.

    Raises StoreError; also, before anything is written, if a file there has the name of a table and is none.
    """
    tables = record_tables(opened.plan)
    with told_as_store_error(folder, say("cannot be written")):
        folder.mkdir(parents=True, exist_ok=True)
    for table in tables:
        beginning = re.compile(re.escape(table.first_line().encode()))
        require_replaceable(folder / table.name, Sort(_TABLE, beginning))
    for table in tables:
        write_whole(folder / table.name, table.text().encode())
    return tables
