"""One table of the Setup view with its buttons."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QSortFilterProxyModel, Qt, Signal
from PySide6.QtGui import QKeyEvent, QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import QAbstractItemView, QTableView, QVBoxLayout, QWidget

from quailsched.desktop.empty_page import EmptyPage
from quailsched.desktop.narrow import FewLines, ShortButton, shorten, together
from quailsched.desktop.setup.model import RowsModel
from quailsched.desktop.setup.tables import Row
from quailsched.words import say

_ROWS_FITTED = 100  # rows that columns are as wide as: of thousands each takes its time
_HEADING_PAD = 10  # pixels beside the words of a heading, in the sheet of the theme and a little more
_LOW_LINES = 18  # of text: a page of fewer is low
_Index = QModelIndex | QPersistentModelIndex


class _Order(QSortFilterProxyModel):
    def lessThan(self, left: _Index, right: _Index) -> bool:
        model = self.sourceModel()
        assert isinstance(model, RowsModel)
        return bool(model.sort_value(left.row(), left.column()) < model.sort_value(right.row(), right.column()))


class _Table(QTableView):
    """A table of whole rows, whose keys ask for what the buttons do."""

    change_asked = Signal()
    remove_asked = Signal()
    moved = Signal()

    def __init__(self, title: str) -> None:
        super().__init__()
        self.setAccessibleName(title)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setAlternatingRowColors(True)
        self.setShowGrid(False)
        self.setTabKeyNavigation(False)
        self.setWordWrap(False)
        self.verticalHeader().hide()
        header = self.horizontalHeader()
        header.setStretchLastSection(True)
        header.setHighlightSections(False)
        header.setResizeContentsPrecision(_ROWS_FITTED)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setToolTip(say("A click sorts by this column, and so does Ctrl+Up or Ctrl+Down in one of its cells."))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key, is_ctrl = Qt.Key(event.key()), event.modifiers() == Qt.KeyboardModifier.ControlModifier
        asked = {
            Qt.Key.Key_Return: self.change_asked,
            Qt.Key.Key_Enter: self.change_asked,
            Qt.Key.Key_Delete: self.remove_asked,
        }.get(key)
        if asked is not None and not event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier:
            asked.emit()
        elif is_ctrl and key in (Qt.Key.Key_Up, Qt.Key.Key_Down) and self.currentIndex().isValid():
            up, down = Qt.SortOrder.AscendingOrder, Qt.SortOrder.DescendingOrder
            self.sortByColumn(self.currentIndex().column(), up if key is Qt.Key.Key_Up else down)
        else:
            super().keyPressEvent(event)

    def currentChanged(self, current: _Index, previous: _Index) -> None:
        super().currentChanged(current, previous)
        self.moved.emit()


class TablePage(QWidget):
    """Rows that can be sorted, added to, changed and removed; where there are none, how to begin."""

    add_asked = Signal()
    begin_asked = Signal()  # by the button that stands where there are no rows
    change_asked = Signal(str)  # the key of the row
    remove_asked = Signal(str)

    def __init__(self, title: str, headings: tuple[str, ...], can_add: bool = True) -> None:
        super().__init__()
        self.model = RowsModel(headings)
        self._wanted: list[int] = []  # widths of columns, if there were room for all
        self._whole: list[int] = []  # the same, with no cell cut
        self._order = _Order(self)
        self._order.setSourceModel(self.model)
        self.table = _Table(say(title))
        self.table.setModel(self._order)
        self.empty = EmptyPage()
        self.empty.asked.connect(self.begin_asked)
        self.empty.hide()
        self.whole = FewLines(3)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 8, 0, 0)
        column.addWidget(self.empty, 1)
        column.addWidget(self.table, 1)
        column.addWidget(self.whole)
        column.addWidget(self._buttons(can_add), alignment=Qt.AlignmentFlag.AlignLeft)
        self.table.doubleClicked.connect(lambda _index: self._ask(self.change_asked))
        self.table.change_asked.connect(lambda: self._ask(self.change_asked))
        self.table.moved.connect(self._row_chosen)
        if can_add:
            keys = QShortcut(QKeySequence(Qt.Key.Key_Insert), self, self.add_asked.emit)
            keys.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            self.table.remove_asked.connect(lambda: self._ask(self.remove_asked))

    def _buttons(self, can_add: bool) -> QWidget:
        self.add = self._button(say("Add…"), self.add_asked.emit, "add", "Insert")
        self.add.setObjectName("main")
        self.add.ink = "on_good"
        self.change = self._button(say("Change…"), lambda: self._ask(self.change_asked), "change", "Return")
        self.remove = self._button(say("Remove…"), lambda: self._ask(self.remove_asked), "remove", "Delete")
        if not can_add:  # never told to show here: without a parent yet, each would be a window for a moment
            self.add.hide()
            self.remove.hide()
        self._foot = together(self.add, self.change, self.remove)
        return self._foot

    def _button(self, text: str, action: Callable[[], object], picture: str, key: str) -> ShortButton:
        button = ShortButton(text, picture)
        button.setToolTip(say("Key: {key}", key=key))
        button.setAccessibleDescription(f"{self.table.accessibleName()}. {button.toolTip()}")
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
        """Show ``rows``; the one that was selected stays so, or else the one that takes its place."""
        kept, line, cell = self.chosen(), self.table.currentIndex().row(), self.table.currentIndex().column()
        had_focus = self.table.hasFocus()
        is_sorted = self.table.isSortingEnabled()
        self.model.show_rows(rows)
        if not is_sorted:  # the order of the farm holds until a heading is clicked
            self.table.horizontalHeader().setSortIndicator(-1, Qt.SortOrder.AscendingOrder)
            self.table.setSortingEnabled(True)
        self._fit_columns()
        self.empty.setVisible(not rows)
        for part in (self.table, self._foot):
            part.setVisible(bool(rows))
        found = self.model.row_of(kept) if kept is not None else None
        if found is not None:
            line = self._order.mapFromSource(self.model.index(found, 0)).row()
        if rows:
            self.table.setCurrentIndex(self._order.index(min(max(line, 0), len(rows) - 1), max(cell, 0)))
        elif had_focus:
            self.empty.button.setFocus()
        self._row_chosen()

    def take_focus(self) -> None:
        """The keys go to the table, or to the button that makes its first row."""
        (self.empty.button if self.table.isHidden() else self.table).setFocus()

    def _fit_columns(self) -> None:
        letter = self.fontMetrics().averageCharWidth()
        self.table.resizeColumnsToContents()
        columns = range(self.model.columnCount())
        self._whole = [
            self._heading_alone(column) if self._is_empty(column) else self.table.columnWidth(column) + 2 * letter
            for column in columns
        ]
        self._wanted = [min(wide, 38 * letter) for wide in self._whole]
        self._share_columns()

    def _is_empty(self, column: int) -> bool:
        return not any(self.model.index(row, column).data() for row in range(self.model.rowCount()))

    def _heading_alone(self, column: int) -> int:
        """The width of a heading without the arrow of sorting: nothing stands below it that could be sorted."""
        text = self.model.headerData(column, Qt.Orientation.Horizontal)
        return self.table.horizontalHeader().fontMetrics().horizontalAdvance(str(text)) + 2 * _HEADING_PAD

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._share_columns()
        buttons = [one for one in (self.add, self.change, self.remove) if not one.isHidden()]
        shorten(buttons, self.width() - self._foot.minimumSizeHint().width())
        self.whole.show_low(event.size().height() < self.fontMetrics().height() * _LOW_LINES)

    def _share_columns(self) -> None:
        """The widest columns give way, the names last, so that the last column is not cut at the edge."""
        bar = self.table.verticalScrollBar().sizeHint().width()
        least = 20 * self.fontMetrics().averageCharWidth()
        over = sum(self._wanted) - (self.width() - bar - 2 * self.table.frameWidth())
        widths = list(self._wanted)
        for column in sorted(range(len(widths)), key=lambda n: (n == 0, -widths[n])):
            given = max(min(over, widths[column] - least), 0)
            widths[column] -= given
            over -= given
        for column, whole in enumerate(self._whole):  # what is left over makes long cells whole
            more = max(min(-over, whole - widths[column]), 0)
            widths[column] += more
            over += more
        for column, wide in enumerate(widths):
            self.table.setColumnWidth(column, wide)

    def _ask(self, signal: object) -> None:
        key = self.chosen()
        if key is not None:
            signal.emit(key)  # type: ignore[attr-defined]

    def _row_chosen(self) -> None:
        """What can be done with the row; and in full what its cells have no room for."""
        index = self.table.currentIndex()
        for button in (self.change, self.remove):
            button.setEnabled(index.isValid())
        self.whole.setText("\n".join(self._cut_off(index.row())) if index.isValid() else "")
        self.whole.setVisible(bool(self.whole.text()))

    def _cut_off(self, row: int) -> list[str]:
        told = []
        for column in range(self.model.columnCount()):
            index = self._order.index(row, column)
            if self.table.sizeHintForIndex(index).width() > self.table.columnWidth(column):
                told.append(f"{self.model.headerData(column, Qt.Orientation.Horizontal)}: {index.data()}")
        return told
