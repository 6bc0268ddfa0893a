"""Commands of the Trials menu: start, switch, compare, rename, keep, drop. Asks for names; ``session`` does it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtGui import QAction, QActionGroup
from PySide6.QtWidgets import QInputDialog, QMenu

from quailsched.desktop.season_canvas.ghosts import Ghost, ghosts_of
from quailsched.farm.records import Batch
from quailsched.planner.compare import compare, differing
from quailsched.report.trials import misfit_lines
from quailsched.session import trials
from quailsched.words import say

if TYPE_CHECKING:
    from quailsched.desktop.main_window import MainWindow
    from quailsched.desktop.stage import TrialBar

_OF_A_TRIAL = ("compare_trial", "rename_trial", "keep_trial", "drop_trial")


class TrialCommands:
    """What is done with trials in one window. ``refresh`` keeps its bar, its menu and the comparison in step."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window
        self._listed: list[QAction] = []
        self._group = QActionGroup(window)

    def serve(self, bar: TrialBar) -> None:
        """Do what the buttons of ``bar`` ask for."""
        bar.compare_asked.connect(self.compare_trial)
        bar.keep_asked.connect(self.keep_trial)
        bar.drop_asked.connect(self.drop_trial)
        bar.back_asked.connect(self.look_at_plan)

    # commands

    def start_trial(self) -> None:
        name = self._ask_name(
            say("Start a trial"), say("What do you want to try?"), trials.free_name(self._window.opened.plan)
        )
        if name:
            self._window.attempt(lambda: trials.start(self._window.opened, name))

    def look_at_plan(self) -> None:
        self._window.opened.look_at(None)
        self.refresh()  # even if nothing has changed, so that the mark in the menu stays where it is

    def compare_trial(self) -> None:
        if self._window.opened.trial is not None:
            self._window.show_season()
            self._compare()

    def rename_trial(self) -> None:
        trial = self._window.opened.trial
        if trial is None:
            return
        name = self._ask_name(say("Rename the trial"), say("What is it called?"), trial.name)
        if name:
            self._window.attempt(lambda: trials.rename(self._window.opened, trial.id, name))

    def keep_trial(self) -> None:
        trial_id = self._window.opened.trial_id
        if trial_id is not None:
            self._window.attempt(lambda: trials.keep(self._window.opened, trial_id))

    def drop_trial(self) -> None:
        trial_id = self._window.opened.trial_id
        if trial_id is not None:
            self._window.attempt(lambda: trials.drop(self._window.opened, trial_id))

    # what the window shows

    def ghosts(self) -> tuple[Ghost, ...]:
        """The plan's bands of the batches that the trial has otherwise."""
        opened = self._window.opened
        if opened.trial is None:
            return ()
        pairs = differing(opened.plan, opened.farm)
        ids = {pair.plan.id for pair in pairs if isinstance(pair.plan, Batch) and _is_elsewhere(pair.plan, pair.trial)}
        return ghosts_of(opened.plan_season, ids, "plan")

    def refresh(self) -> None:
        opened, actions = self._window.opened, self._window.actions_by_name
        self._window.stage.show_trial(opened.trial, misfit_lines(opened.misfits, opened.overridden))
        for name in _OF_A_TRIAL:
            actions[name].setEnabled(opened.trial is not None)
        self._list_trials()
        if opened.trial is None:
            self._window.season.end_comparison()
        elif self._window.season.is_comparing:
            self._compare()

    def _compare(self) -> None:
        opened, today = self._window.opened, self._window.today
        plan, trial = opened.plan, opened.trial
        if trial is not None:
            self._window.season.show_comparison(trial.name, lambda: compare(plan, trial.id, today))

    def _list_trials(self) -> None:
        """The plan and every trial in the menu, a mark at the one that is looked at."""
        opened, actions = self._window.opened, self._window.actions_by_name
        plan, following = actions["look_at_plan"], actions["compare_trial"]
        menu = next(one for one in plan.associatedObjects() if isinstance(one, QMenu))
        for action in self._listed:
            menu.removeAction(action)
            action.deleteLater()
        self._listed = []
        self._group.addAction(plan)
        plan.setCheckable(True)
        plan.setChecked(opened.trial_id is None)
        line = menu.actions()[menu.actions().index(following) - 1]
        for trial in opened.plan.trials:
            action = QAction(trial.name.replace("&", "&&"), menu)
            action.setCheckable(True)
            action.setChecked(trial.id == opened.trial_id)
            action.setStatusTip(say("Look at the trial “{trial}”", trial=trial.name))
            action.triggered.connect(lambda _checked=False, trial_id=trial.id: self._window.opened.look_at(trial_id))
            self._group.addAction(action)
            menu.insertAction(line, action)
            self._listed.append(action)

    def _ask_name(self, title: str, question: str, name: str) -> str:
        """The name that was typed; "" if the keeper thought better of it."""
        given, is_given = QInputDialog.getText(self._window, title, question, text=name)
        return given.strip() if is_given else ""


def _is_elsewhere(plan: Batch, trial: object) -> bool:
    """Whether the bands of a batch are others in the trial; a name or a note does not move them."""
    if not isinstance(trial, Batch):
        return True
    return any(
        getattr(plan, name) != getattr(trial, name)
        for name in ("start", "number", "stays", "kind", "origin", "age_days")
    )
