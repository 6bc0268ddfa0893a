"""Small screens and large letters: nothing is cut; what gives way is told by its tip, or comes by scrolling."""

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QEvent, QLocale, QPoint, Qt
from PySide6.QtGui import QAccessible, QHelpEvent
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QCheckBox,
    QLabel,
    QPushButton,
    QScrollArea,
    QToolTip,
    QVBoxLayout,
    QWidget,
)
from pytestqt.qtbot import QtBot

from quailsched.desktop.forms.farm_form import FarmForm
from quailsched.desktop.forms.fields import NarrowChoice
from quailsched.desktop.forms.place_form import PlaceForm
from quailsched.desktop.labels import ShortLabel
from quailsched.desktop.language import speak
from quailsched.desktop.main_window import NEXT_SET, SEASON, SETUP, MainWindow
from quailsched.desktop.narrow import Beside, ShortButton, StatusLine, shorten
from quailsched.desktop.reading import Reading
from quailsched.desktop.season_canvas.scene import Picked
from quailsched.desktop.tasks import run_at_once
from quailsched.desktop.texts import KEYS
from quailsched.desktop.theme import LIGHT, show_theme
from quailsched.edits.records import put
from quailsched.session import trials
from quailsched.session.open_farm import OpenFarm
from quailsched.words import ENGLISH, use
from tests.builders import BROODER, HATCHER, SETTER, eggs, hatch_route
from tests.desktop.conftest import TODAY, complete


@pytest.fixture(autouse=True)
def _light(qapp: QApplication) -> None:
    show_theme(qapp, LIGHT)


@pytest.fixture(params=[9, 13, 18], ids="{} pt".format)
def points(request: pytest.FixtureRequest, qapp: QApplication) -> Iterator[int]:
    """Letters of the desktop in this size."""
    font, wanted = qapp.font(), qapp.font()
    wanted.setPointSize(request.param)
    qapp.setFont(wanted)
    show_theme(qapp, LIGHT)
    yield request.param
    qapp.setFont(font)


@pytest.fixture(params=["en", "de"])
def language(request: pytest.FixtureRequest, qapp: QApplication) -> Iterator[str]:
    """The language of the window."""
    before = QLocale()
    speak(qapp, request.param)
    yield request.param
    speak(qapp, "en")
    QLocale.setDefault(before)
    use(ENGLISH)


def settle() -> None:
    for _ in range(4):  # texts that wrap take their height in the second round
        QApplication.processEvents()


def window_on(opened: OpenFarm, qtbot: QtBot, width: int, height: int) -> MainWindow:
    made = MainWindow(opened, TODAY, run_at_once)
    qtbot.addWidget(made)
    made.resize(width, height)
    made.show()
    complete(made)
    qtbot.waitUntil(lambda: made.season.frees_up._chores.text() != "")  # they are counted a little later
    settle()
    return made


def cut_off(root: QWidget) -> list[str]:
    """The words in ``root`` that are seen in part; labels and buttons that shorten themselves are no fault."""
    cut = []
    for part in root.findChildren(QLabel):
        if part.isVisible() and part.text() and not isinstance(part, ShortLabel):
            room, text = part.contentsRect(), part.fontMetrics()
            if part.wordWrap():
                is_cut = part.height() < part.heightForWidth(part.width())
                is_cut |= any(text.horizontalAdvance(word) > room.width() for word in part.text().split())
            else:
                is_cut = text.horizontalAdvance(part.text().replace("&", "")) > room.width()
            cut += [part.text()] if is_cut else []
    for button in root.findChildren(QAbstractButton):
        if isinstance(button, QPushButton | QCheckBox) and button.isVisible() and button.text():
            is_short = isinstance(button, ShortButton) and button.lacks_words
            least = button.minimumSizeHint() if is_short else button.sizeHint()
            cut += [button.text()] if button.width() < least.width() else []
    return cut


