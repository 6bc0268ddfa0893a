"""The tables of the Books view as rows of text, from what the counts of a farm come to. No Qt."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date

from quailsched.farm.records import Batch, Farm, Units
from quailsched.farm.units import count_text, day_text
from quailsched.husbandry.definitions import definitions
from quailsched.outlook.batch_measures import Books, Measures
from quailsched.outlook.hatch_groups import HatchGroup, breeding_groups, incubators
from quailsched.report.measures import (
    HATCHES,
    from_text,
    group_name,
    left_text,
    mass_text,
    oddity,
    use_text,
    value_text,
)
from quailsched.words import marked, number_text, say

NONE = "–"  # what is shown where nothing was counted
_LAST: tuple[int, object] = (1, 0)  # sorts after everything that was counted


@dataclass(frozen=True, slots=True)
class Heading:
    """Of a column; ``tip`` tells the formula. Columns of numbers stand to the right."""

    text: str
    tip: str = ""
    is_number: bool = False


@dataclass(frozen=True, slots=True)
class Cell:
    """``sort`` is what it sorts by, ``spoken`` what is read out for it, ``told`` a sentence on where it comes from."""

    text: str
    sort: object
    spoken: str = ""
    told: str = ""


@dataclass(frozen=True, slots=True)
class BookRow:
    """One line, and what it is about: an id, or several joined."""

    key: str
    cells: tuple[Cell, ...]


@dataclass(frozen=True, slots=True)
class BookTable:
    """A page of the Books view; ``left_out`` is a sentence on what has no row, or of which only sums are known."""

    rows: tuple[BookRow, ...]
    left_out: str = ""


def batch_headings() -> tuple[Heading, ...]:
    return (
        Heading(say("Batch")),
        Heading(say("Since"), say("The day on which eggs were set or birds came")),
        Heading(say("Set or came"), say("Eggs set, or birds that came"), is_number=True),
        *_measure_headings(tuple(definitions())),
        Heading(say("Eggs laid"), say("All eggs counted for the batch"), is_number=True),
        Heading(say("Feed"), say("All feed recorded for the batch"), is_number=True),
        Heading(say("Hours"), say("All hours of work recorded for the batch"), is_number=True),
    )


def group_headings() -> tuple[Heading, ...]:
    return (Heading(say("Eggs of")), *_of_groups())


def incubator_headings() -> tuple[Heading, ...]:
    return (Heading(say("Incubator")), Heading(say("Eggs were")), *_of_groups())


def _of_groups() -> tuple[Heading, ...]:
    return (
        Heading(say("Batches"), is_number=True),
        Heading(say("Eggs"), say("Eggs set, of all these batches"), is_number=True),
        *_measure_headings(HATCHES),
    )


def _measure_headings(keys: tuple[str, ...]) -> tuple[Heading, ...]:
    return tuple(Heading(say(definitions()[key].name), definitions()[key].help_text, is_number=True) for key in keys)


def batch_table(books: Books) -> BookTable:
    """A row for each batch of which something is known."""
    rows, unknown = [], 0
    for batch in books.season.farm.batches:
        found, sums = books.of(batch), _sums(books, batch)
        if not found and all(cell.text == NONE for cell in sums):
            unknown += 1
            continue
        name = Cell(batch.name, batch.name.casefold())
        since = Cell(_day(batch.start), batch.start)
        number = Cell(count_text(batch.number, "egg" if batch.origin.is_eggs else "bird"), batch.number)
        measures = _measure_cells(found, tuple(definitions()), books.season.farm.settings.units)
        rows.append(BookRow(batch.id, (name, since, number, *measures, *sums)))
    left = _of_no_batch(books)
    if unknown and rows:
        left = f"{say('Nothing is counted yet of {batches}.', batches=count_text(unknown, 'batch', 'batches'))} {left}"
    return BookTable(tuple(rows), left.strip())


def _sums(books: Books, batch: Batch) -> tuple[Cell, ...]:
    units = books.season.farm.settings.units
    return (
        _sum(books.eggs_laid(batch.id), number_text),
        _sum(books.feed_g(batch.id), lambda feed: mass_text(feed, units)),
        _sum(books.hours.get(batch.id), lambda hours: number_text(hours, 0 if hours.is_integer() else 1)),
    )


def _sum(value: float | None, text_of: Callable[[float], str]) -> Cell:
    return Cell(NONE, _LAST, say("not counted")) if value is None else Cell(text_of(value), (0, value))


def _of_no_batch(books: Books) -> str:
    left = left_text(books)
    return f"{left}." if left else ""


def group_table(books: Books) -> BookTable:
    farm = books.season.farm
    rows = [
        BookRow(" ".join(group.from_ids), (_named(group_name(farm, group)), *_group_cells(farm, group)))
        for group in breeding_groups(farm)
    ]
    return BookTable(tuple(rows))


def incubator_table(books: Books) -> BookTable:
    farm = books.season.farm
    return BookTable(tuple(incubator_row(farm, group) for group in incubators(books.season)))


def incubator_row(farm: Farm, group: HatchGroup) -> BookRow:
    key = f"{group.place.id if group.place else ''} {group.is_set} {group.is_hatched}"
    return BookRow(
        key, (_named(group_name(farm, group)), _named(use_text(group)), *_group_cells(farm, group))
    )  # fmt: skip


def _group_cells(farm: Farm, group: HatchGroup) -> tuple[Cell, ...]:
    names = ", ".join(batch.name for batch in group.batches)
    return (
        Cell(number_text(len(group.batches)), len(group.batches), told=names),
        Cell(number_text(group.eggs), group.eggs),
        *_measure_cells(group.measures, HATCHES, farm.settings.units),
    )


def _measure_cells(found: Measures, keys: tuple[str, ...], units: Units) -> tuple[Cell, ...]:
    cells = []
    for key in keys:
        one = found.get(key)
        if one is None:
            cells.append(Cell(NONE, _LAST, say("not counted"), say("not counted")))
        else:
            told = from_text(one, units)
            odd = oddity(one)
            cells.append(Cell(value_text(one, units), (0, one.value), told=f"{told}. {odd}" if odd else told))
    return tuple(cells)


def _named(text: str) -> Cell:
    return Cell(text, text.casefold())


def _day(day: date) -> str:
    return f"{day_text(day)} {day.year}"


EMPTY = {
    "batches": marked(
        "Nothing is counted yet.\n\nRecord what was clear at candling, how many hatched and died, eggs, feed and "
        "weights: fertility, hatch, lay and feed conversion of each batch then stand here."
    ),
    "groups": marked(
        "No batch tells yet whose hens laid its eggs.\n\nOnce a batch of eggs names its breeding group, and its "
        "candling and hatch are recorded, fertility and hatch of each group stand here."
    ),
    "incubators": marked(
        "No eggs were set yet.\n\nAdd a setter, hatcher or cabinet and a batch of eggs (Ctrl+B): "
        "its hatch then stands here."
    ),
}
