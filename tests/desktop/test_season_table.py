"""The season as a table: the same stays as on the canvas, with the same keys."""

from datetime import timedelta

from PySide6.QtCore import Qt
from PySide6.QtTest import QAbstractItemModelTester
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.season_table import stay_rows


def test_every_stay_has_its_row_and_every_clash_with_a_batch_stands_in_one(window: MainWindow) -> None:
    season, clashes = window.opened.season, window.opened.checked.clashes
    rows = stay_rows(season, clashes)
    assert len(rows) == sum(len(batch.stays) for batch in season.farm.batches)
    told = " ".join(row.cells[7] for row in rows)
    for clash in clashes:
        assert season.farm.place(clash.place_id).name in told
    first = rows[0].cells  # Aster: 96 eggs set on Monday, 1 March 2027, in the setter to day 14
    assert first[:5] == ("Aster", "Bench setter", "1 Mar 2027", "15 Mar 2027", "96 eggs")
    many = {place: many for batch, place, _, _, many, *_ in (row.cells for row in rows) if batch == "Aster"}
    assert many["Hatching tray"].endswith(" eggs")  # in it are chicks for a day, but eggs have their places
    assert many["Tub brooder"].endswith(" birds")


def test_the_table_is_a_sound_model(window: MainWindow) -> None:
    window.actions_by_name["swap_table"].trigger()
    tester = QAbstractItemModelTester(
        window.season.table.page.model, QAbstractItemModelTester.FailureReportingMode.Warning
    )
    window.nudge(window.opened.farm.batches[0].id, 1)
    assert tester.model() is window.season.table.page.model


def test_a_row_picks_its_batch_and_a_batch_its_row(window: MainWindow, qtbot: QtBot) -> None:
    window.actions_by_name["swap_table"].trigger()
    table = window.season.table.page.table
    assert QApplication.focusWidget() is table
    qtbot.keyClick(table, Qt.Key.Key_End, Qt.KeyboardModifier.ControlModifier)
    last = window.opened.farm.batches[-1]
    assert window.season.picked.batch_id == last.id
    window.actions_by_name["swap_table"].trigger()
    assert QApplication.focusWidget() is window.season.canvas
    window.season.canvas.next_clash()
    window.actions_by_name["swap_table"].trigger()
    assert window.season.table.isVisible()


def test_the_table_follows_each_change(window: MainWindow) -> None:
    window.actions_by_name["swap_table"].trigger()
    aster = window.opened.farm.batches[0]
    window.nudge(aster.id, 2)
    model = window.season.table.page.model
    starts = {model.index(row, 0).data(): model.index(row, 2).data() for row in reversed(range(model.rowCount()))}
    day = aster.start + timedelta(days=2)
    assert starts["Aster"] == f"{day.day} Mar {day.year}"
