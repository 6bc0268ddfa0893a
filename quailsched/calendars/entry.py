"""What of a chore goes into a calendar, and by which name the outside world knows it.

An entry has no revision fields: its ``content`` is what they are decided by (``publish``).
"""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from datetime import date, timedelta
from uuid import UUID, uuid5

from quailsched.calendars.errors import CalendarError
from quailsched.calendars.words import clean, description_of, one_line, summary_of
from quailsched.chores.chore import Chore
from quailsched.quick import dataclass
from quailsched.words import say

# Raise it whenever ``text`` writes the same entry in other words, so that phones take the new ones (R3).
FORMAT = 1

# Our choice: the evening before, in time to get something ready, and few, so that they are not turned off.
FIRST_ALARM = timedelta(hours=-6)  # counted from the start of the chore's day: 18:00 the evening before
ALARMS_APART = timedelta(minutes=5)
MOST_ALARMS_A_DAY = 3


@dataclass(frozen=True, slots=True)
class Entry:
    """One all-day event. ``alarm`` is counted from the start of ``day``, negative; None means no alarm."""

    uid: str
    day: date
    summary: str
    description: str
    category: str
    alarm: timedelta | None = None

    @property
    def content(self) -> str:
        """SHA-256, as hexadecimal, of everything that is exported but for the revision fields."""
        alarm = "" if self.alarm is None else str(self.alarm.total_seconds())
        parts = (
            str(FORMAT),
            self.uid,
            self.day.isoformat(),
            self.summary,
            self.description,
            self.category,
            alarm,
        )
        # No part holds a NUL (``clean`` drops it), so no two entries join to the same bytes.
        return hashlib.sha256("\0".join(parts).encode()).hexdigest()


def uid_of(farm_id: str, key: str) -> str:
    """The UID of a chore (R1, R2). Raises CalendarError if ``farm_id`` is no UUID."""
    try:
        farm = UUID(farm_id)
    except ValueError:
        raise CalendarError(
            say(
                "farm id: “{id}” cannot be used; a UUID such as {example} would be accepted.",
                id=farm_id,
                example="6f1c9a52-0d0f-4e0f-9a55-0c3f6f2f7f11",
            )
        ) from None
    # A key with an imported id in it can hold a lone surrogate, which uuid5 could not encode.
    return str(uuid5(farm, key.encode("utf-8", "backslashreplace").decode()))


def entries_of(farm_id: str, chores: Sequence[Chore], alarms_from: date | None = None) -> list[Entry]:
    """The entries of ``chores`` by day, in an order that does not depend on theirs.

    ``alarms_from`` is today if alarms are wanted. Raises ValueError if two chores have one key (they would
    overwrite each other on every phone), CalendarError if ``farm_id`` is no UUID.
    """
    in_order = sorted(chores, key=lambda chore: (chore.day, chore.key))
    alarms = {} if alarms_from is None else _alarms(in_order, alarms_from)
    entries = [_entry(farm_id, chore, alarms.get(chore.key)) for chore in in_order]
    if len({entry.uid for entry in entries}) < len(entries):
        keys = [chore.key for chore in in_order]
        raise ValueError(f"chores share a key: {sorted({key for key in keys if keys.count(key) > 1})}")
    return entries


def quiet_entry(farm_id: str, day: date) -> Entry:
    """The one event of a calendar without chores (R7)."""
    how = say("Nothing is planned for these days.")
    return Entry(uid_of(farm_id, "no chores ahead"), day, say("No chores ahead"), how, say("quiet"))


def _entry(farm_id: str, chore: Chore, alarm: timedelta | None) -> Entry:
    summary, description = summary_of(chore), clean(description_of(chore))
    return Entry(uid_of(farm_id, chore.key), chore.day, summary, description, one_line(say(chore.kind)), alarm)


def _alarms(in_order: Sequence[Chore], today: date) -> dict[str, timedelta]:
    """The alarms by key of chore: the first few urgent chores of a day, some minutes apart (R13)."""
    given: dict[date, int] = {}
    alarms: dict[str, timedelta] = {}
    for chore in in_order:
        nth = given.get(chore.day, 0)
        if chore.urgent and chore.day >= today and nth < MOST_ALARMS_A_DAY:
            alarms[chore.key] = FIRST_ALARM + nth * ALARMS_APART
            given[chore.day] = nth + 1
    return alarms
