"""A farm that is open: the one door through which it changes, and what follows from it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, datetime
from functools import cached_property

from quailsched.edits.change import Change, apply
from quailsched.farm.records import Farm
from quailsched.season.season import Season
from quailsched.store.farm_file import FarmFile
from quailsched.store.journal import Entry


def utc_now() -> datetime:
    return datetime.now(UTC)


@dataclass(frozen=True, slots=True)
class Notice:
    """What has changed: the ids of the records, how ("apply", "undo", "redo"), and the label of the step."""

    ids: frozenset[str]
    how: str
    label: str


class OpenFarm:
    """A farm file with its season. Everything that changes the farm goes through ``apply``, ``undo``, ``redo``."""

    def __init__(self, file: FarmFile, clock: Callable[[], datetime] = utc_now) -> None:
        self.file = file
        self._clock = clock
        self._listeners: list[Callable[[Notice], None]] = []

    @property
    def farm(self) -> Farm:
        return self.file.farm

    @cached_property
    def season(self) -> Season:
        return Season(self.farm)

    def listen(self, listener: Callable[[Notice], None]) -> None:
        """Call ``listener`` once after each change, when farm and season are the new ones."""
        self._listeners.append(listener)

    def apply(self, change: Change) -> None:
        """Write ``change`` and become the farm after it. Raises StoreError; then nothing has changed."""
        if change.is_empty():
            return
        self.file.save(change, apply(self.farm, change), self._clock())
        self._tell(change, "apply")

    def undo(self) -> Change:
        """Take the last step back. Raises StoreError if there is none or it cannot be written."""
        change = self.file.undo()
        self._tell(change, "undo")
        return change

    def redo(self) -> Change:
        """Do the step that was taken back last again. Raises StoreError if there is none."""
        change = self.file.redo()
        self._tell(change, "redo")
        return change

    @property
    def undo_label(self) -> str | None:
        return self.file.undo_label

    @property
    def redo_label(self) -> str | None:
        return self.file.redo_label

    def history(self) -> list[Entry]:
        return self.file.history()

    def _tell(self, change: Change, how: str) -> None:
        self.__dict__.pop("season", None)
        notice = Notice(frozenset(touch.record_id for touch in change.touches), how, change.label)
        for listener in list(self._listeners):
            listener(notice)
