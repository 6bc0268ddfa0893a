"""Days in forms."""

from __future__ import annotations

from datetime import date, timedelta

from PySide6.QtCore import QDate, QSize, Qt
from PySide6.QtGui import QKeyEvent, QResizeEvent, QShowEvent
from PySide6.QtWidgets import (
    QDateEdit,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from quailsched.desktop.buttons import button
from quailsched.desktop.forms.fields import dress, tab_in_order
from quailsched.farm.range import EARLIEST, LATEST
from quailsched.farm.records import Span
from quailsched.farm.units import short_weekday_text
from quailsched.words import say

_Row = tuple[QWidget, QDateEdit, QDateEdit, QLineEdit, QPushButton]


class _DayField(QDateEdit):
    """A day that can be typed, with its weekday beside it.

    The weekday is no part of the text: Qt refuses a day of the month that is typed before its weekday fits. The year
    comes first and the day last for the same reason: 31 is refused as long as the month is still April.
    """

    def __init__(self, day: date) -> None:
        super().__init__(QDate(day.year, day.month, day.day))
        self.setCalendarPopup(True)
        self.setDateRange(QDate(EARLIEST.year, 1, 1), QDate(LATEST.year, 12, 31))
        self.setDisplayFormat("yyyy-MM-dd")
        self._has_moved_on = False
        self.weekday = QLabel(self.lineEdit())
        self.weekday.setObjectName("soft")
        self.weekday.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.weekday.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.dateChanged.connect(self._name_day)
        self._name_day()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """A separator goes to the next part, but not past it: a part that is full has handed on by itself."""
        text = event.text()
        if text and text in "-/. ":
            following = self.currentSectionIndex() + 1
            if not self._has_moved_on and following < self.sectionCount():
                self.setSelectedSection(self.sectionAt(following))
            self._has_moved_on = False
            return
        before = self.currentSection()
        super().keyPressEvent(event)
        self._has_moved_on = text.isdigit() and self.currentSection() != before

    def focusNextPrevChild(self, is_forwards: bool) -> bool:
        """A lone figure counts as it stands before the Tab key goes on: "3" is the third, not the 31st of before."""
        self.interpretText()
        return super().focusNextPrevChild(is_forwards)

    def _name_day(self) -> None:
        self.weekday.setText(short_weekday_text(day_of(self)))

    def _weekday_width(self) -> int:
        names = (short_weekday_text(EARLIEST + timedelta(days=day)) for day in range(7))
        return max(self.fontMetrics().horizontalAdvance(name) for name in names) + 10

    def sizeHint(self) -> QSize:
        return super().sizeHint() + QSize(self._weekday_width(), 0)

    def minimumSizeHint(self) -> QSize:
        return super().minimumSizeHint() + QSize(self._weekday_width(), 0)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        inner, wide = self.lineEdit().rect(), self._weekday_width()
        self.weekday.setGeometry(inner.right() - wide + 1, inner.top(), wide, inner.height())


def day_field(day: date) -> QDateEdit:
    """A day to type or to choose from a calendar, with its weekday and the whole year."""
    return _DayField(day)


def days_field(days: int, most: int) -> QSpinBox:
    """A number of days, "1 day" or "3 days"."""
    field = QSpinBox(maximum=most, value=days)

    def name_unit(number: int) -> None:
        field.setSuffix(say(" day") if number == 1 else say(" days"))

    field.valueChanged.connect(name_unit)
    name_unit(days)
    return field


def day_of(field: QDateEdit) -> date:
    """The day that is typed: also while its last figure is still awaited, as when a key saves the form."""
    if not field.hasAcceptableInput():
        field.interpretText()
    chosen = field.date()
    return date(chosen.year(), chosen.month(), chosen.day())


def set_day(field: QDateEdit, day: date) -> None:
    """Show ``day``; a field that shows it already keeps the part that is being typed."""
    if day_of(field) != day:
        field.setDate(QDate(day.year, day.month, day.day))


class SpansField(QWidget):
    """Runs of days with a reason; the last day is shown, the day after it is kept."""

    def __init__(self, spans: tuple[Span, ...], today: date, add_text: str) -> None:
        super().__init__()
        self._today = today
        self._rows: list[_Row] = []
        self._column = QVBoxLayout()
        self.add_button = button(add_text, self.add)
        below = QHBoxLayout()
        below.addWidget(self.add_button)
        below.addStretch()
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addLayout(self._column)
        outer.addLayout(below)
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
        reason.setPlaceholderText(say("why"))
        reason.setMinimumWidth(reason.fontMetrics().averageCharWidth() * 12)
        remove = button(say("Remove"), lambda: self._remove(entry))
        entry: _Row = (line, first, last, reason, remove)
        for widget in (first, last):
            row.addWidget(widget)
        row.addWidget(reason, 1)
        row.addWidget(remove)
        dress(line)
        self._column.addWidget(line)
        self._rows.append(entry)
        self._order_tabs()
        self._number()

    def _order_tabs(self) -> None:
        tab_in_order(self, [*(widget for row in self._rows for widget in row[1:]), self.add_button])

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._order_tabs()  # only now is it known what stands before it in the form

    def _number(self) -> None:
        """Tell the rows apart for those who hear them."""
        for number, (_, first, last, reason, remove) in enumerate(self._rows, 1):
            first.setAccessibleName(say("First day, {number}", number=number))
            last.setAccessibleName(say("Last day, {number}", number=number))
            reason.setAccessibleName(say("Reason, {number}", number=number))
            remove.setAccessibleName(say("Remove the days {number}", number=number))

    def _remove(self, entry: _Row) -> None:
        place = self._rows.index(entry)
        del self._rows[place]
        self._column.removeWidget(entry[0])
        (self._rows[place][4] if place < len(self._rows) else self.add_button).setFocus()
        entry[0].hide()
        entry[0].deleteLater()
        self._number()

    def spans(self) -> tuple[Span, ...]:
        return tuple(
            Span(day_of(first), day_of(last) + timedelta(days=1), reason.text().strip())
            for _, first, last, reason, _ in self._rows
        )
