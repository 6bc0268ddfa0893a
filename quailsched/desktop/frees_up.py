"""The strip below the season: when each place frees up."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QScrollArea, QVBoxLayout, QWidget

from quailsched.farm.units import count_text, day_text, names_text
from quailsched.report.places import occupant_text, place_line
from quailsched.season.freeing import PlaceState, place_states
from quailsched.season.season import Season


class FreesUp(QFrame):
    """One small column for each place: the day it is free, and who is in or who comes next."""

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
        layout = QVBoxLayout(self)
        layout.setContentsMargins(14, 8, 14, 4)
        layout.setSpacing(2)
        heading = QLabel("Frees up")
        heading.setObjectName("soft")
        layout.addWidget(heading)
        layout.addWidget(self._area)
        self.setFixedHeight(round(self.fontMetrics().height() * 5.4) + 26)

    def show_season(self, season: Season) -> None:
        page = QWidget()
        page.setObjectName("panel")
        row = QHBoxLayout(page)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(20)
        states = place_states(season, self.today, weeks=1)
        for state in states:
            row.addLayout(self._column(season, state))
        if not states:
            row.addWidget(QLabel("No places yet."))
        row.addStretch()
        self._area.setWidget(page)

    def _column(self, season: Season, state: PlaceState) -> QVBoxLayout:
        column = QVBoxLayout()
        column.setSpacing(1)
        name = QPushButton(state.place.name)
        name.setObjectName("name")
        name.setToolTip(place_line(season.farm, state, self.today))
        name.setAccessibleDescription(name.toolTip())
        name.clicked.connect(lambda: self.place_opened.emit(state.place.id))
        column.addWidget(name, alignment=Qt.AlignmentFlag.AlignLeft)
        column.addWidget(QLabel(self._when(season, state)))
        soft = QLabel(self._detail(state))
        soft.setObjectName("soft")
        column.addWidget(soft)
        column.addStretch()
        return column

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
