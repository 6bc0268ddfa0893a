"""The Season view: canvas, inspector and the strip of free days, kept in step."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QSplitter, QVBoxLayout, QWidget

from quailsched.desktop.frees_up import FreesUp
from quailsched.desktop.inspector import Inspector
from quailsched.desktop.season_canvas.canvas import SeasonCanvas
from quailsched.desktop.season_canvas.scene import Picked
from quailsched.season.clash import Clash
from quailsched.season.season import Season


class SeasonView(QWidget):
    """Shows a season; what its parts ask for is passed on by their own signals."""

    def __init__(self, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.canvas = SeasonCanvas(today)
        self.inspector = Inspector(today)
        self.frees_up = FreesUp(today)
        self._season: Season | None = None
        self._clashes: tuple[Clash, ...] = ()
        left = QWidget()
        column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.canvas, 1)
        column.addWidget(self.frees_up)
        self.splitter = QSplitter(Qt.Orientation.Horizontal)
        self.splitter.addWidget(left)
        self.splitter.addWidget(self.inspector)
        self.splitter.setStretchFactor(0, 1)
        self.splitter.setCollapsible(0, False)
        self.splitter.setSizes([1000, self.fontMetrics().averageCharWidth() * 46])
        row = QHBoxLayout(self)
        row.setContentsMargins(12, 8, 14, 12)
        row.addWidget(self.splitter)
        self.canvas.picked.connect(self._show_picked)
        self.inspector.clash_chosen.connect(self.canvas.show_clash)
        self.inspector.batch_chosen.connect(self._pick_batch)
        self.inspector.back_asked.connect(self._pick_nothing)

    def show_season(self, season: Season, clashes: tuple[Clash, ...]) -> None:
        self._season, self._clashes = season, clashes
        self.canvas.show_season(season, clashes)
        self.frees_up.show_season(season)
        self._show_picked(self.canvas.scene().picked)

    def pick(self, picked: Picked) -> None:
        self.canvas.pick(picked)

    @property
    def picked(self) -> Picked:
        return self.canvas.scene().picked

    def _show_picked(self, picked: Picked) -> None:
        if self._season is not None:
            self.inspector.show_picked(self._season, self._clashes, picked)

    def _pick_batch(self, batch_id: str) -> None:
        self.canvas.pick(Picked(batch_id=batch_id))

    def _pick_nothing(self) -> None:
        self.canvas.pick(Picked())
