"""The calendar file that a phone or a desk calendar reads: what is in it and how it is written.

``publish`` keeps what the outside world remembers (UIDs, sequence numbers, revision times), ``text`` makes
the bytes, ``write`` puts them on the disk, ``window`` says which days go in. Chores come from ``chores``. The
file keeps these requirements, and the tests are named by them:

R1   A chore keeps its UID for life, through moves, restarts and back-ups (RFC 5545 3.8.4.7).
R2   A UID is uuid5 of the farm's id and the chore's key: no host, date or title in it (RFC 7986 5.3).
R3   DTSTAMP, LAST-MODIFIED and SEQUENCE move together, only when the entry's content has changed, and never
     back (RFC 5545 3.8.7.2, 3.8.7.3, 3.8.7.4).
R4   When nothing has changed the file has the same bytes, whenever and in whatever order it is made.
R5   A chore is an all-day event: DTSTART and DTEND with VALUE=DATE, DTEND the next day, always written
     (RFC 5545 3.3.4, 3.6.1, 3.8.2.2).
R6   Every written time is UTC; no floating time, no TZID, no VTIMEZONE, and each chore is an event of its own
     without RRULE (RFC 5545 3.3.5, 3.8.5.3).
R7   A chore that is gone is left out, never sent as CANCELLED; with no chores at all one quiet event is
     written, since a calendar has at least one component (RFC 5545 3.6).
R8   No METHOD, and no UID on the calendar itself (RFC 5545 3.7.2, RFC 5546 3.2.1).
R9   NAME and X-WR-CALNAME stand before the first component (RFC 5545 3.6, RFC 7986 5.1).
R10  REFRESH-INTERVAL;VALUE=DURATION and X-PUBLISHED-TTL, one hour (RFC 7986 5.7).
R11  CRLF, lines of at most 75 octets that never split a character, text escaped and free of control
     characters and lone surrogates (RFC 5545 3.1, 3.3.11).
R12  Chores take no time of the day and tell nothing of where the farm is: TRANSP:TRANSPARENT, no LOCATION,
     GEO or URL (RFC 5545 3.8.2.7, 3.8.1.6, 3.8.1.7, 3.8.4.6).
R13  Alarms only when asked for, only on urgent chores from today on, few a day, never two at one moment, with
     a DISPLAY action, a description, a relative trigger not after the start of the day, and a stable UID
     (RFC 5545 3.6.6, RFC 9074 4).
R14  The file covers the past 7 and the coming 120 days and stays below 500 kB: on a large farm the last days
     are left out, whole, and come in as time goes on.
R15  The file is written whole or not at all, and not touched when its bytes would be the same.
"""
