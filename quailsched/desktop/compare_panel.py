"""The panel that shows a trial and the plan side by side."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QGridLayout, QScrollArea, QVBoxLayout, QWidget

from quailsched.desktop.buttons import button
from quailsched.desktop.clash_rows import ClashRow
from quailsched.desktop.labels import as_it_is, label
from quailsched.planner.compare import Comparison
from quailsched.report.trial_words import change_lines
from quailsched.report.trials import LEFT_OUT, Row, clash_lines, misfit_lines, same_text, table_rows
from quailsched.season.clash import Clash
from quailsched.words import say


class ComparePanel(QFrame):
    """What is otherwise, a table of the two, and the clashes that come and go."""

    clash_chosen = Signal(object)  # Clash
    back_asked = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("card")
        self._area = QScrollArea(self)
        self._area.setWidgetResizable(True)
        self._area.setFrameShape(QFrame.Shape.NoFrame)
        self._area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(6, 6, 6, 6)
        layout.addWidget(self._area)
        self.show_waiting()

    def show_waiting(self) -> None:
        page, column = _new_page()
        column.addWidget(label(say("Comparing …"), "soft"))
        self._show(page, column)

    def show_comparison(self, name: str, comparison: Comparison) -> None:
        """``comparison`` of the trial ``name``."""
        page, column = _new_page()
        column.addWidget(label(say("“{name}” beside the plan", name=name), "heading"))
        for text in change_lines(comparison) or [say("Nothing is otherwise than in the plan yet.")]:
            column.addWidget(label(text))
        for text in misfit_lines(comparison.misfits, comparison.overridden):
            column.addWidget(label(text, "soft"))
        column.addLayout(_table(table_rows(comparison)))
        column.addWidget(label(say("Clashes"), "strong"))
        for line in clash_lines(comparison):
            column.addWidget(self._clash(*line))
        column.addWidget(label(same_text(comparison), "soft"))
        column.addWidget(label(say(LEFT_OUT), "soft"))
        back = button(say("All clashes of the trial"), self.back_asked.emit)
        back.setObjectName("flat")
        column.addWidget(back)
        self._show(page, column)

    def _clash(self, word: str, clash: Clash, heading: str, when: str) -> QWidget:
        """A clash of the trial as a button that goes to it; one that is gone as words."""
        if word == say("Gone"):
            return label(f"{word}: {heading}, {when}")
        row = ClashRow(heading, f"{word}, {when}", lambda: self.clash_chosen.emit(clash))
        row.setObjectName("row")
        row.setToolTip(as_it_is(clash.sentence))
        row.setAccessibleDescription(clash.sentence)
        return row

    def _show(self, page: QWidget, column: QVBoxLayout) -> None:
        """Put a filled page in; who has scrolled down stays there."""
        column.addStretch()
        at = self._area.verticalScrollBar().value()
        self._area.setWidget(page)
        self._area.verticalScrollBar().setValue(at)


def _new_page() -> tuple[QWidget, QVBoxLayout]:
    page = QWidget()
    page.setObjectName("panel")
    column = QVBoxLayout(page)
    column.setSpacing(8)
    return page, column


def _table(rows: list[Row]) -> QGridLayout:
    """Numbers that differ are bold, and have a sign beside them."""
    grid = QGridLayout()
    grid.setHorizontalSpacing(10)
    grid.setVerticalSpacing(5)
    grid.setColumnStretch(0, 1)
    right = Qt.AlignmentFlag.AlignRight
    for column, text in ((1, say("plan")), (2, say("trial"))):
        head = label(text, "soft")
        head.setWordWrap(False)
        grid.addWidget(head, 0, column, right)
    for number, row in enumerate(rows, 1):
        grid.addWidget(label(row.what, "soft"), number, 0)
        for column, text in ((1, row.plan), (2, f"≠ {row.trial}" if row.differs else row.trial)):
            cell = label(text, "strong" if row.differs and column == 2 else "")
            cell.setWordWrap(False)
            grid.addWidget(cell, number, column, right)
    return grid
