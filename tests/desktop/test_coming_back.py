"""The window comes back as it was left, but never where it cannot be reached and never larger than the screen."""

from datetime import date

import pytest
from PySide6.QtCore import QByteArray, QDataStream, QIODevice, QRect
from PySide6.QtGui import QGuiApplication
from pytestqt.qtbot import QtBot

from quailsched.desktop.main_window import NEXT_SET, MainWindow
from quailsched.desktop.season_canvas.lanes import Grouping
from quailsched.session.open_farm import OpenFarm
from quailsched.session.paths import remember, remembered
from tests.desktop.conftest import TODAY, leave_undone


def another(opened: OpenFarm, qtbot: QtBot, today: date = TODAY) -> MainWindow:
    made = MainWindow(opened, today, leave_undone)
    qtbot.addWidget(made)
    return made


def geometry_of_another_desk(place: QRect, is_maximised: bool = False) -> str:
    """What Qt would have saved of a window at ``place``, in the form of Qt 5.0 and later (version 3.0)."""
    state = QByteArray()
    stream = QDataStream(state, QIODevice.OpenModeFlag.WriteOnly)
    stream.setVersion(QDataStream.Version.Qt_4_0)
    stream.writeUInt32(0x1D9D0CB)
    stream.writeUInt16(3)
    stream.writeUInt16(0)
    for rect in (place, place):
        stream << rect
    stream.writeInt32(0)  # screen
    stream.writeUInt8(is_maximised)
    stream.writeUInt8(0)  # full screen
    stream.writeInt32(place.width())
    stream << place
    return bytes(state.toHex().data()).decode()


def test_it_comes_back_as_it_was(window: MainWindow, qtbot: QtBot) -> None:
    window.resize(700, 520)
    window.season.splitter.setSizes([300, 360])
    window.season.swap_grouping()
    window.show_next_set()
    sizes = window.season.splitter.sizes()
    window.close()
    back = another(window.opened, qtbot)
    assert (back.width(), back.height()) == (700, 520)
    assert back.stack.currentIndex() == NEXT_SET
    assert back.season.canvas.grouping is Grouping.BATCHES
    back.show_season()
    with qtbot.waitExposed(back):
        back.show()
    assert back.season.splitter.sizes() == pytest.approx(sizes, abs=12)


def test_room_is_kept_for_the_strip_as_it_was_before_it_is_made(window: MainWindow, qtbot: QtBot) -> None:
    strip = window.season.frees_up
    qtbot.waitUntil(lambda: strip.height() == strip.sizeHint().height())
    strip._bound(tall := strip.height() + 30)  # as tall as it would be by no guess
    window.close()
    assert another(window.opened, qtbot).season.strip_px == tall
    remember(strip=5000)  # of a screen much taller than this one
    assert another(window.opened, qtbot).season.strip_px < tall


@pytest.mark.parametrize(
    "place",
    [
        QRect(5000, 4000, 900, 600),  # on a second screen that is not there any more
        QRect(-880, 10, 900, 600),  # so far to the left that nothing can be taken hold of
        QRect(0, 0, 3840, 2160),  # from a screen much larger than this one
    ],
)
def test_it_is_never_out_of_reach_nor_too_large(opened: OpenFarm, qtbot: QtBot, place: QRect) -> None:
    remember(window=geometry_of_another_desk(place))
    made = another(opened, qtbot)
    room = QGuiApplication.primaryScreen().availableGeometry()
    assert made.width() <= room.width()
    assert made.height() <= max(room.height(), made.minimumSizeHint().height())
    seen = made.geometry().intersected(room)
    assert seen.width() >= 120
    assert seen.height() >= 120


def test_it_comes_back_maximised_and_shrinks_to_this_screen_from_there(opened: OpenFarm, qtbot: QtBot) -> None:
    # A screen of 900 pixels, somewhat larger than this one; of one that is much larger Qt takes nothing over.
    remember(window=geometry_of_another_desk(QRect(60, 60, 900, 950), is_maximised=True))
    made = another(opened, qtbot)
    assert made.isMaximized()
    room = QGuiApplication.primaryScreen().availableGeometry()
    with qtbot.waitExposed(made):
        made.show()
    assert made.frameGeometry() == room
    made.showNormal()
    assert made.width() <= room.width()
    assert made.height() <= room.height()
    made.showMaximized()
    made.close()
    assert another(opened, qtbot).isMaximized()


@pytest.mark.parametrize("kept", ["", "00ff", "nonsense", 7, None, {"a": 1}])
def test_what_was_remembered_wrongly_does_no_harm(opened: OpenFarm, qtbot: QtBot, kept: object) -> None:
    remember(window=kept, parts=kept, view=kept, lanes=kept)
    made = another(opened, qtbot)
    assert made.width() > 300
    assert made.season.canvas.grouping is Grouping.PLACES
    assert remembered()["window"] == kept
