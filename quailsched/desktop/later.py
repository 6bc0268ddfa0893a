"""What follows the first picture: small steps, one in each turn of the event loop.

Which steps there are stands in ``after_start``.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Iterable

from PySide6.QtCore import QObject, QSize, QTimer, Signal
from PySide6.QtWidgets import QFrame, QStackedWidget, QWidget


class Later(QObject):
    """Belongs to a window. ``begin`` is called when its first picture stands."""

    ended = Signal()  # no step is left

    def __init__(self, steps: Iterable[Callable[[], object]], parent: QObject) -> None:
        super().__init__(parent)
        self._steps = deque(steps)
        self._timer = QTimer(self)  # of 0 ms: whatever else has happened meanwhile comes in between
        self._timer.timeout.connect(self.step)

    def begin(self) -> None:
        """Take the steps from now on."""
        if self._steps and not self._timer.isActive():
            self._timer.start()

    def step(self) -> bool:
        """Take the next step; whether there was one."""
        if not self._steps:
            return False
        step = self._steps.popleft()
        if not self._steps:
            self._timer.stop()
        step()
        if not self._steps:
            self.ended.emit()
        return True

    def stop(self) -> None:
        """Take no step any more."""
        self._steps.clear()
        self._timer.stop()


def take_place(stack: QStackedWidget, number: int, made: QWidget) -> None:
    """``made`` comes where an empty widget has kept its place; it is shown if that was."""
    empty = stack.widget(number)
    was_shown = stack.currentWidget() is empty
    stack.insertWidget(number, made)
    if was_shown:
        stack.setCurrentWidget(made)
    if empty is not None:
        stack.removeWidget(empty)
        empty.deleteLater()


class EmptyCard(QFrame):
    """What stands in the place of a panel until it is made, at least ``letters`` wide."""

    def __init__(self, letters: int) -> None:
        super().__init__()
        self.setObjectName("card")
        self.setMinimumWidth(self.fontMetrics().averageCharWidth() * letters)

    def sizeHint(self) -> QSize:
        return self.minimumSize()
