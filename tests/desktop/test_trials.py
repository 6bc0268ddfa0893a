"""Trials in the window, by real keys and mouse."""

from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QFileDialog, QInputDialog, QLabel, QMenu, QPushButton
from pytestqt.qtbot import QtBot

from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.season_canvas.scene import Picked
from quailsched.desktop.tasks import run_at_once
from quailsched.edits.proposals import set_number
from quailsched.edits.records import put, remove
from quailsched.session import trials

LEFT = Qt.MouseButton.LeftButton
ALT = Qt.KeyboardModifier.AltModifier


def batch_id(window: MainWindow, name: str) -> str:
    return next(batch.id for batch in window.opened.plan.batches if batch.name == name)


def words_of(widget: object) -> str:
    labels = widget.findChildren(QLabel)  # type: ignore[attr-defined]
    buttons = widget.findChildren(QPushButton)  # type: ignore[attr-defined]
    return "\n".join(w.text() for w in [*labels, *buttons])


def bar_button(window: MainWindow, text: str) -> QPushButton:
    return next(b for b in window.stage.bar.findChildren(QPushButton) if b.text() == text)


def in_menu(window: MainWindow) -> list[tuple[str, bool]]:
    """The texts of the Trials menu that stand for the plan and a trial, and whether they are marked."""
    plan = window.actions_by_name["look_at_plan"]
    menu = next(one for one in plan.associatedObjects() if isinstance(one, QMenu))
    return [(action.text(), action.isChecked()) for action in menu.actions() if action.isCheckable()]


@pytest.fixture
def in_trial(window: MainWindow, monkeypatch: pytest.MonkeyPatch) -> MainWindow:
    """A window that looks at the trial "More ducks?", with slow work done at once."""
    window.season._run = run_at_once
    monkeypatch.setattr(QInputDialog, "getText", lambda *_, **__: (" More ducks? ", True))
    window.actions_by_name["start_trial"].trigger()
    return window


