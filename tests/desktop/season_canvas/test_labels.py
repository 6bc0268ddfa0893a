"""Names of batches on the canvas: in their bands or beside them, never over each other."""

from collections.abc import Iterator
from contextlib import contextmanager
from itertools import combinations

import pytest
from PySide6.QtGui import QImage, QPainter
from PySide6.QtWidgets import QApplication

from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.season_canvas.paint_names import NamePainter
from quailsched.desktop.theme import LIGHT
from quailsched.farm.records import Units


@contextmanager
def names_of(window: MainWindow, width: int, height: int) -> Iterator[NamePainter]:
    """What writes the names on a picture of the canvas, in a window of this size."""
    window.resize(width, height)
    QApplication.processEvents()
    canvas = window.season.canvas
    image = QImage(canvas.viewport().size(), QImage.Format.Format_RGB32)
    painter = QPainter(image)
    yield NamePainter(painter, canvas.scene(), LIGHT, canvas.font(), Units.METRIC, False)
    painter.end()


@pytest.mark.parametrize(("width", "height"), [(640, 360), (960, 540), (1280, 720), (1280, 800), (1920, 1080)])
def test_names_beside_bands_stand_clear_of_each_other_and_in_view(window: MainWindow, width: int, height: int) -> None:
    with names_of(window, width, height) as names:
        for lane in names.scene.lanes:
            names.names(lane)
        right_end = names.p.viewport().width()
    assert not any(one.intersects(other) for one, other in combinations(names._taken, 2))
    assert all(names.scene.left - 3 <= one.left() and one.right() <= right_end + 3 for one in names._taken)


@pytest.mark.parametrize(("width", "height"), [(1280, 720), (1920, 1080)])
def test_every_band_that_is_in_view_has_a_name_or_a_letter(window: MainWindow, width: int, height: int) -> None:
    with names_of(window, width, height) as names:
        unnamed = [
            (lane.content.place.name, name)
            for lane in names.scene.lanes
            for band in lane.content.bands
            if names.is_visible(band.start, band.end)
            and not names._name(lane, band, name := names.scene.batch_names[band.batch_id])
        ]
    assert unnamed == []
