"""Commands of the Help menu. The words are in ``texts``."""

from __future__ import annotations

from PySide6.QtWidgets import QMessageBox, QWidget

from quailsched.desktop import texts


class HelpCommands:
    """How to begin, keys, about."""

    def __init__(self, window: QWidget) -> None:
        self._window = window

    def how_to_begin(self) -> None:
        QMessageBox.information(self._window, "How to begin", texts.HOW_TO_BEGIN)

    def show_keys(self) -> None:
        QMessageBox.information(self._window, "Keys and mouse", texts.KEYS)

    def about(self) -> None:
        QMessageBox.about(self._window, "About Quailsched", texts.ABOUT)
