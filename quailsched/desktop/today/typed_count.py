"""The count that a few typed words mean: "2 died Clover", "d", "31 eggs Long run", "fed 2.5 kg".

No Qt. Words are read in English and in the language of the window, from their beginnings on and in any order. Which
day is meant is read by ``typed_days``; which batch, where none is named, by ``count_fits``; the words of counts stand
in ``count_terms``. Whether a count can be is told by ``edits.counts``.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date

from quailsched.desktop.today.count_fits import batches_in, fitting, laying_places
from quailsched.desktop.today.count_terms import (
    after_word,
    cause_of,
    days_in,
    fold,
    hours_of,
    is_filler,
    part_of,
    sort_in,
    split,
    weights_in,
)
from quailsched.farm.facts import Cause, Count, Sort
from quailsched.farm.ledger import FIELDS
from quailsched.farm.records import Batch, Farm, Part, Person, Place
from quailsched.farm.units import day_text, names_text
from quailsched.season.season import Season
from quailsched.words import say

Named = Batch | Place | Person
# What a count without a number is one of: the commonest is two keys, "d" and Enter.
_ONE = (Sort.DIED,)
_MAY_BE_NONE = (Sort.HATCHED, Sort.LAID)  # that none hatched or was laid is worth knowing, but has to be said
_FORMS = (Sort.PARTED, Sort.JOINED, Sort.PHOTO)  # not to be typed in a line


@dataclass(frozen=True, slots=True)
class Meant:
    """The count that is meant, with no id and no moment yet; or ``missing``, a sentence of what is not told."""

    count: Count | None = None
    missing: str = ""


def count_meant(season: Season, typed: str, today: date, batch_id: str = "", usual_day: date | None = None) -> Meant:
    """What ``typed`` means on ``today``, the batch ``batch_id`` being picked ("" for none).

    A count that names no day is of ``usual_day``, or of today.
    """
    words, named_day = days_in(split(typed), today, _names(season.farm))
    day = named_day or usual_day or today
    if not words and not typed.strip():
        return Meant()
    if day > today:
        return Meant(missing=say("{day} is still to come: what has happened is recorded.", day=day_text(day, today)))
    reading = _Reading(season, words, day, batch_id, typed)
    try:
        return Meant(reading.count())
    except _MissingError as missing:
        return Meant(missing=str(missing))


class _MissingError(Exception):
    """A sentence of what has to be typed yet."""


def _names(farm: Farm) -> list[str]:
    records: list[Named] = [*farm.batches, *farm.places, *farm.people]
    return [fold(one.name) for one in records]


class _Reading:
    """One line on the way to a count: words are taken from it as they are understood."""

    def __init__(self, season: Season, words: list[str], day: date, picked: str, typed: str) -> None:
        self.season, self.farm, self.day = season, season.farm, day
        self.words, self.typed = words, typed
        picked_batch = self.farm.find(picked)
        self.picked = picked_batch if isinstance(picked_batch, Batch) else None
        self.batch: Batch | None = None
        self.place: Place | None = None
        self.person: Person | None = None
        self.cause: Cause | None = None
        self.part = Part.ALL
        self.told: dict[str, int] = {}  # hens, cocks, unsure
        self.has_number = False

    def count(self) -> Count:
        exact = self._take_names(exactly=True)
        sort, at = sort_in(self.words)
        if sort is Sort.NOTE and at is not None:
            return self._note(at)
        if at is not None:
            del self.words[at]
        self._take_parts(sort)
        if sort is None and self.told.keys() & {"hens", "cocks", "unsure"}:
            sort = Sort.SEXED
        if sort is None:
            sort = self._sort_of_cause()
        if sort is None and any(hours_of(word) is not None for word in self.words):
            sort = Sort.HOURS
        if sort is None:
            raise _MissingError(self._nothing_said(exact))
        if sort in _FORMS:
            raise _MissingError(say("“{sort}” has a form of its own, in the page of the batch.", sort=say(sort)))
        count = self._with_numbers(Count("", sort, self.day))
        self._take_names(exactly=False)
        self._take_cause(sort)
        self._left_over()
        return self._placed(count)

    def _note(self, at: int) -> Count:
        words = after_word(self.typed, self.words[at])
        if not words:
            raise _MissingError(say("What is the note? Its words come after “note”."))
        batch = self.batch or self.picked
        return Count(
            "", Sort.NOTE, self.day, words=words,
            batch_id=batch.id if batch else "", place_id=self.place.id if self.place else "",
        )  # fmt: skip

    def _nothing_said(self, exact: bool) -> str:
        unknown = [word for word in self.words if not word[:1].isdecimal() and not is_filler(word)]
        if unknown and not exact:
            return say("“{word}” is not understood here.", word=unknown[0])
        return say("What is it a count of? Such as died, eggs, hatched, clear, sold, fed, weighed.")

    # words

    def _take_names(self, *, exactly: bool) -> bool:
        """Take the names of records, the longest first; whether there were any."""
        found = False
        for length in range(min(len(self.words), 5), 0, -1):
            at = 0
            while at + length <= len(self.words):
                wanted = " ".join(self.words[at : at + length])
                one = None if self._is_number(wanted) or is_filler(wanted) else self._named(wanted, exactly)
                if one is None or not self._keep(one):
                    at += 1
                    continue
                del self.words[at : at + length]
                found = True
        return found

    @staticmethod
    def _is_number(word: str) -> bool:
        return word[:1].isdecimal()

    def _named(self, wanted: str, exactly: bool) -> Named | None:
        """The record whose name is, or begins with, ``wanted``: batches before places, those near the day first."""

        def away(one: Named) -> tuple[int, int]:
            return (0, abs((one.start - self.day).days)) if isinstance(one, Batch) else (1, 0)

        records: list[Named] = [*self.farm.batches, *self.farm.places, *self.farm.people]
        records.sort(key=away)
        if exactly:
            return next((one for one in records if fold(one.name) == wanted), None)
        starts = [one for one in records if fold(one.name).startswith(wanted)]
        inside = [one for one in records if f" {wanted}" in fold(one.name)]
        return next(iter(starts or inside), None)

    def _keep(self, one: Named) -> bool:
        """Keep the first of each kind of record; a second one is not understood."""
        if isinstance(one, Batch) and self.batch is None:
            self.batch = one
        elif isinstance(one, Place) and self.place is None:
            self.place = one
        elif isinstance(one, Person) and self.person is None:
            self.person = one
        else:
            return False
        return True

    def _take_parts(self, sort: Sort | None) -> None:
        """ "30 hens 28 cocks" of a sexing; of another count, which birds it is of."""
        at = 0
        while at < len(self.words):
            name = part_of(self.words[at])
            if name is None:
                at += 1
            elif sort in (None, Sort.SEXED):
                before = self.words[at - 1] if at else ""
                after = self.words[at + 1] if at + 1 < len(self.words) else ""
                if before.isdecimal():
                    self.told[name] = int(before)
                    del self.words[at - 1 : at + 1]
                    at -= 1
                elif after.isdecimal():
                    self.told[name] = int(after)
                    del self.words[at : at + 2]
                else:
                    at += 1
            else:
                self.part = {"hens": Part.HENS, "cocks": Part.COCKS}.get(name, Part.ALL)
                del self.words[at]

    def _sort_of_cause(self) -> Sort | None:
        """Whoever says "2 drowned" says that they died."""
        for at, word in enumerate(self.words):
            cause = cause_of(word, exactly=True)
            if cause is not None:
                self.cause = cause
                del self.words[at]
                return Sort.DIED
        return None

    def _take_cause(self, sort: Sort) -> None:
        if sort is not Sort.DIED:
            return
        for at, word in enumerate(self.words):
            cause = cause_of(word)
            if cause is not None and self.cause is None:
                self.cause = cause
                del self.words[at]
                return

    def _left_over(self) -> None:
        unknown = [word for word in self.words if not is_filler(word)]
        if unknown:
            raise _MissingError(say("“{word}” is not understood here.", word=unknown[0]))

    # numbers

    def _with_numbers(self, count: Count) -> Count:
        sort = count.sort
        fields = [field.rstrip("!") for field in FIELDS[sort]]
        if sort is Sort.SEXED and self.told:
            all_found = sum(self.told.values())
            count = replace(count, hens=self.told.get("hens", 0), cocks=self.told.get("cocks", 0), number=all_found)
            return count
        weights, self.words = weights_in(self.words)
        hours = self._take_hours()
        numbers = self._take_numbers()
        if "number" in fields and numbers:
            count = replace(count, number=numbers.pop(0))
        if "grams" in fields:
            grams = weights or numbers
            count = replace(count, grams=grams.pop(0) if grams else 0)
            if "dressed_g" in fields and grams:
                count = replace(count, dressed_g=grams.pop(0))
        if sort is Sort.HOURS:
            count = replace(count, hours=hours if hours is not None else float(numbers.pop(0) if numbers else 0))
        elif sort is Sort.HATCHED and hours is not None:
            count = replace(count, hour=min(int(hours), 23))
        if numbers:
            raise _MissingError(say("{number} is a number too many here.", number=numbers[0]))
        return self._one_if_none(count)

    def _one_if_none(self, count: Count) -> Count:
        """``count`` with the number that goes without saying. Raises for one that does not."""
        sort, needed = count.sort, FIELDS[count.sort]
        if not count.number and ("number!" in needed or (sort in _MAY_BE_NONE and not self.has_number)):
            if sort not in _ONE:
                raise _MissingError(say("How many? Such as: 12 {sort}.", sort=say(sort)))
            count = replace(count, number=1)
        if "grams!" in needed and not count.grams:
            raise _MissingError(say("How much? Such as: 2.5 kg."))
        if sort is Sort.HOURS and not count.hours:
            raise _MissingError(say("How many hours? Such as: 1.5 h."))
        return count

    def _take_numbers(self) -> list[int]:
        """Whole numbers, in order. "1,300" is thousands; a part of a bird is refused."""
        found: list[int] = []
        for word in [one for one in self.words if self._is_number(one)]:
            plain = word.replace(",", "").replace(".", "")
            is_whole = plain.isdecimal() and all(len(p) == 3 for p in word.replace(",", ".").split(".")[1:])
            if not is_whole:
                raise _MissingError(say("“{word}” is no whole number.", word=word))
            found.append(int(plain))
            self.words.remove(word)
        self.has_number = bool(found)
        return found

    def _take_hours(self) -> float | None:
        for word in self.words:
            hours = hours_of(word)
            if hours is not None:
                self.words.remove(word)
                return hours
        return None

    # of which batch, in which place

    def _placed(self, count: Count) -> Count:
        sort = count.sort
        if sort is Sort.HOURS:
            who = self.person.id if self.person else ""
            batch, place = self.batch or self.picked, self.place
            return replace(count, person_id=who, batch_id=batch.id if batch else "", place_id=place.id if place else "")
        if sort in (Sort.BEDDING, Sort.BUILT) and self.place is None:
            raise _MissingError(say("Which place? {names}", names=names_text([p.name for p in self.farm.places])))
        if sort is Sort.MOVED and self.place is None:
            raise _MissingError(say("To which place? {names}", names=names_text([p.name for p in self.farm.places])))
        place_id = self.place.id if self.place is not None else ""
        if sort is Sort.LAID:
            return self._laid(count)
        if not sort.needs_batch:
            batch = self.batch or (self.picked if self.place is None else None)
            return replace(count, batch_id=batch.id if batch else "", place_id=place_id)
        batch = self._batch_of(sort)
        part = self.part if "part" in FIELDS[sort] else Part.ALL
        return replace(count, batch_id=batch.id, place_id=place_id, cause=self.cause, part=part)

    def _laid(self, count: Count) -> Count:
        """Eggs are of a place, or of a batch that is named; of the only pen with laying hens if neither is."""
        if self.place is not None or self.batch is not None:
            return replace(
                count, place_id=self.place.id if self.place else "", batch_id=self.batch.id if self.batch else ""
            )
        places = laying_places(self.season, self.day)
        if len(places) == 1:
            return replace(count, place_id=places[0].id)
        if self.picked is not None:
            return replace(count, batch_id=self.picked.id)
        if not places:
            raise _MissingError(say("Of which place or batch? No hens lay yet by the plan."))
        raise _MissingError(say("Of which place? {names}", names=names_text([place.name for place in places])))

    def _batch_of(self, sort: Sort) -> Batch:
        if self.batch is not None:
            return self.batch
        found = fitting(self.season, sort, self.day)
        if self.place is not None and sort is not Sort.MOVED:
            there = batches_in(self.season, self.place, self.day)
            if len(there) == 1:
                return there[0]
            found = [batch for batch in found if batch in there] or there
        elif self.picked is not None:
            return self.picked
        if len(found) == 1:
            return found[0]
        if not found:
            sort_words = say(sort)
            raise _MissingError(
                say("Of which batch? On {day} none is known to fit “{sort}”.", day=day_text(self.day), sort=sort_words)
            )
        raise _MissingError(say("Of which batch? {names}", names=names_text([batch.name for batch in found[:6]])))
