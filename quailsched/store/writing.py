"""Writing a farm file: one transaction a change, through SQLModel. Imported on the first write only.

A rollback journal and full synchronising keep what was said to be saved through a killed process and a
power cut, in one file: https://www.sqlite.org/pragma.html#pragma_synchronous.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from datetime import UTC
from itertools import groupby
from operator import itemgetter
from pathlib import Path
from secrets import token_hex

from sqlalchemy import Connection, Engine, NullPool, create_engine, event
from sqlmodel import Session, col, delete, select

from quailsched.edits.change import Change, Touch
from quailsched.farm.plain import plain_of
from quailsched.farm.records import Record
from quailsched.store import reading
from quailsched.store.errors import StoreError
from quailsched.store.journal import Step, change_from, change_text
from quailsched.store.layout import APPLICATION_ID, SCHEMA_VERSION, rows_of, table_of
from quailsched.store.published import Published
from quailsched.store.tables import FileState, JournalRow, PublishedRow, Table
from quailsched.store.upgrade import upgrade, version_in
from quailsched.words import say


class Transaction:
    """What can be written. Nothing of it is in the file until the block of ``Writer.write`` ends."""

    def __init__(self, session: Session, state: FileState) -> None:
        self._session = session
        self._state = state

    def touch(self, touches: Iterable[Touch]) -> None:
        """Writes the records of a change: out with those before, in with those after."""
        touched = tuple(touches)
        for touch in touched:
            if touch.before is not None:
                self._remove(touch.before)
        for touch in touched:
            if touch.after is not None:
                self.put(touch.after)
        self._session.flush()

    def put(self, record: Record) -> None:
        """Its own row first, then those of its lists, which refer to it: the session by itself keeps no such order."""
        for table, rows in groupby(rows_of(record), key=itemgetter(0)):
            insert = Table.metadata.tables[table].insert()
            self._session.connection().execute(insert, [columns for _, columns in rows])

    def _remove(self, record: Record) -> None:
        table = Table.metadata.tables[table_of(record).table]
        removed = self._session.connection().execute(table.delete().where(table.c.id == record.id))
        if removed.rowcount != 1:
            raise StoreError(say("A record of this change is not in the file any more: {id}.", id=record.id))

    def write_step(self, step: Step, change: Change) -> None:
        """Puts ``step`` at the end of the history; it takes the place of its number and all after it."""
        self.forget_steps(step.number)
        forward = change_text(change)
        at = step.at.astimezone(UTC).isoformat()
        self._session.add(
            JournalRow(number=step.number, label=step.label, at=at, merge_key=step.merge_key, forward=forward)
        )
        self._state.cursor = step.number

    def forget_steps(self, first: int) -> None:
        """Drops the steps from number ``first`` on; the history then stands before it."""
        self._session.exec(delete(JournalRow).where(col(JournalRow.number) >= first))
        self._state.cursor = first - 1

    def stand_at(self, number: int) -> None:
        """The last step that is not undone; 0 when all are."""
        self._state.cursor = number

    def change_of(self, number: int) -> Change:
        row = self._session.exec(select(JournalRow).where(JournalRow.number == number)).first()
        if row is None:
            raise StoreError(say("The history in this file lacks its step {number}.", number=number))
        self._session.expunge(row)
        return change_from(row.forward, row.label, row.merge_key)

    def publish(self, entries: Iterable[Published], gone: Iterable[str] = ()) -> None:
        """Writes calendar entries, new or changed, and forgets those of ``gone`` (UIDs)."""
        for uid in gone:
            self._session.exec(delete(PublishedRow).where(col(PublishedRow.uid) == uid))
        rows = [plain_of(entry) for entry in entries]
        if rows:
            insert = Table.metadata.tables["published"].insert().prefix_with("OR REPLACE")
            self._session.connection().execute(insert, rows)


class Writer:
    """Writes to one farm file. No connection stays open between two writes."""

    def __init__(self, path: Path) -> None:
        self._path = path
        self._engine = _engine(path)

    @contextmanager
    def write(self, stamp: str) -> Iterator[tuple[Transaction, str]]:
        """One transaction and the stamp that it leaves. Raises StoreError if the file has not ``stamp``.

        A file of an older version is of this one afterwards, with a copy of what it was beside it.
        """
        reading.check_header(self._path)
        with Session(self._engine) as session:
            state = session.exec(select(FileState)).first()
            if state is None or state.stamp != stamp:
                raise StoreError(
                    say(
                        "{path} was changed by another window or program since it was opened. "
                        "Open it again to go on from there.",
                        path=self._path.name,
                    )
                )
            if (version := version_in(session.connection())) < SCHEMA_VERSION:
                upgrade(session.connection(), self._path, version)
            state.stamp = token_hex(8)
            yield Transaction(session, state), state.stamp
            session.commit()


def write_new(path: Path, records: Iterable[Record], published: Iterable[Published]) -> None:
    """Fills a new file at ``path``, which is empty or not there yet."""
    path.touch()
    engine = _engine(path)
    with Session(engine) as session:
        connection = session.connection()
        connection.exec_driver_sql(f"PRAGMA application_id = {APPLICATION_ID}")
        connection.exec_driver_sql(f"PRAGMA user_version = {SCHEMA_VERSION}")
        Table.metadata.create_all(connection)
        state = FileState(id=1, cursor=0, stamp=token_hex(8))
        session.add(state)
        transaction = Transaction(session, state)
        transaction.touch(Touch(None, record) for record in records)
        transaction.publish(published)
        session.commit()


def _engine(path: Path) -> Engine:
    engine = create_engine("sqlite://", creator=_connector(path), poolclass=NullPool)
    event.listen(engine, "begin", _begin)
    return engine


def _connector(path: Path) -> Callable[[], sqlite3.Connection]:
    def connect() -> sqlite3.Connection:
        db = sqlite3.connect(reading.uri(path, "rw"), uri=True, timeout=reading.WAIT_SECONDS, isolation_level=None)
        db.execute("PRAGMA journal_mode = DELETE")
        db.execute("PRAGMA synchronous = FULL")
        db.execute("PRAGMA foreign_keys = ON")
        return db

    return connect


def _begin(connection: Connection) -> None:
    """Takes the right to write at once, so that what is read inside still holds when it is written."""
    connection.exec_driver_sql("BEGIN IMMEDIATE")
