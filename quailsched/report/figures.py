"""Figures and curves with their sources, as text for people and as JSON for machines."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import asdict
from dataclasses import fields as dataclass_fields
from textwrap import wrap
from typing import Any

from quailsched.husbandry.figure import Curve, Figure, Shape
from quailsched.husbandry.handbook import handbook
from quailsched.husbandry.kind import Kind

_UNITS = {"degC": "°C", "cm2": "cm²", "count": "", "fraction": "of 1"}


def figures_text(kinds: Sequence[Kind], width: int = 100) -> str:
    """A listing of every figure and curve, no line longer than ``width`` (at least 40) where words allow."""
    lines: list[str] = []
    for kind in kinds:
        lines += [f"{kind.name} ({kind.latin})", *_wrapped(kind.note, width, 2), ""]
        for figure in kind.figures.values():
            lines += _figure_lines(figure, width)
        lines.append("")
        for curve in kind.curves.values():
            lines += _curve_lines(curve, width)
        lines.append("")
    return "\n".join(lines).rstrip("\n") + "\n"


def figures_json(kinds: Sequence[Kind]) -> dict[str, Any]:
    """The same with all fields, for ``json.dumps``; ages in days, units spelt as in the data."""
    return {"kinds": [_kind_json(kind) for kind in kinds]}


def value_text(figure: Figure) -> str:
    """A figure as people read it, "17 days (16 to 18)"; the range only where there is one."""
    text = _amount(figure)
    return text if figure.low == figure.high else f"{text} ({figure.low:g} to {figure.high:g})"


def _amount(figure: Figure) -> str:
    unit = figure.unit.removesuffix("s") if figure.value == 1 else figure.unit
    return f"{figure.value:g} {unit_text(unit)}".rstrip()


def unit_text(unit: str) -> str:
    """A unit of the handbook as people write it; "" where a number needs none."""
    return _UNITS.get(unit, unit)


def _wrapped(text: str, width: int, indent: int) -> list[str]:
    return wrap(text, max(width, 40), initial_indent=" " * indent, subsequent_indent=" " * indent)


def _figure_lines(figure: Figure, width: int) -> Iterator[str]:
    if figure.is_replaced:
        ours = handbook()[figure.kind].figures[figure.key]
        yield from _wrapped(f"* {figure.label}: {_amount(figure)}, {figure.source_text}", width, 2)
        yield from _wrapped(f"in place of {value_text(ours)}. {_from(ours)}", width, 6)
        return
    yield from _wrapped(f"{figure.label}: {value_text(figure)}", width, 2)
    yield from _wrapped(_from(figure), width, 6)
    yield from _wrapped(figure.note, width, 6)


def _curve_lines(curve: Curve, width: int) -> Iterator[str]:
    if curve.is_replaced:
        ours = handbook()[curve.kind].curves[curve.key]
        yield from _wrapped(f"* {curve.label}: {_course(curve)}, {curve.source_text}", width, 2)
        yield from _wrapped(f"in place of {_course(ours)}. {_from(ours)}", width, 6)
        return
    yield from _wrapped(f"{curve.label}: {_course(curve)}", width, 2)
    yield from _wrapped(_from(curve), width, 6)
    yield from _wrapped(curve.note, width, 6)


def _from(item: Figure | Curve) -> str:
    """Confidence and sources, the confidence not said twice."""
    confidence, text = item.confidence.value, item.source_text
    said = text == confidence or text.startswith(f"{confidence} (")
    return f"[{confidence}]" if said else f"[{confidence}] {text}"


def _course(curve: Curve) -> str:
    """The points in words, or the formula."""
    if curve.shape is Shape.GOMPERTZ:
        given = ", ".join(f"{name} = {value:g}" for name, value in curve.parameters)
        return f"W = A exp(-b exp(-k t)) in {unit_text(curve.unit)} at t days, {given}"
    how = "in steps" if curve.shape is Shape.STEP else "straight lines between"
    points = ", ".join(f"{value:g} at {age:g} d" for age, value in curve.points)
    return f"{points} ({unit_text(curve.unit)}, {how})"


def _kind_json(kind: Kind) -> dict[str, Any]:
    return {
        "id": kind.id,
        "name": kind.name,
        "plural": kind.plural,
        "latin": kind.latin,
        "note": kind.note,
        "figures": [_item_json(figure) for figure in kind.figures.values()],
        "curves": [_curve_json(curve) for curve in kind.curves.values()],
    }


def _item_json(item: Figure | Curve) -> dict[str, Any]:
    fields: dict[str, Any] = {}
    for field in dataclass_fields(item):
        if field.name == "cited":
            fields["sources"] = [asdict(source) for source in item.sources]
        else:
            fields[field.name] = getattr(item, field.name)
    fields["confidence"] = item.confidence
    fields["source_text"] = item.source_text
    return fields


def _curve_json(curve: Curve) -> dict[str, Any]:
    fields = _item_json(curve)
    fields["points"] = [list(point) for point in curve.points]
    fields["parameters"] = dict(curve.parameters)
    return fields
