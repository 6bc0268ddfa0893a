"""The Today view by real keys and mouse: chores are ticked, counted, put off, left out, given away and added."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from uuid import uuid4

import pytest
from PySide6.QtCore import QEvent, QPoint, Qt, QTimer
from PySide6.QtWidgets import QApplication, QLabel, QMenu, QMessageBox, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from quailsched.chores.work_out import chores_between
from quailsched.desktop.main_window import TODAY as TODAY_VIEW
from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.paper.print_form import PrintForm
from quailsched.desktop.today.card import ChoreCard
from quailsched.desktop.today.chore_forms import LeaveOutForm, PutOffForm
from quailsched.desktop.today.own_chore_form import OwnChoreForm
from quailsched.desktop.today.page import DayPage
from quailsched.desktop.today.record_dialog import RecordDialog
from quailsched.desktop.today.view import TodayView
from quailsched.edits.counts import record
from quailsched.edits.marks import give, put_own, tick
from quailsched.edits.records import put
from quailsched.edits.trials import start_trial
from quailsched.farm.facts import Count, OwnChore, Sort
from quailsched.farm.records import Person
from quailsched.session.open_farm import OpenFarm

TODAY = date(2027, 4, 8)  # Bracken hatches, Aster is to be sexed, fed otherwise and warmed less
NOW = datetime(2027, 4, 8, 7, tzinfo=UTC)
LEFT = Qt.MouseButton.LeftButton
Key = Qt.Key
pytestmark = pytest.mark.qt_log_ignore("does not support grabbing the", extend=True)


@pytest.fixture
def today() -> date:
    return TODAY


def shown(opened: OpenFarm, qtbot: QtBot, size: tuple[int, int] = (1280, 800)) -> MainWindow:
    """A window in which the keys have gone to Today."""
    made = MainWindow(opened, TODAY, lambda _work, _done: None)
    qtbot.addWidget(made)
    made.resize(*size)
    with qtbot.waitExposed(made):
        made.show()
    qtbot.keyClick(made, Key.Key_2, Qt.KeyboardModifier.ControlModifier)
    assert made.stack.currentIndex() == TODAY_VIEW
    return made


@pytest.fixture
def window(opened: OpenFarm, qtbot: QtBot) -> MainWindow:
    return shown(opened, qtbot)


@pytest.fixture
def view(window: MainWindow) -> TodayView:
    return window.day_view


def card(view: TodayView, title: str) -> ChoreCard:
    return next(one for one in view.cards.values() if title in one.chore.title)


def words(widget: QWidget) -> str:
    QApplication.processEvents()
    return "\n".join(one.text() for one in widget.findChildren(QLabel) if one.isVisible())


def titles(view: TodayView) -> list[str]:
    assert view.page is not None
    return [chore.title for chore in view.page.chores]


def sorts(opened: OpenFarm) -> list[tuple[Sort, int]]:
    return sorted((count.sort, count.number) for count in opened.plan.counts)


def menu_open() -> QMenu:
    popup = QApplication.activePopupWidget()
    assert isinstance(popup, QMenu)
    return popup


def in_form(act: Callable[[QWidget], None]) -> None:
    """Do ``act`` with the form that comes up next; it closes then, whatever has happened."""

    def answer() -> None:
        form = QApplication.activeModalWidget()
        assert form is not None
        try:
            act(form)
        finally:
            form.close()

    QTimer.singleShot(0, answer)


def own(opened: OpenFarm, name: str, first: date, repeat: str = "") -> None:
    opened.apply_to_plan(put_own(opened.plan, OwnChore(str(uuid4()), name, first, repeat)))


def test_the_day_is_headed_by_its_name_and_the_number_of_chores(view: TodayView) -> None:
    assert view.head.title.text() == "Thursday 8 Apr"
    assert view.head.number.text().startswith("4 chores.")
    told = words(card(view, "Hatch day"))
    assert "Hatching tray · Bracken" in told
    assert "About 81 chicks expected." in told
    assert "wash hands with soap" in told


def test_a_caution_is_told_once_and_not_on_every_card(view: TodayView) -> None:
    telling = [one for one in view.cards.values() if "Healthy birds" in words(one)]
    assert len([one for one in view.cards.values() if "Healthy birds" in one.chore.caution]) == 2
    assert len(telling) == 1


def test_a_click_ticks_and_another_one_takes_it_back(view: TodayView, opened: OpenFarm, qtbot: QtBot) -> None:
    before = opened.plan
    heat = card(view, "Heat down")
    qtbot.mouseClick(heat.box, LEFT)
    assert heat.chore.done_on == TODAY
    assert heat.box.isChecked()
    assert view.head.number.text().startswith("4 chores, 1 of them done.")
    qtbot.mouseClick(heat.box, LEFT)
    assert heat.chore.done_on is None
    assert not heat.box.isChecked()
    assert opened.plan == before


def test_space_ticks_and_ctrl_z_takes_it_back(view: TodayView, window: MainWindow, qtbot: QtBot) -> None:
    heat = card(view, "Heat down")
    heat.take_focus()
    qtbot.keyClick(heat.box, Key.Key_Space)
    assert heat.chore.done_on == TODAY
    qtbot.keyClick(window, Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert heat.chore.done_on is None


def test_ctrl_z_takes_back_what_was_typed_and_recorded(view: TodayView, opened: OpenFarm, qtbot: QtBot) -> None:
    """As the line below says; while something is typed, it is the typing that is taken back."""
    line, before = view.head.record.line, opened.plan
    line.setFocus()
    qtbot.keyClicks(line, "2 died Aster")
    qtbot.keyClick(line, Key.Key_Return)
    assert opened.plan != before
    assert line.hasFocus()
    qtbot.keyClicks(line, "3 di")
    qtbot.keyClick(line, Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert (opened.plan != before, line.text()) == (True, "")
    qtbot.keyClick(line, Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert opened.plan == before
    qtbot.keyClick(line, Key.Key_Z, Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier)
    assert opened.plan != before


def test_a_tick_records_what_was_counted_in_the_same_step(view: TodayView, opened: OpenFarm, qtbot: QtBot) -> None:
    hatch = card(view, "Hatch day")
    assert hatch.fields is not None
    first, second = hatch.fields.fields["hatched"], hatch.fields.fields["left"]
    assert (first.placeholderText(), second.placeholderText()) == ("81", "51")  # 132 eggs x 61.31 %, and the rest
    first.setFocus()
    qtbot.keyClicks(first, "79")
    qtbot.keyClick(first, Key.Key_Return)
    assert second.hasFocus() or second.isVisible()
    qtbot.keyClicks(second, "50")
    qtbot.keyClick(second, Key.Key_Return)
    assert sorts(opened) == [(Sort.HATCHED, 79), (Sort.QUIT, 50)]
    assert hatch.chore.done_on == TODAY
    assert opened.undo_label == "Done: Hatch day, Bracken"
    qtbot.mouseClick(hatch.box, LEFT)  # right after it, the counts go too
    assert opened.plan.counts == ()
    assert hatch.chore.done_on is None
    assert hatch.answers() == {}


def test_what_is_expected_is_not_recorded_unless_it_is_typed(view: TodayView, opened: OpenFarm, qtbot: QtBot) -> None:
    qtbot.mouseClick(card(view, "Hatch day").box, LEFT)
    assert opened.plan.counts == ()
    assert card(view, "Hatch day").chore.done_on == TODAY


def test_a_count_that_cannot_be_is_refused_on_the_card(view: TodayView, opened: OpenFarm, qtbot: QtBot) -> None:
    hatch = card(view, "Hatch day")
    assert hatch.fields is not None
    qtbot.keyClicks(hatch.fields.fields["hatched"], "133")  # of 132 eggs
    qtbot.mouseClick(hatch.box, LEFT)
    assert opened.plan.counts == ()
    assert hatch.chore.done_on is None
    assert not hatch.box.isChecked()
    assert "132" in hatch.fault.text()
    assert hatch.fault.isVisible()
    assert hatch.box.accessibleDescription() == hatch.fault.text()
    qtbot.keyClick(hatch.fields.fields["hatched"], Key.Key_Backspace)  # it is being mended
    assert not hatch.fault.isVisible()


def test_an_odd_count_is_asked_about_and_recorded_when_it_is_ticked_again(
    view: TodayView, opened: OpenFarm, qtbot: QtBot
) -> None:
    opened.apply_to_plan(record(opened.plan, _count(opened, "Aster", Sort.HATCHED, 60, -21), TODAY))
    sex = card(view, "Sex Aster")
    assert sex.fields is not None
    qtbot.keyClicks(sex.fields.fields["hens"], "20")
    qtbot.keyClicks(sex.fields.fields["cocks"], "18")
    qtbot.mouseClick(sex.box, LEFT)
    assert Sort.SEXED not in [sort for sort, _ in sorts(opened)]
    assert "would be written down as missing. Tick it once more" in sex.fault.text()
    qtbot.mouseClick(sex.box, LEFT)
    assert (Sort.SEXED, 38) in sorts(opened)


def _count(opened: OpenFarm, name: str, sort: Sort, number: int, days: int) -> Count:
    batch = next(one for one in opened.plan.batches if one.name == name)
    return Count(str(uuid4()), sort, TODAY + timedelta(days=days), NOW, number, batch_id=batch.id)


def test_a_later_untick_leaves_counts_and_says_so(view: TodayView, opened: OpenFarm, qtbot: QtBot) -> None:
    told: list[str] = []
    view.status.connect(told.append)
    hatch = card(view, "Hatch day")
    assert hatch.fields is not None
    qtbot.keyClicks(hatch.fields.fields["hatched"], "79")
    qtbot.mouseClick(hatch.box, LEFT)
    qtbot.mouseClick(card(view, "Heat down").box, LEFT)
    qtbot.mouseClick(hatch.box, LEFT)
    assert (Sort.HATCHED, 79) in sorts(opened)
    assert hatch.chore.done_on is not None  # the count says so
    assert told == ["A count says that it is done. Undo it, or take the count back, if it is not."]


def test_typed_numbers_stay_while_other_chores_are_ticked(view: TodayView, qtbot: QtBot) -> None:
    hatch = card(view, "Hatch day")
    assert hatch.fields is not None
    qtbot.keyClicks(hatch.fields.fields["hatched"], "79")
    qtbot.mouseClick(card(view, "Heat down").box, LEFT)
    assert card(view, "Hatch day") is hatch
    assert hatch.fields.answers() == {"hatched": 79}


def test_a_chore_is_put_off_by_a_key_and_stands_on_its_new_day(view: TodayView, opened: OpenFarm, qtbot: QtBot) -> None:
    heat = card(view, "Heat down")
    heat.take_focus()
    qtbot.keyClick(heat.box, Key.Key_P)
    menu = menu_open()
    assert menu.actions()[0].text() == "&Tomorrow\tFri 9 Apr"
    qtbot.keyClick(menu, Key.Key_Return)
    assert "Heat down to 24.5 °C for Aster" not in titles(view)
    qtbot.keyClick(view, Key.Key_Right, Qt.KeyboardModifier.AltModifier)
    assert view.head.title.text() == "Friday 9 Apr"
    moved = card(view, "Heat down")
    assert moved.state.text() == "put off from 8 Apr"
    moved.take_focus()
    qtbot.keyClick(moved.box, Key.Key_P)
    back = menu_open()
    assert back.actions()[0].text() == "Back to Thu 8 Apr"
    qtbot.keyClick(back, Key.Key_Return)
    assert opened.plan.marks == ()


def test_a_chore_is_put_off_to_any_day_by_a_form(view: TodayView, opened: OpenFarm, qtbot: QtBot) -> None:
    heat = card(view, "Heat down")

    def answer(form: QWidget) -> None:
        assert isinstance(form, PutOffForm)
        qtbot.keyClick(form.day, Key.Key_Up)  # of the year, so the day has to be typed
        form.day.setDate(form.day.date().fromString("2027-04-20", "yyyy-MM-dd"))
        qtbot.mouseClick(form.save_button, LEFT)

    in_form(answer)
    view.steps.put_off(heat.chore, None)
    assert [mark.moved_to for mark in opened.plan.marks] == [date(2027, 4, 20)]


def test_a_chore_is_left_out_with_a_reason_and_taken_up_again(view: TodayView, opened: OpenFarm, qtbot: QtBot) -> None:
    heat = card(view, "Heat down")

    def answer(form: QWidget) -> None:
        assert isinstance(form, LeaveOutForm)
        qtbot.mouseClick(form.save_button, LEFT)
        assert "a reason of at least one letter" in words(form)
        qtbot.keyClicks(form.reason, "warm yet")
        qtbot.keyClick(form.reason, Key.Key_Return)

    in_form(answer)
    heat.take_focus()
    qtbot.keyClick(heat.box, Key.Key_L)
    assert heat.chore.left_out == "warm yet"
    assert heat.state.text() == "left out: warm yet"
    assert not heat.title.isEnabled()
    qtbot.mouseClick(heat.more, LEFT)
    assert menu_open().actions()[0].text() == "Take it &up again"
    qtbot.keyClick(menu_open(), Key.Key_U)
    assert heat.chore.is_open
    assert opened.plan.marks == ()


def test_a_chore_that_is_given_to_somebody_stands_in_their_column(
    view: TodayView, opened: OpenFarm, qtbot: QtBot
) -> None:
    assert view.page is not None
    assert [group.name for group in view.page.groups] == ["Ann or Leo"]
    heat = card(view, "Heat down")
    heat.take_focus()
    qtbot.keyClick(heat.box, Key.Key_G)
    menu = menu_open()
    assert [(one.text(), one.isChecked()) for one in menu.actions()] == [
        ("Anybody", True),
        ("Ann", False),
        ("Leo", False),
    ]
    qtbot.keyClick(menu, Key.Key_Down)
    qtbot.keyClick(menu, Key.Key_Down)
    qtbot.keyClick(menu, Key.Key_Return)
    assert heat.chore.given_to == "Leo"
    assert [(group.name, len(group.chores)) for group in view.page.groups] == [("Leo", 1), ("Ann or Leo", 3)]
    assert "1 chore, after school" in words(view.board)


def test_a_right_click_opens_the_menu_of_a_card(view: TodayView, qtbot: QtBot) -> None:
    heat = card(view, "Heat down")
    qtbot.mouseClick(heat.title, Qt.MouseButton.RightButton)
    from PySide6.QtGui import QContextMenuEvent

    QApplication.sendEvent(heat, QContextMenuEvent(QContextMenuEvent.Reason.Mouse, QPoint(5, 5), QPoint(50, 50)))
    assert [one.text() for one in menu_open().actions()] == ["&Put off", "&Leave out…", "&Give to"]
    menu_open().close()


def test_arrows_go_from_card_to_card_and_up_to_the_line(view: TodayView, window: MainWindow, qtbot: QtBot) -> None:
    with qtbot.waitActive(window):
        window.activateWindow()
    view.take_focus()
    order = view._in_order()
    assert order[0].box.hasFocus()
    qtbot.keyClick(order[0].box, Key.Key_Down)
    assert order[1].box.hasFocus()
    qtbot.keyClick(order[1].box, Key.Key_Up)
    qtbot.keyClick(order[0].box, Key.Key_Up)
    assert view.head.record.line.hasFocus()
    qtbot.keyClick(view.head.record.line, Key.Key_Escape)
    assert order[0].box.hasFocus()


def test_the_tab_key_goes_from_the_box_through_the_numbers(view: TodayView, window: MainWindow, qtbot: QtBot) -> None:
    with qtbot.waitActive(window):
        window.activateWindow()
    hatch = card(view, "Hatch day")
    assert hatch.fields is not None
    hatch.take_focus()
    for wanted in (*hatch.fields.fields.values(), hatch.more):
        qtbot.keyClick(QApplication.focusWidget() or view, Key.Key_Tab)
        assert QApplication.focusWidget() is wanted


def test_yesterday_can_be_ticked_and_its_counts_are_of_yesterday(
    view: TodayView, opened: OpenFarm, qtbot: QtBot
) -> None:
    qtbot.mouseClick(view.head.earlier, LEFT)
    assert view.head.title.text() == "Wednesday 7 Apr"
    assert "Counts without a day are of 7 Apr." in view.head.number.text()
    watch = card(view, "Hatch watch")
    qtbot.mouseClick(watch.box, LEFT)
    assert watch.chore.done_on == date(2027, 4, 7)
    qtbot.keyClicks(view.head.record.line, "2 died aster")
    qtbot.keyClick(view.head.record.line, Key.Key_Return)
    assert [(count.number, count.day) for count in opened.plan.counts] == [(2, date(2027, 4, 7))]
    assert view.head.back.isVisible()
    qtbot.mouseClick(view.head.back, LEFT)
    assert view.day == TODAY
    assert not view.head.back.isVisible()


def test_tomorrows_chore_is_done_today(view: TodayView, qtbot: QtBot) -> None:
    qtbot.mouseClick(view.head.later, LEFT)
    bedding = card(view, "Change the bedding")
    qtbot.mouseClick(bedding.box, LEFT)
    assert bedding.chore.done_on == TODAY
    assert bedding.state.text() == "done on 8 Apr"


def test_what_is_overdue_stands_among_the_chores_and_is_told_beside_them(
    view: TodayView, opened: OpenFarm, window: MainWindow, qtbot: QtBot
) -> None:
    own(opened, "Drain the barrel", TODAY - timedelta(days=4))
    first = opened.plan.own_chores[0]
    key = f"own/{first.id}/{first.first.isoformat()}"
    opened.apply_to_plan(give(opened.plan, key, first.first, first.name, opened.plan.people[1].id))
    barrel = card(view, "Drain the barrel")
    assert barrel.state.text() == "was due on Sunday, 4 Apr"
    view.show_day(TODAY + timedelta(days=1))
    assert "Drain the barrel" not in titles(view)  # it stands on the page of today alone
    view.go_today()
    barrel = card(view, "Drain the barrel")
    told = words(view.side)
    assert "Overdue" in told
    assert "was due on Sunday, 4 Apr · Leo" in told
    with qtbot.waitActive(window):
        window.activateWindow()
    row = next(one for one in view.side.stops() if "Drain the barrel" in one.accessibleName())
    qtbot.mouseClick(row, LEFT)
    assert barrel.box.hasFocus()
    qtbot.keyClick(barrel.box, Key.Key_Space)
    assert barrel.chore.done_on == TODAY  # it stays in sight today, so that a wrong tick can be taken back
    assert "Drain the barrel" not in words(view.side)
    assert "Drain the barrel" in titles(view)


def test_the_panel_tells_the_urgent_of_the_next_days_and_goes_there(view: TodayView, qtbot: QtBot) -> None:
    told = words(view.side)
    assert "Move the chicks of Bracken to Shed brooder" in told
    assert "Set 140 eggs of Clover" in told
    assert "Nobody at home" in told
    assert "28 – 30 Apr" in told
    monday = next(one for one in view.side.stops() if one.accessibleName().startswith("Mon 12"))
    qtbot.keyClick(monday, Key.Key_Space)
    assert view.head.title.text() == "Monday 12 Apr"


def test_a_chore_of_ones_own_is_added_every_other_week(view: TodayView, opened: OpenFarm, qtbot: QtBot) -> None:
    def answer(form: QWidget) -> None:
        assert isinstance(form, OwnChoreForm)
        qtbot.mouseClick(form.save_button, LEFT)  # without a name
        assert "name" in words(form)
        qtbot.keyClicks(form.name, "Scrub the barrel")
        form.repeat.often.setFocus()
        qtbot.keyClick(form.repeat.often, Key.Key_Down)
        qtbot.keyClick(form.repeat.often, Key.Key_Down)
        assert form.repeat.step.isVisible()
        form.repeat.step.setValue(2)
        qtbot.mouseClick(form.repeat.days[3], LEFT)
        assert form.next_days.text() == "Every 2 weeks on Thu: Thu 8 Apr, Thu 22 Apr and Thu 6 May …"
        form.person.setCurrentText("Leo")
        form.place.setCurrentText("Tub brooder")
        qtbot.keyClicks(form.how, "Brush, rinse, fill.")
        qtbot.keyClick(form, Key.Key_Return, Qt.KeyboardModifier.ControlModifier)

    in_form(answer)
    qtbot.mouseClick(view.side.add, LEFT)
    (made,) = opened.plan.own_chores
    assert (made.name, made.repeat, made.first) == ("Scrub the barrel", "FREQ=WEEKLY;INTERVAL=2;BYDAY=TH", TODAY)
    barrel = card(view, "Scrub the barrel")
    assert barrel.chore.able == ("Leo",)
    assert "Brush, rinse, fill." in words(barrel)
    assert "Tub brooder" in words(barrel)


def test_the_only_chore_of_a_day_is_done_not_one_of_them(empty: OpenFarm, qtbot: QtBot) -> None:
    own(empty, "Fetch shavings", TODAY)
    made = MainWindow(empty, TODAY, lambda _work, _done: None)
    qtbot.addWidget(made)
    with qtbot.waitExposed(made):
        made.show()
    qtbot.keyClick(made, Key.Key_2, Qt.KeyboardModifier.ControlModifier)
    qtbot.mouseClick(card(made.day_view, "Fetch shavings").box, LEFT)
    assert made.day_view.head.number.text() == "1 chore, done."
    assert "1 chore, done" in words(made.day_view).split("\n")


def test_the_place_stands_apart_from_the_title(view: TodayView) -> None:
    QApplication.processEvents()
    beside = [one for one in view.cards.values() if one.where.text() and one.where.x() > one.title.x()]
    assert beside
    for one in beside:
        assert one.where.x() - one.title.geometry().right() > 8, one.title.text()


def test_a_size_that_comes_while_the_day_is_put_in_does_no_harm(
    view: TodayView, opened: OpenFarm, monkeypatch: pytest.MonkeyPatch
) -> None:
    """What is shown in the panel can make the view wider or narrower before the cards of the day are made."""
    show = view.side.show_page

    def show_and_resize(page: DayPage, today: date) -> None:
        show(page, today)
        view.resize(view.width() - 40, view.height())

    monkeypatch.setattr(view.side, "show_page", show_and_resize)
    own(opened, "Sharpen the knives", TODAY)
    assert card(view, "Sharpen").isVisible()


def test_nothing_is_left_of_the_cards_of_another_farm(window: MainWindow, empty: OpenFarm, qtbot: QtBot) -> None:
    """A size that comes before the new farm is shown finds the old cards nowhere."""
    view = window.day_view
    assert view.cards
    window.show_season()
    own(empty, "Sharpen the knives", TODAY)
    window.show_farm(empty)
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    for wide in (640, 1500):
        view.resize(wide, 700)
        view.board.resize(wide, 400)
    qtbot.keyClick(window, Key.Key_2, Qt.KeyboardModifier.ControlModifier)
    assert [one.chore.title for one in view.cards.values()] == ["Sharpen the knives"]


def test_cards_side_by_side_begin_on_one_line_however_long_the_heading_is(empty: OpenFarm, qtbot: QtBot) -> None:
    note = "comes before school, has the key of the shed, and takes the eggs along for the neighbours"
    empty.apply(put(empty.farm, Person("w", "Wren", note=note)))
    own(empty, "Fetch shavings", TODAY)
    own(empty, "Sharpen the knives", TODAY)
    made = shown(empty, qtbot, (1280, 720))
    first, second = (card(made.day_view, title) for title in ("Fetch", "Sharpen"))
    qtbot.waitUntil(lambda: first.isVisible() and second.isVisible())
    for wide in (1280, 1400):
        made.resize(wide, 720)
        qtbot.waitUntil(lambda: first.x() != second.x() and first.y() == second.y(), timeout=1000)


def test_the_form_of_a_chore_grows_with_the_days_of_a_week_and_has_no_empty_line(view: TodayView, qtbot: QtBot) -> None:
    """Every week asks for more than once does: all of it has to be in sight, without a bar to scroll by."""

    def answer(form: QWidget) -> None:
        assert isinstance(form, OwnChoreForm)
        assert not form.next_days.isVisible()
        form.repeat.often.setFocus()
        qtbot.keyClick(form.repeat.often, Key.Key_Down)
        qtbot.keyClick(form.repeat.often, Key.Key_Down)
        sunday = form.repeat.days[6]
        qtbot.waitUntil(lambda: sunday.visibleRegion().boundingRect() == sunday.rect(), timeout=1000)
        qtbot.waitUntil(lambda: form.how.visibleRegion().boundingRect() == form.how.rect(), timeout=1000)
        assert form.next_days.isVisible()
        assert "every 1 " not in form.repeat.step.text()
        form.reject()

    in_form(answer)
    qtbot.mouseClick(view.side.add, LEFT)


def test_a_chore_of_ones_own_is_changed_and_removed_by_its_menu(
    view: TodayView, opened: OpenFarm, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    own(opened, "Order feed", TODAY, "FREQ=MONTHLY")
    feed = card(view, "Order feed")

    def answer(form: QWidget) -> None:
        assert isinstance(form, OwnChoreForm)
        assert form.repeat.often.currentText() == "every month"
        form.name.setText("Order grower feed")
        qtbot.mouseClick(form.save_button, LEFT)

    in_form(answer)
    qtbot.mouseClick(feed.more, LEFT)
    qtbot.keyClick(menu_open(), Key.Key_C)
    assert opened.plan.own_chores[0].name == "Order grower feed"

    def remove(box: QMessageBox) -> int:
        yes = next(one for one in box.findChildren(QPushButton) if one.text() == "Remove")
        assert "all of its days" in box.informativeText()
        yes.click()
        return 0

    monkeypatch.setattr(QMessageBox, "exec", remove)
    qtbot.mouseClick(card(view, "Order grower").more, LEFT)
    qtbot.keyClick(menu_open(), Key.Key_R)
    assert opened.plan.own_chores == ()
    assert "Order grower feed" not in titles(view)


def test_the_chore_sheet_is_asked_for_from_the_panel(
    view: TodayView, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    asked: list[bool] = []

    def leave(form: PrintForm) -> int:
        asked.append(form.is_chores)
        return 0

    monkeypatch.setattr(PrintForm, "exec", leave)
    qtbot.mouseClick(view.side.paper, LEFT)
    assert asked == [True]


def test_a_farm_without_batches_is_told_what_to_do(empty: OpenFarm, window: MainWindow) -> None:
    window.show_farm(empty)
    window.day_view.show_now()
    told = words(window.day_view.nothing)
    assert "Nothing is due, as no batch is planned." in told
    assert window.day_view.nothing.batch.isVisible()
    own(empty, "Build a pen", TODAY)
    assert not window.day_view.nothing.isVisible()
    assert "Everything" in words(window.day_view.board)  # nobody is named


def test_a_day_without_chores_tells_the_next_one(view: TodayView) -> None:
    view.show_day(date(2027, 4, 10))
    assert "Next, on Mon 12 Apr: Set 140 eggs of Clover." in words(view.nothing)


def test_chores_are_those_of_the_plan_while_a_trial_is_looked_at(
    view: TodayView, opened: OpenFarm, window: MainWindow, qtbot: QtBot
) -> None:
    trial = str(uuid4())
    opened.apply_to_plan(start_trial(opened.plan, "later", trial))
    window.opened.look_at(trial)
    assert "of the plan, not of the trial “later”" in view.head.trial.text()
    assert view.head.trial.isVisible()
    qtbot.mouseClick(card(view, "Heat down").box, LEFT)
    assert [mark.done_on for mark in opened.plan.marks] == [TODAY]
    opened.look_at(None)
    assert not view.head.trial.isVisible()


def test_what_has_moved_is_told_after_a_count_with_undo(view: TodayView, opened: OpenFarm, qtbot: QtBot) -> None:
    assert not view.moved.isVisible()
    qtbot.keyClicks(view.head.record.line, "70 hatched bracken 7 apr")  # a day early
    qtbot.keyClick(view.head.record.line, Key.Key_Return)
    assert "• Bracken: hatch on 7 Apr, not 8 Apr" in words(view.moved)
    qtbot.mouseClick(view.moved.undo, LEFT)
    assert opened.plan.counts == ()
    assert not view.moved.isVisible()


def test_f8_in_the_season_records_for_the_batch_that_is_picked(
    window: MainWindow, opened: OpenFarm, qtbot: QtBot
) -> None:
    from quailsched.desktop.season_canvas.scene import Picked

    window.show_season()
    batch = next(one for one in opened.plan.batches if one.name == "Aster")
    window.season.pick(Picked(batch_id=batch.id))
    qtbot.keyClick(window, Key.Key_F8)
    (dialog,) = window.findChildren(RecordDialog)
    assert dialog.isVisible()
    line = dialog.field.line
    assert line.placeholderText().startswith("Record for Aster:")
    qtbot.keyClick(line, Key.Key_D)
    assert dialog.field.told.text() == "Return records: Aster: 1 died, 8 Apr"
    qtbot.keyClick(line, Key.Key_Return)
    assert not dialog.isVisible()
    assert sorts(opened) == [(Sort.DIED, 1)]
    assert window.stack.currentWidget() is window.season


def test_f8_elsewhere_goes_to_the_line_of_the_today_view(window: MainWindow, qtbot: QtBot) -> None:
    with qtbot.waitActive(window):
        window.activateWindow()
    window.show_setup()
    qtbot.keyClick(window, Key.Key_F8)
    assert window.stack.currentWidget() is window.day_view
    assert window.day_view.head.record.line.hasFocus()


def test_two_keys_record_the_commonest_count(view: TodayView, opened: OpenFarm, qtbot: QtBot) -> None:
    view.show_day(date(2027, 4, 7))  # on which Aster alone has birds
    line = view.head.record.line
    qtbot.keyClick(line, Key.Key_D)
    qtbot.keyClick(line, Key.Key_Return)
    assert sorts(opened) == [(Sort.DIED, 1)]
    assert line.text() == ""


def test_the_line_tells_what_is_missing_and_what_cannot_be(view: TodayView, opened: OpenFarm, qtbot: QtBot) -> None:
    record_field = view.head.record
    qtbot.keyClicks(record_field.line, "2 dies")
    assert record_field.told.text() == "“dies” is not understood here."
    record_field.line.clear()
    qtbot.keyClicks(record_field.line, "500 died aster")
    assert record_field.told.objectName() == "fault"
    assert "500" in record_field.told.text()
    qtbot.keyClick(record_field.line, Key.Key_Return)
    assert opened.plan.counts == ()
    assert record_field.told.objectName() == "fault"  # refused, not asked about
    assert record_field.line.text() == "500 died aster"
    assert record_field.line.accessibleDescription() == record_field.told.text()


def test_a_card_is_as_tall_as_what_it_says_now(view: TodayView, opened: OpenFarm, qtbot: QtBot) -> None:
    line = view.head.record.line
    qtbot.keyClicks(line, "70 hatched bracken")  # its card is done and shorter; the caution goes to another, taller now
    qtbot.keyClick(line, Key.Key_Return)
    qtbot.waitUntil(lambda: words(card(view, "Sex Aster")).count("Healthy birds") == 1)
    QApplication.processEvents()
    for one in view.cards.values():
        layout = one.layout()
        assert layout is not None
        assert one.height() == layout.heightForWidth(one.width()), one.chore.title


def test_an_odd_line_is_asked_about_first(view: TodayView, opened: OpenFarm, qtbot: QtBot) -> None:
    line = view.head.record.line
    qtbot.keyClicks(line, "30 died aster")
    qtbot.keyClick(line, Key.Key_Return)
    assert opened.plan.counts == ()
    assert "died in one day. Return once more records it all the same." in view.head.record.told.text()
    qtbot.keyClick(line, Key.Key_Return)
    assert sorts(opened) == [(Sort.DIED, 30)]


@pytest.mark.parametrize(("size", "columns"), [((1280, 720), 2), ((1920, 1080), 3), ((640, 360), 1)])
def test_there_are_as_many_columns_as_have_room(
    window: MainWindow, opened: OpenFarm, qtbot: QtBot, size: tuple[int, int], columns: int
) -> None:
    view = window.day_view
    for number, name in enumerate(("Water", "Feed")):
        own(opened, name, TODAY)
        made = next(one for one in opened.plan.own_chores if one.name == name)
        key = f"own/{made.id}/{TODAY.isoformat()}"
        opened.apply_to_plan(give(opened.plan, key, TODAY, name, opened.plan.people[number].id))
    window.resize(*size)
    QApplication.processEvents()
    assert (window.width(), window.height()) == size
    qtbot.waitUntil(lambda: view.board.number_of_columns == columns, timeout=1000)
    room = view._area.viewport().width()
    assert view._page.width() <= room
    cards = list(view.cards.values())
    assert all(one.isVisible() for one in cards)
    assert len({one.mapTo(view.board, QPoint()).x() for one in cards}) == columns
    for one in cards:  # nothing is cut
        for inner in (*one.findChildren(QLabel), *one.findChildren(QWidget, "number")):
            assert one.rect().contains(inner.geometry()) or not inner.isVisible() or inner.parent() is not one


def test_the_day_rolls_over_at_midnight_for_whoever_looks_at_today(view: TodayView) -> None:
    view.set_today(TODAY + timedelta(days=1))
    assert view.head.title.text() == "Friday 9 Apr"
    view.show_day(TODAY)
    view.set_today(TODAY + timedelta(days=2))
    assert view.head.title.text() == "Thursday 8 Apr"


def test_the_view_is_made_when_it_is_first_shown(opened: OpenFarm, qtbot: QtBot) -> None:
    made = MainWindow(opened, TODAY, lambda _work, _done: None)
    qtbot.addWidget(made)
    assert "day_view" not in vars(made)
    assert made.day_view.findChildren(QWidget) == []  # also then it is no more than a frame


def test_a_done_chore_of_a_count_from_elsewhere_is_ticked(view: TodayView, opened: OpenFarm) -> None:
    count = replace(_count(opened, "Bracken", Sort.HATCHED, 80, 0))
    opened.apply_to_plan(record(opened.plan, count, TODAY))
    assert card(view, "Hatch day").box.isChecked()


def test_the_marks_stand_in_the_calendar_and_on_other_days(view: TodayView, opened: OpenFarm) -> None:
    chore = card(view, "Heat down").chore
    opened.apply_to_plan(tick(opened.plan, chore.key, chore.day, chore.title, TODAY))
    (same,) = [
        one for one in chores_between(opened.plan_season, TODAY, TODAY + timedelta(days=1)) if one.key == chore.key
    ]
    assert same.done_on == TODAY


def test_a_count_from_the_season_is_told_with_what_it_moves_also_before_the_view_was_shown(
    opened: OpenFarm, qtbot: QtBot
) -> None:
    window = MainWindow(opened, TODAY, lambda _work, _done: None)
    qtbot.addWidget(window)
    window.show()
    window.actions_by_name["record_count"].trigger()
    (dialog,) = window.findChildren(RecordDialog)
    qtbot.keyClicks(dialog.field.line, "70 hatched bracken 7 apr")
    qtbot.keyClick(dialog.field.line, Key.Key_Return)
    assert sorts(opened) == [(Sort.HATCHED, 70)]
    assert "Moved by it: Bracken: hatch on 7 Apr, not 8 Apr" in window.statusBar().currentMessage()
    window.show_view(TODAY_VIEW)
    assert "hatch on 7 Apr" in words(window.day_view.moved)


def test_the_keys_go_to_the_next_card_when_one_goes(view: TodayView, window: MainWindow, qtbot: QtBot) -> None:
    with qtbot.waitActive(window):
        window.activateWindow()
    first, second, third, last = view._in_order()
    first.take_focus()
    view.steps.put_off(first.chore, TODAY + timedelta(days=1))
    assert second.box.hasFocus()
    last.take_focus()
    view.steps.put_off(last.chore, TODAY + timedelta(days=1))
    assert third.box.hasFocus()


def test_whatever_takes_the_keys_has_a_name(view: TodayView) -> None:
    QApplication.processEvents()
    stops = [one for one in view.findChildren(QWidget) if one.focusPolicy() & Qt.FocusPolicy.TabFocus]
    named = [one for one in stops if one.isVisible() and not one.focusProxy()]
    assert len(named) > 15
    for one in named:
        text = one.text() if isinstance(one, QPushButton) else ""
        assert one.accessibleName() or text, one


def test_what_cannot_be_is_refused_on_the_card_and_not_asked_about(
    view: TodayView, opened: OpenFarm, qtbot: QtBot
) -> None:
    hatch = card(view, "Hatch day")
    assert hatch.fields is not None
    opened.apply_to_plan(record(opened.plan, _count(opened, "Bracken", Sort.CLEAR, 20, -2), TODAY))
    qtbot.keyClicks(hatch.fields.fields["hatched"], "113")  # of 112 that are left
    qtbot.mouseClick(hatch.box, LEFT)
    assert hatch.warning == ""
    assert "112" in hatch.fault.text()
    assert sorts(opened) == [(Sort.CLEAR, 20)]
