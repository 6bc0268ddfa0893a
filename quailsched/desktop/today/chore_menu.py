"""What can be done with a chore beside ticking it: put off, left out, given to somebody, changed, removed."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta
from functools import partial
from typing import Protocol

from PySide6.QtWidgets import QMenu, QWidget

from quailsched.chores.chore import Chore
from quailsched.desktop.labels import on_button
from quailsched.farm.records import Farm
from quailsched.farm.units import named_day_text, weekday_text
from quailsched.words import say

_DAYS_OFFERED = 7


class Steps(Protocol):
    """What a menu may ask for."""

    def put_off(self, chore: Chore, day: date | None) -> None:
        """To ``day``; None asks for one."""

    def leave_out(self, chore: Chore) -> None: ...

    def take_up(self, chore: Chore) -> None: ...

    def give(self, chore: Chore, person_id: str) -> None: ...

    def change_own(self, chore: Chore) -> None: ...

    def remove_own(self, chore: Chore) -> None: ...


def chore_menu(parent: QWidget, steps: Steps, farm: Farm, chore: Chore, today: date) -> QMenu:
    """The menu of ``chore``; it frees itself when it has closed."""
    menu = QMenu(parent)
    menu.aboutToHide.connect(menu.deleteLater)
    if chore.done_on is None:
        if chore.left_out:
            _add(menu, say("Take it &up again"), lambda: steps.take_up(chore))
        else:
            put_off_menu(menu.addMenu(say("&Put off")), steps, chore, today)
            _add(menu, say("&Leave out…"), lambda: steps.leave_out(chore))
        if farm.people:
            give_menu(menu.addMenu(say("&Give to")), steps, farm, chore)
    if chore.kind == "own chore":
        if not menu.isEmpty():
            menu.addSeparator()
        _add(menu, say("&Change this chore…"), lambda: steps.change_own(chore))
        _add(menu, say("&Remove this chore…"), lambda: steps.remove_own(chore))
    if menu.isEmpty():
        nothing = menu.addAction(say("It is done: untick it first"))
        nothing.setEnabled(False)
    return menu


def put_off_menu(menu: QMenu, steps: Steps, chore: Chore, today: date) -> QMenu:
    """The next days, its own day if it was put off, and any other."""
    if chore.put_off_from is not None:
        back = say("Back to {day}", day=named_day_text(chore.put_off_from, today))
        _add(menu, back, lambda: steps.put_off(chore, chore.put_off_from))
    for ahead in range(1, _DAYS_OFFERED + 1):
        day = max(chore.day, today) + timedelta(days=ahead)
        text = say("&Tomorrow") if day == today + timedelta(days=1) else weekday_text(day)
        _add(menu, f"{text}\t{named_day_text(day, today)}", partial(steps.put_off, chore, day))
    menu.addSeparator()
    _add(menu, say("&Another day…"), lambda: steps.put_off(chore, None))
    return menu


def give_menu(menu: QMenu, steps: Steps, farm: Farm, chore: Chore) -> QMenu:
    """Everybody, and nobody in particular."""
    choices = [(say("Anybody"), "")] + [(on_button(person.name), person.id) for person in farm.people]
    for text, person_id in choices:
        action = menu.addAction(text)
        action.setCheckable(True)
        name = farm_name(farm, person_id)
        action.setChecked(chore.given_to == name)
        action.triggered.connect(lambda _checked=False, one=person_id: steps.give(chore, one))
    return menu


def farm_name(farm: Farm, person_id: str) -> str:
    return next((person.name for person in farm.people if person.id == person_id), "")


def _add(menu: QMenu, text: str, action: Callable[[], object]) -> None:
    menu.addAction(text).triggered.connect(lambda _checked=False: action())
