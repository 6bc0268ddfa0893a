"""Commands that take records in from a table and give all of them out as tables.

What a table looks like in the window is in ``tables``, which is not loaded before it is asked for.
"""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QDialog, QFileDialog

from quailsched.words import number_text, say

if TYPE_CHECKING:
    from quailsched.desktop.main_window import MainWindow


class TableCommands:
    """Records from a table and as tables, for one window."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window

    def take_records(self) -> None:
        """Ask for a table, show what becomes of its rows, and take the good ones in as one step."""
        from quailsched.desktop.tables.take_form import TABLE_FILES, TakeForm
        from quailsched.session.tables import take_table

        chosen, _ = QFileDialog.getOpenFileName(
            self._window, say("Records from a table"), str(Path.home()), say(TABLE_FILES)
        )
        if not chosen:
            return
        opened = self._window.opened
        form = TakeForm(self._window, opened, Path(chosen), self._window.today, self._window.run)
        if form.exec() == QDialog.DialogCode.Accepted and (taking := form.taking) is not None:
            self._window.attempt(lambda: take_table(opened, taking))
        form.deleteLater()

    def give_records(self) -> None:
        """Ask for a folder, and write every kind of record into it."""
        folder = QFileDialog.getExistingDirectory(self._window, say("Records as tables"), str(Path.home()))
        if folder:
            self._window.attempt(lambda: self._give(Path(folder)))

    def _give(self, folder: Path) -> None:
        from quailsched.session.tables import give_tables

        tables = give_tables(self._window.opened, folder)
        rows = sum(len(table.rows) for table in tables)
        self._window.say(
            say("{rows} rows are in {tables} tables in {folder}.", rows=number_text(rows), tables=len(tables),
                folder=folder.name)
        )  # fmt: skip
