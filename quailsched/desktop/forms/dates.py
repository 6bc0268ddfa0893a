"""Days in forms."""

from __future__ import annotations

from datetime import date, timedelta

from PySide6.QtCore import QDate
from PySide6.QtWidgets import QDateEdit, QHBoxLayout, QLineEdit, QSpinBox, QVBoxLayout, QWidget

from quailsched.desktop.forms.record_form import button
from quailsched.farm.check import EARLIEST, LATEST
from quailsched.farm.records import Span


def day_field(day: date) -> QDateEdit:
    """A day with a calendar to choose from, with names of day and month and the whole year."""
    field = QDateEdit(QDate(day.year, day.month, day.day))
    field.setCalendarPopup(True)
    field.setDateRange(QDate(EARLIEST.year, 1, 1), QDate(LATEST.year, 12, 31))
    field.setDisplayFormat("ddd d MMM yyyy")
    return field


def days_field(days: int, most: int) -> QSpinBox:
    """A number of days, "1 day" or "3 days"."""
    field = QSpinBox(maximum=most, value=days)

    def name_unit(number: int) -> None:
        field.setSuffix(" day" if number == 1 else " days")

    field.valueChanged.connect(name_unit)
    name_unit(days)
    return field


def day_of(field: QDateEdit) -> date:
    chosen = field.date()
    return date(chosen.year(), chosen.month(), chosen.day())


def set_day(field: QDateEdit, day: date) -> None:
    field.setDate(QDate(day.year, day.month, day.day))


class SpansField(QWidget):
    """Runs of days with a reason; the last day is shown, the day after it is kept."""

    def __init__(self, spans: tuple[Span, ...], today: date, add_text: str) -> None:
        super().__init__()
        self._today = today
        self._rows: list[tuple[QWidget, QDateEdit, QDateEdit, QLineEdit]] = []
        self._column = QVBoxLayout()
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addLayout(self._column)
        outer.addWidget(button(add_text, self.add))
        for span in spans:
            self._add(span)

    def add(self) -> None:
        self._add(Span(self._today, self._today + timedelta(days=1)))
        self._rows[-1][1].setFocus()

    def _add(self, span: Span) -> None:
        line = QWidget()
        row = QHBoxLayout(line)
        row.setContentsMargins(0, 0, 0, 0)
        first, last, reason = day_field(span.start), day_field(span.last_day), QLineEdit(span.reason)
        first.setAccessibleName("First day")
        last.setAccessibleName("Last day")
        reason.setAccessibleName("Reason")
        reason.setPlaceholderText("why")
        entry = (line, first, last, reason)
        remove = button("Remove", lambda: self._remove(entry))
        for widget in (first, last):
            row.addWidget(widget)
        row.addWidget(reason, 1)
        row.addWidget(remove)
        self._column.addWidget(line)
        self._rows.append(entry)

    def _remove(self, entry: tuple[QWidget, QDateEdit, QDateEdit, QLineEdit]) -> None:
        self._rows.remove(entry)
        self._column.removeWidget(entry[0])
        entry[0].deleteLater()

    def spans(self) -> tuple[Span, ...]:
        return tuple(
            Span(day_of(first), day_of(last) + timedelta(days=1), reason.text().strip())
            for _, first, last, reason in self._rows
        )
