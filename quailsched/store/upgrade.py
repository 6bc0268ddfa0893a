"""Bringing a farm file of an older version up to this one, and the copy of it that is put beside it before.

What is new in which version stands in ``farm.versions``. Imported with the first write only.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import suppress
from itertools import count
from pathlib import Path

from sqlalchemy import Connection
from sqlalchemy.schema import CreateColumn

from quailsched.farm.versions import came_with, values_before
from quailsched.store.errors import StoreError, reason_of
from quailsched.store.layout import RECORD_TABLES, SCHEMA_VERSION
from quailsched.store.new_files import give_name, passing_name, settle_folder, short, write_synced
from quailsched.store.tables import Table
from quailsched.words import say


def version_in(connection: Connection) -> int:
    """The version of the file, as the running transaction sees it."""
    return int(connection.exec_driver_sql("PRAGMA user_version").scalar_one())


def upgrade(connection: Connection, path: Path, version: int) -> None:
    """Brings the file at ``path`` from ``version`` to this one, within the running transaction.

    A copy is made first; StoreError if it cannot be. Nothing may have been written in the transaction before.
    """
    _back_up(connection, path)
    for layout in RECORD_TABLES:
        if came_with(layout.record) > version:
            names = [layout.table, *(part.table for part in layout.lists)]
            Table.metadata.create_all(connection, tables=[Table.metadata.tables[name] for name in names])
            continue
        lists = {part.field: part.table for part in layout.lists}
        for field, value in values_before(layout.record, version).items():
            if field in lists:
                Table.metadata.create_all(connection, tables=[Table.metadata.tables[lists[field]]])
            else:
                _add_column(connection, layout.table, field, value)
    connection.exec_driver_sql(f"PRAGMA user_version = {SCHEMA_VERSION}")


def _add_column(connection: Connection, table: str, field: str, value: object) -> None:
    """SQLite wants a value for the rows that are there if they may not be without one:
    https://www.sqlite.org/lang_altertable.html section 5.
    """
    column = CreateColumn(Table.metadata.tables[table].c[field]).compile(dialect=connection.dialect)
    quoted = connection.exec_driver_sql("SELECT quote(?)", (value,)).scalar_one()
    connection.exec_driver_sql(f'ALTER TABLE "{table}" ADD COLUMN {column} DEFAULT {quoted}')


def _back_up(connection: Connection, path: Path) -> None:
    """Puts the file as it was beside it. Raises StoreError if it cannot.

    SQLite hands the bytes out: to open and close the file by ourselves would drop the locks that SQLite has on it
    (https://www.sqlite.org/howtocorrupt.html section 2.2).
    """
    database = connection.connection.driver_connection
    assert isinstance(database, sqlite3.Connection)
    try:
        _keep(database.serialize(), path)
    except OSError as error:
        raise StoreError(
            say(
                "{path} is of an older version, and the copy that is kept of it before it is changed "
                "cannot be made: {error}. Nothing was changed.",
                path=path.name,
                error=reason_of(error),
            )
        ) from error


def _keep(whole: bytes, path: Path) -> None:
    """Under the first name that is free. A copy that is there from an upgrade that failed is not made again."""
    beside = passing_name(path)
    try:
        write_synced(beside, whole)
        for name in _names(path):
            if name.is_file() and name.stat().st_size == len(whole) and name.read_bytes() == whole:
                return
            with suppress(FileExistsError):
                give_name(beside, name)
                settle_folder(path.absolute().parent)
                return
    finally:
        beside.unlink(missing_ok=True)


def _names(path: Path) -> Iterator[Path]:
    stem = f"{short(path.stem)}.before-version-{SCHEMA_VERSION}"
    yield path.with_name(stem + path.suffix)
    for number in count(2):
        yield path.with_name(f"{stem} ({number}){path.suffix}")
