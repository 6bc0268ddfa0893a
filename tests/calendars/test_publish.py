"""What the outside world remembers: UIDs, sequence numbers, revision times (R1 to R4, R7)."""

from __future__ import annotations

import hashlib
import re
import uuid
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta, timezone

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quailsched.calendars.entry import uid_of
from quailsched.calendars.errors import CalendarError
from quailsched.calendars.publish import Published, publish
from quailsched.chores.chore import Chore
from tests.calendars.sample import (
    CLOVER,
    FARM_ID,
    NOW,
    SORREL,
    batch_of_chores,
    chore,
    farm_chores,
    published_text,
)

LATER = NOW + timedelta(days=2)
DAY = date(2027, 3, 11)


def uids_of(batch_id: str) -> set[str]:
    return {uid_of(FARM_ID, c.key) for c in farm_chores() if c.batch_id == batch_id}


def test_r1_the_uid_is_uuid5_of_the_farm_and_the_key() -> None:
    # RFC 4122 4.3, made here without uuid5: SHA-1 of the farm's sixteen bytes and the key, cut to sixteen, with
    # version 5 and the variant set.
    raw = bytearray(hashlib.sha1(uuid.UUID(FARM_ID).bytes + b"abc/candle/1").digest()[:16])
    raw[6] = raw[6] & 0x0F | 0x50
    raw[8] = raw[8] & 0x3F | 0x80
    assert uid_of(FARM_ID, "abc/candle/1") == str(uuid.UUID(bytes=bytes(raw)))


def test_r1_two_farms_with_the_same_keys_have_different_uids() -> None:
    assert uid_of(FARM_ID, "abc/1") != uid_of(str(uuid.UUID(int=1)), "abc/1")


def test_r2_a_uid_has_only_hexadecimal_digits_and_hyphens_and_no_title_or_date() -> None:
    for uid in publish(FARM_ID, farm_chores(), {}, NOW):
        assert re.fullmatch(r"[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}", uid)
    renamed = [replace(c, title="Other", day=c.day + timedelta(days=9), batch="X") for c in farm_chores()]
    assert publish(FARM_ID, renamed, {}, NOW).keys() == publish(FARM_ID, farm_chores(), {}, NOW).keys()


def test_r3_a_new_chore_starts_at_sequence_0_revised_now_in_utc_whole_seconds() -> None:
    now = datetime(2027, 3, 1, 23, 30, 15, 999_999, tzinfo=timezone(timedelta(hours=-5)))
    (entry,) = publish(FARM_ID, [chore("a", DAY)], {}, now).values()
    assert (entry.sequence, entry.revised) == (0, datetime(2027, 3, 2, 4, 30, 15, tzinfo=UTC))
    assert entry.revised.tzinfo is UTC


@pytest.mark.parametrize(
    "changed",
    [
        {"title": "Candle again"},
        {"day": DAY + timedelta(days=1)},
        {"how": "Hold each egg still."},
        {"batch": "Cloverleaf"},
        {"place": "Other brooder"},
        {"able": ("Ann",)},
        {"able": ()},
        {"caution": "Wash your hands."},
        {"kind": "candling"},
    ],
    ids=lambda change: next(iter(change)),
)
def test_r3_each_exported_field_raises_the_sequence_by_one(changed: dict[str, object]) -> None:
    before = publish(FARM_ID, [chore("a", DAY)], {}, NOW)
    after = publish(FARM_ID, [replace(chore("a", DAY), **changed)], before, LATER)  # type: ignore[arg-type]
    (entry,) = after.values()
    assert (entry.sequence, entry.revised) == (1, LATER)


def test_r3_what_is_not_exported_changes_nothing() -> None:
    before = publish(FARM_ID, [chore("a", DAY)], {}, NOW)
    same = chore("a", DAY, urgent=True, needs_grown_up=True, batch_id=None, place_id=None)
    assert publish(FARM_ID, [same], before, LATER) == before


def test_r3_two_changes_within_a_second_still_move_the_revision_on() -> None:
    first = publish(FARM_ID, [chore("a", DAY)], {}, NOW)
    second = publish(FARM_ID, [chore("a", DAY, "B")], first, NOW)
    (third,) = publish(FARM_ID, [chore("a", DAY, "C")], second, NOW).values()
    assert (third.sequence, third.revised) == (2, NOW + timedelta(seconds=2))


def test_r3_a_clock_put_back_never_moves_a_revision_back() -> None:
    first = publish(FARM_ID, [chore("a", DAY)], {}, NOW)
    (entry,) = publish(FARM_ID, [chore("a", DAY, "B")], first, NOW - timedelta(days=400)).values()
    assert entry.revised > NOW


