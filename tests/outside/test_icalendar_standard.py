"""The calendar file against the standard: read back by foreign libraries, and judged by a linter of our own.

Sources: RFC 5545, RFC 5546 and RFC 7986 by section; the libraries vobject and ical, which share no code with
icalendar, by which the file is written. Each of the 38 broken files below has one thing wrong; most readers let most
of them pass, so the linter has to see each.
"""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest
import vobject
from hypothesis import given
from hypothesis import strategies as st
from ical.calendar_stream import IcsCalendarStream
from icalendar import Calendar

from quailsched.calendars.entry import uid_of
from quailsched.calendars.words import clean, description_of, summary_of
from tests.calendars.sample import FARM_ID, TODAY, chore, farm_chores, published_text
from tests.outside.ics_linter import lint

ROOT = Path(__file__).parent.parent.parent
GOOD = published_text(farm_chores(), alarms_from=TODAY)[0]
TEXT = st.text(st.characters(exclude_categories=()), max_size=80)

Read = dict[str, tuple[str, str, str, str]]  # UID: first day, day after, summary, description
Mutation = Callable[[bytes], bytes]


def by_icalendar(text: bytes) -> Read:
    events = Calendar.from_ical(text).walk("VEVENT")
    return {
        str(e["uid"]): (str(e.decoded("dtstart")), str(e.decoded("dtend")), str(e["summary"]), str(e["description"]))
        for e in events
    }


def by_vobject(text: bytes) -> Read:
    calendar = vobject.readOne(text.decode())
    calendar.validate(raiseException=True)
    return {
        e.uid.value: (str(e.dtstart.value), str(e.dtend.value), e.summary.value, e.description.value)
        for e in calendar.vevent_list
    }


def by_ical(text: bytes) -> Read:
    calendar = IcsCalendarStream.calendar_from_ics(text.decode())
    return {e.uid or "": (str(e.dtstart), str(e.dtend), e.summary or "", e.description or "") for e in calendar.events}


READERS = {"icalendar": by_icalendar, "vobject": by_vobject, "ical": by_ical}


def expected() -> Read:
    return {
        uid_of(FARM_ID, c.key): (
            c.day.isoformat(),
            date.fromordinal(c.day.toordinal() + 1).isoformat(),
            summary_of(c),
            description_of(c),
        )
        for c in farm_chores()
    }


def print_what_is_read() -> None:
    """Write the file and read it back in this process; for a process of another time zone."""
    text = published_text(farm_chores(), alarms_from=TODAY)[0]
    print(json.dumps({name: reader(text) for name, reader in READERS.items()}))


@pytest.mark.parametrize("zone", ["Pacific/Kiritimati", "Etc/GMT+12", "UTC"])
def test_three_libraries_read_the_chores_on_their_days_in_every_time_zone(zone: str) -> None:
    # UTC+14, UTC-12 and UTC: a day that was written as a midnight would be a day off in one of them.
    code = "from tests.outside.test_icalendar_standard import print_what_is_read as p; p()"
    ran = subprocess.run(
        [sys.executable, "-c", code],
        env={**os.environ, "TZ": zone, "PYTHONPATH": str(ROOT)},
        cwd=ROOT,
        capture_output=True,
        check=True,
        timeout=120,
    )
    read = json.loads(ran.stdout)
    assert read.keys() == READERS.keys()
    for name in READERS:
        assert {uid: tuple(entry) for uid, entry in read[name].items()} == expected(), name


@pytest.mark.parametrize("reader", READERS.values(), ids=READERS)
def test_a_calendar_without_chores_is_read_as_one_quiet_event(reader: Callable[[bytes], Read]) -> None:
    ((first, after, summary, _),) = reader(published_text([])[0]).values()
    assert (first, after, summary) == ("2027-03-01", "2027-03-02", "No chores ahead")