def test_nothing_is_cut_in_any_view_whatever_the_letters(opened: OpenFarm, qtbot: QtBot, points: int) -> None:
    window = window_on(opened, qtbot, 1280, 720)
    assert (window.width(), window.height()) == (1280, 720)
    views: list[tuple[int, object]] = [(SEASON, None), (SEASON, opened.farm.batches[2].id), (NEXT_SET, None)]
    views += [(SETUP, tab) for tab in range(4)]
    for view, detail in views:
        window.show_view(view)
        if view == SEASON:
            window.season.pick(Picked(batch_id=detail if isinstance(detail, str) else None))
        elif isinstance(detail, int):
            window.setup_view.tabs.setCurrentIndex(detail)
        settle()
        assert cut_off(window) == [], (view, detail)


def test_forms_are_not_cut_whatever_the_letters(opened: OpenFarm, qtbot: QtBot, points: int) -> None:
    for form in (PlaceForm(None, opened, TODAY, opened.farm.places[3]), FarmForm(None, opened)):
        qtbot.addWidget(form)
        form.fit()
        form.show()
        settle()
        assert cut_off(form) == []
        assert form._area.horizontalScrollBar().maximum() == 0  # the offscreen screen is 800 pixels wide


def test_a_trial_fits_a_small_screen_in_every_view(opened: OpenFarm, qtbot: QtBot, points: int, language: str) -> None:
    # 1280 x 720 pixels at 200 % are 640 x 360 of the window's own; letters of twice the size are shown at 150 %.
    size = (640, 360) if points < 11 else (853, 480)
    window = window_on(opened, qtbot, *size)
    assert (window.width(), window.height()) == size  # at once
    trials.start(opened, "What if the tub brooder is half as large again")
    for view, tab in ((SEASON, 0), (NEXT_SET, 0), *((SETUP, tab) for tab in range(4))):
        window.show_view(view)
        window.setup_view.tabs.setCurrentIndex(tab)
        settle()
        assert (window.width(), window.height()) == size, (view, tab)
        assert cut_off(window) == [], (view, tab)
    window.show_season()
    window.commands.clashes.next_clash()
    settle()
    window.commands.trials.compare_trial()
    settle()
    assert (window.width(), window.height()) == size
    assert cut_off(window.season) == []
    assert window.season.comparison._area.horizontalScrollBar().maximum() == 0
    assert window.stage.bar.height() <= window.stage.bar.buttons[0].height() + 14  # one line


def test_a_window_shrinks_to_its_least_at_once(opened: OpenFarm, qtbot: QtBot, points: int) -> None:
    window = window_on(opened, qtbot, 1280, 720)
    trials.start(opened, "Tub")
    settle()
    window.resize(1, 1)
    settle()
    least = window.size()
    window.resize(1, 1)  # not in steps, each of which leaves room for the next
    settle()
    assert window.size() == least


def test_in_a_low_table_one_line_tells_what_is_cut_off(opened: OpenFarm, qtbot: QtBot) -> None:
    window = window_on(opened, qtbot, 640, 720)
    window.show_setup()
    window.setup_view.tabs.setCurrentIndex(2)
    settle()
    whole = window.setup_view.pages[2].whole
    line = whole.fontMetrics().lineSpacing()
    assert whole.height() > 2 * line
    window.resize(640, 360)
    settle()
    assert whole.height() == line
    assert whole.verticalScrollBar().maximum() > 0  # the others come by scrolling


def test_the_card_of_the_next_set_stands_below_where_there_is_no_room_beside(
    opened: OpenFarm, qtbot: QtBot, points: int
) -> None:
    window = window_on(opened, qtbot, 1280, 720)
    window.show_next_set()
    for width, is_beside in ((1280, True), (560 if points < 18 else 720, points == 9)):
        window.resize(width, 600)
        settle()
        chart, button = window.next_set.landscape, window.next_set.button
        below = (
            button.mapTo(window.next_set, QPoint(0, 0)).y()
            > chart.mapTo(window.next_set, QPoint()).y() + chart.height()
        )
        assert below is not is_beside, (width, points)
        assert cut_off(window.next_set) == []


