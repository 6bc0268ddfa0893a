"""The kinds with their figures, read once from the files that the program brings; and a farm's own values."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from functools import cache
from types import MappingProxyType

from quailsched.husbandry.bounds import Label, points_fault
from quailsched.husbandry.figure import Curve, Figure, Shape
from quailsched.husbandry.kind import Kind
from quailsched.husbandry.reading import Handbook, read_labels
from quailsched.husbandry.source import Source
from quailsched.resources import resource
from quailsched.words import say, value_text

Points = tuple[tuple[float, float], ...]
Choice = tuple[str, float | None, Points]

# Figures of earlier handbooks, on which no rule ever counted: a farm that replaced one still opens, and nothing
# follows from it. feeder_cm was one edge for all ages; feeder_edge_cm has the published edges by age.
GONE_KEYS = frozenset({"feeder_cm"})


@cache
def handbook() -> Handbook:
    """Every kind by id. Raises ValueError naming file, row and field if a file is broken."""
    return Handbook(resource("husbandry"))


def sources() -> Mapping[str, Source]:
    """Every row of the reference table that the program brings, by key."""
    return handbook().sources


@cache
def labels() -> Mapping[str, Label]:
    """The words and sane bounds of every figure and curve by key, in the order of listings."""
    return MappingProxyType(read_labels(resource("husbandry", "labels.csv")))


def kind_with(kind: Kind, choices: tuple[Choice, ...]) -> Kind:
    """A kind with a farm's own values: (key, value, ()) for a figure, (key, None, points) for a curve.

    Replaced ones are marked ``is_replaced``. Raises ValueError with a sentence for a key that the kind
    lacks, one that is given twice, or a value that makes no sense; keys that have gone (``GONE_KEYS``) are passed
    over. Days of a hatch that contradict each other are not looked for here (``bounds.order_faults``): a choice
    alone may, and not all together.
    """
    figures, curves = dict(kind.figures), dict(kind.curves)
    seen: set[str] = set()
    for key, value, points in choices:
        if key in seen:
            raise ValueError(say("{kind}: “{key}” is replaced twice; once is possible.", kind=say(kind.name), key=key))
        seen.add(key)
        if key in GONE_KEYS:
            continue
        if key in figures:
            figures[key] = _own_figure(figures[key], value, points)
        elif key in curves:
            curves[key] = _own_curve(curves[key], value, points)
        else:
            fault = say(
                "{kind}: it has no figure or curve “{key}” that could be replaced.", kind=say(kind.name), key=key
            )
            raise ValueError(fault)
    return replace(kind, figures=MappingProxyType(figures), curves=MappingProxyType(curves))


def _own_figure(figure: Figure, value: float | None, points: Points) -> Figure:
    """The range is widened where needed, so that ``low <= value <= high`` holds for these too."""
    label = labels()[figure.key]
    told = {"figure": say(figure.label), "accepted": label.accepted, "unit": say(figure.unit)}
    if value is None or points:
        raise ValueError(say("{figure}: one value is needed, {accepted} {unit}, not points.", **told))
    if not label.allows(value):
        given = value_text(value)
        raise ValueError(say("{figure}: {value} cannot be used; {accepted} {unit} is possible.", value=given, **told))
    low, high = min(figure.low, value), max(figure.high, value)
    return replace(figure, value=float(value), low=low, high=high, is_replaced=True)


def _own_curve(curve: Curve, value: float | None, points: Points) -> Curve:
    """Steps stay steps; all other curves become straight lines between the farm's points."""
    if value is not None:
        raise ValueError(
            say(
                "{curve}: points of age and value are needed, not one value ({value}).",
                curve=say(curve.label),
                value=value_text(value),
            )
        )
    if fault := points_fault(labels()[curve.key], points, curve.unit):
        raise ValueError(fault)
    shape = Shape.STEP if curve.shape is Shape.STEP else Shape.LINEAR
    own = tuple((float(age), float(amount)) for age, amount in points)
    return replace(curve, shape=shape, points=own, parameters=(), is_replaced=True)
