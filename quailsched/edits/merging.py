"""A record of a trial put into the plan of today: what the trial has changed is the trial's, all else the plan's."""

from __future__ import annotations

from dataclasses import fields, replace
from typing import Any

from quailsched.farm.records import Record
from quailsched.quick import dataclass


@dataclass(frozen=True, slots=True)
class Overridden:
    """What both have changed since the trial first did, each in its own way: the trial's holds.

    ``fields`` are of a record that both have. There are none where the trial or the plan has taken it away.
    """

    trial: Record | None
    plan: Record | None
    fields: tuple[str, ...] = ()


def merged(was: Record | None, plan: Record | None, trial: Record | None) -> tuple[Record | None, Overridden | None]:
    """The record that both changes together make, and what of the plan's is overridden by that."""
    if plan in (was, trial):
        return trial, None
    if trial is None or plan is None or was is None or not type(was) is type(plan) is type(trial):
        return trial, Overridden(trial, plan)
    kept: dict[str, Any] = {
        name: getattr(plan, name) for name in _names(trial) if getattr(was, name) == getattr(trial, name)
    }
    both = tuple(
        name for name in _names(trial) if name not in kept and getattr(plan, name) not in _values(name, was, trial)
    )
    return replace(trial, **kept), Overridden(trial, plan, both) if both else None


def was_now(was: Record | None, plan: Record | None, before: Record | None, after: Record | None) -> Record | None:
    """What the trial's new ``after`` is to be compared with: the plan of today, on which it was made.

    A field that both had changed, and that the trial leaves at its own value now, stays one that both have changed.
    """
    overridden = merged(was, plan, before)[1]
    if overridden is None or plan is None or after is None:
        return plan
    same = [name for name in overridden.fields if getattr(before, name) == getattr(after, name)]
    changes: dict[str, Any] = {name: getattr(was, name) for name in same}
    return replace(plan, **changes)


def _names(record: Record) -> list[str]:
    return [field.name for field in fields(record) if field.init]


def _values(name: str, *records: Record) -> list[object]:
    return [getattr(record, name) for record in records]
