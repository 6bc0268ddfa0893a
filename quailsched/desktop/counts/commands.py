"""Commands about counts: recording, the list of them, groups; all are steps of the plan, and tell what they moved."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from quailsched.edits.change import Change
from quailsched.farm.records import Batch
from quailsched.season.season import Season
from quailsched.words import say

if TYPE_CHECKING:
    from quailsched.desktop.main_window import MainWindow


class CountCommands:
    """For one window. Forms come in when they are asked for."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window

    def asked(self, what: str, batch_id: str) -> None:
        """Do what the page of a batch asks for (``FactsBox.asked``, or "undo")."""
        asked: dict[str, Callable[[], None]] = {
            "record": lambda: self.record(batch_id),
            "counts": lambda: self.counts(batch_id),
            "part": lambda: self.part(batch_id),
            "join": lambda: self.join(batch_id),
            "undo": self._window.undo,
        }
        asked[what]()

    def _picked_id(self) -> str:
        """The batch that is picked, if the plan has it; else "", the farm."""
        batch_id = self._window.season.picked.batch_id or ""
        return batch_id if isinstance(self._window.opened.plan.find(batch_id), Batch) else ""

    def record_any(self) -> None:
        self.record(self._picked_id())

    def show_counts(self) -> None:
        self.counts(self._picked_id())

    def part_picked(self) -> None:
        self.part(self._picked_id())

    def join_picked(self) -> None:
        self.join(self._picked_id())

    def record(self, of_id: str) -> None:
        from quailsched.desktop.counts.count_form import CountForm
        from quailsched.desktop.forms.record_form import ask

        window = self._window
        ask(CountForm(window, window.opened, window.today, self._in_plan(of_id), self.take))

    def counts(self, of_id: str) -> None:
        from quailsched.desktop.counts.counts_dialog import CountsDialog

        window = self._window
        dialog = CountsDialog(window, window.opened, window.today, self._in_plan(of_id), self.take)
        dialog.exec()
        dialog.deleteLater()

    def part(self, batch_id: str) -> None:
        from quailsched.desktop.counts.group_forms import PartForm

        self._leave(batch_id, PartForm)

    def join(self, batch_id: str) -> None:
        from quailsched.desktop.counts.group_forms import JoinForm

        self._leave(batch_id, JoinForm)

    def _leave(self, batch_id: str, form: Callable[..., object]) -> None:
        from quailsched.desktop.counts.group_forms import LeaveForm
        from quailsched.desktop.forms.record_form import ask

        window, batch = self._window, self._window.opened.plan.find(batch_id)
        if not isinstance(batch, Batch):
            window.say(say("Pick a batch of the plan first."))
            return
        if not _has_birds(window.opened.plan_season, batch, window):
            window.say(say("{batch} has no birds today.", batch=batch.name))
            return
        made = form(window, window.opened, window.today, batch, self.take)
        assert isinstance(made, LeaveForm)
        ask(made)

    def _in_plan(self, of_id: str) -> str:
        return of_id if self._window.opened.plan.find(of_id) is not None else ""

    def take(self, change: Change) -> None:
        """Write a step of the plan, whatever is looked at, and tell what it moved. Raises FarmError, StoreError."""
        from quailsched.report.what_moved import what_moved

        window = self._window
        before = window.opened.plan_checked
        window.opened.apply_to_plan(change)
        moved = what_moved(before, window.opened.plan_checked, window.today)
        if moved:
            window.season.show_moved(moved)
            what = moved[0].sentence
            if len(moved) > 1:
                what = say("{what}, and {number} more", what=what, number=len(moved) - 1)
            window.say(say("{label}. Moved: {what}.", label=change.label, what=what))


def _has_birds(season: Season, batch: Batch, window: MainWindow) -> bool:
    return season.birds(batch, window.today) > 0
