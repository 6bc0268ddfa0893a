"""Starting the window: the farm, the Qt application, its colours, and what happens when something breaks.

Nothing of Qt is imported at the top: the farm needs none (``farm_ahead``), and comes sooner without.
"""

from __future__ import annotations

import gc
import sys
from datetime import date, datetime
from importlib import import_module
from pathlib import Path
from types import TracebackType
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from PySide6.QtWidgets import QApplication

    from quailsched.desktop.main_window import MainWindow
    from quailsched.session.open_farm import OpenFarm

# Parts of the window without Qt: PySide reads the source of each module that is imported after it.
_AHEAD = (
    "quailsched.desktop.connections",
    "quailsched.desktop.season_canvas.layout",
    "quailsched.desktop.season_canvas.loads",
    "quailsched.desktop.season_canvas.scene",
    "quailsched.desktop.views",
    "quailsched.report.clashes",
    "quailsched.report.season_name",
)
STYLE = ("-style", "fusion")  # to ask Qt later which one it has takes 10 ms


def run(file: Path | None) -> int:
    """Open the window on ``file``, the farm that was open last, or the example; until it is closed.

    Raises StoreError for a ``file`` that cannot be opened.
    """
    app, window = open_window(file, date.today())
    app.styleHints().colorSchemeChanged.connect(lambda _scheme: _follow_desktop(window))
    window.later.ended.connect(lambda: window.commands.daily.follow(datetime.now))
    return app.exec()


def open_window(file: Path | None, today: date) -> tuple[QApplication, MainWindow]:
    """The application and the window of ``run``, as they are before anything happens in them.

    Raises StoreError for a ``file`` that cannot be opened.
    """
    gc.disable()  # all that is made now stays: to go through it for garbage again and again takes 15 ms
    from quailsched.session.farms import farm_ahead

    ahead = farm_ahead(file, today)
    for name in _AHEAD:
        import_module(name)
    from PySide6.QtWidgets import QApplication

    app = QApplication([*sys.argv[:1], *STYLE])
    return app, show_window(app, ahead, today)


def show_window(app: QApplication, ahead: OpenFarm | None, today: date) -> MainWindow:
    """The window on the farm ``ahead``, or, where there is none, on the one that takes its place."""
    from PySide6.QtCore import Qt

    from quailsched.desktop.language import speak, wanted_language
    from quailsched.desktop.main_window import MainWindow
    from quailsched.desktop.theme import dress_app, use_colours, wanted_theme
    from quailsched.session.paths import remembered

    app.setApplicationName("Quailsched")
    app.setDesktopFileName("quailsched")
    speak(app, wanted_language(str(remembered().get("language", "auto"))))
    use_colours(app, wanted_theme(str(remembered().get("colours", "auto"))))
    sys.excepthook = _tell
    opened, remark = (ahead, "") if ahead is not None else _example_instead(today)
    window = MainWindow(opened, today)
    dress_app(app)
    window.later.ended.connect(lambda: _collect_again(window))
    window.show()
    window.season.canvas.setFocus(Qt.FocusReason.OtherFocusReason)
    if remark:
        window.say(remark)
    return window


def _collect_again(window: MainWindow) -> None:
    from quailsched.desktop.garbage import settle

    settle()
    window.background.collect()


def _example_instead(today: date) -> tuple[OpenFarm, str]:
    """The example and a word about it, as there is no farm of last time or it cannot be opened any more."""
    from quailsched.session.farms import home_example, open_farm
    from quailsched.session.faults import StoreError
    from quailsched.session.paths import example_path, last_farm
    from quailsched.words import say

    kept = last_farm()
    try:
        if kept is not None and kept != example_path():
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
