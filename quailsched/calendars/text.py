"""The bytes of a calendar file (RFC 5545, RFC 7986), written with the icalendar library."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date, timedelta
from itertools import groupby
from uuid import UUID, uuid5

from icalendar import Alarm, Calendar, Component, Event, vDuration, vText

from quailsched.calendars.entry import Entry, entries_of, quiet_entry
from quailsched.calendars.publish import Published, utc_seconds
from quailsched.calendars.words import one_line
from quailsched.chores.chore import Chore
from quailsched.words import say

PRODID = "-//Quailsched//Calendar of chores//EN"
REFRESH = timedelta(hours=1)
_END = b"END:VCALENDAR\r\n"
LIMIT_BYTES = 500_000  # calendars that fetch the file by themselves give up at about 1 MB (R14)


class _ExactText(vText):
    """TEXT of RFC 5545 3.3.11.

    WORKAROUND: vText of icalendar 7.3 writes a backslash before a capital N ("D:\\Notes") as a line break;
    remove when it escapes that backslash too.
    """

    def to_ical(self) -> bytes:
        escaped = self.replace("\\", "\\\\").replace(";", "\\;").replace(",", "\\,").replace("\n", "\\n")
        return escaped.encode()


def calendar_text(
    farm_id: str,
    farm_name: str,
    chores: Sequence[Chore],
    published: Mapping[str, Published],
    *,
    alarms_from: date | None = None,
    limit_bytes: int = LIMIT_BYTES,
) -> bytes:
    """The calendar of ``chores``, with the revisions that ``publish`` gave for the same chores.

    The farm's name becomes the calendar's name. ``alarms_from`` is today if alarms are wanted, and the same
    as was published. Days are left out from the end, whole, so that the file stays below ``limit_bytes``; its
    first day is always in it. Raises ValueError if ``published`` is not up to date, CalendarError if
    ``farm_id`` is no UUID.
    """
    entries = entries_of(farm_id, chores, alarms_from) or [_quiet(farm_id, published)]
    parts = [_octets(_head(farm_name)).removesuffix(_END)]
    size = len(parts[0]) + len(_END)
    for _, of_day in groupby(entries, key=lambda entry: entry.day):
        day = b"".join(_octets(_event(entry, _revision_of(entry, published))) for entry in of_day)
        size += len(day)
        if size >= limit_bytes and len(parts) > 1:
            break
        parts.append(day)
    return b"".join([*parts, _END])


def _octets(component: Component) -> bytes:
    data: bytes = component.to_ical()
    return data


def _revision_of(entry: Entry, published: Mapping[str, Published]) -> Published:
    revision = published.get(entry.uid)
    if revision is None or revision.content != entry.content:
        raise ValueError(f"“{entry.summary}” on {entry.day} has to be published before it is written")
    return revision


def _quiet(farm_id: str, published: Mapping[str, Published]) -> Entry:
    uid = quiet_entry(farm_id, date.min).uid
    if uid not in published:
        raise ValueError("an empty calendar has to be published before it is written")
    return quiet_entry(farm_id, utc_seconds(published[uid].revised).date())


def _head(farm_name: str) -> Calendar:
    name = _ExactText(one_line(farm_name) or say("Quail chores"))
    calendar = Calendar()
    calendar.add("version", "2.0")
    calendar.add("prodid", PRODID)
    calendar.add("name", name)
    calendar.add("x-wr-calname", name)
    # The library leaves out VALUE, which RFC 7986 5.7 asks for.
    calendar.add("refresh-interval", vDuration(REFRESH, {"VALUE": "DURATION"}))
    calendar.add("x-published-ttl", vDuration(REFRESH))
    return calendar


def _event(entry: Entry, revision: Published) -> Event:
    revised = utc_seconds(revision.revised)
    event = Event()
    event.add("uid", entry.uid)
    event.add("dtstamp", revised)  # without METHOD the same as LAST-MODIFIED (RFC 5545 3.8.7.2)
    event.add("last-modified", revised)
    event.add("sequence", revision.sequence)
    event.add("dtstart", entry.day)
    event.add("dtend", entry.day + timedelta(days=1))
    event.add("summary", _ExactText(entry.summary))
    event.add("description", _ExactText(entry.description))
    if entry.category:
        event.add("categories", [entry.category])
    event.add("status", "CONFIRMED")
    event.add("transp", "TRANSPARENT")
    event.add("x-microsoft-cdo-busystatus", "FREE")
    if entry.alarm is not None:
        event.add_component(_alarm(entry, entry.alarm))
    return event


def _alarm(entry: Entry, trigger: timedelta) -> Alarm:
    alarm = Alarm()
    alarm.add("uid", str(uuid5(UUID(entry.uid), "alarm")))
    alarm.add("action", "DISPLAY")
    alarm.add("description", _ExactText(entry.summary))
    alarm.add("trigger", trigger)
    return alarm
