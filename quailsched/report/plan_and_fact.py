"""What was planned beside what was counted, and what the counts of a batch add up to, in words.

The plan of a count is what the plan said on the day that it was recorded; it stands in the count itself.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date, timedelta

from quailsched.farm.facts import Cause, Count, Sort
from quailsched.farm.ledger import eggs_left, standing, total
from quailsched.farm.records import Batch, Farm, Origin, Part, Place
from quailsched.farm.units import count_text, day_text, names_text
from quailsched.quick import dataclass
from quailsched.season.lived import lived_of
from quailsched.season.season import Season
from quailsched.words import marked, number_text, say

_DAY_WORDS = {
    Sort.SET: marked("set {day}, planned {plan}"),
    Sort.HATCHED: marked("hatched {day}, planned {plan}"),
    Sort.FEATHERED: marked("feathered {day}, planned {plan}"),
    Sort.MOVED: marked("moved {day}, planned {plan}"),
}


@dataclass(frozen=True, slots=True)
class Compared:
    """One thing that was planned and has happened; ``plan`` is "" where the plan had nothing of it."""

    what: str
    plan: str
    fact: str
    difference: str


@dataclass(frozen=True, slots=True)
class FactDay:
    """Something that happened on ``day``, and for which the plan had ``plan``, another day. ``place_id`` is where
    birds moved to, else ""."""

    sort: Sort
    day: date
    plan: date
    place_id: str
    words: str


def plan_and_fact(farm: Farm, batch: Batch) -> list[Compared]:
    """The rows of a batch in order of days: what was planned, what was counted, and by how much the two differ."""
    return [row for one in _own(farm, batch) for row in _compared(farm, one)]


def fact_days(farm: Farm, batch: Batch) -> list[FactDay]:
    """What of a batch happened on another day than was planned, in order of days."""
    found = []
    for one in _own(farm, batch):
        if one.plan_day is None or one.plan_day == one.day or one.sort not in _DAY_WORDS:
            continue
        words = say(_DAY_WORDS[one.sort], day=day_text(one.day), plan=day_text(one.plan_day, one.day))
        place_id = one.place_id if one.sort is Sort.MOVED else ""
        found.append(FactDay(one.sort, one.day, one.plan_day, place_id, words))
    return found


def _own(farm: Farm, batch: Batch) -> Iterator[Count]:
    """The standing counts of a batch in order of days; all that hatched as one, on the day by which half was out."""
    own = [one for one in standing(farm.counts_of(batch.id)) if one.batch_id == batch.id]
    hatches = [one for one in own if one.sort is Sort.HATCHED]
    lived = lived_of(batch, farm.counts_of(batch.id))
    if len(hatches) > 1 and lived.hatch is not None:
        first = next((one for one in hatches if one.plan_day is not None), hatches[0])
        whole = Count(
            first.id, Sort.HATCHED, batch.start + timedelta(days=lived.hatch), first.entered,
            total(hatches, Sort.HATCHED), batch.id, plan_day=first.plan_day, plan_number=first.plan_number,
        )  # fmt: skip
        own = [one for one in own if one.sort is not Sort.HATCHED] + [whole]
    yield from sorted(own, key=lambda one: (one.day, list(Sort).index(one.sort)))


def _compared(farm: Farm, count: Count) -> Iterator[Compared]:
    what = _what(farm, count)
    if not what:
        return
    has_number = bool(count.number) or count.sort is Sort.HATCHED
    is_on_day = count.sort in _DAY_WORDS
    plan = _told(count.plan_day if is_on_day else None, count.plan_number, count.sort)
    fact = _told(count.day if is_on_day else None, count.number if has_number else None, count.sort)
    if count.sort is Sort.SEXED:
        fact = say("{birds}: {sexes}", birds=fact, sexes=_sexes(count))
    yield Compared(what, plan, fact, _difference(count, is_on_day))


def _what(farm: Farm, count: Count) -> str:
    """What a row is about; "" for a sort of count that the plan has nothing of."""
    if count.sort is Sort.MOVED:
        place = farm.find(count.place_id)
        who = {Part.ALL: marked("To {place}"), Part.HENS: marked("Laying group to {place}")}
        words = who.get(count.part, marked("Surplus cocks to {place}"))
        return say(words, place=place.name if isinstance(place, Place) else count.place_id)
    if count.sort in (Sort.COUNTED, Sort.SEXED):
        words = marked("Counted on {day}") if count.sort is Sort.COUNTED else marked("Sexed on {day}")
        return say(words, day=day_text(count.day))
    titles = {Sort.SET: marked("Set"), Sort.HATCHED: marked("Hatched"), Sort.FEATHERED: marked("Feathered")}
    return say(titles[count.sort]) if count.sort in titles else ""


def _told(day: date | None, number: int | None, sort: Sort) -> str:
    """ "96 eggs on 1 Mar", or one of the two."""
    noun = "egg" if sort is Sort.SET else "chick" if sort is Sort.HATCHED else "bird"
    many = "" if number is None else count_text(number, noun)
    when = "" if day is None else day_text(day)
    return say("{many} on {day}", many=many, day=when) if many and when else many or when


def _sexes(count: Count) -> str:
    parts = [count_text(count.hens, "hen"), count_text(count.cocks, "cock")]
    if count.unsure:
        parts.append(say("{number} unsure", number=number_text(count.unsure)))
    return ", ".join(parts)


def _difference(count: Count, is_on_day: bool) -> str:
    """ "a day earlier, 14 fewer", "as planned"; "" where the plan had nothing."""
    days = (count.day - count.plan_day).days if is_on_day and count.plan_day is not None else None
    number = count.number - count.plan_number if count.plan_number is not None else None
    if days is None and number is None:
        return ""
    words = [text for text in (_days_off(days or 0), _number_off(number or 0)) if text]
    return ", ".join(words) or say("as planned")


def _days_off(days: int) -> str:
    if abs(days) == 1:
        return say("a day later") if days > 0 else say("a day earlier")
    if not days:
        return ""
    many = count_text(abs(days), "day")
    return say("{days} later", days=many) if days > 0 else say("{days} earlier", days=many)


def _number_off(number: int) -> str:
    if not number:
        return ""
    many = number_text(abs(number))
    return say("{number} more", number=many) if number > 0 else say("{number} fewer", number=many)


def ledger_rows(season: Season, batch: Batch, today: date) -> list[tuple[str, str]]:
    """What the counts of ``batch`` up to ``today`` add up to: eggs, birds gained and lost, and how many live now."""
    farm = season.farm
    till = [one for one in standing(farm.counts_of(batch.id)) if one.day <= today]
    own = [one for one in till if one.batch_id == batch.id]
    came = [one for one in till if one.to_batch_id == batch.id and one.sort is Sort.JOINED]
    if not any(one.sort.needs_batch for one in till):
        return []
    rows = [(say("Eggs"), _eggs(batch, farm, own, today)), (say("Birds"), _gained(farm, batch, own, came))]
    rows += [(say("Died"), _died(own)), (say("Left"), _gone(farm, own)), (say("Alive"), _alive(season, batch, today))]
    return [(name, text) for name, text in rows if text]


def _eggs(batch: Batch, farm: Farm, own: Sequence[Count], today: date) -> str:
    if not batch.origin.is_eggs:
        return ""
    words = [say("{number} set", number=number_text(batch.number))]
    for sort, text in (
        (Sort.CLEAR, marked("{number} clear")),
        (Sort.QUIT, marked("{number} quit")),
        (Sort.HATCHED, marked("{number} hatched")),
    ):
        if any(one.sort is sort for one in own):
            words.append(say(text, number=number_text(total(own, sort))))
    words.append(say("{number} left", number=number_text(eggs_left(batch, farm.counts_of(batch.id), today))))
    return ", ".join(words)


def _gained(farm: Farm, batch: Batch, own: Sequence[Count], came: Sequence[Count]) -> str:
    words = []
    if not batch.origin.is_eggs:
        words.append(say("{number} came", number=number_text(batch.number)))
    elif any(one.sort is Sort.HATCHED for one in own):
        words.append(say("{number} hatched", number=number_text(total(own, Sort.HATCHED))))
    for one in came:
        number = number_text(one.number)
        words.append(say("{number} joined from {batch}", number=number, batch=_name(farm, one.batch_id)))
    return ", ".join(words)


def _died(own: Sequence[Count]) -> str:
    """ "9: 4 chilled, 3 weak, 2 of no known cause", the most first."""
    by_cause: dict[Cause, int] = {}
    for one in own:
        if one.sort is Sort.DIED:
            cause = one.cause or Cause.UNKNOWN
            by_cause[cause] = by_cause.get(cause, 0) + one.number
    if not by_cause:
        return ""
    causes = sorted(by_cause.items(), key=lambda pair: -pair[1])
    words = [f"{number_text(number)} {say(cause)}" for cause, number in causes]
    return say("{number}: {causes}", number=number_text(sum(by_cause.values())), causes=", ".join(words))


def _gone(farm: Farm, own: Sequence[Count]) -> str:
    words = []
    for sort, text in ((Sort.SOLD, marked("{number} sold")), (Sort.PROCESSED, marked("{number} processed"))):
        if number := total(own, sort):
            words.append(say(text, number=number_text(number)))
    for one in own:
        if one.sort in (Sort.PARTED, Sort.JOINED):
            text = marked("{number} parted as {batch}") if one.sort is Sort.PARTED else marked("{number} to {batch}")
            words.append(say(text, number=number_text(one.number), batch=_name(farm, one.to_batch_id)))
    return ", ".join(words)


def _alive(season: Season, batch: Batch, today: date) -> str:
    """How many live today, and whether that was counted or follows from the last count."""
    lived = season.lived(batch)
    if today < batch.start + timedelta(days=max(season.days(batch).hatch, 0)):
        return ""
    birds = count_text(season.birds(batch, today), "bird")
    if lived.known_to is None:
        return say("{birds} expected", birds=birds)
    last = batch.start + timedelta(days=lived.known_to)
    if last >= today:
        return say("{birds}, counted", birds=birds)
    then = number_text(season.birds(batch, last))
    return say("{birds} expected, {then} counted on {day}", birds=birds, then=then, day=day_text(last, today))


def _name(farm: Farm, batch_id: str) -> str:
    found = farm.find(batch_id)
    return found.name if isinstance(found, Batch) else say("a batch that is gone")


def parentage_rows(farm: Farm, batch: Batch) -> list[tuple[str, str]]:
    """Which batches ``batch`` comes from, and which come from it."""
    rows = []
    if batch.from_ids:
        parents = names_text([_name(farm, parent) for parent in batch.from_ids])
        rows.append((say("From") if batch.origin is Origin.PARTED else say("Eggs from"), parents))
    children = [other for other in farm.batches if batch.id in other.from_ids]
    of_eggs = [other.name for other in children if other.origin.is_eggs]
    parted = [other.name for other in children if not other.origin.is_eggs]
    if of_eggs:
        rows.append((say("Its eggs"), names_text(of_eggs)))
    if parted:
        rows.append((say("Parted from it"), names_text(parted)))
    return rows
