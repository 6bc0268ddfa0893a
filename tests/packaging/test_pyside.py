"""The PySide6 in use keeps count of None."""

from __future__ import annotations

import sys

from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot


def test_calls_that_return_nothing_keep_the_references_to_none(qtbot: QtBot) -> None:
    # PySide6 6.12.0 loses one reference a call; a program starts with about 5000 and dies at none. The margin
    # of 50 is for what else happens to let go of a None meanwhile. From Python 3.12 on, None is not counted.
    widget = QWidget()
    qtbot.addWidget(widget)
    before = sys.getrefcount(None)
    for _ in range(500):
        widget.update()
    assert sys.getrefcount(None) > before - 50
