"""What the outside world holds on to: UID, sequence number and revision time of every entry given out.

Pure: the clock is passed in, and the caller stores what comes back. Light to import: no iCalendar library.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta

from quailsched.calendars.entry import Entry, entries_of, quiet_entry
from quailsched.chores.chore import Chore
from quailsched.quick import dataclass

_WITHDRAWN = ""  # no content has this hash


@dataclass(frozen=True, slots=True)
class Published:
    """One entry as last given out. ``content`` is ``Entry.content``; ``revised`` is UTC, whole seconds."""

    uid: str
    content: str
    sequence: int
    revised: datetime


def publish(
    farm_id: str,
    chores: Sequence[Chore],
    before: Mapping[str, Published],
    now: datetime,
    *,
    alarms_from: date | None = None,
) -> dict[str, Published]:
    """``before`` brought up to date with ``chores``, by UID.

    New: sequence 0, revised now. Changed: sequence + 1, revised now. The same: kept. Entries of chores no
    longer there are kept, so that a chore that comes back goes on counting where it stopped. ``alarms_from``
    is today if the file is to have alarms. Raises ValueError for a time without zone or two chores with one
    key, CalendarError if ``farm_id`` is no UUID.
    """
    moment = utc_seconds(now)
    after = dict(before)
    for entry in entries_of(farm_id, chores, alarms_from):
        after[entry.uid] = _revised(entry, before.get(entry.uid), moment)
    _publish_quiet(farm_id, bool(chores), after, moment)
    return after


def utc_seconds(moment: datetime) -> datetime:
    """``moment`` in UTC, cut to whole seconds. Raises ValueError if it has no zone."""
    if moment.tzinfo is None:
        raise ValueError(f"{moment.isoformat()} has no time zone; an aware time would be accepted")
    return moment.astimezone(UTC).replace(microsecond=0)


def _revised(entry: Entry, old: Published | None, moment: datetime) -> Published:
    if old is None:
        return Published(entry.uid, entry.content, 0, moment)
    if old.content == entry.content:
        return old
    # Some phones take an entry only when LAST-MODIFIED is newer than theirs: two changes within a second, or
    # a clock that was put back, must still move it on.
    later = max(moment, utc_seconds(old.revised) + timedelta(seconds=1))
    return Published(entry.uid, entry.content, old.sequence + 1, later)


def _publish_quiet(farm_id: str, has_chores: bool, after: dict[str, Published], moment: datetime) -> None:
    """The event of an empty calendar stands on the day that it became empty, until the next chore."""
    entry = quiet_entry(farm_id, moment.date())
    old = after.get(entry.uid)
    if has_chores:
        if old is not None:
            after[entry.uid] = replace(old, content=_WITHDRAWN)
        return
    if old is None or old.content == _WITHDRAWN:
        new = _revised(entry, old, moment)
        after[entry.uid] = replace(new, content=quiet_entry(farm_id, new.revised.date()).content)
