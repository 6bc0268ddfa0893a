"""Taking in records from a table: how it is written, what becomes of each row, and one button for all the good ones."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from pathlib import Path

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QComboBox, QDialog, QFileDialog, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from quailsched.desktop.buttons import button
from quailsched.desktop.forms.fields import dress
from quailsched.desktop.labels import label
from quailsched.desktop.tables.option_fields import OptionFields
from quailsched.desktop.tables.rows_table import RowsTable
from quailsched.desktop.tasks import Run
from quailsched.edits.tables.rows import Fate, Taking
from quailsched.farm.faults import FarmError
from quailsched.farm.units import count_text
from quailsched.report.taking import sheet_text, sum_text
from quailsched.session.faults import StoreError
from quailsched.session.open_farm import OpenFarm
from quailsched.session.tables import look_at_table, read_table
from quailsched.words import marked, say

_SIZE_PX = QSize(1080, 620)
TABLE_FILES = marked("Tables (*.csv *.tsv *.txt);;All files (*)")


class TakeForm(QDialog):
    """After ``exec`` is accepted, ``taking`` is what is to be taken in."""

    def __init__(self, parent: QWidget | None, opened: OpenFarm, path: Path, today: date, run: Run) -> None:
        super().__init__(parent)
        self.setWindowTitle(say("Records from a table"))
        self._opened, self._today, self._run = opened, today, run
        self.taking: Taking | None = None
        self._text: str | None = None
        self._asked = 0  # how often was asked what becomes of the rows: older answers are passed over
        self.fields = OptionFields(opened.plan)
        self.file_name, self.told, self.fault, self.total = (
            label("", "strong"),
            label("", "soft"),
            label("", "fault"),
            QLabel(),
        )
        self.shown = QComboBox()
        for words, fate in ((say("all rows"), None), *((say(fate), fate) for fate in Fate)):
            self.shown.addItem(words, fate)
        self.rows = RowsTable()
        self._lay_out()
        self.fields.changed.connect(self.look)
        self.shown.currentIndexChanged.connect(self._show_rows)
        dress(self)
        self.resize(_SIZE_PX.boundedTo(self.screen().availableSize()))
        self.rows.view.setFocus()
        self.read(path)

    def _lay_out(self) -> None:
        self.other = button(say("Another file…"), self._ask_file)
        cancel = button(say("Cancel"), self.reject)
        self.take = QPushButton()
        self.take.setObjectName("main")
        self.take.setDefault(True)
        self.take.clicked.connect(self.accept)
        show = QLabel(say("&Show"))
        show.setBuddy(self.shown)
        column = QVBoxLayout(self)
        column.addLayout(_line(self.file_name, None, self.other))
        column.addWidget(self.fields)
        column.addWidget(self.told)
        column.addWidget(self.fault)
        column.addLayout(_line(self.total, None, show, self.shown))
        column.addWidget(self.rows, 1)
        column.addLayout(_line(None, cancel, self.take))

    def read(self, path: Path) -> None:
        """Show another table."""
        self.file_name.setText(path.name)
        self._text = None
        try:
            self._text = read_table(path)
        except (FarmError, StoreError) as error:
            self._asked += 1
            self._show(error)
        else:
            self.look()

    def look(self) -> None:
        """Work out what becomes of the rows, beside the window: a thousand take a second."""
        if self._text is None:
            return
        self._asked += 1
        self.take.setEnabled(False)
        self.total.setText(say("Reading the rows…"))
        number, work = self._asked, _work(self._opened, self._text, self.fields, self._today)

        def done(answer: Taking | FarmError) -> None:
            if number == self._asked:
                self._show(answer)

        self._run(work, done)

    def _show(self, answer: Taking | FarmError | StoreError) -> None:
        is_taking = isinstance(answer, Taking)
        self.taking = answer if isinstance(answer, Taking) else None
        self.fault.setText("" if is_taking else str(answer))
        self.told.setText(sheet_text(answer) if isinstance(answer, Taking) else "")
        self.total.setText(sum_text(answer) if isinstance(answer, Taking) else say("No row can be taken in yet."))
        self.fault.setVisible(not is_taking)
        self.told.setVisible(is_taking)
        self.fields.show_found(self.taking.sheet if self.taking is not None else None)
        many = len(self.taking.of(Fate.TAKEN)) if self.taking is not None else 0
        self.take.setEnabled(many > 0)
        self.take.setText(say("&Take in {rows}", rows=count_text(many, "row")) if many else say("&Take in"))
        self._show_rows()
        if isinstance(answer, FarmError) and any(fault.field == "day_order" for fault in answer.faults):
            self.fields.order.setFocus()

    def _show_rows(self) -> None:
        fate = self.shown.currentData()
        rows = self.taking.rows if self.taking is not None else ()
        self.rows.show_rows(tuple(row for row in rows if fate is None or row.fate == fate))

    def _ask_file(self) -> None:
        chosen, _ = QFileDialog.getOpenFileName(self, say("Records from a table"), str(Path.home()), say(TABLE_FILES))
        if chosen:
            self.read(Path(chosen))

    def done(self, code: int) -> None:
        self._asked += 1  # an answer that comes later has no window any more
        super().done(code)


def _work(opened: OpenFarm, text: str, fields: OptionFields, today: date) -> Callable[[], Taking | FarmError]:
    options = fields.options

    def work() -> Taking | FarmError:
        try:
            return look_at_table(opened, text, options, today)
        except FarmError as error:
            return error

    return work


def _line(*widgets: QWidget | None) -> QHBoxLayout:
    """Widgets beside each other; None is room between them."""
    row = QHBoxLayout()
    for widget in widgets:
        if widget is None:
            row.addStretch(1)
        else:
            row.addWidget(widget)
    return row
