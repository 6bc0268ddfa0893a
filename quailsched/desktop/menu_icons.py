"""Which command has which icon. Drawn when its menu opens (``menus``)."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMenu

from quailsched.desktop.icons import icon, size_beside
from quailsched.desktop.theme import current

PICTURES = {
    "new_farm": "new",
    "open_file": "open",
    "show_example": "example",
    "write_calendar": "calendar",
    "print_out": "print",
    "save_picture": "picture",
    "export_document": "export",
    "import_document": "import",
    "take_records": "import",
    "give_records": "table",
    "undo": "undo",
    "redo": "redo",
    "add_batch": "egg",
    "add_place": "place",
    "add_person": "person",
    "change_picked": "change",
    "remove_picked": "remove",
    "accept_picked": "accept",
    "record_count": "change",
    "add_chore": "new",
    "record_any": "record",
    "show_counts": "counts",
    "part_picked": "part",
    "join_picked": "join",
    "change_farm": "farm",
    "start_trial": "trial",
    "compare_trial": "compare",
    "rename_trial": "change",
    "keep_trial": "keep",
    "drop_trial": "drop",
    "show_season": "season",
    "show_today": "today",
    "show_next_set": "egg",
    "show_books": "books",
    "show_setup": "setup",
    "swap_grouping": "grouping",
    "swap_table": "table",
    "swap_side": "details",
    "find_something": "find",
    "go_to_day": "calendar",
    "fit_season": "fit",
    "go_today": "today",
    "next_clash": "next-clash",
    "previous_clash": "previous-clash",
    "zoom_in": "zoom-in",
    "zoom_out": "zoom-out",
    "show_auto": "desktop",
    "show_light": "light",
    "show_dark": "dark",
    "choose_language": "language",
    "how_to_begin": "help",
    "show_keys": "keys",
    "about": "about",
}


def draw_icons(menu: QMenu, actions: Mapping[str, QAction]) -> None:
    """Give ``actions`` of ``menu``, by their names, their icons in the inks of the theme that is shown."""
    size_px = size_beside(menu.fontMetrics())
    for name, action in actions.items():
        if name in PICTURES:
            action.setIcon(icon(PICTURES[name], size_px, active_ink=current().on_good))
