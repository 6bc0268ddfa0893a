"""What a window gets after its first picture, in the order in which it is likely to be wanted.

Each step is short, so that the window answers in between; none of them is needed for anything to work, as all of it
is made or loaded when it is asked for. So nothing of the program may take a step for granted.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial
from importlib import import_module
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QApplication

from quailsched.desktop.icons import emblem, ratios_there_are

if TYPE_CHECKING:
    from quailsched.desktop.main_window import MainWindow

# Each is loaded with what it needs, in an order that lets no step take long.
_FOR_THE_PANEL = (
    "quailsched.outlook.likelihood",
    "quailsched.report.inspect",
    "quailsched.farm.check",
    "quailsched.edits.acceptances",
    "quailsched.desktop.acceptance_box",
    "quailsched.planner.moves",
    "quailsched.planner.ways_out",
    "quailsched.desktop.way_cards",
    "quailsched.desktop.clash_rows",
    "quailsched.desktop.inspector",
)
_FOR_THE_KEYS = (
    "quailsched.edits.trials",
    "quailsched.planner.compare",
    "quailsched.report.trials",
    "quailsched.desktop.forms.dates",
    "quailsched.desktop.forms.record_form",
    "quailsched.desktop.forms.batch_form",
    "quailsched.desktop.forms.place_form",
    "quailsched.desktop.record_commands",
    "quailsched.session.farms",
    "quailsched.desktop.file_commands",
    "quailsched.desktop.trial_commands",
    "quailsched.desktop.paper_commands",
    "quailsched.desktop.table_commands",
    "quailsched.desktop.all_commands",
    "quailsched.desktop.actions",
)
_FOR_TODAY = (
    "quailsched.chores.work_out",
    "quailsched.desktop.typed_days",
    "quailsched.report.what_moved",
    "quailsched.desktop.today.typed_count",
    "quailsched.desktop.today.steps",
    "quailsched.desktop.today.view",
)
_FOR_NEXT_SET = (
    "quailsched.planner.landscape",
    "quailsched.planner.next_set",
    "quailsched.desktop.next_set.view",
)
_FOR_SETUP = (
    "quailsched.desktop.setup.page",
    "quailsched.desktop.season_table",
    "quailsched.desktop.setup.setup_view",
)
_FOR_BOOKS = (
    "quailsched.outlook.batch_measures",
    "quailsched.report.measures",
    "quailsched.desktop.books.charts_page",
    "quailsched.desktop.books.books_view",
)
_FOR_THE_REST = (
    "quailsched.desktop.season_canvas.drag_session",
    "quailsched.desktop.season_canvas.menu",
    "quailsched.desktop.season_canvas.hover",
    "quailsched.desktop.season_canvas.dirty",
    "quailsched.desktop.season_canvas.morph",
    "quailsched.desktop.season_canvas.by_batch",
    "quailsched.desktop.finding",
    "quailsched.desktop.found_list",
    "quailsched.desktop.compare_panel",
    "quailsched.desktop.menu_icons",
    "quailsched.session.sharing",
    "quailsched.store.document_file",
)
MODULES = (*_FOR_THE_PANEL, *_FOR_THE_KEYS, *_FOR_TODAY, *_FOR_NEXT_SET, *_FOR_SETUP, *_FOR_BOOKS, *_FOR_THE_REST)


def steps(window: MainWindow) -> Iterator[Callable[[], object]]:
    """The steps for ``window``."""
    from quailsched.desktop.main_window import NEXT_SET, SETUP, TODAY

    yield lambda: window.season.frees_up
    yield lambda: window.dress(ratios_there_are())
    yield lambda: _hear(window)
    yield from _loading(_FOR_THE_PANEL)
    yield window.season.make_panel
    yield lambda: window.season.inspector
    yield _show_emblem
    yield from _loading(_FOR_THE_KEYS)
    yield lambda: window.actions_by_name
    yield window.dress
    yield from _loading(_FOR_TODAY)
    yield lambda: window.day_view
    yield lambda: window.put_in(TODAY)
    yield from _loading(_FOR_NEXT_SET)
    yield lambda: window.next_set
    yield lambda: window.put_in(NEXT_SET)
    yield from _loading(_FOR_SETUP)
    yield lambda: window.setup_view
    yield lambda: window.put_in(SETUP)
    yield lambda: window.setup_view.figures
    yield from _loading((*_FOR_BOOKS, *_FOR_THE_REST))


def _loading(names: tuple[str, ...]) -> Iterator[Callable[[], object]]:
    return (partial(import_module, name) for name in names)


def _hear(window: MainWindow) -> None:
    """A screen reader asks for nothing before the first picture stands."""
    from quailsched.desktop.season_canvas.heard import hear_again, hear_seasons

    hear_seasons()
    hear_again(window.season.canvas)


def _show_emblem() -> None:
    QApplication.setWindowIcon(emblem())
