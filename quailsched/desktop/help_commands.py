"""Commands of the Help menu. The words are in ``texts``."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from quailsched import __version__
from quailsched.desktop import texts
from quailsched.desktop.reading import read
from quailsched.words import say


class HelpCommands:
    """How to begin, keys, about."""

    def __init__(self, window: QWidget) -> None:
        self._window = window

    def how_to_begin(self) -> None:
        read(self._window, say("How to begin"), say(texts.HOW_TO_BEGIN))

    def show_keys(self) -> None:
        read(self._window, say("Keys and mouse"), say(texts.KEYS))

    def about(self) -> None:
        read(self._window, say("About Quailsched"), say(texts.ABOUT, version=__version__))
