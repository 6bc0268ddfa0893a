"""Commands for the colours of the window: as the desktop is set, light, dark."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QApplication

from quailsched.desktop.theme import show_theme, wanted_theme
from quailsched.session.paths import remember

if TYPE_CHECKING:
    from quailsched.desktop.main_window import MainWindow


class ColourCommands:
    """Dress the program, and remember the choice for the next start."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window

    def show_auto(self) -> None:
        self._show("auto")

    def show_light(self) -> None:
        self._show("light")

    def show_dark(self) -> None:
        self._show("dark")

    def _show(self, choice: str) -> None:
        remember(colours=choice)
        app = QApplication.instance()
        assert isinstance(app, QApplication)
        show_theme(app, wanted_theme(choice))
        self._window.dress()
        self._window.refresh()
