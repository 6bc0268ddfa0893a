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


@pytest.mark.parametrize("number", [PLACES, PEOPLE, BATCHES])
def test_each_model_keeps_the_rules_of_qt(view: SetupView, number: int, qtmodeltester: ModelTester) -> None:
    view.tabs.setCurrentIndex(number)
    qtmodeltester.check(view.pages[number].model)


def test_the_batches_say_what_the_canvas_shows(view: SetupView) -> None:
    view.tabs.setCurrentIndex(BATCHES)
    model = view.pages[BATCHES].model
    cells = [model.index(1, column).data() for column in range(model.columnCount())]
    # Bracken: 132 eggs set on 22 March, in the tray since 6 April (day 15), hatch on 8 April (day 17).
    assert cells[:7] == [
        "Bracken", "Coturnix standard", "22 Mar 2027", "132 eggs", "8 Apr 2027", "Hatching tray", "lockdown",
    ]  # fmt: skip


def test_numbers_sort_as_numbers(view: SetupView) -> None:
    view.tabs.setCurrentIndex(BATCHES)
    page = view.pages[BATCHES]
    page.table.sortByColumn(3, Qt.SortOrder.AscendingOrder)
    shown = page.table.model()
    numbers = [int(shown.index(row, 3).data().split()[0]) for row in range(shown.rowCount())]
    assert numbers == sorted(numbers)
    assert numbers[0] < 60 < 100 < numbers[-1]


def test_keys_ask_for_the_same_as_the_buttons(view: SetupView, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> None:
    asked: list[tuple[str, str]] = []
    monkeypatch.setattr(
        module, "edit_person", lambda _p, _o, _t, record=None: asked.append(("edit", record.name if record else "new"))
    )
    monkeypatch.setattr(module, "remove_record", lambda _p, _o, key: asked.append(("remove", key)))
    view.tabs.setCurrentIndex(PEOPLE)
    table = view.pages[PEOPLE].table
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


def test_an_empty_table_says_what_to_do(view: SetupView) -> None:
    view.tabs.setCurrentIndex(PEOPLE)
    for person in list(view.opened.farm.people):
        view.opened.apply(remove(view.opened.farm, person.id))
    page = view.pages[PEOPLE]
    assert page.empty.isVisibleTo(view)
    assert not page.table.isVisibleTo(view)
    view.opened.apply(put(view.opened.farm, Person("p", "Mia")))
    assert page.table.isVisibleTo(view)
