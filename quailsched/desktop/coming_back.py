"""Where the window was when it was closed, and how it was divided; as far as that still fits a screen."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QByteArray, QRect
from PySide6.QtGui import QGuiApplication

from quailsched.desktop.season_canvas.lanes import Grouping
from quailsched.session.paths import remember, remembered

if TYPE_CHECKING:
    from quailsched.desktop.main_window import MainWindow

_USUAL = 1440, 900
_FRAME_PX = 40  # what the desktop puts around a window, as far as it can be known before it is shown
_LEAST_SEEN_PX = 120  # of the window on a screen, each way: enough to take hold of it


def come_back(window: MainWindow) -> None:
    """Place and size of last time, else sensible ones; the same view, division and lanes. To be called before the
    window is shown."""
    memory = remembered()
    kept = _bytes(memory.get("window"))
    if kept is None or not window.restoreGeometry(kept) or not _is_in_reach(window.geometry()):
        _place_anew(window)
    _shrink(window)
    parts = _bytes(memory.get("parts"))
    if parts is not None:
        window.season.splitter.restoreState(parts)
    strip = memory.get("strip")
    if isinstance(strip, int) and 0 < strip <= window.height():
        window.season.keep_strip(strip)
    view = memory.get("view")
    if isinstance(view, int) and 0 <= view < window.stack.count():
        window.show_view(view)
    window.season.first_grouping = Grouping.BATCHES if memory.get("lanes") == Grouping.BATCHES else Grouping.PLACES


def keep(window: MainWindow) -> None:
    """Remember it all for the next start."""
    remember(
        window=_text(window.saveGeometry()),
        parts=_text(window.season.splitter.saveState()),
        strip=window.season.strip_px,
        view=window.stack.currentIndex(),
        lanes=window.season.canvas.grouping.value,
    )


def _is_in_reach(place: QRect) -> bool:
    """Whether so much of it is on a screen that it can be taken hold of."""
    parts = [screen.availableGeometry().intersected(place) for screen in QGuiApplication.screens()]
    return any(part.width() >= _LEAST_SEEN_PX and part.height() >= _LEAST_SEEN_PX for part in parts)


def _place_anew(window: MainWindow) -> None:
    room = QGuiApplication.primaryScreen().availableGeometry()
    wide, tall = min(_USUAL[0], room.width() - _FRAME_PX // 2), min(_USUAL[1], room.height() - _FRAME_PX)
    window.resize(wide, tall)
    window.move(room.x() + (room.width() - wide) // 2, room.y() + (room.height() - tall) // 2)


def _shrink(window: MainWindow) -> None:
    """No larger than the screen that it is on, and with its upper left corner there. A maximised one is as large as
    the screen anyway, and would not be maximised any more once it is moved."""
    if window.isMaximized() or window.isFullScreen():
        return
    rooms = [screen.availableGeometry() for screen in QGuiApplication.screens()]
    usual = QGuiApplication.primaryScreen().availableGeometry()
    room = next((room for room in rooms if room.intersects(window.geometry())), usual)
    window.resize(min(window.width(), room.width()), min(window.height(), room.height()))
    x = max(min(window.x(), room.right() - window.width() + 1), room.x())
    y = max(min(window.y(), room.bottom() - window.height() + 1), room.y())
    if not room.contains(window.geometry()):
        window.move(x, y)


def _bytes(kept: object) -> QByteArray | None:
    return QByteArray.fromHex(kept.encode()) if isinstance(kept, str) and kept.isascii() else None


def _text(state: QByteArray) -> str:
    return bytes(state.toHex().data()).decode()
