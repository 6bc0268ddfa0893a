"""A small farm with its first batch: what a keeper of the first week does with it."""

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import QApplication, QDialog, QDialogButtonBox, QLabel, QMenu
from pytestqt.qtbot import QtBot

from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.season_canvas.scene import Picked
from quailsched.desktop.style_sheet import sheet_of
from quailsched.desktop.theme import LIGHT
from quailsched.edits.records import put
from quailsched.farm.records import Origin
from quailsched.season.route import usual_route
from quailsched.session.open_farm import OpenFarm
from tests.builders import ARK, BROODER, HATCHER, SETTER, eggs, hatch_route
from tests.desktop.conftest import TODAY, shown_window
from tests.desktop.pointing import Hand, middle_of


@pytest.fixture
def small(empty: OpenFarm, qtbot: QtBot, qapp: object) -> MainWindow:
    """A setter, a hatcher, a brooder, and Aster, which is set today."""
    for record in (SETTER, HATCHER, BROODER, eggs("Aster", 60, *hatch_route(), start=TODAY)):
        empty.apply(put(empty.farm, record))
    return shown_window(empty, qtbot, qapp, (1280, 720))


def test_what_the_strip_tells_on_the_way_of_a_drag_is_read_whole(small: MainWindow) -> None:
    """ "free Apr 21" and "60 eggs of Aster" become "free now" and "Aster comes on Apr 14", which is longer."""
    canvas, strip = small.season.canvas, small.season.frees_up
    tall = strip.height()
    Hand(canvas).press(middle_of(canvas, "Aster", "Setter")).by(8 * canvas.scene().scale.day_px)
    told = [one for one in strip.findChildren(QLabel) if "Aster comes on" in one.text()]
    assert len(told) == 3
    for one in told:
        assert one.width() >= one.fontMetrics().horizontalAdvance(one.text()), one.text()
    assert strip.height() == tall


def test_a_split_that_has_no_other_place_is_called_a_split(small: MainWindow) -> None:
    canvas, before = small.season.canvas, small.opened.farm
    Hand(canvas).press(middle_of(canvas, "Aster", "Brooder")).by(0, -12).release()
    assert small.opened.farm == before
    hand = Hand(canvas).press(middle_of(canvas, "Aster", "Brooder")).by(0, -12)
    verdict = canvas.drag.told()
    assert verdict is not None
    assert verdict.text == "Split Aster: not possible"
    hand.release()


def test_the_season_as_a_table_needs_no_bar_for_columns_in_which_nothing_stands(small: MainWindow) -> None:
    small.opened.apply(put(small.opened.farm, ARK))
    route = usual_route(small.opened.farm, "coturnix", Origin.OWN_EGGS)  # with a laying group and surplus cocks
    small.opened.apply(put(small.opened.farm, eggs("Aster", 20, *route, start=TODAY)))
    assert not small.opened.checked.clashes
    small.actions_by_name["swap_table"].trigger()
    page = small.season.table.page
    QApplication.processEvents()
    assert page.table.horizontalScrollBar().maximum() == 0
    heading = page.table.horizontalHeader()
    for column in range(page.model.columnCount()):
        text = str(page.model.headerData(column, Qt.Orientation.Horizontal))
        assert heading.sectionSize(column) >= heading.fontMetrics().horizontalAdvance(text) + 16, text


def test_the_menu_of_a_batch_tells_its_hens_and_its_cocks_in_one_place_apart(small: MainWindow, qtbot: QtBot) -> None:
    small.opened.apply(put(small.opened.farm, ARK))
    route = usual_route(small.opened.farm, "coturnix", Origin.OWN_EGGS)
    small.opened.apply(put(small.opened.farm, eggs("Aster", 60, *route, start=TODAY)))
    small.season.pick(Picked(batch_id="aster"))
    qtbot.keyClick(small.season.canvas, Qt.Key.Key_F10, Qt.KeyboardModifier.ShiftModifier)
    menu = QApplication.activePopupWidget()
    assert isinstance(menu, QMenu)
    rows = [one.text() for one in menu.actions() if one.text().startswith("In ")]
    menu.close()
    assert rows[0].startswith("In Setter, ")
    assert [row.partition(",")[0] for row in rows if "Ark" in row] == [
        "In Ark (laying group)",
        "In Ark (surplus cocks)",
    ]


def test_a_small_question_has_its_buttons_in_the_order_of_the_forms(small: MainWindow, qtbot: QtBot) -> None:
    """Cancel to the left, what goes on to the right; without the pictures that some desktops put on them, which the
    system of the tests does not."""
    seen: list[tuple[int, int]] = []

    def answer() -> None:
        question = QApplication.activeModalWidget()
        assert isinstance(question, QDialog)
        try:
            box = question.findChild(QDialogButtonBox)
            assert box is not None
            one = QDialogButtonBox.StandardButton
            seen.append((box.button(one.Cancel).x(), box.button(one.Ok).x()))
        finally:
            question.reject()

    QTimer.singleShot(0, answer)
    qtbot.keyClick(small, Qt.Key.Key_N, Qt.KeyboardModifier.ControlModifier)
    (cancel, ok) = seen[0]
    assert cancel < ok
    assert "dialogbuttonbox-buttons-have-icons: 0" in sheet_of(LIGHT)
