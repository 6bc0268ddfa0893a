"""The menu of a batch: everything that dragging does, by key and by one click, and why what cannot be cannot."""

from datetime import timedelta

import pytest
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QInputDialog, QMenu

from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.season_canvas.scene import Picked
from quailsched.farm.records import Batch


def batch_in(window: MainWindow, name: str) -> Batch:
    return next(batch for batch in window.opened.farm.batches if batch.name == name)


def menu_of(window: MainWindow, name: str) -> QMenu:
    window.season.pick(Picked(batch_id=batch_in(window, name).id))
    menu = window.season.canvas.menu()
    assert menu is not None
    return menu


def action(menu: QMenu, *path: str) -> QAction:
    """The action that is reached by texts that begin like these."""
    found = next(one for one in menu.actions() if one.text().startswith(path[0]))
    inner = found.menu()
    if len(path) == 1:
        return found
    assert isinstance(inner, QMenu)
    return action(inner, *path[1:])


def test_a_batch_moves_by_days_and_weeks(window: MainWindow) -> None:
    start = batch_in(window, "Fern").start
    action(menu_of(window, "Fern"), "Fern a week later").trigger()
    action(menu_of(window, "Fern"), "Fern a day earlier").trigger()
    assert batch_in(window, "Fern").start == start + timedelta(days=6)


def test_a_stay_is_named_by_its_first_and_its_last_day(window: MainWindow) -> None:
    stay = batch_in(window, "Clover").stays[2]  # set on 12 April, in the brooder from day 18 to day 45, half-open
    assert (stay.from_day, stay.to_day) == (18, 45)
    assert action(menu_of(window, "Clover"), "In Tub brooder").text() == "In Tub brooder, 30 Apr – 26 May"


def test_a_stay_is_left_later_and_in_another_place(window: MainWindow) -> None:
    before = batch_in(window, "Clover")
    menu = menu_of(window, "Clover")
    assert action(menu, "In Tub brooder", "Another place", "Shed brooder").isEnabled()
    action(menu, "In Tub brooder", "Leave a day later").trigger()
    after = batch_in(window, "Clover")
    assert [stay.to_day for stay in after.stays][2] == (before.stays[2].to_day or 0) + 1
    action(menu_of(window, "Clover"), "In Tub brooder", "Another place", "Shed brooder").trigger()
    places = [window.opened.farm.place(stay.place_id).name for stay in batch_in(window, "Clover").stays]
    assert "Tub brooder" not in places


def test_what_cannot_be_is_there_and_says_why(window: MainWindow) -> None:
    setter = action(menu_of(window, "Clover"), "In Tub brooder", "Another place", "Bench setter")
    assert not setter.isEnabled()
    assert setter.toolTip() == "for birds a brooder or pen is accepted"


def test_a_split_asks_how_many(window: MainWindow, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(QInputDialog, "getInt", lambda *_: (40, True))
    before = batch_in(window, "Clover")
    action(menu_of(window, "Clover"), "In Tub brooder", "Split").trigger()
    assert batch_in(window, "Clover 2").number == 40
    assert batch_in(window, "Clover").number == before.number - 40


def test_without_a_batch_there_is_no_menu(window: MainWindow) -> None:
    window.season.pick(Picked())
    assert window.season.canvas.menu() is None
