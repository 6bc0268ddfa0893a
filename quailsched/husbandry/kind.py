"""A species and strain with all its figures and curves."""

from __future__ import annotations

from collections.abc import Mapping
from math import floor

from quailsched.husbandry.figure import Curve, Figure
from quailsched.quick import dataclass


@dataclass(frozen=True, slots=True, eq=False)
class Kind:
    """Complete: every figure and curve that the program asks for is there.

    Compared and hashed by identity, so that it can be the key of a cache: ``handbook()`` gives the same
    objects each time.
    """

    id: str
    name: str
    plural: str
    figures: Mapping[str, Figure]
    curves: Mapping[str, Curve]
    latin: str = ""
    note: str = ""

    def value(self, key: str) -> float:
        """A figure in its unit. Raises KeyError for a key that no kind has."""
        return self.figures[key].value

    def days(self, key: str) -> int:
        """A figure in whole days, halves rounded up. Raises KeyError for a key that no kind has."""
        return floor(self.figures[key].value + 0.5)

    def at(self, curve_key: str, age_days: float) -> float:
        """A curve at an age in days since hatch. Raises KeyError for a key that no kind has."""
        return self.curves[curve_key].at(age_days)
