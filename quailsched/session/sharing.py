"""Giving out the calendar of a farm as a file."""

from __future__ import annotations

from datetime import date, timedelta
from pathlib import Path

from quailsched.calendars.publish import Published, publish
from quailsched.calendars.window import AHEAD, PAST
from quailsched.chores.work_out import chores_between
from quailsched.session.open_farm import OpenFarm, utc_now
from quailsched.session.replacing import CALENDAR, require_replaceable


def give_calendar(opened: OpenFarm, path: Path, today: date, *, alarms: bool = False) -> int:
    """Write the chores of the plan around ``today`` to ``path``; how many entries there are.

    The farm remembers what it gave out before the file is written, so that a sequence number is never used
    twice. Raises CalendarError or StoreError with a sentence, also where ``path`` holds a file that is no calendar.
    """
    from quailsched.calendars.text import calendar_text  # the iCalendar library is heavy
    from quailsched.calendars.write import write_calendar

    require_replaceable(path, CALENDAR)
    farm = opened.plan
    chores = chores_between(opened.plan_season, today - PAST, today + AHEAD + timedelta(days=1))
    alarms_from = today if alarms else None
    before = {
        uid: Published(uid, kept.content, kept.sequence, kept.revised) for uid, kept in opened.file.published().items()
    }
    published = publish(farm.settings.id, chores, before, utc_now(), alarms_from=alarms_from)
    text = calendar_text(farm.settings.id, farm.settings.name, chores, published, alarms_from=alarms_from)
    opened.file.save_published(published.values())
    write_calendar(path, text)
    return text.count(b"BEGIN:VEVENT") if chores else 0
