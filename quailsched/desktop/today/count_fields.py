"""The fields of a card for what is counted with its chore: chicks at the hatch, clear eggs at candling."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QIntValidator, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QGridLayout, QLabel, QLineEdit, QWidget

from quailsched.chores.asks import Ask
from quailsched.desktop.forms.fields import dress
from quailsched.desktop.labels import plain
from quailsched.farm.check_counts import MOST_GRAMS
from quailsched.words import say


class _NumberLine(QLineEdit):
    """A whole number or nothing; arrows go along the fields, Return to the next one or to the end."""

    passed = Signal(int)  # 1 to the next, -1 to the one before
    given = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = Qt.Key(event.key())
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.given.emit()
        elif key in (Qt.Key.Key_Up, Qt.Key.Key_Down):
            self.passed.emit(1 if key == Qt.Key.Key_Down else -1)
        else:
            super().keyPressEvent(event)


class CountFields(QWidget):
    """A label and a field for each number. What is expected stands paler in the field and is not recorded."""

    finished = Signal()  # Return in the last field
    changed = Signal()
    left = Signal(int)  # by an arrow, upwards (-1) or downwards (1)

    def __init__(self, asks: Sequence[Ask], title: str) -> None:
        super().__init__()
        self.fields: dict[str, _NumberLine] = {}
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 4, 0, 0)
        self._grid.setHorizontalSpacing(8)
        self._pairs: list[tuple[QLabel, _NumberLine]] = []
        for ask in asks:
            words = say(ask.words)
            name, field = plain(QLabel(words)), _NumberLine()
            field.setObjectName("number")
            field.setValidator(QIntValidator(0, MOST_GRAMS, field))
            field.setAlignment(Qt.AlignmentFlag.AlignHCenter)
            field.setFixedWidth(field.fontMetrics().averageCharWidth() * 9)
            field.setAccessibleName(f"{title}: {words}")
            name.setBuddy(field)
            field.textEdited.connect(lambda _text: self.changed.emit())
            field.given.connect(lambda one=field: self._pass_on(one))
            field.passed.connect(self.left)
            dress(field)
            self._pairs.append((name, field))
            self.fields[ask.name] = field
        self._lay_out(len(self._pairs))
        self.show_asks(asks)

    def _lay_out(self, in_a_row: int) -> None:
        self._in_a_row = in_a_row
        for at, (name, field) in enumerate(self._pairs):
            line, column = divmod(at, in_a_row)
            self._grid.addWidget(name, line, 3 * column)
            self._grid.addWidget(field, line, 3 * column + 1)
            self._grid.setColumnMinimumWidth(3 * column + 2, 4)
        for column in range(3 * len(self._pairs) + 1):
            self._grid.setColumnStretch(column, 1 if column == 3 * in_a_row else 0)

    def minimumSizeHint(self) -> QSize:
        """One field is as narrow as they get; with less room they stand below each other."""
        return QSize(self._pair_width(), super().minimumSizeHint().height())

    def _pair_width(self) -> int:
        return max((name.sizeHint().width() + field.minimumWidth() + 28 for name, field in self._pairs), default=0)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        whole = sum(name.sizeHint().width() + field.minimumWidth() + 28 for name, field in self._pairs)
        fit = len(self._pairs) if whole <= self.width() + 28 else max(self.width() // max(self._pair_width(), 1), 1)
        if fit != self._in_a_row:
            self._lay_out(fit)

    def show_asks(self, asks: Sequence[Ask]) -> None:
        """What is expected now; what was typed stays."""
        for ask in asks:
            field = self.fields[ask.name]
            text = "" if ask.expected is None else str(ask.expected)
            field.setPlaceholderText(text)
            told = say("{number} expected", number=text) if text else ""
            field.setToolTip(told)
            field.setAccessibleDescription(told)

    def _pass_on(self, field: _NumberLine) -> None:
        fields = list(self.fields.values())
        at = fields.index(field)
        if at + 1 < len(fields):
            fields[at + 1].setFocus(Qt.FocusReason.TabFocusReason)
        else:
            self.finished.emit()

    def answers(self) -> dict[str, int]:
        """The numbers that were typed, by the names of the asks."""
        return {name: int(field.text()) for name, field in self.fields.items() if field.text().strip()}

    def clear(self) -> None:
        for field in self.fields.values():
            field.clear()
