"""One table of the Setup view with its buttons."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QSortFilterProxyModel, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QAbstractItemView, QHBoxLayout, QLabel, QPushButton, QTableView, QVBoxLayout, QWidget

from quailsched.desktop.setup.model import SORT_ROLE, RowsModel
from quailsched.desktop.setup.tables import Row

_Index = QModelIndex | QPersistentModelIndex


class _Order(QSortFilterProxyModel):
    def lessThan(self, left: _Index, right: _Index) -> bool:
        a, b = left.data(SORT_ROLE), right.data(SORT_ROLE)
        return bool(a < b)


class _Keys(QTableView):
    """A table whose keys ask for what the buttons do."""

    add_asked = Signal()
    change_asked = Signal()
    remove_asked = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        asked = {
            Qt.Key.Key_Insert: self.add_asked,
            Qt.Key.Key_Return: self.change_asked,
            Qt.Key.Key_Enter: self.change_asked,
            Qt.Key.Key_Delete: self.remove_asked,
        }.get(Qt.Key(event.key()))
        if asked is not None and not event.modifiers():
            asked.emit()
        else:
            super().keyPressEvent(event)


class TablePage(QWidget):
    """Rows that can be sorted, added to, changed and removed; a sentence where there are none."""

    add_asked = Signal()
    change_asked = Signal(str)  # the key of the row
    remove_asked = Signal(str)

    def __init__(self, title: str, headings: tuple[str, ...], empty: str, can_add: bool = True) -> None:
        super().__init__()
        self.model = RowsModel(headings)
        self._order = _Order(self)
        self._order.setSourceModel(self.model)
        self.table = _Keys()
        self.table.setModel(self._order)
        self.table.setAccessibleName(title)
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.table.setAlternatingRowColors(True)
        self.table.setShowGrid(False)
        self.table.setTabKeyNavigation(False)
        self.table.setWordWrap(False)
        self.table.verticalHeader().hide()
        self.table.horizontalHeader().setStretchLastSection(True)
        self.table.horizontalHeader().setHighlightSections(False)
        self.table.horizontalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.empty = QLabel(empty)
        self.empty.setObjectName("soft")
        self.empty.setWordWrap(True)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 10, 0, 0)
        column.addWidget(self.empty)
        column.addWidget(self.table, 1)
        column.addLayout(self._buttons(can_add))
        self.table.doubleClicked.connect(lambda _index: self._ask(self.change_asked))
        self.table.change_asked.connect(lambda: self._ask(self.change_asked))
        if can_add:
            self.table.add_asked.connect(self.add_asked)
            self.table.remove_asked.connect(lambda: self._ask(self.remove_asked))
        self.table.selectionModel().selectionChanged.connect(lambda *_: self._enable())

    def _buttons(self, can_add: bool) -> QHBoxLayout:
        row = QHBoxLayout()
        self.add = self._button("Add…", self.add_asked.emit, "main", "Insert")
        self.change = self._button("Change…", lambda: self._ask(self.change_asked), "", "Return")
        self.remove = self._button("Remove…", lambda: self._ask(self.remove_asked), "", "Delete")
        for button in (self.add, self.change, self.remove):
            row.addWidget(button)
        self.add.setVisible(can_add)
        self.remove.setVisible(can_add)
        row.addStretch()
        return row

    def _button(self, text: str, action: Callable[[], object], name: str, key: str) -> QPushButton:
        button = QPushButton(text)
        button.setObjectName(name)
        button.setToolTip(f"Key: {key}")
        button.clicked.connect(lambda: action())
        return button

    def chosen(self) -> str | None:
        """The key of the row that is selected."""
        index = self.table.currentIndex()
        if not index.isValid():
            return None
        return self.model.key(self._order.mapToSource(index).row())

    def choose(self, key: str) -> None:
        row = self.model.row_of(key)
        if row is not None:
            self.table.selectRow(self._order.mapFromSource(self.model.index(row, 0)).row())

    def show_rows(self, rows: list[Row]) -> None:
        """Show ``rows``; the one that was selected stays so."""
        kept = self.chosen()
        is_sorted = self.table.isSortingEnabled()
        self.model.show_rows(rows)
        if not is_sorted:  # the order of the farm holds until a heading is clicked
            self.table.setSortingEnabled(True)
            self._order.sort(-1)
            self.table.horizontalHeader().setSortIndicator(-1, Qt.SortOrder.AscendingOrder)
        self.table.resizeColumnsToContents()
        widest = self.fontMetrics().averageCharWidth() * 46
        for column in range(self.model.columnCount()):
            if self.table.columnWidth(column) > widest:
                self.table.setColumnWidth(column, widest)
        self.empty.setVisible(not rows)
        self.table.setVisible(bool(rows))
        if kept is not None:
            self.choose(kept)
        self._enable()

    def _ask(self, signal: object) -> None:
        key = self.chosen()
        if key is not None:
            signal.emit(key)  # type: ignore[attr-defined]

    def _enable(self) -> None:
        for button in (self.change, self.remove):
            button.setEnabled(self.chosen() is not None)
