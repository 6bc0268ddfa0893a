"""Looking at a farm file without changing it: is it one, is it whole, and what is in it.

Standard library only: this runs before the window is up. Whatever is refused keeps its bytes.
"""

from __future__ import annotations

import sqlite3
from collections import defaultdict
from collections.abc import Iterator
from contextlib import closing, contextmanager
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any

from quailsched.farm.faults import FarmError, Fault
from quailsched.farm.plain import read_record, stored_fields
from quailsched.farm.records import Farm, Record, Settings, farm_of
from quailsched.farm.versions import came_with, values_before
from quailsched.quick import dataclass
from quailsched.store.errors import StoreError, told_as_store_error
from quailsched.store.layout import APPLICATION_ID, RECORD_TABLES, SCHEMA_VERSION, ListTable, RecordTable, Row
from quailsched.words import marked, say

if TYPE_CHECKING:
    from quailsched.store.journal import Step
    from quailsched.store.published import Published

WAIT_SECONDS = 2.0  # for another program that is writing
MAGIC = b"SQLite format 3\0"
_NONSENSE = marked("not every value in it makes sense")
_HEADER_BYTES = 100  # https://www.sqlite.org/fileformat.html section 1.3


@dataclass(frozen=True, slots=True)
class Contents:
    """What a farm file holds in memory. ``cursor`` is the number of the last step that is not undone.

    ``stamp`` changes with every write, so that a write from elsewhere is noticed.
    """

    farm: Farm
    steps: tuple[Step, ...]
    cursor: int
    stamp: str


def contents_of(path: Path) -> Contents:
    """Everything in the file but its changes' records. Raises StoreError with a sentence if it is refused."""
    check_header(path)
    with reading(path) as db:
        _check_whole(path, db)
        try:
            return _contents(path, db)
        except sqlite3.OperationalError as error:
            code = getattr(error, "sqlite_errorcode", None)
            if code is None:  # text that is not UTF-8 is found by Python, not by SQLite
                raise StoreError(_damaged(path, say(_NONSENSE))) from error
            if code == sqlite3.SQLITE_ERROR:  # no such table, no such column
                raise StoreError(_damaged(path, say("it lacks a table or a field"))) from error
            raise
        except (ValueError, TypeError) as error:
            raise StoreError(_damaged(path, say(_NONSENSE))) from error


def published_in(path: Path) -> dict[str, Published]:
    """The calendar entries that were given out, by UID."""
    from quailsched.store.published import Published

    check_header(path)
    with reading(path) as db:
        rows = db.execute("SELECT uid, content, sequence, revised FROM published ORDER BY uid")
        return {row[0]: Published(row[0], row[1], row[2], datetime.fromisoformat(row[3])) for row in rows}


@contextmanager
def reading(path: Path) -> Iterator[sqlite3.Connection]:
    """A connection that cannot write, within one transaction. Faults come out as StoreError."""
    # A process that was killed in a write leaves its journal beside the file; only a connection that
    # may write can roll it back (https://www.sqlite.org/lockingv3.html section 4.2).
    mode = "rw" if path.with_name(path.name + "-journal").exists() else "ro"
    with (
        told_as_store_error(path, say("cannot be opened")),
        closing(sqlite3.connect(uri(path, mode), uri=True, timeout=WAIT_SECONDS, isolation_level=None)) as db,
    ):
        if mode == "rw":
            db.execute("SELECT count(*) FROM sqlite_master").fetchone()
            db.execute("PRAGMA query_only = ON")
        db.execute("BEGIN")
        yield db


def uri(path: Path, mode: str) -> str:
    """The address of the file for SQLite, which then never makes a new one (mode "ro" or "rw")."""
    return f"{path.absolute().as_uri()}?mode={mode}"


def check_header(path: Path) -> None:
    """Raises StoreError unless the first bytes are those of a farm file that this version reads."""
    with told_as_store_error(path, say("cannot be opened")):
        if not path.exists():
            raise StoreError(
                say(
                    "{path} cannot be opened: there is no such file in {parent}.",
                    path=path.name,
                    parent=path.absolute().parent,
                )
            )
        if not path.is_file():
            raise StoreError(say("{path} cannot be opened: it is not a file.", path=path.name))
        size = path.stat().st_size
        with path.open("rb") as file:
            header = file.read(_HEADER_BYTES)
    if not header:
        raise StoreError(say("{path} is empty: there is no farm in it.", path=path.name))
    if not (header.startswith(MAGIC) or MAGIC.startswith(header)):
        raise StoreError(say("{path} is not a farm file of Quailsched.", path=path.name))
    if len(header) < _HEADER_BYTES:
        raise StoreError(_damaged(path, say("its end is missing")))
    if int.from_bytes(header[68:72], "big") != APPLICATION_ID:
        raise StoreError(say("{path} is not a farm file of Quailsched but of another program.", path=path.name))
    version = int.from_bytes(header[60:64], "big", signed=True)
    if version > SCHEMA_VERSION:
        raise StoreError(
            say(
                "{path} was written by a newer Quailsched (version {version}, this one reads up to "
                "{newest}). It was left as it is.",
                path=path.name,
                version=version,
                newest=SCHEMA_VERSION,
            )
        )
    if version < 1:
        raise StoreError(_damaged(path, say("its version is {version}", version=version)))
    page_size = int.from_bytes(header[16:18], "big") or 1
    page_bytes = 65_536 if page_size == 1 else page_size
    if size < page_bytes * int.from_bytes(header[28:32], "big") and not _has_journal(path):
        raise StoreError(_damaged(path, say("its end is missing")))


