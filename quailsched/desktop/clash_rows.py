"""Clashes as rows to pick from, under what they are: they stop the plan, are to be watched, or are accepted."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date

from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from quailsched.desktop.forms.fields import button
from quailsched.desktop.labels import as_it_is, label
from quailsched.farm.records import Farm
from quailsched.farm.units import span_text
from quailsched.report.clashes import in_groups, title_of, told_sentence
from quailsched.season.clash import Clash
from quailsched.season.severity import acceptance_of

_MOST_TOLD = 32  # letters of a reason in a row; the whole is a pick away


class ClashRows(QWidget):
    """``chosen`` is called with the clash whose row is pressed."""

    def __init__(self, farm: Farm, clashes: Sequence[Clash], today: date, chosen: Callable[[Clash], object]) -> None:
        super().__init__()
        self._farm, self._today, self._chosen = farm, today, chosen
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        for heading, found in in_groups(farm, clashes):
            column.addWidget(label(f"{heading} ({len(found)})", "strong"))
            for _, clash in found:
                column.addWidget(self._row(clash))

    def _row(self, clash: Clash) -> QPushButton:
        """Title and days; of an accepted clash the start of its reason too."""
        acceptance = acceptance_of(self._farm, clash)
        text = f"{title_of(self._farm, clash)}\n{span_text(clash.first, clash.last, self._today)}"
        if acceptance is not None:
            reason = acceptance.reason
            text += f"\n{reason if len(reason) <= _MOST_TOLD else reason[:_MOST_TOLD].rstrip() + '…'}"
        row = button(text, lambda: self._chosen(clash))
        row.setObjectName("row" if acceptance is None else "quietRow")
        row.setToolTip(as_it_is(told_sentence(self._farm, clash)))
        row.setAccessibleDescription(told_sentence(self._farm, clash))
        return row
