"""The tray of the desktop: an icon that brings the window up, and notices beside it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QMenu, QSystemTrayIcon

from quailsched.desktop.icons import emblem
from quailsched.words import say


class QTray:
    """An icon in the tray, as long as the keeper wants notices."""

    def __init__(self, parent: QObject, come_up: Callable[[], object], leave: Callable[[], object]) -> None:
        self._icon = QSystemTrayIcon(emblem(), parent)
        self._icon.setToolTip("Quailsched")
        self._menu = QMenu()
        self._menu.addAction(say("Show today’s chores")).triggered.connect(lambda _checked=False: come_up())
        self._menu.addAction(say("Quit")).triggered.connect(lambda _checked=False: leave())
        self._icon.setContextMenu(self._menu)
        self._icon.messageClicked.connect(lambda: come_up())
        self._icon.activated.connect(lambda _reason: come_up())

    def tell(self, title: str, text: str) -> None:
        self._icon.showMessage(title, text, emblem())

    def show(self) -> None:
        self._icon.show()

    def hide(self) -> None:
        self._icon.hide()


def has_tray() -> bool:
    return QSystemTrayIcon.isSystemTrayAvailable()