def test_the_bar_of_a_trial_leaves_words_of_buttons_out_before_the_name(opened: OpenFarm, qtbot: QtBot) -> None:
    window = window_on(opened, qtbot, 1280, 720)
    trials.start(opened, "Tub")
    settle()
    bar = window.stage.bar
    assert [button.lacks_words for button in bar.buttons] == [False] * 4
    window.resize(470, 400)
    settle()
    assert bar.buttons[-1].lacks_words
    assert not bar.name.is_cut
    assert tip_over(bar.buttons[-1]).startswith("Back to the plan: ")


def test_words_of_buttons_are_left_out_from_the_last_one_on(qtbot: QtBot) -> None:
    first, last = ShortButton("Undo", "undo"), ShortButton("&Redo", "redo")
    for button in (first, last):
        qtbot.addWidget(button)
    for spare, short in (
        (first.words_px + last.words_px, [False, False]),
        (first.words_px + last.words_px - 1, [False, True]),
        (first.words_px, [False, True]),
        (first.words_px - 1, [True, True]),
        (-20, [True, True]),
    ):
        shorten((first, last), spare)
        assert [first.is_short, last.is_short] == short
    heard = QAccessible.queryAccessibleInterface(last)
    assert heard.text(QAccessible.Text.Name) == "Redo"
    assert first.sizeHint().width() == first.minimumSizeHint().width()
    shorten((first,), 500)
    assert first.sizeHint().width() == first.minimumSizeHint().width() + first.words_px


def test_the_top_bar_shows_all_words_where_there_is_room_and_icons_where_not(opened: OpenFarm, qtbot: QtBot) -> None:
    window = window_on(opened, qtbot, 1280, 720)
    top = window.top
    buttons = (top.undo, top.redo, top.calendar)
    assert not any(button.lacks_words for button in (*buttons, top.clashes))
    tip = tip_over(top.calendar)
    window.resize(640, 400)
    settle()
    assert all(button.lacks_words for button in buttons)
    assert tip_over(top.calendar) == f"Calendar file: {tip}"
    assert not top.clashes.lacks_words  # how many clashes there are is told longest
    letters = window.fontMetrics().averageCharWidth()
    assert window.find_box.width() >= 8 * letters  # still a field to type in
    window.resize(430, 400)
    settle()
    assert top.clashes.lacks_words
    assert top.clashes.text() == f"{top.clashes.short_text} clashes ahead"
    assert window.find_box.width() >= 8 * letters


def test_no_word_of_a_bar_is_cut_at_any_width(opened: OpenFarm, qtbot: QtBot) -> None:
    window = window_on(opened, qtbot, 1280, 720)
    trials.start(opened, "Tub")
    settle()
    for width in range(1280, 420, -20):
        window.resize(width, 500)
        settle()
        assert cut_off(window.top) + cut_off(window.stage.bar) == [], width


def test_the_rail_of_a_narrow_window_has_icons_alone(opened: OpenFarm, qtbot: QtBot) -> None:
    window = window_on(opened, qtbot, 1280, 720)
    wide = window.rail.width()
    (season, *_) = (button for button, _ in window.rail._icons)
    window.resize(600, 500)
    settle()
    assert window.width() == 600
    assert window.rail.width() < wide - 30
    assert tip_over(season).startswith("Season: ")
    window.resize(1280, 720)
    settle()
    assert window.rail.width() == wide
    assert "Season" not in tip_over(season)


def test_a_narrow_season_shows_the_lanes_alone_until_details_are_asked_for(opened: OpenFarm, qtbot: QtBot) -> None:
    window = window_on(opened, qtbot, 1280, 720)
    season = window.season
    wide = season.splitter.sizes()
    assert season.side.isVisible()
    assert not window.rail._details.isVisible()
    window.resize(600, 400)
    settle()
    assert not season.side.isVisible()
    assert season.canvas.width() > 400
    qtbot.mouseClick(window.rail._details, Qt.MouseButton.LeftButton)
    assert season.side.isVisible()
    qtbot.mouseClick(window.rail._details, Qt.MouseButton.LeftButton)
    assert not season.side.isVisible()
    qtbot.keyClick(season.canvas, Qt.Key.Key_F3)  # why there is a clash is what one goes there for
    settle()
    assert season.side.isVisible()
    assert window.season.picked.clash is not None
    assert (window.width(), window.height()) == (600, 400)
    qtbot.keyClick(season.canvas, Qt.Key.Key_F9)
    window.commands.records.change_picked()
    window.refresh()
    assert not season.side.isVisible()  # until another clash is gone to
    qtbot.keyClick(season.canvas, Qt.Key.Key_F3)
    window.resize(1280, 720)
    settle()
    assert season.splitter.sizes() == wide
    window.resize(600, 400)
    settle()
    assert season.side.isVisible()  # as it was left


