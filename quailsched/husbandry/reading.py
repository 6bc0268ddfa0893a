"""The handbook's csv files made into kinds. Everything that can be wrong in them is told here."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from functools import cached_property
from itertools import chain
from pathlib import Path
from types import MappingProxyType
from typing import TypeVar

from quailsched.husbandry.bounds import Label, order_faults, points_fault
from quailsched.husbandry.figure import Curve, Figure, Shape
from quailsched.husbandry.kind import Kind
from quailsched.husbandry.source import Cited, Source
from quailsched.husbandry.tables import Row, read_pairs, read_shape, read_sources, rows_of

_FIGURE_FIELDS = "kind key value low high unit references basis note"
_CURVE_FIELDS = "kind key shape unit points references basis note"
_KIND_FIELDS = "id name plural latin note"
_Item = TypeVar("_Item", Figure, Curve)


def read_handbook(folder: Path) -> Handbook:
    """The kinds by id from the csv files of a folder. Raises ValueError naming file, row and field."""
    read = Handbook(folder)
    read.require_whole()
    return read


class Handbook(Mapping[str, Kind]):
    """The kinds by id. Each is made when it is first asked for: a farm has one or two of them, and looks at no source.

    Raises ValueError naming file, row and field, where it comes upon a fault; ``require_whole`` looks through all.
    """

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        self._words = read_labels(folder / "labels.csv")
        self._figures = _by_kind(rows_of(folder / "figures.csv", _FIGURE_FIELDS))
        self._curves = _by_kind(rows_of(folder / "curves.csv", _CURVE_FIELDS))
        self._kinds: dict[str, Row] = {}
        self._made: dict[str, Kind] = {}
        for row in rows_of(folder / "kinds.csv", _KIND_FIELDS):
            if row.text("id") in self._kinds:
                raise row.fault("id", "it stands in an earlier row too")
            self._kinds[row.text("id")] = row

    def __getitem__(self, kind_id: str) -> Kind:
        if kind_id not in self._made:
            self._made[kind_id] = self._make(self._kinds[kind_id])
        return self._made[kind_id]

    def __contains__(self, kind_id: object) -> bool:
        return kind_id in self._kinds

    def __iter__(self) -> Iterator[str]:
        return iter(self._kinds)

    def __len__(self) -> int:
        return len(self._kinds)

    @cached_property
    def sources(self) -> Mapping[str, Source]:
        """Every row of the reference table by key."""
        return MappingProxyType(read_sources(self._folder / "reference.csv"))

    def require_whole(self) -> None:
        """Raise ValueError for the first thing that is wrong in any of the files."""
        for row in chain(*self._figures.values(), *self._curves.values()):
            row.sources(self.sources)
        for kind_id in self:
            self[kind_id]
        for unknown in sorted((self._figures.keys() | self._curves.keys()) - self._kinds.keys()):
            raise ValueError(f"kinds.csv: it has no row for the kind “{unknown}” of the other files.")

    def _known(self) -> Mapping[str, Source]:
        return self.sources

    def _make(self, row: Row) -> Kind:
        figures: dict[str, Figure] = {}
        curves: dict[str, Curve] = {}
        for one in self._figures.get(row.text("id"), ()):
            _put(figures, one, _figure(one, _label(self._words, one, is_curve=False), one.cited(self._known)))
        for one in self._curves.get(row.text("id"), ()):
            _put(curves, one, _curve(one, _label(self._words, one, is_curve=True), one.cited(self._known)))
        return _kind(row, self._words, figures, curves)


def _by_kind(rows: Iterable[Row]) -> dict[str, list[Row]]:
    found: dict[str, list[Row]] = {}
    for row in rows:
        found.setdefault(row.text("kind"), []).append(row)
    return found


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


def _put(into: dict[str, _Item], row: Row, item: _Item) -> None:
    if item.key in into:
        raise row.fault("key", "it stands in an earlier row too")
    into[item.key] = item


def _figure(row: Row, label: Label, cited: Cited) -> Figure:
    value, low, high = (row.number_of(name) for name in ("value", "low", "high"))
    if not low <= value <= high:
        raise row.fault("value", f"it must lie from low ({low:g}) to high ({high:g})")
    if not label.allows(value):
        raise row.fault("value", f"{label.accepted} is possible")
    return Figure(
        row.fields["kind"], label.key, label.text, value, low, high, row.text("unit"),
        cited, row.basis(), row.fields["note"],
    )  # fmt: skip


def _curve(row: Row, label: Label, cited: Cited) -> Curve:
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
        cited, row.basis(), row.fields["note"],
    )  # fmt: skip


def _points(row: Row) -> tuple[tuple[float, float], ...]:
    try:
        return tuple((float(age), value) for age, value in read_pairs(row, ":"))
    except ValueError as error:
        raise row.fault("points", "pairs of age and value like 0:35 are needed") from error


def _kind(row: Row, words: dict[str, Label], has_figures: dict[str, Figure], has_curves: dict[str, Curve]) -> Kind:
    kind_id = row.text("id")
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
