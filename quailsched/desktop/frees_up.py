"""The strip below the season: when each place frees up."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QScrollArea, QVBoxLayout, QWidget

from quailsched.desktop.forms.fields import button
from quailsched.desktop.labels import as_it_is, plain
from quailsched.farm.units import count_text, day_text, names_text
from quailsched.report.places import occupant_text, place_line
from quailsched.season.freeing import PlaceState, place_states
from quailsched.season.season import Season

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

    Where not all columns have room, as many as have it whole are shown, and the bar goes from column to column.
    """

    place_opened = Signal(str)

    def __init__(self, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.today = today
        self.setObjectName("card")
        self._area = QScrollArea(self)
        self._area.setWidgetResizable(True)
        self._area.setFrameShape(QFrame.Shape.NoFrame)
        self._area.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._columns: list[QWidget] = []
        self._area.horizontalScrollBar().valueChanged.connect(self._snap)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(_SIDE, 8, _SIDE, 4)
        layout.setSpacing(2)
        self._heading = QLabel("Frees up")
        self._heading.setObjectName("soft")
        layout.addWidget(self._heading)
        layout.addWidget(self._area)
        self.setFixedHeight(round(self.fontMetrics().height() * 5.4) + 26)

    def show_season(self, season: Season) -> None:
        page = QWidget()
        page.setObjectName("panel")
        row = QHBoxLayout(page)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(_GAP)
        states = place_states(season, self.today, weeks=1)
        self._columns = [self._column(season, state) for state in states]
        for column in self._columns:
            row.addWidget(column)
        if not states:
            row.addWidget(QLabel("No places yet."))
        row.addStretch()
        self._area.setWidget(page)
        self._share()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._share()

    def _share(self) -> None:
        """Give every column its width: what it wants, or an equal part of the strip for as many as fit."""
        columns, page = self._columns, self._area.widget()
        if not columns or page is None:
            return
        room = self.contentsRect().width() - 2 * _SIDE
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
        self.setFixedHeight(tall + self._heading.sizeHint().height() + 2 + 12 + 2 * self.frameWidth())

    def _snap(self, value: int) -> None:
        """Stop at a whole column."""
        bar = self._area.horizontalScrollBar()
        step = bar.singleStep()
        whole = min(round(value / step) * step, bar.maximum())
        if bar.maximum() - value < step / 2:
            whole = bar.maximum()
        if whole != value:
            bar.setValue(whole)

    def _column(self, season: Season, state: PlaceState) -> QWidget:
        whole = QWidget()
        column = QVBoxLayout(whole)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(1)
        name = button(state.place.name, lambda: self.place_opened.emit(state.place.id))
        name.setObjectName("name")
        line = place_line(season.farm, state, self.today)
        name.setToolTip(as_it_is(line))
        name.setAccessibleDescription(line)
        column.addWidget(name, alignment=Qt.AlignmentFlag.AlignLeft)
        column.addWidget(_Line(self._when(season, state)))
        column.addWidget(_Line(self._detail(state), "soft"))
        column.addStretch()
        return whole

    def _when(self, season: Season, state: PlaceState) -> str:
        place = state.place
        if place.ready_on is not None and place.ready_on > self.today:
            return f"ready {day_text(place.ready_on, self.today)}"
        if place.role.is_pen and state.now:
            grown_cm2 = season.kind(season.farm.batch(state.now[0].batch_id)).at("floor_cm2", 365)
            return f"room for {count_text(int(state.weeks[0].room / grown_cm2), 'grown bird')}"
        return "free now" if state.free_on == self.today else f"free {day_text(state.free_on, self.today)}"

    def _detail(self, state: PlaceState) -> str:
        if len(state.now) == 1:
            return f"{occupant_text(state.now[0])}"
        if state.now:
            return f"{sum(o.number for o in state.now):,} {state.now[0].unit} in"
        if state.next_day is not None:
            who = names_text(list(dict.fromkeys(state.next_in)))
            return f"{who} comes on {day_text(state.next_day, self.today)}"
        return "nobody planned"