def test_ical_reads_alarms_calendar_name_and_refresh() -> None:
    calendar = IcsCalendarStream.calendar_from_ics(GOOD.decode())
    alarms = [alarm for event in calendar.events for alarm in event.alarm]
    assert {(alarm.action, str(alarm.trigger)) for alarm in alarms} == {("DISPLAY", "-1 day, 18:00:00")}
    urgent = [c for c in farm_chores() if c.urgent]
    assert sorted(alarm.description or "" for alarm in alarms) == sorted(summary_of(c) for c in urgent)


@given(TEXT, TEXT)
def test_any_text_comes_back_as_it_was_from_three_libraries(title: str, how: str) -> None:
    c = chore("a", date(2027, 3, 11), title, how=how)
    text = published_text([c])[0]
    for reader in READERS.values():
        ((_, _, summary, description),) = reader(text).values()
        assert (summary, description) == (summary_of(c), clean(description_of(c)))
    assert lint(text) == []


def replaced(old: str, new: str) -> Mutation:
    """The first ``old`` as ``new``; fails if the good file has none, so that no mutation does nothing."""

    def mutate(text: bytes) -> bytes:
        assert old.encode() in text
        return text.replace(old.encode(), new.encode(), 1)

    return mutate


def dropped(pattern: str) -> Mutation:
    """Without the first piece that matches ``pattern``."""

    def mutate(text: bytes) -> bytes:
        changed, times = re.subn(pattern.encode(), b"", text, count=1)
        assert times == 1
        return changed

    return mutate


def with_span(*lines: str) -> Mutation:
    """With ``lines`` in the place of the first event's DTSTART and DTEND."""
    return replaced("DTSTART;VALUE=DATE:20270304\r\nDTEND;VALUE=DATE:20270305\r\n", "".join(f"{x}\r\n" for x in lines))


def with_line(line: str) -> Mutation:
    """With ``line`` more in the first event."""
    return replaced("STATUS:CONFIRMED\r\n", f"STATUS:CONFIRMED\r\n{line}\r\n")


def in_head(line: str) -> Mutation:
    return replaced("X-PUBLISHED-TTL:PT1H\r\n", f"X-PUBLISHED-TTL:PT1H\r\n{line}\r\n")


def first_uid_twice(text: bytes) -> bytes:
    first, second = re.findall(rb"UID:(.+)\r\nSEQUENCE", text)[:2]
    return text.replace(second, first)


def fold_inside_a_character(text: bytes) -> bytes:
    middle = text.index("·".encode()) + 1
    return text[:middle] + b"\r\n " + text[middle:]


def without_events(text: bytes) -> bytes:
    return text[: text.index(b"BEGIN:VEVENT")] + b"END:VCALENDAR\r\n"


TODO = (
    "BEGIN:VTODO\r\nUID:00000000-0000-4000-8000-000000000001\r\nDTSTAMP:20270301T083000Z\r\n"
    "DTSTART;VALUE=DATE:20270310\r\nDUE;VALUE=DATE:20270309\r\nEND:VTODO\r\n"
)
DATE_SPAN = ("DTSTART;VALUE=DATE:20270304", "DTEND;VALUE=DATE:20270305")
UTC_SPAN = ("DTSTART:20270304T100000Z", "DTEND:20270304T101500Z")

