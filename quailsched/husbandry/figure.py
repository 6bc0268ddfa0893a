"""One value of husbandry, or one curve over age, with where it comes from."""

from __future__ import annotations

from bisect import bisect_right
from enum import StrEnum
from math import exp, inf

from quailsched.husbandry.source import Cited, Confidence, Source, joined_text, weakest
from quailsched.quick import dataclass
from quailsched.words import marked, say

OWN_TEXT = marked("this farm's own")
# Units and shapes that are words: to be said where they are shown.
UNIT_WORDS = (marked("days"), marked("hours"), marked("count"))
SHAPE_WORDS = (marked("linear"), marked("step"), marked("gompertz"))


class Shape(StrEnum):
    """How a curve runs between its points."""

    LINEAR = "linear"  # straight lines from point to point
    STEP = "step"  # a point's value holds until the next point
    GOMPERTZ = "gompertz"  # A exp(-b exp(-k t)), the growth model of body weight


class _Sourced:
    """What figures and curves tell of where they come from."""

    __slots__ = ()
    cited: Cited
    basis: str
    is_replaced: bool

    @property
    def sources(self) -> tuple[Source, ...]:
        return self.cited.sources

    @property
    def confidence(self) -> Confidence:
        return Confidence.OWN if self.is_replaced else weakest(self.sources, self.basis)

    @property
    def source_text(self) -> str:
        return say(OWN_TEXT) if self.is_replaced else joined_text(self.sources, self.basis)


@dataclass(frozen=True, slots=True)
class Figure(_Sourced):
    """One value with the range of its sources, in ``unit`` (days, degC, cm2, cm, g, %, hours, count).

    ``basis`` is "" where the sources say it as it stands, else how it was come by. A farm's own value
    (``is_replaced``) keeps the range and sources of the value that it stands for, to be shown beside it.
    """

    kind: str
    key: str
    label: str
    value: float
    low: float
    high: float
    unit: str
    cited: Cited
    basis: str
    note: str
    is_replaced: bool = False


@dataclass(frozen=True, slots=True)
class Curve(_Sourced):
    """A value by age in days since hatch: through ``points`` (age, value), or a gompertz by ``parameters``.

    Parameters are A (in ``unit``), b (no unit), k (1/day) and optionally ``until``, the last age of the data.
    """

    kind: str
    key: str
    label: str
    shape: Shape
    unit: str
    points: tuple[tuple[float, float], ...]
    parameters: tuple[tuple[str, float], ...]
    cited: Cited
    basis: str
    note: str
    is_replaced: bool = False

    def at(self, age_days: float) -> float:
        """The value at an age. Before the first and after the last point it is held constant."""
        if self.shape is Shape.GOMPERTZ:
            return _gompertz(dict(self.parameters), age_days)
        after = bisect_right(self.points, age_days, key=lambda point: point[0])
        if after == 0:
            return self.points[0][1]
        age, value = self.points[after - 1]
        if self.shape is Shape.STEP or after == len(self.points):
            return value
        next_age, next_value = self.points[after]
        return value + (next_value - value) * (age_days - age) / (next_age - age)


def _gompertz(parameters: dict[str, float], age_days: float) -> float:
    age = min(max(age_days, 0.0), parameters.get("until", inf))
    return parameters["A"] * exp(-parameters["b"] * exp(-parameters["k"] * age))
