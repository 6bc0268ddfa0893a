"""The rows of a table with what becomes of each, the row that is picked in full below."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableView, QVBoxLayout, QWidget

from quailsched.desktop.labels import label
from quailsched.desktop.setup.model import RowsModel
from quailsched.desktop.setup.tables import Row as ShownRow
from quailsched.edits.tables.rows import Row
from quailsched.words import marked, say

_HEADINGS = (marked("Row"), marked("Taken in?"), marked("What happens, or why not"), marked("As it stands"))


class RowsTable(QWidget):
    """Shows rows; in words, so that no colour has to be told apart."""

    def __init__(self) -> None:
        super().__init__()
        self.model = RowsModel(_HEADINGS)
        self.view = QTableView()
        self.view.setAccessibleName(say("Rows of the table"))
        self.view.setModel(self.model)
        self.view.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.view.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.view.setAlternatingRowColors(True)
        self.view.setShowGrid(False)
        self.view.setTabKeyNavigation(False)
        self.view.setWordWrap(False)
        self.view.verticalHeader().hide()
        header = self.view.horizontalHeader()
        header.setSectionResizeMode(2, QHeaderView.ResizeMode.Stretch)
        header.resizeSection(3, 38 * self.fontMetrics().averageCharWidth())
        header.setHighlightSections(False)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.whole = label("", "soft")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.view, 1)
        column.addWidget(self.whole)
        self.view.selectionModel().currentRowChanged.connect(lambda now, _before: self._show_whole(now.row()))

    def show_rows(self, rows: tuple[Row, ...]) -> None:
        """Show ``rows``, and none as picked."""
        shown = []
        for row in rows:
            cells = (str(row.number), say(row.fate), row.words, " | ".join(row.cells))
            shown.append(ShownRow(str(row.number), cells, cells))
        self.model.show_rows(shown)
        for column in (0, 1):
            self.view.resizeColumnToContents(column)
        self._show_whole(-1)

    def _show_whole(self, row: int) -> None:
        """What the cells have no room for."""
        is_row = 0 <= row < self.model.rowCount()
        self.whole.setText("\n".join(self.model.index(row, n).data() for n in (2, 3)) if is_row else "")
        self.whole.setVisible(is_row)
