"""The bands of the season for those who hear it. On the real bus: ``tests/outside/test_accessibility_bus.py``."""

import gc

import pytest
from PySide6.QtCore import QEvent, QPoint, QRect, Qt
from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent, QAccessibleEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.season_canvas import heard
from quailsched.desktop.season_canvas.heard import HeardBand, HeardSeason, hear_seasons
from quailsched.edits.records import remove
from quailsched.session.open_farm import OpenFarm
from tests.desktop.conftest import TODAY, leave_undone

NAME, MORE = QAccessible.Text.Name, QAccessible.Text.Description


@pytest.fixture
def season(window: MainWindow, qtbot: QtBot) -> HeardSeason:
    """What is heard of the example in April 2027."""
    hear_seasons()
    with qtbot.waitActive(window):
        window.activateWindow()
    window.season.canvas.setFocus()
    found = QAccessible.queryAccessibleInterface(window.season.canvas)
    assert isinstance(found, HeardSeason)
    return found


def bands(season: HeardSeason) -> list[HeardBand]:
    found = [season.child(number) for number in range(season.first, season.childCount())]
    return [one for one in found if isinstance(one, HeardBand)]


def test_every_band_has_its_name_its_clashes_and_its_place_on_the_screen(
    season: HeardSeason, window: MainWindow
) -> None:
    assert season.role() is QAccessible.Role.List
    by_name = {band.text(NAME): band for band in bands(season)}
    assert len(by_name) == sum(len(lane.bands.items) for lane in window.season.canvas.layout_shown.lanes)
    # Clover: set on 12 April, to the hatching tray on 27 April, so its last day in the setter is 26 April.
    assert by_name["Clover in Bench setter, 12 – 26 Apr"].text(MORE) == ""
    tub = by_name["Clover in Tub brooder, 30 Apr – 26 May"]
    assert tub.text(MORE) == "Nobody home for Tub brooder; Tub brooder is too small"
    at = window.season.canvas.viewport().mapFromGlobal(tub.rect().center())
    hit = window.season.canvas.scene().hit(at.x(), tub_floor(tub, window))
    assert window.opened.farm.batch(hit.batch_id or "").name == "Clover"
    assert not tub.state().offscreen


def tub_floor(band: HeardBand, window: MainWindow) -> int:
    """A little above the lower edge of a band, which is its own on every day."""
    return window.season.canvas.viewport().mapFromGlobal(QPoint(0, band.rect().bottom() - 2)).y()


def test_arrow_keys_bring_the_focus_to_a_band_and_only_its_batch_is_selected(
    season: HeardSeason, window: MainWindow, qtbot: QtBot
) -> None:
    for key, batch in ((Qt.Key.Key_Right, "Aster"), (Qt.Key.Key_Right, "Bracken"), (Qt.Key.Key_Left, "Aster")):
        qtbot.keyClick(window.season.canvas, key)
        focused = season.focusChild()
        assert isinstance(focused, HeardBand)
        assert focused.text(NAME).startswith(f"{batch} in Bench setter")
        assert focused.state().focused
        assert [band.text(NAME).split(" in ")[0] == batch for band in bands(season)] == [
            bool(band.state().selected) for band in bands(season)
        ]
        assert season.indexOfChild(focused) == season.first + focused.number
    window.top.undo.setFocus()
    window.top.clashes.setFocus()
    assert not any(band.state().focused for band in bands(season))


def test_what_is_picked_is_told_while_somebody_listens(
    season: HeardSeason, window: MainWindow, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    told: list[str] = []

    class Listening(QAccessible):
        @staticmethod
        def isActive() -> bool:
            return True

        @staticmethod
        def updateAccessibility(event: QAccessibleEvent) -> None:
            told.append(event.message() if isinstance(event, QAccessibleAnnouncementEvent) else str(event.child()))

    monkeypatch.setattr(heard, "QAccessible", Listening)
    qtbot.keyClick(window.season.canvas, Qt.Key.Key_Right)
    qtbot.keyClick(window.season.canvas, Qt.Key.Key_Down)
    assert told[0] == str(season.first)  # the first band, Aster in the setter, has the focus now
    assert told[1].startswith("Stops the plan: ")


def test_what_goes_from_the_season_is_heard_no_more(season: HeardSeason, window: MainWindow) -> None:
    before = bands(season)
    window.opened.apply(remove(window.opened.farm, window.opened.farm.batches[0].id))
    QApplication.processEvents()
    assert len(bands(season)) < len(before)
    assert not before[-1].isValid()
    assert before[-1].text(NAME) == ""
    assert before[-1].rect() == QRect()
    assert not any(band.text(NAME).startswith("Aster") for band in bands(season))


def test_what_was_heard_outlives_its_window_without_harm(opened: OpenFarm) -> None:
    hear_seasons()
    window = MainWindow(opened, TODAY, leave_undone)
    season = QAccessible.queryAccessibleInterface(window.season.canvas)
    assert isinstance(season, HeardSeason)
    band = bands(season)[0]
    assert band.isValid()
    del season
    window.deleteLater()
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    del window
    gc.collect()
    assert not band.isValid()
    assert band.text(NAME) == ""
