"""The window by real keys and mouse: what is picked, moved, undone and shown."""

from collections.abc import Callable
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QImage, QWheelEvent
from PySide6.QtWidgets import QApplication, QFileDialog, QLabel, QMenu, QPushButton
from pytestqt.qtbot import QtBot

from quailsched.desktop.actions import COMMANDS
from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.season_canvas.scene import Picked
from quailsched.desktop.tasks import run_at_once
from quailsched.desktop.theme import DARK, LIGHT, show_theme
from quailsched.desktop.way_cards import WayCard
from quailsched.edits.records import put
from quailsched.season.clashes import clashes_of
from quailsched.session.farms import open_farm
from quailsched.session.open_farm import OpenFarm
from tests.desktop.conftest import complete, leave_undone
from tests.desktop.pointing import middle_of

LEFT = Qt.MouseButton.LeftButton


def batch_id(window: MainWindow, name: str) -> str:
    return next(batch.id for batch in window.opened.farm.batches if batch.name == name)


def words_of(widget: object) -> str:
    labels = widget.findChildren(QLabel)  # type: ignore[attr-defined]
    buttons = widget.findChildren(QPushButton)  # type: ignore[attr-defined]
    return "\n".join(w.text() for w in [*labels, *buttons])


def test_a_click_on_a_band_picks_its_batch_and_tells_about_it(window: MainWindow, qtbot: QtBot) -> None:
    canvas = window.season.canvas
    qtbot.mouseClick(canvas.viewport(), LEFT, pos=middle_of(canvas, "Bracken", "Shed brooder"))
    assert window.season.picked == Picked(batch_id=batch_id(window, "Bracken"))
    told = words_of(window.season.inspector)
    assert "Bracken" in told
    assert "132 eggs on Mon 22 Mar 2027" in told
    assert "Thu 8 Apr 2027, about 81 chicks" in told  # 132 x 61.31 % = 80.9


def row_of(window: MainWindow, text: str) -> QPushButton:
    """The button of the panel beside the season that says ``text``."""
    buttons = window.season.inspector.findChildren(QPushButton)
    return next(button for button in buttons if text in button.text() and button.isVisible())


def cards_of(window: MainWindow) -> list[WayCard]:
    """The ways out that the panel shows."""
    cards = window.season.inspector.cards
    return cards.findChildren(WayCard) if cards is not None else []


def test_buttons_of_the_panel_do_what_they_say(window: MainWindow, qtbot: QtBot) -> None:
    qtbot.mouseClick(row_of(window, "Tub brooder is too small"), LEFT)
    clash = window.season.picked.clash
    assert clash is not None
    assert (clash.kind, clash.place_id) == ("floor", window.opened.farm.places[3].id)
    qtbot.mouseClick(row_of(window, "Show Clover"), LEFT)
    assert window.season.picked == Picked(batch_id=batch_id(window, "Clover"))
    before = window.opened.farm.batch(batch_id(window, "Clover")).start
    qtbot.mouseClick(row_of(window, "A day later"), LEFT)
    assert window.opened.farm.batch(batch_id(window, "Clover")).start == before + timedelta(days=1)
    qtbot.mouseClick(row_of(window, "All clashes"), LEFT)
    assert window.season.picked == Picked()


def test_keys_stay_in_the_panel_when_its_page_changes(window: MainWindow, qtbot: QtBot) -> None:
    with qtbot.waitActive(window):
        window.activateWindow()
    assert window.season.canvas.hasFocus()  # arrows work as soon as the window is open
    row = row_of(window, "Tub brooder is too small")
    row.setFocus()
    qtbot.keyClick(row, Qt.Key.Key_Space)
    assert window.season.picked.clash is not None
    assert row_of(window, "All clashes").hasFocus()
    qtbot.keyClick(row_of(window, "All clashes"), Qt.Key.Key_Space)
    assert row_of(window, "Long run is not built").hasFocus()  # the first row


def test_the_tab_key_comes_to_the_view_that_is_on(window: MainWindow) -> None:
    buttons = window.rail._group.buttons()
    for number in range(len(buttons)):
        window.show_view(number)
        assert [bool(b.focusPolicy() & Qt.FocusPolicy.TabFocus) for b in buttons] == [
            n == number for n in range(len(buttons))
        ]


def test_the_window_fits_a_small_screen_at_200_percent(window: MainWindow) -> None:
    # 1280 x 720 pixels at 200 % are 640 x 360 of the window's own; a long name of a farm gives way.
    window.top.farm_name.setText("The quail of Pebble Bank, Thistle Yard and the two upper meadows")
    window.resize(640, 360)
    QApplication.processEvents()
    assert (window.width(), window.height()) == (640, 360)


