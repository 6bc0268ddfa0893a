"""The field in which a batch, a place or a day is found by typing. What is meant is worked out in ``finding``."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QLineEdit, QToolButton, QWidget

from quailsched.farm.records import Farm
from quailsched.words import say

if TYPE_CHECKING:
    from quailsched.desktop.finding import Match
    from quailsched.desktop.found_list import FoundList

_STEPS = {Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1}
# The field stays while the window is left for another one, or a menu of the field is open.
_PASSING = (Qt.FocusReason.ActiveWindowFocusReason, Qt.FocusReason.PopupFocusReason, Qt.FocusReason.MenuBarFocusReason)


class FindBox(QLineEdit):
    """Tells below the field what may be meant; Return takes what is chosen, arrows choose another, Escape leaves."""

    chosen = Signal(object)  # Match
    left = Signal()  # the keeper has done with it

    def __init__(self, farm: Callable[[], Farm], today: date, parent: QWidget | None = None) -> None:
        """``farm`` gives the farm as it is when something is typed."""
        super().__init__(parent)
        self._farm, self._today = farm, today
        self._matches: list[Match] = []
        self._is_for_days = False
        self._list: FoundList | None = None
        self.setAccessibleName(say("Find a batch, a place or a day"))
        self.setToolTip(
            say("A name, or a day such as 12 Apr, in 3 weeks, Thursday, week 15, day 30 of Clover (Ctrl+F)")
        )
        self.textChanged.connect(self._offer_to_clear)
        self.textEdited.connect(self._look)
        self._call_for(days_only=False)
        self.setMaximumWidth(self.fontMetrics().averageCharWidth() * 40)
        self.setMinimumWidth(self.fontMetrics().averageCharWidth() * 8)

    def begin(self, *, days_only: bool) -> None:
        """Take the keys, for everything that can be found or for days alone."""
        self._call_for(days_only=days_only)
        self.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.selectAll()
        self._look()

    @property
    def found(self) -> FoundList:
        """The list below the field."""
        if self._list is None:  # not before it is wanted: the window has to be there, and starts the quicker
            from quailsched.desktop.found_list import FoundList

            self._list = FoundList(self)
            self._list.taken.connect(self._take)
        return self._list

    def _offer_to_clear(self) -> None:
        """Not before there is something to clear: the button takes 1 ms of a start."""
        self.textChanged.disconnect(self._offer_to_clear)
        self.setClearButtonEnabled(True)
        for button in self.findChildren(QToolButton):
            button.setAccessibleName(say("Clear"))

    def _call_for(self, *, days_only: bool) -> None:
        self._is_for_days = days_only
        self.setPlaceholderText(say("Go to a day…") if days_only else say("Find a batch, place or day…"))

    def _look(self) -> None:
        if not self.hasFocus():
            return
        from quailsched.desktop.finding import days, matches

        typed = self.text()
        self._matches = (days if self._is_for_days else matches)(self._farm(), typed, self._today)
        self.found.show_matches(self._matches, self._hint(typed))
        self._announce()

    def _hint(self, typed: str) -> str:
        if not typed.strip():
            if self._is_for_days:
                return say("A day: 12 Apr, in 3 weeks, Thursday, week 15, day 30 of Clover")
            return say("A name, or a day: 12 Apr, in 3 weeks, Thursday, week 15, day 30 of Clover")
        return say("No day is read from this") if self._is_for_days else say("Nothing of that name, and no day")

    def _announce(self) -> None:
        """Tell a screen reader what Return would take: the keys stay in the field, so it would not know."""
        from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent

        if QAccessible.isActive():
            row = self.found.row
            match = self._matches[row] if row is not None else None
            text = f"{match.text}, {match.more}" if match is not None else self._hint(self.text())
            QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(self, text))

    def _take(self, row: int) -> None:
        if row < len(self._matches):  # else it is the hint that was pressed
            match = self._matches[row]
            self._leave()
            self.chosen.emit(match)

    def _leave(self) -> None:
        self._close()
        self.left.emit()

    def _close(self) -> None:
        self.clear()
        if self._list is not None:
            self._list.hide()
        self._call_for(days_only=False)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = Qt.Key(event.key())
        if key == Qt.Key.Key_Escape:
            self._leave()
        elif key in _STEPS:
            self.found.step(_STEPS[key])
            self._announce()
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            if self.found.row is not None:
                self._take(self.found.row)
        else:
            super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if event.reason() not in _PASSING:
            self._look()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        if event.reason() not in _PASSING:
            self._close()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self._list is not None and self._list.isVisible():
            self._list.lie_below()
