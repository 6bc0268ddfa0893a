"""The history of a farm as a list: every step, when it was made, and going back to any of them."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, QSortFilterProxyModel, Qt
from PySide6.QtGui import QFont
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QDialogButtonBox,
    QHeaderView,
    QLineEdit,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from quailsched.desktop.buttons import button
from quailsched.desktop.labels import label
from quailsched.farm.units import named_day_text
from quailsched.session.open_farm import OpenFarm
from quailsched.words import say

if TYPE_CHECKING:
    from quailsched.desktop.main_window import MainWindow
    from quailsched.session.open_farm import Entry

_Index = QModelIndex | QPersistentModelIndex
STEP = int(Qt.ItemDataRole.UserRole)
_ROOT = QModelIndex()
_WHEN, _WHAT = 0, 1


class HistoryModel(QAbstractTableModel):
    """The steps of a history, newest first; the last row is its beginning. ``STEP`` gives a row's number of step."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._entries: list[Entry] = []
        self._now = 0

    def show_entries(self, entries: list[Entry]) -> None:
        self.beginResetModel()
        self._entries = entries
        self._now = sum(not entry.is_undone for entry in entries)
        self.endResetModel()

    @property
    def now(self) -> int:
        """The step at which the farm stands."""
        return self._now

    def row_of(self, step: int) -> int:
        return len(self._entries) - step

    def rowCount(self, parent: _Index = _ROOT) -> int:
        return 0 if parent.isValid() else len(self._entries) + 1

    def columnCount(self, parent: _Index = _ROOT) -> int:
        return 0 if parent.isValid() else 2

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = 0) -> Any:
        if orientation is Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            return (say("When"), say("What"))[section]
        return None

    def data(self, index: _Index, role: int = 0) -> Any:
        step = len(self._entries) - index.row()
        if role == STEP:
            return step
        if role == Qt.ItemDataRole.DisplayRole:
            return self._when(step) if index.column() == _WHEN else self._what(step)
        if role == Qt.ItemDataRole.FontRole and step == self._now:
            font = QFont()
            font.setBold(True)
            return font
        return None

    def _when(self, step: int) -> str:
        if not step:
            return ""
        at = self._entries[step - 1].at.astimezone()
        return f"{named_day_text(at.date())} {at.year}, {at:%H:%M}"

    def _what(self, step: int) -> str:
        what = self._entries[step - 1].label if step else say("The beginning: as the farm was made")
        if step == self._now:
            return say("{what}  (the farm is here)", what=what)
        return say("{what}  (taken back)", what=what) if step > self._now else what


class HistoryDialog(QDialog):
    """Shows the history and goes to a step of it. What is gone to can be left again, as long as nothing new is done."""

    def __init__(self, parent: QWidget, opened: OpenFarm, attempt: Callable[[Callable[[], object]], None]) -> None:
        """``attempt`` does what may be refused, and tells why it was."""
        super().__init__(parent)
        self._opened, self._attempt = opened, attempt
        self.setWindowTitle(say("History"))
        self.resize(620, 460)
        self.model = HistoryModel(self)
        self._found = QSortFilterProxyModel(self)
        self._found.setSourceModel(self.model)
        self._found.setFilterKeyColumn(_WHAT)
        self._found.setFilterCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        self.search = QLineEdit()
        self.search.setPlaceholderText(say("Find a step, such as a batch's name"))
        self.search.setAccessibleName(say("Find a step"))
        self.search.textChanged.connect(self._found.setFilterFixedString)
        self.table = self._new_table()
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        self.go = button(say("Go to this step"), self._go)
        self.go.setToolTip(say("Everything after it is taken back; it can be done again from here."))
        buttons.addButton(self.go, QDialogButtonBox.ButtonRole.ActionRole)
        buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        told = say(
            "Every change is a step. Go to one to have the farm as it was then. The steps after it stay in the list to "
            "be done again, until you change something."
        )
        column.addWidget(label(told, "soft"))
        column.addWidget(self.search)
        column.addWidget(self.table, 1)
        column.addWidget(buttons)
        self.refresh()

    def refresh(self) -> None:
        """Show the history as it is now, with the step picked at which the farm stands."""
        self.model.show_entries(self._opened.history())
        here = self._found.mapFromSource(self.model.index(self.model.row_of(self.model.now), 0))
        if here.isValid():
            self.table.selectRow(here.row())
            self.table.scrollTo(here)
        self._enable()

    def picked_step(self) -> int | None:
        rows = self.table.selectionModel().selectedRows()
        return int(rows[0].data(STEP)) if rows else None

    def _new_table(self) -> QTableView:
        table = QTableView()
        table.setModel(self._found)
        table.setAccessibleName(say("Steps, newest first"))
        table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        table.setTabKeyNavigation(False)
        table.setShowGrid(False)
        table.verticalHeader().hide()
        table.horizontalHeader().setHighlightSections(False)
        table.horizontalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        table.horizontalHeader().setSectionResizeMode(_WHEN, QHeaderView.ResizeMode.ResizeToContents)
        table.horizontalHeader().setSectionResizeMode(_WHAT, QHeaderView.ResizeMode.Stretch)
        table.activated.connect(self._go)
        table.selectionModel().selectionChanged.connect(self._enable)
        return table

    def _enable(self, *_: object) -> None:
        self.go.setEnabled(self.picked_step() not in (None, self.model.now))

    def _go(self, *_: object) -> None:
        step = self.picked_step()
        if step is not None and step != self.model.now:
            self._attempt(lambda: self._opened.go_to(step))
            self.refresh()


class HistoryCommands:
    """The command of the Change menu."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window

    def show_history(self) -> None:
        """Open the history of the farm that is shown. A step that cannot be written is told of."""
        dialog = HistoryDialog(self._window, self._window.opened, self._window.attempt)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.exec()
