"""Reading the csv files of the handbook: rows and fields, told by file, row and field when broken."""

from __future__ import annotations

import csv
from collections.abc import Callable, Iterator, Mapping
from math import isfinite
from pathlib import Path

from quailsched.husbandry.figure import Shape
from quailsched.husbandry.source import Cited, Confidence, Source
from quailsched.quick import dataclass


@dataclass(frozen=True, slots=True)
class Row:
    """One row of a file; ``number`` is its line, the heading being line 1."""

    file: str
    number: int
    fields: dict[str, str]

    def fault(self, field: str, accepted: str) -> ValueError:
        value = self.fields.get(field, "")
        return ValueError(f"{self.file}, row {self.number}, {field}: “{value}” cannot be used; {accepted}.")

    def text(self, field: str) -> str:
        """A field that may not be empty."""
        if not self.fields[field]:
            raise self.fault(field, "something must stand here")
        return self.fields[field]

    def number_of(self, field: str) -> float:
        try:
            value = float(self.fields[field])
        except ValueError:
            raise self.fault(field, "a number is needed") from None
        if not isfinite(value):
            raise self.fault(field, "a finite number is needed")
        return value

    def basis(self) -> str:
        """How the value was come by. Without a reference it has to say so."""
        basis = self.fields["basis"]
        if basis and basis not in _BASES:
            raise self.fault("basis", "nothing or one of " + ", ".join(_BASES) + " is possible")
        if not basis and not self.fields["references"]:
            raise self.fault("basis", "without a reference it has to say common practice or from memory")
        return basis

    def sources(self, known: Mapping[str, Source]) -> tuple[Source, ...]:
        keys = self.fields["references"].split()
        for key in keys:
            if key not in known:
                raise self.fault("references", f"reference.csv has no row {key}")
        return tuple(known[key] for key in keys)

    def cited(self, known: Callable[[], Mapping[str, Source]]) -> Cited:
        return Cited(tuple(self.fields["references"].split()), known)


_BASES = tuple(one.value for one in Confidence if one not in (Confidence.PUBLISHED, Confidence.OWN))


def rows_of(path: Path, fields: str) -> Iterator[Row]:
    """The rows of a file with exactly these space-separated headings. Raises ValueError if it is broken."""
    try:
        with path.open(encoding="utf-8", newline="") as lines:
            reader, names = csv.reader(lines, strict=True), fields.split()
            if next(reader, None) != names:
                raise ValueError(f"{path.name}, row 1: the headings must be {', '.join(names)}.")
            for values in reader:
                if not values:  # a line with nothing in it
                    continue
                if len(values) != len(names):
                    raise ValueError(f"{path.name}, row {reader.line_num}: {len(names)} fields are needed.")
                yield Row(path.name, reader.line_num, dict(zip(names, values, strict=True)))
    except (UnicodeDecodeError, csv.Error) as error:
        raise ValueError(f"{path.name}: not a readable csv file in UTF-8 ({error}).") from error


REFERENCE_FIELDS = "key species stage quantity low typical high unit source year locator url confidence notes"


def read_sources(path: Path) -> dict[str, Source]:
    """The reference table by key."""
    sources: dict[str, Source] = {}
    for row in rows_of(path, REFERENCE_FIELDS):
        key, values = row.text("key"), row.fields
        if key in sources:
            raise row.fault("key", "it stands in an earlier row too")
        try:
            confidence = Confidence(values["confidence"])
        except ValueError:
            raise row.fault("confidence", "one of " + ", ".join(Confidence) + " is possible") from None
        place = (values["year"], values["locator"], values["url"])
        sources[key] = Source(key, row.text("source"), *place, confidence, values["notes"])
    return sources


def read_shape(row: Row) -> Shape:
    try:
        return Shape(row.fields["shape"])
    except ValueError:
        raise row.fault("shape", "linear, step or gompertz is possible") from None


def read_pairs(row: Row, sign: str) -> tuple[tuple[str, float], ...]:
    """The field "points" as pairs: "0:35 7:31.5" with sign ":", "A=242.1 b=3.3" with sign "="."""
    pairs = []
    for word in row.text("points").split():
        name, _, number = word.partition(sign)
        try:
            pairs.append((name, float(number)))
        except ValueError:
            raise row.fault("points", f"pairs like 1{sign}2.5 are needed, not “{word}”") from None
    if not all(isfinite(value) for _, value in pairs):
        raise row.fault("points", "finite numbers are needed")
    return tuple(pairs)
