"""What a trial has otherwise than the plan, in words: "Elder set 6 days later, on 3 Jun; 12 eggs fewer"."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import fields
from datetime import date

from quailsched.edits.merging import Overridden
from quailsched.farm.fact_words import count_words
from quailsched.farm.facts import ChoreMark, Count
from quailsched.farm.records import Acceptance, Batch, FigureChoice, Record, Settings, Stay
from quailsched.farm.units import count_text, day_text, names_text
from quailsched.husbandry.handbook import labels
from quailsched.planner.compare import Comparison, RecordPair
from quailsched.words import marked, say, value_text

_WORDS = {
    "floor_cm2": marked("floor"),
    "is_grown_up": marked("age (grown up or not)"),
    "night_lows_c": marked("set of night lows"),
    "ready_on": marked("day on which it is ready"),
    "shut": marked("set of days out of use"),
    "away": marked("set of days away"),
    "points": marked("curve"),
    "outdoors": marked("spot, indoors or outdoors"),
    "turns_itself": marked("way of turning"),
    "light_hours": marked("hours of light"),
    "work_from": marked("day of counting the work"),
    "clean_out_days": marked("clean-out days"),
    "build_hours": marked("hours of building a week"),
    "feeder_cm": marked("feeder space"),
    "drinker_cm": marked("drinker space"),
    "egg_age_days": marked("oldest egg stored in days"),
    "age_days": marked("age in days when they come"),
}
_PLAIN_WORDS = {
    "name": marked("name"), "role": marked("role"), "position": marked("position"), "egg_places": marked("egg places"),
    "note": marked("note"), "heat_sources": marked("heat sources"), "work_hours": marked("work hours"),
    "ready_on": marked("ready on"), "work_from": marked("work from"), "value": marked("value"),
    "reason": marked("reason"), "units": marked("units"), "latitude": marked("latitude"),
    "sure_pct": marked("sure pct"), "kind": marked("kind"), "origin": marked("origin"), "floor_cm2": marked("floor"),
}  # fmt: skip
_BOTH = {"start": marked("first day"), "stays": marked("route"), "number": marked("number")}  # of a batch
_NUMBERS = ("egg_places", "clean_out_days", "heat_sources", "light_hours", "work_hours", "build_hours", "value",
            "egg_age_days", "age_days", "position")  # fmt: skip


def change_lines(comparison: Comparison) -> list[str]:
    """A line for each record that the trial has otherwise: "Elder set 6 days later, on 3 Jun; 12 eggs fewer"."""
    return [_pair_line(comparison, pair) for pair in comparison.records]


def overridden_text(one: Overridden) -> str:
    """What the plan and a trial have both changed, and that the trial's would hold."""
    if one.plan is None:
        assert one.trial is not None
        name = _name(one.trial)
        return say("{record}: the plan has taken it away by now; kept, the trial brings it back.", record=name)
    name = _name(one.plan)
    if one.trial is None:
        return say("{record}: the plan has changed it by now; kept, the trial takes it away.", record=name)
    fields_told = names_text([_field_name(name) for name in one.fields] or [say("entry")])
    return say(
        "{record}: the plan has another {fields} by now; kept, the trial brings its own.",
        record=name,
        fields=fields_told,
    )


def _field_name(name: str) -> str:
    known = _BOTH.get(name) or _WORDS.get(name) or _PLAIN_WORDS.get(name)
    return say(known) if known is not None else name.replace("_", " ")


def _pair_line(comparison: Comparison, pair: RecordPair) -> str:
    before, after = pair.plan, pair.trial
    since = comparison.plan_totals.since
    if after is None:
        assert before is not None
        return say("{record} gone", record=_name(before))
    if before is None:
        return _added(after, since)
    if isinstance(before, Batch) and isinstance(after, Batch):
        words = "; ".join(_batch_words(comparison, before, after)) or say("has another note")
        return f"{before.name} {words}"
    changed = [_field_words(name, before, after, since) for name in _changed_fields(before, after)]
    words = ", ".join(dict.fromkeys(changed)) or say("is something else")
    return f"{_name(before)}: {words}"


