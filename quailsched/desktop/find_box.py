"""The field in which a batch, a place or a day is found by typing."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from PySide6.QtCore import QModelIndex, QStringListModel, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent
from PySide6.QtWidgets import QCompleter, QLineEdit, QWidget

from quailsched.desktop.finding import Match, matches
from quailsched.farm.records import Farm
from quailsched.words import say


class FindBox(QLineEdit):
    """Tells what may be meant below the field; Return takes the first, arrows and Return another, Escape none."""

    chosen = Signal(object)  # Match
    left = Signal()  # the keeper has done with it

    def __init__(self, farm: Callable[[], Farm], today: date, parent: QWidget | None = None) -> None:
        """``farm`` gives the farm as it is when something is typed."""
        super().__init__(parent)
        self._farm, self._today = farm, today
        self._matches: list[Match] = []
        self._model = QStringListModel(self)
        completer = QCompleter(self._model, self)
        completer.setCompletionMode(QCompleter.CompletionMode.UnfilteredPopupCompletion)
        completer.setMaxVisibleItems(12)
        completer.activated[QModelIndex].connect(self._take)  # type: ignore[index]
        self.setCompleter(completer)
        self.setPlaceholderText(say("Find a batch, place or day…"))
        self.setAccessibleName(say("Find a batch, a place or a day"))
        self.setToolTip(
            say("A name, or a day such as 12 Apr, in 3 weeks, Thursday, week 15, day 30 of Clover (Ctrl+F)")
        )
        self.setClearButtonEnabled(True)
        self.textEdited.connect(self._look)
        self.setMaximumWidth(self.fontMetrics().averageCharWidth() * 40)
        self.setMinimumWidth(self.fontMetrics().averageCharWidth())

    def _look(self, typed: str) -> None:
        self._matches = matches(self._farm(), typed, self._today)
        nothing = [say("nothing of that name, and no day")] if typed.strip() and not self._matches else []
        self._model.setStringList([match.text for match in self._matches] or nothing)

    def _take(self, index: QModelIndex) -> None:
        if index.row() < len(self._matches):
            self._choose(self._matches[index.row()])

    def _choose(self, match: Match) -> None:
        self._leave()
        self.chosen.emit(match)

    def _leave(self) -> None:
        popup = self.completer().popup()
        if popup is not None:
            popup.hide()
        self.clear()
        self.left.emit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self._leave()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self._matches:
            self._choose(self._matches[0])
        else:
            super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if event.reason() is not Qt.FocusReason.PopupFocusReason:
            self.selectAll()
            self._look(self.text())