@pytest.mark.parametrize("width", [640, 760, 960, 1280, 1920])
def test_no_place_of_frees_up_is_cut(window: MainWindow, width: int) -> None:
    window.resize(width, 720)
    QApplication.processEvents()
    strip = window.season.frees_up
    room, bar = strip._area.viewport().width(), strip._area.horizontalScrollBar()
    shown = [c.geometry() for c in strip._columns if c.x() < room]
    assert shown
    assert all(one.right() < room for one in shown)
    bar.setValue(bar.singleStep() // 3)  # as a mouse drags it, not far enough for the next
    assert bar.value() == 0
    bar.setValue(bar.singleStep())
    assert bar.maximum() == 0 or bar.value() in (bar.singleStep(), bar.maximum())


def test_a_click_on_the_overflow_picks_the_clash(window: MainWindow, qtbot: QtBot) -> None:
    canvas = window.season.canvas
    clash = next(c for c in clashes_of(window.opened.season) if c.kind == "floor")
    scene = canvas.scene()
    lane = scene.lane_of(clash.place_id)
    assert lane is not None
    point = QPoint(round(scene.x(clash.worst) + scene.scale.day_px / 2), round(scene.top(lane.line_y)) - 3)
    qtbot.mouseClick(canvas.viewport(), LEFT, pos=point)
    assert window.season.picked == Picked(clash=clash)
    assert clash.sentence in words_of(window.season.inspector)


def test_alt_and_an_arrow_move_the_picked_batch_and_undo_takes_it_back(window: MainWindow, qtbot: QtBot) -> None:
    before = window.opened.farm
    dill = batch_id(window, "Dill")
    window.season.pick(Picked(batch_id=dill))
    canvas = window.season.canvas
    canvas.setFocus()
    qtbot.keyClick(canvas, Qt.Key.Key_Right, Qt.KeyboardModifier.AltModifier)
    assert window.opened.farm.batch(dill).start == before.batch(dill).start + timedelta(days=1)
    assert window.opened.undo_label == "Set Dill on 4 May"  # planned for 3 May
    qtbot.keyClick(canvas, Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier | Qt.KeyboardModifier.ShiftModifier)
    assert window.opened.farm.batch(dill).start == before.batch(dill).start + timedelta(days=-6)
    while window.opened.undo_label is not None:
        window.actions_by_name["undo"].trigger()
    assert window.opened.farm == before
    assert not window.actions_by_name["undo"].isEnabled()
    assert window.actions_by_name["redo"].isEnabled()


def test_what_was_done_survives_closing_and_so_does_undo(window: MainWindow) -> None:
    before = window.opened.farm
    window.nudge(batch_id(window, "Elder"), 7)
    again = open_farm(window.opened.file.path)
    assert again.farm == window.opened.farm != before
    again.undo()
    assert again.farm == before


def test_the_canvas_follows_each_change_at_once(window: MainWindow) -> None:
    count = window.top.clashes.text()
    fern = batch_id(window, "Fern")
    window.nudge(fern, 14)
    bands = [b for lane in window.season.canvas.scene().lanes for b in lane.content.bands.items if b.batch_id == fern]
    assert min(band.start for band in bands) == window.opened.farm.batch(fern).start
    assert window.top.clashes.text() != count  # Fern no longer meets Elder in the cabinet


def test_f3_goes_round_all_clashes(window: MainWindow, qtbot: QtBot) -> None:
    found = clashes_of(window.opened.season, date(2027, 4, 6))
    seen = []
    for _ in found:
        window.actions_by_name["next_clash"].trigger()
        seen.append(window.season.picked.clash)
    assert seen == list(found)
    window.actions_by_name["next_clash"].trigger()
    assert window.season.picked.clash == found[0]


def test_zoom_keeps_the_day_under_the_pointer(window: MainWindow) -> None:
    canvas = window.season.canvas
    at = QPointF(600, 300)
    day = canvas.scene().day(at.x())
    for turn in (120, 120, 120, -120, 120):
        event = QWheelEvent(
            at, canvas.mapToGlobal(at), QPoint(), QPoint(0, turn), Qt.MouseButton.NoButton,
            Qt.KeyboardModifier.ControlModifier, Qt.ScrollPhase.NoScrollPhase, False,
        )  # fmt: skip
        QApplication.sendEvent(canvas.viewport(), event)
        assert abs((canvas.scene().day(at.x()) - day).days) <= 1


def test_dragging_the_paper_pushes_it_along(window: MainWindow, qtbot: QtBot) -> None:
    canvas = window.season.canvas
    canvas.zoom(2.0)
    port, bar = canvas.viewport(), canvas.horizontalScrollBar()
    scene = canvas.scene()
    y = round(scene.top(scene.lanes[0].top)) + 2  # above the first line: paper
    was = bar.value()
    qtbot.mousePress(port, LEFT, pos=QPoint(700, y))
    qtbot.mouseMove(port, QPoint(600, y))
    qtbot.mouseRelease(port, LEFT, pos=QPoint(600, y))
    assert bar.value() == was + 100


def test_arrows_and_escape_walk_the_batches(window: MainWindow, qtbot: QtBot) -> None:
    canvas = window.season.canvas
    canvas.setFocus()
    names = []
    for _ in window.opened.farm.batches:
        qtbot.keyClick(canvas, Qt.Key.Key_Right)
        picked = window.season.picked.batch_id
        assert picked is not None
        names.append(window.opened.farm.batch(picked).name)
        assert names[-1] in canvas.accessibleDescription()
    assert names == [batch.name for batch in window.opened.farm.batches]
    qtbot.keyClick(canvas, Qt.Key.Key_Escape)
    assert window.season.picked == Picked()


def test_the_calendar_is_written_where_the_keeper_says(
    window: MainWindow, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    chosen = tmp_path / "chores"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(chosen), ""))
    window.actions_by_name["write_calendar"].trigger()
    text = (tmp_path / "chores.ics").read_bytes()
    assert text.startswith(b"BEGIN:VCALENDAR\r\n")
    assert b"Bracken" in text