def test_a_trial_is_started_changed_compared_and_kept(in_trial: MainWindow, qtbot: QtBot) -> None:
    window, plan, elder = in_trial, in_trial.opened.plan, batch_id(in_trial, "Elder")
    assert window.windowTitle() == "Pebble Bank, trial “More ducks?” – Quailsched"
    assert window.stage.bar.isVisible()
    assert "Trial “More ducks?”" in words_of(window.stage.bar)
    canvas = window.season.canvas
    assert canvas.scene().ghosts == ()  # nothing is otherwise yet
    window.season.pick(Picked(batch_id=elder))
    canvas.setFocus()
    for _ in range(6):
        qtbot.keyClick(canvas, Qt.Key.Key_Right, ALT)
    start = plan.batch(elder).start
    assert window.opened.farm.batch(elder).start == start + timedelta(days=6)
    assert window.opened.plan.batch(elder).start == start
    bands = [b for lane in canvas.scene().lanes for b in lane.content.bands.items if b.batch_id == elder]
    ghosts = canvas.scene().ghosts
    assert min(band.start for band in bands) == start + timedelta(days=6)
    assert min(ghost.band.start for ghost in ghosts) == start
    assert {ghost.label for ghost in ghosts} == {"Elder (plan)"}
    qtbot.mouseClick(bar_button(window, "Compare"), LEFT)
    assert window.season.is_comparing
    told = words_of(window.season.comparison)
    assert "Elder set 6 days later, on 30 May" in told
    assert "Clashes ahead" in told
    assert "Promises and money are not compared" in told
    qtbot.keyClick(canvas, Qt.Key.Key_Right, ALT)  # the comparison follows
    QApplication.processEvents()
    assert "Elder set 7 days later, on 31 May" in words_of(window.season.comparison)
    qtbot.mouseClick(bar_button(window, "Keep it"), LEFT)
    assert window.opened.plan.batch(elder).start == start + timedelta(days=7)
    assert window.opened.plan.trials == ()
    assert window.windowTitle() == "Pebble Bank – Quailsched"
    assert not window.stage.bar.isVisible()
    assert not window.season.is_comparing
    assert canvas.scene().ghosts == ()
    qtbot.keyClick(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert window.opened.plan.batch(elder).start == start
    assert [trial.name for trial in window.opened.plan.trials] == ["More ducks?"]


def test_the_menu_switches_between_the_plan_and_its_trials(in_trial: MainWindow) -> None:
    window = in_trial
    first = window.opened.trial_id
    trials.start(window.opened, "Eggs & bacon")
    assert in_menu(window) == [("The &plan", False), ("Eggs && bacon", True), ("More ducks?", False)]
    next(action for action in window.commands.trials._listed if action.text() == "More ducks?").trigger()
    assert window.opened.trial_id == first
    assert in_menu(window) == [("The &plan", False), ("Eggs && bacon", False), ("More ducks?", True)]
    window.actions_by_name["look_at_plan"].trigger()
    window.actions_by_name["look_at_plan"].trigger()  # once more changes nothing, not even the mark
    assert in_menu(window)[0] == ("The &plan", True)
    assert window.opened.trial_id is None
    for name in ("compare_trial", "rename_trial", "keep_trial", "drop_trial"):
        assert not window.actions_by_name[name].isEnabled()


def test_a_trial_is_renamed_and_a_taken_name_is_told(
    in_trial: MainWindow, monkeypatch: pytest.MonkeyPatch, qtbot: QtBot
) -> None:
    window = in_trial
    monkeypatch.setattr(QInputDialog, "getText", lambda *_, **__: ("Fewer ducks", True))
    window.actions_by_name["rename_trial"].trigger()
    assert "“Fewer ducks”" in window.windowTitle()
    said: list[str] = []
    monkeypatch.setattr("PySide6.QtWidgets.QMessageBox.warning", lambda _parent, _title, text: said.append(text))
    window.actions_by_name["start_trial"].trigger()
    assert said == ["trial, name: “Fewer ducks” cannot be used; another trial has it already, each needs its own."]
    monkeypatch.setattr(QInputDialog, "getText", lambda *_, **__: ("Never mind", False))
    window.actions_by_name["start_trial"].trigger()
    assert len(window.opened.plan.trials) == 1


def test_dropping_it_goes_back_to_the_plan(in_trial: MainWindow, qtbot: QtBot) -> None:
    window, plan = in_trial, in_trial.opened.plan
    window.take_change(remove(window.opened.farm, batch_id(window, "Fern")))
    assert "16" not in window.top.clashes.text()
    qtbot.mouseClick(bar_button(window, "Drop it"), LEFT)
    assert window.opened.trial_id is None
    assert window.opened.plan.batches == plan.batches
    assert window.statusBar().currentMessage() == "Drop trial “More ducks?”. Ctrl+Z takes it back."


def test_what_does_not_fit_any_more_is_said_in_the_bar(in_trial: MainWindow) -> None:
    window = in_trial
    opened = window.opened
    fern, trial_id = batch_id(window, "Fern"), opened.trial_id
    opened.apply(set_number(opened.farm, fern, 40))
    opened.look_at(None)
    plan = opened.plan.batch(fern)
    opened.apply(remove(opened.farm, fern))
    opened.apply(put(opened.farm, replace(plan, id="another")))  # again a Fern, but not the one of the trial
    opened.look_at(trial_id)
    assert "another batch has it already" in window.stage.bar.misfits.text()
    assert window.stage.bar.misfits.isVisible()


def test_what_the_plan_and_the_trial_have_both_changed_is_said_in_the_bar_before_it_is_kept(
    in_trial: MainWindow, qtbot: QtBot
) -> None:
    window, opened = in_trial, in_trial.opened
    fern, trial_id = batch_id(window, "Fern"), in_trial.opened.trial_id
    opened.apply(set_number(opened.farm, fern, 40))
    opened.look_at(None)
    opened.apply(set_number(opened.farm, fern, 30))
    opened.look_at(trial_id)
    assert window.stage.bar.misfits.text() == (
        "Changed in both – Fern: the plan has another number by now; kept, the trial brings its own."
    )
    assert window.stage.bar.misfits.isVisible()
    qtbot.mouseClick(bar_button(window, "Keep it"), LEFT)
    assert opened.plan.batch(fern).number == 40


def test_going_to_a_clash_of_the_comparison_shows_why(in_trial: MainWindow, qtbot: QtBot) -> None:
    window = in_trial
    window.take_change(set_number(window.opened.farm, batch_id(window, "Clover"), 120))
    window.actions_by_name["compare_trial"].trigger()
    row = next(b for b in window.season.comparison.findChildren(QPushButton) if "Eased" in b.text())
    qtbot.mouseClick(row, LEFT)
    assert not window.season.is_comparing
    assert window.season.picked.clash is not None
    assert window.season.picked.clash.sentence in words_of(window.season.inspector)


def test_the_calendar_says_that_it_is_of_the_plan(
    in_trial: MainWindow, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(tmp_path / "x.ics"), ""))
    for batch in in_trial.opened.farm.batches:
        in_trial.take_change(remove(in_trial.opened.farm, batch.id))
    in_trial.actions_by_name["write_calendar"].trigger()
    assert "of the plan, not of the trial," in in_trial.statusBar().currentMessage()
    assert b"Bracken" in (tmp_path / "x.ics").read_bytes()


def test_another_farm_is_shown_as_its_plan(in_trial: MainWindow, empty: object) -> None:
    in_trial.show_farm(empty)  # type: ignore[arg-type]
    assert in_trial.windowTitle() == "Thistle Yard – Quailsched"
    assert not in_trial.stage.bar.isVisible()
    assert in_menu(in_trial) == [("The &plan", True)]
