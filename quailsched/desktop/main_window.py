"""The window: puts the views together and carries out the commands. Rules, forms and painting live elsewhere."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from PySide6.QtGui import QCloseEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QMainWindow,
    QMessageBox,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from quailsched.desktop.actions import make_actions
from quailsched.desktop.bars import Rail, TopBar
from quailsched.desktop.clash_commands import ClashCommands
from quailsched.desktop.colour_commands import ColourCommands
from quailsched.desktop.coming_back import come_back, keep
from quailsched.desktop.file_commands import FileCommands
from quailsched.desktop.find_box import FindBox
from quailsched.desktop.forms.batch_form import edit_batch
from quailsched.desktop.forms.confirm import remove_record
from quailsched.desktop.forms.farm_form import edit_farm
from quailsched.desktop.forms.person_form import edit_person
from quailsched.desktop.forms.place_form import edit_place
from quailsched.desktop.help_commands import HelpCommands
from quailsched.desktop.labels import as_it_is, on_button
from quailsched.desktop.language_commands import LanguageCommands
from quailsched.desktop.next_set.view import NextSetView
from quailsched.desktop.paper_commands import PaperCommands
from quailsched.desktop.season_canvas.ghosts import Ghost
from quailsched.desktop.season_canvas.scene import Picked
from quailsched.desktop.season_view import SeasonView
from quailsched.desktop.setup.setup_view import SetupView
from quailsched.desktop.stage import Stage
from quailsched.desktop.tasks import Background, Run
from quailsched.desktop.trial_commands import TrialCommands
from quailsched.desktop.view_commands import ViewCommands
from quailsched.edits.batches import shift
from quailsched.edits.change import Change
from quailsched.farm.faults import FarmError
from quailsched.farm.records import Batch
from quailsched.planner.ways_out import WayOut
from quailsched.report.season_name import season_name
from quailsched.session.faults import CalendarError, StoreError
from quailsched.session.open_farm import Notice, OpenFarm
from quailsched.session.paths import remember
from quailsched.words import say

SEASON, NEXT_SET, SETUP = 0, 1, 2


class MainWindow(QMainWindow):
    """One farm at a time. ``opened`` is replaced when another is opened."""

    def __init__(self, opened: OpenFarm, today: date, run: Run | None = None) -> None:
        """``run`` carries out slow work; a thread beside the window if it is not given."""
        super().__init__()
        self._background = Background(self)
        self.today, self.opened = today, opened
        self.files, self.clashes = FileCommands(self), ClashCommands(self)
        self.top = TopBar(self.undo, self.redo, self.files.write_calendar, self.clashes.next_clash)
        views = [
            ("season", say("Season"), say("Lanes of places over time (Ctrl+1)")),
            ("egg", say("Next set"), say("When the next eggs can go in, and how many (Ctrl+2)")),
            ("setup", say("Setup"), say("Places, people, batches and figures (Ctrl+3)")),
        ]
        self.rail = Rail(views)
        self.season = SeasonView(today, run or self._background.run)
        self.next_set = NextSetView(opened, today, run or self._background.run)
        self._is_thinking = False  # the season shows the batch that Next set thinks of
        self.setup_view = SetupView(opened, today)
        self.stack = QStackedWidget()
        for view in (self.season, self.next_set, self.setup_view):
            self.stack.addWidget(view)
        self.stage = Stage(self.stack)
        self.colours, self.trials, self.looks = ColourCommands(self), TrialCommands(self), ViewCommands(self)
        self.paper = PaperCommands(self)
        self.find_box = FindBox(lambda: self.opened.farm, today)
        self.top.put_in(self.find_box)
        self._lay_out()
        self.actions_by_name = make_actions(
            *(self, self.files, self.clashes, self.trials, self.colours, self.season),
            *(self.looks, self.paper, LanguageCommands(self), HelpCommands(self)),
        )
        self._connect()
        self.show_view(SEASON)
        come_back(self)
        self.show_farm(opened)

    def _lay_out(self) -> None:
        body = QWidget()
        column = QVBoxLayout(body)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.top)
        row = QHBoxLayout()
        row.setSpacing(0)
        row.addWidget(self.rail)
        row.addWidget(self.stage, 1)
        column.addLayout(row, 1)
        self.setCentralWidget(body)
        self.statusBar().setSizeGripEnabled(False)

    def _connect(self) -> None:
        self.rail.chosen.connect(self.show_view)
        self.find_box.chosen.connect(self.looks.found)
        self.find_box.left.connect(self.looks.done_finding)
        canvas, inspector = self.season.canvas, self.season.inspector
        canvas.batch_opened.connect(self.change_batch)
        canvas.place_opened.connect(self.change_place)
        canvas.nudged.connect(self.nudge)
        canvas.change_asked.connect(self.take_change)
        canvas.remove_asked.connect(self.remove)
        self.season.clashes_counted.connect(self.top.show_clashes)
        canvas.picked.connect(self._enable)
        table = self.season.table
        table.add_asked.connect(self.add_batch)
        table.change_asked.connect(self.change_batch)
        table.remove_asked.connect(self.remove)
        self.season.way_chosen.connect(self.take_way)
        inspector.change_asked.connect(self.change_batch)
        inspector.remove_asked.connect(self.remove)
        inspector.nudge_asked.connect(self.nudge)
        inspector.accept_asked.connect(self.clashes.accept)
        inspector.take_back_asked.connect(self.clashes.take_back)
        inspector.batch_wanted.connect(self.add_batch)
        inspector.place_wanted.connect(self.add_place)
        self.season.frees_up.place_opened.connect(self.change_place)
        self.setup_view.status.connect(self.say)
        self.next_set.set_asked.connect(self.take_change)
        self.next_set.look_asked.connect(self.see_next_set)

    def show_farm(self, opened: OpenFarm) -> None:
        """Show another farm, and remember it for the next start."""
        self.opened = opened
        opened.listen(self._changed)
        self.setup_view.set_farm(opened)
        self.next_set.set_farm(opened)
        self.season.pick(Picked())
        self.refresh()
        self.season.begin()
        remember(last_farm=str(opened.file.path.absolute()))
        name, path = opened.farm.settings.name, opened.file.path
        self.say(say("{farm} is kept in {path}. Every change is saved at once.", farm=name, path=path))

    def refresh(self) -> None:
        """Show the farm as it is now."""
        farm = self.opened.farm
        clashes = self.opened.checked.since(self.today)
        self.season.show_season(self.opened.checked, clashes, self._ghosts())
        self.top.farm_name.setText(farm.settings.name)
        self.top.season_name.setText(season_name(farm, self.today))
        self.top.show_steps(self.opened.undo_label, self.opened.redo_label)
        if self.stack.currentIndex() == NEXT_SET:
            self.next_set.work_out()
        self.setWindowTitle(f"{self.trials.title()} – Quailsched")
        self.trials.refresh()
        self._enable()

    def _enable(self, _picked: object = None) -> None:
        for name, label in (("undo", self.opened.undo_label), ("redo", self.opened.redo_label)):
            self.actions_by_name[name].setEnabled(label is not None)
            word = say("&Undo") if name == "undo" else say("&Redo")
            self.actions_by_name[name].setText(f"{word}: {on_button(label)}" if label else word)
        is_picked = self.season.picked.batch_id is not None
        for name in ("change_picked", "remove_picked"):
            self.actions_by_name[name].setEnabled(is_picked)

    def _changed(self, notice: Notice) -> None:
        self.refresh()
        words = {
            "apply": say("{label}. Ctrl+Z takes it back.", label=notice.label),
            "undo": say("Taken back: {label}.", label=notice.label),
            "redo": say("Done again: {label}.", label=notice.label),
            "look": say("You are looking at {label}.", label=notice.label),
        }
        self.say(words[notice.how])

    def say(self, text: str) -> None:
        """A sentence in the line at the bottom."""
        self.statusBar().showMessage(text, 12_000)

    def attempt(self, action: Callable[[], object]) -> None:
        """Do something that may be refused; the reason is shown as it is."""
        try:
            action()
        except (FarmError, StoreError, CalendarError) as error:
            QMessageBox.warning(self, "Quailsched", as_it_is(str(error)))

    # views

    def show_view(self, number: int) -> None:
        if number != SEASON and self._is_thinking:
            self._is_thinking = False
            self.season.canvas.show_ghosts(self._ghosts())
        self.stack.setCurrentIndex(number)
        self.rail.show_chosen(number)
        if number == NEXT_SET:
            self.next_set.work_out()
            self.next_set.landscape.setFocus()

    def _ghosts(self) -> tuple[Ghost, ...]:
        """What is not in the season but drawn with it: the plan behind a trial, the batch that is thought of."""
        return (*self.trials.ghosts(), *(self.next_set.ghosts() if self._is_thinking else ()))

    def show_next_set(self) -> None:
        self.show_view(NEXT_SET)

    def see_next_set(self) -> None:
        """The season with the batch that is thought of as an outline, until another view or farm is shown."""
        self._is_thinking = True
        self.season.canvas.show_ghosts(self._ghosts())
        self.show_season()
        for ghost in self.next_set.ghosts()[:1]:
            self.season.canvas.go_to(ghost.band.start)
        self.say(say("The outline is the batch that is thought of. Nothing is set yet: Ctrl+2 goes back to it."))

    def show_season(self) -> None:
        self.show_view(SEASON)
        self.season.take_focus()

    def show_setup(self) -> None:
        self.show_view(SETUP)

    # changes

    def undo(self) -> None:
        if self.opened.undo_label is not None:
            self.attempt(self.opened.undo)

    def redo(self) -> None:
        if self.opened.redo_label is not None:
            self.attempt(self.opened.redo)

    def add_batch(self) -> None:
        self._pick_new(edit_batch(self, self.opened, self.today))

    def add_place(self) -> None:
        edit_place(self, self.opened, self.today)

    def add_person(self) -> None:
        edit_person(self, self.opened, self.today)

    def change_batch(self, batch_id: str) -> None:
        batch = self.opened.farm.find(batch_id)
        if isinstance(batch, Batch):
            self._pick_new(edit_batch(self, self.opened, self.today, batch))

    def change_place(self, place_id: str) -> None:
        edit_place(self, self.opened, self.today, self.opened.farm.place(place_id))

    def change_farm(self) -> None:
        edit_farm(self, self.opened)

    def change_picked(self) -> None:
        if self.season.picked.batch_id is not None:
            self.change_batch(self.season.picked.batch_id)

    def remove_picked(self) -> None:
        if self.season.picked.batch_id is not None:
            self.remove(self.season.picked.batch_id)

    def remove(self, record_id: str) -> None:
        remove_record(self, self.opened, record_id)

    def nudge(self, batch_id: str, days: int) -> None:
        self.attempt(lambda: self.opened.apply(shift(self.opened.farm, batch_id, days)))

    def take_way(self, way: WayOut) -> None:
        """Do what a way out proposes, as one step."""
        self.take_change(way.change)

    def take_change(self, change: Change) -> None:
        self.attempt(lambda: self.opened.apply(change))

    def _pick_new(self, batch_id: str | None) -> None:
        if batch_id is not None:
            self.season.pick(Picked(batch_id=batch_id))

    # coming and going

    def closeEvent(self, event: QCloseEvent) -> None:
        self._background.finish()
        keep(self)
        super().closeEvent(event)
