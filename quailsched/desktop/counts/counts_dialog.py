"""All counts of a batch, a place or the farm as a list; more can be recorded, and these corrected and taken back."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from PySide6.QtCore import Qt, QUrl
from PySide6.QtGui import QDesktopServices, QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QDialog,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QPushButton,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from quailsched.desktop.buttons import button
from quailsched.desktop.counts.choices import of_choices
from quailsched.desktop.counts.count_form import CountForm, Take
from quailsched.desktop.counts.counts_model import WHAT, CountsModel
from quailsched.desktop.forms.fields import dress
from quailsched.desktop.forms.record_form import ask
from quailsched.desktop.labels import label
from quailsched.edits.counts import take_back
from quailsched.farm.facts import Count, Sort
from quailsched.report.counts_told import State, ToldCount, told_counts
from quailsched.session.farms import new_id
from quailsched.session.faults import FarmError, StoreError
from quailsched.session.open_farm import OpenFarm, utc_now
from quailsched.session.photos import photo_folder
from quailsched.words import say


class CountsDialog(QDialog):
    """``take`` carries out a step of the plan; it may raise FarmError and StoreError."""

    def __init__(self, parent: QWidget, opened: OpenFarm, today: date, of_id: str, take: Take) -> None:
        super().__init__(parent)
        self._opened, self._today, self._take = opened, today, take
        self.setWindowTitle(say("Counts"))
        self.of = QComboBox()
        for words, id_ in of_choices(opened.plan):
            self.of.addItem(words, id_)
        self.of.setCurrentIndex(max(self.of.findData(of_id), 0))
        self.of.currentIndexChanged.connect(self.refresh)
        self.model = CountsModel(today, self)
        self.table = self._new_table()
        self.fault = label("", "fault")
        self.fault.hide()
        self._lay_out()
        self.refresh()
        (self.record if self.table.isHidden() else self.table).setFocus()

    def _lay_out(self) -> None:
        head = QHBoxLayout()
        words = QLabel(say("Counts &of"))
        words.setBuddy(self.of)
        self.of.setAccessibleName(say("Counts of"))
        head.addWidget(words)
        head.addWidget(self.of, 1)
        self.record = _button(say("&Record…"), self._record)
        self.correct = _button(say("&Correct…"), self._correct)
        self.back = _button(say("&Take back"), self._take_back)
        self.back.setToolTip(say("It counts no longer, but stays in the list. Key: Delete"))
        self.photo = _button(say("&Show the photo"), self._show_photo)
        close = button(say("Close"), self.reject)
        row = QHBoxLayout()
        for one in (self.record, self.correct, self.back, self.photo):
            row.addWidget(one)
        row.addStretch()
        row.addWidget(close)
        column = QVBoxLayout(self)
        column.addLayout(head)
        told = say(
            "What was recorded is never changed: a correction stands in its place, and what it said before below."
        )
        column.addWidget(label(told, "soft"))
        column.addWidget(self.table, 1)
        self.nothing = label(say("Nothing is counted yet."), "soft")
        self.nothing.setAlignment(Qt.AlignmentFlag.AlignCenter)
        column.addWidget(self.nothing, 1)
        column.addWidget(self.fault)
        column.addLayout(row)
        dress(self)
        wide, tall = self.fontMetrics().averageCharWidth() * 124, self.fontMetrics().height() * 26
        room = self.screen().availableSize()
        self.resize(min(wide, room.width() - 16), min(tall, room.height() - 60))
        QShortcut(QKeySequence("Del"), self.table, self._take_back)

    def _new_table(self) -> QTableView:
        table = QTableView()
        table.setModel(self.model)
        table.setAccessibleName(say("Counts, newest first"))
        table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        table.setTabKeyNavigation(False)
        table.setShowGrid(False)
        table.setWordWrap(False)  # two lines would be pressed into one row; the tip has a long note whole
        table.verticalHeader().hide()
        header = table.horizontalHeader()
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(WHAT, QHeaderView.ResizeMode.Stretch)
        header.setHighlightSections(False)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        table.activated.connect(self._correct)
        table.selectionModel().selectionChanged.connect(self._enable)
        return table

    def refresh(self, _: int = 0, keep: str = "") -> None:
        """Show the counts as they are now; the row of the count ``keep`` is picked, else the first."""
        self.model.show_counts(told_counts(self._opened.plan, self._of_id()))
        row = self.model.row_of(keep) if keep else None
        has_rows = self.model.rowCount() > 0
        self.table.setVisible(has_rows)
        self.nothing.setVisible(not has_rows)
        if has_rows:
            self.table.selectRow(row or 0)
        self._enable()

    def _of_id(self) -> str:
        return str(self.of.currentData() or "")

    def picked(self) -> ToldCount | None:
        rows = self.table.selectionModel().selectedRows()
        return self.model.told(rows[0].row()) if rows else None

    def _standing(self) -> Count | None:
        """The count that is picked, if it holds and has not left two batches different."""
        told = self.picked()
        return told.count if told is not None and told.state is State.HOLDS else None

    def _enable(self, *_: object) -> None:
        told, count = self.picked(), self._standing()
        is_both = count is not None and count.sort in (Sort.PARTED, Sort.JOINED)
        for one in (self.correct, self.back):
            one.setEnabled(count is not None and not is_both)
        tip = say("The other batch has these birds now: undo the step in the history instead.")
        self.correct.setToolTip(tip if is_both else say("Key: Return"))
        self.photo.setEnabled(told is not None and bool(told.count.file_name))

    def _record(self) -> None:
        self._ask(None)

    def _correct(self, *_: object) -> None:
        count = self._standing()
        if count is not None and self.correct.isEnabled():
            self._ask(count)

    def _ask(self, old: Count | None) -> None:
        self._tell("")
        saved = ask(CountForm(self, self._opened, self._today, self._of_id(), self._take, old))
        if saved is not None:
            self.refresh(keep=saved)
        self.table.setFocus()

    def _take_back(self) -> None:
        count, opened = self._standing(), self._opened
        if count is None or not self.back.isEnabled():
            return
        taken = new_id()
        self._attempt(lambda: self._take(take_back(opened.plan, count.id, taken, utc_now())))
        self.refresh(keep=taken)
        self.table.setFocus()

    def _show_photo(self) -> None:
        told = self.picked()
        if told is None:
            return
        path = photo_folder(self._opened.file.path) / told.count.file_name
        if not path.is_file():
            self._tell(say("{path} is not there any more.", path=path))
            return
        QDesktopServices.openUrl(QUrl.fromLocalFile(str(path)))

    def _attempt(self, step: Callable[[], None]) -> None:
        self._tell("")
        try:
            step()
        except (FarmError, StoreError) as error:
            self._tell(str(error))

    def _tell(self, text: str) -> None:
        self.fault.setText(text)
        self.fault.setVisible(bool(text))


def _button(text: str, action: Callable[[], object]) -> QPushButton:
    """A button with a key: the letter after "&"."""
    made = button("", action)
    made.setText(text)
    return made
