"""Rows of text as a Qt table model."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, Qt

from quailsched.desktop.setup.tables import Row
from quailsched.words import say

_Index = QModelIndex | QPersistentModelIndex


class RowsModel(QAbstractTableModel):
    """Shows rows; they are replaced as a whole, as a farm's tables are short."""

    def __init__(self, headings: tuple[str, ...]) -> None:
        super().__init__()
        self._headings = tuple(map(say, headings))
        self._rows: list[Row] = []

    def show_rows(self, rows: list[Row]) -> None:
        self.beginResetModel()
        self._rows = rows
        self.endResetModel()

    def key(self, row: int) -> str:
        return self._rows[row].key

    def sort_value(self, row: int, column: int) -> Any:
        """What a column is sorted by, which is not always its text."""
        return self._rows[row].sort[column]

    def row_of(self, key: str) -> int | None:
        return next((number for number, row in enumerate(self._rows) if row.key == key), None)

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own signature
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own signature
        return 0 if parent.isValid() else len(self._headings)

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid():
            return None
        row = self._rows[index.row()]
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole):
            return row.cells[index.column()]
        return None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if orientation is Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            return self._headings[section]
        return None
