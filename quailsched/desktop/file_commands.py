"""Commands about files: new, open, example, calendar, export, import. Asks where, and hands over to ``session``."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QFileDialog, QInputDialog

from quailsched.session.farms import export_farm, home_example, import_farm, make_farm, open_farm
from quailsched.words import marked, say

if TYPE_CHECKING:
    from quailsched.desktop.main_window import MainWindow

_FARM_FILES = marked("Farms (*.quail);;All files (*)")


class FileCommands:
    """The commands of the Farm menu, for one window."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window

    def new_farm(self) -> None:
        name, is_given = QInputDialog.getText(self._window, say("New farm"), say("What is your farm called?"))
        if not is_given or not name.strip():
            return
        path = self.ask_new_file(say("Keep the farm in"), f"{name.strip()}.quail", say(_FARM_FILES), ".quail")
        if path is not None:
            self._window.attempt(
                lambda: self._window.show_farm(make_farm(path, name, self._window.opened.farm.settings.units))
            )

    def open_file(self) -> None:
        chosen, _ = QFileDialog.getOpenFileName(self._window, say("Open a farm"), str(Path.home()), say(_FARM_FILES))
        if chosen:
            self._window.attempt(lambda: self._window.show_farm(open_farm(Path(chosen))))

    def show_example(self) -> None:
        self._window.attempt(lambda: self._window.show_farm(home_example(self._window.today)))

    def write_calendar(self) -> None:
        name = f"{self._window.opened.plan.settings.name}.ics"
        path = self.ask_new_file(say("Write the calendar to"), name, say("Calendars (*.ics)"), ".ics")
        if path is not None:
            self._window.attempt(lambda: self._calendar_to(path))

    def _calendar_to(self, path: Path) -> None:
        from quailsched.session.sharing import give_calendar

        count = give_calendar(self._window.opened, path, self._window.today)
        of_plan = "" if self._window.opened.trial is None else say(" of the plan, not of the trial,")
        self._window.say(
            say(
                "{number} chores{of_plan} are in {file}. Write it again after changes: entries are brought up to date.",
                number=count,
                of_plan=of_plan,
                file=path.name,
            )
        )

    def export_document(self) -> None:
        name = f"{self._window.opened.plan.settings.name}.json"
        path = self.ask_new_file(say("Export everything to"), name, say("Documents (*.json)"), ".json")
        if path is not None:
            self._window.attempt(lambda: export_farm(self._window.opened, path))

    def import_document(self) -> None:
        chosen, _ = QFileDialog.getOpenFileName(
            self._window, say("Import a document"), str(Path.home()), say("Documents (*.json)")
        )
        if not chosen:
            return
        document = Path(chosen)
        path = self.ask_new_file(say("Keep the farm in"), f"{document.stem}.quail", say(_FARM_FILES), ".quail")
        if path is not None:
            self._window.attempt(lambda: self._window.show_farm(import_farm(document, path)))

    def ask_new_file(self, title: str, name: str, kinds: str, ending: str) -> Path | None:
        """Where something new is to be written; ``ending`` is put after a name that has none. None if nowhere."""
        chosen, _ = QFileDialog.getSaveFileName(self._window, title, str(Path.home() / name), kinds)
        if not chosen:
            return None
        path = Path(chosen)
        return path if path.suffix else path.with_name(path.name + ending)
