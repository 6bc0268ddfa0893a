"""The Books view: tables of measures that say what they rest on, and charts that keys and the mouse go through."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QPoint, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetrics
from PySide6.QtWidgets import QApplication, QTabBar, QWidget
from pytestqt.modeltest import ModelTester
from pytestqt.qtbot import QtBot

from quailsched.desktop.books.books_view import BATCHES, CHARTS, GROUPS, INCUBATORS, BooksView
from quailsched.desktop.books.chart_data import round_top
from quailsched.desktop.books.charts_page import ChartsPage
from quailsched.desktop.books.plot import Plot
from quailsched.desktop.books.table import BookPage
from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.tasks import Background, Run, run_at_once
from quailsched.desktop.theme import DARK, LIGHT, Theme, show_theme
from quailsched.edits.change import Change, Touch
from quailsched.farm.facts import Count, Sort
from quailsched.farm.records import Record
from quailsched.session.farms import make_farm
from quailsched.session.open_farm import OpenFarm
from tests.builders import BROODER, CABINET, HATCHER, PEN, SETTER, bought, eggs, hatch_route, on, stay

TODAY = on(200)
# Clover: 60 set in the setter, 6 clear, 27 hatched in the hatcher: 90 %, 50 % of fertile, 45 % of set.
# Iris: 40 set and hatched in the cabinet, 32 hatched: 80 %; nobody candled them.
CLOVER = replace(eggs("Clover", 60, *hatch_route()), from_ids=("dill",))
IRIS = eggs("Iris", 40, stay(CABINET, 0, 18), stay(BROODER, 18, 40), start=on(50))
DILL = bought("Dill", 80, 60, stay(PEN, 0, 190))
SAGE = eggs("Sage", 10, *hatch_route(), start=on(100))  # of which nothing is counted


def count(number: int, sort: Sort, day: int, of: str, amount: int = 0, **fields: object) -> Count:
    made = Count(f"count-{number}", sort, on(day), number=amount, batch_id=of)
    return replace(made, **fields)  # type: ignore[arg-type]


COUNTS = (
    count(1, Sort.CLEAR, 7, "clover", 6),
    count(2, Sort.HATCHED, 17, "clover", 27),
    count(3, Sort.HATCHED, 67, "iris", 32),
    count(4, Sort.SEXED, 0, "dill", 80, hens=60, cocks=20),
    count(5, Sort.LAID, 10, "dill", 45),  # aged 70: 75 % where 80 are expected
    count(6, Sort.LAID, 17, "dill", 60),
    count(12, Sort.COUNTED, 20, "dill", 80),  # so that all still lived when they laid
    count(7, Sort.FED, 10, "dill", grams=3_000),
    count(8, Sort.WEIGHED, 17, "clover", 10, grams=90),
    count(9, Sort.WEIGHED, 52, "clover", 10, grams=1_800),
    count(10, Sort.HOURS, 5, "clover", hours=1.5),
    count(11, Sort.HOURS, 5, "", hours=2.0),
)


def put_in(opened: OpenFarm, *records: Record) -> None:
    opened.apply(Change("as it is", tuple(Touch(None, record) for record in records)))


@pytest.fixture
def empty(tmp_path: Path) -> OpenFarm:
    return make_farm(tmp_path / "empty.quail", "Thistle Yard")


@pytest.fixture
def yard(empty: OpenFarm) -> OpenFarm:
    put_in(empty, SETTER, HATCHER, CABINET, BROODER, PEN, CLOVER, IRIS, DILL, SAGE, *COUNTS)
    return empty


def shown(opened: OpenFarm, qtbot: QtBot, number: int = BATCHES, run: Run = run_at_once) -> BooksView:
    made = BooksView(opened, TODAY, run)
    qtbot.addWidget(made)
    made.resize(1100, 600)
    with qtbot.waitExposed(made):
        made.show()
    made.tabs.setCurrentIndex(number)
    return made


def page_of(view: BooksView) -> BookPage:
    page = view.tabs.currentWidget()
    assert isinstance(page, BookPage)
    return page


def charts_of(view: BooksView) -> ChartsPage:
    page = view.tabs.widget(CHARTS)
    assert isinstance(page, ChartsPage)
    return page


def rows_of(page: BookPage) -> list[list[str]]:
    model = page.table.model()
    return [
        [model.index(row, column).data() for column in range(model.columnCount())] for row in range(model.rowCount())
    ]


@pytest.mark.parametrize("number", [BATCHES, GROUPS, INCUBATORS])
def test_each_model_keeps_the_rules_of_qt(
    yard: OpenFarm, qtbot: QtBot, qtmodeltester: ModelTester, number: int
) -> None:
    qtmodeltester.check(page_of(shown(yard, qtbot, number)).model)


def test_nothing_is_made_before_the_view_is_looked_at(window: MainWindow) -> None:
    assert window.books.findChildren(QWidget) == []
    window.show_books()
    assert window.books.findChildren(QTabBar)


def test_a_batch_in_a_row(yard: OpenFarm, qtbot: QtBot) -> None:
    rows = {row[0]: row[1:] for row in rows_of(page_of(shown(yard, qtbot)))}
    assert list(rows) == ["Clover", "Dill", "Iris"]
    assert rows["Clover"] == [
        "1 Mar 2027", "60 eggs", "90.0 %", "50.0 %", "45.0 %", "–", "–", "–", "–", "–", "–", "–", "–", "1.5",
    ]  # fmt: skip
    # 105 eggs on 2 x 60 hen-days; of the feed, by 2 of 8 days counted, 750 g for 105 eggs: 86 g a dozen.
    assert rows["Dill"][5:] == ["100.0 %", "87.5 %", "87.5 %", "–", "–", "86 g", "105", "3.00 kg", "–"]


def test_what_has_no_row_is_told(yard: OpenFarm, qtbot: QtBot) -> None:
    assert page_of(shown(yard, qtbot)).left_out.text() == (
        "Nothing is counted yet of 1 batch. Of no batch: 2 hours worked."
    )


def test_what_was_not_counted_is_read_out_so(yard: OpenFarm, qtbot: QtBot) -> None:
    model = page_of(shown(yard, qtbot)).table.model()
    assert model.index(0, 6).data(Qt.ItemDataRole.AccessibleTextRole) == "not counted"
    assert model.index(0, 5).data(Qt.ItemDataRole.AccessibleTextRole) == "45.0 %"


def test_the_chosen_cell_says_what_it_rests_on(yard: OpenFarm, qtbot: QtBot) -> None:
    page = page_of(shown(yard, qtbot))
    assert page.table.hasFocus()
    assert page.told.text().startswith("Clover · Fertility: 90.0 % (54 of 60 eggs set were fertile)\nFertility = 100 ×")
    qtbot.keyClick(page.table, Qt.Key.Key_Right)
    qtbot.keyClick(page.table, Qt.Key.Key_Right)
    assert page.told.text().startswith("Clover · Hatch of set: 45.0 % (27 chicks of 60 eggs set)\n")
    assert "Source: NQSP 7, 2012" in page.told.text()
    qtbot.keyClick(page.table, Qt.Key.Key_Right)
    assert page.told.text().startswith("Clover · Livability: not counted\n")


def test_a_heading_tells_its_formula(yard: OpenFarm, qtbot: QtBot) -> None:
    model = page_of(shown(yard, qtbot)).table.model()
    tip = model.headerData(5, Qt.Orientation.Horizontal, Qt.ItemDataRole.ToolTipRole)
    assert tip.startswith("Hatch of set = 100 × chicks hatched ÷ eggs set\n")


def test_keys_sort_by_the_column_and_what_was_not_counted_comes_last(yard: OpenFarm, qtbot: QtBot) -> None:
    page = page_of(shown(yard, qtbot))
    page.table.setCurrentIndex(page.table.model().index(0, 5))
    qtbot.keyClick(page.table, Qt.Key.Key_Up, Qt.KeyboardModifier.ControlModifier)
    assert [(row[0], row[5]) for row in rows_of(page)] == [("Clover", "45.0 %"), ("Iris", "80.0 %"), ("Dill", "–")]


def test_groups_and_incubators(yard: OpenFarm, qtbot: QtBot) -> None:
    view = shown(yard, qtbot, GROUPS)
    assert rows_of(page_of(view)) == [["Dill", "1", "60", "90.0 %", "50.0 %", "45.0 %"]]
    view.tabs.setCurrentIndex(INCUBATORS)
    assert rows_of(page_of(view)) == [
        ["Setter", "set here", "2", "70", "90.0 %", "50.0 %", "45.0 %"],
        ["Hatcher", "hatched here", "2", "70", "90.0 %", "50.0 %", "45.0 %"],
        ["Cabinet", "set and hatched here", "1", "40", "–", "–", "80.0 %"],
    ]


def test_a_count_shows_at_once_and_its_undo_too(yard: OpenFarm, qtbot: QtBot) -> None:
    page = page_of(shown(yard, qtbot))
    put_in(yard, count(20, Sort.HATCHED, 117, "sage", 5))
    assert [row[5] for row in rows_of(page) if row[0] == "Sage"] == ["50.0 %"]
    yard.undo()
    assert [row for row in rows_of(page) if row[0] == "Sage"] == []


def test_an_answer_that_comes_too_late_is_passed_over(yard: OpenFarm, qtbot: QtBot) -> None:
    waiting: list[tuple[Callable[[], Any], Callable[[Any], None]]] = []
    view = shown(yard, qtbot, run=lambda work, done: waiting.append((work, done)))
    assert page_of(view).empty.text() == "Working it out…"
    put_in(yard, count(20, Sort.HATCHED, 117, "sage", 5))
    answers = [(work(), done) for work, done in waiting]
    for answer, done in reversed(answers):
        done(answer)
    assert [row[0] for row in rows_of(page_of(view))] == ["Clover", "Dill", "Iris", "Sage"]


def test_it_is_worked_out_beside_the_window(yard: OpenFarm, qtbot: QtBot) -> None:
    background = Background()
    page = page_of(shown(yard, qtbot, run=background.run))
    qtbot.waitUntil(page.table.isVisible)
    background.finish()
    assert len(rows_of(page)) == 3
    assert page.table.hasFocus()


def test_where_nothing_is_counted_the_pages_say_what_to_do(empty: OpenFarm, qtbot: QtBot) -> None:
    view = shown(empty, qtbot)
    assert view.tabs.tabBar().hasFocus()
    for number, begins in (
        (BATCHES, "Nothing is counted yet."),
        (GROUPS, "No batch tells"),
        (INCUBATORS, "No eggs were set"),
    ):
        view.tabs.setCurrentIndex(number)
        assert page_of(view).empty.isVisible()
        assert page_of(view).empty.text().startswith(begins)
        assert not page_of(view).table.isVisible()
    view.tabs.setCurrentIndex(CHARTS)
    charts = charts_of(view)
    for key, does in (
        ("hatch", "how many chicks hatched"),
        ("lay", "Record the eggs"),
        ("weight", "Record weights of a batch"),
    ):
        charts.which.setCurrentIndex(charts.which.findData(key))
        assert does in charts.empty.text()
        assert charts.empty.isVisible()
        assert not charts.as_table.isEnabled()


def test_keys_go_through_the_incubators(yard: OpenFarm, qtbot: QtBot) -> None:
    charts = charts_of(shown(yard, qtbot, CHARTS))
    chart = charts.chart
    assert chart.accessibleName() == "Hatch by incubator"
    assert chart.accessibleDescription() == "Setter, set here: 45.0 %, 27 chicks of 60 eggs set"
    qtbot.keyClick(chart, Qt.Key.Key_End)
    assert chart.accessibleDescription() == "Cabinet, set and hatched here: 80.0 %, 32 chicks of 40 eggs set"
    qtbot.keyClick(chart, Qt.Key.Key_Left)
    assert chart.accessibleDescription().startswith("Hatcher, hatched here: 45.0 %")
    plot = chart.plot()
    with qtbot.waitSignal(chart.chosen):
        qtbot.mouseClick(chart, Qt.MouseButton.LeftButton, pos=QPoint(round(plot.x(0.4)), 100))
    assert chart.at == 0


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=["light", "dark"])
def test_bars_are_as_high_as_they_say(yard: OpenFarm, qtbot: QtBot, qapp: QApplication, theme: Theme) -> None:
    show_theme(qapp, theme)
    charts = charts_of(shown(yard, qtbot, CHARTS))
    plot, image = charts.chart.plot(), charts.chart.grab().toImage()
    # The cabinet, third of three, has 80 % of eggs set: filled a little below that, not a little above.
    left = round(plot.x(2.5)) - 20
    assert image.pixelColor(left, round(plot.y(76))).name() == QColor(theme.batch(0).fill).name()
    assert image.pixelColor(left, round(plot.y(90))).name() != QColor(theme.batch(0).fill).name()


def choose(charts: ChartsPage, key: str) -> None:
    charts.which.setCurrentIndex(charts.which.findData(key))


def test_lay_beside_the_curve(yard: OpenFarm, qtbot: QtBot) -> None:
    charts = charts_of(shown(yard, qtbot, CHARTS))
    choose(charts, "lay")
    assert charts.batch.currentText() == "Dill"
    assert charts.chart.accessibleName() == "Lay against the curve: Dill"
    # 45 eggs of 60 hens aged 70 days; the curve of the kind has 80 % there.
    assert charts.chart.accessibleDescription() == "day 70: 75.0 %, expected 80.0 %"
    qtbot.keyClick(charts.chart, Qt.Key.Key_Right)
    assert charts.chart.accessibleDescription().startswith("day 77: 100.0 %, expected ")


def test_weights_beside_the_curve_as_a_table_by_the_keyboard(yard: OpenFarm, qtbot: QtBot) -> None:
    charts = charts_of(shown(yard, qtbot, CHARTS))
    choose(charts, "weight")
    assert charts.chart.isVisible()
    charts.as_table.setFocus()
    qtbot.keyClick(charts.as_table, Qt.Key.Key_Space)
    table = charts.stack.currentWidget()
    assert isinstance(table, BookPage)
    assert table.table.accessibleName() == "Weight against the curve: Clover"
    assert [row[:2] + row[3:] for row in rows_of(table)] == [["0", "9.0 g", "10"], ["35", "180.0 g", "10"]]
    qtbot.keyClick(charts.as_table, Qt.Key.Key_Space)
    assert charts.chart.isVisible()


def test_points_stand_where_they_were_found(yard: OpenFarm, qtbot: QtBot, qapp: QApplication) -> None:
    show_theme(qapp, LIGHT)
    charts = charts_of(shown(yard, qtbot, CHARTS))
    choose(charts, "weight")
    plot, image = charts.chart.plot(), charts.chart.grab().toImage()
    point = image.pixelColor(round(plot.x(35)), round(plot.y(180)))
    assert point.name() == QColor(LIGHT.batch(0).fill).name()
    assert image.pixelColor(round(plot.x(35)), round(plot.y(150))).name() != point.name()


def test_a_plot_reaches_from_edge_to_edge_of_its_room(qapp: QApplication) -> None:
    room = QRectF(50, 20, 300, 200)
    plot = Plot(room, 35, 95, 400.0, QFontMetrics(qapp.font()), False)
    assert [plot.x(35), plot.x(65), plot.x(95)] == [50, 200, 350]
    assert [plot.y(0), plot.y(100), plot.y(400)] == [220, 170, 20]
    assert all(35 <= week * 7 <= 95 for week in plot.weeks())


def test_the_batch_that_is_looked_at_stays_when_something_is_counted(yard: OpenFarm, qtbot: QtBot) -> None:
    charts = charts_of(shown(yard, qtbot, CHARTS))
    choose(charts, "weight")
    put_in(yard, count(30, Sort.WEIGHED, 68, "iris", 5, grams=60))
    assert (charts.batch.currentText(), charts.batch.count()) == ("Clover", 2)
    put_in(yard, count(31, Sort.WEIGHED, 53, "clover", 5, grams=950))
    assert charts.chart.data.spots[-1].words.startswith("day 36: 190.0 g")


def test_keys_of_the_window_come_to_the_books(window: MainWindow, qtbot: QtBot) -> None:
    qtbot.keyClick(window, Qt.Key.Key_4, Qt.KeyboardModifier.ControlModifier)
    assert window.stack.currentWidget() is window.books
    qtbot.keyClick(window, Qt.Key.Key_5, Qt.KeyboardModifier.ControlModifier)
    assert window.stack.currentWidget() is window.setup_view


@pytest.mark.parametrize("size", [(640, 360), (1280, 720)])
def test_the_books_fit_the_window(yard: OpenFarm, qtbot: QtBot, size: tuple[int, int]) -> None:
    window = MainWindow(yard, TODAY, run_at_once)
    qtbot.addWidget(window)
    window.show()
    window.show_books()
    for number in (BATCHES, GROUPS, INCUBATORS, CHARTS):
        window.books.tabs.setCurrentIndex(number)
        window.resize(*size)
        QApplication.processEvents()
        assert (window.width(), window.height()) == size


@given(st.floats(0, 1e7))
def test_the_top_of_a_scale_is_near_and_not_below(most: float) -> None:
    assert most <= round_top(most) <= max(2.01 * most, 1)
