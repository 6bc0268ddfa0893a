"""A row of an egg log: what hens laid, what they ate, which birds died or were weighed, on a day in a place."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from datetime import date, timedelta

from quailsched.edits.tables.grid import Line
from quailsched.edits.tables.headings import Column
from quailsched.edits.tables.pieces import Pieces
from quailsched.edits.tables.rows import Fate, Row, batch_in, full_day, out, place_in, row_of, told_already
from quailsched.edits.tables.sheet import Options, Sheet
from quailsched.farm.facts import Count, Sort
from quailsched.farm.faults import FarmError, Finding
from quailsched.farm.kinds import kind_of
from quailsched.farm.ledger import standing
from quailsched.farm.records import Batch, Place
from quailsched.farm.units import names_text
from quailsched.season.days import days_of, end_of
from quailsched.season.lived import lived_of
from quailsched.words import number_text, say

_COLUMNS = {Sort.LAID: Column.LAID, Sort.DIED: Column.DIED, Sort.FED: Column.FED, Sort.FEED_BOUGHT: Column.BOUGHT,
            Sort.WEIGHED: Column.WEIGHT}  # fmt: skip


@dataclass(slots=True)
class _Said:
    """What a row says, and which of it the farm has already."""

    line: Line
    counts: list[Count]
    there: list[Count] = field(default_factory=list)


@dataclass(slots=True)
class Eggs:
    """Takes rows of ``sheet`` into ``pieces``.

    What the farm has on the same day of the same place or batch is the same if it is as many, or as many together;
    each count of the farm stands for one of a row. All rows are looked at for that before any is taken.
    """

    sheet: Sheet
    options: Options
    pieces: Pieces
    _left: dict[tuple[Sort, date], list[Count]] = field(init=False, default_factory=dict)
    _who: dict[str, list[tuple[date, date, Batch]]] = field(init=False, default_factory=dict)

    def __post_init__(self) -> None:
        farm = self.pieces.farm
        for count in standing(farm.counts):
            if count.sort in _COLUMNS:
                self._left.setdefault((count.sort, count.day), []).append(count)
        for batch in farm.batches:
            days = days_of(kind_of(farm, batch), batch, lived_of(batch, farm.counts_of(batch.id)))
            for stay in batch.stays:
                start, end = (batch.start + timedelta(days=day) for day in (stay.from_day, end_of(stay, days)))
                self._who.setdefault(stay.place_id, []).append((start, end, batch))

    def rows(self) -> Iterator[Row]:
        read: list[_Said | Row] = []
        for line in self.sheet.grid.lines:
            try:
                read.append(_Said(line, self._counts(line)))
            except FarmError as error:
                read.append(out(line, error))
        for said in read:
            if isinstance(said, _Said):
                said.there = [count for count in said.counts if self._has(count)]
        for said in read:
            yield said if isinstance(said, Row) else self._row(said)

    def _row(self, said: _Said) -> Row:
        line, new = said.line, [count for count in said.counts if count not in said.there]
        if not said.counts:
            return row_of(line, Fate.THERE, say("nothing is told for this day"))
        words = self._words(new or said.there)
        if not new:
            return row_of(line, Fate.THERE, words)
        try:
            for count in new:
                self._require_free(line, count)
            note = self.sheet.words(line, Column.NOTE)
            self.pieces.take([replace(new[0], words=note), *new[1:]])
        except FarmError as error:
            return out(line, error)
        return row_of(line, Fate.TAKEN, words)

    def _words(self, counts: list[Count]) -> str:
        """ "Long run, 3 Apr 2027: 12 laid and 1,500 g fed" """
        first = counts[0]
        of = self.pieces.farm.find(first.place_id or first.batch_id)
        day = full_day(first.day)
        where = f"{of.name}, {day}" if isinstance(of, Place | Batch) else day
        return f"{where}: {names_text([_what(count) for count in counts])}"

    def _has(self, count: Count) -> bool:
        """Whether the farm has this already; what stands for it then stands for no other row."""
        left = self._left.get((count.sort, count.day), [])
        alike = [one for one in left if self._is_of_same(one, count)]
        closest = [one for one in alike if (one.batch_id, one.place_id) == (count.batch_id, count.place_id)]
        ways = [*([one] for one in (*closest, *alike)), closest, alike]
        same = next((way for way in ways if way and _sum(way) == _amount(count)), None)
        for one in same or ():
            left.remove(one)
        return same is not None

    def _is_of_same(self, one: Count, other: Count) -> bool:
        """Whether two counts of a day can be of the same birds: neither names another batch or another place.

        Of birds that died or were weighed the batch says enough. Where one names the batch and the other the place,
        the batch has to be there.
        """
        if one.sort.needs_batch:
            return one.batch_id == other.batch_id
        pairs = ((one.batch_id, other.batch_id), (one.place_id, other.place_id))
        if any(a == b for a, b in pairs):
            return all(a == b or not a or not b for a, b in pairs)
        batch_id, place_id = one.batch_id or other.batch_id, one.place_id or other.place_id
        is_half_told = not (one.batch_id and other.batch_id) and not (one.place_id and other.place_id)
        return is_half_told and batch_id in self._there(place_id, one.day)

    def _there(self, place_id: str, day: date) -> dict[str, Batch]:
        """The batches that are in a place on a day, by id."""
        return {batch.id: batch for start, end, batch in self._who.get(place_id, ()) if start <= day < end}

    def _require_free(self, line: Line, count: Count) -> None:
        """Nothing else of the same sort, day and place is in the farm, or FarmError."""
        left = self._left.get((count.sort, count.day), [])
        alike = [one for one in left if self._is_of_same(one, count)]
        if alike:
            number, grams = _sum(alike)
            there = f"{number_text(grams)} g" if grams else number_text(number)
            column = self._column(count.sort)
            raise told_already(self.sheet, line, column, self.sheet.words(line, column), there)

    def _column(self, sort: Sort) -> Column:
        column = _COLUMNS[sort]
        return Column.WEIGHT_EACH if sort is Sort.WEIGHED and column not in self.sheet.columns else column

    def _counts(self, line: Line) -> list[Count]:
        sheet, farm, now = self.sheet, self.pieces.farm, self.pieces.now
        day = sheet.day(line, Column.DAY)
        if day is None:
            raise sheet.fault(Column.DAY, Finding(say("it is missing")), say("the day is needed"))
        place, batch = place_in(farm, sheet, line), batch_in(farm, sheet, line)
        if batch is not None and day < batch.start:
            accepted = say("{batch} is of {day} in the farm: that day or a later one is accepted",
                           batch=batch.name, day=full_day(batch.start))  # fmt: skip
            raise sheet.fault(Column.DAY, sheet.words(line, Column.DAY), accepted)
        if place is None and batch is None and self.options.place_id:
            place = farm.place(self.options.place_id)
        found = []
        for sort, number, grams in self._amounts(line):
            whose = batch
            if sort.needs_batch and batch is None:
                whose = self._batch_there(line, place, day, self._column(sort))
            found.append(Count(
                now.new_id(), sort, day, now.entered, number, grams=grams,
                batch_id=whose.id if whose else "", place_id=place.id if place else "",
            ))  # fmt: skip
        return found

    def _amounts(self, line: Line) -> Iterator[tuple[Sort, int, int]]:
        """(sort, number, grams) of each cell that says something. Nought eggs say something, nought deaths do not."""
        sheet = self.sheet
        laid, died = sheet.whole(line, Column.LAID), sheet.whole(line, Column.DIED)
        if laid is not None:
            yield Sort.LAID, laid, 0
        if died:
            yield Sort.DIED, died, 0
        for sort in (Sort.FED, Sort.FEED_BOUGHT):
            if grams := round(sheet.grams(line, _COLUMNS[sort]) or 0):
                yield sort, 0, grams
        weighed = sheet.whole(line, Column.WEIGHED)
        together, each = sheet.grams(line, Column.WEIGHT), sheet.grams(line, Column.WEIGHT_EACH)
        if together and not weighed:
            accepted = say("the number of birds that were weighed together is needed")
            raise sheet.fault(Column.WEIGHED, Finding(say("it is missing")), accepted)
        number = weighed or 1
        if grams := round(together or (each or 0) * number):
            yield Sort.WEIGHED, number, grams

    def _batch_there(self, line: Line, place: Place | None, day: date, column: Column) -> Batch:
        """The only batch that is in a place on a day; FarmError if there are none, or several."""
        value = self.sheet.words(line, column)
        if place is None:
            raise self.sheet.fault(column, value, say("the batch or the place of these birds is needed"))
        there = self._there(place.id, day)
        if len(there) == 1:
            return next(iter(there.values()))
        told = {"place": place.name, "day": full_day(day), "batches": names_text([one.name for one in there.values()])}
        accepted = say("{batches} are in {place} on {day}: a column that names the batch is needed", **told)
        if not there:
            accepted = say("no batch is in {place} on {day}", **told)
        raise self.sheet.fault(column, value, accepted)


def _what(count: Count) -> str:
    number, grams, sort = number_text(count.number), number_text(count.grams), say(count.sort)
    if count.sort is Sort.WEIGHED:
        return say("{number} {sort}, {grams} g together", number=number, sort=sort, grams=grams)
    return f"{grams} g {sort}" if count.grams else f"{number} {sort}"


def _amount(count: Count) -> tuple[int, int]:
    return count.number, count.grams


def _sum(counts: list[Count]) -> tuple[int, int]:
    return sum(count.number for count in counts), sum(count.grams for count in counts)
