"""Edits: each a pure step that can be taken back, refused with a sentence where it makes no sense."""

from dataclasses import replace
from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quailsched.edits.batches import change_place, end_stay, shift, start_on
from quailsched.edits.change import Change, Touch, apply
from quailsched.edits.records import put, remove
from quailsched.farm.check import faults_of
from quailsched.farm.faults import FarmError
from quailsched.farm.records import Farm, FigureChoice, Leaving, Part, Person
from tests.builders import ARK, BROODER, HATCHER, MONDAY, PEN, SETTER, eggs, farm, stay
from tests.strategies import days, farms


def life() -> Farm:
    return farm(
        eggs(
            "Aster", 60, stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, 46), stay(PEN, 46, 59),
            stay(PEN, 59, None, Part.HENS), stay(ARK, 59, 73, Part.COCKS, Leaving.PROCESSED),
        ),
    )  # fmt: skip


@given(farms(), st.data())
def test_any_edit_and_its_inverse_give_back_the_farm(one: Farm, data: st.DataObject) -> None:
    change = put(one, Person("new", "A new person"))
    if one.batches:
        batch = data.draw(st.sampled_from(one.batches))
        moved, removed = start_on(one, batch.id, data.draw(days())), remove(one, batch.id)
        change = data.draw(st.sampled_from([change, moved, removed]))
    after = apply(one, change)
    assert faults_of(after) == []
    assert apply(after, change.inverse()) == one
    assert apply(apply(after, change.inverse()), change) == after


@given(farms(), st.integers(-60, 60))
def test_moving_a_batch_moves_its_start_and_nothing_else(one: Farm, days: int) -> None:
    for batch in one.batches:
        after = apply(one, shift(one, batch.id, days))
        assert after.batch(batch.id) == replace(batch, start=batch.start + timedelta(days=days))
        assert [b for b in after.batches if b.id != batch.id] == [b for b in one.batches if b.id != batch.id]


def test_a_move_is_named_by_its_day() -> None:
    assert start_on(life(), "aster", date(2027, 3, 7)).label == "Set Aster on 7 Mar"


def test_a_move_out_of_all_time_is_refused() -> None:
    with pytest.raises(FarmError, match="batch Aster, start: “2240-01-01” cannot be used; a day from 1990-01-01"):
        start_on(life(), "aster", date(2240, 1, 1))


def test_ending_a_stay_lets_the_next_begin() -> None:
    after = apply(life(), end_stay(life(), "aster", 2, 42))
    stays = after.batch("aster").stays
    assert [(s.from_day, s.to_day) for s in stays] == [(0, 15), (15, 18), (18, 42), (42, 59), (59, None), (59, 73)]


def test_ending_the_last_stay_of_all_moves_the_split() -> None:
    after = apply(life(), end_stay(life(), "aster", 3, 65))
    assert [(s.part, s.from_day) for s in after.batch("aster").stays[4:]] == [(Part.HENS, 65), (Part.COCKS, 65)]


def test_a_stay_cannot_end_before_it_begins() -> None:
    with pytest.raises(FarmError, match="a stay ends after the day it starts on"):
        end_stay(life(), "aster", 2, 18)


def test_another_place_for_one_stay() -> None:
    change = change_place(life(), "aster", 3, ARK.id)
    assert change.label == "Aster goes to Ark"
    assert apply(life(), change).batch("aster").stays[3].place_id == ARK.id


def test_a_place_in_use_cannot_be_removed() -> None:
    with pytest.raises(FarmError, match="remove place: “Brooder” cannot be used; it is on the route of Aster"):
        remove(life(), BROODER.id)


def test_a_record_on_which_others_rest_cannot_be_removed() -> None:
    # Lockdown on day 20 of 21 is sound; on day 20 of the published 17 it is not.
    long = FigureChoice("days", "coturnix", "incubation_days", 21.0)
    late = FigureChoice("late", "coturnix", "lockdown_day", 20.0)
    one = life().with_records(set(), (long, late))
    assert faults_of(one) == []
    with pytest.raises(FarmError, match=r"figures of coturnix: Day of lockdown.*: 20 cannot be used; less than 17 is"):
        remove(one, "days")
    assert remove(one, "late").touches == (Touch(late, None),)


def test_settings_and_strangers_cannot_be_removed() -> None:
    with pytest.raises(FarmError, match="a farm keeps its settings"):
        remove(life(), "farm")
    with pytest.raises(FarmError, match="the id of a record of this farm"):
        remove(life(), "nobody")


def test_a_bad_record_is_refused_with_every_fault() -> None:
    with pytest.raises(FarmError) as caught:
        put(life(), replace(PEN, id="new", floor_cm2=0, clean_out_days=-1))
    told = str(caught.value)
    assert "place, name: “Pen” cannot be used; another place has it already" in told
    assert "place Pen, floor in cm²: 0 cannot be used; a whole number from 100" in told
    assert "place Pen, clean-out days: -1 cannot be used; a whole number from 0 to 90" in told


def test_an_old_fault_does_not_stand_in_the_way_of_another_change() -> None:
    broken = Farm(replace(life().settings, name=" ")).with_records(set(), ())
    assert faults_of(broken)
    assert apply(broken, put(broken, Person("p", "Mia"))).people[0].name == "Mia"


def test_a_change_that_does_not_fit_is_not_applied() -> None:
    change = shift(life(), "aster", 3)
    with pytest.raises(ValueError, match="does not fit this farm"):
        apply(apply(life(), change), change)


def test_two_steps_join_into_one() -> None:
    first = shift(life(), "aster", 3)
    second = shift(apply(life(), first), "aster", 4)
    joined = first.then(second)
    assert apply(life(), joined).batch("aster").start == MONDAY + timedelta(days=7)
    assert apply(apply(life(), joined), joined.inverse()) == life()
    assert joined.label == "Set Aster on 8 Mar"


def test_a_change_of_nothing_is_empty() -> None:
    batch = life().batch("aster")
    assert Change("nothing", (Touch(batch, batch),)).is_empty()
    assert not shift(life(), "aster", 1).is_empty()
