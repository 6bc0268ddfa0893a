"""The bytes of the calendar file (R4 to R14), looked at as lines, without an iCalendar library."""

from __future__ import annotations

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quailsched.calendars.entry import FORMAT, MOST_ALARMS_A_DAY
from quailsched.calendars.publish import publish
from quailsched.calendars.text import LIMIT_BYTES, calendar_text
from quailsched.calendars.window import in_window
from quailsched.chores.chore import Chore
from tests.calendars.sample import FARM_ID, FARM_NAME, NOW, TODAY, chore, farm_chores, published_text

DAY = date(2027, 3, 11)
ANY_TEXT = st.text(st.characters(exclude_categories=()), max_size=120)


def unfolded(text: bytes) -> list[str]:
    return text.replace(b"\r\n ", b"").decode().split("\r\n")[:-1]


def lines_of(chores: list[Chore], alarms_from: date | None = None) -> list[str]:
    return unfolded(published_text(chores, alarms_from=alarms_from)[0])


def values(lines: list[str], name: str) -> list[str]:
    return [line.removeprefix(f"{name}:") for line in lines if line.startswith(f"{name}:")]


def chores_a_day(number: int) -> list[Chore]:
    """So many chores on each day of the window, with as much text as a long one has; one of them is urgent."""
    how = "Take the old litter out into a lidded bin, scrape the corners, dry shavings 5 cm deep. " * 2
    caution = "Litter dust carries Salmonella: mask on, wash your hands."
    days = [TODAY + timedelta(days=n) for n in range(-7, 121)]
    return [
        chore(f"{day}/{n}", day, "Change bedding", how=how, caution=caution, urgent=n == 0)
        for day in days
        for n in range(number)
    ]


def test_r3_dtstamp_and_last_modified_are_the_revision_and_sequence_goes_with_them() -> None:
    _, before = published_text([chore("a", DAY), chore("b", DAY, "Turn")])
    text, _ = published_text([chore("a", DAY), chore("b", DAY, "Turn off")], before, NOW + timedelta(hours=1))
    lines = unfolded(text)
    assert values(lines, "DTSTAMP") == values(lines, "LAST-MODIFIED") == ["20270301T083000Z", "20270301T093000Z"]
    assert values(lines, "SEQUENCE") == ["0", "1"]


def test_r3_a_calendar_that_is_not_published_up_to_date_is_not_written() -> None:
    entries = publish(FARM_ID, [chore("a", DAY)], {}, NOW)
    with pytest.raises(ValueError, match="has to be published before"):
        calendar_text(FARM_ID, FARM_NAME, [chore("a", DAY, "Other")], entries)
    with pytest.raises(ValueError, match="has to be published before"):
        calendar_text(FARM_ID, FARM_NAME, [], {})


def test_r3_what_every_entry_says_alike_is_changed_together_with_the_format_number() -> None:
    said = {1: ["STATUS:CONFIRMED", "TRANSP:TRANSPARENT", "X-MICROSOFT-CDO-BUSYSTATUS:FREE"]}
    own = ("SUMMARY", "DESCRIPTION", "CATEGORIES", "DTSTART", "DTEND", "UID")
    revision = ("DTSTAMP", "LAST-MODIFIED", "SEQUENCE")
    lines = lines_of([chore("a", DAY)])
    event = lines[lines.index("BEGIN:VEVENT") + 1 : lines.index("END:VEVENT")]
    assert [line for line in event if not line.startswith((*own, *revision))] == said[FORMAT]


def test_r5_every_chore_is_an_all_day_event_that_ends_the_next_day() -> None:
    days = (date(2027, 12, 31), date(2028, 2, 28), date(2028, 2, 29))
    lines = lines_of([chore(str(day), day) for day in days])
    assert values(lines, "DTSTART;VALUE=DATE") == ["20271231", "20280228", "20280229"]
    assert values(lines, "DTEND;VALUE=DATE") == ["20280101", "20280229", "20280301"]


