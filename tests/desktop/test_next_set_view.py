"""The Next set view: a day is chosen by keys or mouse, and its eggs are set as one step."""

from collections.abc import Callable
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import QLocale, QPoint, Qt
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from quailsched.desktop.language import speak
from quailsched.desktop.main_window import NEXT_SET, MainWindow
from quailsched.desktop.tasks import run_at_once
from quailsched.edits.records import put
from quailsched.farm.records import Person, Span
from quailsched.season.clashes import clashes_of
from quailsched.session.farms import make_farm
from quailsched.session.open_farm import OpenFarm
from quailsched.words import ENGLISH, use
from tests.builders import ARK, BROODER, HATCHER, PEN, SETTER

TODAY = date(2027, 4, 6)


@pytest.fixture
def yard(tmp_path: Path) -> OpenFarm:
    """A farm with room, and nobody at home on the day after tomorrow."""
    opened = make_farm(tmp_path / "yard.quail", "Thistle Yard")
    away = Span(TODAY + timedelta(days=2), TODAY + timedelta(days=3), "market")
    for record in (SETTER, HATCHER, BROODER, PEN, ARK, Person("ann", "Ann", away=(away,))):
        opened.apply(put(opened.farm, replace(record)))
    return opened


@pytest.fixture
def window(yard: OpenFarm, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> MainWindow:
    monkeypatch.setattr("quailsched.desktop.next_set.view.DAYS", 10)
    made = MainWindow(yard, TODAY, run_at_once)
    qtbot.addWidget(made)
    made.resize(1280, 800)
    made.show()
    made.show_next_set()
    return made


def test_keys_and_mouse_choose_a_day(window: MainWindow, qtbot: QtBot) -> None:
    view = window.next_set
    view.landscape.choose(0)
    qtbot.keyClick(view.landscape, Qt.Key.Key_Right)
    assert view.landscape.accessibleDescription().startswith("7 Apr: ")
    assert view.button.text().startswith("Set ")
    qtbot.keyClick(view.landscape, Qt.Key.Key_Right)
    assert view.landscape.accessibleDescription() == "8 Apr: 0 eggs of 0"  # nobody is at home
    assert not view.button.isEnabled()
    chart = view.landscape._chart()
    qtbot.mouseClick(view.landscape, Qt.MouseButton.LeftButton, pos=QPoint(int(chart.right()) - 3, 120))
    assert view.landscape.accessibleDescription().startswith("15 Apr: ")


def test_setting_the_most_eggs_is_one_step_and_makes_no_clash(window: MainWindow, qtbot: QtBot) -> None:
    view = window.next_set
    view.landscape.choose(4)
    before, steps = window.opened.farm, len(window.opened.history())
    most = view.eggs.value()
    qtbot.mouseClick(view.button, Qt.MouseButton.LeftButton)
    (batch,) = window.opened.farm.batches
    assert (batch.name, batch.number, batch.start) == ("Aster", most, TODAY + timedelta(days=4))
    assert clashes_of(window.opened.season, TODAY) == ()
    assert len(window.opened.history()) == steps + 1
    assert view._days[4].eggs < most  # the landscape knows of the batch
    window.undo()
    assert window.opened.farm == before
    assert view._days[4].eggs == most


def test_the_keys_go_to_the_days_when_eggs_were_set(window: MainWindow, qtbot: QtBot) -> None:
    view = window.next_set
    view.landscape.choose(4)
    with qtbot.waitActive(window):
        window.activateWindow()
    view.button.setFocus()
    qtbot.keyClick(view.button, Qt.Key.Key_Space)
    assert len(window.opened.farm.batches) == 1
    assert view.landscape.hasFocus()
    qtbot.keyClick(view.landscape, Qt.Key.Key_Space)
    assert len(window.opened.farm.batches) == 1  # nothing more was set, and nothing taken back


def test_it_is_worked_out_only_where_it_is_seen(window: MainWindow, yard: OpenFarm) -> None:
    window.show_season()
    shown = window.next_set._days
    yard.apply(put(yard.farm, replace(BROODER, floor_cm2=4_000)))
    assert window.next_set._days is shown
    window.show_view(NEXT_SET)
    assert window.next_set._days is not shown
    assert max(one.eggs for one in window.next_set._days) < max(one.eggs for one in shown)


def test_the_point_is_dragged_to_fewer_eggs_and_never_above_the_most(window: MainWindow, qtbot: QtBot) -> None:
    view = window.next_set
    view.landscape.choose(4)
    most = view.eggs.value()
    chart, day_px = view.landscape._chart(), view.landscape._day_px()
    x = int(chart.left() + 4.5 * day_px)
    half = QPoint(x, int(view.landscape._y(most // 2)))
    qtbot.mousePress(view.landscape, Qt.MouseButton.LeftButton, pos=QPoint(x, int(view.landscape._y(most))))
    qtbot.mouseMove(view.landscape, half)
    qtbot.mouseRelease(view.landscape, Qt.MouseButton.LeftButton, pos=half)
    assert abs(view.eggs.value() - most // 2) <= 1
    assert view.button.text().startswith(f"Set {view.eggs.value()} eggs on ")
    qtbot.keyClick(view.landscape, Qt.Key.Key_Up)
    assert abs(view.eggs.value() - most // 2 - 1) <= 1
    qtbot.mouseClick(view.landscape, Qt.MouseButton.LeftButton, pos=QPoint(x, int(chart.top())))
    assert view.eggs.value() == most


def test_the_number_field_moves_the_point(window: MainWindow) -> None:
    view = window.next_set
    view.landscape.choose(4)
    view.eggs.setValue(view.eggs.value() - 3)
    assert view.landscape._eggs == view.eggs.value()


def test_the_batch_thought_of_is_an_outline_in_the_season_until_the_farm_changes(
    window: MainWindow, qtbot: QtBot
) -> None:
    window.next_set.landscape.choose(4)
    qtbot.mouseClick(window.next_set.look, Qt.MouseButton.LeftButton)
    ghosts = window.season.canvas.scene().ghosts
    assert {ghost.label for ghost in ghosts} == {"Aster (thought of)"}
    assert {ghost.band.place_id for ghost in ghosts} >= {"setter", "hatcher", "brooder"}
    assert window.opened.farm.batches == ()
    window.opened.apply(put(window.opened.farm, replace(BROODER, floor_cm2=18_000)))
    assert window.season.canvas.scene().ghosts == ()


def test_nothing_can_be_set_while_the_days_are_worked_out_anew(window: MainWindow, qtbot: QtBot) -> None:
    view, late = window.next_set, list[Callable[[], None]]()
    view.landscape.choose(4)
    view._run = lambda work, done: late.append(lambda: done(work()))
    qtbot.mouseClick(view.button, Qt.MouseButton.LeftButton)
    assert len(window.opened.farm.batches) == 1
    for part in (view.button, view.eggs, view.look):
        assert not part.isEnabled()
    view.landscape.choose(5)  # what is shown is still of the farm before
    qtbot.mouseClick(view.button, Qt.MouseButton.LeftButton)
    assert len(window.opened.farm.batches) == 1
    late.pop()()
    view.landscape.choose(4)
    assert view.button.isEnabled() == (view._days[4].eggs > 0)
    view.kind.setCurrentIndex(1)
    assert not view.button.isEnabled()
    late.pop()()
    assert {one.kind_id for one in view._days} == {"coturnix-heavy"}


def test_more_eggs_than_the_day_takes_cannot_be_typed(window: MainWindow, qtbot: QtBot) -> None:
    view = window.next_set
    view.landscape.choose(4)
    most = view.eggs.value()
    view.eggs.selectAll()
    qtbot.keyClicks(view.eggs, "99999")
    qtbot.keyClick(view.eggs, Qt.Key.Key_Return)
    assert view.eggs.value() == most


def test_the_outline_goes_with_the_next_set_and_stays_when_only_colours_change(
    window: MainWindow, qtbot: QtBot
) -> None:
    view = window.next_set
    view.landscape.choose(4)
    qtbot.mouseClick(view.look, Qt.MouseButton.LeftButton)
    first = window.season.canvas.scene().ghosts
    window.actions_by_name["show_dark"].trigger()
    assert [ghost.band.start for ghost in window.season.canvas.scene().ghosts] == [g.band.start for g in first]
    window.show_next_set()
    view.landscape.choose(6)
    window.show_season()
    assert window.season.canvas.scene().ghosts == ()
    window.actions_by_name["show_light"].trigger()


def test_so_few_eggs_that_they_would_clash_are_told_before_they_are_set(window: MainWindow, qtbot: QtBot) -> None:
    # Few birds are not calm in a pen of 6 m2. A keeper may want them all the same: the button says so, and can be used.
    view = window.next_set
    view.landscape.choose(4)
    assert "all the same" not in view.button.text()
    view.landscape.setFocus()
    view.eggs.selectAll()
    qtbot.keyClicks(view.eggs, "8")
    qtbot.keyClick(view.eggs, Qt.Key.Key_Return)
    assert view.button.text() == "Set 8 eggs on 10 Apr all the same"

    def told() -> list[str]:
        return [row.text() for row in view.findChildren(QLabel) if row.isVisible()]

    qtbot.waitUntil(lambda: "So few would clash" in told())
    assert "too few to be calm" in told()[told().index("So few would clash") + 1]
    qtbot.mouseClick(view.button, Qt.MouseButton.LeftButton)
    assert {clash.kind for clash in clashes_of(window.opened.season, TODAY)} == {"calm"}


def test_the_batch_that_is_thought_of_has_a_name_in_the_language_of_the_window(
    window: MainWindow, qapp: QApplication
) -> None:
    before = QLocale()
    speak(qapp, "de")
    try:
        view = MainWindow(window.opened, TODAY, run_at_once).next_set
        view.work_out()
        view.landscape.choose(4)
        told = [one.text() for one in view.findChildren(QLabel)]
        assert [text for text in told if "Neuer Satz" in text]
        assert not [text for text in told if "New batch" in text]
    finally:
        speak(qapp, "en")
        QLocale.setDefault(before)
        use(ENGLISH)
