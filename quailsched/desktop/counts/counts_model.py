"""Counts as rows of a table: what holds, and below it, struck through, what it said before."""

from __future__ import annotations

from datetime import date
from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, Qt
from PySide6.QtGui import QFont
from PySide6.QtWidgets import QWidget

from quailsched.farm.units import named_day_text
from quailsched.report.counts_told import State, ToldCount
from quailsched.words import marked, say

_Index = QModelIndex | QPersistentModelIndex
_ROOT = QModelIndex()
_HEADINGS = (marked("Day"), marked("Of"), marked("What"), marked("Written down"))
WHAT = 2


class CountsModel(QAbstractTableModel):
    """Newest first."""

    def __init__(self, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._today = today
        self._rows: list[ToldCount] = []

    def show_counts(self, rows: list[ToldCount]) -> None:
        self.beginResetModel()
        self._rows = rows
        self.endResetModel()

    def told(self, row: int) -> ToldCount:
        return self._rows[row]

    def row_of(self, count_id: str) -> int | None:
        return next((row for row, told in enumerate(self._rows) if told.count.id == count_id), None)

    def rowCount(self, parent: _Index = _ROOT) -> int:
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: _Index = _ROOT) -> int:
        return 0 if parent.isValid() else len(_HEADINGS)

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = 0) -> Any:
        if orientation is Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            return say(_HEADINGS[section])
        return None

    def data(self, index: _Index, role: int = 0) -> Any:
        told = self._rows[index.row()]
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole):
            text = self._cell(told, index.column())
            is_struck = told.state is not State.HOLDS and index.column() == WHAT
            return say("{state}: {what}", state=told.state_words, what=text) if is_struck else text
        if role == Qt.ItemDataRole.FontRole and told.state is not State.HOLDS and index.column() <= WHAT:
            font = QFont()
            font.setStrikeOut(True)
            return font
        return None

    def _cell(self, told: ToldCount, column: int) -> str:
        if column == 0:
            return named_day_text(told.count.day, self._today)
        if column == 1:
            return told.of
        if column == WHAT:
            return told.what
        at = told.count.entered.astimezone()
        return f"{named_day_text(at.date(), self._today)}, {at:%H:%M}"
