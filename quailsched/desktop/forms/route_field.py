"""The route of a batch as rows: which birds, where, until when, and then."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from typing import NamedTuple

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QComboBox,
    QDateEdit,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from quailsched.desktop.buttons import button
from quailsched.desktop.forms.dates import day_field, day_of, set_day
from quailsched.desktop.forms.fields import NarrowChoice, dress, name_choice, tab_in_order
from quailsched.farm.records import Farm, Leaving, Part, Stay
from quailsched.farm.units import day_text
from quailsched.words import marked, say

_PARTS = {Part.ALL: marked("all"), Part.HENS: marked("laying group"), Part.COCKS: marked("surplus cocks")}
_GO_ON, _OPEN, _SOLD, _PROCESSED = range(4)
_THEN = (marked("go on"), marked("stay until replaced"), marked("sold"), marked("processed"))
_LEAVING = {_SOLD: Leaving.SOLD, _PROCESSED: Leaving.PROCESSED}


class _Row(NamedTuple):
    part: QComboBox
    place: QComboBox
    first: QLabel
    out: QDateEdit
    then: QComboBox
    remove: QPushButton


class RouteField(QWidget):
    """Shows stays and gives them back; ``touched`` says whether the keeper has changed them."""

    changed = Signal()
    usual_asked = Signal()

    def __init__(self, farm: Farm) -> None:
        super().__init__()
        self._farm = farm
        self._start = date(2000, 1, 1)
        self._stays: list[Stay] = []
        self.touched = False
        self._is_showing = False
        self._rows: list[_Row] = []
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        self._table = QWidget()
        outer.addWidget(self._table)
        row = QHBoxLayout()
        self.add_button = button(say("Add a stay"), self.add_stay)
        self.add_button.setEnabled(bool(farm.places))
        row.addWidget(self.add_button)
        self.usual_button = button(say("Usual route"), self.usual_asked.emit)
        row.addWidget(self.usual_button)
        row.addStretch()
        outer.addLayout(row)

    def stays(self) -> tuple[Stay, ...]:
        """The route: all together first, then the laying group, then the surplus cocks, each without a gap."""
        order = list(_PARTS)
        return tuple(sorted(self._stays, key=lambda s: order.index(s.part)))

    def show_route(self, start: date, stays: tuple[Stay, ...]) -> None:
        self._start, self._stays = start, list(stays)
        self._build()

    def show_start(self, start: date) -> None:
        """The whole route moves with the day of setting."""
        self._start = start
        self._show_days()

    def add_stay(self) -> None:
        """One more stay at the end, in the first pen (or place) of the farm."""
        self.touched = True
        if self._stays:
            last = self._stays[-1]
            end = last.to_day if last.to_day is not None else last.from_day + 28
            self._stays[-1] = replace(last, to_day=end, leaving=None)
            part = last.part
        else:
            end, part = 0, Part.ALL
        place = next((p for p in self._farm.places if p.role.is_pen), self._farm.places[-1])
        self._stays.append(Stay(place.id, end, None, part))
        self._build()
        self._rows[-1].place.setFocus()
        self.changed.emit()

    def remove_stay(self, index: int) -> None:
        """Take one stay out; the next one of its birds begins where it began."""
        self.touched = True
        del self._stays[index]
        self._stays = _linked(self._stays)
        self._build()
        (self._rows[index].remove if index < len(self._rows) else self.add_button).setFocus()
        self.changed.emit()

    def _build(self) -> None:
        """Make the rows anew; they are few."""
        layout = self.layout()
        assert layout is not None
        fresh = QWidget()
        grid = QGridLayout(fresh)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(6)
        grid.setVerticalSpacing(2)
        for column, text in enumerate(
            (say("Birds"), say("Place"), say("From"), say("Out on"), say("Then")) if self._stays else ()
        ):
            heading = QLabel(text)
            heading.setObjectName("soft")
            grid.addWidget(heading, 0, column)
        self._rows = [self._add_row(grid, index, stay) for index, stay in enumerate(self._stays)]
        grid.setColumnStretch(1, 1)
        layout.replaceWidget(self._table, fresh)
        self._table.hide()
        self._table.deleteLater()
        self._table = fresh
        dress(fresh)
        self._order_tabs()
        self._show_days()

    def _order_tabs(self) -> None:
        cells = [cell for row in self._rows for cell in row if not isinstance(cell, QLabel)]
        tab_in_order(self, [*cells, self.add_button, self.usual_button])

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._order_tabs()  # only now is it known what stands before it in the form

    def _add_row(self, grid: QGridLayout, index: int, stay: Stay) -> _Row:
        part, place, then = NarrowChoice(), NarrowChoice(), NarrowChoice()
        for value, text in _PARTS.items():
            part.addItem(say(text), value)
        part.setCurrentIndex(list(_PARTS).index(stay.part))
        for one in self._farm.places:
            place.addItem(one.name, one.id)
        place.setCurrentIndex(max(place.findData(stay.place_id), 0))
        then.addItems([say(text) for text in _THEN])
        then.setCurrentIndex(_then_of(stay))
        remove = button(say("Remove"), lambda: self.remove_stay(index))
        row = _Row(part, place, QLabel(), day_field(self._start), then, remove)
        cells = (part, place, row.out, then, remove)
        for widget, name in zip(
            cells, (say("Birds"), say("Place"), say("Out on"), say("Then"), say("Remove")), strict=True
        ):
            heard = say("{field}, stay {number}", field=name, number=index + 1)
            name_choice(widget, heard) if isinstance(widget, QComboBox) else widget.setAccessibleName(heard)
        for column, cell in enumerate(row):
            grid.addWidget(cell, index + 1, column, Qt.AlignmentFlag.AlignVCenter)
        for box in (part, place, then):
            box.currentIndexChanged.connect(self._read)
        row.out.dateChanged.connect(self._read)
        return row

    def _read(self) -> None:
        """Take the rows over, and let each stay begin where the one before it of its birds ends."""
        if self._is_showing:
            return
        self.touched = True
        read: list[Stay] = []
        for row in self._rows:
            then = row.then.currentIndex()
            end = None if then == _OPEN else (day_of(row.out) - self._start).days
            leaving = _LEAVING.get(then)
            read.append(Stay(row.place.currentData(), 0, end, list(_PARTS)[row.part.currentIndex()], leaving))
        self._stays = _linked(read)
        self._show_days()
        self.changed.emit()

    def _show_days(self) -> None:
        self._is_showing = True
        for stay, row in zip(self._stays, self._rows, strict=True):
            row.first.setText(day_text(self._start + timedelta(days=stay.from_day), self._start))
            is_open = stay.to_day is None
            set_day(row.out, self._start + timedelta(days=stay.from_day + 1 if stay.to_day is None else stay.to_day))
            row.out.setEnabled(not is_open)
            row.then.setToolTip(
                say("stay until replaced: until the end of their lay") if is_open else row.then.currentText()
            )
            row.place.setToolTip(row.place.currentText())
            row.part.setToolTip(row.part.currentText())
        self._is_showing = False


def _linked(stays: list[Stay]) -> list[Stay]:
    """The stays, each from where the one before it of the same birds ends: of these, or of all together."""
    linked: list[Stay] = []
    for stay in stays:
        own = [s for s in linked if s.part is stay.part] or [s for s in linked if s.part is Part.ALL]
        before = own[-1] if own else None
        begin = 0 if before is None else before.from_day + 1 if before.to_day is None else before.to_day
        linked.append(replace(stay, from_day=begin))
    return linked


def _then_of(stay: Stay) -> int:
    if stay.to_day is None:
        return _OPEN
    return _GO_ON if stay.leaving is None else next(then for then, one in _LEAVING.items() if one is stay.leaving)
