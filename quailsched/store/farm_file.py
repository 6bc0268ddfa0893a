"""A farm file: opened, changed one transaction at a time, undone and redone. One thread owns it.

What stands in memory is replaced only after the file has it; a failure leaves both as they were.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Iterable
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING, Self

from quailsched.farm.records import Farm
from quailsched.store.errors import StoreError, told_as_store_error
from quailsched.store.reading import Contents, contents_of, published_in
from quailsched.words import say

if TYPE_CHECKING:
    from quailsched.edits.change import Change, Touch
    from quailsched.store.journal import Entry
    from quailsched.store.published import Published, PublishedEntry
    from quailsched.store.writing import Transaction, Writer


class FarmFile:
    """The farm in one file, and its history. Make one with ``create`` or ``open``."""

    def __init__(self, path: Path, contents: Contents) -> None:
        self.path = path
        self._contents = contents
        self._writer: Writer | None = None

    @classmethod
    def create(cls, path: Path, farm: Farm, published: Iterable[PublishedEntry] = ()) -> Self:
        """A new file that holds ``farm``. Raises StoreError, and leaves nothing, if it cannot be made."""
        from quailsched.store.published import published_of

        path = Path(path)
        entries = [published_of(entry) for entry in published]
        with told_as_store_error(path, say("cannot be made")):
            if os.path.lexists(path):
                raise StoreError(_is_there(path))
            _make(path, farm, entries)
        return cls.open(path)

    @classmethod
    def open(cls, path: Path) -> Self:
        """The farm of an existing file. Raises StoreError if it is refused; the file is left as it is."""
        path = Path(path).absolute()  # so that even "." has a name
        return cls(path, contents_of(path))

    @property
    def farm(self) -> Farm:
        return self._contents.farm

    @property
    def undo_label(self) -> str | None:
        """The label of the step that ``undo`` takes back; None if there is none."""
        cursor = self._contents.cursor
        return self._contents.steps[cursor - 1].label if cursor else None

    @property
    def redo_label(self) -> str | None:
        """The label of the step that ``redo`` does again; None if there is none."""
        cursor, steps = self._contents.cursor, self._contents.steps
        return steps[cursor].label if cursor < len(steps) else None

    def history(self) -> list[Entry]:
        """Every step, oldest first, those that are undone at the end."""
        from quailsched.store.journal import Entry

        cursor = self._contents.cursor
        return [Entry(step.label, step.at, step.number > cursor) for step in self._contents.steps]

    def save(self, change: Change, farm_after: Farm, at: datetime) -> None:
        """Writes ``change`` and its place in the history; steps that were undone are dropped.

        ``farm_after`` is the farm with the change applied, ``at`` the moment, with an offset. Raises
        StoreError if it could not be written, ValueError if the change does not lead there.
        """
        _check_fits(change, self.farm, farm_after)
        if at.tzinfo is None:
            raise ValueError("the moment of a change needs its offset from UTC")
        moment = at.astimezone(UTC)
        touches = tuple(touch for touch in change.touches if touch.before != touch.after)
        if touches:
            self._write(lambda transaction: self._saved(transaction, change, touches, farm_after, moment))

    def undo(self) -> Change:
        """Takes the last step back and returns the change that did so. Raises StoreError if it cannot."""
        if self.undo_label is None:
            raise StoreError(say("There is nothing to undo."))
        cursor = self._contents.cursor
        return self._replay(lambda transaction: transaction.change_of(cursor).inverse(), cursor - 1)

    def redo(self) -> Change:
        """Does the step that was undone last again and returns its change. Raises StoreError if it cannot."""
        if self.redo_label is None:
            raise StoreError(say("There is nothing to redo."))
        cursor = self._contents.cursor
        return self._replay(lambda transaction: transaction.change_of(cursor + 1), cursor + 1)

    def go_to(self, step: int) -> Change:
        """Takes back or does again all steps between, so that ``step`` is the last that is not undone (0: none is).

        One transaction: all of it or nothing. Returns what has changed, without a label. Raises StoreError if it
        cannot be written, ValueError for a step that the history does not have.
        """
        from quailsched.edits.change import Change

        cursor = self._contents.cursor
        if not 0 <= step <= len(self._contents.steps):
            raise ValueError(f"there are steps 0 to {len(self._contents.steps)}, not {step}")

        def all_between(transaction: Transaction) -> Change:
            if step < cursor:
                changes = [transaction.change_of(number).inverse() for number in range(cursor, step, -1)]
            else:
                changes = [transaction.change_of(number) for number in range(cursor + 1, step + 1)]
            return Change("", _net(touch for change in changes for touch in change.touches))

        return Change("", ()) if step == cursor else self._replay(all_between, step)

    def published(self) -> dict[str, Published]:
        """The calendar entries that were given out, by UID."""
        return published_in(self.path)

    def save_published(self, entries: Iterable[PublishedEntry]) -> None:
        """Makes ``entries`` what was given out; only those that differ are written."""
        from quailsched.store.published import published_of

        wanted = {entry.uid: published_of(entry) for entry in entries}
        present = self.published()
        gone = present.keys() - wanted.keys()
        changed = [entry for uid, entry in wanted.items() if present.get(uid) != entry]

        def publish(transaction: Transaction) -> Contents:
            transaction.publish(changed, gone)
            return self._contents

        if gone or changed:
            self._write(publish)

    def _saved(
        self, transaction: Transaction, change: Change, touches: tuple[Touch, ...], farm: Farm, at: datetime
    ) -> Contents:
        from quailsched.edits.change import Change
        from quailsched.store.journal import Step, joined

        transaction.touch(touches)
        steps, cursor = self._contents.steps[: self._contents.cursor], self._contents.cursor
        whole = Change(change.label, touches, change.merge_key)
        is_last = cursor == len(self._contents.steps)
        if steps and is_last and steps[-1].takes(change, at):
            whole = joined(transaction.change_of(cursor), whole)
            steps, cursor = steps[:-1], cursor - 1
        if whole.touches:
            step = Step(cursor + 1, whole.label, at, whole.merge_key)
            transaction.write_step(step, whole)
            steps = (*steps, step)
        else:
            transaction.forget_steps(cursor + 1)
        return Contents(farm, steps, len(steps), self._contents.stamp)

    def _replay(self, change_in: Callable[[Transaction], Change], cursor: int) -> Change:
        from quailsched.edits.change import apply

        done: list[Change] = []

        def replay(transaction: Transaction) -> Contents:
            change = change_in(transaction)
            farm = apply(self.farm, change)
            transaction.touch(change.touches)
            transaction.stand_at(cursor)
            done.append(change)
            return Contents(farm, self._contents.steps, cursor, self._contents.stamp)

        self._write(replay)
        return done[0]

    def _write(self, work: Callable[[Transaction], Contents]) -> None:
        with told_as_store_error(self.path, say("could not be written, nothing was changed")):
            from quailsched.store.writing import Writer

            if self._writer is None:
                self._writer = Writer(self.path)
            with self._writer.write(self._contents.stamp) as (transaction, stamp):
                after = work(transaction)
        self._contents = Contents(after.farm, after.steps, after.cursor, stamp)


def _net(touches: Iterable[Touch]) -> tuple[Touch, ...]:
    """What many touches come to: each record as it was before the first and is after the last of its own."""
    from quailsched.edits.change import Touch

    merged: dict[str, Touch] = {}
    for touch in touches:
        first = merged.get(touch.record_id, touch)
        merged[touch.record_id] = Touch(first.before, touch.after)
    return tuple(touch for touch in merged.values() if touch.before != touch.after)


def _check_fits(change: Change, before: Farm, after: Farm) -> None:
    for touch in change.touches:
        if before.find(touch.record_id) != touch.before or after.find(touch.record_id) != touch.after:
            raise ValueError(f"“{change.label}” does not lead from this farm to that one: {touch.record_id}")


def _make(path: Path, farm: Farm, published: list[Published]) -> None:
    """Writes a whole file beside ``path`` and only then gives it its name."""
    from quailsched.store.new_files import give_name, passing_name, settle_folder
    from quailsched.store.writing import write_new

    beside = passing_name(path)
    try:
        write_new(beside, farm.records(), published)
        give_name(beside, path)
    except FileExistsError:
        raise StoreError(_is_there(path)) from None
    finally:
        beside.unlink(missing_ok=True)
        beside.with_name(beside.name + "-journal").unlink(missing_ok=True)
    settle_folder(path.absolute().parent)


def _is_there(path: Path) -> str:
    return say("{path} is there already and was left as it is; choose another name, or open it.", path=path.name)
