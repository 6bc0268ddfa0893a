"""The page of definitions, ``resources/MEASURES.md``, made from the same table as the help in the window."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator

from quailsched.husbandry.definitions import Definition, definitions

_HEAD = """\
# Measures

What the Books view and `quailsched measures FARM` show, each with its formula, its conventions and where it is from.
This page is made from `resources/husbandry/measures.csv` by `python packaging/measures_page.py`.

What was never counted has no measure: it is "not counted", never 0. A count that was corrected or taken back does not
count. Worked examples that were printed elsewhere are checked in `tests/outside/test_worked_measures.py`.
"""
_TAIL = """\
## Several batches together

Fertility and hatch of a breeding group are those of all eggs that its hens laid (batches that name it as where they
come from); eggs of several groups that were set together are a group of their own, for they cannot be told apart. Those
of an incubator are of all batches that were set there, and of all that hatched there. Sums are divided, not
percentages averaged: a batch of 100 eggs weighs twice as much as one of 50. Each measure takes the batches that tell
it: fertility those that were candled, hatch of set those that have hatched, hatch of fertile those that did both.

## Hens

Hens are those found at sexing, with the birds that were neither called hen nor cock; before a sexing half of the birds,
an odd one being a hen. In a laying group that was set apart, the cocks kept with the hens are taken off. Up to the
last count of a batch's birds they are as many as the counts say; after it, as many as are expected still to live by the
kind's survival, until the next count tells.

## Feed of a place

Feed counted for a place is shared by the batches in it, by what birds of their age and kind are expected to eat. Feed,
eggs and hours of no batch are shown below the tables.
"""


def definitions_page() -> str:
    """The whole page as Markdown text, ending in a line break."""
    parts = [_HEAD, *("\n".join(_lines(one)) for one in definitions().values()), _TAIL]
    return "\n".join(part.rstrip("\n") + "\n" for part in parts)


def _lines(one: Definition) -> Iterator[str]:
    yield from (f"## {one.name}", "", f"    {one.name.lower()} ({one.unit}) = {one.formula}", "")
    yield from (*textwrap.wrap(one.note, 118), "")
    for source in one.sources:
        place = f", {source.locator}" if source.locator else ""
        url = f", <{source.url}>" if source.url else ""
        yield f"- {source.text}, {source.year_text}{place}{url}: {source.confidence} (`{source.key}`)"
    if one.basis:
        yield f"- {one.basis}"
