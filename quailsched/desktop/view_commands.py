"""Commands that change what of the season is looked at: find, go to a day, how many days are in view."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QApplication, QWidget

from shiboken6 import isValid

from quailsched.desktop.finding import Match
from quailsched.desktop.season_canvas.scene import Picked

if TYPE_CHECKING:
    from quailsched.desktop.main_window import MainWindow

_ZOOM_STEP = 1.25


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
        before, view = self._focused_before, self._window.stack.currentWidget()
        self._focused_before = None
        if view is self._window.season:
            self._window.season.canvas.setFocus()
        elif before is not None and isValid(before) and before.isVisible():
            before.setFocus()
        elif view is not None:
            view.setFocus()

    def found(self, match: Match) -> None:
        """Show what was chosen in the field."""
        window, canvas = self._window, self._window.season.canvas
        window.show_season()
        if match.batch_id is not None:
            window.season.pick(Picked(batch_id=match.batch_id))
            canvas.go_to_batch(match.batch_id)
        if match.place_id is not None:
            canvas.show_place(match.place_id)
        if match.day is not None:
            canvas.mark_day(match.day)

    def fit_season(self) -> None:
        self._window.season.canvas.fit()

    def go_today(self) -> None:
        self._window.show_season()
        self._window.season.canvas.go_to(self._window.today)

    def zoom_in(self) -> None:
        self._window.season.canvas.zoom(_ZOOM_STEP)

    def zoom_out(self) -> None:
        self._window.season.canvas.zoom(1 / _ZOOM_STEP)

    def show_week(self) -> None:
        self._window.season.canvas.show_days(7)

    def show_month(self) -> None:
        self._window.season.canvas.show_days(31)

    def show_quarter(self) -> None:
        self._window.season.canvas.show_days(92)

    def show_year(self) -> None:
        self._window.season.canvas.show_days(365)

    def show_three_years(self) -> None:
        self._window.season.canvas.show_days(3 * 365 + 1)