def test_moving_a_batch_keeps_uids_and_raises_the_sequence_of_what_changed_only() -> None:
    before = publish(FARM_ID, farm_chores(), {}, NOW)
    moved = [c for c in farm_chores() if c.batch_id != CLOVER]
    moved += batch_of_chores(CLOVER, "Clover", date(2027, 3, 4) + timedelta(days=2))
    after = publish(FARM_ID, moved, before, LATER)

    assert after.keys() == before.keys()
    assert {uid for uid in after if after[uid] != before[uid]} == uids_of(CLOVER)
    assert {after[uid].sequence for uid in uids_of(CLOVER)} == {1}
    assert {after[uid].revised for uid in uids_of(CLOVER)} == {LATER}
    assert {after[uid].sequence for uid in uids_of(SORREL)} == {0}


def test_moving_a_batch_there_and_back_counts_two_changes() -> None:
    there = batch_of_chores(CLOVER, "Clover", date(2027, 3, 6))
    back = batch_of_chores(CLOVER, "Clover", date(2027, 3, 4))
    entries = publish(FARM_ID, back, {}, NOW)
    entries = publish(FARM_ID, there, entries, NOW + timedelta(hours=1))
    entries = publish(FARM_ID, back, entries, NOW + timedelta(hours=2))
    assert {entry.sequence for entry in entries.values()} == {2}


def test_r7_a_chore_that_is_gone_is_remembered_but_not_written() -> None:
    _, before = published_text([chore("a", DAY), chore("b", DAY)])
    text, after = published_text([chore("a", DAY)], before, LATER)
    assert after == before
    assert uid_of(FARM_ID, "b") not in text.decode()
    assert b"CANCELLED" not in text


def test_r7_a_chore_that_comes_back_changed_goes_on_counting() -> None:
    entries = publish(FARM_ID, [chore("a", DAY)], {}, NOW)
    entries = publish(FARM_ID, [chore("a", DAY, "B")], entries, NOW)
    entries = publish(FARM_ID, [chore("z", DAY)], entries, LATER)
    entries = publish(FARM_ID, [chore("a", DAY, "C")], entries, LATER)
    assert entries[uid_of(FARM_ID, "a")].sequence == 2


def test_r7_the_event_of_an_empty_calendar_stays_the_same_until_there_are_chores_again() -> None:
    first, entries = published_text([])
    second, entries = published_text([], entries, LATER)
    assert first == second
    assert b"SUMMARY:No chores ahead" in first
    assert b"DTSTART;VALUE=DATE:20270301\r\n" in first

    some, entries = published_text([chore("a", DAY)], entries, LATER)
    assert b"No chores ahead" not in some
    third, entries = published_text([], entries, LATER + timedelta(days=1))
    assert b"DTSTART;VALUE=DATE:20270304\r\n" in third
    assert b"SEQUENCE:1\r\n" in third


@given(st.permutations([*farm_chores(), *(chore(f"same day {n}", DAY, urgent=True) for n in range(5))]))
def test_r4_the_same_chores_in_any_order_at_any_time_give_the_same_bytes(chores: list[Chore]) -> None:
    text, entries = published_text(sorted(chores, key=lambda c: c.key), alarms_from=DAY)
    again, later = published_text(chores, entries, LATER, alarms_from=DAY)
    assert again == text
    assert later == entries


def test_r4_a_farm_restored_from_what_was_stored_gives_the_same_bytes() -> None:
    text, entries = published_text(farm_chores())
    stored = [(e.uid, e.content, e.sequence, e.revised.isoformat()) for e in entries.values()]
    restored = {u: Published(u, c, s, datetime.fromisoformat(r)) for u, c, s, r in stored}
    assert published_text(farm_chores(), restored, LATER)[0] == text


def test_what_was_published_before_is_left_as_it_was() -> None:
    before = publish(FARM_ID, [chore("a", DAY)], {}, NOW)
    copy = dict(before)
    publish(FARM_ID, [chore("a", DAY, "B"), chore("b", DAY)], before, LATER)
    assert before == copy


def test_two_chores_with_one_key_are_refused_and_named() -> None:
    with pytest.raises(ValueError, match=r"share a key: \['twice'\]"):
        publish(FARM_ID, [chore("twice", DAY), chore("twice", DAY + timedelta(days=1))], {}, NOW)


def test_a_time_without_zone_is_refused() -> None:
    with pytest.raises(ValueError, match="no time zone"):
        publish(FARM_ID, [], {}, NOW.replace(tzinfo=None))


def test_a_farm_id_that_is_no_uuid_is_refused_with_a_sentence() -> None:
    with pytest.raises(CalendarError, match=r"farm id: “my farm” cannot be used; a UUID such as .* accepted\."):
        publish("my farm", [], {}, NOW)


def test_a_key_with_a_lone_surrogate_has_a_uid() -> None:
    assert uuid.UUID(uid_of(FARM_ID, "a\ud800b")).version == 5
