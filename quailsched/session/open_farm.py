"""A farm that is open: the one door through which it changes, and what follows from it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, datetime
from functools import cached_property
from typing import TYPE_CHECKING

from quailsched.farm.records import Farm, Trial
from quailsched.quick import dataclass
from quailsched.season.clashes import Checked, checked
from quailsched.season.season import Season
from quailsched.store.farm_file import FarmFile
from quailsched.words import say

if TYPE_CHECKING:
    from quailsched.edits.change import Change
    from quailsched.edits.merging import Overridden
    from quailsched.edits.trials import Fitted
    from quailsched.farm.faults import Fault
    from quailsched.store.journal import Entry as Entry


def utc_now() -> datetime:
    return datetime.now(UTC)


@dataclass(frozen=True, slots=True)
class Notice:
    """What has changed: the ids of the records, how ("apply", "undo", "redo", "go", "look"), and the label of the step.

    "look": nothing has changed, but ``farm`` is now that of another trial, or the plan.
    """

    ids: frozenset[str]
    how: str
    label: str


class OpenFarm:
    """A farm file with its season. Everything that changes the farm goes through ``apply``, ``undo``, ``redo``.

    ``farm`` and ``season`` are what is looked at and changed: the plan, or the trial ``trial_id``. What is given
    to the outside world (calendars, documents, chores) is always of ``plan``.
    """

    def __init__(self, file: FarmFile, clock: Callable[[], datetime] = utc_now) -> None:
        self.file = file
        self.trial_id: str | None = None
        self._clock = clock
        self._listeners: list[Callable[[Notice], None]] = []
        self._checked: dict[str | None, Checked] = {}

    @property
    def plan(self) -> Farm:
        """What is meant to be done, with the trials that there are."""
        return self.file.farm

    @property
    def farm(self) -> Farm:
        return self.plan if self._fitted is None else self._fitted.farm

    @property
    def trial(self) -> Trial | None:
        """The trial that is looked at; None for the plan."""
        return None if self.trial_id is None else self._trial_in_plan(self.trial_id)

    @property
    def misfits(self) -> tuple[Fault, ...]:
        """What of the trial that is looked at does not fit the plan of today, and is left out of ``farm``."""
        return () if self._fitted is None else self._fitted.misfits

    @property
    def overridden(self) -> tuple[Overridden, ...]:
        """What both the plan and the trial that is looked at have changed; ``farm`` has it as the trial."""
        return () if self._fitted is None else self._fitted.overridden

    @cached_property
    def _fitted(self) -> Fitted | None:
        if self.trial_id is None:
            return None
        from quailsched.edits.trials import fitted

        return fitted(self.plan, self.trial_id)

    def _trial_in_plan(self, trial_id: str) -> Trial:
        from quailsched.edits.trials import trial_in

        return trial_in(self.plan, trial_id)

    @property
    def season(self) -> Season:
        return self.checked.season

    @property
    def checked(self) -> Checked:
        """The season with its clashes, looked at again only where the farm has changed."""
        return self._look_again(self.trial_id, self.farm)

    @property
    def plan_season(self) -> Season:
        """What follows from the plan."""
        return self.plan_checked.season

    @property
    def plan_checked(self) -> Checked:
        """The same, with its clashes."""
        return self._look_again(None, self.plan)

    def _look_again(self, trial_id: str | None, farm: Farm) -> Checked:
        last = self._checked.get(trial_id)
        if last is None or last.season.farm is not farm:
            last = self._checked[trial_id] = checked(Season(farm)) if last is None else last.after(farm)
        return last

    def listen(self, listener: Callable[[Notice], None]) -> None:
        """Call ``listener`` once after each change, when farm and season are the new ones."""
        self._listeners.append(listener)

    def look_at(self, trial_id: str | None) -> None:
        """Look at a trial from now on, or at the plan (None). Raises KeyError for an unknown trial."""
        if trial_id == self.trial_id:
            return
        name = "" if trial_id is None else self._trial_in_plan(trial_id).name
        label = say("the plan") if trial_id is None else say("the trial “{name}”", name=name)
        self.trial_id = trial_id
        self._forget("_fitted")
        self._call(Notice(frozenset(), "look", label))

    def apply(self, change: Change) -> None:
        """Write ``change`` of ``farm`` and become the farm after it. Raises StoreError; then nothing has changed."""
        if change.is_empty():
            return
        if self.trial_id is not None:
            from quailsched.edits.trials import change_in_trial

            change = change_in_trial(self.plan, self.trial_id, change)
        self.apply_to_plan(change)

    def apply_to_plan(self, change: Change) -> None:
        """Write ``change`` of the plan, or of its trials, whatever is looked at. Raises StoreError as ``apply``."""
        if change.is_empty():
            return
        from quailsched.edits.change import apply

        self.file.save(change, apply(self.plan, change), self._clock())
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

    def go_to(self, step: int) -> Change:
        """Take back, or do again, so many steps that ``step`` of the history is the last (0: as at its beginning).

        Raises StoreError if it cannot be written, ValueError for a step that there is not.
        """
        entries = self.file.history()
        change = self.file.go_to(step)
        label = entries[step - 1].label if step else say("the beginning of the history")
        self._tell(replace(change, label=label), "go")
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
        self._forget("_fitted")
        if self.trial_id is not None and not isinstance(self.plan.find(self.trial_id), Trial):
            self.trial_id = None  # kept, dropped, or its start was taken back
        self._call(Notice(frozenset(touch.record_id for touch in change.touches), how, change.label))

    def _forget(self, name: str) -> None:
        self.__dict__.pop(name, None)

    def _call(self, notice: Notice) -> None:
        for listener in list(self._listeners):
            listener(notice)
