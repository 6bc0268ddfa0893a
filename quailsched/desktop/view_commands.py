"""Commands that change what of the season is looked at: find, go to a day, how many days are in view."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QApplication, QWidget
from shiboken6 import isValid

from quailsched.desktop.season_canvas.canvas import SeasonCanvas
from quailsched.desktop.season_canvas.scale import ZOOM_STEP
from quailsched.desktop.season_canvas.scene import Picked

if TYPE_CHECKING:
    from quailsched.desktop.finding import Match
    from quailsched.desktop.main_window import MainWindow


class ViewCommands:
    """The canvas moves, nothing changes."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window
        self._focused_before: QWidget | None = None

    def find_something(self) -> None:
        """To the field for names and days."""
        self._begin(days_only=False)

    def go_to_day(self) -> None:
        """To the same field, for days alone."""
        self._begin(days_only=True)

    def _begin(self, *, days_only: bool) -> None:
        focused = QApplication.focusWidget()
        if focused is not self._window.find_box:
            self._focused_before = focused
        self._window.find_box.begin(days_only=days_only)

    def done_finding(self) -> None:
        """The keys go back to the season, or to where they were in another view."""
        window, before = self._window, self._focused_before
        self._focused_before = None
        view = window.stack.currentWidget()
        if view is window.season:
            window.season.take_focus()
        elif before is not None and isValid(before) and before.isVisible():
            before.setFocus()
        elif view is not None:
            view.setFocus()

    def found(self, match: Match) -> None:
        """Show what was chosen in the field."""
        window = self._window
        window.show_season()
        if match.batch_id is not None:
            window.season.pick(Picked(batch_id=match.batch_id))
            window.season.canvas.go_to_batch(match.batch_id)
        if match.place_id is not None:
            self._lanes().show_place(match.place_id)
        if match.day is not None:
            self._lanes().mark_day(match.day)

    def _lanes(self) -> SeasonCanvas:
        """The season in view, and not as a table: what is asked for shows only there."""
        window = self._window
        if window.stack.currentWidget() is not window.season or not window.season.splitter.shows_main:
            window.show_season()
        if window.season.is_table:
            window.season.swap_table()
        return window.season.canvas

    def fit_season(self) -> None:
        self._lanes().fit()

    def go_today(self) -> None:
        if self._window.stack.currentWidget() is self._window.day_view:
            self._window.day_view.go_today()
            return
        self._lanes().go_to(self._window.today)

    def zoom_in(self) -> None:
        self._lanes().zoom(ZOOM_STEP)

    def zoom_out(self) -> None:
        self._lanes().zoom(1 / ZOOM_STEP)

    def show_week(self) -> None:
        self._lanes().show_days(7)

    def show_month(self) -> None:
        self._lanes().show_days(31)

    def show_quarter(self) -> None:
        self._lanes().show_days(92)

    def show_year(self) -> None:
        self._lanes().show_days(366)

    def show_three_years(self) -> None:
        self._lanes().show_days(3 * 365 + 1)
