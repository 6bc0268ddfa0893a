"""Quantities in words. Inside everything is SI; here it becomes what the keeper chose to read."""

from __future__ import annotations

from datetime import date

from quailsched.farm.records import Units

CM2_PER_SQ_FT = 929.0304  # (30.48 cm)^2: the international foot is 0.3048 m exactly (NIST SP 811)
CM_PER_INCH = 2.54
_WEEKDAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"]
_MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"]


def area_text(area_cm2: float, units: Units, of_cm2: float = 0) -> str:
    """An area given in square centimetres: "1.30 m²", "310 cm²" or "14.0 sq ft".

    A part of a larger area ``of_cm2`` takes the unit of that, so that the two can be compared.
    """
    if units is Units.US:
        return f"{area_cm2 / CM2_PER_SQ_FT:,.1f} sq ft"
    if max(area_cm2, of_cm2) >= 5_000:
        return f"{area_cm2 / 10_000:,.2f} m²"
    return f"{area_cm2:,.0f} cm²"


def two_areas_text(one_cm2: float, other_cm2: float, units: Units) -> tuple[str, str]:
    """Two areas that differ, in words that differ too: as fine as that takes."""
    texts = area_text(one_cm2, units), area_text(other_cm2, units)
    if texts[0] != texts[1] or one_cm2 == other_cm2:
        return texts
    if units is Units.US:
        return f"{one_cm2 / CM2_PER_SQ_FT:,.2f} sq ft", f"{other_cm2 / CM2_PER_SQ_FT:,.2f} sq ft"
    return f"{one_cm2:,.0f} cm²", f"{other_cm2:,.0f} cm²"


def warmth_text(warmth_c: float, units: Units) -> str:
    """A temperature given in degrees Celsius: "4 °C" or "39 °F", a half kept in Celsius."""
    if units is Units.US:
        return f"{warmth_c * 9 / 5 + 32:.0f} °F"
    return f"{round(warmth_c * 2) / 2:g} °C"


def warmth_step_text(step_c: float, units: Units) -> str:
    """By how much two temperatures differ, given in degrees Celsius: "3 °C" or "5.4 °F", never told as none."""
    step, unit = (step_c * 9 / 5, "°F") if units is Units.US else (step_c, "°C")
    return f"{max(round(step, 1), 0.1):g} {unit}"


def two_warmths_text(one_c: float, other_c: float, units: Units) -> tuple[str, str]:
    """Two temperatures that differ, in words that differ too: as fine as that takes."""
    texts = warmth_text(one_c, units), warmth_text(other_c, units)
    if texts[0] != texts[1] or one_c == other_c:
        return texts
    if units is Units.US:
        return f"{one_c * 9 / 5 + 32:.1f} °F", f"{other_c * 9 / 5 + 32:.1f} °F"
    return f"{one_c:.1f} °C", f"{other_c:.1f} °C"


def length_text(length_cm: float, units: Units) -> str:
    """A length given in centimetres: "45 cm" or "18 in"."""
    return f"{length_cm / CM_PER_INCH:.0f} in" if units is Units.US else f"{length_cm:g} cm"


def two_lengths_text(one_cm: float, other_cm: float, units: Units) -> tuple[str, str]:
    """Two lengths that differ, as whole centimetres or inches if these differ, else as fine as it takes."""
    unit_cm, unit = (CM_PER_INCH, "in") if units is Units.US else (1.0, "cm")
    texts = [(f"{one_cm / unit_cm:,.{n}f} {unit}", f"{other_cm / unit_cm:,.{n}f} {unit}") for n in range(3)]
    return next((pair for pair in texts if pair[0] != pair[1]), texts[0 if one_cm == other_cm else -1])


def hours_text(hours: float) -> str:
    """ "1 hour", "22.5 hours": to a tenth, without a nought after the point."""
    text = f"{hours:,.1f}".removesuffix(".0")
    return f"{text} hour" if text == "1" else f"{text} hours"


def weekday_text(day: date) -> str:
    """ "Thursday". Not by strftime: a window sets the locale of the desktop, and the rest is not in its language."""
    return _WEEKDAYS[day.weekday()]


def short_weekday_text(day: date) -> str:
    """ "Thu", where a whole weekday is too wide."""
    return weekday_text(day)[:3]


def day_text(day: date, near: date | None = None) -> str:
    """ "22 Apr", with the year where it is not the year of ``near``."""
    year = "" if near is None or near.year == day.year else f" {day.year}"
    return f"{day.day} {_MONTHS[day.month - 1]}{year}"


def named_day_text(day: date, near: date | None = None) -> str:
    """ "Thu 22 Apr", with the year where it is not the year of ``near``."""
    return f"{short_weekday_text(day)} {day_text(day, near)}"


def span_text(first: date, last: date, near: date | None = None) -> str:
    """Two inclusive days as "22 – 30 Apr", "30 Apr – 2 May" or, if they are one, "22 Apr".

    Years are written where they differ from each other, or from the year of ``near``.
    """
    if first == last:
        return day_text(first, near)
    if (first.year, first.month) == (last.year, last.month):
        return f"{first.day} – {day_text(last, near)}"
    if first.year == last.year:
        return f"{day_text(first)} – {day_text(last, near)}"
    return f"{day_text(first)} {first.year} – {day_text(last)} {last.year}"


def count_text(number: int, one: str, many: str = "") -> str:
    """ "1 chick", "3 chicks"."""
    return f"{number:,} {one if number == 1 else many or one + 's'}"


def names_text(names: list[str]) -> str:
    """ "Ann", "Ann and Leo", "Ann, Leo and Mia"."""
    if len(names) < 2:
        return "".join(names)
    return f"{', '.join(names[:-1])} and {names[-1]}"
