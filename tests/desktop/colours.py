"""How colours are seen: their contrast, as the colour-blind see them, and how far two of them are apart.

``tests/outside/test_colours.py`` holds these formulas against published values.
"""

from math import atan2, cos, degrees, exp, hypot, radians, sin, sqrt

Lab = tuple[float, float, float]

# Machado, Oliveira and Fernandes 2009, "A physiologically-based model for simulation of color vision deficiency", IEEE
# Transactions on Visualization and Computer Graphics 15 (6), severity 1.0. The matrices act on linear RGB.
VISIONS = {
    "all cones": ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0)),
    "protanopia": ((0.152286, 1.052583, -0.204868), (0.114503, 0.786281, 0.099216), (-0.003882, -0.048116, 1.051998)),
    "deuteranopia": ((0.367322, 0.860646, -0.227968), (0.280085, 0.672501, 0.047413), (-0.011820, 0.042940, 0.968881)),
    "tritanopia": ((1.255528, -0.076749, -0.178779), (-0.078411, 0.930809, 0.147602), (0.004733, 0.691367, 0.303900)),
}
_TO_XYZ = ((0.4124564, 0.3575761, 0.1804375), (0.2126729, 0.7151522, 0.0721750), (0.0193339, 0.1191920, 0.9503041))
_WHITE = (0.95047, 1.0, 1.08883)  # D65; matrix and white of sRGB, IEC 61966-2-1


def linear_of(colour: str) -> list[float]:
    """Red, green and blue of "#rrggbb" in proportion to light, 0 to 1 (IEC 61966-2-1)."""
    parts = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    return [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in parts]


def contrast(a: str, b: str) -> float:
    """From 1, the same, to 21, black on white: WCAG 2.2, definitions of contrast ratio and relative luminance."""
    light, dark = sorted((_luminance(a), _luminance(b)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def _luminance(colour: str) -> float:
    red, green, blue = linear_of(colour)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def lab(colour: str, vision: str = "all cones") -> Lab:
    """CIE L*a*b* (ISO/CIE 11664-4) of a colour as somebody with ``vision`` sees it."""
    linear = linear_of(colour)
    seen = [min(max(sum(a * b for a, b in zip(row, linear, strict=True)), 0.0), 1.0) for row in VISIONS[vision]]
    xyz = [
        sum(a * b for a, b in zip(row, seen, strict=True)) / white for row, white in zip(_TO_XYZ, _WHITE, strict=True)
    ]
    x, y, z = (t ** (1 / 3) if t > 216 / 24389 else (24389 / 27 * t + 16) / 116 for t in xyz)
    return 116 * y - 16, 500 * (x - y), 200 * (y - z)


def apart(one: str, other: str, vision: str = "all cones") -> float:
    """How different two colours look, as CIEDE2000 tells it; 1 is about the least that is noticed side by side."""
    return ciede2000(lab(one, vision), lab(other, vision))


def ciede2000(one: Lab, other: Lab) -> float:
    """Sharma, Wu and Dalal 2005, "The CIEDE2000 color-difference formula", Color Research and Application 30 (1);
    its names of the parts are kept."""
    chroma = (hypot(one[1], one[2]) + hypot(other[1], other[2])) / 2
    g = 0.5 * (1 - sqrt(chroma**7 / (chroma**7 + 25**7)))
    (l1, c1, h1), (l2, c2, h2) = (_polar(part, g) for part in (one, other))
    turn = 0.0 if c1 * c2 == 0 else (h2 - h1 + 180) % 360 - 180
    big_h = 2 * sqrt(c1 * c2) * sin(radians(turn) / 2)
    l_mean, c_mean = (l1 + l2) / 2, (c1 + c2) / 2
    h_mean = h1 + h2 if c1 * c2 == 0 else (h1 + turn / 2) % 360
    t = (
        1
        - 0.17 * cos(radians(h_mean - 30))
        + 0.24 * cos(radians(2 * h_mean))
        + 0.32 * cos(radians(3 * h_mean + 6))
        - 0.20 * cos(radians(4 * h_mean - 63))
    )
    s_l = 1 + 0.015 * (l_mean - 50) ** 2 / sqrt(20 + (l_mean - 50) ** 2)
    s_c, s_h = 1 + 0.045 * c_mean, 1 + 0.015 * c_mean * t
    r_c = 2 * sqrt(c_mean**7 / (c_mean**7 + 25**7))
    r_t = -sin(radians(60 * exp(-(((h_mean - 275) / 25) ** 2)))) * r_c
    in_l, in_c, in_h = (l2 - l1) / s_l, (c2 - c1) / s_c, big_h / s_h
    return sqrt(in_l**2 + in_c**2 + in_h**2 + r_t * in_c * in_h)


def _polar(part: Lab, g: float) -> Lab:
    """Lightness, chroma and hue in degrees, a* stretched by 1 + g."""
    a = (1 + g) * part[1]
    return part[0], hypot(a, part[2]), degrees(atan2(part[2], a)) % 360
