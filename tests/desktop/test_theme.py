"""Contrast of every text that the theme puts on a background, by the formula of WCAG 2.2 (1.4.3, 1.4.11)."""

import pytest

from quailsched.desktop.theme import DARK, LIGHT, Theme


def luminance(colour: str) -> float:
    """Relative luminance, WCAG 2.2 "relative luminance" definition."""
    parts = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(a: str, b: str) -> float:
    light, dark = sorted((luminance(a), luminance(b)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def test_the_formula_gives_the_published_extremes() -> None:
    # WCAG 2.2: black on white is 21:1, a colour on itself 1:1.
    assert contrast("#000000", "#ffffff") == pytest.approx(21)
    assert contrast("#777777", "#777777") == 1


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=["light", "dark"])
def test_all_text_reads_at_four_and_a_half_to_one(theme: Theme) -> None:
    t = theme
    grounds = (t.paper, t.top, t.rail, t.card, t.sunk, t.lane)
    pairs = [(ink, ground) for ink in (t.ink, t.soft) for ground in grounds]
    pairs += [(t.clash, ground) for ground in (t.paper, t.card, t.lane, t.clash_tint)]
    pairs += [(t.on_clash, t.clash), (t.on_good, t.good), (t.ink, t.rail_on), (t.ink, t.good_tint), (t.soft, t.shut)]
    for number, batch in enumerate(t.batches):
        pairs.append((batch.ink, batch.fill))
        assert contrast(batch.fill, t.lane) >= 1.6, f"band {number} is lost on its lane"
    poor = [(ink, ground, round(contrast(ink, ground), 2)) for ink, ground in pairs if contrast(ink, ground) < 4.5]
    assert poor == []


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=["light", "dark"])
def test_only_clashes_are_red(theme: Theme) -> None:
    def is_red(colour: str) -> bool:
        """Hue within 15 degrees of red, and strong."""
        from colorsys import rgb_to_hsv

        hue, strength, _ = rgb_to_hsv(*(int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)))
        return (hue < 15 / 360 or hue > 345 / 360) and strength > 0.4

    others = [getattr(theme, n) for n in ("paper", "top", "rail", "ink", "soft", "line", "good", "shut", "sunk")]
    assert is_red(theme.clash)
    assert not any(is_red(colour) for colour in [*others, *(batch.fill for batch in theme.batches)])
