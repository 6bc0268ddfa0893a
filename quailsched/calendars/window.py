"""Which days a calendar file covers (R14)."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

from quailsched.chores.chore import Chore

PAST = timedelta(days=7)
AHEAD = timedelta(days=120)


def in_window(chores: Sequence[Chore], today: date) -> list[Chore]:
    """The chores of the past 7 days, of today and of the coming 120 days, in the order that they came in."""
    return [chore for chore in chores if today - PAST <= chore.day <= today + AHEAD]
