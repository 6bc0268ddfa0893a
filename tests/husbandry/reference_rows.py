"""The reference table as it is written, all fields, by key."""

from __future__ import annotations

import csv

from quailsched.resources import resource


def reference_rows() -> dict[str, dict[str, str]]:
    with resource("husbandry", "reference.csv").open(encoding="utf-8", newline="") as lines:
        return {row["key"]: row for row in csv.DictReader(lines)}


ROWS = reference_rows()


def number(key: str, field: str = "typical") -> float:
    """A number of a row, in the row's own unit."""
    return float(ROWS[key][field])