def test_every_command_has_a_method_and_keys_of_its_own(window: MainWindow) -> None:
    keys = [command.keys for command in COMMANDS if command.keys]
    assert len(keys) == len(set(keys))
    assert set(window.actions_by_name) == {command.name for command in COMMANDS}


def test_in_no_menu_two_rows_have_the_same_letter(window: MainWindow) -> None:
    """The letter alone does what the row says; of two with the same letter neither would be done."""
    for menu in window.menuBar().findChildren(QMenu):
        rows = [one.text() for one in menu.actions() if not one.menu()]
        letters = [text[text.index("&") + 1].lower() for text in rows if "&" in text.replace("&&", "")]
        assert len(letters) == len(set(letters)), rows


def test_a_farm_without_places_says_how_to_begin(window: MainWindow, empty: OpenFarm) -> None:
    window.show_farm(empty)
    assert "Add a place" in words_of(window.season.inspector)
    assert window.top.clashes.text() == "no clash ahead"


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=["light", "dark"])
@pytest.mark.parametrize("size", [(900, 560), (1280, 720), (1920, 1080)], ids=str)
def test_the_season_is_painted_in_the_theme_at_every_size(
    window: MainWindow, qapp: QApplication, theme: object, size: tuple[int, int]
) -> None:
    show_theme(qapp, theme)  # type: ignore[arg-type]
    window.resize(*size)
    image = window.grab().toImage()
    colours = {image.pixelColor(x, y).name() for x in range(0, image.width(), 3) for y in range(0, image.height(), 3)}
    assert {theme.paper, theme.lane, theme.clash} <= colours  # type: ignore[attr-defined]
    assert {batch.fill for batch in theme.batches[:4]} <= colours  # type: ignore[attr-defined]


def test_an_undo_in_the_setup_view_fills_its_table_again(window: MainWindow) -> None:
    window.show_setup()
    window.setup_view.tabs.setCurrentIndex(2)
    page = window.setup_view.pages[2]
    window.nudge(batch_id(window, "Gorse"), 3)
    row = page.model.row_of(batch_id(window, "Gorse"))
    assert row is not None
    assert page.model.index(row, 2).data() == "26 Jun 2027"  # 23 June and three days
    window.undo()
    assert page.model.index(row, 2).data() == "23 Jun 2027"


def test_a_way_out_is_previewed_under_the_pointer_and_done_by_its_button(window: MainWindow, qtbot: QtBot) -> None:
    before = window.opened.farm
    window.season._run = run_at_once
    clash = next(c for c in clashes_of(window.opened.season, date(2027, 4, 6)) if c.kind == "cleanout")
    canvas = window.season.canvas
    canvas.show_clash(clash)
    card = cards_of(window)[0]
    assert card.way.sentence.startswith("Set Gorse 1 day later")
    gorse = batch_id(window, "Gorse")

    def start_shown() -> date:
        return min(b.start for lane in canvas.scene().lanes for b in lane.content.bands.items if b.batch_id == gorse)

    was = start_shown()
    card.button.setFocus()
    QApplication.processEvents()
    assert start_shown() == was + timedelta(days=1)
    assert window.opened.farm == before  # a preview changes nothing
    canvas.setFocus()
    QApplication.processEvents()
    assert start_shown() == was
    assert window.season.picked.clash == clash
    qtbot.mouseClick(card.button, LEFT)
    assert window.opened.farm.batch(gorse).start == before.batch(gorse).start + timedelta(days=1)
    assert len(window.opened.history()) == 1
    window.undo()
    assert window.opened.farm == before


