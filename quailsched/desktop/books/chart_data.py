"""What the charts of the Books view show: points with their words, a curve, and the same as a table. No Qt."""

from __future__ import annotations

import math
from dataclasses import dataclass, field

from quailsched.desktop.books.rows import BookRow, BookTable, Cell, Heading, incubator_headings, incubator_row
from quailsched.farm.records import Batch
from quailsched.farm.units import count_text
from quailsched.outlook.batch_measures import Books
from quailsched.outlook.curves import Found, lay_by_week, weights
from quailsched.outlook.hatch_groups import HatchGroup, hatch_counts, incubators
from quailsched.report.measures import from_text, group_name, use_text, value_text
from quailsched.words import marked, number_text, say

LEAST_DAYS = 28  # of a chart by age, so that a single point does not stand alone on a stretched day


@dataclass(frozen=True, slots=True)
class Spot:
    """Something found, at ``x`` (days of age, or the number of a bar) and ``y``; ``words`` tell it in one line."""

    x: float
    y: float
    words: str


@dataclass(frozen=True, slots=True)
class Bar:
    """Hatch of set of one incubator, beside it hatch of fertile if it is known, and each batch by itself."""

    name: str
    use: str
    eggs: str
    of_set: float
    of_fertile: float | None
    batches: tuple[float, ...]


@dataclass(frozen=True, slots=True)
class ChartData:
    """``curve`` is what is expected, (age in days, value); ``top`` the highest value of the scale, in ``unit``.
    Ages from ``first_day`` to ``last_day`` are shown."""

    name: str
    spots: tuple[Spot, ...] = ()
    curve: tuple[tuple[float, float], ...] = ()
    bars: tuple[Bar, ...] = ()
    curve_name: str = ""
    found_name: str = ""
    unit: str = "%"
    top: float = 100.0
    first_day: int = 0
    last_day: float = LEAST_DAYS
    table: BookTable = field(default_factory=lambda: BookTable(()))
    headings: tuple[Heading, ...] = ()


def round_top(most: float) -> float:
    """A round number not below ``most``: the top of a scale that four lines part evenly."""
    size = 10.0 ** math.floor(math.log10(max(most, 1.0)))
    return next(step * size for step in (1, 2, 4, 6, 8, 10) if step * size >= most)


def hatch_chart(books: Books) -> ChartData:
    """A bar for each incubator out of which something hatched."""
    farm = books.season.farm
    groups = [group for group in incubators(books.season) if "hatch_of_set" in group.measures]
    bars = [_bar(books, group) for group in groups]
    spots = tuple(
        Spot(number, bar.of_set, _hatch_words(books, group))
        for number, (bar, group) in enumerate(zip(bars, groups, strict=True))
    )
    return ChartData(
        say("Hatch by incubator"), spots, bars=tuple(bars),
        table=BookTable(tuple(incubator_row(farm, group) for group in groups)), headings=incubator_headings(),
    )  # fmt: skip


def _bar(books: Books, group: HatchGroup) -> Bar:
    farm, of_fertile = books.season.farm, group.measures.get("hatch_of_fertile")
    counts = [one for batch in group.batches if (one := hatch_counts(farm, batch)) is not None]
    each = tuple(100 * one.hatched / one.set for one in counts if one.hatched is not None)
    eggs = count_text(int(group.measures["hatch_of_set"].whole), "egg")
    of_set = group.measures["hatch_of_set"].value
    return Bar(
        group_name(farm, group), use_text(group), eggs, of_set, None if of_fertile is None else of_fertile.value, each
    )


def _hatch_words(books: Books, group: HatchGroup) -> str:
    farm, found = books.season.farm, group.measures["hatch_of_set"]
    told = {"place": group_name(farm, group), "use": use_text(group), "value": value_text(found, farm.settings.units)}
    return say("{place}, {use}: {value}, {eggs}", **told, eggs=from_text(found, farm.settings.units))


def lay_chart(books: Books, batch: Batch) -> ChartData:
    """Hen-day lay of each week of age against the kind's curve."""
    found = lay_by_week(books, batch)
    headings = (
        Heading(say("Age in days"), is_number=True), Heading(say("Lay found"), is_number=True),
        Heading(say("Lay expected"), is_number=True), Heading(say("Hen-days"), is_number=True),
    )  # fmt: skip
    top = max(100.0, round_top(max((one.value for one in found), default=0)))
    return _by_age(books, batch, "lay_pct", found, say("Lay against the curve"), "%", top, headings)


def weight_chart(books: Books, batch: Batch) -> ChartData:
    """Mean weight of each day of weighing against the kind's curve."""
    found = weights(books, batch)
    headings = (
        Heading(say("Age in days"), is_number=True), Heading(say("Weight found"), is_number=True),
        Heading(say("Weight expected"), is_number=True), Heading(say("Birds weighed"), is_number=True),
    )  # fmt: skip
    most = max([one.value for one in found] + [one.expected for one in found], default=0)
    return _by_age(books, batch, "weight_g", found, say("Weight against the curve"), "g", round_top(most), headings)


def _by_age(
    books: Books, batch: Batch, key: str, found: list[Found], name: str, unit: str, top: float,
    headings: tuple[Heading, ...],
) -> ChartData:  # fmt: skip
    kind = books.season.kind(batch)
    first = _first_day(found, kind.days("first_egg_day")) if key == "lay_pct" else 0
    last = max(max((one.age_days for one in found), default=0) + 7, first + LEAST_DAYS)
    curve = tuple((day, kind.at(key, day)) for day in range(first, math.ceil(last) + 1))
    top = max(top, round_top(max(value for _, value in curve))) if found else top
    rows = tuple(BookRow(str(number), _cells(one, unit)) for number, one in enumerate(found))
    return ChartData(
        f"{name}: {batch.name}", tuple(Spot(one.age_days, one.value, _age_words(one, unit)) for one in found), curve,
        curve_name=say("expected of {kind}", kind=say(kind.name)), found_name=batch.name, unit=unit, top=top,
        first_day=first, last_day=last, table=BookTable(rows), headings=headings,
    )  # fmt: skip


def _first_day(found: list[Found], first_egg: int) -> int:
    """A week before the first egg that was found or is expected, a whole number of weeks."""
    begins = min([first_egg, *(int(one.age_days) for one in found)])
    return max(begins // 7 - 1, 0) * 7


def _cells(one: Found, unit: str) -> tuple[Cell, ...]:
    return (
        Cell(number_text(one.age_days), one.age_days),
        Cell(_amount(one.value, unit), one.value),
        Cell(_amount(one.expected, unit), one.expected),
        Cell(number_text(one.of), one.of),
    )


def _amount(value: float, unit: str) -> str:
    return f"{number_text(value, 1)} {unit}"


def _age_words(one: Found, unit: str) -> str:
    told = {"found": _amount(one.value, unit), "expected": _amount(one.expected, unit)}
    return say("day {age}: {found}, expected {expected}", age=number_text(one.age_days), **told)


EMPTY = {
    "hatch": marked(
        "No hatch is recorded yet.\n\nRecord how many chicks hatched of a batch to see the hatch of each incubator."
    ),
    "lay": marked(
        "No eggs are recorded of any batch yet.\n\nRecord the eggs of a pen or a batch, day by day, to see its lay."
    ),
    "weight": marked(
        "No birds were weighed yet.\n\nRecord weights of a batch, ten birds together will do, to see its growth."
    ),
}