BROKEN: dict[str, tuple[Mutation, str, str]] = {
    "01 no DTSTAMP": (dropped(r"DTSTAMP:.*\r\n"), "RFC 5545 3.8.7.2", "lacks DTSTAMP"),
    "02 UID twice": (first_uid_twice, "RFC 5545 3.8.4.7", "share the UID"),
    "03 TZID undefined": (
        with_span("DTSTART;TZID=Nowhere/Place:20270304T100000", "DTEND;TZID=Nowhere/Place:20270304T101500"),
        "RFC 5545 3.2.19",
        "Nowhere/Place has no VTIMEZONE",
    ),
    "04 TZID without VTIMEZONE": (
        with_span("DTSTART;TZID=Europe/Berlin:20270304T100000", "DTEND;TZID=Europe/Berlin:20270304T101500"),
        "RFC 5545 3.2.19",
        "Europe/Berlin has no VTIMEZONE",
    ),
    "05 unfolded": (replaced("\r\n ", ""), "RFC 5545 3.1", "more than 75"),
    "06 bare LF": (lambda text: text.replace(b"\r\n", b"\n"), "RFC 5545 3.1", "CRLF"),
    "07 DTEND before DTSTART": (
        with_span("DTSTART;VALUE=DATE:20270304", "DTEND;VALUE=DATE:20270303"),
        "RFC 5545 3.8.2.2",
        "not after",
    ),
    "08 VALUE=DATE with a time": (
        with_span("DTSTART;VALUE=DATE:20270304T100000", "DTEND;VALUE=DATE:20270305"),
        "RFC 5545 3.3.4",
        "is no DATE",
    ),
    "09 date without VALUE": (
        with_span("DTSTART:20270304", "DTEND:20270305"),
        "RFC 5545 3.3.5",
        "is no DATE-TIME",
    ),
    "10 date and time mixed": (
        with_span("DTSTART;VALUE=DATE:20270304", "DTEND:20270305T100000Z"),
        "RFC 5545 3.8.2.2",
        "DTEND is a DATE-TIME, DTSTART a DATE",
    ),
    "11 alarm without ACTION": (dropped("ACTION:DISPLAY\r\n"), "RFC 5545 3.6.6", "lacks ACTION"),
    "12 alarm without TRIGGER": (dropped("TRIGGER:-PT6H\r\n"), "RFC 5545 3.6.6", "lacks TRIGGER"),
    "13 DISPLAY without DESCRIPTION": (
        dropped(r"(?<=ACTION:DISPLAY\r\n)DESCRIPTION:.*\r\n"),
        "RFC 5545 3.6.6",
        "lacks DESCRIPTION",
    ),
    "14 fold inside a character": (fold_inside_a_character, "RFC 5545 3.1", "a fold splits"),
    "15 over 75 octets in 75 characters": (
        replaced("SUMMARY:Set eggs", "SUMMARY:" + "ä" * 40),
        "RFC 5545 3.1",
        "more than 75",
    ),
    "16 no UID": (dropped(r"UID:.*\r\n(?=SEQUENCE)"), "RFC 5545 3.8.4.7", "lacks UID"),
    "17 no PRODID": (dropped(r"PRODID:.*\r\n"), "RFC 5545 3.7.3", "lacks PRODID"),
    "18 no VERSION": (dropped(r"VERSION:.*\r\n"), "RFC 5545 3.7.4", "lacks VERSION"),
    "19 comma and semicolon unescaped": (
        replaced("SUMMARY:Set eggs", "SUMMARY:Set eggs, warm; turn"),
        "RFC 5545 3.3.11",
        "not escaped",
    ),
    "20 raw line break in a text": (
        replaced("SUMMARY:Set eggs", "SUMMARY:Set\r\neggs"),
        "RFC 5545 3.1",
        "no content line",
    ),
    "21 DTEND and DURATION": (with_line("DURATION:P1D"), "RFC 5545 3.6.1", "DTEND and DURATION"),
    "22 UNTIL of another type": (
        with_span(*DATE_SPAN, "RRULE:FREQ=DAILY;UNTIL=20270310T000000Z"),
        "RFC 5545 3.3.10",
        "is no DATE as DTSTART is",
    ),
    "23 COUNT and UNTIL": (
        with_span(*DATE_SPAN, "RRULE:FREQ=DAILY;COUNT=3;UNTIL=20270310"),
        "RFC 5545 3.3.10",
        "COUNT and UNTIL",
    ),
    "24 all day without length": (
        with_span("DTSTART;VALUE=DATE:20270304", "DTEND;VALUE=DATE:20270304"),
        "RFC 5545 3.8.2.2",
        "not after",
    ),
    "25 STATUS of a to-do": (
        replaced("STATUS:CONFIRMED", "STATUS:COMPLETED"),
        "RFC 5545 3.8.1.11",
        "not for a VEVENT",
    ),
    "26 invalid UTF-8": (
        lambda text: text.replace("·".encode(), b"\xb7", 1),
        "RFC 5545 3.1.4",
        "not UTF-8",
    ),
    "27 byte order mark": (lambda text: b"\xef\xbb\xbf" + text, "RFC 5545 3.4", "byte order mark"),
    "28 control character": (
        replaced("SUMMARY:Set eggs", "SUMMARY:Set\x07eggs"),
        "RFC 5545 3.1",
        "control character",
    ),
    "29 no component": (without_events, "RFC 5545 3.6", "without any component"),
    "30 cut short": (lambda text: text[: text.rindex(b"BUSYSTATUS")], "RFC 5545 3.6", "cut short"),
    "31 REFRESH-INTERVAL without VALUE": (
        replaced("REFRESH-INTERVAL;VALUE=DURATION:", "REFRESH-INTERVAL:"),
        "RFC 7986 5.7",
        "without VALUE=DURATION",
    ),
    "32 COLOR in hexadecimal": (in_head("COLOR:#c0392b"), "RFC 7986 5.9", "no CSS3 colour name"),
    "33 EXDATE of another type": (
        with_span(*DATE_SPAN, "RRULE:FREQ=DAILY;COUNT=3", "EXDATE:20270305T000000Z"),
        "RFC 5545 3.8.5.1",
        "is no DATE as DTSTART is",
    ),
    "34 DUE before DTSTART": (
        replaced("BEGIN:VEVENT", TODO + "BEGIN:VEVENT"),
        "RFC 5545 3.8.2.3",
        "DUE 20270309 is not after",
    ),
    "35 no DTSTART": (with_span("DTEND;VALUE=DATE:20270305"), "RFC 5545 3.6.1", "without DTSTART"),
    "36 SUMMARY twice": (with_line("SUMMARY:Again"), "RFC 5545 3.6.1", "SUMMARY stands 2 times"),
    "37 impossible time": (
        with_span("DTSTART:20270304T250000Z", UTC_SPAN[1]),
        "RFC 5545 3.3.5",
        "20270304T250000Z is no DATE-TIME",
    ),
    "38 web page": (
        lambda text: b"<!DOCTYPE html>\r\n<html><body>Log in</body></html>\r\n",
        "RFC 5545 3.4",
        "begins with BEGIN:VCALENDAR",
    ),
}
# Beyond the 38: what our own requirements and RFC 5546 forbid.
MORE_BROKEN: dict[str, tuple[Mutation, str, str]] = {
    "name after a component": (
        replaced("END:VCALENDAR", "X-WR-CALNAME:Late\r\nEND:VCALENDAR"),
        "RFC 5545 3.6",
        "after a component",
    ),
    "PUBLISH without organizer": (in_head("METHOD:PUBLISH"), "RFC 5546 3.2.1", "needs an ORGANIZER"),
    "UID with a host": (
        lambda text: re.sub(rb"UID:.*\r\nSEQ", b"UID:1@farm.local\r\nSEQ", text, count=1),
        "RFC 7986 5.3",
        "letters, digits and hyphens",
    ),
    "unknown property": (with_line("COLOUR:red"), "RFC 5545 3.8.8.2", "no known property"),
    "local DTSTAMP": (
        lambda text: re.sub(rb"DTSTAMP:(\d{8}T\d{6})Z", rb"DTSTAMP:\1", text, count=1),
        "RFC 5545 3.8.7.2",
        "no time in UTC",
    ),
    "bad duration": (replaced("TRIGGER:-PT6H", "TRIGGER:-6H"), "RFC 5545 3.8.6.3", "is no duration"),
    "last line not ended": (lambda text: text.removesuffix(b"\r\n"), "RFC 5545 3.1", "not ended by CRLF"),
}
# What cannot be wrong alone: the file is cut within a line.
ALSO = {"30 cut short": {"RFC 5545 3.1"}}


