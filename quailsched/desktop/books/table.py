"""A table of the Books view: rows that can be sorted, formulas as tips, and below it what the chosen cell rests on."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, QSortFilterProxyModel, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QAbstractItemView, QTableView, QVBoxLayout, QWidget

from quailsched.desktop.books.rows import BookRow, BookTable, Cell, Heading
from quailsched.desktop.labels import label
from quailsched.words import say

_Index = QModelIndex | QPersistentModelIndex
_SORT = Qt.ItemDataRole.UserRole
_SHORT = 9  # letters of a heading that is not broken
_LINES = 2.4  # of a heading, which is broken between words
_RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
_LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter


class BookModel(QAbstractTableModel):
    """Rows that are replaced as a whole."""

    def __init__(self, headings: tuple[Heading, ...]) -> None:
        super().__init__()
        self.headings = headings
        self.rows: tuple[BookRow, ...] = ()

    def show_rows(self, rows: tuple[BookRow, ...]) -> None:
        self.beginResetModel()
        self.rows = rows
        self.endResetModel()

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own signature
        return 0 if parent.isValid() else len(self.rows)

    def columnCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own signature
        return 0 if parent.isValid() else len(self.headings)

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid():
            return None
        cell = self.rows[index.row()].cells[index.column()]
        if role == Qt.ItemDataRole.DisplayRole:
            return cell.text
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return cell.spoken or cell.text
        if role == Qt.ItemDataRole.ToolTipRole:
            return cell.told or None
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return _RIGHT if self.headings[index.column()].is_number else _LEFT
        return cell.sort if role == _SORT else None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if orientation is not Qt.Orientation.Horizontal:
            return None
        heading = self.headings[section]
        if role == Qt.ItemDataRole.DisplayRole:
            return heading.text
        if role == Qt.ItemDataRole.ToolTipRole:
            return heading.tip or None
        if role == Qt.ItemDataRole.TextAlignmentRole:
            across = Qt.AlignmentFlag.AlignRight if heading.is_number else Qt.AlignmentFlag.AlignLeft
            return Qt.AlignmentFlag(across | Qt.AlignmentFlag.AlignBottom | Qt.TextFlag.TextWordWrap)
        return None


class _Order(QSortFilterProxyModel):
    def lessThan(self, left: _Index, right: _Index) -> bool:
        return bool(left.data(_SORT) < right.data(_SORT))


class _Table(QTableView):
    def keyPressEvent(self, event: QKeyEvent) -> None:
        key, is_ctrl = Qt.Key(event.key()), event.modifiers() == Qt.KeyboardModifier.ControlModifier
        if is_ctrl and key in (Qt.Key.Key_Up, Qt.Key.Key_Down) and self.currentIndex().isValid():
            up, down = Qt.SortOrder.AscendingOrder, Qt.SortOrder.DescendingOrder
            self.sortByColumn(self.currentIndex().column(), up if key is Qt.Key.Key_Up else down)
        else:
            super().keyPressEvent(event)


class BookPage(QWidget):
    """A table with what its chosen cell rests on; a sentence on what to do where it has no rows."""

    def __init__(self, title: str, headings: tuple[Heading, ...], empty: str) -> None:
        super().__init__()
        self.model = BookModel(headings)
        self._order = _Order(self)
        self._order.setSourceModel(self.model)
        self.table = _Table()
        self._dress_table(title)
        self._empty_words = empty
        self.empty = label(say("Working it out…"), "soft")
        self.empty.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.table.hide()
        self.told, self.left_out = label("", "plain"), label("", "soft")
        self.told.setAccessibleName(say("What the cell rests on"))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 10, 0, 0)
        column.addWidget(self.empty, 1000)
        column.addWidget(self.table, 1000)
        column.addWidget(self.told)
        column.addWidget(self.left_out)
        column.addStretch(1)
        self.table.selectionModel().currentChanged.connect(lambda _now, _before: self._tell())

    def _dress_table(self, title: str) -> None:
        table = self.table
        table.setAccessibleName(title)
        table.setModel(self._order)
        table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        table.setAlternatingRowColors(True)
        table.setShowGrid(False)
        table.setTabKeyNavigation(False)
        table.setWordWrap(False)
        table.verticalHeader().hide()
        table.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        header = table.horizontalHeader()
        header.setHighlightSections(False)
        header.setMinimumHeight(round(self.fontMetrics().height() * _LINES) + 10)
        self._order.sort(-1)
        table.setSortingEnabled(True)
        self._order.sort(-1)
        header.setSortIndicator(-1, Qt.SortOrder.AscendingOrder)

    def show_table(self, found: BookTable) -> None:
        """Show other rows; the cell that was chosen stays so where there is one."""
        at = self.table.currentIndex()
        row, column = at.row(), at.column()
        self.model.show_rows(found.rows)
        self.empty.setText(self._empty_words)
        self.empty.setVisible(not found.rows)
        self.table.setVisible(bool(found.rows))
        self.left_out.setText(found.left_out)
        self.left_out.setVisible(bool(found.left_out))
        self._fit_columns()
        if found.rows:
            first = next((n for n, cell in enumerate(found.rows[0].cells) if cell.told), 0)  # that tells something
            row, column = min(max(row, 0), len(found.rows) - 1), column if column >= 0 else first
            self.table.setCurrentIndex(self._order.index(row, column))
        self._tell()

    def take_focus(self) -> bool:
        """The keys go to the table; whether it has rows to go through."""
        if self.table.isHidden():
            return False
        self.table.setFocus()
        return True

    def _fit_columns(self) -> None:
        """Columns as wide as cells and the longest word of the heading, the frame around them as large as they are."""
        table, header, metrics = self.table, self.table.horizontalHeader(), self.table.fontMetrics()
        for number, heading in enumerate(self.model.headings):
            whole = header.fontMetrics().horizontalAdvance(heading.text)
            word = max(header.fontMetrics().horizontalAdvance(one) for one in heading.text.split())
            cells = max((metrics.horizontalAdvance(row.cells[number].text) for row in self.model.rows), default=0)
            least = whole if len(heading.text) < _SHORT else max(word, whole / 2 + metrics.averageCharWidth())
            table.setColumnWidth(number, min(max(round(least) + 20, cells + 18), 34 * metrics.averageCharWidth()))
        frame, bar = 2 * table.frameWidth(), table.verticalScrollBar().sizeHint().width()
        table.setMaximumWidth(header.length() + frame + bar)
        rows = table.verticalHeader().length()
        table.setMaximumHeight(max(header.sizeHint().height(), header.minimumHeight()) + rows + frame + bar)

    def _tell(self) -> None:
        index = self.table.currentIndex()
        if not index.isValid() or self.table.isHidden():
            self.told.setText("")
            return
        source = self._order.mapToSource(index)
        row, heading = self.model.rows[source.row()], self.model.headings[source.column()]
        self.told.setText(_told(row.cells[0], heading, row.cells[source.column()]))


def _told(first: Cell, heading: Heading, cell: Cell) -> str:
    if not heading.tip and not cell.told:
        return first.text
    what = f"{first.text} · {heading.text}: {cell.spoken or cell.text}"
    if cell.told and cell.told != cell.spoken:
        what = f"{what} ({cell.told})"
    return f"{what}\n{heading.tip}" if heading.tip else what
