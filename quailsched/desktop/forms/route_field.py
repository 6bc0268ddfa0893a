"""The route of a batch as rows: which birds, where, until when, and then."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QDateEdit, QGridLayout, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from quailsched.desktop.forms.dates import day_field, day_of, set_day
from quailsched.desktop.forms.record_form import button
from quailsched.farm.records import Farm, Leaving, Part, Stay
from quailsched.farm.units import day_text

_PARTS = {Part.ALL: "all", Part.HENS: "laying group", Part.COCKS: "surplus cocks"}
_GO_ON, _OPEN = "go on", "stay until replaced"
_THEN = (_GO_ON, _OPEN, "sold", "processed")


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
        self._rows: list[tuple[QComboBox, QComboBox, QLabel, QDateEdit, QComboBox]] = []
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        self._table = QWidget()
        outer.addWidget(self._table)
        row = QHBoxLayout()
        row.addWidget(button("Add a stay", self.add_stay))
        row.addWidget(button("Remove the last stay", self.remove_last))
        row.addWidget(button("Usual route", self.usual_asked.emit))
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
        if not self._farm.places:
            return
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
        self.changed.emit()

    def remove_last(self) -> None:
        if self._stays:
            self.touched = True
            self._stays.pop()
            self._build()
            self.changed.emit()

    def _build(self) -> None:
        """Make the rows anew; they are few."""
        layout = self.layout()
        assert layout is not None
        fresh = QWidget()
        grid = QGridLayout(fresh)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(8)
        for column, text in enumerate(("Birds", "Place", "From", "Out on", "Then")):
            heading = QLabel(text)
            heading.setObjectName("soft")
            grid.addWidget(heading, 0, column)
        self._rows = []
        for index, stay in enumerate(self._stays):
            self._add_row(grid, index, stay)
        grid.setColumnStretch(1, 1)
        layout.replaceWidget(self._table, fresh)
        self._table.deleteLater()
        self._table = fresh
        self._show_days()

    def _add_row(self, grid: QGridLayout, index: int, stay: Stay) -> None:
        part, place, then = QComboBox(), QComboBox(), QComboBox()
        for value, text in _PARTS.items():
            part.addItem(text, value)
        part.setCurrentIndex(list(_PARTS).index(stay.part))
        for one in self._farm.places:
            place.addItem(one.name, one.id)
        place.setCurrentIndex(max(place.findData(stay.place_id), 0))
        then.addItems(_THEN)
        then.setCurrentText(_then_text(stay))
        first, out = QLabel(), day_field(self._start)
        for widget, name in ((part, "Birds"), (place, "Place"), (out, "Out on"), (then, "Then")):
            widget.setAccessibleName(f"{name}, stay {index + 1}")
        cells: tuple[QWidget, ...] = (part, place, first, out, then)
        for column, cell in enumerate(cells):
            grid.addWidget(cell, index + 1, column, Qt.AlignmentFlag.AlignVCenter)
        self._rows.append((part, place, first, out, then))
        part.currentIndexChanged.connect(self._read)
        place.currentIndexChanged.connect(self._read)
        then.currentIndexChanged.connect(self._read)
        out.dateChanged.connect(self._read)

    def _read(self) -> None:
        """Take the rows over, and let each stay begin where the one before it of its birds ends."""
        self.touched = True
        read: list[Stay] = []
        for part, place, _, out, then in self._rows:
            chosen = list(_PARTS)[part.currentIndex()]
            text = then.currentText()
            end = None if text == _OPEN else (day_of(out) - self._start).days
            leaving = Leaving(text) if text in ("sold", "processed") else None
            read.append(Stay(place.currentData(), self._begin(read, chosen), end, chosen, leaving))
        self._stays = read
        self._show_days()
        self.changed.emit()

    def _begin(self, before: list[Stay], part: Part) -> int:
        """The day on which a stay of ``part`` begins after the stays ``before`` it."""
        own = [s for s in before if s.part is part] or [s for s in before if s.part is Part.ALL]
        if not own:
            return 0
        return own[-1].to_day if own[-1].to_day is not None else own[-1].from_day + 1

    def _show_days(self) -> None:
        for stay, (_, _, first, out, then) in zip(self._stays, self._rows, strict=True):
            first.setText(day_text(self._start + timedelta(days=stay.from_day)))
            is_open = stay.to_day is None
            out.blockSignals(True)
            set_day(out, self._start + timedelta(days=stay.to_day if stay.to_day is not None else stay.from_day + 1))
            out.blockSignals(False)
            out.setEnabled(not is_open)
            then.setToolTip("Until the end of their lay" if is_open else "")


def _then_text(stay: Stay) -> str:
    if stay.to_day is None:
        return _OPEN
    return stay.leaving.value if stay.leaving is not None else _GO_ON
