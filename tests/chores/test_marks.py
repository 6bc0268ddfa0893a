"""Chores as the keeper has marked them: done, left out, put off, given away; own ones; overdue ones; the way round."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from uuid import uuid4

import pytest

from quailsched.chores.asks import asks_of, counts_of
from quailsched.chores.chore import Chore
from quailsched.chores.own import days_of_own
from quailsched.chores.walk import walk_key
from quailsched.chores.work_out import chores_between, overdue_chores
from quailsched.edits.change import apply
from quailsched.edits.marks import give, leave_out, put_off, put_own, tick, untick
from quailsched.farm.example import example_farm
from quailsched.farm.facts import Cause, Count, OwnChore, Sort
from quailsched.farm.faults import FarmError
from quailsched.farm.records import Farm
from quailsched.season.season import Season

TODAY = date(2027, 4, 6)
NOW = datetime(2027, 4, 6, 7, tzinfo=UTC)


def new_id() -> str:
    return str(uuid4())


def example() -> Farm:
    return example_farm(TODAY, new_id)


def chores(farm: Farm, days: int = 60, *, with_left_out: bool = False) -> tuple[Chore, ...]:
    return chores_between(Season(farm), TODAY, TODAY + timedelta(days=days), with_left_out=with_left_out)


def first(farm: Farm, kind: str) -> Chore:
    return next(chore for chore in chores(farm) if chore.kind == kind)


def same(farm: Farm, chore: Chore) -> Chore | None:
    return next((one for one in chores(farm) if one.key == chore.key), None)


def test_a_ticked_chore_is_done_and_its_mark_can_go_again() -> None:
    farm = example()
    chore = first(farm, "bedding")
    done = apply(farm, tick(farm, chore.key, chore.day, chore.title, TODAY))
    after = same(done, chore)
    assert after is not None
    assert after.done_on == TODAY
    assert not after.is_open
    again = apply(done, untick(done, chore.key, chore.day, chore.title))
    assert again == farm


def test_a_chore_that_is_left_out_is_gone_unless_it_is_asked_for() -> None:
    farm = example()
    chore = first(farm, "bedding")
    left = apply(farm, leave_out(farm, chore.key, chore.day, chore.title, " dry  yet "))
    assert same(left, chore) is None
    (shown,) = [one for one in chores(left, with_left_out=True) if one.key == chore.key]
    assert shown.left_out == "dry yet"


def test_leaving_out_needs_a_reason() -> None:
    farm = example()
    chore = first(farm, "bedding")
    with pytest.raises(FarmError, match="a reason of at least one letter is needed"):
        leave_out(farm, chore.key, chore.day, chore.title, "  ")


@pytest.mark.parametrize("days", [-40, 3, 90])
def test_a_chore_that_is_put_off_is_on_its_new_day_and_nowhere_else(days: int) -> None:
    farm = example()
    chore = first(farm, "bedding")
    new = chore.day + timedelta(days=days)
    moved = apply(farm, put_off(farm, chore.key, chore.day, chore.title, new))
    found = [one for one in chores_between(Season(moved), TODAY - timedelta(days=60), TODAY + timedelta(days=180))
             if one.key == chore.key]  # fmt: skip
    assert [(one.day, one.put_off_from) for one in found] == [(new, chore.day)]
    assert chore.key in {one.key for one in chores_between(Season(moved), new, new + timedelta(days=1))}


@pytest.mark.parametrize("days", [-25, -1, 1, 25])
def test_a_chore_that_is_put_off_is_on_its_new_day_though_the_plan_moves_its_own(days: int) -> None:
    # Looked for by the day that it was due on when it was put off, it would be on no day at all.
    farm = example()
    chore = next(one for one in chores(farm, 200) if one.kind == "candle" and one.day > TODAY + timedelta(days=30))
    new = chore.day + timedelta(days=40)
    moved = apply(farm, put_off(farm, chore.key, chore.day, chore.title, new))
    batch = moved.batch(chore.batch_id or "")
    later = moved.with_records(set(), (batch.moved_to(batch.start + timedelta(days=days)),))
    on_the_day = chores_between(Season(later), new, new + timedelta(days=1))
    found = [one for one in on_the_day if one.key == chore.key]
    assert [one.put_off_from for one in found] == [chore.day + timedelta(days=days)]


def test_a_chore_that_is_given_to_somebody_is_theirs_alone() -> None:
    farm = example()
    chore, person = first(farm, "bedding"), farm.people[0]
    given = same(apply(farm, give(farm, chore.key, chore.day, chore.title, person.id)), chore)
    assert given is not None
    assert (given.able, given.given_to) == ((person.name,), person.name)


def test_marks_stay_with_a_chore_that_moves_with_its_batch() -> None:
    farm = example()
    chore = next(one for one in chores(farm, 200) if one.kind == "candle" and one.day > TODAY + timedelta(days=7))
    marked = apply(farm, give(farm, chore.key, chore.day, chore.title, farm.people[0].id))
    batch = marked.batch(chore.batch_id or "")
    later = marked.with_records(set(), (batch.moved_to(batch.start + timedelta(days=5)),))
    found = next(one for one in chores(later, 260) if one.key == chore.key)
    assert (found.day, found.given_to) == (chore.day + timedelta(days=5), farm.people[0].name)


def test_a_hatch_that_was_counted_needs_no_tick() -> None:
    farm = example()
    batch = next(b for b in farm.batches if b.origin.is_eggs and b.start < TODAY)
    day = batch.start + timedelta(days=17)
    told = farm.with_records(set(), (Count(new_id(), Sort.HATCHED, day, NOW, 10, batch.id),))
    (hatch,) = [one for one in chores_between(Season(told), day, day + timedelta(days=1))
                if one.kind == "hatch" and one.batch_id == batch.id]  # fmt: skip
    assert hatch.done_on == day


# own chores


BAD_RULES = [
    *("FREQ=HOURLY", "each week", "FREQ=WEEKLY;INTERVAL=x", "FREQ=DAILY;BYHOUR=3", "\n"),
    *("FREQ=DAILY;INTERVAL=0", "FREQ=DAILY;INTERVAL=-1", "FREQ=DAILY;INTERVAL=9999"),  # it would not come round
]


def test_every_second_monday_and_thursday() -> None:
    # From Thursday 1 April 2027 every second week: that week's Thursday; then Monday 12 and Thursday 15 April.
    own = OwnChore("o", "Turn the compost", date(2027, 4, 1), "FREQ=WEEKLY;INTERVAL=2;BYDAY=MO,TH")
    days = days_of_own(own, date(2027, 3, 1), date(2027, 4, 26))
    assert days == [date(2027, 4, 1), date(2027, 4, 12), date(2027, 4, 15)]


def test_an_own_chore_comes_with_the_others_and_is_marked_day_by_day() -> None:
    farm = example()
    own = OwnChore(new_id(), "Order feed", TODAY, "FREQ=WEEKLY", "two bags", person_id=farm.people[0].id)
    farm = apply(farm, put_own(farm, own))
    mine = [one for one in chores(farm, 15) if one.title == "Order feed"]
    assert [one.day for one in mine] == [TODAY, TODAY + timedelta(days=7), TODAY + timedelta(days=14)]
    done = apply(farm, tick(farm, mine[1].key, mine[1].day, mine[1].title, TODAY))
    assert [one.is_open for one in chores(done, 15) if one.title == "Order feed"] == [True, False, True]


@pytest.mark.parametrize("repeat", BAD_RULES)
def test_a_rule_that_is_none_is_refused(repeat: str) -> None:
    with pytest.raises(FarmError, match="a rule of RFC 5545"):
        put_own(example(), OwnChore("o", "Order feed", TODAY, repeat))


# overdue


def test_nothing_is_overdue_on_a_farm_on_which_nothing_was_ever_said() -> None:
    assert overdue_chores(Season(example()), TODAY) == ()


def test_of_what_comes_round_only_the_last_time_is_overdue_and_only_until_it_is_done() -> None:
    farm = example()
    start = TODAY - timedelta(days=14)
    farm = farm.with_records(set(), (Count(new_id(), Sort.NOTE, start, NOW, words="we begin"),))
    late = overdue_chores(Season(farm), TODAY)
    rounds = [one for one in late if one.kind == "drain"]
    assert rounds
    assert len({one.place_id for one in rounds}) == len(rounds)
    chore = rounds[0]
    done = apply(farm, tick(farm, chore.key, chore.day, chore.title, TODAY))
    assert chore.key not in {one.key for one in overdue_chores(Season(done), TODAY)}
    assert not {one.kind for one in late} & {"turn", "collect", "watch"}


def test_what_was_asked_for_once_is_overdue_on_a_farm_on_which_nothing_else_was_said() -> None:
    """Sharpen is of four days ago, Gone by of three weeks ago, and Sweep comes round: of that nobody told before."""
    farm = example()
    for own in (
        OwnChore("once", "Sharpen", TODAY - timedelta(days=4)),
        OwnChore("old", "Gone by", TODAY - timedelta(days=21)),
        OwnChore("round", "Sweep", TODAY - timedelta(days=9), "FREQ=WEEKLY"),
    ):
        farm = apply(farm, put_own(farm, own))
    (late,) = overdue_chores(Season(farm), TODAY)
    assert late.title == "Sharpen"
    done = apply(farm, tick(farm, late.key, late.day, late.title, TODAY))
    assert not [one for one in overdue_chores(Season(done), TODAY) if one.title == "Sharpen"]


# what a chore asks


def test_a_hatch_asks_for_chicks_and_eggs_that_did_not_and_makes_counts_of_them() -> None:
    farm = example()
    season = Season(farm)
    hatch = first(farm, "hatch")
    asks = {ask.name: ask.expected for ask in asks_of(season, hatch)}
    batch = farm.batch(hatch.batch_id or "")
    expected = season.birds(batch, hatch.day)
    assert asks == {"hatched": expected, "left": batch.number - expected}
    made = counts_of(season, hatch, {"hatched": 70, "left": 20}, hatch.day, NOW, new_id)
    assert {(one.sort, one.number, one.batch_id) for one in made} == {
        (Sort.QUIT, 20, batch.id), (Sort.HATCHED, 70, batch.id)
    }  # fmt: skip


def test_a_tick_records_what_was_counted_in_one_step() -> None:
    farm = example()
    hatch = first(farm, "hatch")
    counts = counts_of(Season(farm), hatch, {"hatched": 20}, hatch.day, NOW, new_id)
    change = tick(farm, hatch.key, hatch.day, hatch.title, hatch.day, counts)
    after = apply(farm, change)
    assert [one.number for one in after.counts] == [20]
    assert len(after.marks) == 1
    assert apply(after, change.inverse()) == farm


# the way round


def test_sick_birds_come_after_healthy_ones_for_a_fortnight() -> None:
    farm = example()
    season, day = Season(farm), TODAY + timedelta(days=21)
    here = [p for place in farm.places if not place.role.holds_eggs for p in season.presences(place)]
    key = walk_key(season, day)
    here = sorted((p for p in here if p.start <= day < p.end), key=lambda p: key(p.place_id))
    young, old = here[0], here[-1]
    assert key(young.place_id) < key(old.place_id)
    died = Count(new_id(), Sort.DIED, day - timedelta(days=14), NOW, 1, young.batch.id, cause=Cause.SICK)
    sick = Season(farm.with_records(set(), (died,)))
    assert walk_key(sick, day)(young.place_id) > walk_key(sick, day)(old.place_id)
    next_day = day + timedelta(days=1)
    assert walk_key(sick, next_day)(young.place_id) < walk_key(sick, next_day)(old.place_id)
