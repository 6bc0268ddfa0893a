"""What a trial has otherwise than the plan, in words: "Elder set 6 days later, on 3 Jun; 12 eggs fewer"."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import fields
from datetime import date

from quailsched.farm.records import Acceptance, Batch, FigureChoice, Record, Settings, Stay
from quailsched.farm.units import count_text, day_text
from quailsched.husbandry.handbook import labels
from quailsched.planner.compare import Comparison, RecordPair

_WORDS = {
    "floor_cm2": "floor",
    "is_grown_up": "grown up or not",
    "night_lows_c": "night lows",
    "ready_on": "the day that it is ready",
    "shut": "days out of use",
    "away": "days away",
    "points": "value",
    "egg_age_days": "how long its eggs were stored",
    "age_days": "age when they come",
}


def change_lines(comparison: Comparison) -> list[str]:
    """A line for each record that the trial has otherwise: "Elder set 6 days later, on 3 Jun; 12 eggs fewer"."""
    return [_pair_line(comparison, pair) for pair in comparison.records]


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
    changed = _changed_fields(before, after)
    return f"{_name(before)}: {', '.join(changed)} changed"


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
    found = [name for name in names if getattr(before, name) != getattr(after, name, None)]
    return list(dict.fromkeys(_WORDS.get(name, name.replace("_", " ")) for name in found))


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
    rest = [name for name in _changed_fields(before, after) if name not in ("start", "number", "stays", "note")]
    if rest:
        yield f"{', '.join(rest)} changed"


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
