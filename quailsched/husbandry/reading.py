"""The handbook's csv files made into kinds. Everything that can be wrong in them is told here."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from types import MappingProxyType
from typing import TypeVar

from quailsched.husbandry.bounds import Label, order_faults, points_fault
from quailsched.husbandry.figure import Curve, Figure, Shape
from quailsched.husbandry.kind import Kind
from quailsched.husbandry.source import Source
from quailsched.husbandry.tables import Row, read_pairs, read_shape, read_sources, rows_of

_Item = TypeVar("_Item", Figure, Curve)


def read_handbook(folder: Path) -> Mapping[str, Kind]:
    """The kinds by id from the csv files of a folder. Raises ValueError naming file, row and field."""
    known = read_sources(folder / "reference.csv")
    words = read_labels(folder / "labels.csv")
    figures: dict[str, dict[str, Figure]] = {}
    curves: dict[str, dict[str, Curve]] = {}
    for row in rows_of(folder / "figures.csv", "kind key value low high unit references basis note"):
        _put(figures, row, _figure(row, _label(words, row, is_curve=False), known))
    for row in rows_of(folder / "curves.csv", "kind key shape unit points references basis note"):
        _put(curves, row, _curve(row, _label(words, row, is_curve=True), known))
    kinds: dict[str, Kind] = {}
    for row in rows_of(folder / "kinds.csv", "id name plural latin note"):
        kind = _kind(row, words, figures, curves)
        if kind.id in kinds:
            raise row.fault("id", "it stands in an earlier row too")
        kinds[kind.id] = kind
    for unknown in sorted((figures.keys() | curves.keys()) - kinds.keys()):
        raise ValueError(f"kinds.csv: it has no row for the kind “{unknown}” of the other files.")
    return MappingProxyType(kinds)


def read_labels(path: Path) -> dict[str, Label]:
    """The labels by key, in the order of the file."""
    words: dict[str, Label] = {}
    for row in rows_of(path, "key sort label least most"):
        if row.fields["sort"] not in ("figure", "curve"):
            raise row.fault("sort", "figure or curve is possible")
        key, is_curve = row.text("key"), row.fields["sort"] == "curve"
        words[key] = Label(key, is_curve, row.text("label"), row.number_of("least"), row.number_of("most"))
    return words


def _label(words: dict[str, Label], row: Row, *, is_curve: bool) -> Label:
    label = words.get(row.text("key"))
    if label is None or label.is_curve != is_curve:
        raise row.fault("key", f"labels.csv has no {'curve' if is_curve else 'figure'} of that name")
    return label


def _put(into: dict[str, dict[str, _Item]], row: Row, item: _Item) -> None:
    of_kind = into.setdefault(row.text("kind"), {})
    if item.key in of_kind:
        raise row.fault("key", "it stands in an earlier row too")
    of_kind[item.key] = item


def _figure(row: Row, label: Label, known: dict[str, Source]) -> Figure:
    value, low, high = (row.number_of(name) for name in ("value", "low", "high"))
    if not low <= value <= high:
        raise row.fault("value", f"it must lie from low ({low:g}) to high ({high:g})")
    if not label.allows(value):
        raise row.fault("value", f"{label.accepted} is possible")
    return Figure(
        row.fields["kind"], label.key, label.text, value, low, high, row.text("unit"),
        row.sources(known), row.basis(), row.fields["note"],
    )  # fmt: skip


def _curve(row: Row, label: Label, known: dict[str, Source]) -> Curve:
    shape = read_shape(row)
    points: tuple[tuple[float, float], ...] = ()
    parameters: tuple[tuple[str, float], ...] = ()
    if shape is Shape.GOMPERTZ:
        parameters = read_pairs(row, "=")
        if {name for name, _ in parameters} - {"until"} != {"A", "b", "k"}:
            raise row.fault("points", "A, b and k are needed, and until is possible")
    else:
        points = _points(row)
        if fault := points_fault(label, points, row.text("unit")):
            raise row.fault("points", fault.rstrip("."))
    return Curve(
        row.fields["kind"], label.key, label.text, shape, row.text("unit"), points, parameters,
        row.sources(known), row.basis(), row.fields["note"],
    )  # fmt: skip


def _points(row: Row) -> tuple[tuple[float, float], ...]:
    try:
        return tuple((float(age), value) for age, value in read_pairs(row, ":"))
    except ValueError as error:
        raise row.fault("points", "pairs of age and value like 0:35 are needed") from error


def _kind(
    row: Row,
    words: dict[str, Label],
    figures: dict[str, dict[str, Figure]],
    curves: dict[str, dict[str, Curve]],
) -> Kind:
    kind_id = row.text("id")
    has_figures, has_curves = figures.get(kind_id, {}), curves.get(kind_id, {})
    for label in words.values():
        if label.key not in (has_curves if label.is_curve else has_figures):
            file = "curves.csv" if label.is_curve else "figures.csv"
            raise ValueError(f"{file}: it has no row {label.key} for the kind “{kind_id}”.")
    for fault in order_faults(has_figures):
        raise ValueError(f"figures.csv, kind {kind_id}: {fault}")
    return Kind(
        kind_id,
        row.text("name"),
        row.text("plural"),
        MappingProxyType({key: has_figures[key] for key, label in words.items() if not label.is_curve}),
        MappingProxyType({key: has_curves[key] for key, label in words.items() if label.is_curve}),
        row.text("latin"),
        row.fields["note"],
    )
