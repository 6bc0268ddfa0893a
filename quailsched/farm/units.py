"""Quantities in words. Inside everything is SI; here it becomes what the keeper chose to read."""

from __future__ import annotations

from datetime import date

from quailsched.farm.records import Units
from quailsched.words import day_and_month, marked, number_text, say, value_text

CM2_PER_SQ_FT = 929.0304  # (30.48 cm)^2: the international foot is 0.3048 m exactly (NIST SP 811)
CM_PER_INCH = 2.54
WEEKDAYS = (
    *(marked("Monday"), marked("Tuesday"), marked("Wednesday"), marked("Thursday")),
    *(marked("Friday"), marked("Saturday"), marked("Sunday")),
)
SHORT_WEEKDAYS = (
    *(marked("Mon"), marked("Tue"), marked("Wed"), marked("Thu")),
    *(marked("Fri"), marked("Sat"), marked("Sun")),
)
MONTHS = (
    *(marked("Jan"), marked("Feb"), marked("Mar"), marked("Apr"), marked("May"), marked("Jun")),
    *(marked("Jul"), marked("Aug"), marked("Sep"), marked("Oct"), marked("Nov"), marked("Dec")),
)


def area_text(area_cm2: float, units: Units, of_cm2: float = 0) -> str:
    """An area given in square centimetres: "1.30 m²", "310 cm²" or "14.0 sq ft".

    A part of a larger area ``of_cm2`` takes the unit of that, so that the two can be compared.
    """
    if units is Units.US:
        return f"{number_text(area_cm2 / CM2_PER_SQ_FT, 1)} {say('sq ft')}"
    if max(area_cm2, of_cm2) >= 5_000:
        return f"{number_text(area_cm2 / 10_000, 2)} m²"
    return f"{number_text(area_cm2)} cm²"


def two_areas_text(one_cm2: float, other_cm2: float, units: Units) -> tuple[str, str]:
    """Two areas that differ, in words that differ too: as fine as that takes."""
    texts = area_text(one_cm2, units), area_text(other_cm2, units)
    if texts[0] != texts[1] or one_cm2 == other_cm2:
        return texts
    if units is Units.US:
        one, other = (f"{number_text(area / CM2_PER_SQ_FT, 2)} {say('sq ft')}" for area in (one_cm2, other_cm2))
        return one, other
    return f"{number_text(one_cm2)} cm²", f"{number_text(other_cm2)} cm²"


def warmth_text(warmth_c: float, units: Units) -> str:
    """A temperature given in degrees Celsius: "4 °C" or "39 °F", a half kept in Celsius."""
    if units is Units.US:
        return f"{number_text(warmth_c * 9 / 5 + 32)} °F"
    return f"{value_text(round(warmth_c * 2) / 2)} °C"


def warmth_step_text(step_c: float, units: Units) -> str:
    """By how much two temperatures differ, given in degrees Celsius: "3 °C" or "5.4 °F", never told as none."""
    step, unit = (step_c * 9 / 5, "°F") if units is Units.US else (step_c, "°C")
    return f"{value_text(max(round(step, 1), 0.1))} {unit}"


def two_warmths_text(one_c: float, other_c: float, units: Units) -> tuple[str, str]:
    """Two temperatures that differ, in words that differ too: as fine as that takes."""
    texts = warmth_text(one_c, units), warmth_text(other_c, units)
    if texts[0] != texts[1] or one_c == other_c:
        return texts
    if units is Units.US:
        return f"{number_text(one_c * 9 / 5 + 32, 1)} °F", f"{number_text(other_c * 9 / 5 + 32, 1)} °F"
    return f"{number_text(one_c, 1)} °C", f"{number_text(other_c, 1)} °C"


def length_text(length_cm: float, units: Units) -> str:
    """A length given in centimetres: "45 cm" or "18 in"."""
    return f"{number_text(length_cm / CM_PER_INCH)} {say('in')}" if units is Units.US else f"{value_text(length_cm)} cm"


def two_lengths_text(one_cm: float, other_cm: float, units: Units) -> tuple[str, str]:
    """Two lengths that differ, as whole centimetres or inches if these differ, else as fine as it takes."""
    unit_cm, unit = (CM_PER_INCH, say("in")) if units is Units.US else (1.0, "cm")
    lengths = one_cm / unit_cm, other_cm / unit_cm
    texts = [(f"{number_text(lengths[0], n)} {unit}", f"{number_text(lengths[1], n)} {unit}") for n in range(3)]
    return next((pair for pair in texts if pair[0] != pair[1]), texts[0 if one_cm == other_cm else -1])


def hours_text(hours: float) -> str:
    """ "1 hour", "22.5 hours": to a tenth, without a nought after the point."""
    text = number_text(hours, 0 if round(hours, 1) == round(hours) else 1)
    return say("{hours} hour", hours=text) if text == "1" else say("{hours} hours", hours=text)


def weekday_text(day: date) -> str:
    """ "Thursday". Not by strftime: a window sets the locale of the desktop, and the rest is not in its language."""
    return say(WEEKDAYS[day.weekday()])


def short_weekday_text(day: date) -> str:
    """ "Thu", where a whole weekday is too wide."""
    return say(SHORT_WEEKDAYS[day.weekday()])


def day_text(day: date, near: date | None = None) -> str:
    """ "22 Apr", with the year where it is not the year of ``near``."""
    year = "" if near is None or near.year == day.year else f" {day.year}"
    return f"{day_and_month(day.day, say(MONTHS[day.month - 1]))}{year}"


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
        return _in_one_month(first, last, near)
    if first.year == last.year:
        return f"{day_text(first)} – {day_text(last, near)}"
    return f"{day_text(first)} {first.year} – {day_text(last)} {last.year}"


def _in_one_month(first: date, last: date, near: date | None) -> str:
    """ "22 – 30 Apr", or "Apr 22 – 30" where the month comes first."""
    whole, day = day_text(last, near), str(last.day)
    if whole.startswith(day):
        dot = "." if whole.startswith(f"{day}.") else ""
        return f"{first.day}{dot} – {whole}"
    return f"{day_text(first)} – {whole[whole.index(day) :]}"


def count_text(number: int, one: str, many: str = "") -> str:
    """ "1 chick", "3 chicks"."""
    return f"{number_text(number)} {say(one if number == 1 else many or one + 's')}"


def names_text(names: list[str]) -> str:
    """ "Ann", "Ann and Leo", "Ann, Leo and Mia"."""
    if len(names) < 2:
        return "".join(names)
    return say("{names} and {last}", names=", ".join(names[:-1]), last=names[-1])
