# ruff: noqa: E501 - the sentences are long and read best whole
"""What makes a farm unsound, each fault with field, value and what would be accepted."""

from dataclasses import replace
from datetime import date

import pytest
from hypothesis import given

from quailsched.farm.check import faults_of
from quailsched.farm.records import (
    Batch,
    Farm,
    FigureChoice,
    Leaving,
    Origin,
    Part,
    Person,
    Record,
    Role,
    Settings,
    Span,
    Stay,
)
from tests.builders import ALL_PLACES, BROODER, HATCHER, MONDAY, PEN, SETTER, SETTINGS, eggs, stay
from tests.strategies import farms

GOOD = eggs("Aster", 60, stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, 46, leaving=Leaving.SOLD))


def told(*records: Record, settings: Settings = SETTINGS) -> list[str]:
    one = Farm(settings, ALL_PLACES).with_records(set(), records)
    return [fault.sentence() for fault in faults_of(one)]


def routed(*stays: Stay) -> Batch:
    return replace(GOOD, stays=stays)


@given(farms())
def test_random_farms_are_sound(one: Farm) -> None:
    assert faults_of(one) == []


def test_a_good_batch_has_no_fault() -> None:
    assert told(GOOD) == []


@pytest.mark.parametrize(
    ("record", "sentence"),
    [
        (replace(GOOD, number=0), "batch Aster, eggs set: 0 cannot be used; a whole number from 1 to 100,000 is accepted."),
        (replace(GOOD, number=-5), "batch Aster, eggs set: -5 cannot be used; a whole number from 1 to 100,000 is accepted."),
        (replace(GOOD, kind="goose"), "batch Aster, kind: “goose” cannot be used; one of coturnix, coturnix-heavy, bobwhite, button is accepted."),
        (replace(GOOD, start=date(1950, 1, 1)), "batch Aster, start: “1950-01-01” cannot be used; a day from 1990-01-01 to 2199-12-31 is accepted."),
        (replace(GOOD, age_days=3), "batch Aster, age in days: 3 cannot be used; eggs have no age as birds: 0 is accepted."),
        (replace(GOOD, name=" "), "batch, name: “ ” cannot be used; a name of at least one letter is needed."),
        (replace(GOOD, name="As\nter\t"), "batch, name: “As ter ” cannot be used; a name on one line, without tabs, is accepted."),
        (replace(GOOD, name="As\u2028ter"), "batch, name: “As ter” cannot be used; a name on one line, without tabs, is accepted."),
        (replace(GOOD, name="A" * 101), f"batch, name: “{'A' * 40}…” cannot be used; a name of up to 100 letters is accepted."),
        (routed(), "batch Aster, stays: there are none; at least the place of its first day is needed."),
        (routed(stay(SETTER, 0, 15), stay(HATCHER, 16, 18)), "batch Aster, stay from day: 16 cannot be used; it leaves a gap: day 15 is accepted."),
        (routed(stay(SETTER, 0, 15), stay(HATCHER, 12, 18)), "batch Aster, stay from day: 12 cannot be used; it overlaps the one before: day 15 is accepted."),
        (routed(stay(SETTER, 2, 15)), "batch Aster, stay from day: 2 cannot be used; it leaves a gap: day 0 is accepted."),
        (routed(stay(SETTER, 0, None), stay(HATCHER, 15, 18)), "batch Aster, stay to day: “open” cannot be used; only the last stay may be open: a day is needed."),
        (routed(Stay("nowhere", 0, 15)), "batch Aster, place of a stay: “nowhere” cannot be used; the id of a place of this farm is accepted."),
        (routed(stay(BROODER, 0, 15)), "batch Aster, first place: “Brooder” cannot be used; eggs start where eggs are held."),
        (routed(stay(SETTER, 0, 15, leaving=Leaving.SOLD), stay(HATCHER, 15, 18)), "batch Aster, leaving: “sold” cannot be used; only a last stay that ends may say where its birds go."),
        (routed(stay(SETTER, 0, 5000)), "batch Aster, stay to day: 5000 cannot be used; up to day 3,650 is accepted."),
        (replace(BROODER, floor_cm2=-1), "place Brooder, floor in cm²: -1 cannot be used; a whole number from 100 to 100,000,000 is accepted."),
        (replace(BROODER, egg_places=4), "place Brooder, egg places: 4 cannot be used; a brooder has floor, no egg places."),
        (replace(SETTER, egg_places=0), "place Setter, egg places: 0 cannot be used; a whole number from 1 to 100,000 is accepted."),
        (replace(PEN, id="pen 2", name="brooder"), "place, name: “brooder” cannot be used; another place has it already, each needs its own."),
        (Person("p", "Ann", away=(Span(MONDAY, MONDAY),)), "person Ann, away: “2027-03-01 to 2027-03-01” cannot be used; the end is the first day after, so it lies after the start."),
        (FigureChoice("f", "coturnix", "shoe_size", 3.0), "figure coturnix shoe_size"),
        (FigureChoice("f", "coturnix", "lockdown_day", 19.0), "figures of coturnix"),
    ],
)  # fmt: skip
def test_each_fault_is_told_with_what_would_be_accepted(record: Record, sentence: str) -> None:
    found = told(record)
    assert any(text.startswith(sentence) for text in found), found


def test_parts_come_after_all_and_in_their_order() -> None:
    split = (stay(SETTER, 0, 18), stay(BROODER, 18, 46))
    mixed = routed(*split, stay(PEN, 46, None, Part.COCKS), stay(PEN, 46, None, Part.HENS))
    assert any("first the stays of all, then of the hens, then of the cocks" in text for text in told(mixed))
    late = routed(*split, stay(PEN, 48, None, Part.HENS))
    assert "batch Aster, hens, stay from day: 48 cannot be used; it leaves a gap: day 46 is accepted." in told(late)


def test_bought_birds_start_on_a_floor() -> None:
    birds = Batch("h", "Hazel", "coturnix", Origin.BOUGHT_BIRDS, MONDAY, 10, (stay(SETTER, 0, None),), age_days=30)
    assert "batch Hazel, first place: “Setter” cannot be used; birds start on a floor." in told(birds)


def test_nights_come_by_the_dozen_and_stay_on_earth() -> None:
    assert told(settings=replace(SETTINGS, night_lows_c=(1.0, 2.0))) == [
        "farm, night lows: 2 values cannot be used; twelve night lows are needed, January to December, or none."
    ]
    assert len(told(settings=replace(SETTINGS, night_lows_c=(99.0,) * 12))) == 12
    assert told(settings=replace(SETTINGS, latitude=91.0)) == [
        "farm, latitude: 91.0 cannot be used; between -90 and 90 degrees is accepted."
    ]


def test_all_faults_are_told_at_once() -> None:
    found = told(
        replace(GOOD, number=0, kind="goose"), replace(BROODER, floor_cm2=0), settings=replace(SETTINGS, name="")
    )
    assert len(found) == 4


def test_every_role_is_either_for_eggs_or_for_birds() -> None:
    assert {role for role in Role if role.holds_eggs} == {Role.SETTER, Role.HATCHER, Role.CABINET}
    assert {role for role in Role if role.is_pen} == {Role.PEN, Role.GRASS_PEN}
