"""The list of clashes beside the season: what a row says, keys, and hundreds of clashes."""

from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QAccessible, QFont
from PySide6.QtWidgets import QApplication, QLabel, QPushButton
from pytestqt.qtbot import QtBot

from quailsched.desktop.clash_rows import ClashRow, ClashRows
from quailsched.desktop.main_window import MainWindow
from quailsched.farm.units import span_text
from quailsched.outlook.likelihood import chance_of_clash
from quailsched.report.clashes import title_of
from quailsched.report.inspect import chance_text, short_text
from quailsched.season.clash import Clash
from quailsched.season.clashes import checked
from quailsched.season.season import Season
from tests.bench.big_farm import FIRST_DAY, big_farm

Key = Qt.Key


def rows_in(window: MainWindow) -> list[QPushButton]:
    return [one for one in window.season.inspector.findChildren(QPushButton, "row") if one.isVisible()]


def row_of(window: MainWindow, clash: Clash) -> QPushButton:
    farm, today = window.opened.farm, window.today
    start = f"{title_of(farm, clash)}\n{span_text(clash.first, clash.last, today)}"
    return next(row for row in rows_in(window) if row.text().startswith(start))


def clash_of(window: MainWindow, kind: str) -> Clash:
    return next(clash for clash in window.opened.checked.since(window.today) if clash.kind == kind)


def test_a_row_says_days_amount_and_in_how_many_hatches(window: MainWindow) -> None:
    farm, floor = window.opened.farm, clash_of(window, "floor")
    lines = row_of(window, floor).text().split("\n")
    chance = chance_of_clash(window.opened.season, floor, window.today)
    assert chance is not None
    assert lines == [
        "Tub brooder is too small",
        f"{span_text(floor.first, floor.last, window.today)}, {chance_text(chance)}",
        f"short by {short_text(farm, floor)}",
    ]
    assert " of 100 hatches" in lines[1]


def test_a_row_of_what_hangs_on_no_hatch_says_nothing_of_hatches(window: MainWindow) -> None:
    assert "hatches" not in row_of(window, clash_of(window, "hands")).text()


def test_the_clash_that_is_picked_says_how_sure_it_is(window: MainWindow) -> None:
    floor = clash_of(window, "floor")
    window.season.canvas.show_clash(floor)
    told = [label.text() for label in window.season.inspector.findChildren(QLabel) if label.isVisible()]
    chance = chance_of_clash(window.opened.season, floor, window.today)
    assert chance is not None
    assert told[told.index("How sure") + 1] == chance_text(chance)
    window.season.canvas.show_clash(clash_of(window, "hands"))
    QApplication.processEvents()
    told = [label.text() for label in window.season.inspector.findChildren(QLabel) if label.isVisible()]
    assert "How sure" not in told


def test_a_name_with_an_ampersand_is_heard_as_it_is(qtbot: QtBot) -> None:
    row = ClashRow("Ann & Leo's run is too small", "7 Jun", lambda: None)
    qtbot.addWidget(row)
    heard = QAccessible.queryAccessibleInterface(row)
    assert heard.text(QAccessible.Text.Name) == "Ann & Leo's run is too small\n7 Jun"


def test_keys_walk_through_the_rows_and_return_goes_there(window: MainWindow, qtbot: QtBot) -> None:
    rows = rows_in(window)
    rows[0].setFocus()
    for row in rows[:5]:
        assert row.hasFocus()
        qtbot.keyClick(row, Key.Key_Down)
    qtbot.keyClick(rows[5], Key.Key_Up)
    assert rows[4].hasFocus()
    qtbot.keyClick(rows[4], Key.Key_Space)
    picked = window.season.picked.clash
    assert picked is not None
    assert rows[4].text().startswith(title_of(window.opened.farm, picked))


def test_the_row_that_the_keys_come_to_is_brought_into_view(window: MainWindow, qtbot: QtBot) -> None:
    window.resize(1280, 720)
    QApplication.processEvents()
    rows = rows_in(window)
    rows[0].setFocus()
    for row in rows[:-1]:
        qtbot.keyClick(row, Key.Key_Down)
    inspector = window.season.inspector
    top = rows[-1].mapTo(inspector, QPoint(0, 0)).y()
    assert rows[-1].hasFocus()
    assert 0 <= top <= inspector.height() - rows[-1].height()


@pytest.mark.parametrize("points", [9, 18])
def test_words_of_a_row_wrap_and_are_never_cut(window: MainWindow, points: int) -> None:
    font = QFont(window.font())
    font.setPointSize(points)
    inspector = window.season.inspector
    inspector.setFont(font)
    window.resize(1000, 600)
    for _ in range(3):
        QApplication.processEvents()
    port = inspector.findChild(ClashRows)
    assert port is not None
    for row in rows_in(window):
        assert row.width() <= port.width()
        assert row.height() >= row.heightForWidth(row.width())


@pytest.fixture
def many(window: MainWindow, tmp_path: Path, qtbot: QtBot) -> ClashRows:
    """The rows of a farm of ten years with hundreds of clashes."""
    now = checked(Season(big_farm()))
    assert len(now.clashes) > 300
    chosen: list[Clash] = []
    rows = ClashRows(now.season, now.clashes, FIRST_DAY, chosen.append)
    qtbot.addWidget(rows)
    rows.resize(280, 4000)
    rows.show()
    return rows


def all_rows(rows: ClashRows) -> list[QPushButton]:
    return [one for one in rows.findChildren(QPushButton, "row") if one.isVisible()]


def mores(rows: ClashRows) -> list[QPushButton]:
    return [one for one in rows.findChildren(QPushButton, "flat") if one.isVisible()]


def test_of_hundreds_the_first_are_shown_and_more_on_asking(many: ClashRows, qtbot: QtBot) -> None:
    assert len(all_rows(many)) == 20  # ten that stop the plan, ten to watch
    headings = [int(label.text().split("(")[1].rstrip(")")) for label in many.findChildren(QLabel)]
    assert [more.text() for more in mores(many)] == [f"and {number - 10} more" for number in headings]
    mores(many)[0].setFocus()
    qtbot.keyClick(mores(many)[0], Key.Key_Space)
    assert len(all_rows(many)) == 44
    assert mores(many)[-1].text() in {f"and {number - 34} more" for number in headings} | {
        f"and {headings[1] - 10} more"
    }
    focused = QApplication.focusWidget()  # the keys stay where the button was: at the first of the new rows
    assert isinstance(focused, QPushButton)
    above = [row for row in all_rows(many) if row.y() < focused.y()]
    assert len(above) == 10
    while mores(many):
        mores(many)[0].click()
        QApplication.processEvents()
    assert len(all_rows(many)) == sum(headings)
