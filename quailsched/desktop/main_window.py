"""The window: puts the views together and carries out the commands. Rules, forms and painting live elsewhere."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator
from datetime import date
from functools import cached_property
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent
from PySide6.QtGui import QAction, QCloseEvent, QPaintEvent
from PySide6.QtWidgets import QMainWindow, QStackedWidget, QWidget

from quailsched.desktop.bars import Body, Rail, TopBar
from quailsched.desktop.coming_back import come_back, keep
from quailsched.desktop.connections import connect
from quailsched.desktop.find_box import FindBox
from quailsched.desktop.icons import ALL_RATIOS
from quailsched.desktop.labels import as_it_is, on_button
from quailsched.desktop.later import Later, take_place
from quailsched.desktop.menus import make_menus
from quailsched.desktop.narrow import StatusLine
from quailsched.desktop.season_canvas.scene import Picked
from quailsched.desktop.season_view import SeasonView
from quailsched.desktop.stage import Stage
from quailsched.desktop.views import VIEWS, rail_rows
from quailsched.report.season_name import season_name
from quailsched.session.open_farm import Notice, OpenFarm
from quailsched.session.paths import remember
from quailsched.words import say

if TYPE_CHECKING:
    from quailsched.desktop.all_commands import AllCommands
    from quailsched.desktop.books.books_view import BooksView
    from quailsched.desktop.next_set.view import NextSetView
    from quailsched.desktop.season_canvas.ghosts import Ghost
    from quailsched.desktop.setup.setup_view import SetupView
    from quailsched.desktop.tasks import Background, Run
    from quailsched.desktop.today.view import TodayView
    from quailsched.edits.change import Change

SEASON, TODAY, NEXT_SET, BOOKS, SETUP = range(5)


class MainWindow(QMainWindow):
    """One farm at a time. ``opened`` is replaced when another is opened.

    What the first picture does not show is made when it is first asked for, or else soon after (``after_start``).
    """

    def __init__(self, opened: OpenFarm, today: date, run: Run | None = None) -> None:
        """``run`` carries out slow work; a thread beside the window if it is not given."""
        super().__init__()
        self.today, self.opened = today, opened
        self.run: Run = run or (lambda work, done: self.background.run(work, done))
        self.top = TopBar(
            *(self.undo, self.redo),
            lambda: self.commands.files.write_calendar(),
            lambda: self.commands.clashes.next_clash(),
        )
        self.rail = Rail(rail_rows())
        self.season = SeasonView(today, self.run)
        self._is_thinking = False  # the season shows the batch that Next set thinks of
        self.stack = QStackedWidget()
        for view in (self.season, *(QWidget() for _ in VIEWS[1:])):  # the others stand where their views will
            self.stack.addWidget(view)
        self.stage = Stage(self.stack)
        self.find_box = FindBox(lambda: self.opened.farm, today)
        self.top.put_in(self.find_box)
        self._lay_out()
        self._menus, self._actions = make_menus(self, lambda: self.actions_by_name), dict[str, QAction]()
        connect(self)
        self.show_view(SEASON)
        come_back(self)
        self.show_farm(opened)
        self.later = Later(self._steps(), self)

    def _steps(self) -> Iterator[Callable[[], object]]:
        from quailsched.desktop.after_start import steps

        yield from steps(self)

    def _lay_out(self) -> None:
        self.setCentralWidget(Body(self.top, self.rail, self.stage))
        self.setStatusBar(StatusLine())

    # what is made when it is asked for

    @cached_property
    def background(self) -> Background:
        from quailsched.desktop.tasks import Background

        return Background(self)

    @cached_property
    def day_view(self) -> TodayView:
        from quailsched.desktop.today.view import TodayView

        return self.commands.daily.serve(TodayView(self.opened, self.today, self.season.canvas.colour_number))

    @cached_property
    def next_set(self) -> NextSetView:
        from quailsched.desktop.next_set.view import NextSetView

        made = NextSetView(self.opened, self.today, self.run)
        made.set_asked.connect(self.take_change)
        made.look_asked.connect(self.see_next_set)
        made.place_wanted.connect(lambda: self.commands.records.add_place())
        made.clash_wanted.connect(lambda: self.commands.clashes.next_clash())
        return made

    @cached_property
    def books(self) -> BooksView:
        from quailsched.desktop.books.books_view import BooksView

        return BooksView(self.opened, self.today, self.run)

    @cached_property
    def setup_view(self) -> SetupView:
        from quailsched.desktop.setup.setup_view import SetupView

        made = SetupView(self.opened, self.today)
        made.status.connect(self.say)
        return made

    def put_in(self, number: int) -> QWidget:
        """The view of that number, made if it is not yet, in its place."""
        view: QWidget = getattr(self, VIEWS[number].part)
        if self.stack.indexOf(view) < 0:
            take_place(self.stack, number, view)
        return view

    @cached_property
    def commands(self) -> AllCommands:
        from quailsched.desktop.all_commands import AllCommands

        return AllCommands(self)

    @property
    def actions_by_name(self) -> dict[str, QAction]:
        """What stands in the menus."""
        if not self._actions:
            from quailsched.desktop.actions import make_actions

            self._actions = make_actions(self, self._menus, self, self.season, *self.commands.owners())
            self._show_possible()
        return self._actions

    def event(self, event: QEvent) -> bool:
        if event.type() is QEvent.Type.ShortcutOverride:
            self.actions_by_name  # noqa: B018  # a key is looked for among them next
        return super().event(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        self.later.begin()

    def show_farm(self, opened: OpenFarm) -> None:
        """Show another farm, and remember it for the next start."""
        self.opened = opened
        opened.listen(self._changed)
        for view in ("day_view", "setup_view", "books", "next_set"):
            if view in self.__dict__:
                getattr(self, view).set_farm(opened)
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
        self.setWindowTitle(f"{self._title()} – Quailsched")
        self._show_possible()

    def _title(self) -> str:
        """The words for what is looked at."""
        name, trial = self.opened.farm.settings.name, self.opened.trial
        return name if trial is None else say("{name}, trial “{trial}”", name=name, trial=trial.name)

    def _show_possible(self) -> None:
        """The menus and the stage follow what is looked at."""
        if self.opened.trial is not None or self._actions:
            self.commands.trials.refresh()
            self.enable()

    def enable(self, _picked: object = None) -> None:
        """Let the commands be chosen that can be carried out."""
        if not self._actions:
            return
        for name, label in (("undo", self.opened.undo_label), ("redo", self.opened.redo_label)):
            self.actions_by_name[name].setEnabled(label is not None)
            word = say("&Undo") if name == "undo" else say("&Redo")
            self.actions_by_name[name].setText(f"{word}: {on_button(label)}" if label else word)
        is_picked = self.season.picked.batch_id is not None
        for name in ("change_picked", "move_picked", "remove_picked", "part_picked", "join_picked"):
            self.actions_by_name[name].setEnabled(is_picked)

    def _changed(self, notice: Notice) -> None:
        self.refresh()
        words = {
            "apply": say("{label}. Ctrl+Z takes it back.", label=notice.label),
            "undo": say("Taken back: {label}.", label=notice.label),
            "redo": say("Done again: {label}.", label=notice.label),
            "go": say("The farm is now as after this step: {label}.", label=notice.label),
            "look": say("You are looking at {label}.", label=notice.label),
        }
        self.say(words[notice.how])

    def say(self, text: str) -> None:
        """A sentence in the line at the bottom."""
        self.statusBar().showMessage(text, 12_000)

    def attempt(self, action: Callable[[], object]) -> None:
        """Do something that may be refused; the reason is shown as it is."""
        from quailsched.session.faults import CalendarError, FarmError, StoreError

        try:
            action()
        except (FarmError, StoreError, CalendarError) as error:
            from PySide6.QtWidgets import QMessageBox

            QMessageBox.warning(self, "Quailsched", as_it_is(str(error)))

    # views

    def show_view(self, number: int) -> None:
        if number != SEASON and self._is_thinking:
            self._is_thinking = False
            self.season.canvas.show_ghosts(self._ghosts())
        self.stack.setCurrentWidget(self.put_in(number))
        self.rail.show_chosen(number)
        if number == NEXT_SET:
            self.next_set.work_out()
            self.next_set.take_focus()

    def _ghosts(self) -> tuple[Ghost, ...]:
        """What is not in the season but drawn with it: the plan behind a trial, the batch that is thought of."""
        of_plan = self.commands.trials.ghosts() if self.opened.trial is not None else ()
        return (*of_plan, *(self.next_set.ghosts() if self._is_thinking else ()))

    def show_next_set(self) -> None:
        self.show_view(NEXT_SET)

    def see_next_set(self) -> None:
        """The season with the batch that is thought of as an outline, until another view or farm is shown."""
        self._is_thinking = True
        self.season.canvas.show_ghosts(self._ghosts())
        self.show_season()
        for ghost in self.next_set.ghosts()[:1]:
            self.season.canvas.go_to(ghost.band.start)
        self.say(say("The outline is the batch that is thought of. Nothing is set yet: Ctrl+3 goes back to it."))

    def show_season(self) -> None:
        self.show_view(SEASON)
        self.season.take_focus()

    def show_books(self) -> None:
        self.show_view(BOOKS)

    def show_setup(self) -> None:
        self.show_view(SETUP)

    # changes

    def undo(self) -> None:
        if self.opened.undo_label is not None:
            self.attempt(self.opened.undo)

    def redo(self) -> None:
        if self.opened.redo_label is not None:
            self.attempt(self.opened.redo)

    def change_batch(self, batch_id: str) -> None:
        self.commands.records.change_batch(batch_id)

    def change_place(self, place_id: str) -> None:
        self.commands.records.change_place(place_id)

    def remove(self, record_id: str) -> None:
        self.commands.records.remove(record_id)

    def nudge(self, batch_id: str, days: int) -> None:
        from quailsched.edits.batches import shift

        self.attempt(lambda: self.opened.apply(shift(self.opened.farm, batch_id, days)))

    def take_change(self, change: Change) -> None:
        self.attempt(lambda: self.opened.apply(change))

    # coming and going

    def dress(self, ratios: Collection[float] = ALL_RATIOS) -> None:
        """Take the icons in the ink of the theme, sharp on screens of ``ratios``."""
        self.top.dress(ratios)
        self.rail.dress(ratios)

    def closeEvent(self, event: QCloseEvent) -> None:
        self.later.stop()
        if "background" in self.__dict__:
            self.background.finish()
        keep(self)
        super().closeEvent(event)