def _added(record: Record, since: date) -> str:
    if isinstance(record, Batch):
        what = count_text(record.number, "egg" if record.origin.is_eggs else "bird")
        return say("{record} added: {what} on {day}", record=record.name, what=what, day=day_text(record.start, since))
    return say("{record} added", record=_name(record))


def _name(record: Record) -> str:
    if isinstance(record, FigureChoice):
        return say("Own figure “{figure}”", figure=say(labels()[record.key].text))
    if isinstance(record, Acceptance):
        return say("Accepted clash “{reason}”", reason=record.reason)
    if isinstance(record, Settings):
        return say("Farm")
    if isinstance(record, Count):
        return count_words(record)
    return say("Chore mark") if isinstance(record, ChoreMark) else record.name


def _changed_fields(before: Record, after: Record) -> list[str]:
    names = [one.name for one in fields(before) if one.name != "id"]
    return [name for name in names if getattr(before, name) != getattr(after, name, None)]


def _field_words(name: str, before: Record, after: Record, since: date) -> str:
    """ "ready on 15 Apr instead of 20 Apr" where the values are short, else "another floor"."""
    plain = say(_PLAIN_WORDS[name]) if name in _PLAIN_WORDS else name.replace("_", " ")
    word = say(_WORDS[name]) if name in _WORDS else plain
    values = [getattr(after, name, None), getattr(before, name)]
    if all(isinstance(value, date) for value in values):
        word, texts = plain, [day_text(value, since) for value in values]
    elif name in _NUMBERS:
        texts = [value_text(value) if value is not None else say("not told") for value in values]
    else:
        return say("another {word}", word=word)
    return say("{word} {new} instead of {old}", word=word, new=texts[0], old=texts[1])


def _batch_words(comparison: Comparison, before: Batch, after: Batch) -> Iterator[str]:
    """What is otherwise with a batch; its note is not worth a word."""
    if before.start != after.start:
        days = (after.start - before.start).days
        when = day_text(after.start, comparison.plan_totals.since)
        yield _moved_words(after.origin.is_eggs, days, when)
    if before.number != after.number:
        more = after.number - before.number
        what = count_text(abs(more), "egg") if after.origin.is_eggs else count_text(abs(more), "bird")
        yield say("{what} more", what=what) if more > 0 else say("{what} fewer", what=what)
    yield from _route_words(comparison, before.stays, after.stays)
    for name in _changed_fields(before, after):
        if name == "name":
            yield say("called {name}", name=after.name)
        elif name not in ("start", "number", "stays", "note"):
            yield _field_words(name, before, after, comparison.plan_totals.since)


def _route_words(comparison: Comparison, before: Sequence[Stay], after: Sequence[Stay]) -> Iterator[str]:
    if before == after:
        return
    if len(before) != len(after) or any(old.part is not new.part for old, new in zip(before, after, strict=True)):
        yield say("on another route")
        return
    for old, new in zip(before, after, strict=True):
        is_here = old.place_id == new.place_id
        here = comparison.trial.place(new.place_id).name
        if not is_here:
            yield say("in {new} instead of {old}", new=here, old=comparison.plan.place(old.place_id).name)
        if old.to_day != new.to_day:
            yield _end_words(here, old.to_day, new.to_day)
        if new.leaving is not None and old.leaving is not new.leaving:
            yield say("{leaving} from {place}", leaving=say(new.leaving), place=here)
        elif old.leaving is not new.leaving:
            yield say("no longer {leaving} from {place}", leaving=say(old.leaving or ""), place=here)


def _end_words(place: str, old: int | None, new: int | None) -> str:
    if old is None or new is None:
        return (
            say("stays in {place} to the end", place=place)
            if new is None
            else say("does not stay in {place} to the end", place=place)
        )
    days = count_text(abs(new - old), "day")
    if new > old:
        return say("out of {place} {days} later", place=place, days=days)
    return say("out of {place} {days} earlier", place=place, days=days)


def _moved_words(is_eggs: bool, days: int, when: str) -> str:
    """A batch set, or brought in, on another day."""
    words = {"days": count_text(abs(days), "day"), "day": when}
    if is_eggs:
        return say("set {days} later, on {day}", **words) if days > 0 else say("set {days} earlier, on {day}", **words)
    if days > 0:
        return say("brought in {days} later, on {day}", **words)
    return say("brought in {days} earlier, on {day}", **words)