def test_where_there_is_no_room_for_both_details_and_lanes_take_turns(opened: OpenFarm, qtbot: QtBot) -> None:
    window = window_on(opened, qtbot, 430, 400)
    season = window.season
    qtbot.keyClick(season.canvas, Qt.Key.Key_F9)
    settle()
    assert season.side.isVisible()
    assert not season.canvas.isVisible()
    assert season.inspector.isAncestorOf(QApplication.focusWidget())  # type: ignore[arg-type]
    assert window.width() == 430
    window.actions_by_name["go_today"].trigger()  # what shows in the lanes alone brings them back
    settle()
    assert season.canvas.isVisible()
    assert season.canvas.hasFocus()
    assert not season.side.isVisible()


def test_the_division_of_a_wide_window_is_kept_when_it_is_closed_as_a_narrow_one(
    opened: OpenFarm, qtbot: QtBot
) -> None:
    window = window_on(opened, qtbot, 1280, 720)
    window.season.splitter.setSizes([700, 460])
    sizes = window.season.splitter.sizes()
    window.resize(600, 400)
    settle()
    window.close()
    again = window_on(opened, qtbot, 1280, 720)
    assert again.season.splitter.sizes() == sizes


def test_details_can_go_from_a_wide_window_too(opened: OpenFarm, qtbot: QtBot) -> None:
    window = window_on(opened, qtbot, 1280, 720)
    qtbot.keyClick(window.season.canvas, Qt.Key.Key_F9)
    assert not window.season.side.isVisible()
    qtbot.keyClick(window.season.canvas, Qt.Key.Key_F9)
    assert window.season.side.isVisible()


def test_a_low_window_shows_places_and_days_and_the_tip_tells_the_rest(opened: OpenFarm, qtbot: QtBot) -> None:
    window = window_on(opened, qtbot, 1000, 720)
    strip = window.season.frees_up
    column = strip._columns[0]
    assert column._detail.isVisible()
    window.resize(1000, 430)
    settle()
    assert strip.isVisible()
    assert not column._detail.isVisible()
    assert column._when.isVisible()
    assert "Clover" in column._detail.text()  # it comes next
    assert "Clover" in column._button.toolTip()
    for one in strip._columns:
        assert one.geometry().bottom() <= strip._area.viewport().height()
        assert one._when.geometry().bottom() <= one.height()
    window.resize(1000, 320)
    settle()
    assert window.height() == 320
    assert not strip.isVisible()  # the lanes come first; in Setup stands when places are free
    window.resize(1000, 720)
    settle()
    assert column._detail.isVisible()
    assert strip.height() == strip.sizeHint().height()


def test_the_foot_of_the_chart_of_next_set_can_be_scrolled_to(opened: OpenFarm, qtbot: QtBot, points: int) -> None:
    window = window_on(opened, qtbot, 900, 400)
    window.show_next_set()
    settle()
    chart = window.next_set.landscape
    line = chart.fontMetrics().height()
    assert chart._chart().bottom() + 2.4 * line <= chart.height()  # two lines of what stops more stand below it
    area = next(one for one in window.next_set.findChildren(QScrollArea) if one.isAncestorOf(chart))
    area.verticalScrollBar().setValue(area.verticalScrollBar().maximum())
    settle()
    assert chart.mapTo(area, QPoint(0, chart.height())).y() <= area.height()


