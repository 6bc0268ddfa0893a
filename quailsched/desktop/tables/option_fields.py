"""The fields that say how a table is written: each as it was found, or as the keeper says."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QComboBox, QGridLayout, QLabel, QVBoxLayout, QWidget

from quailsched.desktop.forms.fields import NarrowChoice
from quailsched.edits.tables.cells import DayOrder
from quailsched.edits.tables.grid import DELIMITERS
from quailsched.edits.tables.sheet import LOG_WORDS, Log, Options, Sheet
from quailsched.farm.records import Farm
from quailsched.husbandry.handbook import handbook
from quailsched.report.taking import DELIMITER_WORDS
from quailsched.words import say

_IN_A_ROW = 3


class OptionFields(QWidget):
    """``options`` is what the fields say; ``changed`` comes when one says something else."""

    changed = Signal()

    def __init__(self, farm: Farm) -> None:
        super().__init__()
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(14)
        self._many = 0
        self.log = self._field(say("&What it is"), {None: "", **{log: say(LOG_WORDS[log]) for log in Log}})
        self.delimiter = self._field(
            say("Columns &parted by"), {None: "", **{mark: say(DELIMITER_WORDS[mark]) for mark in DELIMITERS}}
        )
        self.order = self._field(say("Order of &days"), {None: "", **{order: say(order) for order in DayOrder}})
        self.mark = self._field(
            say("Decimals &after"), {None: "", ",": say("comma, as in 1,5"), ".": say("point, as in 1.5")}
        )
        self.kind = self._field(say("New batches a&re"), {kind.id: say(kind.name) for kind in handbook().values()})
        self.place = self._field(
            say("Rows without a p&lace are of"), {"": say("not told"), **{one.id: one.name for one in farm.places}}
        )
        for field in (self.log, self.delimiter, self.order, self.mark):
            field.setItemText(0, say("as found"))

    def _field(self, text: str, choices: dict[object, str]) -> QComboBox:
        field = NarrowChoice()
        for data, words in choices.items():
            field.addItem(words, data)
        field.setAccessibleName(text.replace("&", ""))
        field.currentIndexChanged.connect(self.changed)
        name = QLabel(text)
        name.setBuddy(field)
        row, column = divmod(self._many, _IN_A_ROW)
        self._many += 1
        pair = QVBoxLayout()
        pair.setSpacing(2)
        pair.addWidget(name)
        pair.addWidget(field)
        self._grid.addLayout(pair, row, column)
        self._grid.setColumnStretch(column, 1)
        return field

    @property
    def options(self) -> Options:
        log, order = self.log.currentData(), self.order.currentData()
        return Options(
            Log(log) if log else None, self.delimiter.currentData(), DayOrder(order) if order else None,
            self.mark.currentData(), self.kind.currentData(), self.place.currentData(),
        )  # fmt: skip

    def show_found(self, sheet: Sheet | None) -> None:
        """Say in each field what was found; None if the table could not be read."""
        found = dict.fromkeys((self.log, self.delimiter, self.order, self.mark), "")
        if sheet is not None:
            found[self.log] = say(LOG_WORDS[sheet.log])
            found[self.delimiter] = say(DELIMITER_WORDS.get(sheet.grid.delimiter, sheet.grid.delimiter))
            found[self.order] = say(sheet.orders[0])
            found[self.mark] = say("comma") if sheet.decimal_mark == "," else say("point")
        for field, words in found.items():
            if field.currentIndex() == 0:
                field.setItemText(0, say("as found: {found}", found=words) if words else say("as found"))
        self.kind.setEnabled(sheet is None or sheet.log is Log.HATCHES)
        self.place.setEnabled(sheet is None or sheet.log is Log.EGGS)
