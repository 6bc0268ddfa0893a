"""Plain sums of the trade: hatch, lay, feed, carcass, floor. Counts in, percentages, ratios or areas out.

What is measured is defined for people in ``definitions``; what a farm's counts give is worked out in
``outlook.batch_measures``. Nothing can be told where the divisor is 0: the answer is None, never 0.
"""

from __future__ import annotations


def _share_pct(part: float, whole: float, part_name: str, whole_name: str) -> float | None:
    if whole < 0:
        raise ValueError(f"{whole_name}: {whole} cannot be used; a number from 0 is needed.")
    if not 0 <= part <= whole:
        raise ValueError(f"{part_name}: {part} cannot be used; from 0 to {whole} ({whole_name}) is possible.")
    return 100.0 * part / whole if whole else None


def _ratio(part: float, whole: float, part_name: str, whole_name: str) -> float | None:
    for name, number in ((part_name, part), (whole_name, whole)):
        if not number >= 0:
            raise ValueError(f"{name}: {number} cannot be used; a number from 0 is needed.")
    return part / whole if whole else None


def fertility_pct(eggs_set: int, infertile: int) -> float | None:
    """100 (set - infertile) / set; None of no eggs. Raises ValueError on impossible counts.

    Source: Lacin et al., Asian-Australas. J. Anim. Sci. 21(8), 2008 (816 eggs, 190 infertile: 76.7 %).
    """
    _share_pct(infertile, eggs_set, "infertile eggs", "eggs set")
    return _share_pct(eggs_set - infertile, eggs_set, "fertile eggs", "eggs set")


def hatch_of_set_pct(eggs_set: int, hatched: int) -> float | None:
    """100 hatched / set; None of no eggs. Raises ValueError on impossible counts.

    Source: National Quail Symposium Proceedings 7, 2012 (3,571 hatched of 5,793: 61.6 %).
    """
    return _share_pct(hatched, eggs_set, "chicks hatched", "eggs set")


def hatch_of_fertile_pct(fertile: int, hatched: int) -> float | None:
    """100 hatched / fertile; None of no eggs. Raises ValueError on impossible counts. Source: Daikwo et al., 2011."""
    return _share_pct(hatched, fertile, "chicks hatched", "fertile eggs")


def hatch_of_set_of_rates_pct(fertility: float, hatch_of_fertile: float) -> float:
    """Fertility (%) times hatch of fertile (%). Raises ValueError outside 0 to 100.

    Source: Daikwo, Dim & Momoh, Int. J. Poult. Sci. 10(1), 2011.
    """
    for name, rate in (("fertility", fertility), ("hatch of fertile", hatch_of_fertile)):
        if not 0 <= rate <= 100:
            raise ValueError(f"{name}: {rate} cannot be used; from 0 to 100 % is possible.")
    return fertility * hatch_of_fertile / 100.0


def livability_pct(started: int, died: int) -> float | None:
    """100 (started - died) / started; None of no birds. Raises ValueError on impossible counts.

    Common practice: 100 less the mortality. Birds sold or processed have lived.
    """
    _share_pct(died, started, "birds that died", "birds at the start")
    return _share_pct(started - died, started, "birds that lived", "birds at the start")


def hen_day_pct(eggs: float, hen_days: float) -> float | None:
    """100 eggs / hen-days, a hen-day being one hen alive on one day; None without any. Above 100 where eggs of
    several days were counted on one. Raises ValueError below 0.

    Source: Calculating Agriculture ch. 12, 2019 (345,000 hens, 31 days, 9,090,750 eggs: 85.0 %).
    """
    rate = _ratio(eggs, hen_days, "eggs", "hen-days")
    return None if rate is None else 100.0 * rate


def hen_housed_pct(eggs: float, hens_housed: int, days: int) -> float | None:
    """100 eggs / (hens housed x days), whether these hens still live or not; None of no hens or days. Raises
    ValueError below 0.

    Source: Big Book Project (10,000 housed, 100 of them dead, 9,108 eggs in a day: 91.08 %).
    """
    rate = _ratio(eggs, hens_housed * days, "eggs", "hens housed")
    return None if rate is None else 100.0 * rate


def feed_conversion(feed_g: float, gain_g: float) -> float | None:
    """Grams of feed for a gram of gain in live weight; None where nothing was gained. Raises ValueError below 0.

    Source: Indian J. Anim. Res. BF-1579, 2023 (21.34 g a day for 7 days, 46.01 g gain: 3.25).
    """
    return _ratio(feed_g, gain_g, "feed", "gain")


def dressing_pct(live_g: float, dressed_g: float) -> float | None:
    """100 dressed / live weight of the same birds; None of no weight. Raises ValueError on impossible weights.

    Source: a breeder's record in New Zealand (188 g live, 105 g dressed: 56 %).
    """
    return _share_pct(dressed_g, live_g, "dressed weight", "live weight")


def feed_per_dozen_g(feed_g: float, eggs: float) -> float | None:
    """Grams of feed for twelve eggs; None of no eggs. Raises ValueError below 0.

    Source: leaflet of CARI and TANUVAS, a copy (25 g a day at 75 % lay: 400 g).
    """
    each = _ratio(feed_g, eggs, "feed", "eggs")
    return None if each is None else 12.0 * each


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
