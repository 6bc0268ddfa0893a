"""The menus along the top, by their titles. What stands in them comes from ``actions``, their icons when they open."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMainWindow, QMenu

from quailsched.desktop.theme import Theme, current
from quailsched.session.paths import remembered
from quailsched.words import marked, say

TITLES = (marked("&Farm"), marked("&Change"), marked("&Trials"), marked("&Show"), marked("&Help"))
Actions = Callable[[], Mapping[str, QAction]]


def make_menus(window: QMainWindow, actions: Actions) -> dict[str, QMenu]:
    """Menus of ``window`` by their English titles. When one opens ``actions`` is asked for what there is by name."""
    menus = {title: window.menuBar().addMenu(say(title)) for title in TITLES}
    for menu in menus.values():
        _keep_drawn(menu, actions)
    return menus


def _keep_drawn(menu: QMenu, actions: Actions) -> None:
    """Icons are drawn whenever the menu opens in another theme than before: at the start they would take 30 ms."""
    drawn_in: Theme | None = None

    def draw() -> None:
        nonlocal drawn_in
        named = actions()
        if drawn_in is not current():
            from quailsched.desktop.menu_icons import draw_icons

            drawn_in = current()
            own = menu.actions()
            draw_icons(menu, {name: action for name, action in named.items() if action in own})
        _mark_colours(menu, named)

    menu.aboutToShow.connect(draw)


def _mark_colours(menu: QMenu, actions: Mapping[str, QAction]) -> None:
    """The row of the colours that are chosen is a checked one."""
    chosen = f"show_{remembered().get('colours', 'auto')}"
    for name in ("show_auto", "show_light", "show_dark"):
        action = actions.get(name)
        if action is not None and menu in action.associatedObjects():
            action.setCheckable(True)
            action.setChecked(name == chosen)
