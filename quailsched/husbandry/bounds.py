"""What a figure or a curve may sensibly be, whether it is ours or a farm's own."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from itertools import pairwise
from math import isfinite

from quailsched.husbandry.figure import Figure


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
        return f"from {self.least:g} to {self.most:g}"

    def allows(self, value: float) -> bool:
        return isfinite(value) and self.least <= value <= self.most


# Days that have to follow each other for eggs to be candled, locked down and hatched at all.
_IN_ORDER = ("candle_day", "candle_again_day", "lockdown_day", "incubation_days")


def points_fault(label: Label, points: tuple[tuple[float, float], ...], unit: str) -> str:
    """A sentence unless ages rise from 0 days up and values are sane; "" if all is well."""
    if not points:
        return f"{label.text}: a curve needs points, each an age in days and a value in {unit}."
    for age, value in points:
        if not (isfinite(age) and age >= 0):
            return f"{label.text}: age {age:g} cannot be used; an age from 0 days up is needed."
        if not label.allows(value):
            where = f"{label.text}, at {age:g} days"
            return f"{where}: {value:g} cannot be used; {label.accepted} {unit} is possible."
    for (age, _), (later, _) in pairwise(points):
        if later <= age:
            return f"{label.text}: age {later:g} comes after {age:g}; ages must rise."
    if label.key == "alive":
        for (_, more), (age, fewer) in pairwise(points):
            if fewer > more:
                return f"{label.text}: {fewer:g} at {age:g} days is more than before; birds do not come back to life."
    return ""


def order_faults(figures: Mapping[str, Figure]) -> Iterator[str]:
    """A sentence for each two days of a hatch that do not follow each other."""
    for first, second in pairwise(_IN_ORDER):
        earlier, later = figures[first], figures[second]
        is_last = second == "incubation_days"
        if earlier.value > later.value or (is_last and earlier.value == later.value):
            accepted = f"at most {later.value:g}" if not is_last else f"less than {later.value:g}"
            reason = f"{accepted} is possible ({later.label})"
            yield f"{earlier.label}: {earlier.value:g} cannot be used; {reason}."
