"""How cold a night may be on a day, from the farm's lows by month."""

from __future__ import annotations

from datetime import date

from quailsched.farm.records import Settings


def night_low_c(settings: Settings, day: date) -> float | None:
    """The low of a cold night around ``day`` in degrees Celsius; None if the farm does not know its nights.

    A month's figure holds on its 15th; in between the low goes in a straight line, so that a move does
    not look safe on the 1st that looked cold on the 31st.
    """
    lows = settings.night_lows_c
    if not lows:
        return None
    first = day.replace(day=15) if day.day >= 15 else _month_before(day)
    second = _month_after(first)
    along = (day - first).days / (second - first).days
    return lows[first.month - 1] * (1 - along) + lows[second.month - 1] * along


def _month_before(day: date) -> date:
    return date(day.year - 1, 12, 15) if day.month == 1 else date(day.year, day.month - 1, 15)


def _month_after(day: date) -> date:
    return date(day.year + 1, 1, 15) if day.month == 12 else date(day.year, day.month + 1, 15)
