"""The list of counts by real keys and mouse: recorded, corrected, taken back, and what they said before."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, date, datetime

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QAbstractItemModelTester
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from quailsched.desktop.counts.count_form import CountForm
from quailsched.desktop.counts.counts_dialog import CountsDialog
from quailsched.desktop.counts.counts_model import CountsModel
from quailsched.edits.counts import record
from quailsched.edits.groups import part_off
from quailsched.farm.facts import Count, Sort
from quailsched.farm.ledger import standing
from quailsched.report.counts_told import told_counts
from quailsched.session.open_farm import OpenFarm
from tests.desktop.conftest import TODAY

LEFT = Qt.MouseButton.LeftButton
NOW = datetime(2027, 4, 6, 7, tzinfo=UTC)


@pytest.fixture
def aster(opened: OpenFarm) -> str:
    """Asters of which 60 hatched and 2 died."""
    found = next(batch.id for batch in opened.plan.batches if batch.name == "Aster")
    for count in (
        Count("hatch", Sort.HATCHED, date(2027, 3, 18), NOW, 60, found),
        Count("died", Sort.DIED, date(2027, 3, 20), NOW, 2, found),
    ):
        opened.apply_to_plan(record(opened.plan, count, TODAY))
    return found


@pytest.fixture
def dialog(qtbot: QtBot, opened: OpenFarm, aster: str) -> Iterator[CountsDialog]:
    parent = QWidget()
    qtbot.addWidget(parent)
    shown = CountsDialog(parent, opened, TODAY, aster, opened.apply_to_plan)
    shown.show()
    with qtbot.waitActive(shown):
        shown.activateWindow()
    yield shown
    shown.close()


def rows(dialog: CountsDialog) -> list[str]:
    return [str(dialog.model.index(row, 2).data()) for row in range(dialog.model.rowCount())]


def in_form(qtbot: QtBot, type_in: object) -> None:
    """Do ``type_in`` in the form that opens next, which runs its own loop."""

    def act() -> None:
        form = QApplication.activeModalWidget()
        assert isinstance(form, CountForm)
        qtbot.waitUntil(form.isActiveWindow)
        type_in(form)  # type: ignore[operator]

    QTimer.singleShot(0, act)


def test_counts_are_told_newest_first(dialog: CountsDialog) -> None:
    assert rows(dialog) == ["2 died", "60 hatched"]
    assert dialog.model.index(0, 0).data() == "Sat 20 Mar"


def test_the_model_is_sound(opened: OpenFarm, aster: str) -> None:
    model = CountsModel(TODAY)
    QAbstractItemModelTester(model, QAbstractItemModelTester.FailureReportingMode.Fatal)
    model.show_counts(told_counts(opened.plan, aster))
    assert model.rowCount() == 2


def test_return_corrects_the_count_that_is_picked(dialog: CountsDialog, qtbot: QtBot) -> None:
    def three(form: CountForm) -> None:
        form.number.setValue(3)
        qtbot.keyClick(form.number, Qt.Key.Key_Return)

    in_form(qtbot, three)
    qtbot.keyClick(dialog.table, Qt.Key.Key_Return)
    assert rows(dialog) == ["3 died", "corrected: 2 died", "60 hatched"]
    font = dialog.model.index(1, 2).data(Qt.ItemDataRole.FontRole)
    assert font.strikeOut()
    assert dialog.model.index(0, 2).data(Qt.ItemDataRole.FontRole) is None
    dialog.table.selectRow(1)
    assert not dialog.correct.isEnabled()  # it holds no longer
    assert not dialog.back.isEnabled()


def test_delete_takes_a_count_back_and_its_trace_stays(dialog: CountsDialog, opened: OpenFarm, qtbot: QtBot) -> None:
    qtbot.keyClick(dialog.table, Qt.Key.Key_Delete)
    assert rows(dialog) == ["taken back: 2 died", "60 hatched"]
    assert [count.sort for count in standing(opened.plan.counts)] == [Sort.HATCHED]
    opened.undo()
    dialog.refresh()
    assert rows(dialog) == ["2 died", "60 hatched"]


def test_a_count_is_recorded_from_the_list(dialog: CountsDialog, qtbot: QtBot) -> None:
    def one(form: CountForm) -> None:
        qtbot.keyClick(form.sort, Qt.Key.Key_Tab)
        qtbot.keyClicks(form.number, "1")
        qtbot.keyClick(form.number, Qt.Key.Key_Return)

    in_form(qtbot, one)
    qtbot.mouseClick(dialog.record, LEFT)
    assert rows(dialog) == ["1 died", "2 died", "60 hatched"]
    assert dialog.focusWidget() is dialog.table


def test_what_cannot_be_taken_back_says_why(dialog: CountsDialog, qtbot: QtBot) -> None:
    dialog.table.selectRow(1)  # without the hatch there are no birds of which two could have died; eggs may be
    qtbot.mouseClick(dialog.back, LEFT)
    assert rows(dialog) == ["2 died", "taken back: 60 hatched"]


def test_birds_that_parted_are_left_to_the_history(opened: OpenFarm, aster: str, dialog: CountsDialog) -> None:
    pen = opened.plan.places[-1].id
    count = Count("part", Sort.PARTED, TODAY, NOW, 10, aster, pen, to_batch_id="new")
    opened.apply_to_plan(part_off(opened.plan, count, "Aster 2", TODAY))
    dialog.refresh()
    assert rows(dialog)[0] == "10 parted as Aster 2"
    assert not dialog.back.isEnabled()
    assert "undo the step in the history" in dialog.correct.toolTip()


def test_a_photo_that_is_gone_is_told(opened: OpenFarm, aster: str, dialog: CountsDialog, qtbot: QtBot) -> None:
    count = Count("photo", Sort.PHOTO, TODAY, NOW, 0, aster, file_name="hatch.jpg")
    opened.apply_to_plan(record(opened.plan, count, TODAY))
    dialog.refresh()
    assert dialog.photo.isEnabled()
    qtbot.mouseClick(dialog.photo, LEFT)
    assert dialog.fault.text().endswith("hatch.jpg is not there any more.")


def test_counts_of_the_whole_farm_name_what_they_are_of(dialog: CountsDialog, opened: OpenFarm) -> None:
    opened.apply_to_plan(record(opened.plan, Count("feed", Sort.FEED_BOUGHT, TODAY, NOW, grams=25_000), TODAY))
    dialog.of.setCurrentIndex(0)
    told = [(dialog.model.index(row, 1).data(), dialog.model.index(row, 2).data()) for row in range(3)]
    assert told == [("the farm", "25,000 g feed bought"), ("Aster", "2 died"), ("Aster", "60 hatched")]


def test_a_row_has_one_line_and_its_long_note_a_tip(
    dialog: CountsDialog, opened: OpenFarm, aster: str, qtbot: QtBot
) -> None:
    note = "they come running when the tin rattles, " * 6
    opened.apply_to_plan(
        record(opened.plan, Count("n", Sort.NOTE, TODAY, NOW, batch_id=aster, words=note.strip()), TODAY)
    )
    dialog.refresh(keep="n")
    row = dialog.model.row_of("n")
    assert row is not None
    index = dialog.model.index(row, 2)
    line = dialog.table.fontMetrics().height()
    assert line <= dialog.table.rowHeight(row) < 3 * line
    assert dialog.table.wordWrap() is False
    assert note.strip() in index.data(Qt.ItemDataRole.ToolTipRole)
    headings = dialog.table.horizontalHeader()
    assert headings.defaultAlignment() & Qt.AlignmentFlag.AlignLeft
    assert not headings.highlightSections()  # as in the other tables: the heading of what is picked is not bold


def test_where_nothing_is_counted_the_list_says_so_and_the_keys_are_on_record(
    dialog: CountsDialog, opened: OpenFarm, aster: str, qtbot: QtBot
) -> None:
    fern = next(index for index in range(dialog.of.count()) if "Fern" in dialog.of.itemText(index))
    assert dialog.table.isVisible()
    assert not dialog.nothing.isVisible()
    dialog.of.setFocus()
    while dialog.of.currentIndex() < fern:
        qtbot.keyClick(dialog.of, Qt.Key.Key_Down)
    assert not dialog.table.isVisible()
    assert dialog.nothing.isVisible()
    empty = CountsDialog(dialog, opened, TODAY, dialog.of.currentData(), opened.apply_to_plan)
    empty.show()
    with qtbot.waitActive(empty):
        empty.activateWindow()
    qtbot.waitUntil(lambda: QApplication.focusWidget() is empty.record, timeout=1000)
    empty.close()
