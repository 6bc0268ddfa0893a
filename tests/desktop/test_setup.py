"""The tables of the Setup view."""

from datetime import date

import pytest
from PySide6.QtCore import Qt
from pytestqt.modeltest import ModelTester
from pytestqt.qtbot import QtBot

from quailsched.desktop.setup import setup_view as module
from quailsched.desktop.setup.setup_view import BATCHES, FIGURES, PEOPLE, PLACES, SetupView
from quailsched.edits.batches import shift
from quailsched.edits.records import put, remove
from quailsched.farm.records import FigureChoice, Person
from quailsched.session.open_farm import OpenFarm


@pytest.fixture
def view(opened: OpenFarm, today: date, qtbot: QtBot) -> SetupView:
    made = SetupView(opened, today)
    made.set_farm(opened)
    qtbot.addWidget(made)
    made.resize(1000, 600)
    made.show()
    return made


@pytest.mark.parametrize("number", [PLACES, PEOPLE, BATCHES, FIGURES])
def test_each_model_keeps_the_rules_of_qt(view: SetupView, number: int, qtmodeltester: ModelTester) -> None:
    view.tabs.setCurrentIndex(number)
    qtmodeltester.check([*view.pages, view.figures][number].model)


def test_the_batches_say_what_the_canvas_shows(view: SetupView) -> None:
    view.tabs.setCurrentIndex(BATCHES)
    model = view.pages[BATCHES].model
    cells = [model.index(1, column).data() for column in range(model.columnCount())]
    # Bracken: 132 eggs set on 22 March, in the tray since 6 April (day 15), hatch on 8 April (day 17).
    # It moves out on day 46, when it is 29 days old: 7 May.
    assert cells[:8] == [
        "Bracken", "Coturnix standard", "22 Mar 2027", "132 eggs", "8 Apr 2027", "7 May 2027", "Hatching tray",
        "lockdown",
    ]  # fmt: skip


def test_numbers_sort_as_numbers(view: SetupView) -> None:
    view.tabs.setCurrentIndex(BATCHES)
    page = view.pages[BATCHES]
    page.table.sortByColumn(3, Qt.SortOrder.AscendingOrder)
    shown = page.table.model()
    numbers = [int(shown.index(row, 3).data().split()[0]) for row in range(shown.rowCount())]
    assert numbers == sorted(numbers)
    assert numbers[0] < 60 < 100 < numbers[-1]


def test_figures_sort_as_numbers_and_curves_after_them(view: SetupView, qtbot: QtBot) -> None:
    view.tabs.setCurrentIndex(FIGURES)
    table = view.figures.table
    table.setCurrentIndex(table.model().index(0, 1))
    qtbot.keyClick(table, Qt.Key.Key_Up, Qt.KeyboardModifier.ControlModifier)
    shown = [table.model().index(row, 1).data() for row in range(table.model().rowCount())]
    numbers = [float(text) for text in shown if not text.startswith("a curve")]
    assert numbers == sorted(numbers)
    assert all(text.startswith("a curve") for text in shown[len(numbers) :])
    qtbot.keyClick(table, Qt.Key.Key_Down, Qt.KeyboardModifier.ControlModifier)
    assert table.model().index(0, 1).data().startswith("a curve")


def test_the_row_below_takes_the_place_of_one_that_was_removed(view: SetupView) -> None:
    view.tabs.setCurrentIndex(BATCHES)
    page = view.pages[BATCHES]
    second, third = view.opened.farm.batches[1:3]
    page.choose(second.id)
    view.opened.apply(remove(view.opened.farm, second.id))
    assert page.chosen() == third.id
    assert page.remove.isEnabled()


