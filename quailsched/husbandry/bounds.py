"""What a figure or a curve may sensibly be, whether it is ours or a farm's own."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import pairwise
from math import isfinite

from quailsched.husbandry.figure import Figure
from quailsched.quick import dataclass
from quailsched.words import say, value_text


@dataclass(frozen=True, slots=True)
class Label:
    """The words for a figure or curve, and the least and most that it may be, in its unit."""

    key: str
    is_curve: bool
    text: str
    least: float
    most: float

    @property
    def accepted(self) -> str:
        return say("from {least} to {most}", least=value_text(self.least), most=value_text(self.most))

    def allows(self, value: float) -> bool:
        return isfinite(value) and self.least <= value <= self.most


# Days that have to follow each other for eggs to be candled, locked down and hatched at all.
_IN_ORDER = ("candle_day", "candle_again_day", "lockdown_day", "incubation_days")


def points_fault(label: Label, points: tuple[tuple[float, float], ...], unit: str) -> str:
    """A sentence unless ages rise from 0 days up and values are sane; "" if all is well."""
    curve = say(label.text)
    if not points:
        return say(
            "{curve}: a curve needs points, each an age in days and a value in {unit}.", curve=curve, unit=say(unit)
        )
    for age, value in points:
        if not (isfinite(age) and age >= 0):
            return say(
                "{curve}: age {age} cannot be used; an age from 0 days up is needed.", curve=curve, age=value_text(age)
            )
        if not label.allows(value):
            return say(
                "{curve}, at {age} days: {value} cannot be used; {accepted} {unit} is possible.",
                curve=curve,
                age=value_text(age),
                value=value_text(value),
                accepted=label.accepted,
                unit=say(unit),
            )
    return _order_fault(label, points)


def _order_fault(label: Label, points: tuple[tuple[float, float], ...]) -> str:
    curve = say(label.text)
    for (age, _), (later, _) in pairwise(points):
        if later <= age:
            return say(
                "{curve}: age {later} comes after {age}; ages must rise.",
                curve=curve,
                later=value_text(later),
                age=value_text(age),
            )
    if label.key == "alive":
        for (_, more), (age, fewer) in pairwise(points):
            if fewer > more:
                return say(
                    "{curve}: {value} at {age} days is more than before; birds do not come back to life.",
                    curve=curve,
                    value=value_text(fewer),
                    age=value_text(age),
                )
    return ""


def order_faults(figures: Mapping[str, Figure]) -> Iterator[str]:
    """A sentence for each two days of a hatch that do not follow each other."""
    for first, second in pairwise(_IN_ORDER):
        earlier, later = figures[first], figures[second]
        is_last = second == "incubation_days"
        if earlier.value > later.value or (is_last and earlier.value == later.value):
            yield say(
                "{figure}: {value} cannot be used; less than {most} is possible ({later})."
                if is_last
                else "{figure}: {value} cannot be used; at most {most} is possible ({later}).",
                figure=say(earlier.label),
                value=value_text(earlier.value),
                most=value_text(later.value),
                later=say(later.label),
            )
