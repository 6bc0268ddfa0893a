"""Commands of the daily round: the Today view, a count of what is picked, a chore of one's own, the morning notice."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QDialog

from quailsched.edits.change import Change

if TYPE_CHECKING:
    from quailsched.desktop.main_window import MainWindow
    from quailsched.desktop.today.morning import MorningNotice, Tray
    from quailsched.desktop.today.view import TodayView

_LOOK_MS = 30_000


class TodayCommands:
    """For one window."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window
        self._now: Callable[[], datetime] = datetime.now
        self._midnight: QTimer | None = None
        self.notice: MorningNotice | None = None
        self.make_tray: Callable[[], Tray | None] = self._desktop_tray

    def serve(self, view: TodayView) -> TodayView:
        """``view`` itself, for which is done from now on what it asks for."""
        window = self._window
        view.change_asked.connect(self.take)
        view.undo_asked.connect(window.undo)
        view.status.connect(window.say)
        view.print_asked.connect(lambda: window.commands.paper.print_chores())
        view.batch_wanted.connect(lambda: window.commands.records.add_batch())
        return view

    def take(self, change: Change) -> None:
        """A step of the plan, whatever is looked at: what happens, happens to no trial."""
        self._window.attempt(lambda: self._window.opened.apply_to_plan(change))

    def show_today(self) -> None:
        from quailsched.desktop.main_window import TODAY

        self._window.show_view(TODAY)

    def record_count(self) -> None:
        """Of the batch that is picked in the season, without leaving it; else in the Today view."""
        from quailsched.desktop.today.record_dialog import RecordDialog

        window = self._window
        if window.stack.currentWidget() is window.season:
            RecordDialog(window, window.day_view, window.season.picked.batch_id or "").open()
            return
        self.show_today()
        window.day_view.record()

    def add_chore(self) -> None:
        window = self._window
        if window.stack.currentWidget() is not window.day_view:
            self.show_today()
        window.day_view.add_chore()

    def tell_in_the_morning(self) -> None:
        """Ask whether the desktop is to tell what is due."""
        from quailsched.desktop.today.morning import keep_morning, morning_wanted
        from quailsched.desktop.today.notice_form import NoticeForm

        form = NoticeForm(self._window, morning_wanted(), has_tray=self._has_tray())
        if form.exec() == QDialog.DialogCode.Accepted:
            keep_morning(form.morning)
            self.follow(self._now)
        form.deleteLater()

    def follow(self, now: Callable[[], datetime]) -> None:
        """Keep an eye on the clock: of the morning notice if it is wanted, and of midnight."""
        from quailsched.desktop.today.morning import MorningNotice, morning_wanted

        self._now = now
        if self._midnight is None:
            self._midnight = QTimer(self._window, interval=_LOOK_MS)
            self._midnight.timeout.connect(lambda: self._window.day_view.set_today(self._now().date()))
            self._midnight.start()
        if self.notice is not None:
            self.notice.follow()
        elif morning_wanted().is_wanted:
            season = lambda: self._window.opened.plan_season  # noqa: E731
            self.notice = MorningNotice(season, lambda: self._now(), self.make_tray, self._window)

    def _has_tray(self) -> bool:
        from quailsched.desktop.today.tray import has_tray

        return has_tray()

    def _desktop_tray(self) -> Tray | None:
        from quailsched.desktop.today.tray import QTray

        return QTray(self._window, self.come_up, self._window.close) if self._has_tray() else None

    def come_up(self) -> None:
        """The window, with today's chores, before all others."""
        self._window.showNormal() if self._window.isMinimized() else self._window.show()
        self._window.raise_()
        self._window.activateWindow()
        self.show_today()
