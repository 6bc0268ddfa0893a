"""Plain sums of the trade: fertility, hatch, floor. Counts in, percentages or areas out."""

from __future__ import annotations


def _share_pct(part: int, whole: int, part_name: str, whole_name: str) -> float:
    if whole <= 0:
        raise ValueError(f"{whole_name}: {whole} cannot be used; a number above 0 is needed.")
    if not 0 <= part <= whole:
        raise ValueError(f"{part_name}: {part} cannot be used; from 0 to {whole} ({whole_name}) is possible.")
    return 100.0 * part / whole


def fertility_pct(eggs_set: int, infertile: int) -> float:
    """100 (set - infertile) / set. Raises ValueError on impossible counts.

    Source: Lacin et al., Asian-Australas. J. Anim. Sci. 21(8), 2008 (816 eggs, 190 infertile: 76.7 %).
    """
    return 100.0 - _share_pct(infertile, eggs_set, "infertile eggs", "eggs set")


def hatch_of_set_pct(eggs_set: int, hatched: int) -> float:
    """100 hatched / set. Raises ValueError on impossible counts.

    Source: National Quail Symposium Proceedings 7, 2012 (3,571 hatched of 5,793: 61.6 %).
    """
    return _share_pct(hatched, eggs_set, "chicks hatched", "eggs set")


def hatch_of_fertile_pct(fertile: int, hatched: int) -> float:
    """100 hatched / fertile. Raises ValueError on impossible counts. Source: Daikwo et al., 2011."""
    return _share_pct(hatched, fertile, "chicks hatched", "fertile eggs")


def hatch_of_set_of_rates_pct(fertility: float, hatch_of_fertile: float) -> float:
    """Fertility (%) times hatch of fertile (%). Raises ValueError outside 0 to 100.

    Source: Daikwo, Dim & Momoh, Int. J. Poult. Sci. 10(1), 2011.
    """
    for name, rate in (("fertility", fertility), ("hatch of fertile", hatch_of_fertile)):
        if not 0 <= rate <= 100:
            raise ValueError(f"{name}: {rate} cannot be used; from 0 to 100 % is possible.")
    return fertility * hatch_of_fertile / 100.0


def floor_each_cm2(width_cm: float, depth_cm: float, birds: int) -> float:
    """Width times depth (cm) over the birds, in cm2. Raises ValueError if anything is not above 0.

    Source: Faitarone et al., Braz. J. Poult. Sci. 7(1), 2005 (96 x 33 cm with 12 birds: 264 cm2).
    """
    for name, number in (("width", width_cm), ("depth", depth_cm), ("birds", birds)):
        if not number > 0:
            raise ValueError(f"{name}: {number} cannot be used; a number above 0 is needed.")
    return width_cm * depth_cm / birds


def birds_per_m2(floor_cm2: float) -> float:
    """10,000 cm2 over the floor of one bird. Raises ValueError if that is not above 0.

    Source: Dhaliwal & Nagra, Punjab Agricultural University (150 cm2: 66.67 birds/m2).
    """
    if not floor_cm2 > 0:
        raise ValueError(f"floor for each bird: {floor_cm2} cannot be used; a number above 0 is needed.")
    return 10_000.0 / floor_cm2
