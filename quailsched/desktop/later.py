"""What follows the first picture: small steps, one in each turn of the event loop, and all at once when somebody asks.

Which steps there are stands in ``after_start``.
"""

from __future__ import annotations

import sys
from collections import deque
from collections.abc import Callable, Iterable

from PySide6.QtCore import QCoreApplication, QEvent, QObject, QTimer
from PySide6.QtWidgets import QStackedWidget, QWidget

# Whoever does one of these finds the window complete. A key is a ShortcutOverride before it is looked for in menus.
_ASKING = frozenset(
    (
        *(QEvent.Type.ShortcutOverride, QEvent.Type.KeyPress, QEvent.Type.MouseButtonPress, QEvent.Type.Wheel),
        *(QEvent.Type.TouchBegin, QEvent.Type.NativeGesture, QEvent.Type.TabletPress, QEvent.Type.DragEnter),
    )
)


class Later(QObject):
    """Belongs to a window. ``begin`` is called when its first picture stands."""

    def __init__(self, steps: Iterable[Callable[[], object]], parent: QObject) -> None:
        super().__init__(parent)
        self._steps = deque(steps)
        self._timer = QTimer(self)  # of 0 ms: whatever else has happened meanwhile comes in between
        self._timer.timeout.connect(self._step)

    def begin(self) -> None:
        """Take the steps, unless that has begun."""
        app = QCoreApplication.instance()
        if self._steps and not self._timer.isActive() and app is not None:
            app.installEventFilter(self)
            self._timer.start()

    def finish(self) -> None:
        """Take all steps that are left, now."""
        while self._steps:
            self._step()

    def _step(self) -> None:
        step = self._steps.popleft()
        if not self._steps:
            self.stop()
        step()

    def stop(self) -> None:
        """Take no step any more."""
        self._steps.clear()
        self._timer.stop()
        app = QCoreApplication.instance()
        if app is not None:
            app.removeEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() in _ASKING:
            try:
                self.finish()
            except Exception:  # Qt could not pass it on from here
                sys.excepthook(*sys.exc_info())
        return False


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
