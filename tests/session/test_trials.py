"""An open farm that is looked at as a trial: what it shows, writes and gives out."""

from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest

from quailsched.edits.batches import change_place, shift
from quailsched.edits.records import remove
from quailsched.farm.check import faults_of
from quailsched.farm.faults import FarmError
from quailsched.session import trials
from quailsched.session.farms import export_farm, import_farm, make_example, open_farm
from quailsched.session.open_farm import Notice, OpenFarm
from quailsched.session.sharing import give_calendar
from quailsched.store.farm_file import FarmFile

TODAY = date(2027, 4, 6)


@pytest.fixture
def opened(tmp_path: Path) -> OpenFarm:
    return make_example(tmp_path / "x.quail", TODAY)


def batch_id(opened: OpenFarm, name: str) -> str:
    return next(batch.id for batch in opened.plan.batches if batch.name == name)


def test_a_trial_is_changed_and_the_plan_is_not(opened: OpenFarm) -> None:
    plan, elder = opened.farm, batch_id(opened, "Elder")
    trial_id = trials.start(opened, "More ducks?")
    assert opened.trial_id == trial_id
    assert opened.farm == plan  # it starts as the plan is
    opened.apply(shift(opened.farm, elder, 6))
    assert opened.farm.batch(elder).start == plan.batch(elder).start + timedelta(days=6)
    assert opened.season.farm == opened.farm
    assert opened.plan.batch(elder) == plan.batch(elder)
    assert opened.plan_season.farm.batches == opened.plan.batches
    opened.look_at(None)
    assert opened.farm == opened.plan
    assert opened.season is opened.plan_season


def test_trials_are_kept_in_the_file_and_in_its_document(opened: OpenFarm, tmp_path: Path) -> None:
    trials.start(opened, "More ducks?")
    opened.apply(remove(opened.farm, batch_id(opened, "Fern")))
    trials.start(opened, "Later")
    opened.apply(shift(opened.farm, batch_id(opened, "Elder"), 9))
    again = open_farm(opened.file.path)
    assert again.trial_id is None
    assert [trial.name for trial in again.plan.trials] == ["Later", "More ducks?"]
    assert again.plan == opened.plan
    export_farm(opened, tmp_path / "x.json")
    back = import_farm(tmp_path / "x.json", tmp_path / "y.quail")
    assert back.plan == opened.plan


def test_undo_and_redo_go_through_plan_and_trial_alike(opened: OpenFarm) -> None:
    before, elder = opened.plan, batch_id(opened, "Elder")
    trial_id = trials.start(opened, "More ducks?")
    opened.apply(shift(opened.farm, elder, 6))
    assert opened.undo_label is not None
    assert opened.undo_label.endswith("(trial “More ducks?”)")
    opened.undo()
    assert opened.trial_id == trial_id
    assert opened.farm.batch(elder) == before.batch(elder)
    opened.undo()  # takes back the start of the trial that is looked at
    assert opened.trial_id is None
    assert opened.farm == before
    opened.redo()
    opened.redo()
    assert opened.trial_id is None
    opened.look_at(trial_id)
    assert opened.farm.batch(elder).start == before.batch(elder).start + timedelta(days=6)


def test_keeping_makes_it_the_plan_in_one_step(opened: OpenFarm) -> None:
    elder, fern = batch_id(opened, "Elder"), batch_id(opened, "Fern")
    trial_id = trials.start(opened, "More ducks?")
    opened.apply(shift(opened.farm, elder, 6))
    opened.apply(remove(opened.farm, fern))
    wanted, with_trial = opened.farm, opened.plan
    trials.keep(opened, trial_id)
    assert opened.trial_id is None
    assert opened.farm == opened.plan == wanted
    opened.undo()
    assert opened.plan == with_trial


