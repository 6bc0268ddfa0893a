"""The morning notice: off at first, once a day from its time on, and nothing where the desktop has no tray."""

from __future__ import annotations

from datetime import date, datetime, time

import pytest
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from quailsched.chores.work_out import chores_between
from quailsched.desktop.main_window import TODAY as TODAY_VIEW
from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.today.morning import Morning, MorningNotice, keep_morning, morning_wanted, notice_text
from quailsched.desktop.today.notice_form import NoticeForm
from quailsched.edits.marks import tick
from quailsched.session.open_farm import OpenFarm
from quailsched.session.paths import remember

TODAY = date(2027, 4, 8)


class FakeTray:
    def __init__(self) -> None:
        self.told: list[tuple[str, str]] = []
        self.is_shown = False

    def tell(self, title: str, text: str) -> None:
        self.told.append((title, text))

    def show(self) -> None:
        self.is_shown = True

    def hide(self) -> None:
        self.is_shown = False


class FakeClock:
    def __init__(self) -> None:
        self.now = datetime(2027, 4, 8, 6, 0)

    def __call__(self) -> datetime:
        return self.now


@pytest.fixture
def today() -> date:
    return TODAY


def notice(opened: OpenFarm, clock: FakeClock, tray: FakeTray | None) -> MorningNotice:
    return MorningNotice(lambda: opened.plan_season, clock, lambda: tray)


def test_there_is_no_notice_until_it_is_wanted(opened: OpenFarm, qapp: QApplication) -> None:
    tray = FakeTray()
    made = notice(opened, FakeClock(), tray)
    made.look()
    assert not morning_wanted().is_wanted
    assert (tray.told, tray.is_shown, made.is_on) == ([], False, False)


def test_it_is_told_once_a_day_from_its_time_on(opened: OpenFarm, qapp: QApplication) -> None:
    keep_morning(Morning(True, time(6, 30)))
    tray, clock = FakeTray(), FakeClock()
    made = notice(opened, clock, tray)
    assert tray.is_shown
    assert tray.told == []  # it is 6 o'clock
    clock.now = datetime(2027, 4, 8, 6, 31)
    made.look()
    assert tray.told == [("Pebble Bank", "4 chores today. First: Hatch day, Bracken.")]
    made.look()
    notice(opened, clock, tray)  # a new start
    assert len(tray.told) == 1
    clock.now = datetime(2027, 4, 9, 9, 0)
    made.look()
    assert len(tray.told) == 2


def test_a_day_without_chores_is_not_told(opened: OpenFarm, qapp: QApplication) -> None:
    keep_morning(Morning(True, time(6, 0)))
    tray, clock = FakeTray(), FakeClock()
    clock.now = datetime(2027, 4, 10, 7, 0)
    notice(opened, clock, tray)
    assert tray.told == []


def test_what_is_done_is_not_told_and_what_is_overdue_is(opened: OpenFarm) -> None:
    (watch,) = chores_between(opened.plan_season, date(2027, 4, 7), date(2027, 4, 8))
    (lockdown,) = chores_between(opened.plan_season, date(2027, 4, 6), date(2027, 4, 7))
    opened.apply_to_plan(tick(opened.plan, watch.key, watch.day, watch.title, watch.day))
    done = next(one for one in chores_between(opened.plan_season, TODAY, date(2027, 4, 9)) if one.kind == "heat")
    opened.apply_to_plan(tick(opened.plan, done.key, done.day, done.title, lockdown.day))
    assert notice_text(opened.plan_season, TODAY) == "3 chores today. First: Hatch day, Bracken."
    opened.apply_to_plan(tick(opened.plan, lockdown.key, lockdown.day, lockdown.title, lockdown.day))
    assert notice_text(opened.plan_season, date(2027, 4, 9)).startswith("5 chores today, 3 overdue.")


def test_without_a_tray_there_is_none_and_the_form_says_so(opened: OpenFarm, qtbot: QtBot) -> None:
    keep_morning(Morning(True, time(6, 0)))
    made = notice(opened, FakeClock(), None)
    assert not made.is_on
    form = NoticeForm(None, morning_wanted(), has_tray=False)
    qtbot.addWidget(form)
    assert "This desktop has no tray" in form.told.text()
    assert not form.wanted.isEnabled()


def test_a_setting_that_cannot_be_read_is_as_at_first() -> None:
    for kept in ("soon", 7, None):
        remember(morning_notice=kept)
        assert morning_wanted() == Morning()
    keep_morning(Morning(True, time(5, 45)))
    assert morning_wanted() == Morning(True, time(5, 45))
    keep_morning(Morning(False, time(5, 45)))
    assert not morning_wanted().is_wanted


def test_the_window_asks_keeps_and_begins(opened: OpenFarm, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> None:
    window = MainWindow(opened, TODAY, lambda _work, _done: None)
    qtbot.addWidget(window)
    window.show()
    daily, tray = window.commands.daily, FakeTray()
    daily.make_tray = lambda: tray
    monkeypatch.setattr(daily, "_has_tray", lambda: True)
    clock = FakeClock()
    daily.follow(clock)
    assert daily.notice is None

    def answer() -> None:
        form = QApplication.activeModalWidget()
        assert isinstance(form, NoticeForm)
        form.wanted.click()
        form.save_button.click()

    QTimer.singleShot(0, answer)
    clock.now = datetime(2027, 4, 8, 7, 0)
    window.actions_by_name["tell_in_the_morning"].trigger()
    assert morning_wanted() == Morning(True, time(6, 30))
    assert [title for title, _ in tray.told] == ["Pebble Bank"]
    daily.come_up()
    assert window.stack.currentIndex() == TODAY_VIEW
    keep_morning(Morning())
    daily.follow(clock)
    assert not tray.is_shown
