"""What benches tell, and the one table that it is printed in."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass

_HEADS = ("name", "measured", "floor", "ratio", "goal", "holds")


@dataclass(frozen=True, slots=True)
class Row:
    """One line. ``holds`` is None where there is no goal; it is decided by the ratio, never by the clock alone."""

    name: str
    measured: str
    floor: str = ""
    ratio: str = ""
    goal: str = ""
    holds: bool | None = None

    def cells(self) -> tuple[str, ...]:
        verdict = {True: "holds", False: "DOES NOT HOLD", None: ""}[self.holds]
        return self.name, self.measured, self.floor, self.ratio, self.goal, verdict


Bench = Callable[[], Iterable[Row]]


def table_of(rows: Sequence[Row]) -> str:
    """The rows in columns, words to the left and numbers to the right."""
    lines = [_HEADS, *(row.cells() for row in rows)]
    widths = [max(map(len, column)) for column in zip(*lines, strict=True)]
    texts = []
    for name, measured, floor, ratio, goal, verdict in lines:
        numbers = [measured.rjust(widths[1]), floor.rjust(widths[2]), ratio.rjust(widths[3])]
        texts.append("  ".join([name.ljust(widths[0]), *numbers, goal.ljust(widths[4]), verdict]).rstrip())
    texts.insert(1, "-" * max(map(len, texts)))
    return "\n".join(texts)


def run(benches: Mapping[str, Bench], names: Sequence[str], say: Callable[[str], None]) -> int:
    """Run the benches of ``names`` (all if there are none) and say their table; 1 if one of them does not hold.

    An unknown name runs nothing, says which there are, and gives 2.
    """
    unknown = [name for name in names if name not in benches]
    if unknown:
        say(f"{', '.join(unknown)}: no such bench; there are {', '.join(benches)}.")
        return 2
    rows = [row for name in names or benches for row in benches[name]()]
    say(table_of(rows))
    return 1 if any(row.holds is False for row in rows) else 0
