"""Borders between the stays of a batch, moved to other days. Days on which birds are known to have moved stay."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Collection
from dataclasses import replace

from quailsched.farm.records import Batch, Part, Stay


def shifted(batch: Batch, by: int, lockdown: int, fixed: frozenset[int]) -> Batch:
    """Borders after day ``lockdown`` ``by`` days later, but for those of ``fixed``, and those that would pass one."""
    borders = {day for stay in batch.stays for day in (stay.from_day, stay.to_day) if day is not None}
    free = [day for day in borders - fixed if day > lockdown]
    moved_to: dict[int, int] = {}
    order = sorted(fixed)
    for between in _runs_between(free, order):
        new = [day + by for day in between]
        keep_order = [bisect_left(order, day) for day in between] == [bisect_left(order, day) for day in new]
        if keep_order and not fixed & set(new):
            moved_to.update(zip(between, new, strict=True))
    return with_borders(batch, moved_to, fixed)


def _runs_between(days: list[int], fixed: list[int]) -> list[list[int]]:
    """``days`` in runs between which lies a day of ``fixed``."""
    runs: dict[int, list[int]] = {}
    for day in sorted(days):
        runs.setdefault(bisect_left(fixed, day), []).append(day)
    return list(runs.values())


def with_borders(batch: Batch, moved_to: dict[int, int], fixed: Collection[int] = ()) -> Batch:
    """The stays with borders on other days; what then has no day left between its borders gets one.

    Where that would push a border away that has to stay (``fixed``), ``batch`` as it is.
    """
    stays = []
    for stay in batch.stays:
        start = moved_to.get(stay.from_day, stay.from_day)
        end = stay.to_day if stay.to_day is None else moved_to.get(stay.to_day, stay.to_day)
        stays.append(replace(stay, from_day=start, to_day=end))
    changed = replace(batch, stays=in_line(tuple(stays)))
    kept = {(stay.place_id, stay.from_day) for stay in changed.stays}
    is_lost = any(s.from_day in fixed and (s.place_id, s.from_day) not in kept for s in batch.stays)
    return batch if is_lost else changed


def in_line(stays: tuple[Stay, ...]) -> tuple[Stay, ...]:
    """Each stay at least a day long and beginning where the one before it ends."""
    due: dict[Part, int] = {}
    found = []
    for stay in stays:
        start = max(stay.from_day, due.get(stay.part, due.get(Part.ALL, stay.from_day)))
        end = stay.to_day if stay.to_day is None else max(stay.to_day, start + 1)
        found.append(replace(stay, from_day=start, to_day=end))
        if end is not None:
            due[stay.part] = end
    return tuple(found)
