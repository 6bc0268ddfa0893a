"""A window, or an open farm, on the example around 6 April 2027."""

from datetime import date
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.theme import LIGHT, show_theme
from quailsched.session.farms import make_example, make_farm
from quailsched.session.open_farm import OpenFarm

TODAY = date(2027, 4, 6)


def leave_undone(work: object, done: object) -> None:
    """Slow work beside the window is not started; the tests that want it say so."""


@pytest.fixture
def today() -> date:
    return TODAY


@pytest.fixture
def opened(tmp_path: Path) -> OpenFarm:
    return make_example(tmp_path / "Pebble Bank.quail", TODAY)


@pytest.fixture
def empty(tmp_path: Path) -> OpenFarm:
    return make_farm(tmp_path / "Empty.quail", "Thistle Yard")


def complete(window: MainWindow) -> None:
    """Let everything come that follows the first picture; what happens before that is looked at in test_later."""
    while window.later.step():
        pass


def shown_window(opened: OpenFarm, qtbot: QtBot, qapp: object, size: tuple[int, int] = (1280, 800)) -> MainWindow:
    """A window on a farm with all that follows its first picture."""
    show_theme(qapp, LIGHT)  # type: ignore[arg-type]
    made = MainWindow(opened, TODAY, leave_undone)
    qtbot.addWidget(made)
    made.resize(*size)
    with qtbot.waitExposed(made):
        made.show()
    complete(made)
    return made


@pytest.fixture
def window(opened: OpenFarm, qtbot: QtBot, qapp: object) -> MainWindow:
    return shown_window(opened, qtbot, qapp)
