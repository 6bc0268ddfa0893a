"""What has happened to a batch, on its page: plan and fact, what was counted, and what can be recorded."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QPushButton, QVBoxLayout, QWidget

from quailsched.desktop.buttons import button
from quailsched.desktop.labels import label
from quailsched.desktop.narrow import Beside
from quailsched.farm.records import Batch
from quailsched.report.plan_and_fact import Compared, ledger_rows, plan_and_fact
from quailsched.season.season import Season
from quailsched.words import say


class FactsBox(QWidget):
    """Asks by ``asked``: "record", "counts", "part" or "join"."""

    asked = Signal(str)

    def __init__(self, season: Season, batch: Batch, today: date) -> None:
        super().__init__()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        if rows := plan_and_fact(season.farm, batch):
            column.addWidget(label(say("Plan and fact"), "strong"))
            column.addLayout(_compared(rows))
        if ledger := ledger_rows(season, batch, today):
            column.addWidget(label(say("Counted"), "strong"))
            column.addLayout(_pairs(ledger))
        record, counts, part, join = (
            self._button(*one, batch.name)
            for one in (
                (say("Record…"), "record", say("A count of any sort. Key: Ctrl+R")),
                (say("Counts…"), "counts", say("All counts, to correct and to take back. Key: Ctrl+Shift+R")),
                (say("Part off…"), "part", say("A part of it becomes a batch of its own")),
                (say("Join…"), "join", say("Its birds go over to another batch")),
            )
        )
        if not season.birds(batch, today):
            for made in (part, join):
                made.setEnabled(False)
                made.setToolTip(say("It has no birds today."))
        column.addWidget(Beside(record, counts))
        column.addWidget(Beside(part, join))

    def _button(self, text: str, name: str, tip: str, batch_name: str) -> QPushButton:
        made = button(text, lambda: self.asked.emit(name))
        made.setToolTip(tip)
        made.setAccessibleDescription(batch_name)
        return made


def _compared(rows: Sequence[Compared]) -> QGridLayout:
    """What, then plan and fact below each other, with the difference in words: a narrow panel has no room for four
    columns."""
    grid = _grid()
    for number, row in enumerate(rows):
        what = label(row.what, "soft")
        what.setAlignment(Qt.AlignmentFlag.AlignTop)
        grid.addWidget(what, number, 0)
        lines = [say("{fact} ({difference})", fact=row.fact, difference=row.difference) if row.difference else row.fact]
        if row.plan and row.plan != row.fact:
            lines.append(say("plan: {plan}", plan=row.plan))
        grid.addWidget(label("\n".join(lines)), number, 1)
    return grid


def _pairs(rows: Sequence[tuple[str, str]]) -> QGridLayout:
    grid = _grid()
    for number, (name, text) in enumerate(rows):
        soft = label(name, "soft")
        soft.setAlignment(Qt.AlignmentFlag.AlignTop)
        grid.addWidget(soft, number, 0)
        grid.addWidget(label(text), number, 1)
    return grid


def _grid() -> QGridLayout:
    grid = QGridLayout()
    grid.setHorizontalSpacing(12)
    grid.setVerticalSpacing(6)
    grid.setColumnStretch(1, 1)
    return grid
