"""A row of a hatch log: a batch of the farm, or a new one, with what was set, clear, quit and hatched."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from datetime import date, timedelta

from quailsched.edits.tables.grid import Line
from quailsched.edits.tables.headings import Column
from quailsched.edits.tables.pieces import Pieces
from quailsched.edits.tables.rows import Fate, Row, full_day, out, place_in, row_of, told_already
from quailsched.edits.tables.sheet import Options, Sheet
from quailsched.farm.facts import Count, Sort
from quailsched.farm.faults import FarmError, Finding
from quailsched.farm.kinds import kind_of
from quailsched.farm.ledger import standing, total
from quailsched.farm.records import Batch, Origin, Role, Stay
from quailsched.farm.units import count_text, names_text
from quailsched.husbandry.handbook import handbook
from quailsched.season.days import days_of
from quailsched.season.route import usual_route
from quailsched.words import number_text, say

_MOST_APART_DAYS = 14  # of a batch in the farm and the one that a row names: else it is another of the same name
_HATCH_MAY_BE_EARLY_DAYS = 3
_COUNTED = ((Sort.CLEAR, Column.CLEAR, Column.CANDLE_DAY), (Sort.QUIT, Column.QUIT, Column.QUIT_DAY),
            (Sort.HATCHED, Column.HATCHED, Column.HATCH_DAY))  # fmt: skip


@dataclass(slots=True)
class Hatches:
    """Takes rows of ``sheet`` into ``pieces``. Names of batches are looked up among those of the farm and those that
    rows have brought."""

    sheet: Sheet
    options: Options
    pieces: Pieces
    _by_name: dict[str, Batch] = field(init=False)
    _by_eggs: dict[tuple[date, int], list[Batch]] = field(init=False, default_factory=dict)

    def __post_init__(self) -> None:
        farm = self.pieces.farm
        self._by_name = {batch.name.strip().casefold(): batch for batch in farm.batches}
        for batch in farm.batches:
            if batch.origin.is_eggs:
                self._by_eggs.setdefault((batch.start, batch.number), []).append(batch)

    def rows(self) -> Iterator[Row]:
        for line in self.sheet.grid.lines:
            try:
                yield self._row(line)
            except FarmError as error:
                yield out(line, error)

    def _row(self, line: Line) -> Row:
        found = self._batch(line)
        batch = found or self._new_batch(line)
        counts = list(self._counts(line, batch, is_new=found is None))
        words = self._words(line, batch, counts, is_new=found is None)
        if found is not None and not counts:
            return row_of(line, Fate.THERE, say("{batch} has all of this", batch=batch.name))
        self.pieces.take(counts, batch if found is None else None)
        self._by_name[batch.name.strip().casefold()] = batch
        return row_of(line, Fate.TAKEN, words)

    def _batch(self, line: Line) -> Batch | None:
        """The batch that a row is about: by its name or, where rows have none, by its day and eggs. None: a new one.

        As it is now, for an earlier row may have been about it too.
        """
        sheet = self.sheet
        name = sheet.words(line, Column.NAME)
        if name:
            batch = self._by_name.get(name.casefold())
        else:
            start, eggs = sheet.day(line, Column.SET_DAY), sheet.whole(line, Column.NUMBER_SET)
            alike = self._by_eggs.get((start, eggs), []) if start and eggs else []
            batch = alike.pop(0) if alike else None
        if batch is None:
            return None
        if not batch.origin.is_eggs:
            accepted = say("{batch} came as birds: it has no eggs in a machine", batch=batch.name)
            raise sheet.fault(Column.NAME, name, accepted)
        kind_id = self._kind(line)
        if sheet.words(line, Column.KIND) and kind_id != batch.kind:
            there = say(handbook()[batch.kind].name)
            raise told_already(sheet, line, Column.KIND, sheet.words(line, Column.KIND), there)
        return self.pieces.piece(batch.id).batch(batch.id)

    def _new_batch(self, line: Line) -> Batch:
        sheet, farm = self.sheet, self.pieces.farm
        start, eggs = sheet.day(line, Column.SET_DAY), sheet.whole(line, Column.NUMBER_SET)
        if not start:
            raise self._needed(line, Column.SET_DAY)
        if not eggs:
            raise self._needed(line, Column.NUMBER_SET)
        kind_id = self._kind(line)
        stays = self._stays_from(line, usual_route(farm, kind_id, Origin.OWN_EGGS))
        if not stays:
            accepted = say("the farm needs a setter, a hatcher or a cabinet first")
            raise sheet.fault(Column.PLACE, Finding(say("there is none for eggs")), accepted)
        name = sheet.words(line, Column.NAME) or self._free_name(start)
        note = sheet.words(line, Column.NOTE)
        return Batch(self.pieces.now.new_id(), name, kind_id, Origin.OWN_EGGS, start, eggs, stays, note=note)

    def _needed(self, line: Line, column: Column) -> FarmError:
        name = self.sheet.words(line, Column.NAME)
        accepted = say("a new batch needs it; the farm has none called “{name}”", name=name)
        return self.sheet.fault(
            column, Finding(say("it is missing")), accepted if name else say("a new batch needs it")
        )

    def _free_name(self, start: date) -> str:
        name, number = say("Eggs of {day}", day=full_day(start)), 2
        found = name
        while found.casefold() in self._by_name:
            found, number = f"{name} ({number})", number + 1
        return found

    def _kind(self, line: Line) -> str:
        text = self.sheet.words(line, Column.KIND)
        if not text:
            return self.options.kind
        for kind in handbook().values():
            names = (kind.id, kind.id.replace("-", " "), kind.name, say(kind.name), kind.latin)
            if text.casefold() in (name.casefold() for name in names):
                return kind.id
        accepted = say("one of {choices} is accepted", choices=", ".join(handbook()))
        raise self.sheet.fault(Column.KIND, text, accepted)

    def _stays_from(self, line: Line, route: tuple[Stay, ...]) -> tuple[Stay, ...]:
        """The usual route, but for the machine that the row names."""
        place = place_in(self.pieces.farm, self.sheet, line)
        if place is None or not route:
            return route
        if not place.role.holds_eggs:
            accepted = say("eggs start where eggs are held")
            raise self.sheet.fault(Column.PLACE, place.name, accepted)
        in_eggs = [stay for stay in route if self.pieces.farm.place(stay.place_id).role.holds_eggs]
        others = route[len(in_eggs) :]
        if place.role is Role.CABINET:
            return (Stay(place.id, 0, in_eggs[-1].to_day), *others)
        at = -1 if place.role is Role.HATCHER else 0
        in_eggs[at] = replace(in_eggs[at], place_id=place.id)
        return (*in_eggs, *others)

    def _counts(self, line: Line, batch: Batch, *, is_new: bool) -> Iterator[Count]:
        """What a row says that the farm does not have yet. Raises FarmError where the two differ."""
        sheet, now = self.sheet, self.pieces.now
        there = [] if is_new else standing(self.pieces.piece(batch.id).counts_of(batch.id))
        there = [count for count in there if count.batch_id == batch.id]
        start = sheet.day(line, Column.SET_DAY) or batch.start
        eggs = sheet.whole(line, Column.NUMBER_SET)
        if sheet.words(line, Column.SET_DAY) or eggs is not None:
            yield from self._set(line, batch, there, start, batch.number if eggs is None else eggs)
        for sort, column, _ in _COUNTED:
            number = sheet.whole(line, column)
            known = [count for count in there if count.sort is sort]
            if number is None or (known and number == total(known, sort)):
                continue
            if known:
                words = say("{number} {sort}", number=number_text(total(known, sort)), sort=say(sort))
                raise told_already(sheet, line, column, number, words)
            if number or sort is Sort.HATCHED:
                day = self._day(line, batch, start, sort)[0]
                yield Count(now.new_id(), sort, day, now.entered, number, batch_id=batch.id)

    def _set(self, line: Line, batch: Batch, there: list[Count], start: date, eggs: int) -> Iterator[Count]:
        sheet, now = self.sheet, self.pieces.now
        known = next((count for count in there if count.sort is Sort.SET), None)
        if known is not None:
            for column, said, is_so in ((Column.SET_DAY, start, known.day), (Column.NUMBER_SET, eggs, known.number)):
                if said != is_so:
                    words = say("{eggs} set on {day}", eggs=count_text(known.number, "egg"), day=full_day(known.day))
                    raise told_already(sheet, line, column, sheet.words(line, column), words)
            return
        if there and (start, eggs) == (batch.start, batch.number):
            return  # what was counted since tells as much
        if abs((start - batch.start).days) > _MOST_APART_DAYS:
            accepted = say("{batch} is of {day} in the farm: a name of its own is accepted for another batch",
                           batch=batch.name, day=full_day(batch.start))  # fmt: skip
            raise sheet.fault(Column.SET_DAY, sheet.words(line, Column.SET_DAY), accepted)
        yield Count(now.new_id(), Sort.SET, start, now.entered, eggs, batch_id=batch.id)

    def _day(self, line: Line, batch: Batch, start: date, sort: Sort) -> tuple[date, bool]:
        """The day of a count, and whether it is only taken to be: on the usual day of the kind."""
        column = next(day for one, _, day in _COUNTED if one is sort)
        if (said := self.sheet.day(line, column)) is not None:
            return said, False
        hatch_day = self.sheet.day(line, Column.HATCH_DAY)
        today, kind = self.pieces.now.today, kind_of(self.pieces.farm, batch)
        due = start + timedelta(days=days_of(kind, batch).hatch)
        if sort is Sort.CLEAR:
            due = start + timedelta(days=kind.days("candle_day"))
        elif sort is Sort.QUIT:
            due = hatch_day or due
        elif due > today + timedelta(days=_HATCH_MAY_BE_EARLY_DAYS):
            accepted = say("it is due on {day}: the day on which it hatched is needed", day=full_day(due))
            raise self.sheet.fault(Column.HATCHED, self.sheet.words(line, Column.HATCHED), accepted)
        return min(due, max(today, start)), True

    def _words(self, line: Line, batch: Batch, counts: list[Count], *, is_new: bool) -> str:
        told = [self._count_words(line, batch, count) for count in counts]
        what = say("new batch {batch}: {counts}") if is_new else say("{batch}: {counts}")
        return what.format(batch=batch.name, counts=names_text(told))

    def _count_words(self, line: Line, batch: Batch, count: Count) -> str:
        day = full_day(count.day)
        if count.sort is Sort.SET:
            return say("{eggs} set on {day}", eggs=count_text(count.number, "egg"), day=day)
        is_guessed = self._day(line, batch, count.day, count.sort)[1]
        pattern = say("{number} {sort}, taken to be on {day}" if is_guessed else "{number} {sort} on {day}")
        return pattern.format(number=number_text(count.number), sort=say(count.sort), day=day)
