"""What a trial has otherwise than the plan, in words: "Elder set 6 days later, on 3 Jun; 12 eggs fewer"."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import fields
from datetime import date

from quailsched.edits.merging import Overridden
from quailsched.farm.records import Acceptance, Batch, FigureChoice, Record, Settings, Stay
from quailsched.farm.units import count_text, day_text, names_text
from quailsched.husbandry.handbook import labels
from quailsched.planner.compare import Comparison, RecordPair

_WORDS = {
    "floor_cm2": "floor",
    "is_grown_up": "age (grown up or not)",
    "night_lows_c": "set of night lows",
    "ready_on": "day on which it is ready",
    "shut": "set of days out of use",
    "away": "set of days away",
    "points": "curve",
    "outdoors": "spot, indoors or outdoors",
    "turns_itself": "way of turning",
    "light_hours": "hours of light",
    "work_from": "day of counting the work",
    "clean_out_days": "clean-out days",
    "build_hours": "hours of building a week",
    "feeder_cm": "feeder space",
    "drinker_cm": "drinker space",
    "egg_age_days": "oldest egg stored in days",
    "age_days": "age in days when they come",
}
_BOTH = {"start": "first day", "stays": "route", "number": "number"}  # of a batch
_NUMBERS = ("egg_places", "clean_out_days", "heat_sources", "light_hours", "work_hours", "build_hours", "value",
            "egg_age_days", "age_days", "position")  # fmt: skip


def change_lines(comparison: Comparison) -> list[str]:
    """A line for each record that the trial has otherwise: "Elder set 6 days later, on 3 Jun; 12 eggs fewer"."""
    return [_pair_line(comparison, pair) for pair in comparison.records]


def overridden_text(one: Overridden) -> str:
    """What the plan and a trial have both changed, and that the trial's would hold."""
    if one.plan is None:
        assert one.trial is not None
        return f"{_name(one.trial)}: the plan has taken it away by now; kept, the trial brings it back."
    if one.trial is None:
        return f"{_name(one.plan)}: the plan has changed it by now; kept, the trial takes it away."
    words = [_BOTH.get(name, _WORDS.get(name, name.replace("_", " "))) for name in one.fields] or ["entry"]
    return f"{_name(one.plan)}: the plan has another {names_text(words)} by now; kept, the trial brings its own."


def _pair_line(comparison: Comparison, pair: RecordPair) -> str:
    before, after = pair.plan, pair.trial
    since = comparison.plan_totals.since
    if after is None:
        assert before is not None
        return f"{_name(before)} gone"
    if before is None:
        return _added(after, since)
    if isinstance(before, Batch) and isinstance(after, Batch):
        return f"{before.name} {'; '.join(_batch_words(comparison, before, after)) or 'has another note'}"
    changed = [_field_words(name, before, after, since) for name in _changed_fields(before, after)]
    return f"{_name(before)}: {', '.join(dict.fromkeys(changed)) or 'is something else'}"


def _added(record: Record, since: date) -> str:
    if isinstance(record, Batch):
        what = count_text(record.number, "egg" if record.origin.is_eggs else "bird")
        return f"{record.name} added: {what} on {day_text(record.start, since)}"
    return f"{_name(record)} added"


def _name(record: Record) -> str:
    if isinstance(record, FigureChoice):
        return f"Own figure “{labels()[record.key].text}”"
    if isinstance(record, Acceptance):
        return f"Accepted clash “{record.reason}”"
    if isinstance(record, Settings):
        return "Farm"
    return record.name


def _changed_fields(before: Record, after: Record) -> list[str]:
    names = [one.name for one in fields(before) if one.name != "id"]
    return [name for name in names if getattr(before, name) != getattr(after, name, None)]


def _field_words(name: str, before: Record, after: Record, since: date) -> str:
    """ "ready on 15 Apr instead of 20 Apr" where the values are short, else "another floor"."""
    plain = name.replace("_", " ")
    word = _WORDS.get(name, plain)
    values = [getattr(after, name, None), getattr(before, name)]
    if all(isinstance(value, date) for value in values):
        word, texts = plain, [day_text(value, since) for value in values]
    elif name in _NUMBERS:
        texts = [f"{value:g}" if value is not None else "not told" for value in values]
    else:
        return f"another {word}"
    return f"{word} {texts[0]} instead of {texts[1]}"


def _batch_words(comparison: Comparison, before: Batch, after: Batch) -> Iterator[str]:
    """What is otherwise with a batch; its note is not worth a word."""
    if before.start != after.start:
        days = (after.start - before.start).days
        verb = "set" if after.origin.is_eggs else "brought in"
        when = day_text(after.start, comparison.plan_totals.since)
        yield f"{verb} {count_text(abs(days), 'day')} {'later' if days > 0 else 'earlier'}, on {when}"
    if before.number != after.number:
        more = after.number - before.number
        what = count_text(abs(more), "egg" if after.origin.is_eggs else "bird")
        yield f"{what} {'more' if more > 0 else 'fewer'}"
    yield from _route_words(comparison, before.stays, after.stays)
    for name in _changed_fields(before, after):
        if name == "name":
            yield f"called {after.name}"
        elif name not in ("start", "number", "stays", "note"):
            yield _field_words(name, before, after, comparison.plan_totals.since)


def _route_words(comparison: Comparison, before: Sequence[Stay], after: Sequence[Stay]) -> Iterator[str]:
    if before == after:
        return
    if len(before) != len(after) or any(old.part is not new.part for old, new in zip(before, after, strict=True)):
        yield "on another route"
        return
    for old, new in zip(before, after, strict=True):
        is_here = old.place_id == new.place_id
        here = comparison.trial.place(new.place_id).name
        if not is_here:
            yield f"in {here} instead of {comparison.plan.place(old.place_id).name}"
        if old.to_day != new.to_day:
            yield _end_words(here, old.to_day, new.to_day)
        if new.leaving is not None and old.leaving is not new.leaving:
            yield f"{new.leaving.value} from {here}"
        elif old.leaving is not new.leaving:
            yield f"no longer {old.leaving} from {here}"


def _end_words(place: str, old: int | None, new: int | None) -> str:
    if old is None or new is None:
        return f"{'stays in' if new is None else 'does not stay in'} {place} to the end"
    return f"out of {place} {count_text(abs(new - old), 'day')} {'later' if new > old else 'earlier'}"
