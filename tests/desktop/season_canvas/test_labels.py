"""Names of batches on the canvas: in their bands or beside them, never over each other, never cut."""

from dataclasses import replace
from itertools import combinations

import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter
from PySide6.QtWidgets import QApplication

from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.season_canvas.fonts import Fonts
from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.labels import Ground, Label, Labels, short
from quailsched.desktop.season_canvas.paint_names import NamePainter
from quailsched.desktop.season_canvas.pens import Pens
from quailsched.desktop.season_canvas.scene import Scene
from quailsched.desktop.theme import LIGHT
from quailsched.farm.records import Units


def labels_of(window: MainWindow, scene: Scene, lane: Lane) -> list[Label]:
    fonts = Fonts(window.season.canvas.font())
    found = Labels().of(Ground(lane, scene.scale, scene.today, fonts), scene.layout.label, *scene.days())
    return list(found.items)


def scene_of(window: MainWindow, width: int, height: int) -> Scene:
    """The scene of the canvas in a window of this size."""
    window.resize(width, height)
    QApplication.processEvents()
    return window.season.canvas.scene()


@pytest.mark.parametrize(("width", "height"), [(640, 360), (960, 540), (1280, 720), (1280, 800), (1920, 1080)])
def test_names_stand_clear_of_each_other(window: MainWindow, width: int, height: int) -> None:
    scene = scene_of(window, width, height)
    of_lanes = [labels_of(window, scene, lane) for lane in scene.lanes]
    assert sum(map(len, of_lanes)) > 5
    for labels in of_lanes:
        rects = [
            QRectF(label.left, label.rect.top(), label.right - label.left, label.rect.height()) for label in labels
        ]
        assert not any(one.intersects(other) for one, other in combinations(rects, 2))


@pytest.mark.parametrize(("width", "height"), [(640, 360), (1280, 720), (1920, 1080)])
def test_no_name_that_is_drawn_is_cut_by_the_edge_of_the_view(window: MainWindow, width: int, height: int) -> None:
    base = scene_of(window, width, height)
    canvas = window.season.canvas
    image = QImage(canvas.viewport().size(), QImage.Format.Format_RGB32)
    painter = QPainter(image)
    drawn = 0
    for shift in range(0, 200, 7):  # wherever it is scrolled
        canvas.horizontalScrollBar().setValue(int(base.dx) + shift)
        scene = replace(canvas.scene(), is_passing=False)  # it lies still
        names = NamePainter(Pens(painter, scene, LIGHT, Fonts(canvas.font()), Units.METRIC), Labels())
        for lane in scene.lanes:
            for label in labels_of(window, scene, lane):
                x = names.x_in_view(label)
                if x is not None:
                    drawn += 1
                    assert scene.left <= x
                    assert x + label.face.width(label.text) <= scene.width
    painter.end()
    assert drawn > 100


@pytest.mark.parametrize(("width", "height"), [(1280, 720), (1920, 1080)])
def test_every_band_that_is_in_view_has_a_name_or_what_stands_for_it(
    window: MainWindow, width: int, height: int
) -> None:
    scene = scene_of(window, width, height)
    for lane in scene.lanes:
        named = {label.band for label in labels_of(window, scene, lane)}
        assert set(lane.content.bands.within(*scene.days())) <= named


def test_a_name_without_room_is_its_number_or_its_first_letter() -> None:
    assert short("Batch 12") == "12"
    assert short("Clover") == "C"
    assert short("Batch 2027") == "B"  # a year tells nothing