def test_r6_there_is_no_zone_no_series_and_no_local_time() -> None:
    text, _ = published_text(farm_chores(), alarms_from=TODAY)
    for word in (b"TZID", b"VTIMEZONE", b"RRULE", b"RDATE", b"X-WR-TIMEZONE"):
        assert word not in text
    times = [line for line in unfolded(text) if line.startswith(("DTSTAMP", "LAST-MODIFIED"))]
    assert all(line.endswith("Z") for line in times)
    assert len(times) == 2 * len(farm_chores())


def test_r8_there_is_no_method_and_the_calendar_itself_has_no_uid() -> None:
    lines = lines_of(farm_chores())
    head = lines[: lines.index("BEGIN:VEVENT")]
    assert not any(line.startswith(("METHOD", "UID")) for line in head)
    assert not values(lines, "METHOD")


def test_r9_r10_the_head_names_the_calendar_and_its_refresh_before_any_component() -> None:
    lines = lines_of(farm_chores())
    assert lines[: lines.index("BEGIN:VEVENT")] == [
        "BEGIN:VCALENDAR",
        "VERSION:2.0",
        "PRODID:-//Quailsched//Calendar of chores//EN",
        "NAME:Pebble Bank\\, Upper Field",
        "X-WR-CALNAME:Pebble Bank\\, Upper Field",
        "REFRESH-INTERVAL;VALUE=DURATION:PT1H",
        "X-PUBLISHED-TTL:PT1H",
    ]


def test_r9_a_farm_without_a_name_still_has_a_calendar_name() -> None:
    assert b"\r\nNAME:Quail chores\r\n" in published_text([chore("a", DAY)], farm_name=" \n")[0]


def test_r11_text_is_escaped() -> None:
    how = "Feed; water, then\nD:\\Notes \\n is no line break"
    lines = lines_of([chore("a", DAY, how=how, able=("Ann",))])
    said = "Feed\\; water\\, then\\nD:\\\\Notes \\\\n is no line break\\nWho can do it: Ann."
    assert values(lines, "DESCRIPTION") == [said]


@given(ANY_TEXT, ANY_TEXT, ANY_TEXT)
def test_r11_any_text_gives_crlf_lines_of_75_octets_and_no_control_character(title: str, how: str, name: str) -> None:
    text, _ = published_text([chore("a", DAY, title, how=how, able=(name,))], farm_name=name)
    assert text.endswith(b"END:VCALENDAR\r\n")
    for line in text.removesuffix(b"\r\n").split(b"\r\n"):
        assert len(line) <= 75
        assert not any((octet < 32 and octet != 9) or octet == 127 for octet in line)
        line.decode()  # no character is split by a fold
    assert len([line for line in unfolded(text) if line.startswith("BEGIN:")]) == 2


def test_r12_chores_take_no_time_and_tell_no_place_on_the_map() -> None:
    lines = lines_of(farm_chores())
    count = len(farm_chores())
    assert values(lines, "TRANSP") == ["TRANSPARENT"] * count
    assert values(lines, "X-MICROSOFT-CDO-BUSYSTATUS") == ["FREE"] * count
    assert values(lines, "STATUS") == ["CONFIRMED"] * count
    assert not any(line.startswith(("LOCATION", "GEO", "URL", "SOURCE", "ORGANIZER")) for line in lines)


def test_r13_there_are_no_alarms_unless_asked_for() -> None:
    assert b"VALARM" not in published_text(farm_chores())[0]
    assert b"BEGIN:VALARM" in published_text(farm_chores(), alarms_from=TODAY)[0]


