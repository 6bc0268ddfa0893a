"""The cards of a day, in as many columns as there is room for: one for each person, or one person's side by side."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QObject, QSize
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QLayout, QVBoxLayout, QWidget

_CARD_LETTERS = 58  # a column is at least as wide
_MOST_COLUMNS = 3

Section = tuple[QWidget, Sequence[QWidget]]  # a heading, and the cards below it


class Board(QWidget):
    """Puts sections into columns. It owns none of what it shows: whoever gives it keeps it."""

    def __init__(self) -> None:
        super().__init__()
        self._sections: list[Section] = []
        self._below: QWidget | None = None
        self._columns: list[QVBoxLayout] = []
        self._shown: object = None
        self._gaps: list[_AsTall] = []
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(18)
        self._row.setSizeConstraint(QLayout.SizeConstraint.SetNoConstraint)

    def show_sections(self, sections: Sequence[Section], below: QWidget) -> None:
        """Lay ``sections`` out; ``below`` comes under the last column."""
        self._sections, self._below = list(sections), below
        self._lay_out()

    @property
    def number_of_columns(self) -> int:
        """How many there is room for, and something for each."""
        wide = self.fontMetrics().averageCharWidth() * _CARD_LETTERS
        fit = max((self.width() + self._row.spacing()) // (wide + self._row.spacing()), 1)
        cards = sum(len(cards) for _, cards in self._sections)
        return int(max(min(fit, _MOST_COLUMNS, max(len(self._sections), min(cards, 2))), 1))

    def minimumSizeHint(self) -> QSize:
        """As narrow as the window makes it: then it has fewer columns."""
        return QSize(0, super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self._columns and len(self._columns) != self.number_of_columns:
            self._lay_out()

    def _lay_out(self) -> None:
        number = self.number_of_columns
        order = (number, [(head, tuple(cards)) for head, cards in self._sections], self._below)
        if order == self._shown:
            return
        self._shown = order
        self._clear()
        for _ in range(number):
            column = QVBoxLayout()
            column.setSpacing(10)
            self._columns.append(column)
            self._row.addLayout(column, 1)
        if len(self._sections) == 1 and number > 1:
            self._share(*self._sections[0])
        else:
            self._one_each()
        for column in self._columns[:-1]:
            column.addStretch(1)
        if self._below is not None:
            self._columns[-1].addWidget(self._below)
        self._columns[-1].addStretch(1)

    def _one_each(self) -> None:
        """A column for each section; those that are left over come under the shortest."""
        lengths = [0] * len(self._columns)
        for head, cards in self._sections:
            at = lengths.index(min(lengths))
            column = self._columns[at]
            if lengths[at]:
                column.addSpacing(8)
            column.addWidget(head)
            for card in cards:
                column.addWidget(card)
            lengths[at] += 1 + len(cards)

    def _share(self, head: QWidget, cards: Sequence[QWidget]) -> None:
        """One section over all columns, downwards and then to the right."""
        each = -(-len(cards) // len(self._columns))
        for at, column in enumerate(self._columns):
            if at:
                self._gaps.append(_AsTall(head, self))
                column.addWidget(self._gaps[-1])
            else:
                column.addWidget(head)
            for card in cards[at * each : (at + 1) * each]:
                column.addWidget(card)

    def _clear(self) -> None:
        for column in self._columns:
            while (item := column.itemAt(0)) is not None:
                # An item that Python has taken lives on for a while, and as long as it does the widget tells it alone
                # that its size has changed, not the new item: the card would keep its old height.
                widget = item.widget()
                if widget is not None:
                    column.removeWidget(widget)
                else:
                    column.takeAt(0)
            self._row.removeItem(column)
            column.setParent(None)
            column.deleteLater()
        self._columns = []
        for gap in self._gaps:
            gap.hide()
            gap.deleteLater()
        self._gaps = []


class _AsTall(QWidget):
    """Room beside ``other``, as tall as it is at any time, so that what stands below either begins on one line."""

    def __init__(self, other: QWidget, parent: QWidget) -> None:
        super().__init__(parent)
        self._other = other
        self.setFixedHeight(other.sizeHint().height())
        other.installEventFilter(self)
        self.show()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if watched is self._other and event.type() is QEvent.Type.Resize:
            self.setFixedHeight(self._other.height())
        return False
