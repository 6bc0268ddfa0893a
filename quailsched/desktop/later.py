"""What follows the first picture: small steps, one in each turn of the event loop.

Which steps there are stands in ``after_start``.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Iterable

from PySide6.QtCore import QObject, QSize, QTimer, Signal
from PySide6.QtWidgets import QFrame, QStackedWidget, QWidget

_STRIP_LINES, _LEAST_STRIP_LINES = 7, 4  # room for a strip as long as nothing is known of the last one, and the least


class Later(QObject):
    """Belongs to a window. ``begin`` is called when its first picture stands."""

    ended = Signal()  # no step is left

    def __init__(self, steps: Iterable[Callable[[], object]], parent: QObject) -> None:
        """``steps`` is gone through when the first one is due."""
        super().__init__(parent)
        self._coming, self._has_ended = iter(steps), False
        self._steps: deque[Callable[[], object]] = deque()
        self._timer = QTimer(self)  # of 0 ms: whatever else has happened meanwhile comes in between
        self._timer.timeout.connect(self.step)

    def begin(self) -> None:
        """Take the steps from now on."""
        if not self._has_ended and not self._timer.isActive():
            self._timer.start()

    def step(self) -> bool:
        """Take the next step; whether there was one."""
        self._steps.extend(self._coming)
        if not self._steps:
            return False
        step = self._steps.popleft()
        is_last = not self._steps
        if is_last:
            self._end()
        step()
        if is_last:
            self.ended.emit()
        return True

    def stop(self) -> None:
        """Take no step any more."""
        self._coming = iter(())
        self._steps.clear()
        self._end()

    def _end(self) -> None:
        self._has_ended = True
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


class EmptyStrip(QFrame):
    """What stands in the place of a strip until it is made, as tall as it is going to be: nothing is to move then."""

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("card")
        self.setMinimumHeight(self.fontMetrics().height() * _LEAST_STRIP_LINES)
        self.keep(self.fontMetrics().height() * _STRIP_LINES)

    def keep(self, tall: int) -> None:
        """Be ``tall``, where there is so much room."""
        self.setMaximumHeight(max(tall, self.minimumHeight()))
        self.updateGeometry()

    def sizeHint(self) -> QSize:
        return QSize(0, self.maximumHeight())