def test_r13_only_urgent_chores_from_today_on_have_an_alarm() -> None:
    chores = [
        chore("past", DAY - timedelta(days=1), "Past", urgent=True),
        chore("today", DAY, "Today", urgent=True),
        chore("calm", DAY, "Calm"),
        chore("ahead", DAY + timedelta(days=1), "Ahead", urgent=True),
    ]
    lines = lines_of(chores, alarms_from=DAY)
    starts = [at for at, line in enumerate(lines) if line == "BEGIN:VALARM"]
    alarms = [lines[at : at + 6] for at in starts]
    assert [alarm[2] for alarm in alarms] == [
        "DESCRIPTION:Today · Clover · Tub brooder",
        "DESCRIPTION:Ahead · Clover · Tub brooder",
    ]
    assert all(alarm[1] == "ACTION:DISPLAY" and alarm[3] == "TRIGGER:-PT6H" for alarm in alarms)
    assert all(alarm[4].startswith("UID:") and alarm[5] == "END:VALARM" for alarm in alarms)


def test_r13_alarms_of_a_day_are_few_and_never_at_one_moment() -> None:
    lines = lines_of([chore(str(n), DAY, urgent=True) for n in range(9)], alarms_from=TODAY)
    assert values(lines, "TRIGGER") == ["-PT6H", "-PT5H55M", "-PT5H50M"]
    assert len(values(lines, "TRIGGER")) == MOST_ALARMS_A_DAY


def test_r13_an_alarm_keeps_its_uid_when_its_chore_moves() -> None:
    def alarm_uid(day: date) -> str:
        lines = lines_of([chore("a", day, urgent=True)], alarms_from=TODAY)
        return lines[lines.index("BEGIN:VALARM") + 4]

    assert alarm_uid(DAY) == alarm_uid(DAY + timedelta(days=3))
    assert alarm_uid(DAY) not in lines_of([chore("a", DAY)])


def test_r13_turning_alarms_on_revises_the_chores_that_get_one() -> None:
    chores = [chore("a", DAY, urgent=True), chore("b", DAY)]
    before = publish(FARM_ID, chores, {}, NOW)
    after = publish(FARM_ID, chores, before, NOW, alarms_from=TODAY)
    assert sorted(entry.sequence for entry in after.values()) == [0, 1]


def test_r14_the_window_is_the_past_7_and_the_coming_120_days() -> None:
    chores = [chore(str(n), TODAY + timedelta(days=n)) for n in range(-10, 130)]
    kept = in_window(chores, TODAY)
    assert (kept[0].day, kept[-1].day) == (TODAY - timedelta(days=7), TODAY + timedelta(days=120))
    assert len(kept) == 128


def test_r14_a_busy_season_stays_below_500_kb() -> None:
    # Five chores on each of the 128 days, with alarms: more than a farm of two people and seven batches has.
    chores = chores_a_day(5)
    text, _ = published_text(chores, alarms_from=TODAY)
    assert 300_000 < len(text) < LIMIT_BYTES
    assert text.count(b"BEGIN:VEVENT") == len(chores)


def test_r14_a_season_that_is_too_much_loses_its_last_days_whole_and_stays_below_500_kb() -> None:
    text, _ = published_text(chores_a_day(20))
    starts = values(unfolded(text), "DTSTART;VALUE=DATE")
    assert LIMIT_BYTES - 20_000 < len(text) < LIMIT_BYTES  # a day of twenty is about 12 kB
    assert {starts.count(start) for start in starts} == {20}
    assert starts[0] == "20270222"
    assert text.endswith(b"END:VEVENT\r\nEND:VCALENDAR\r\n")


def test_r14_the_first_day_is_written_however_long_it_is() -> None:
    chores = [chore(str(n), DAY + timedelta(days=n // 3)) for n in range(6)]
    text = calendar_text(FARM_ID, FARM_NAME, chores, publish(FARM_ID, chores, {}, NOW), limit_bytes=1)
    assert text.count(b"BEGIN:VEVENT") == 3


def test_ten_thousand_chores_are_all_written() -> None:
    chores = [chore(str(n), TODAY + timedelta(days=n % 120)) for n in range(10_000)]
    text = calendar_text(FARM_ID, FARM_NAME, chores, publish(FARM_ID, chores, {}, NOW), limit_bytes=10**9)
    assert text.count(b"BEGIN:VEVENT") == 10_000