def test_dropping_leaves_the_plan(opened: OpenFarm) -> None:
    plan = opened.plan
    trial_id = trials.start(opened, "More ducks?")
    opened.apply(shift(opened.farm, batch_id(opened, "Elder"), 6))
    trials.drop(opened, trial_id)
    assert opened.trial_id is None
    assert opened.plan == plan


def test_the_season_of_the_plan_follows_the_plan_and_outlives_steps_of_a_trial(opened: OpenFarm) -> None:
    elder, first = batch_id(opened, "Elder"), opened.plan_season
    trial_id = trials.start(opened, "More ducks?")
    opened.apply(shift(opened.farm, elder, 6))
    assert opened.plan_season.farm == opened.plan
    assert opened.plan_season.farm.batches == first.farm.batches
    trials.keep(opened, trial_id)
    assert opened.plan_season.farm == opened.plan
    opened.undo()
    assert opened.plan_season.farm.batches == opened.plan.batches == first.farm.batches


def test_nudges_in_a_trial_are_one_step(tmp_path: Path) -> None:
    path = make_example(tmp_path / "x.quail", TODAY).file.path
    opened = OpenFarm(FarmFile.open(path), lambda: datetime(2027, 4, 6, 12, tzinfo=UTC))
    trials.start(opened, "More ducks?")
    for _ in range(3):
        opened.apply(shift(opened.farm, batch_id(opened, "Elder"), 1))
    assert len(opened.history()) == 2  # the start of the trial, and the nudges
    for _ in range(3):
        opened.apply(shift(opened.farm, batch_id(opened, "Elder"), -1))
    assert len(opened.history()) == 1  # there and back again


def test_the_calendar_is_of_the_plan(opened: OpenFarm, tmp_path: Path) -> None:
    give_calendar(opened, tmp_path / "plan.ics", TODAY)
    trials.start(opened, "More ducks?")
    for batch in opened.farm.batches:
        opened.apply(remove(opened.farm, batch.id))
    give_calendar(opened, tmp_path / "trial.ics", TODAY)
    assert (tmp_path / "trial.ics").read_bytes() == (tmp_path / "plan.ics").read_bytes()


def test_looking_at_something_else_is_told_once(opened: OpenFarm) -> None:
    told: list[Notice] = []
    trial_id = trials.start(opened, "More ducks?")
    opened.listen(told.append)
    opened.look_at(trial_id)
    assert told == []  # it is looked at already
    opened.look_at(None)
    opened.look_at(trial_id)
    assert [(notice.how, notice.label) for notice in told] == [
        ("look", "the plan"),
        ("look", "the trial “More ducks?”"),
    ]
    with pytest.raises(KeyError):
        opened.look_at("nobody")
    assert opened.trial_id == trial_id


def test_a_trial_that_no_longer_fits_is_still_looked_at(opened: OpenFarm) -> None:
    ark = next(place for place in opened.plan.places if place.name == "Grass ark")
    trial_id = trials.start(opened, "Without the ark")
    for name in ("Aster", "Bracken", "Clover", "Elder"):  # whose cocks go there
        opened.apply(remove(opened.farm, batch_id(opened, name)))
    opened.apply(remove(opened.farm, ark.id))
    opened.look_at(None)
    opened.apply(remove(opened.farm, batch_id(opened, "Aster")))
    opened.look_at(trial_id)
    assert opened.misfits == ()  # nobody else uses the ark
    opened.look_at(None)
    opened.apply(change_place(opened.farm, batch_id(opened, "Dill"), 3, ark.id))
    opened.look_at(trial_id)
    assert len(opened.misfits) == 1
    assert "“Grass ark”" in opened.misfits[0].sentence()
    assert faults_of(opened.farm) == []
    with pytest.raises(FarmError, match="Grass ark"):
        trials.keep(opened, trial_id)


def test_free_names_count_up(opened: OpenFarm) -> None:
    assert trials.free_name(opened.plan) == "Trial 1"
    trials.start(opened, "trial 1")
    assert trials.free_name(opened.plan) == "Trial 2"
