"""The page of charts: which chart, of which batch, drawn or as the table behind it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLabel, QPushButton, QStackedWidget, QVBoxLayout, QWidget

from quailsched.desktop.books.chart import Chart
from quailsched.desktop.books.chart_data import EMPTY, ChartData, hatch_chart, lay_chart, weight_chart
from quailsched.desktop.books.table import BookPage
from quailsched.desktop.labels import label
from quailsched.farm.facts import Sort
from quailsched.farm.ledger import standing
from quailsched.farm.records import Batch
from quailsched.outlook.batch_measures import Books
from quailsched.words import marked, say

CHARTS = ("hatch", "lay", "weight")
_NAMES = (marked("Hatch by incubator"), marked("Lay against the curve"), marked("Weight against the curve"))
_OF_BATCH: dict[str, Callable[[Books, Batch], ChartData]] = {"lay": lay_chart, "weight": weight_chart}


class ChartsPage(QWidget):
    """Shows what ``books`` tells; a sentence on what to record where it tells nothing."""

    def __init__(self) -> None:
        super().__init__()
        self._books: Books | None = None
        self.which, self.batch, self._of = QComboBox(), QComboBox(), QLabel(say("&Of"))
        self.which.setAccessibleName(say("Chart"))
        self.batch.setAccessibleName(say("Batch"))
        for key, name in zip(CHARTS, _NAMES, strict=True):
            self.which.addItem(say(name), key)
        self.as_table = QPushButton(say("As a &table"))
        self.as_table.setCheckable(True)
        self.as_table.setToolTip(say("The numbers of the chart as a table"))
        self.chart, self.empty = Chart(), label(say("Working it out…"), "soft")
        self.empty.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.stack = QStackedWidget()
        self._tables: dict[str, BookPage] = {}
        self._lay_out()
        self.which.currentIndexChanged.connect(lambda _n: self._show())
        self.batch.currentIndexChanged.connect(lambda _n: self._show())
        self.as_table.toggled.connect(lambda _on: self._show())

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 10, 0, 0)
        row = QHBoxLayout()
        which = QLabel(say("&Kind of chart"))
        for name, box in ((which, self.which), (self._of, self.batch)):
            name.setBuddy(box)
            row.addWidget(name)
            row.addWidget(box)
        row.addStretch()
        row.addWidget(self.as_table)
        column.addLayout(row)
        self.stack.addWidget(self.chart)
        self.stack.addWidget(self.empty)
        self.stack.setCurrentWidget(self.empty)
        column.addWidget(self.stack, 1)

    def show_books(self, books: Books) -> None:
        self._books = books
        self._show()

    def take_focus(self) -> bool:
        """The keys go to the chart, to its table, or to the choice of charts where there is none."""
        shown = self.stack.currentWidget()
        if isinstance(shown, BookPage):
            return shown.take_focus()
        (self.chart if shown is self.chart else self.which).setFocus()
        return True

    def _show(self) -> None:
        books, key = self._books, self.which.currentData()
        if books is None:
            return
        self._fill_batches(books, key)
        data = self._data(books, key)
        for part in (self._of, self.batch):
            part.setVisible(key in _OF_BATCH and self.batch.count() > 0)
        self.as_table.setEnabled(data is not None)
        if data is None:
            self.empty.setText(say(EMPTY[key]))
            self.stack.setCurrentWidget(self.empty)
            return
        self.chart.show_data(data)
        self.stack.setCurrentWidget(self._table(key, data) if self.as_table.isChecked() else self.chart)

    def _data(self, books: Books, key: str) -> ChartData | None:
        if key not in _OF_BATCH:
            data = hatch_chart(books)
        elif self.batch.currentIndex() >= 0:
            data = _OF_BATCH[key](books, books.season.farm.batch(self.batch.currentData()))
        else:
            return None
        return data if data.spots else None

    def _fill_batches(self, books: Books, key: str) -> None:
        """The batches of which there is something to see, the one that was chosen still if it is among them."""
        if key not in _OF_BATCH:
            return
        batches = [batch for batch in books.season.farm.batches if _has(books, batch, key)]
        wanted = [(batch.id, batch.name) for batch in batches]
        there = [(self.batch.itemData(n), self.batch.itemText(n)) for n in range(self.batch.count())]
        if wanted == there:
            return
        chosen = self.batch.currentData()
        self.batch.blockSignals(True)
        self.batch.clear()
        for batch_id, name in wanted:
            self.batch.addItem(name, batch_id)
        at = self.batch.findData(chosen)
        self.batch.setCurrentIndex(at if at >= 0 else len(wanted) - 1)
        self.batch.blockSignals(False)

    def _table(self, key: str, data: ChartData) -> BookPage:
        if key not in self._tables:
            self._tables[key] = BookPage(data.name, data.headings, "")
            self.stack.addWidget(self._tables[key])
        page = self._tables[key]
        page.table.setAccessibleName(data.name)
        page.show_table(data.table)
        return page


def _has(books: Books, batch: Batch, key: str) -> bool:
    if key == "lay":
        return batch.id in books.eggs
    counts = standing(books.season.farm.counts_of(batch.id))
    return any(one.sort is Sort.WEIGHED and one.batch_id == batch.id for one in counts)
