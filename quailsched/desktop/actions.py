"""Every command of the window, once: its text, keys, menu, and a sentence. Menus and help are made from it."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMainWindow, QMenu

from quailsched.quick import dataclass
from quailsched.words import say


@dataclass(frozen=True, slots=True)
class Command:
    name: str  # the method of the window, or of its file commands, that does it
    text: str
    menu: str
    keys: str = ""
    tip: str = ""
    parts_before: bool = False  # a line in the menu above it


COMMANDS = (
    Command("new_farm", "&New farm…", "&Farm", "Ctrl+N", "Begin your own farm in a file of its own"),
    Command("open_file", "&Open farm…", "&Farm", "Ctrl+O", "Open a farm file"),
    Command("show_example", "&Example farm", "&Farm", "", "Look at Pebble Bank, an invented farm"),
    Command(
        "write_calendar",
        "&Calendar file…",
        "&Farm",
        "Ctrl+K",
        "Write every chore into a file that phones and calendars read",
        True,
    ),
    Command("print_out", "&Print…", "&Farm", "", "The season on one page, or the chores of the coming weeks to tick"),
    Command("save_picture", "&Save a picture…", "&Farm", "", "The whole season as a page, a picture or a drawing"),
    Command("export_document", "E&xport everything…", "&Farm", "", "Write the whole farm as one JSON document"),
    Command("import_document", "&Import a document…", "&Farm", "", "Make a farm file from an exported document"),
    Command(
        "take_records", "Records &from a table…", "&Farm", "", "Take in a hatch log or an egg log, row by row", True
    ),
    Command("give_records", "Records as &tables…", "&Farm", "", "Write every kind of record as tables (CSV)"),
    Command("close", "&Quit", "&Farm", "Ctrl+Q", "", True),
    Command("undo", "&Undo", "&Change", "Ctrl+Z", "Take the last step back"),
    Command("redo", "&Redo", "&Change", "Ctrl+Shift+Z", "Do the step that was taken back again"),
    Command("show_history", "&History…", "&Change", "Ctrl+H", "Every step, when it was made, and going back to any"),
    Command("add_batch", "Add a &batch…", "&Change", "Ctrl+B", "Set eggs or bring birds in", True),
    Command("add_place", "Add a &place…", "&Change", "Ctrl+P", "A setter, hatcher, cabinet, brooder or pen"),
    Command("add_person", "Add a p&erson…", "&Change", "", "Somebody who does chores"),
    Command(
        "change_picked",
        "Chan&ge what is picked…",
        "&Change",
        "Ctrl+E",
        "Change the batch that is picked",
        True,
    ),
    Command("move_picked", "Mo&ve, split, another place…", "&Change", "Shift+F10", "All that dragging a band does"),
    Command("remove_picked", "Re&move what is picked…", "&Change", "Ctrl+Del", "Remove the batch that is picked"),
    Command(
        "accept_picked",
        "A&ccept the clash that is picked…",
        "&Change",
        "Ctrl+Shift+A",
        "Live with a clash to watch, with a word of why; it comes back when it grows",
    ),
    Command("record_count", "Rec&ord a count…", "&Change", "F8", "What has died, hatched, was laid or fed", True),
    Command(
        "record_any",
        "Record by a &form…",
        "&Change",
        "Ctrl+R",
        "A count of any sort: what has happened, and when",
        True,
    ),
    Command("show_counts", "Coun&ts…", "&Change", "Ctrl+Shift+R", "All counts, to correct and to take back"),
    Command(
        "part_picked", "Ma&ke a part of it a batch…", "&Change", "", "Birds of the batch that is picked part from it"
    ),
    Command(
        "join_picked", "&Join another batch…", "&Change", "", "Birds of the batch that is picked go over to another"
    ),
    Command("add_chore", "&Add a chore…", "&Change", "Ctrl+Shift+N", "One of your own, once or again and again"),
    Command("change_farm", "Farm: name, units, &nights…", "&Change", "", "What there is one of in a farm"),
    Command("start_trial", "&Start a trial…", "&Trials", "Ctrl+Shift+T", "Try changes beside the plan"),
    Command("look_at_plan", "The &plan", "&Trials", "Ctrl+Shift+P", "Look at the plan again", True),
    Command("compare_trial", "&Compare with the plan", "&Trials", "Ctrl+Shift+C", "The two side by side", True),
    Command("rename_trial", "&Rename…", "&Trials", "", "Another name for the trial"),
    Command("keep_trial", "&Keep it", "&Trials", "", "The plan becomes as the trial is, in one step"),
    Command("drop_trial", "&Drop it", "&Trials", "", "The trial goes, the plan stays as it is"),
    Command("show_season", "&Season", "&Show", "Ctrl+1", "Lanes of places over time"),
    Command("show_today", "Toda&y", "&Show", "Ctrl+2", "What is due, to tick and to count"),
    Command("show_next_set", "Ne&xt set", "&Show", "Ctrl+3", "When the next eggs can go in, and how many"),
    Command("show_books", "&Books", "&Show", "Ctrl+4", "Hatch, lay, feed and work by what was counted"),
    Command("show_setup", "Se&tup", "&Show", "Ctrl+5", "Places, people, batches and figures as tables"),
    Command("swap_grouping", "Lan&es of places or batches", "&Show", "Ctrl+L", "One lane a place or a batch", True),
    Command("swap_table", "Season as a table, o&r drawn", "&Show", "Ctrl+Shift+L", "The same season in rows of words"),
    Command("swap_side", "&Details beside it, or not", "&Show", "F9", "The clashes ahead, or what is picked"),
    Command("find_something", "&Find…", "&Show", "Ctrl+F", "A batch, a place or a day, by typing"),
    Command("go_to_day", "&Go to a day…", "&Show", "Ctrl+G", "By typing it: 12 Apr, in 3 weeks, week 15"),
    Command("fit_season", "Fit t&he season", "&Show", "Ctrl+0", "The whole season in view"),
    Command("go_today", "Go to today", "&Show", "Ctrl+T", "Bring today into view"),
    Command("next_clash", "&Next clash", "&Show", "F3", "Go to the next clash"),
    Command("previous_clash", "&Previous clash", "&Show", "Shift+F3", "Go to the clash before"),
    Command("zoom_in", "Zoom &in", "&Show", "Ctrl++", "Fewer days, wider"),
    Command("zoom_out", "Zoom &out", "&Show", "Ctrl+-", "More days, narrower"),
    Command("show_week", "A week in view", "&Show", "Alt+1"),
    Command("show_month", "A month in view", "&Show", "Alt+2"),
    Command("show_quarter", "Three months in view", "&Show", "Alt+3"),
    Command("show_year", "A year in view", "&Show", "Alt+4"),
    Command("show_three_years", "Three years in view", "&Show", "Alt+5"),
    Command("show_auto", "&Colours as the desktop", "&Show", "", "Light or dark as the desktop is set", True),
    Command("show_light", "&Light", "&Show"),
    Command("show_dark", "Dar&k", "&Show"),
    Command("tell_in_the_morning", "A &morning notice…", "&Show", "", "How many chores are due, told by the desktop"),
    Command("choose_language", "L&anguage…", "&Show", "", "English, or another language there is"),
    Command("how_to_begin", "How to &begin", "&Help", "F1", "Your own farm in five steps"),
    Command("show_keys", "&Keys and mouse", "&Help", "", "What the keys and the mouse do"),
    Command("about", "&About Quailsched", "&Help", "", "Version and cautions"),
)


def make_actions(window: QMainWindow, menus: Mapping[str, QMenu], *owners: object) -> dict[str, QAction]:
    """The commands in ``menus`` of ``window``, each connected to the method of its name in ``window`` or an owner."""
    actions: dict[str, QAction] = {}
    for command in COMMANDS:
        menu = menus[command.menu]
        if command.parts_before:
            menu.addSeparator()
        action = QAction(say(command.text), window)
        if command.keys:
            action.setShortcut(QKeySequence(command.keys))
        if command.tip:
            action.setStatusTip(say(command.tip))
            action.setToolTip(say(command.tip))
        method = _method(command.name, window, *owners)
        action.triggered.connect(_without_checked(method))
        menu.addAction(action)
        actions[command.name] = action
    return actions


def _method(name: str, *owners: object) -> Callable[[], object]:
    method: Callable[[], object] = next(getattr(owner, name) for owner in owners if hasattr(owner, name))
    return method


def _without_checked(method: Callable[[], object]) -> Callable[[], None]:
    """Qt passes whether the action is checked; our methods take nothing."""

    def call() -> None:
        method()

    return call
