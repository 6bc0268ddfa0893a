"""What stands on a day without chores, and what can be done about it."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout

from quailsched.desktop.buttons import button
from quailsched.desktop.labels import label
from quailsched.desktop.today.page import DayPage
from quailsched.farm.records import Farm
from quailsched.farm.units import named_day_text
from quailsched.words import say


class NothingDue(QFrame):
    """Hidden while there is something to do."""

    add_asked = Signal()
    batch_wanted = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("quiet")
        self.text, self.more = label("", "quietHeading"), label("", "soft")
        self.batch = button(say("Add a batch…"), self.batch_wanted.emit)
        self.chore = button(say("Add a chore…"), self.add_asked.emit)
        row = QHBoxLayout()
        row.addWidget(self.batch)
        row.addWidget(self.chore)
        row.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(18, 16, 18, 16)
        column.addWidget(self.text)
        column.addWidget(self.more)
        column.addLayout(row)
        self.hide()

    def show_page(self, page: DayPage, farm: Farm) -> None:
        self.setVisible(not page.chores)
        self.batch.setVisible(not farm.batches)
        if not farm.batches:
            self.text.setText(say("Nothing is due, as no batch is planned."))
            self.more.setText(say("Chores follow from batches: with the first one they stand here day by day."))
            return
        self.text.setText(say("Nothing is due on this day."))
        ahead = next(((day, chores) for day, chores in page.ahead if chores), None)
        if ahead is None:
            self.more.setText(say("Nor on the seven days after it. Counts can be recorded all the same."))
        else:
            day, chores = ahead
            self.more.setText(say("Next, on {day}: {chore}.", day=named_day_text(day, page.day), chore=chores[0].title))
