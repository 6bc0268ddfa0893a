"""Everything that does the commands of a window, put together. The window opens without it (``after_start``)."""

from __future__ import annotations

from typing import TYPE_CHECKING

from quailsched.desktop.clash_commands import ClashCommands
from quailsched.desktop.colour_commands import ColourCommands
from quailsched.desktop.counts.commands import CountCommands
from quailsched.desktop.file_commands import FileCommands
from quailsched.desktop.help_commands import HelpCommands
from quailsched.desktop.history import HistoryCommands
from quailsched.desktop.language_commands import LanguageCommands
from quailsched.desktop.paper_commands import PaperCommands
from quailsched.desktop.record_commands import RecordCommands
from quailsched.desktop.table_commands import TableCommands
from quailsched.desktop.today_commands import TodayCommands
from quailsched.desktop.trial_commands import TrialCommands
from quailsched.desktop.view_commands import ViewCommands

if TYPE_CHECKING:
    from quailsched.desktop.main_window import MainWindow


class AllCommands:
    """The owners of the methods that ``actions`` names, for one window."""

    def __init__(self, window: MainWindow) -> None:
        self.files, self.records, self.clashes = FileCommands(window), RecordCommands(window), ClashCommands(window)
        self.trials, self.looks, self.colours = TrialCommands(window), ViewCommands(window), ColourCommands(window)
        self.facts = CountCommands(window)
        self.paper, self.language, self.help = PaperCommands(window), LanguageCommands(window), HelpCommands(window)
        self.tables, self.history = TableCommands(window), HistoryCommands(window)
        self.daily = TodayCommands(window)

    def owners(self) -> tuple[object, ...]:
        return tuple(vars(self).values())
