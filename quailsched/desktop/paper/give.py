"""A season as the bytes of a file, by the ending of its name; and letters without a window. Nothing is written here."""

from __future__ import annotations

import os
import sys

from PySide6.QtGui import QGuiApplication

from quailsched.desktop.paper.pages import pdf_of
from quailsched.desktop.paper.papers import Paper
from quailsched.desktop.paper.picture import SeasonPicture
from quailsched.desktop.paper.season_page import SeasonPage


def without_window() -> QGuiApplication:
    """What letters need to be drawn with, to be held until all is drawn.

    On Linux no display is asked: there may be none, and one that does not answer would end the program.
    """
    running = QGuiApplication.instance()
    if isinstance(running, QGuiApplication):
        return running
    if sys.platform.startswith("linux"):
        os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    return QGuiApplication(["quailsched"])


def season_file(page: SeasonPage, ending: str, paper: Paper, sharp: int = 1) -> bytes:
    """The season as ".pdf" on ``paper``, as ".png" with ``sharp`` dots to a pixel each way, or as ".svg"."""
    if ending == ".pdf":
        return pdf_of(page, paper)
    picture = SeasonPicture(page)
    return picture.png(sharp) if ending == ".png" else picture.svg()
