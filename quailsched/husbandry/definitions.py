"""What the measures of the trade mean: name, formula, convention, source. The sums themselves are in ``measures``."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from types import MappingProxyType

from quailsched.husbandry.source import Source, joined_text
from quailsched.husbandry.tables import read_sources, rows_of
from quailsched.resources import resource
from quailsched.words import say


@dataclass(frozen=True, slots=True)
class Definition:
    """One measure. ``formula`` and ``note`` (which conventions hold) are English, to be said where they are shown."""

    key: str
    name: str
    unit: str
    formula: str
    note: str
    sources: tuple[Source, ...]
    basis: str

    @property
    def source_text(self) -> str:
        return joined_text(self.sources, self.basis)

    @property
    def help_text(self) -> str:
        """Formula, conventions and source, for a tip."""
        told = {"name": say(self.name), "formula": say(self.formula), "note": say(self.note)}
        return say("{name} = {formula}\n{note}\nSource: {source}", **told, source=self.source_text)


@cache
def definitions() -> Mapping[str, Definition]:
    """Every measure by key, in the order of tables. Raises ValueError naming file, row and field of a broken file."""
    return read_definitions(resource("husbandry"))


def read_definitions(folder: Path) -> Mapping[str, Definition]:
    """The measures by key from ``measures.csv`` and ``reference.csv`` of a folder."""
    known = read_sources(folder / "reference.csv")
    found: dict[str, Definition] = {}
    for row in rows_of(folder / "measures.csv", "key name unit formula references basis note"):
        key = row.text("key")
        if key in found:
            raise row.fault("key", "it stands in an earlier row too")
        told = (row.text("name"), row.text("unit"), row.text("formula"), row.text("note"))
        found[key] = Definition(key, *told, row.sources(known), row.basis())
    return MappingProxyType(found)