def test_widgets_beside_each_other_stand_below_each_other_where_that_is_too_wide(qtbot: QtBot) -> None:
    one, other = QPushButton("A day earlier"), QPushButton("A day later")
    panel = QWidget()
    QVBoxLayout(panel).addWidget(Beside(one, other))
    qtbot.addWidget(panel)
    panel.resize(one.sizeHint().width() + other.sizeHint().width() + 60, 120)
    panel.show()
    settle()
    assert one.y() == other.y()
    panel.resize(one.sizeHint().width() + 30, 120)
    settle()
    assert panel.width() == one.sizeHint().width() + 30
    assert one.y() < other.y()


def tip_over(widget: QWidget) -> str:
    event = QHelpEvent(QEvent.Type.ToolTip, QPoint(5, 5), widget.mapToGlobal(QPoint(5, 5)))
    QApplication.sendEvent(widget, event)
    told = QToolTip.text()
    QToolTip.hideText()
    return told


def test_what_is_cut_off_is_told_whole_by_the_tip(qtbot: QtBot) -> None:
    text = "Long run <north> is not built in time, and nobody knows when"
    label, line = ShortLabel(5), StatusLine()
    for widget in (label, line):
        qtbot.addWidget(widget)
        widget.resize(80, 20)
        widget.show()
    label.setText(text)
    line.showMessage(text)
    escaped = "&lt;north&gt;"  # as it is, and no markup
    assert label.is_cut
    assert escaped in tip_over(label)
    assert escaped in tip_over(line)
    label.resize(900, 20)
    assert not label.is_cut


def test_a_choice_without_room_ends_in_an_ellipsis(qtbot: QtBot) -> None:
    choice = NarrowChoice()
    qtbot.addWidget(choice)
    choice.addItems(["Hatching tray by the window", "x"])
    choice.show()

    def picture() -> bytes:
        image = choice.grab().toImage()
        return bytes(image.constBits())

    choice.resize(400, 30)
    whole = picture()
    choice.setItemText(0, "Hatching tray by the windoW")
    assert picture() != whole  # the last letter is seen
    choice.resize(110, 30)
    short = picture()
    seen = []
    for count in range(2, 20):
        text = "Hatching tray by the window"[:count].rstrip() + "…"
        if choice.fontMetrics().horizontalAdvance(text) < 110 - 24:  # it has room beside the arrow
            choice.setItemText(0, text)
            seen.append(picture())
    assert short in seen  # as if one of these stood there


def test_help_fits_the_screen_and_scrolls(qtbot: QtBot, points: int) -> None:
    shown = Reading(None, "Keys and mouse", KEYS)
    qtbot.addWidget(shown)
    shown.show()
    settle()
    room = shown.screen().availableSize()
    assert shown.width() <= room.width()
    assert shown.height() <= room.height()
    assert shown.page.horizontalScrollBar().maximum() == 0
    bar = shown.page.verticalScrollBar()
    assert bar.maximum() == 0 or points > 9
    qtbot.keyClick(shown, Qt.Key.Key_Escape)
    assert not shown.isVisible()


def test_a_choice_as_wide_as_it_wants_shows_its_longest_text_whole(qtbot: QtBot, qapp: QApplication) -> None:
    show_theme(qapp, LIGHT)
    choice = NarrowChoice()
    qtbot.addWidget(choice)
    choice.addItems(["surplus cocks", "all"])
    choice.show()
    choice.resize(choice.sizeHint())
    whole = choice.grab().toImage()
    choice.setItemText(0, "surplus cockz")  # not wider
    choice.resize(whole.size())
    assert choice.grab().toImage() != whole  # the last letter is seen


def test_the_panel_of_a_farm_without_a_clash_needs_no_bar_to_the_side(
    empty: OpenFarm, qtbot: QtBot, language: str
) -> None:
    for record in (SETTER, HATCHER, BROODER, eggs("Aster", 60, *hatch_route(), start=TODAY)):
        empty.apply(put(empty.farm, record))
    window = window_on(empty, qtbot, 1280, 720)
    assert not empty.checked.clashes
    assert window.season.inspector._area.horizontalScrollBar().maximum() == 0
