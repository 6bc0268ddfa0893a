"""The menu of a batch on the season: all that the mouse does by dragging, for the keyboard and for one click."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta
from functools import partial

from PySide6.QtWidgets import QInputDialog, QMenu, QWidget

from quailsched.desktop.labels import on_button
from quailsched.desktop.season_canvas.drag import Drop, Grab, Grip, change_of, split_drop
from quailsched.desktop.season_canvas.lanes import Band
from quailsched.edits.change import Change
from quailsched.farm.faults import FarmError
from quailsched.farm.records import Farm, Part
from quailsched.farm.units import span_text
from quailsched.season.clashes import Checked
from quailsched.words import say

Ask = Callable[[Change], object]


def fill(menu: QMenu, now: Checked, batch_id: str, bands: list[Band], today: date, ask: Ask) -> None:
    """Put what can be done with a batch into ``menu``; ``bands`` are its stays by place, in order of days. ``ask`` is
    called with the change that is chosen. What cannot be is there, and says why."""
    farm = now.season.farm
    name = farm.batch(batch_id).name
    whole = Grab(bands[0], Grip.WHOLE)
    for text, days in (
        (say("{batch} a day earlier", batch=name), -1),
        (say("{batch} a day later", batch=name), 1),
        (say("{batch} a week earlier", batch=name), -7),
        (say("{batch} a week later", batch=name), 7),
    ):
        _add(menu, text, farm, whole, Drop(days), ask)
    menu.addSeparator()
    there = [band.place_id for band in bands]
    for band in bands:
        place = farm.place(band.place_id).name
        part = band.presences[-1].part
        if there.count(band.place_id) > 1 and part is not Part.ALL:  # hens and cocks in one place are two rows
            place += say(" (laying group)") if part is Part.HENS else say(" (surplus cocks)")
        days_there = span_text(band.start, band.presences[-1].end - timedelta(days=1), today)
        stay = menu.addMenu(on_button(say("In {place}, {days}", place=place, days=days_there)))
        stay.setToolTipsVisible(True)
        _fill_stay(stay, now, band, today, ask)


def _fill_stay(menu: QMenu, now: Checked, band: Band, today: date, ask: Ask) -> None:
    farm, end, whole = now.season.farm, Grab(band, Grip.END), Grab(band, Grip.WHOLE)
    _add(menu, say("Leave a day earlier"), farm, end, Drop(-1), ask)
    _add(menu, say("Leave a day later"), farm, end, Drop(1), ask)
    other = menu.addMenu(say("Another place"))
    other.setToolTipsVisible(True)
    for place in farm.places:
        if place.id != band.place_id:
            _add(other, place.name, farm, whole, Drop(place_id=place.id), ask)
    action = menu.addAction(say("Split over two places…"))
    most = farm.batch(band.batch_id).number - 1
    if most < 1:
        action.setEnabled(False)
    action.triggered.connect(lambda: _split(menu.parentWidget(), now, whole, most, today, ask))


def _add(menu: QMenu, text: str, farm: Farm, grab: Grab, drop: Drop, ask: Ask) -> None:
    action = menu.addAction(on_button(text))
    try:
        change = change_of(farm, grab, drop)
    except FarmError as error:
        action.setEnabled(False)
        action.setToolTip("; ".join(fault.accepted for fault in error.faults))
        return
    action.setEnabled(change is not None)
    if change is not None:
        action.setToolTip(change.label)
        action.triggered.connect(partial(_ask, ask, change))


def _ask(ask: Ask, change: Change, _checked: bool = False) -> None:
    ask(change)


def _split(parent: QWidget | None, now: Checked, grab: Grab, most: int, today: date, ask: Ask) -> None:
    """Ask how many go to the other place, and for the change that this is."""
    batch = now.season.farm.batch(grab.batch_id)
    title = say("Split {batch}", batch=batch.name)
    asked = say("How many of {number} go to the other place?", number=batch.number)
    number, is_given = QInputDialog.getInt(parent, title, asked, max(most // 2, 1), 1, most)
    if not is_given:
        return
    drop = split_drop(now, grab, number, today)
    change = change_of(now.season.farm, grab, drop)
    if change is not None:
        ask(change)
