"""The formulas for colours that the tests of the theme rest on, against published values."""

import pytest

from tests.desktop.colours import Lab, apart, ciede2000, contrast, lab

# Sharma, Wu and Dalal 2005, "The CIEDE2000 color-difference formula: implementation notes, supplementary test data,
# and mathematical observations", Color Research and Application 30 (1), table 1: blues, greys, hues that lie opposite
# (where careless programs take the mean hue on the wrong side), large differences, small ones, and near black.
SHARMA = [
    ((50.0, 2.6772, -79.7751), (50.0, 0.0, -82.7485), 2.0425),
    ((50.0, -1.3802, -84.2814), (50.0, 0.0, -82.7485), 1.0),
    ((50.0, 0.0, 0.0), (50.0, -1.0, 2.0), 2.3669),
    ((50.0, 2.49, -0.001), (50.0, -2.49, 0.0009), 7.1792),
    ((50.0, 2.49, -0.001), (50.0, -2.49, 0.0011), 7.2195),
    ((50.0, -0.001, 2.49), (50.0, 0.0009, -2.49), 4.8045),
    ((50.0, 2.5, 0.0), (50.0, 0.0, -2.5), 4.3065),
    ((50.0, 2.5, 0.0), (73.0, 25.0, -18.0), 27.1492),
    ((50.0, 2.5, 0.0), (61.0, -5.0, 29.0), 22.8977),
    ((50.0, 2.5, 0.0), (56.0, -27.0, -3.0), 31.9030),
    ((50.0, 2.5, 0.0), (58.0, 24.0, 15.0), 19.4535),
    ((60.2574, -34.0099, 36.2677), (60.4626, -34.1751, 39.4387), 1.2644),
    ((2.0776, 0.0795, -1.1350), (0.9033, -0.0636, -0.5514), 0.9082),
]


@pytest.mark.parametrize(("one", "other", "published"), SHARMA)
def test_differences_are_those_of_the_paper_on_the_formula(one: Lab, other: Lab, published: float) -> None:
    assert ciede2000(one, other) == pytest.approx(published, abs=0.00005)
    assert ciede2000(other, one) == pytest.approx(published, abs=0.00005)


def test_contrast_gives_the_published_extremes() -> None:
    # WCAG 2.2, definition of contrast ratio: from 1 to 21.
    assert contrast("#000000", "#ffffff") == pytest.approx(21)
    assert contrast("#777777", "#777777") == 1
    # WCAG 2.2, technique G18 and its tools: #767676 is the lightest grey that has 4.5:1 on white.
    assert contrast("#767676", "#ffffff") >= 4.5 > contrast("#777777", "#ffffff")


def test_pure_red_and_white_are_where_the_standard_puts_them() -> None:
    # sRGB (IEC 61966-2-1) under D65: red is L* 53.24, a* 80.09, b* 67.20, white 100, 0, 0.
    assert lab("#ff0000") == pytest.approx((53.24, 80.09, 67.20), abs=0.05)
    assert lab("#ffffff") == pytest.approx((100, 0, 0), abs=0.02)


def test_who_lacks_a_cone_takes_the_colours_for_one_that_it_tells_apart() -> None:
    # What the deficiencies are called after: red and green for the first two, blue and green for the third; grey is
    # grey to everybody (the rows of the matrices add up to one).
    for vision in ("protanopia", "deuteranopia"):
        assert apart("#a05a2c", "#5f7a2c", vision) < apart("#a05a2c", "#5f7a2c") / 3
    assert apart("#2f7fa8", "#2f8f7c", "tritanopia") < apart("#2f7fa8", "#2f8f7c") / 3
    for vision in ("protanopia", "deuteranopia", "tritanopia"):
        assert apart("#808080", "#808080") == apart("#808080", "#808080", vision) == 0
        assert lab("#808080", vision) == pytest.approx(lab("#808080"), abs=0.01)