@pytest.mark.parametrize("alarms_from", [None, TODAY])
def test_the_linter_finds_nothing_wrong_with_our_file(alarms_from: date | None) -> None:
    assert lint(published_text(farm_chores(), alarms_from=alarms_from)[0]) == []
    assert lint(published_text([], alarms_from=alarms_from)[0]) == []


def test_there_are_thirty_eight_broken_files() -> None:
    assert [name[:2] for name in BROKEN] == [f"{n:02}" for n in range(1, 39)]


@pytest.mark.parametrize("name", [*BROKEN, *MORE_BROKEN])
def test_the_linter_sees_each_broken_file_and_names_the_section_and_nothing_else(name: str) -> None:
    mutate, section, words = {**BROKEN, **MORE_BROKEN}[name]
    broken = mutate(GOOD)
    assert broken != GOOD
    findings = lint(broken)
    assert any(finding.section == section and words in finding.message for finding in findings), findings
    assert {finding.section for finding in findings} - ALSO.get(name, set()) <= {section}
    assert all(str(finding).startswith(finding.section) for finding in findings)


def test_the_linter_takes_a_timed_event_and_a_series_that_are_right() -> None:
    good = with_span(*UTC_SPAN, "RRULE:FREQ=DAILY;UNTIL=20270310T100000Z", "EXDATE:20270305T100000Z")(GOOD)
    assert lint(good) == []


