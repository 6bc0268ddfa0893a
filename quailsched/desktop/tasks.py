"""Work beside the window: a pure function off the window's thread, its result or its error back on it."""

from __future__ import annotations

import gc
from collections.abc import Callable
from typing import Any, TypeVar

from PySide6.QtCore import QObject, QRunnable, QThreadPool, Signal, Slot

T = TypeVar("T")
Run = Callable[[Callable[[], Any], Callable[[Any], None]], None]


def run_at_once(work: Callable[[], T], done: Callable[[T], None]) -> None:
    """For tests: no thread, no waiting."""
    done(work())


class Background(QObject):
    """Runs work in Qt's pool. ``run`` is a ``Run``; an error of the work is raised on the window's thread.

    While work is running Python collects no cyclic garbage. It would do so on whichever thread happens to allocate,
    and what the window has left behind must not be freed on another thread than the window's: Qt crashes on it.
    """

    _came = Signal(object, object, object)  # done, result, error

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._running = 0
        self._came.connect(self._deliver)

    def run(self, work: Callable[[], T], done: Callable[[T], None]) -> None:
        self._running += 1
        gc.disable()
        QThreadPool.globalInstance().start(_Job(work, done, self._came.emit))

    @Slot(object, object, object)
    def _deliver(self, done: Callable[[Any], None], result: Any, error: BaseException | None) -> None:
        self._running = max(self._running - 1, 0)
        if not self._running:
            gc.enable()
        if error is not None:
            raise error
        done(result)

    def collect(self) -> None:
        """Let Python collect garbage from now on; while work is running, when that has come."""
        if not self._running:
            gc.enable()

    def finish(self) -> None:
        """Wait for what is running; to be called before the window goes."""
        QThreadPool.globalInstance().waitForDone()
        self._running = 0
        gc.enable()


class _Job(QRunnable):
    def __init__(self, work: Callable[[], Any], done: Callable[[Any], None], tell: Callable[..., None]) -> None:
        super().__init__()
        self._work, self._done, self._tell = work, done, tell

    def run(self) -> None:
        try:
            result = self._work()
        except BaseException as error:  # goes on to the window's thread, where it is told
            self._tell(self._done, None, error)
        else:
            self._tell(self._done, result, None)