def test_the_tab_key_comes_to_the_ways_out_before_the_buttons_below_them(window: MainWindow, qtbot: QtBot) -> None:
    with qtbot.waitActive(window):
        window.activateWindow()
    window.season._run = run_at_once
    clash = next(c for c in clashes_of(window.opened.season, date(2027, 4, 6)) if c.kind == "cleanout")
    window.season.canvas.show_clash(clash)
    cards = cards_of(window)
    qtbot.waitUntil(cards[-1].button.isVisible)
    cards[-1].button.setFocus()
    qtbot.keyClick(cards[-1].button, Qt.Key.Key_Tab)
    assert row_of(window, "Show ").hasFocus()
    qtbot.keyClick(row_of(window, "Show "), Qt.Key.Key_Backtab)
    assert cards[-1].button.hasFocus()


def test_work_beside_the_window_comes_back_on_its_thread(opened: OpenFarm, qtbot: QtBot) -> None:
    made = MainWindow(opened, date(2027, 4, 6))
    qtbot.addWidget(made)
    clash = next(c for c in clashes_of(opened.season, date(2027, 4, 6)) if c.kind == "cleanout")
    made.season.canvas.show_clash(clash)
    assert cards_of(made) == []
    qtbot.waitUntil(lambda: bool(cards_of(made)), timeout=20_000)
    made.close()


def test_ways_out_that_come_after_their_clash_was_left_are_dropped(window: MainWindow, qtbot: QtBot) -> None:
    late: list[Callable[[], None]] = []
    window.season._run = lambda work, done: late.append(lambda: done(work()))
    window.season.canvas.show_clash(next(c for c in window.opened.checked.clashes if c.kind == "floor"))
    work = late.pop()
    qtbot.keyClick(window.season.canvas, Qt.Key.Key_Escape)
    # The page has gone for good, as it has in a program that runs: tests alone put that off.
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
    work()
    assert window.season.inspector.cards is None


def test_going_on_to_the_next_clash_ends_a_preview_and_shows_its_panel(window: MainWindow, qtbot: QtBot) -> None:
    window.season._run = run_at_once
    canvas = window.season.canvas
    first, second = window.opened.checked.since(date(2027, 4, 6))[:2]
    canvas.show_clash(first)
    cards_of(window)[0].entered.emit(cards_of(window)[0].way)  # the pointer rests on it
    window.actions_by_name["next_clash"].trigger()
    assert window.season.picked.clash == second
    assert row_of(window, "All clashes").isVisible()
    panel = [one.text() for one in window.season.inspector.findChildren(QLabel) if one.isVisible()]
    assert second.sentence in panel
    assert canvas.layout_shown.season is window.opened.season  # no preview any more


def test_names_are_shown_letter_by_letter(window: MainWindow) -> None:
    clover = window.opened.farm.batch(batch_id(window, "Clover"))
    window.take_change(put(window.opened.farm, replace(clover, name="<b>Salt</b> & Pepper")))
    window.season.pick(Picked(batch_id=clover.id))
    heading = window.season.inspector.findChildren(QLabel)[0]
    shown = [one for one in window.season.inspector.findChildren(QLabel) if one.text() == "<b>Salt</b> & Pepper"]
    assert shown
    assert all(one.textFormat() is Qt.TextFormat.PlainText for one in [heading, *shown])
    window.season.canvas.show_clash(next(c for c in window.opened.checked.clashes if clover.id in c.batch_ids))
    assert row_of(window, "Show <b>Salt</b> && Pepper").isVisible()  # "&&" is drawn as "&"
    assert "&lt;b&gt;Salt" in window.top.undo.toolTip()


def test_a_window_that_changes_its_theme_is_as_one_that_began_in_it(window: MainWindow, qtbot: QtBot) -> None:
    def seen(one: MainWindow) -> QImage:
        with qtbot.waitActive(one):
            one.activateWindow()
        one.season.canvas.setFocus()
        qtbot.waitUntil(lambda: "chores" in words_of(one.season.frees_up))  # they are counted a little later
        for _ in range(4):
            QApplication.processEvents()
        return one.grab().toImage()

    light = seen(window)
    window.actions_by_name["show_dark"].trigger()
    dark = seen(window)
    window.actions_by_name["show_light"].trigger()
    assert seen(window) == light
    window.actions_by_name["show_dark"].trigger()
    another = MainWindow(window.opened, window.today, leave_undone)  # made when all is dark already
    qtbot.addWidget(another)
    another.resize(window.size())
    another.show()
    complete(another)
    assert seen(another) == dark
