"""One start, told as JSON: ``python -m tests.bench.start_once label|season SINCE``.

A process of its own: what is imported, built and painted is the cost that is asked for. ``SINCE`` is when it was
called, by ``time.monotonic`` (seconds), which is the same for all processes: Python's own start belongs to both.
"""

from __future__ import annotations

import json
import sys
from time import monotonic, perf_counter, sleep
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from PySide6.QtWidgets import QApplication, QWidget

_LOOKED_ON_S = 3.0  # what is put off until after the first paint has its time here
_TICK_S = 0.001


def main() -> None:
    """Milliseconds from ``SINCE`` to the first paint, memory after it (MB), the longest turn of the window's thread."""
    app, window = _label() if sys.argv[1] == "label" else _season()
    window.show()
    app.processEvents()
    shown_ms = (monotonic() - float(sys.argv[2])) * 1000
    print(json.dumps({"shown_ms": shown_ms, "stall_ms": max(_turns_ms(app)), "memory_mb": _memory_mb()}))


def _label() -> tuple[QApplication, QWidget]:
    from PySide6.QtWidgets import QApplication, QLabel

    return QApplication([]), QLabel("A bare window")


def _season() -> tuple[QApplication, QWidget]:
    """The window as the program shows it, with the language, the theme and the farm of last time."""
    from datetime import date

    from quailsched.desktop.app import open_window

    return open_window(None, date.today())


def _turns_ms(app: QApplication) -> list[float]:
    """How long each turn of the event loop took while nobody did anything."""
    turns = []
    until = perf_counter() + _LOOKED_ON_S
    while perf_counter() < until:
        start = perf_counter()
        app.processEvents()
        turns.append((perf_counter() - start) * 1000)
        sleep(_TICK_S)
    return turns


def _memory_mb() -> float:
    """What this process has in memory of its own and shared, as the kernel tells it."""
    with open("/proc/self/status", encoding="ascii") as lines:
        kilobytes = next(line.split()[1] for line in lines if line.startswith("VmRSS:"))
    return int(kilobytes) / 1000


if __name__ == "__main__":
    main()
