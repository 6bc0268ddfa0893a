"""A batch's page and the commands: what has moved with its way back, plan and fact, buttons, menu and keys."""

from __future__ import annotations

from datetime import UTC, date, datetime

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import QApplication, QDialog, QLabel, QPushButton
from pytestqt.qtbot import QtBot

from quailsched.desktop.counts.count_form import CountForm
from quailsched.desktop.counts.counts_dialog import CountsDialog
from quailsched.desktop.counts.group_forms import JoinForm, PartForm
from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.season_canvas.scene import Picked
from quailsched.desktop.today.moved_box import MovedBox
from quailsched.edits.counts import record
from quailsched.edits.trials import start_trial
from quailsched.farm.facts import Count, Sort
from quailsched.farm.records import Batch

LEFT, CTRL = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.ControlModifier
NOW = datetime(2027, 4, 6, 7, tzinfo=UTC)


def named(window: MainWindow, name: str) -> Batch:
    return next(batch for batch in window.opened.plan.batches if batch.name == name)


@pytest.fixture
def aster(window: MainWindow) -> Batch:
    """52 Asters hatched, a day late; it is picked."""
    found = named(window, "Aster")
    count = Count("hatch", Sort.HATCHED, date(2027, 3, 19), NOW, 52, found.id)
    window.opened.apply_to_plan(record(window.opened.plan, count, window.today))
    window.season.pick(Picked(batch_id=found.id))
    return named(window, "Aster")


def texts(window: MainWindow) -> list[str]:
    return [label.text() for label in window.season.inspector._page.findChildren(QLabel)]


def press(window: MainWindow, text: str, qtbot: QtBot) -> None:
    buttons = window.season.inspector._page.findChildren(QPushButton)
    button = next(one for one in buttons if one.text() == text)
    qtbot.mouseClick(button, LEFT)


def in_dialog(act: object) -> list[QDialog]:
    """What ``act`` is given: the dialog that opens next, which runs its own loop."""
    seen: list[QDialog] = []

    def go() -> None:
        dialog = QApplication.activeModalWidget()
        if not isinstance(dialog, QDialog):  # the key that opens it is on its way
            QTimer.singleShot(5, go)
            return
        seen.append(dialog)
        act(dialog)  # type: ignore[operator]

    QTimer.singleShot(0, go)
    return seen


def test_plan_and_fact_stand_on_the_page_of_the_batch(window: MainWindow, aster: Batch) -> None:
    told = texts(window)
    assert "Plan and fact" in told
    assert "52 chicks on 19 Mar (a day later, 7 fewer)\nplan: 59 chicks on 18 Mar" in told
    assert "96 set, 52 hatched, 44 left" in told
    assert "Fri 19 Mar 2027, 52 chicks" in told
    window.season.pick(Picked(batch_id=named(window, "Dill").id))
    assert "Plan and fact" not in texts(window)  # nothing is known of it


def test_what_a_count_has_moved_is_told_and_taken_back_there(window: MainWindow, aster: Batch, qtbot: QtBot) -> None:
    before = window.opened.plan

    def type_in(form: CountForm) -> None:
        form.sort.setCurrentIndex(form.sort.findData(Sort.COUNTED))
        form.number.setValue(40)
        form.save()  # it is odd that so many are missing
        form.save()

    seen = in_dialog(type_in)
    press(window, "Record…", qtbot)
    assert isinstance(seen[0], CountForm)
    assert len(window.season.inspector.findChildren(MovedBox)) == 1
    assert any("Aster: 40 birds, not" in text for text in texts(window))
    assert "Moved: Aster: 40 birds" in window.statusBar().currentMessage()
    press(window, "Undo", qtbot)
    assert window.opened.plan == before
    assert window.season.inspector._page.findChildren(MovedBox) == []


def test_the_next_step_puts_what_has_moved_away(window: MainWindow, aster: Batch, qtbot: QtBot) -> None:
    in_dialog(lambda form: (form.number.setValue(3), form.save()))
    press(window, "Record…", qtbot)
    assert window.season.inspector._page.findChildren(MovedBox)
    window.nudge(named(window, "Elder").id, 1)
    assert window.season.inspector._page.findChildren(MovedBox) == []


def test_a_count_goes_into_the_plan_while_a_trial_is_looked_at(window: MainWindow, aster: Batch, qtbot: QtBot) -> None:
    opened = window.opened
    opened.apply_to_plan(start_trial(opened.plan, "Later", "trial"))
    opened.look_at("trial")
    in_dialog(lambda form: (form.number.setValue(3), form.save()))
    press(window, "Record…", qtbot)
    assert [count.number for count in opened.plan.counts if count.sort is Sort.DIED] == [3]
    assert opened.trial is not None
    assert opened.trial.records == ()
    assert window.season.inspector._page.findChildren(MovedBox)  # what has moved in the plan is told here too


@pytest.mark.parametrize(
    ("text", "kind"),
    [("Record…", CountForm), ("Counts…", CountsDialog), ("Part off…", PartForm), ("Join…", JoinForm)],
)
def test_the_buttons_open_what_they_say(
    text: str, kind: type[QDialog], window: MainWindow, aster: Batch, qtbot: QtBot
) -> None:
    seen = in_dialog(lambda dialog: dialog.reject())
    press(window, text, qtbot)
    assert isinstance(seen[0], kind)


def test_a_key_records_of_what_is_picked(window: MainWindow, aster: Batch, qtbot: QtBot) -> None:
    with qtbot.waitActive(window):
        window.activateWindow()
    seen = in_dialog(lambda dialog: dialog.reject())
    qtbot.keyClick(window, Qt.Key.Key_R, CTRL)
    assert isinstance(seen[0], CountForm)
    assert seen[0].of.currentData() == aster.id


@pytest.mark.parametrize(("name", "keys"), [("record_any", "Ctrl+R"), ("show_counts", "Ctrl+Shift+R")])
def test_with_nothing_picked_counts_are_of_the_farm(name: str, keys: str, window: MainWindow, aster: Batch) -> None:
    window.season.pick(Picked())
    seen = in_dialog(lambda dialog: dialog.reject())
    action = window.actions_by_name[name]
    action.trigger()
    assert isinstance(seen[0], CountForm | CountsDialog)
    assert seen[0].of.currentData() == ""
    assert action.shortcut().toString() == keys


def test_groups_need_a_batch_with_birds(window: MainWindow, aster: Batch) -> None:
    window.season.pick(Picked(batch_id=named(window, "Dill").id))
    parts = [b for b in window.season.inspector._page.findChildren(QPushButton) if b.text() == "Part off…"]
    assert not parts[0].isEnabled()
    assert parts[0].toolTip() == "It has no birds today."
    window.actions_by_name["join_picked"].trigger()
    assert window.statusBar().currentMessage() == "Dill has no birds today."
    window.season.pick(Picked())
    assert not window.actions_by_name["part_picked"].isEnabled()


def test_day_0_of_a_batch_with_facts_stays_and_its_buttons_say_why(window: MainWindow, aster: Batch) -> None:
    buttons = {one.text(): one for one in window.season.inspector._page.findChildren(QPushButton)}
    for text in ("A day earlier", "A day later"):
        assert not buttons[text].isEnabled()
        assert buttons[text].toolTip() == "1 Mar stays, for counts were recorded since"
        assert buttons[text].accessibleDescription() == buttons[text].toolTip()
    window.season.pick(Picked(batch_id=named(window, "Dill").id))
    buttons = {one.text(): one for one in window.season.inspector._page.findChildren(QPushButton)}
    assert buttons["A day later"].isEnabled()
    assert buttons["A day later"].toolTip() == ""
