"""The whole season at once: what stands where on a page that nobody can scroll."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from itertools import count

import pytest
from PySide6.QtCore import QRectF

from quailsched.desktop.paper.season_scene import lanes_height, paper_layout, whole_scene
from quailsched.desktop.paper.sheet import fonts_on_paper
from quailsched.desktop.season_canvas.fonts import Fonts
from quailsched.desktop.season_canvas.labels import Ground, Label, Labels
from quailsched.desktop.season_canvas.lanes import Grouping
from quailsched.desktop.season_canvas.scene import Scene
from quailsched.farm.example import example_farm
from quailsched.farm.units import span_text
from quailsched.season.clashes import Checked, checked
from quailsched.season.season import Season
from tests.bench.big_farm import big_farm
from tests.builders import BROODER, HATCHER, OUT, SETTER, eggs, farm, stay

TODAY = date(2027, 4, 6)
WIDTH, HEIGHT = 1050.0, 600.0
pytestmark = pytest.mark.usefixtures("qapp")


def example() -> Checked:
    ids = map(str, count())
    return checked(Season(example_farm(TODAY, lambda: next(ids))))


def scene_of(now: Checked, fonts: Fonts, grouping: Grouping = Grouping.PLACES) -> Scene:
    return whole_scene(paper_layout(now, TODAY, grouping), fonts, TODAY, WIDTH, HEIGHT)


def labels_of(scene: Scene, fonts: Fonts) -> list[tuple[float, Label]]:
    """Every name with the top of its lane."""
    view, found = scene.width - scene.left, []
    for lane in scene.lanes:
        ground = Ground(lane, scene.scale, scene.today, fonts, view)
        found += [(lane.top, label) for label in Labels().of(ground, scene.layout.label, *scene.days()).items]
    return found


@pytest.mark.parametrize("grouping", list(Grouping))
def test_the_days_of_the_season_fill_the_width_and_its_lanes_the_height(grouping: Grouping) -> None:
    fonts = fonts_on_paper()
    scene = scene_of(example(), fonts, grouping)
    start, end = scene.days()
    assert scene.x(start) == scene.left
    assert abs(scene.x(end) - WIDTH) <= scene.scale.day_px + 0.01
    assert scene.top(scene.lanes[-1].bottom) <= HEIGHT
    assert scene.left <= WIDTH * 0.2


def test_names_however_long_leave_the_days_four_fifths_of_the_width() -> None:
    brooder = replace(BROODER, name="The long brooder with the green roof behind the third apple tree from the gate")
    route = stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(brooder, 18, 24, leaving=OUT)
    now = checked(Season(farm(brooder, eggs("Aster", 40, *route))))
    assert scene_of(now, fonts_on_paper()).left == WIDTH * 0.2


def test_what_is_too_high_for_a_page_is_told(qapp: object) -> None:
    """The page is then drawn smaller."""
    fonts = fonts_on_paper()
    layout = paper_layout(checked(Season(big_farm())), TODAY, Grouping.BATCHES)
    assert len(layout.lanes) == 500
    assert lanes_height(layout, fonts) > 500 * fonts.plain.height
    assert lanes_height(layout, fonts) >= whole_scene(layout, fonts, TODAY, WIDTH, HEIGHT).lanes[-1].bottom


def test_every_name_stands_in_view() -> None:
    fonts = fonts_on_paper()
    for now in (example(), checked(Season(big_farm()))):
        scene = scene_of(now, fonts)
        labels = labels_of(scene, fonts)
        assert len(labels) > 20
        for _, label in labels:
            wide = fonts.small_bold.width(label.text)
            assert label.left >= 0
            assert label.right <= scene.width - scene.left + 0.01
            assert label.right - label.left >= min(wide, label.face.width(label.text)) - 0.01


def test_far_out_no_name_stands_where_the_days_of_a_clash_do() -> None:
    """The days of a clash stand over the line, a name may: at a quarter of a pixel a day a week is too near."""
    fonts = fonts_on_paper()
    scene = scene_of(checked(Season(big_farm())), fonts)
    over_line = [(top, label.rect) for top, label in labels_of(scene, fonts) if label.is_over_line]
    assert over_line
    for lane in scene.lanes:
        for mark in lane.content.marks.items:
            if mark.row < 0:
                wide = fonts.small_bold.width(span_text(mark.clash.first, mark.clash.last))
                middle = scene.scale.x(mark.clash.first)
                days = QRectF(middle - wide / 2, 0, wide, lane.base_y - lane.top)
                assert not any(top == lane.top and days.intersects(rect) for top, rect in over_line)
