"""Beside the day: the seven days after it, what is overdue, when nobody is at home, paper, and chores of one's own."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import (
    QAbstractButton,
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from quailsched.chores.chore import Chore
from quailsched.desktop.buttons import button
from quailsched.desktop.labels import label
from quailsched.desktop.theme import current
from quailsched.desktop.today.page import DayPage, state_text
from quailsched.farm.units import count_text, short_weekday_text, span_text
from quailsched.report.chores import able_text
from quailsched.words import say

_MOST_TITLES = 3


class _Row(QAbstractButton):
    """Words in a row that can be pressed: a day, or an overdue chore."""

    def __init__(self, name: str, lines: list[tuple[str, str]], action: Callable[[], object]) -> None:
        super().__init__()
        self.setAccessibleName(". ".join(part for part in (name, *(text for text, _ in lines)) if part))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        row = QHBoxLayout(self)
        row.setContentsMargins(6, 7, 6, 8)
        row.setSpacing(10)
        if name:
            first = _words(name, "strong")
            first.setWordWrap(False)
            first.setFixedWidth(first.fontMetrics().horizontalAdvance("Wed 30") + 6)
            row.addWidget(first, 0, Qt.AlignmentFlag.AlignTop)
        column = QVBoxLayout()
        column.setSpacing(2)
        for text, role in lines:
            column.addWidget(_words(text, role))
        row.addLayout(column, 1)
        self.clicked.connect(lambda: action())

    def sizeHint(self) -> QSize:
        layout = self.layout()
        return layout.sizeHint() if layout is not None else QSize()

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        layout = self.layout()
        return layout.heightForWidth(width) if layout is not None else 0

    def paintEvent(self, _event: QPaintEvent) -> None:
        theme, painter = current(), QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        box = QRectF(self.rect()).adjusted(1, 1, -1, -2)
        painter.setPen(QPen(QColor(theme.good), 2) if self.hasFocus() else Qt.PenStyle.NoPen)
        painter.setBrush(QColor(theme.sunk) if self.underMouse() else Qt.BrushStyle.NoBrush)
        painter.drawRoundedRect(box, 6, 6)
        painter.setPen(QPen(QColor(theme.line), 1))
        painter.drawLine(0, self.height() - 1, self.width(), self.height() - 1)
        painter.end()


def _words(text: str, role: str) -> QLabel:
    made = label(text, role)
    made.setTextInteractionFlags(Qt.TextInteractionFlag.NoTextInteraction)
    made.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
    return made


class Side(QFrame):
    """Tells and asks; what is pressed is passed on."""

    day_asked = Signal(object)  # date
    chore_asked = Signal(str)  # key of a chore on the page
    print_asked = Signal()
    add_asked = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("card")
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(14, 12, 14, 14)
        self._column.setSpacing(4)
        self._shown: list[_Row] = []
        self._rows = QVBoxLayout()
        self._rows.setSpacing(0)
        self._column.addLayout(self._rows)
        self._column.addSpacing(10)
        self.add: QPushButton = button(say("Add a chore…"), self.add_asked.emit)
        self.add.setToolTip(say("One of your own, once or again and again (Ctrl+Shift+N)"))
        self.paper: QPushButton = button(say("Chore sheet on paper…"), self.print_asked.emit)
        self.paper.setToolTip(say("The chores of the coming weeks to tick by hand"))
        for one in (self.add, self.paper):
            line = QHBoxLayout()
            line.addWidget(one)
            line.addStretch(1)
            self._column.addLayout(line)
        self._column.addStretch(1)

    def show_page(self, page: DayPage, today: date) -> None:
        while (item := self._rows.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        self._shown = []
        if page.overdue:
            self._head(say("Overdue"))
            for chore in page.overdue:
                self._put(self._overdue(chore, today))
        self._head(say("Next seven days"))
        for day, chores in page.ahead:
            self._put(self._day(day, chores))
        if page.alone:
            self._head(say("Nobody at home"))
            for span, number in page.alone:
                when = span_text(span.start, span.last_day, today)
                text = say("{chores} fall on these days.", chores=count_text(number, "chore"))
                nothing = say("No chore falls on these days.")
                self._put(self._away(when, text if number else nothing, span.start))

    def stops(self) -> list[QWidget]:
        """Where the Tab key goes, from top to bottom."""
        return [*(row for row in self._shown), self.add, self.paper]

    def _put(self, row: _Row) -> None:
        self._shown.append(row)
        self._rows.addWidget(row)

    def _head(self, text: str) -> None:
        if self._rows.count():
            self._rows.addSpacing(14)
        self._rows.addWidget(label(text, "panelHeading"))

    def _day(self, day: date, chores: tuple[Chore, ...]) -> _Row:
        """The urgent chores of a day, and how many others there are."""
        urgent = [chore for chore in chores if chore.urgent and chore.is_open]
        lines = [(chore.title, "") for chore in urgent[:_MOST_TITLES]]
        others = len(chores) - len(lines)
        if others and lines:
            lines.append((say("and {chores} more", chores=count_text(others, "chore")), "source"))
        elif others == 1:
            lines.append((chores[0].title, "soft"))
        elif others:
            lines.append((count_text(others, "chore"), "soft"))
        elif not lines:
            lines.append((say("nothing is due"), "soft"))
        return _Row(f"{short_weekday_text(day)} {day.day}", lines, lambda: self.day_asked.emit(day))

    def _overdue(self, chore: Chore, today: date) -> _Row:
        who = able_text(chore)
        text = f"{state_text(chore, today)} · {who}" if who else state_text(chore, today)
        return _Row("", [(chore.title, ""), (text, "source")], lambda: self.chore_asked.emit(chore.key))

    def _away(self, when: str, text: str, day: date) -> _Row:
        return _Row("", [(when, ""), (text, "source")], lambda: self.day_asked.emit(day))
