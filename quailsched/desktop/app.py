"""Starting the window: the Qt application, its colours, the farm, and what happens when something breaks."""

from __future__ import annotations

import gc
import sys
from datetime import date, datetime
from pathlib import Path
from types import TracebackType
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QApplication

if TYPE_CHECKING:
    from quailsched.desktop.main_window import MainWindow
    from quailsched.session.open_farm import OpenFarm

STYLE = ("-style", "fusion")  # to ask Qt later which one it has takes 10 ms


def run(file: Path | None) -> int:
    """Open the window on ``file``, the farm that was open last, or the example; until it is closed."""
    app = QApplication([*sys.argv[:1], *STYLE])
    window = show_window(app, file, date.today())
    app.styleHints().colorSchemeChanged.connect(lambda _scheme: _follow_desktop(window))
    window.later.ended.connect(lambda: window.commands.daily.follow(datetime.now))
    return app.exec()


def show_window(app: QApplication, file: Path | None, today: date) -> MainWindow:
    """The window of ``run``. Raises StoreError for a ``file`` that cannot be opened."""
    gc.disable()  # all that is made now stays: to go through it for garbage again and again takes 15 ms
    from PySide6.QtCore import Qt

    from quailsched.desktop.language import speak, wanted_language
    from quailsched.desktop.main_window import MainWindow
    from quailsched.desktop.theme import show_theme, wanted_theme
    from quailsched.session.paths import remembered

    app.setApplicationName("Quailsched")
    app.setDesktopFileName("quailsched")
    speak(app, wanted_language(str(remembered().get("language", "auto"))))
    show_theme(app, wanted_theme(str(remembered().get("colours", "auto"))))
    sys.excepthook = _tell
    opened, remark = _farm_to_show(file, today)
    window = MainWindow(opened, today)
    window.later.ended.connect(lambda: _collect_again(window))
    window.show()
    window.season.canvas.setFocus(Qt.FocusReason.OtherFocusReason)
    if remark:
        window.say(remark)
    return window


def _collect_again(window: MainWindow) -> None:
    """What there is stays for good; garbage is what comes from now on."""
    gc.freeze()
    window.background.collect()


def _farm_to_show(file: Path | None, today: date) -> tuple[OpenFarm, str]:
    """The farm and a word about it. A file that was named and cannot be opened raises; a remembered one does not."""
    from quailsched.session.farms import home_example, open_farm
    from quailsched.session.faults import StoreError
    from quailsched.session.paths import last_farm
    from quailsched.words import say

    if file is not None:
        return open_farm(file), ""
    kept = last_farm()
    if kept is not None:
        try:
            return open_farm(kept), ""
        except StoreError as error:
            return home_example(today), say("{error} Here is the example instead.", error=error)
    return home_example(today), say("This is an example. Farm › New farm begins your own; F1 tells how.")


def _follow_desktop(window: MainWindow) -> None:
    from quailsched.session.paths import remembered

    if remembered().get("colours", "auto") == "auto":
        window.commands.colours.show_auto()


def _tell(_kind: type[BaseException], error: BaseException, _trace: TracebackType | None) -> None:
    """A fault of the program: keep the details in a file, tell the keeper in a sentence, go on."""
    from PySide6.QtWidgets import QMessageBox

    from quailsched.session.inner_faults import told_in_words

    QMessageBox.critical(QApplication.activeWindow(), "Quailsched", told_in_words(error))
