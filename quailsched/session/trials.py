"""Starting, naming, keeping and dropping the trials of an open farm."""

from __future__ import annotations

from quailsched.edits import trials
from quailsched.farm.records import Farm
from quailsched.session.farms import new_id
from quailsched.session.open_farm import OpenFarm
from quailsched.words import say


def start(opened: OpenFarm, name: str) -> str:
    """A new trial, as the plan is now, which is looked at from here on; its id.

    Raises FarmError for a name that is empty or taken, StoreError if it cannot be written.
    """
    trial_id = new_id()
    opened.apply_to_plan(trials.start_trial(opened.plan, name, trial_id))
    opened.look_at(trial_id)
    return trial_id


def rename(opened: OpenFarm, trial_id: str, name: str) -> None:
    """Raises FarmError and StoreError as ``start``."""
    opened.apply_to_plan(trials.rename_trial(opened.plan, trial_id, name))


def keep(opened: OpenFarm, trial_id: str) -> None:
    """The plan becomes as the trial is. Raises FarmError if the trial does not fit the plan of today."""
    opened.apply_to_plan(trials.keep_trial(opened.plan, trial_id))


def drop(opened: OpenFarm, trial_id: str) -> None:
    opened.apply_to_plan(trials.drop_trial(opened.plan, trial_id))


def free_name(farm: Farm) -> str:
    """ "Trial 1", or the first number that is free."""
    taken = {trial.name.strip().casefold() for trial in farm.trials}
    return next(say("Trial {n}", n=n) for n in range(1, len(taken) + 2) if f"trial {n}" not in taken)
