"""The days of a hatch against what handbooks count."""

from datetime import date, timedelta

from quailsched.husbandry.handbook import handbook
from quailsched.season.season import Season
from tests.builders import CABINET, eggs, farm, stay

SET = date(2027, 3, 1)


def days_of(kind: str) -> tuple[date, date, float, float]:
    """(lockdown, hatch, earliest and latest day of hatch) of eggs of ``kind`` set on 1 March 2027."""
    batch = eggs("Aster", 40, stay(CABINET, 0, 26), start=SET, kind=kind)
    days = Season(farm(batch, plain=False)).days(batch)
    spread = handbook()[kind].figures["incubation_days"]
    return SET + timedelta(days=days.lockdown), SET + timedelta(days=days.hatch), spread.low, spread.high


def test_coturnix_lies_still_after_360_hours_and_hatches_on_day_17() -> None:
    # Romao et al., Livestock Res. Rural Dev. 21(3), 2009: "day 15" is 360 h after setting, so the day of
    # setting is day 0 (row ex.daycount.h). Poultry Hub Australia: 17 to 18 days; Gamebird and Waterfowl
    # Foundation chart: 16 to 17 (rows inc.days, inc.days.gbwf).
    lockdown, hatch, low, high = days_of("coturnix")
    assert (lockdown - SET).days * 24 == 360
    assert hatch == date(2027, 3, 18)
    assert (low, high) == (16, 18)


def test_bobwhite_turns_to_day_20_and_hatches_on_day_21_to_23() -> None:
    # NC Cooperative Extension, Henderson Co., 2020: last turning day 20, hatch days 21 to 23 (rows
    # ex.daycount.ncsu, inc.b.days).
    lockdown, hatch, low, high = days_of("bobwhite")
    assert 20 <= (lockdown - SET).days <= 21
    assert (hatch - SET).days == 23
    assert low == 21
    assert high <= 24


def test_button_quail_hatch_on_day_16() -> None:
    # Gamebird and Waterfowl Foundation chart: 16; others to 18 (row inc.k.days).
    _, hatch, low, high = days_of("button")
    assert (hatch - SET).days == 16
    assert (low, high) == (16, 18)
