"""Who asks for what in a window, and what does it: signals of its parts and the methods that they call.

Commands are looked up when they are called, as the window opens without them.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from quailsched.desktop.inspector import Inspector
    from quailsched.desktop.main_window import MainWindow
    from quailsched.desktop.season_table import SeasonTable


def connect(window: MainWindow) -> None:
    """Connect the parts of ``window``, those that are made later when they are."""
    window.rail.chosen.connect(window.show_view)
    window.rail.details_asked.connect(window.season.swap_side)
    window.find_box.chosen.connect(lambda match: window.commands.looks.found(match))
    window.find_box.left.connect(lambda: window.commands.looks.done_finding())
    window.stage.bar_made.connect(lambda bar: window.commands.trials.serve(bar))
    season = window.season
    canvas = season.canvas
    canvas.batch_opened.connect(window.change_batch)
    canvas.place_opened.connect(window.change_place)
    canvas.nudged.connect(window.nudge)
    canvas.change_asked.connect(window.take_change)
    canvas.remove_asked.connect(window.remove)
    canvas.picked.connect(window.enable)
    season.clashes_counted.connect(window.top.show_clashes)
    season.way_chosen.connect(lambda way: window.take_change(way.change))
    season.inspector_made.connect(lambda inspector: _connect_inspector(window, inspector))
    season.table_made.connect(lambda table: _connect_table(window, table))
    season.frees_up_made.connect(lambda strip: strip.place_opened.connect(window.change_place))


def _connect_inspector(window: MainWindow, inspector: Inspector) -> None:
    inspector.change_asked.connect(window.change_batch)
    inspector.remove_asked.connect(window.remove)
    inspector.nudge_asked.connect(window.nudge)
    inspector.accept_asked.connect(lambda clash, reason: window.commands.clashes.accept(clash, reason))
    inspector.take_back_asked.connect(lambda clash: window.commands.clashes.take_back(clash))
    inspector.facts_asked.connect(lambda what, batch_id: window.commands.facts.asked(what, batch_id))
    inspector.batch_wanted.connect(lambda: window.commands.records.add_batch())
    inspector.place_wanted.connect(lambda: window.commands.records.add_place())
    inspector.next_set_wanted.connect(window.show_next_set)


def _connect_table(window: MainWindow, table: SeasonTable) -> None:
    table.add_asked.connect(lambda: window.commands.records.add_batch())
    table.change_asked.connect(window.change_batch)
    table.remove_asked.connect(window.remove)
