"""Every text reads on its ground, what carries meaning stands out, and batches are told apart by the colour-blind."""

import re
from colorsys import rgb_to_hsv
from dataclasses import fields, replace
from itertools import combinations
from typing import Any

import pytest
from PySide6.QtGui import QGuiApplication

from quailsched.desktop.style_sheet import sheet_of
from quailsched.desktop.theme import DARK, LIGHT, Theme
from tests.desktop.colours import VISIONS, apart, contrast

_THEMES = pytest.mark.parametrize("theme", [LIGHT, DARK], ids=["light", "dark"])

# Which ink is read on which ground; a role that is no ink and no ground is listed among edges or decoration.
GROUNDS = ("paper", "top", "rail", "rail_on", "card", "sunk", "lane", "shut", "good_tint", "clash_tint")
INKS = {
    "ink": GROUNDS,
    "soft": GROUNDS,
    "clash": ("paper", "card", "sunk", "lane", "clash_tint"),
    "on_clash": ("clash",),
    "on_good": ("good",),
    "good": ("paper", "card", "sunk"),
    "paper": ("ink",),  # "today" in its pill
}
# What is no text but tells something, and beside what: fields, the focus, dashed lines of what a place holds, hatches
# of clashes, tops of the bars of Next set.
EDGES = {
    "edge": ("paper", "top", "card", "sunk"),
    "good": ("paper", "top", "rail", "rail_on", "card", "sunk", "lane"),
    "on_good": ("good",),
    "ink": ("paper", "lane", "shut", "sunk"),
    "clash": ("paper", "lane", "clash_tint"),
    "soft": ("paper", "lane", "card"),
}
DECORATION = {"line", "shut_line"}  # hairlines and quiet fills: nothing is told by them alone


def test_every_role_has_its_place_among_inks_grounds_and_edges() -> None:
    roles = {field.name for field in fields(Theme)} - {"is_dark", "batches", "faded"}
    assert roles == {*INKS, *GROUNDS, *EDGES, *DECORATION}


@_THEMES
def test_all_text_reads_at_four_and_a_half_to_one(theme: Theme) -> None:
    # WCAG 2.2, 1.4.3.
    pairs = [
        (ink, ground, contrast(getattr(theme, ink), getattr(theme, ground))) for ink in INKS for ground in INKS[ink]
    ]
    pairs += [("ink of a batch", batch.fill, contrast(batch.ink, batch.fill)) for batch in theme.batches]
    pairs += [("ink", "a faded batch", contrast(theme.ink, faded(b.fill, theme))) for b in theme.batches]
    assert [pair for pair in pairs if pair[2] < 4.5] == []


def faded(fill: str, theme: Theme) -> str:
    """A batch in its lane as the season draws it while another is picked."""
    pairs = zip(parts_of(fill), parts_of(theme.lane), strict=True)
    parts = [round(255 * (theme.faded * a + (1 - theme.faded) * b)) for a, b in pairs]
    return "#" + "".join(f"{part:02x}" for part in parts)


@_THEMES
def test_what_carries_meaning_stands_out_at_three_to_one(theme: Theme) -> None:
    # WCAG 2.2, 1.4.11.
    pairs = [(a, b, contrast(getattr(theme, a), getattr(theme, b))) for a, others in EDGES.items() for b in others]
    assert [pair for pair in pairs if pair[2] < 3] == []


@_THEMES
def test_a_band_stands_out_from_its_lane(theme: Theme) -> None:
    # At 3:1 as well, but for one: eight fills as dark as that cannot be told apart by the colour-blind (below). The
    # ochre of the light theme carries its name in ink.
    pale = [batch for batch in theme.batches if contrast(batch.fill, theme.lane) < 3]
    assert len(pale) <= (0 if theme.is_dark else 1)
    assert all(batch.ink == theme.ink and contrast(batch.fill, theme.lane) > 1.9 for batch in pale)


@_THEMES
def test_the_style_sheet_puts_no_text_on_a_ground_that_is_not_listed(theme: Theme, qapp: QGuiApplication) -> None:
    marks: dict[str, Any] = {name: f"<{name}>" for name in {*INKS, *GROUNDS, *EDGES, *DECORATION}}
    named = replace(theme, **marks)
    found = set()
    for rule in re.findall(r"{([^{}]*)}", sheet_of(named)):
        said = dict(part.split(":", 1) for part in rule.split(";") if ":" in part)
        told = {key.strip(): value.strip() for key, value in said.items()}
        for ink, ground in (("color", "background"), ("selection-color", "selection-background-color")):
            if told.get(ground, "transparent") != "transparent" and ink in told:
                found.add((told[ink], told[ground]))
    assert ("<on_good>", "<good>") in found
    assert found <= {(f"<{ink}>", f"<{ground}>") for ink, grounds in INKS.items() for ground in grounds}


# Mokrzycki and Tatol 2011, "Colour difference: a survey", Machine Graphics and Vision 20 (4): from 5 on, an observer
# sees two different colours side by side (on the scale of CIE 1976, which CIEDE2000 hardly ever exceeds). Bands stand
# apart from each other, and some are thin: twice that for any two of them, and a little more for those that follow one
# another, which lie next to each other most often.
TOLD, TOLD_BESIDE = 10.0, 11.5


@pytest.mark.parametrize("vision", VISIONS)
@_THEMES
def test_batches_are_told_apart_by_the_colour_blind(theme: Theme, vision: str) -> None:
    fills = [batch.fill for batch in theme.batches]
    for (i, one), (j, other) in combinations(enumerate(fills), 2):
        are_neighbours = (j - i) % len(fills) in (1, len(fills) - 1)  # the ninth batch has the colour of the first
        assert apart(one, other, vision) >= (TOLD_BESIDE if are_neighbours else TOLD), f"{one} and {other}"


@pytest.mark.parametrize("vision", VISIONS)
@_THEMES
def test_no_batch_is_taken_for_a_clash(theme: Theme, vision: str) -> None:
    assert [b.fill for b in theme.batches if apart(b.fill, theme.clash, vision) < TOLD] == []
    assert [b.fill for b in theme.batches if apart(b.fill, theme.clash_tint, vision) < TOLD] == []


def test_a_batch_has_the_same_hue_in_both_themes() -> None:
    # Around the circle: rust, plum, violet, blue, green, ochre; stone has none to speak of, teal turns to aqua.
    for number in (0, 1, 2, 3, 4, 5, 7):
        light, dark = (rgb_to_hsv(*parts_of(theme.batches[number].fill))[0] for theme in (LIGHT, DARK))
        assert abs((light - dark + 0.5) % 1 - 0.5) < 40 / 360, number


@_THEMES
def test_only_clashes_are_red(theme: Theme) -> None:
    def is_red(colour: str) -> bool:
        """Hue within 15 degrees of red, and strong."""
        hue, strength, _ = rgb_to_hsv(*parts_of(colour))
        return (hue < 15 / 360 or hue > 345 / 360) and strength > 0.4

    others = [getattr(theme, name) for name in {*GROUNDS, *INKS, *EDGES, *DECORATION} - {"clash", "clash_tint"}]
    assert is_red(theme.clash)
    assert not any(is_red(colour) for colour in [*others, *(batch.fill for batch in theme.batches)])


def parts_of(colour: str) -> tuple[float, float, float]:
    red, green, blue = (int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5))
    return red, green, blue
