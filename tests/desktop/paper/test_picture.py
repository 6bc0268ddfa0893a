"""The season as PNG and as SVG."""

from __future__ import annotations

import re
from datetime import date
from itertools import count
from xml.etree import ElementTree

import pytest
from PySide6.QtGui import QColor, QImage

from quailsched.desktop.paper.picture import SeasonPicture
from quailsched.desktop.paper.season_page import SeasonPage
from quailsched.desktop.theme import LIGHT
from quailsched.farm.example import example_farm
from quailsched.farm.records import Farm, Settings
from quailsched.season.clashes import Checked, checked
from quailsched.season.season import Season

TODAY = date(2027, 4, 6)
SVG = "{http://www.w3.org/2000/svg}"
pytestmark = pytest.mark.usefixtures("qapp")
_Box = tuple[float, float, float, float]


@pytest.fixture(scope="module")
def example() -> Checked:
    ids = map(str, count())
    return checked(Season(example_farm(TODAY, lambda: next(ids))))


def picture_of(now: Checked) -> SeasonPicture:
    return SeasonPicture(SeasonPage(now, TODAY, TODAY))


def image_of(png: bytes) -> QImage:
    image = QImage()
    assert image.loadFromData(png, "PNG")
    return image


def dots_of(image: QImage, colour: str) -> int:
    wanted = QColor(colour).rgb()
    return sum(image.pixel(x, y) == wanted for x in range(0, image.width(), 2) for y in range(0, image.height(), 2))


def box_of(path: str) -> _Box:
    numbers = [float(one) for one in re.findall(r"-?\d+\.?\d*", path)]
    xs, ys = numbers[::2], numbers[1::2]
    return min(xs), min(ys), max(xs), max(ys)


def test_a_sharper_picture_shows_the_same_with_more_dots(example: Checked) -> None:
    once, twice = (image_of(picture_of(example).png(sharp)) for sharp in (1, 2))
    assert (twice.width(), twice.height()) == (2 * once.width(), 2 * once.height())
    # 96 dots an inch of 25.4 mm are 3780 a metre, and twice as many are 7559 or 7560.
    assert (once.dotsPerMeterX(), twice.dotsPerMeterX()) == (3780, 7559)
    for colour in (*[one.fill for one in LIGHT.batches[:7]], LIGHT.clash_tint, LIGHT.ink):
        assert dots_of(twice, colour) > dots_of(once, colour) > 0


def test_twice_the_same_picture_is_the_same_file(example: Checked) -> None:
    assert picture_of(example).png() == picture_of(example).png()
    assert picture_of(example).svg() == picture_of(example).svg()


def test_a_drawing_is_sound_xml_of_the_size_of_the_picture(example: Checked) -> None:
    root = ElementTree.fromstring(picture_of(example).svg())
    image = image_of(picture_of(example).png())
    assert root.tag == f"{SVG}svg"
    assert root.get("viewBox") == f"0 0 {image.width()} {image.height()}"
    assert root.findtext(f"{SVG}title") == "Pebble Bank, season 2027"


def test_a_drawing_has_the_names_as_words_in_a_font_that_others_know(example: Checked) -> None:
    root = ElementTree.fromstring(picture_of(example).svg())
    texts = list(root.iter(f"{SVG}text"))
    farm = example.season.farm
    names = {*(batch.name for batch in farm.batches), *(place.name for place in farm.places)}
    assert names <= {text.text for text in texts}
    assert all(str(text.get("font-family")).endswith(", sans-serif") for text in texts)


def test_no_band_of_a_drawing_is_clipped_by_what_was_drawn_before_it(example: Checked) -> None:
    """Qt goes on with the clip of the last texture, so that bands vanish from drawings; seen in 6.11."""
    root = ElementTree.fromstring(picture_of(example).svg())
    clips = {
        clip.get("id"): box_of(str(path.get("d")))
        for clip in root.iter(f"{SVG}clipPath")
        for path in clip.iter(f"{SVG}path")
        if path.get("d")
    }
    lanes = max(clips.values(), key=lambda box: (box[2] - box[0]) * (box[3] - box[1]))
    fills = {one.fill for one in LIGHT.batches}
    bands = 0
    for outer in root.iter(f"{SVG}g"):
        clip_id = str(outer.get("clip-path"))[5:-1]
        for inner in outer.findall(f"{SVG}g"):
            for band in inner.findall(f"{SVG}polygon"):
                if inner.get("fill") in fills and inner.get("stroke") == LIGHT.paper:
                    bands += 1
                    assert clips[clip_id] == lanes
                    assert box_of(str(band.get("points")))[0] < lanes[2]
    assert bands > 20  # seven batches in three or more places each, less what is past


def test_an_empty_farm_gives_a_picture_that_says_what_to_do() -> None:
    picture = picture_of(checked(Season(Farm(Settings("farm", "Thistle Yard")))))
    root = ElementTree.fromstring(picture.svg())
    words = " ".join(str(text.text) for text in root.iter(f"{SVG}text"))
    assert "Add your places (Change › Add a place)" in words
    assert dots_of(image_of(picture.png()), LIGHT.paper) > 10_000
