"""Where there is nothing yet, every view tells what to do, and has the button that does it."""

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from quailsched.desktop.main_window import NEXT_SET, SEASON, MainWindow
from quailsched.desktop.setup.setup_view import BATCHES, PEOPLE, PLACES
from quailsched.desktop.tasks import run_at_once
from quailsched.desktop.theme import LIGHT, show_theme
from quailsched.edits.records import put
from quailsched.session.open_farm import OpenFarm
from tests.builders import ARK, BROODER, HATCHER, PEN, SETTER
from tests.desktop.conftest import TODAY

LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def asked(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """Which forms were opened, in their order; none is shown."""
    opened: list[str] = []
    for module in ("record_commands", "setup.setup_view"):
        for name in ("place", "batch", "person"):
            monkeypatch.setattr(f"quailsched.desktop.{module}.edit_{name}", lambda *_, name=name: opened.append(name))
    return opened


@pytest.fixture
def bare(empty: OpenFarm, qtbot: QtBot, qapp: object, monkeypatch: pytest.MonkeyPatch) -> MainWindow:
    """A window on a farm without places, batches and people."""
    monkeypatch.setattr("quailsched.desktop.next_set.view.DAYS", 10)
    show_theme(qapp, LIGHT)  # type: ignore[arg-type]
    made = MainWindow(empty, TODAY, run_at_once)
    qtbot.addWidget(made)
    made.resize(1280, 720)
    with qtbot.waitExposed(made):
        made.show()
    return made


def press(qtbot: QtBot, root: QWidget, text: str) -> None:
    """Click the one button in ``root`` that is seen and says ``text``."""
    QApplication.processEvents()  # what has just been put in is shown
    (button,) = (one for one in root.findChildren(QPushButton) if one.isVisible() and one.text() == text)
    qtbot.mouseClick(button, LEFT)


def words_of(root: QWidget) -> str:
    QApplication.processEvents()
    return "\n".join(one.text() for one in root.findChildren(QLabel) if one.isVisible())


def give_places(window: MainWindow, *places: object) -> None:
    for place in places:
        window.opened.apply(put(window.opened.farm, replace(place)))  # type: ignore[type-var, arg-type]


def test_the_season_of_a_farm_without_places_begins_with_one(bare: MainWindow, qtbot: QtBot, asked: list[str]) -> None:
    assert "Begin with your places" in words_of(bare.season.inspector)
    press(qtbot, bare.season.inspector, "Add a place")
    assert "No places yet." in words_of(bare.season.frees_up)
    press(qtbot, bare.season.frees_up, "Add a place")
    bare.season.swap_table()
    assert "and no places for them" in words_of(bare.season.table)
    press(qtbot, bare.season.table, "Add a place")
    assert asked == ["place"] * 3


def test_a_narrow_season_without_batches_tells_how_to_begin(
    window: MainWindow, empty: OpenFarm, qtbot: QtBot, asked: list[str]
) -> None:
    window.resize(560, 400)
    QApplication.processEvents()
    assert not window.season.side.isVisible()
    window.show_farm(empty)
    press(qtbot, window.season.inspector, "Add a place")
    assert asked == ["place"]


def test_with_places_the_season_asks_for_a_batch(bare: MainWindow, qtbot: QtBot, asked: list[str]) -> None:
    give_places(bare, SETTER, BROODER)
    press(qtbot, bare.season.inspector, "Add a batch")
    bare.season.swap_table()
    assert "No batches yet. Say how many" in words_of(bare.season.table)
    press(qtbot, bare.season.table, "Add a batch")
    assert asked == ["batch"] * 2


def test_the_tables_of_setup_begin_with_a_button(bare: MainWindow, qtbot: QtBot, asked: list[str]) -> None:
    bare.show_setup()
    view = bare.setup_view
    for tab, word in ((PLACES, "place"), (PEOPLE, "person")):
        view.tabs.setCurrentIndex(tab)
        assert "yet" in words_of(view.pages[tab])
        assert view.pages[tab].empty.button.hasFocus() or not bare.isActiveWindow()
        press(qtbot, view.pages[tab], f"Add a {word}")
    assert asked == ["place", "person"]


def test_batches_without_places_begin_with_a_place(bare: MainWindow, qtbot: QtBot, asked: list[str]) -> None:
    bare.show_setup()
    view = bare.setup_view
    view.tabs.setCurrentIndex(BATCHES)
    press(qtbot, view.pages[BATCHES], "Add a place")
    assert asked == ["place"]
    assert view.tabs.currentIndex() == PLACES  # where it will stand
    give_places(bare, SETTER)
    view.tabs.setCurrentIndex(BATCHES)
    press(qtbot, view.pages[BATCHES], "Add a batch")
    assert asked == ["place", "batch"]


def test_next_set_without_a_place_for_eggs_asks_for_one(bare: MainWindow, qtbot: QtBot, asked: list[str]) -> None:
    bare.show_next_set()
    assert "There is no place for eggs yet. Add a setter or a cabinet first." in words_of(bare.next_set)
    assert not bare.next_set.button.isVisible()
    press(qtbot, bare.next_set, "Add a place")
    assert asked == ["place"]
    give_places(bare, SETTER, HATCHER, BROODER, PEN, ARK)
    assert bare.next_set.button.isVisible()
    assert bare.next_set.state.text().startswith("Best: up to")


def test_next_set_tells_what_is_lacking_where_there_is_no_clash_to_solve(
    bare: MainWindow, qtbot: QtBot, asked: list[str]
) -> None:
    give_places(bare, SETTER, HATCHER, BROODER)  # and no pen: the birds have no place to go to
    bare.show_next_set()
    assert bare.next_set.state.text() == ("On no day can eggs be set without a clash. Each day tells what is lacking.")
    assert "have no place to go to" in words_of(bare.next_set)
    press(qtbot, bare.next_set, "Add a place")
    assert asked == ["place"]


@pytest.fixture
def busy(window: MainWindow, monkeypatch: pytest.MonkeyPatch) -> MainWindow:
    """The example in April, when on none of the next five days eggs can be set, in its Next set view."""
    monkeypatch.setattr("quailsched.desktop.next_set.view.DAYS", 5)
    window.next_set._run = run_at_once
    window.show_next_set()
    return window


def test_next_set_goes_to_a_clash_that_stands_in_the_way(busy: MainWindow, qtbot: QtBot) -> None:
    assert "Solve those that there are first" in words_of(busy.next_set)
    press(qtbot, busy.next_set, "Go to the next clash")
    assert busy.stack.currentIndex() == SEASON
    assert busy.season.picked.clash is not None


def test_next_set_shows_nothing_of_the_farm_before(busy: MainWindow, empty: OpenFarm) -> None:
    view = busy.next_set
    assert "At most" in words_of(view)
    view._run = lambda work, done: None  # the days of the other farm are not known yet
    busy.show_farm(empty)
    assert "At most" not in words_of(view)
    assert view._title.text() == ""
    assert view.button.text() == "Set eggs"
    assert not view.button.isEnabled()
    assert view.ghosts() == ()


def test_without_a_clash_the_way_goes_on_to_the_next_set(bare: MainWindow, qtbot: QtBot) -> None:
    give_places(bare, SETTER, HATCHER, BROODER, PEN, ARK)
    bare.show_next_set()
    press(qtbot, bare.next_set, bare.next_set.button.text())
    bare.show_season()
    assert "No clash ahead" in words_of(bare.season.inspector)
    press(qtbot, bare.season.inspector, "When can the next eggs go in?")
    assert bare.stack.currentIndex() == NEXT_SET