def test_what_was_added_is_selected(view: SetupView, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> None:
    def add(_parent: object, opened: OpenFarm, _today: date) -> str:
        opened.apply(put(opened.farm, Person("mia", "Mia")))
        return "mia"

    monkeypatch.setattr(module, "edit_person", add)
    view.tabs.setCurrentIndex(PEOPLE)
    qtbot.mouseClick(view.pages[PEOPLE].add, Qt.MouseButton.LeftButton)
    assert view.pages[PEOPLE].chosen() == "mia"


def test_a_double_click_changes_a_row(view: SetupView, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> None:
    asked: list[str] = []
    monkeypatch.setattr(module, "edit_place", lambda _p, _o, _t, record: asked.append(record.name))
    table = view.pages[PLACES].table
    middle = table.visualRect(table.model().index(2, 0)).center()
    qtbot.mouseClick(table.viewport(), Qt.MouseButton.LeftButton, pos=middle)
    qtbot.mouseDClick(table.viewport(), Qt.MouseButton.LeftButton, pos=middle)
    assert asked == ["Old cabinet"]


def test_what_a_cell_has_no_room_for_stands_below_the_table(view: SetupView) -> None:
    view.tabs.setCurrentIndex(BATCHES)
    page = view.pages[BATCHES]
    page.choose(view.opened.farm.batches[0].id)
    model = page.model
    assert f"Clashes ahead: {model.index(0, model.columnCount() - 1).data()}" in page.whole.text()


def test_a_view_follows_its_farm_once_and_only_while_it_is_seen(view: SetupView, opened: OpenFarm) -> None:
    view.set_farm(opened)
    resets: list[int] = []
    view.pages[PLACES].model.modelReset.connect(lambda: resets.append(1))
    opened.apply(put(opened.farm, Person("p", "Mia")))
    assert len(resets) == 1
    view.hide()
    opened.apply(put(opened.farm, Person("q", "Zoe")))
    assert len(resets) == 1
    view.tabs.setCurrentIndex(PEOPLE)
    view.show()
    assert view.pages[PEOPLE].model.row_of("q") is not None


def test_keys_ask_for_the_same_as_the_buttons(view: SetupView, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> None:
    asked: list[tuple[str, str]] = []
    monkeypatch.setattr(
        module, "edit_person", lambda _p, _o, _t, record=None: asked.append(("edit", record.name if record else "new"))
    )
    monkeypatch.setattr(module, "remove_record", lambda _p, _o, key: asked.append(("remove", key)))
    view.tabs.setCurrentIndex(PEOPLE)
    table = view.pages[PEOPLE].table
    with qtbot.waitActive(view):
        view.activateWindow()
    table.setFocus()
    table.selectRow(1)
    qtbot.keyClick(table, Qt.Key.Key_Return)
    qtbot.keyClick(table, Qt.Key.Key_Insert)
    qtbot.keyClick(table, Qt.Key.Key_Delete)
    leo = view.opened.farm.people[1]
    assert asked == [("edit", "Leo"), ("edit", "new"), ("remove", leo.id)]


def test_the_selection_stays_with_its_record_when_the_farm_changes(view: SetupView) -> None:
    view.tabs.setCurrentIndex(BATCHES)
    page = view.pages[BATCHES]
    dill = next(batch for batch in view.opened.farm.batches if batch.name == "Dill")
    page.choose(dill.id)
    view.opened.apply(shift(view.opened.farm, dill.id, 40))  # behind Elder now
    assert page.chosen() == dill.id


def test_a_replaced_figure_is_marked(view: SetupView) -> None:
    view.tabs.setCurrentIndex(FIGURES)
    row = view.figures.model.row_of("lockdown_day")
    assert row is not None
    assert view.figures.model.index(row, 4).data() == ""
    view.opened.apply(put(view.opened.farm, FigureChoice("own", "coturnix", "lockdown_day", 14)))
    assert view.figures.model.index(row, 1).data() == "14"
    assert view.figures.model.index(row, 4).data() == "your own"


def test_an_empty_table_says_what_to_do_and_takes_the_same_key(
    view: SetupView, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    view.tabs.setCurrentIndex(PEOPLE)
    for person in list(view.opened.farm.people):
        view.opened.apply(remove(view.opened.farm, person.id))
    page = view.pages[PEOPLE]
    assert page.empty.isVisibleTo(view)
    assert not page.table.isVisibleTo(view)
    asked: list[str] = []
    monkeypatch.setattr(module, "edit_person", lambda *_: asked.append("new"))
    with qtbot.waitActive(view):
        view.activateWindow()
    page.take_focus()
    qtbot.keyClick(page.add, Qt.Key.Key_Insert)
    assert asked == ["new"]
    view.opened.apply(put(view.opened.farm, Person("p", "Mia")))
    assert page.table.isVisibleTo(view)


SOURCE = 6


def test_a_wide_window_shows_long_cells_whole(view: SetupView, qtbot: QtBot) -> None:
    view.tabs.setCurrentIndex(FIGURES)
    view.resize(2600, 900)
    table = view.figures.table
    qtbot.waitUntil(table.isVisible)
    model = table.model()
    for column in range(SOURCE):  # of the sources some are longer than any screen is wide
        widest = max(table.sizeHintForIndex(model.index(row, column)).width() for row in range(model.rowCount()))
        assert table.columnWidth(column) >= widest, model.headerData(column, Qt.Orientation.Horizontal)
    view.resize(1150, 600)
    qtbot.waitUntil(lambda: table.horizontalScrollBar().maximum() == 0, timeout=1000)


def test_the_last_column_of_figures_is_not_cut_at_the_edge(view: SetupView, qtbot: QtBot) -> None:
    view.tabs.setCurrentIndex(FIGURES)
    view.resize(1150, 600)
    table = view.figures.table
    qtbot.waitUntil(table.isVisible)
    assert table.horizontalScrollBar().maximum() == 0
