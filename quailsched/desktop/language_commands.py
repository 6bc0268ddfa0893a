"""The command that chooses the language of the window."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QInputDialog

from quailsched.desktop.language import LANGUAGES
from quailsched.session.paths import remember, remembered
from quailsched.words import say

if TYPE_CHECKING:
    from quailsched.desktop.main_window import MainWindow


class LanguageCommands:
    """Asks for a language and remembers it: every word is said anew at the next start."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window

    def choose_language(self) -> None:
        choices = {"auto": say("As the desktop is set"), **LANGUAGES}
        now = list(choices).index(str(remembered().get("language", "auto")))
        title, asked = say("Language"), say("From the next start on, Quailsched speaks")
        chosen, is_chosen = QInputDialog.getItem(self._window, title, asked, list(choices.values()), now, False)
        if is_chosen:
            remember(language=next(code for code, name in choices.items() if name == chosen))
            self._window.say(say("From the next start on: {language}.", language=chosen))
