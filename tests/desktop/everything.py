"""Every part of the window one after the other, each as it stands on the screen: for checks that must miss none."""

from collections.abc import Iterator
from datetime import date

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractSpinBox, QApplication, QDialog, QHeaderView, QLabel, QWidget
from pytestqt.qtbot import QtBot

from quailsched.desktop.forms.batch_form import BatchForm
from quailsched.desktop.forms.farm_form import FarmForm
from quailsched.desktop.forms.figure_form import FigureForm
from quailsched.desktop.forms.person_form import PersonForm
from quailsched.desktop.forms.place_form import PlaceForm
from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.paper.papers import Paper
from quailsched.desktop.paper.print_form import PrintForm
from quailsched.desktop.reading import Reading
from quailsched.desktop.season_canvas.scene import Picked
from quailsched.desktop.setup.setup_view import SetupView
from quailsched.desktop.tasks import run_at_once
from quailsched.farm.records import Role
from quailsched.season.clashes import clashes_of
from quailsched.season.severity import Severity, severity_of
from quailsched.session import trials
from quailsched.session.open_farm import OpenFarm
from tests.desktop.conftest import complete


def everything(opened: OpenFarm, empty: OpenFarm, today: date, qtbot: QtBot) -> Iterator[tuple[str, QWidget]]:
    """What is looked at, and the window or form in which it is; ``empty`` is a farm without anything."""
    window = MainWindow(opened, today, run_at_once)
    qtbot.addWidget(window)
    window.resize(1280, 720)
    with qtbot.waitExposed(window):
        window.show()
    complete(window)
    for where in _of_the_window(window, today):
        settle()
        yield where, window
    window.show_farm(empty)
    for where in _of_an_empty_farm(window):
        settle()
        yield f"empty farm, {where}", window
    window.resize(500, 360)
    settle()
    yield "a narrow window", window
    window.close()
    for form in _forms(opened, today):
        qtbot.addWidget(form)
        form.show()
        settle()
        yield form.windowTitle(), form
        form.close()


def controls(root: QWidget) -> list[QWidget]:
    """What takes the keys in ``root``, as it is on the screen; not the inner parts that Qt makes its controls of."""
    found = []
    for part in (root, *root.findChildren(QWidget)):
        takes_keys = part.focusPolicy() & Qt.FocusPolicy.TabFocus == Qt.FocusPolicy.TabFocus
        is_inner = isinstance(part, QHeaderView | QLabel) or isinstance(part.parent(), QAbstractSpinBox)
        if takes_keys and part.isVisible() and not is_inner and part.focusProxy() is None and part is not root:
            found.append(part)
    return found


def settle() -> None:
    for _ in range(4):  # texts that wrap take their height in the second round
        QApplication.processEvents()


def _of_the_window(window: MainWindow, today: date) -> Iterator[str]:
    opened, season = window.opened, window.season
    yield "all clashes"
    season.pick(Picked(batch_id=opened.farm.batches[2].id))
    yield "a batch"
    clashes = clashes_of(opened.season, today)
    for severity in (Severity.STOPS, Severity.WATCH):
        season.canvas.show_clash(next(clash for clash in clashes if severity_of(clash.kind) is severity))
        yield f"a clash: {severity}"
    window.commands.clashes.accept_picked()
    yield "accepting a clash"
    season.swap_table()
    yield "the table of the season"
    season.swap_table()
    window.find_box.setFocus()
    yield "finding"
    window.show_next_set()
    yield "the next set"
    yield from _tabs(window.setup_view, window)
    trials.start(opened, "A trial")
    window.show_season()
    window.nudge(opened.farm.batches[3].id, 5)
    window.commands.trials.compare_trial()
    yield "a trial beside the plan"


def _of_an_empty_farm(window: MainWindow) -> Iterator[str]:
    window.show_season()
    yield "season"
    window.season.swap_table()
    yield "table"
    window.season.swap_table()
    window.show_next_set()
    yield "next set"
    yield from _tabs(window.setup_view, window)
    window.show_season()


def _tabs(view: SetupView, window: MainWindow) -> Iterator[str]:
    window.show_setup()
    for tab in range(view.tabs.count()):
        view.tabs.setCurrentIndex(tab)
        yield f"setup, {view.tabs.tabText(tab)}"


def _forms(opened: OpenFarm, today: date) -> Iterator[QDialog]:
    farm = opened.farm
    for role in Role:
        form = PlaceForm(None, opened, today, farm.places[0])
        form.role.setCurrentIndex(list(Role).index(role))
        yield form
    yield PersonForm(None, opened, today, farm.people[0])
    yield BatchForm(None, opened, today, farm.batches[0])
    yield BatchForm(None, opened, today)
    yield FarmForm(None, opened)
    for key in ("floor_cm2", "incubation_days"):
        yield FigureForm(None, opened, "coturnix", key)
    yield PrintForm(None, Paper.A4)
    yield Reading(None, "Keys and mouse", "Text")
