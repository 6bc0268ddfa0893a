"""Hours of daylight by latitude and day: from sunrise to sunset of the sun's middle, without the air's bending.

Source: FAO Irrigation and Drainage Paper 56 (1998), equations 24, 25 and 34. Printed tables of sunrise count from the
sun's upper edge and with refraction, and are some minutes longer; twilight, which birds feel too, is not counted.
"""

from __future__ import annotations

from datetime import date
from functools import lru_cache
from math import acos, pi, radians, sin, tan

_LONGEST_YEAR = 366


def daylight_hours(latitude: float, day_of_year: int) -> float:
    """From 0 (polar night) to 24 (polar day). ``latitude`` in degrees, north positive; 1 January is day 1.

    N = (24 / pi) acos(-tan(latitude) tan(declination)), declination = 0.409 sin(2 pi J / 365 - 1.39) (FAO-56).
    Raises ValueError beyond the poles or the year.
    """
    if not -90 <= latitude <= 90:
        raise ValueError(f"latitude: {latitude} cannot be used; between -90 and 90 degrees is possible.")
    if not 1 <= day_of_year <= _LONGEST_YEAR:
        raise ValueError(f"day of the year: {day_of_year} cannot be used; from 1 to {_LONGEST_YEAR} is possible.")
    declination = 0.409 * sin(2 * pi * day_of_year / 365 - 1.39)
    # Beyond 1 the sun does not set that day, below -1 it does not rise.
    rise = max(-1.0, min(1.0, tan(radians(latitude)) * tan(declination)))
    return 24 / pi * acos(-rise)


@lru_cache(maxsize=16)
def _of_year(latitude: float) -> tuple[float, ...]:
    return tuple(daylight_hours(latitude, day) for day in range(1, _LONGEST_YEAR + 1))


def daylight_between(latitude: float, start: date, end: date) -> list[float]:
    """The hours of each day from ``start`` to ``end`` (half-open). Raises ValueError beyond the poles."""
    hours: list[float] = []
    while start < end:
        new_year = date(start.year, 1, 1)
        stop = min(end, date(start.year + 1, 1, 1))
        hours += _of_year(latitude)[(start - new_year).days : (stop - new_year).days]
        start = stop
    return hours
