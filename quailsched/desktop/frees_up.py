"""The strip below the season: when each place frees up."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QScrollArea, QVBoxLayout, QWidget

from quailsched.desktop.buttons import button
from quailsched.desktop.labels import ShortLabel, as_it_is, plain
from quailsched.farm.records import Place
from quailsched.farm.units import count_text, day_text, names_text
from quailsched.report.places import occupant_text, place_line
from quailsched.season.freeing import PlaceState, place_state
from quailsched.season.season import Season
from quailsched.words import number_text, say

_GAP = 16  # pixels between columns
_SIDE = 14  # pixels left and right of them


class _Line(QLabel):
    """A text that wants one line and takes two where there is no room for that."""

    def __init__(self, text: str, name: str = "") -> None:
        super().__init__(text)
        plain(self).setObjectName(name)
        self.setWordWrap(True)

    def sizeHint(self) -> QSize:
        return QSize(self.fontMetrics().horizontalAdvance(self.text()) + 4, super().sizeHint().height())


class FreesUp(QFrame):
    """One small column for each place: the day it is free, and who is in or who comes next.

    Where not all columns have room, as many as have it whole are shown, and the bar goes from column to column. On a
    low window only name and day are shown, and the tip of the name tells the rest.
    """

    place_opened = Signal(str)
    place_wanted = Signal()

    def __init__(self, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.today = today
        self._is_low = False
        self._tall = 0
        self.setObjectName("card")
        self._area = QScrollArea(self)
        self._area.setWidgetResizable(True)
        self._area.setFrameShape(QFrame.Shape.NoFrame)
        self._area.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._columns: list[_Column] = []
        self._area.horizontalScrollBar().valueChanged.connect(self._snap)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(_SIDE, 8, _SIDE, 4)
        layout.setSpacing(2)
        self._heading = QLabel(say("Frees up"))
        self._heading.setObjectName("soft")
        self._chores = ShortLabel(8)  # comes when they are counted; the season must not have to give way then
        self._chores.setObjectName("soft")
        top = QHBoxLayout()
        top.addWidget(self._heading)
        top.addStretch()
        top.addWidget(self._chores)
        layout.addLayout(top)
        layout.addWidget(self._area)
        self._bound(round(self.fontMetrics().height() * 5.4) + 26)

    def show_season(self, season: Season, is_preview: bool = False) -> None:
        """Tell of ``season``. A preview leaves the strip as tall as it is, so that the season stays where it is."""
        ids = [(place.id, place.name) for place in season.farm.places]
        if self._area.widget() is None or ids != [(column.place_id, column.name) for column in self._columns]:
            self._columns = [_Column(place.id, place.name, self.place_opened.emit) for place in season.farm.places]
            for column in self._columns:
                column.show_detail(not self._is_low)
            self._put_in()
        for column, place in zip(self._columns, season.farm.places, strict=True):
            column.tell(season, place, self.today)
        if is_preview:
            self._widen()
        else:
            self._share()

    def show_low(self, is_low: bool) -> None:
        """Whether there is little room from top to bottom."""
        if is_low != self._is_low:
            self._is_low = is_low
            for part in (self._heading, self._chores):
                part.setHidden(is_low)
            for column in self._columns:
                column.show_detail(not is_low)
            self._share()

    def sizeHint(self) -> QSize:
        return QSize(super().sizeHint().width(), self._tall)

    def show_chores(self, text: str) -> None:
        """How much there is to do, at the right of the heading."""
        self._chores.setText(text)

    def _put_in(self) -> None:
        page = QWidget()
        page.setObjectName("panel")
        row = QHBoxLayout(page)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(_GAP)
        for column in self._columns:
            row.addWidget(column)
        if not self._columns:
            row.addWidget(QLabel(say("No places yet.")))
            row.addWidget(button(say("Add a place"), self.place_wanted.emit))
        row.addStretch()
        self._area.setWidget(page)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._share()

    def _share(self) -> None:
        """Give every column its width: what it wants, or an equal part of the strip for as many as fit."""
        columns, page = self._columns, self._area.widget()
        if not columns or page is None:
            return
        room = self.contentsRect().width() - 2 * _SIDE
        if room <= 0:  # the details have taken its place
            return
        least = max(column.minimumSizeHint().width() for column in columns)
        many = max((room + _GAP) // (least + _GAP), 1)
        wants = [column.sizeHint().width() for column in columns]
        is_roomy = sum(wants) + _GAP * (len(wants) - 1) <= room
        part = (room + _GAP) // min(many, len(columns)) - _GAP
        for column, wide in zip(columns, wants, strict=True):
            column.setFixedWidth(wide if is_roomy else part)
        bar = self._area.horizontalScrollBar()
        bar.setSingleStep(part + _GAP)
        tall = max(column.heightForWidth(column.width()) for column in columns)
        tall += bar.sizeHint().height() if many < len(columns) else 0
        tall += 0 if self._is_low else self._heading.sizeHint().height() + 2
        self._bound(tall + 12 + 2 * self.frameWidth())

    def _widen(self) -> None:
        """Room for words that have become longer, where the strip has it; a column does not shrink on the way."""
        wants = [max(column.width(), column.sizeHint().width()) for column in self._columns]
        if sum(wants) + _GAP * (len(wants) - 1) <= self.contentsRect().width() - 2 * _SIDE:
            for column, wide in zip(self._columns, wants, strict=True):
                if wide != column.width():
                    column.setFixedWidth(wide)

    def _bound(self, tall: int) -> None:
        """``tall`` is what it wants; on the way to a low window it takes less, until it is told of it."""
        self._tall = tall
        self.setMaximumHeight(tall)
        self.setMinimumHeight(min(tall, self.fontMetrics().height() * 3 + 16))
        self.updateGeometry()

    def _snap(self, value: int) -> None:
        """Stop at a whole column."""
        bar = self._area.horizontalScrollBar()
        step = bar.singleStep()
        whole = min(round(value / step) * step, bar.maximum())
        if bar.maximum() - value < step / 2:
            whole = bar.maximum()
        if whole != value:
            bar.setValue(whole)


class _Column(QWidget):
    """One place: its name, the day that it is free, and who is in."""

    def __init__(self, place_id: str, name: str, opened: Callable[[str], object]) -> None:
        super().__init__()
        self.place_id, self.name = place_id, name
        self._told: tuple[object, ...] = ()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(1)
        self._button = button(name, lambda: opened(place_id))
        self._button.setObjectName("name")
        self._when, self._detail = _Line(""), _Line("", "soft")
        column.addWidget(self._button, alignment=Qt.AlignmentFlag.AlignLeft)
        column.addWidget(self._when)
        column.addWidget(self._detail)
        column.addStretch()

    def show_detail(self, is_shown: bool) -> None:
        """Who is in or comes next; its tip tells it too."""
        self._detail.setHidden(not is_shown)

    def tell(self, season: Season, place: Place, today: date) -> None:
        """The state of ``place``; nothing is asked again while the same birds are in it on the same days."""
        rests_on = (season.spells(place), place, today, season.farm.settings)
        if len(self._told) == len(rests_on) and all(a is b for a, b in zip(self._told, rests_on, strict=True)):
            return
        self._told = rests_on
        state = place_state(season, place, today, weeks=1)
        line = place_line(season.farm, state, today)
        self._button.setToolTip(as_it_is(line))
        self._button.setAccessibleDescription(line)
        self._when.setText(_when(season, state, today))
        self._detail.setText(_detail(state, today))


def _when(season: Season, state: PlaceState, today: date) -> str:
    place = state.place
    if place.ready_on is not None and place.ready_on > today:
        return say("ready {day}", day=day_text(place.ready_on, today))
    if place.role.is_pen and state.now:
        grown_cm2 = season.kind(season.farm.batch(state.now[0].batch_id)).at("floor_cm2", 365)
        return say("room for {count}", count=count_text(int(state.weeks[0].room / grown_cm2), "grown bird"))
    return say("free now") if state.free_on == today else say("free {day}", day=day_text(state.free_on, today))


def _detail(state: PlaceState, today: date) -> str:
    if len(state.now) == 1:
        return f"{occupant_text(state.now[0])}"
    if state.now:
        number = number_text(sum(occupant.number for occupant in state.now))
        return (
            say("{number} eggs in", number=number)
            if state.now[0].unit == "eggs"
            else say("{number} birds in", number=number)
        )
    if state.next_day is not None:
        who = names_text(list(dict.fromkeys(state.next_in)))
        day = day_text(state.next_day, today)
        is_one = len(set(state.next_in)) == 1
        return say("{who} comes on {day}", who=who, day=day) if is_one else say("{who} come on {day}", who=who, day=day)
    return say("nobody planned")
