"""Contrast of every text on its ground, by the formula of WCAG 2.2 (1.4.3, 1.4.11); colours for the colour-blind."""

from dataclasses import fields
from itertools import combinations
from math import dist

import pytest

from quailsched.desktop.theme import DARK, LIGHT, Theme


def luminance(colour: str) -> float:
    """Relative luminance, WCAG 2.2 "relative luminance" definition."""
    linear = linear_of(colour)
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def linear_of(colour: str) -> list[float]:
    """Red, green and blue in proportion to light (IEC 61966-2-1)."""
    parts = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    return [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in parts]


def contrast(a: str, b: str) -> float:
    light, dark = sorted((luminance(a), luminance(b)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def test_the_formula_gives_the_published_extremes() -> None:
    # WCAG 2.2: black on white is 21:1, a colour on itself 1:1.
    assert contrast("#000000", "#ffffff") == pytest.approx(21)
    assert contrast("#777777", "#777777") == 1


# Which ink is read on which ground; every role of the theme is one or the other, or only a line or a surface.
GROUNDS = ("paper", "top", "rail", "rail_on", "card", "sunk", "lane", "shut", "good_tint")
INKS = {
    "ink": GROUNDS,
    "soft": ("paper", "top", "rail", "card", "sunk", "lane", "shut"),
    "clash": ("paper", "card", "sunk", "lane", "clash_tint"),
    "on_clash": ("clash",),
    "on_good": ("good",),
    "good": ("paper", "card"),
}
LINES = {"line", "shut_line"}  # hairlines and hatching: nothing is told by them alone
_THEMES = pytest.mark.parametrize("theme", [LIGHT, DARK], ids=["light", "dark"])


def test_every_role_has_its_place_among_inks_and_grounds() -> None:
    roles = {field.name for field in fields(Theme)} - {"is_dark", "batches"}
    assert roles == {*INKS, *GROUNDS, "clash_tint", *LINES}


@_THEMES
def test_all_text_reads_at_four_and_a_half_to_one(theme: Theme) -> None:
    pairs = [(getattr(theme, ink), getattr(theme, ground)) for ink, grounds in INKS.items() for ground in grounds]
    pairs += [(batch.ink, batch.fill) for batch in theme.batches]
    poor = [(ink, ground, round(contrast(ink, ground), 2)) for ink, ground in pairs if contrast(ink, ground) < 4.5]
    assert poor == []


@_THEMES
def test_a_band_stands_out_from_its_lane_and_the_focus_from_every_surface(theme: Theme) -> None:
    assert [batch.fill for batch in theme.batches if contrast(batch.fill, theme.lane) < 1.6] == []
    # WCAG 2.2, 1.4.11: what shows where the focus is has 3:1. It is drawn in "good".
    assert [g for g in ("paper", "card", "sunk", "top", "rail") if contrast(theme.good, getattr(theme, g)) < 3] == []


# Machado, Oliveira and Fernandes 2009, "A physiologically-based model for simulation of color vision deficiency",
# severity 1.0; the matrices act on linear RGB.
VISIONS = {
    "all cones": ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0)),
    "protanopia": ((0.152286, 1.052583, -0.204868), (0.114503, 0.786281, 0.099216), (-0.003882, -0.048116, 1.051998)),
    "deuteranopia": ((0.367322, 0.860646, -0.227968), (0.280085, 0.672501, 0.047413), (-0.011820, 0.042940, 0.968881)),
    "tritanopia": ((1.255528, -0.076749, -0.178779), (-0.078411, 0.930809, 0.147602), (0.004733, 0.691367, 0.303900)),
}
_WHITE = (0.95047, 1.0, 1.08883)  # D65, as the sRGB standard has it (IEC 61966-2-1)


def lab(colour: str, vision: str = "all cones") -> tuple[float, float, float]:
    """CIE L*a*b* (ISO/CIE 11664-4) of a colour as somebody sees it."""
    linear = linear_of(colour)
    seen = [min(max(sum(a * b for a, b in zip(row, linear, strict=True)), 0.0), 1.0) for row in VISIONS[vision]]
    to_xyz = ((0.4124564, 0.3575761, 0.1804375), (0.2126729, 0.7151522, 0.0721750), (0.0193339, 0.1191920, 0.9503041))
    xyz = [
        sum(a * b for a, b in zip(row, seen, strict=True)) / white for row, white in zip(to_xyz, _WHITE, strict=True)
    ]
    x, y, z = (t ** (1 / 3) if t > 216 / 24389 else (24389 / 27 * t + 16) / 116 for t in xyz)
    return 116 * y - 16, 500 * (x - y), 200 * (y - z)


def apart(one: str, other: str, vision: str) -> float:
    """The difference of two colours as seen (CIE 1976): 2.3 is just noticed, 10 is told at a glance."""
    return dist(lab(one, vision), lab(other, vision))


def test_lab_gives_the_published_values_of_pure_red_and_white() -> None:
    # sRGB red is L* 53.24, a* 80.09, b* 67.20 under D65; white is 100, 0, 0 (from memory of the usual tables).
    assert lab("#ff0000") == pytest.approx((53.24, 80.09, 67.20), abs=0.05)
    assert lab("#ffffff") == pytest.approx((100, 0, 0), abs=0.02)


@pytest.mark.parametrize("vision", VISIONS)
@_THEMES
def test_batches_are_told_apart_by_the_colour_blind(theme: Theme, vision: str) -> None:
    fills = [batch.fill for batch in theme.batches]
    for (i, one), (j, other) in combinations(enumerate(fills), 2):
        steps = min((j - i) % len(fills), (i - j) % len(fills))
        # Batches within three of each other are on the farm at the same time; others may meet in the hen house.
        assert apart(one, other, vision) >= (15 if steps <= 3 else 10), f"{one} and {other}"


@pytest.mark.parametrize("vision", VISIONS)
@_THEMES
def test_no_batch_is_taken_for_a_clash(theme: Theme, vision: str) -> None:
    assert [b.fill for b in theme.batches if apart(b.fill, theme.clash, vision) < 12] == []


@_THEMES
def test_only_clashes_are_red(theme: Theme) -> None:
    def is_red(colour: str) -> bool:
        """Hue within 15 degrees of red, and strong."""
        from colorsys import rgb_to_hsv

        hue, strength, _ = rgb_to_hsv(*(int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)))
        return (hue < 15 / 360 or hue > 345 / 360) and strength > 0.4

    others = [getattr(theme, n) for n in ("paper", "top", "rail", "ink", "soft", "line", "good", "shut", "sunk")]
    assert is_red(theme.clash)
    assert not any(is_red(colour) for colour in [*others, *(batch.fill for batch in theme.batches)])