def _has_journal(path: Path) -> bool:
    return path.with_name(path.name + "-journal").exists()


def _damaged(path: Path, how: str) -> str:
    return say(
        "{path} is damaged ({how}) and was left as it is. Open a back-up of it instead.", path=path.name, how=how
    )


def _check_whole(path: Path, db: sqlite3.Connection) -> None:
    try:
        found = [row[0] for row in db.execute("PRAGMA quick_check(1)")]
        loose = db.execute("PRAGMA foreign_key_check").fetchone()
    except sqlite3.DatabaseError as error:
        if error.sqlite_errorcode & 0xFF not in (sqlite3.SQLITE_CORRUPT, sqlite3.SQLITE_NOTADB):
            raise
        raise StoreError(_damaged(path, say("it cannot be read through"))) from error
    if found != ["ok"]:
        raise StoreError(_damaged(path, say("it cannot be read through")))
    if loose is not None:
        raise StoreError(
            _damaged(
                path, say("a {value} in it belongs to a {value2} that is not there", value=loose[0], value2=loose[2])
            )
        )


def _contents(path: Path, db: sqlite3.Connection) -> Contents:
    farm = _farm(path, db)
    rows = db.execute("SELECT number, label, at, merge_key FROM journal ORDER BY number")
    steps = tuple(_step(*row) for row in rows)
    state = db.execute("SELECT cursor, stamp FROM file_state").fetchone()
    numbers = [step.number for step in steps]
    if state is None or not 0 <= state[0] <= len(steps) or numbers != list(range(1, len(steps) + 1)):
        raise StoreError(_damaged(path, say("its history has a gap")))
    return Contents(farm, steps, cursor=state[0], stamp=state[1])


def _step(number: int, label: str, at: str, merge_key: str) -> Step:
    from quailsched.store.journal import Step

    return Step(number, label, datetime.fromisoformat(at), merge_key)


def _farm(path: Path, db: sqlite3.Connection) -> Farm:
    """Tables and columns that came after the file's version are not asked for; ``read_record`` knows their values."""
    faults: list[Fault] = []
    records: list[Record] = []
    (version,) = db.execute("PRAGMA user_version").fetchone()
    for layout in RECORD_TABLES:
        if came_with(layout.record) > version:
            continue
        for plain in _plain_records(db, layout, version):
            words = f"{layout.table} {plain.get('name') or plain['id']}"
            records.append(read_record(layout.record, plain, (words,), faults, version).record)
    if faults:
        raise StoreError(_damaged(path, say(_NONSENSE))) from FarmError(faults)
    farms = sum(isinstance(record, Settings) for record in records)
    if farms != 1:
        raise StoreError(_damaged(path, say("it holds {farms} farms, not one", farms=farms)))
    return farm_of(records)


def _plain_records(db: sqlite3.Connection, layout: RecordTable, version: int) -> Iterator[Row]:
    stored = stored_fields(layout.record)
    later = values_before(layout.record, version)
    lists = {part.field: _items(db, part) for part in layout.lists if part.field not in later}
    own = [field.name for field in stored if field.name not in lists and field.name not in later]
    flags = [field.name for field in stored if field.name in own and field.type in (bool, "bool")]
    for values in db.execute(f'SELECT {_columns(own)} FROM "{layout.table}" AS t'):
        plain: Row = dict(zip(own, values, strict=True))
        for name in flags:
            plain[name] = {0: False, 1: True}.get(plain[name], plain[name])
        yield plain | {field: items[plain["id"]] for field, items in lists.items()}


def _items(db: sqlite3.Connection, part: ListTable) -> defaultdict[str, list[Any]]:
    columns = _columns([part.owner, *part.columns])
    order = f'WHERE t."{part.owner}" IS NOT NULL ORDER BY t."position"'
    rows = db.execute(f'SELECT {columns} FROM "{part.table}" AS t {order}')
    items: defaultdict[str, list[Any]] = defaultdict(list)
    for owner, *values in rows:
        items[owner].append(part.item_of(tuple(values)))
    return items


def _columns(names: list[str]) -> str:
    """Columns of table ``t``. Without the table SQLite takes a quoted name that it does not know for text:
    https://www.sqlite.org/quirks.html section 8.
    """
    return ", ".join(f't."{name}"' for name in names)
