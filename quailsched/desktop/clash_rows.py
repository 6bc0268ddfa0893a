"""Clashes as rows to pick from, under what they are: they stop the plan, are to be watched, or are accepted.

With hundreds of clashes the first of each kind are shown, and more when they are asked for.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date

from PySide6.QtCore import QEvent, QRect, QSize, Qt
from PySide6.QtGui import QFont, QFontMetrics, QPaintEvent
from PySide6.QtWidgets import (
    QPushButton,
    QSizePolicy,
    QStyle,
    QStyleOptionButton,
    QStylePainter,
    QVBoxLayout,
    QWidget,
)

from quailsched.desktop.buttons import button
from quailsched.desktop.labels import as_it_is, label, on_button
from quailsched.desktop.theme import current
from quailsched.farm.units import span_text
from quailsched.outlook.likelihood import chance_of_clash
from quailsched.report.clashes import in_groups, title_of, told_sentence
from quailsched.report.inspect import chance_text, short_text
from quailsched.season.clash import Clash
from quailsched.season.season import Season
from quailsched.season.severity import acceptance_of
from quailsched.words import number_text, say

_MOST_TOLD = 32  # letters of a reason in a row; the whole is a pick away
_AT_FIRST, _AT_ONCE = 10, 24  # rows of a kind, and how many more for each press
_FEW = 16  # of a kind: these are shown all
_SIDE_PX, _TOP_PX = 11, 8
_WRAPS = int(Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)
_TALL = 10_000


class ClashRows(QWidget):
    """``chosen`` is called with the clash whose row is pressed."""

    def __init__(
        self, season: Season, clashes: Sequence[Clash], today: date, chosen: Callable[[Clash], object]
    ) -> None:
        super().__init__()
        self._season, self._today, self._chosen = season, today, chosen
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        for heading, found in in_groups(season.farm, clashes):
            column.addWidget(label(f"{heading} ({number_text(len(found))})", "strong"))
            rows = QVBoxLayout()
            rows.setSpacing(8)
            column.addLayout(rows)
            self._add(rows, [clash for _, clash in found], _AT_FIRST if len(found) > _FEW else _FEW)

    def _add(self, rows: QVBoxLayout, clashes: list[Clash], number: int) -> QPushButton:
        """Add the first ``number`` of these rows, and a button for the others; the first row of them."""
        added = [self._row(clash) for clash in clashes[:number]]
        for row in added:
            rows.addWidget(row)
            row.show()  # at once, so that it can take the keys
        others = clashes[number:]
        if others:
            text = say("and {number} more", number=number_text(len(others)))
            more = button(text, lambda: self._more(rows, more, others))
            more.setObjectName("flat")
            rows.addWidget(more)
        return added[0]

    def _more(self, rows: QVBoxLayout, asked: QPushButton, clashes: list[Clash]) -> None:
        """The button that asked for more gives way to rows, and the keys stay where it was."""
        first = self._add(rows, clashes, _AT_ONCE)
        if asked.hasFocus():
            first.setFocus()
        rows.removeWidget(asked)
        asked.hide()
        asked.deleteLater()

    def _row(self, clash: Clash) -> QPushButton:
        """Title, days, how much and how sure; of an accepted clash the start of its reason too."""
        farm = self._season.farm
        acceptance = acceptance_of(farm, clash)
        chance = chance_of_clash(self._season, clash, self._today)
        days = span_text(clash.first, clash.last, self._today)
        lines = [days if chance is None else say("{days}, {sure}", days=days, sure=chance_text(chance))]
        lines.append(say("short by {amount}", amount=short_text(farm, clash)))
        if acceptance is not None:
            reason = acceptance.reason
            lines.append(reason if len(reason) <= _MOST_TOLD else reason[:_MOST_TOLD].rstrip() + "…")
        row = ClashRow(title_of(farm, clash), "\n".join(lines), lambda: self._chosen(clash))
        row.setObjectName("row" if acceptance is None else "quietRow")
        row.setToolTip(as_it_is(told_sentence(farm, clash)))
        row.setAccessibleDescription(told_sentence(farm, clash))
        return row


class ClashRow(QPushButton):
    """A button whose words wrap instead of being cut: a title, and what is told of it below, softly."""

    def __init__(self, title: str, below: str, action: Callable[[], object]) -> None:
        super().__init__()
        self._title, self._below = title, below
        self._known: dict[int, tuple[QRect, QRect]] = {}  # a layout asks a score of times
        self.setText(on_button(f"{title}\n{below}"))
        self.clicked.connect(lambda: action())
        # Not Fixed, as buttons are: the hint for another width would be the most that a row gets.
        policy = QSizePolicy(QSizePolicy.Policy.Minimum, QSizePolicy.Policy.Minimum, QSizePolicy.ControlType.PushButton)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        return sum(rect.height() for rect in self._rects(width)) + 2 * _TOP_PX

    def sizeHint(self) -> QSize:
        return QSize(self.minimumSizeHint().width(), self.heightForWidth(max(self.width(), 160)))

    def minimumSizeHint(self) -> QSize:
        return QSize(self.fontMetrics().averageCharWidth() * 12, self.fontMetrics().height() + 2 * _TOP_PX)

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._known.clear()
            self.updateGeometry()

    def _rects(self, width: int) -> tuple[QRect, QRect]:
        """Where title and the rest stand."""
        known = self._known.get(width)
        if known is None:
            room = width - 2 * _SIDE_PX
            title = self.fontMetrics().boundingRect(QRect(_SIDE_PX, _TOP_PX, room, _TALL), _WRAPS, self._title)
            rest = QRect(_SIDE_PX, title.bottom() + 1, room, _TALL)
            below = QFontMetrics(self._small()).boundingRect(rest, _WRAPS, self._below)
            known = self._known[width] = title, below
        return known

    def _small(self) -> QFont:
        font = QFont(self.font())
        font.setPointSizeF(font.pointSizeF() * 0.92)
        return font

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QStylePainter(self)
        try:
            option = QStyleOptionButton()
            self.initStyleOption(option)
            option.text = ""
            painter.drawControl(QStyle.ControlElement.CE_PushButton, option)
            title, below = self._rects(self.width())
            painter.setPen(current().ink)
            painter.drawText(title.adjusted(0, 0, 2, 0), _WRAPS, self._title)
            painter.setPen(current().soft)
            painter.setFont(self._small())
            painter.drawText(below.adjusted(0, 0, 2, 0), _WRAPS, self._below)
        finally:
            painter.end()
