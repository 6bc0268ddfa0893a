"""Reads the window of Quailsched on the accessibility bus as a screen reader does, and works it from there.

Run by a Python that knows ``gi`` (Debian: python3-gi, gir1.2-atspi-2.0); knows nothing of Quailsched or Qt. Prints
JSON.
"""

import json
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import suppress
from typing import Any

import gi  # type: ignore[import-not-found]

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi, GLib  # type: ignore[import-not-found]  # noqa: E402

_STATE = Atspi.StateType
_SECONDS = 15


def wait_for(look: Callable[[], Any]) -> Any:
    """What ``look`` gives, as soon as it gives something."""
    end = time.monotonic() + _SECONDS
    while time.monotonic() < end:
        try:
            found = look()
        except GLib.Error:  # it went while it was looked at
            found = None
        if found:
            return found
        time.sleep(0.1)
    return None


def is_in(part: Any, state: Any) -> bool:
    return bool(part.get_state_set().contains(state))


def shown(part: Any) -> Iterator[Any]:
    """``part`` and all in it that is on the screen."""
    yield part
    for number in range(part.get_child_count()):
        inner = part.get_child_at_index(number)
        if inner is not None and (is_in(inner, _STATE.SHOWING) or inner.get_role_name() in ("popup menu", "list item")):
            yield from shown(inner)


def find(name: str, role: str) -> Any:
    """The part that is shown with this name and role. Raises SystemExit where there is none."""
    found = wait_for(lambda: next((p for p in shown(app) if p.get_name() == name and p.get_role_name() == role), None))
    if found is None:
        there = sorted({p.get_name() for p in shown(app) if p.get_role_name() == role})
        raise SystemExit(f"there is no {role} “{name}” on the bus, only {there}")
    return found


def do(part: Any, action: str) -> None:
    for number in range(part.get_n_actions()):
        if Atspi.Action.get_action_name(part, number) == action:
            with suppress(GLib.Error):  # a form answers when it is closed
                Atspi.Action.do_action(part, number)
            time.sleep(0.3)
            return
    raise SystemExit(f"“{part.get_name()}” cannot do {action}")


def choose(menu: str, item: str) -> None:
    """Open a menu and choose from it. It opens once for sure: asked again while it is open, it closes."""
    is_open = any(part.get_name() == item and part.get_role_name() == "menu item" for part in shown(app))
    if not is_open:
        do(find(menu, "menu item"), "ShowMenu")
    do(find(item, "menu item"), "Press")


def rows_of(name: str) -> list[list[str]]:
    table = find(name, "table").get_table_iface()
    columns = range(table.get_n_columns())
    rows = [
        [table.get_accessible_at(row, column).get_name() for column in columns] for row in range(table.get_n_rows())
    ]
    return [[table.get_column_header(column).get_name() for column in columns], *rows]


def is_named(part: Any) -> bool:
    labels = [one for one in part.get_relation_set() if one.get_relation_type() == Atspi.RelationType.LABELLED_BY]
    return bool(part.get_description() or labels) if part.get_role_name() == "combo box" else bool(part.get_name())


def nameless(where: str) -> list[str]:
    """What takes the keys and has no name. Words are their own name, and cells may be empty."""
    free = ("label", "table cell", "filler", "panel", "scroll pane")
    return [
        f"{where}: {part.get_role_name()} in {part.get_parent().get_name()}"
        for part in shown(app)
        if is_in(part, _STATE.FOCUSABLE) and part.get_role_name() not in free and not is_named(part)
    ]


def clash_rows() -> list[Any]:
    return [p for p in shown(app) if p.get_role_name() == "push button" and "\n" in p.get_name()]


def field_names(form: str) -> list[str]:
    fields = ("text", "spin button", "check box", "combo box")
    return sorted(
        (label_of(part) or part.get_name()) for part in shown(find(form, "dialog")) if part.get_role_name() in fields
    )


def label_of(part: Any) -> str:
    for relation in part.get_relation_set():
        if relation.get_relation_type() == Atspi.RelationType.LABELLED_BY:
            return str(relation.get_target(0).get_name())
    return ""


def read() -> dict[str, Any]:
    found: dict[str, Any] = {"frame": app.get_child_at_index(0).get_name()}
    found["menus"] = [p.get_name() for p in shown(app) if p.get_role_name() == "menu item"]
    found["views"] = [name for name in ("Season", "Next set", "Setup") if find(name, "check box")]
    season = find("Season", "list")
    found["season"] = season.get_description()
    inside = [season.get_child_at_index(number) for number in range(season.get_child_count())]
    found["bands"] = [part.get_name() for part in inside if part.get_role_name() == "list item"]
    found["clashes"] = [[row.get_name(), row.get_description()] for row in clash_rows()]
    found["nameless"] = nameless("season")
    choose("Show", "Season as a table, or drawn")
    found["table"] = rows_of("Season as a table")
    found["nameless"] += nameless("table")
    choose("Show", "Season as a table, or drawn")
    do(find("Setup", "check box"), "Press")
    found["places"] = rows_of("Places")
    found["nameless"] += nameless("setup")
    do(find("Farm: name, units, nights…", "push button"), "Press")
    found["form"] = field_names("Farm")
    found["nameless"] += nameless("form")
    do(find("Cancel", "push button"), "Press")
    do(find("Next set", "check box"), "Press")
    found["nameless"] += nameless("next set")
    do(find("Season", "check box"), "Press")
    work(found)
    choose("Farm", "Quit")
    return found


def work(found: dict[str, Any]) -> None:
    """Pick a clash, do the first way out of it, and take it back, by actions of the bus alone."""
    do(clash_rows()[0], "Press")
    way = wait_for(lambda: next((p for p in shown(app) if p.get_name().startswith("Do it: ")), None))
    found["way"] = way.get_name() if way is not None else ""
    if way is not None:
        do(way, "Press")
        undo = find("Undo", "push button")
        found["done"] = wait_for(lambda: is_in(undo, _STATE.ENABLED) and undo.get_description())
        do(undo, "Press")
        found["undone"] = wait_for(lambda: not is_in(undo, _STATE.ENABLED) and undo.get_description())


def program() -> Any:
    desktop = Atspi.get_desktop(0)
    parts = (desktop.get_child_at_index(number) for number in range(desktop.get_child_count()))
    return next((part for part in parts if part is not None and part.get_name() == "Quailsched"), None)


app = wait_for(program)
if app is None:
    raise SystemExit("Quailsched did not come onto the bus")
wait_for(lambda: app.get_child_count())
time.sleep(0.5)
json.dump(read(), sys.stdout)