# RFC 5545 section 4, the first and the second example; a UID with a host in it was still allowed there.
RFC_EXAMPLES = {
    "conference": """BEGIN:VCALENDAR
PRODID:-//xyz Corp//NONSGML PDA Calendar Version 1.0//EN
VERSION:2.0
BEGIN:VEVENT
DTSTAMP:19960704T120000Z
UID:uid1@example.com
ORGANIZER:mailto:jsmith@example.com
DTSTART:19960918T143000Z
DTEND:19960920T220000Z
STATUS:CONFIRMED
CATEGORIES:CONFERENCE
SUMMARY:Networld+Interop Conference
DESCRIPTION:Networld+Interop Conference
  and Exhibit\\nAtlanta World Congress Center\\n
 Atlanta\\, Georgia
END:VEVENT
END:VCALENDAR
""",
    "meeting with its zone": """BEGIN:VCALENDAR
PRODID:-//RDU Software//NONSGML HandCal//EN
VERSION:2.0
BEGIN:VTIMEZONE
TZID:America/New_York
BEGIN:STANDARD
DTSTART:19981025T020000
TZOFFSETFROM:-0400
TZOFFSETTO:-0500
TZNAME:EST
END:STANDARD
BEGIN:DAYLIGHT
DTSTART:19990404T020000
TZOFFSETFROM:-0500
TZOFFSETTO:-0400
TZNAME:EDT
END:DAYLIGHT
END:VTIMEZONE
BEGIN:VEVENT
DTSTAMP:19980309T231000Z
UID:guid-1.example.com
ORGANIZER:mailto:mrbig@example.com
ATTENDEE;RSVP=TRUE;ROLE=REQ-PARTICIPANT;CUTYPE=GROUP:
 mailto:employee-A@example.com
DESCRIPTION:Project XYZ Review Meeting
CATEGORIES:MEETING
CLASS:PUBLIC
CREATED:19980309T130000Z
SUMMARY:XYZ Project Review
DTSTART;TZID=America/New_York:19980312T083000
DTEND;TZID=America/New_York:19980312T093000
LOCATION:1CP Conference Room 4350
END:VEVENT
END:VCALENDAR
""",
}


@pytest.mark.parametrize("name", RFC_EXAMPLES)
def test_the_linter_takes_the_examples_of_rfc_5545_section_4_but_for_their_uids(name: str) -> None:
    findings = lint(RFC_EXAMPLES[name].replace("\n", "\r\n").encode())
    assert {finding.section for finding in findings} == {"RFC 7986 5.3"}
