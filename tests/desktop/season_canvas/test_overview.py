"""The strip with all days: it shows what is in view, and moves it."""

import pytest
from PySide6.QtCore import QPoint, Qt
from pytestqt.qtbot import QtBot

from quailsched.desktop.main_window import MainWindow

LEFT = Qt.MouseButton.LeftButton


def test_the_frame_is_what_is_in_view(window: MainWindow) -> None:
    canvas, overview = window.season.canvas, window.season.overview
    canvas.zoom(3.0)
    first, end = canvas.scene().days()
    left, right = overview.window_px()
    whole = (canvas.last_day() - canvas.first_day()).days
    assert (right - left) / overview.width() == pytest.approx((end - first).days / whole, abs=0.02)
    assert left / overview.width() == pytest.approx((first - canvas.first_day()).days / whole, abs=0.02)


def test_a_press_beside_the_frame_goes_there(window: MainWindow, qtbot: QtBot) -> None:
    canvas, overview = window.season.canvas, window.season.overview
    canvas.zoom(3.0)
    qtbot.mouseClick(overview, LEFT, pos=QPoint(round(overview.width() * 0.8), 10))
    left, right = overview.window_px()
    assert (left + right) / 2 == pytest.approx(overview.width() * 0.8, abs=12)


def test_the_frame_is_pushed_along_and_its_edge_pulled(window: MainWindow, qtbot: QtBot) -> None:
    canvas, overview = window.season.canvas, window.season.overview
    canvas.zoom(3.0)
    left, right = overview.window_px()
    middle = QPoint(round((left + right) / 2), 10)
    qtbot.mousePress(overview, LEFT, pos=middle)
    qtbot.mouseMove(overview, middle + QPoint(60, 0))
    qtbot.mouseRelease(overview, LEFT, pos=middle + QPoint(60, 0))
    pushed, end = overview.window_px()
    assert pushed == pytest.approx(left + 60, abs=6)
    assert end - pushed == pytest.approx(right - left, abs=6)
    edge = QPoint(round(end), 10)
    qtbot.mousePress(overview, LEFT, pos=edge)
    qtbot.mouseMove(overview, edge + QPoint(80, 0))
    qtbot.mouseRelease(overview, LEFT, pos=edge + QPoint(80, 0))
    start, wider = overview.window_px()
    assert start == pytest.approx(pushed, abs=6)
    assert wider == pytest.approx(end + 80, abs=14)


def test_arrows_move_what_is_in_view(window: MainWindow, qtbot: QtBot) -> None:
    canvas, overview = window.season.canvas, window.season.overview
    canvas.zoom(3.0)
    overview.setFocus()
    before, _ = canvas.scene().days()
    qtbot.keyClick(overview, Qt.Key.Key_Right)
    after, _ = canvas.scene().days()
    assert after > before


def test_every_clash_that_is_open_has_a_tick(window: MainWindow) -> None:
    overview = window.season.overview
    image = overview.grab().toImage()
    whole = (window.season.canvas.last_day() - window.season.canvas.first_day()).days
    first = window.season.canvas.first_day()
    for clash in window.opened.checked.since(window.today):
        x = round((clash.first - first).days * overview.width() / whole) + 1
        pixel = image.pixelColor(min(x, image.width() - 1), image.height() - 5)
        assert pixel.red() > pixel.green() + 30, clash.sentence
