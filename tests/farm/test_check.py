# ruff: noqa: E501 - the sentences are long and read best whole
"""What makes a farm unsound, each fault with field, value and what would be accepted."""

import json
from dataclasses import replace
from datetime import date
from math import nan

import pytest
from hypothesis import given

from quailsched.farm.check import faults_of
from quailsched.farm.plain import plain_of, tagged
from quailsched.farm.records import (
    Acceptance,
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
    Trial,
    TrialRecord,
)
from quailsched.farm.versions import VERSION
from tests.builders import ALL_PLACES, BROODER, HATCHER, MONDAY, PEN, SETTER, SETTINGS, eggs, stay
from tests.strategies import farms

GOOD = eggs("Aster", 60, stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, 46, leaving=Leaving.SOLD))


def told(*records: Record, settings: Settings = SETTINGS) -> list[str]:
    one = Farm(settings, ALL_PLACES).with_records(set(), records)
    return [fault.sentence() for fault in faults_of(one)]


CALM = Acceptance("a", "calm", PEN.id, ("aster",), 2.0, 0, 7, "they are quiet")


def tried(*records: TrialRecord) -> Trial:
    return Trial("t", "Early", records)


def routed(*stays: Stay) -> Batch:
    return replace(GOOD, stays=stays)


@given(farms(has_facts=True))
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
        (replace(GOOD, name=" "), "batch, name: it is empty; a name of at least one letter is needed."),
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
        (FigureChoice("f", "coturnix", "shoe_size", 3.0), "figure coturnix shoe_size: Coturnix standard: it has no figure or curve “shoe_size” that could be replaced."),
        (FigureChoice("f", "coturnix", "lockdown_day", 19.0), "figures of coturnix: Day of lockdown: turning stops, into the hatcher: 19 cannot be used; less than 17 is possible (Days from setting to hatch)."),
        (replace(BROODER, heat_sources=-1), "place Brooder, heat sources: -1 cannot be used; a whole number from 0 to 1,000 is accepted."),
        (replace(PEN, heat_sources=1), "place Pen, heat sources: 1 cannot be used; a pen has none, so it is left empty."),
        (replace(SETTER, heat_sources=0), "place Setter, heat sources: 0 cannot be used; a setter has none, so it is left empty."),
        (replace(PEN, feeder_cm=1_000_001), "place Pen, feeder space in cm: 1000001 cannot be used; a whole number from 0 to 1,000,000 is accepted."),
        (replace(SETTER, feeder_cm=10), "place Setter, feeder space in cm: 10 cannot be used; a setter has none, so it is left empty."),
        (replace(PEN, drinker_cm=-2), "place Pen, drinker space in cm: -2 cannot be used; a whole number from 0 to 1,000,000 is accepted."),
        (replace(HATCHER, drinker_cm=10), "place Hatcher, drinker space in cm: 10 cannot be used; a hatcher has none, so it is left empty."),
        (replace(PEN, light_hours=24.5), "place Pen, hours of light a day: 24.5 cannot be used; a number from 0 to 24 is accepted."),
        (replace(PEN, light_hours=nan), "place Pen, hours of light a day: nan cannot be used; a number from 0 to 24 is accepted."),
        (replace(SETTER, light_hours=1.0), "place Setter, hours of light a day: 1.0 cannot be used; a setter has none, so it is left empty."),
        (replace(PEN, work_hours=-1.0), "place Pen, hours of work left: -1.0 cannot be used; a number from 0 to 10,000 is accepted."),
        (replace(PEN, work_hours=8.0), "place Pen, work counted on: no day is given; the day on which the hours of work were counted is needed."),
        (replace(PEN, work_from=date(1950, 1, 1)), "place Pen, work counted on: “1950-01-01” cannot be used; a day from 1990-01-01 to 2199-12-31 is accepted."),
        (Person("p", "Ann", build_hours=169.0), "person Ann, hours of building a week: 169.0 cannot be used; a number from 0 to 168 is accepted."),
        (replace(CALM, kind=" "), "accepted clash in Pen, kind: “ ” cannot be used; the word for a kind of clash is needed."),
        (replace(CALM, place_id=" "), "accepted clash in a place that has gone, place: “ ” cannot be used; the id of a place is needed."),
        (replace(CALM, batch_ids=()), "accepted clash in Pen, batches: there are none; the id of at least one batch is needed."),
        (replace(CALM, batch_ids=("aster", "")), "accepted clash in Pen, batches: “” cannot be used; the id of a batch is needed."),
        (replace(CALM, reason=""), "accepted clash in Pen, reason: it is empty; a reason of at least one letter is needed."),
        (replace(CALM, reason="a\nb"), "accepted clash in Pen, reason: “a b” cannot be used; a reason on one line, without tabs, is accepted."),
        (replace(CALM, reason="a" * 101), f"accepted clash in Pen, reason: “{'a' * 40}…” cannot be used; a reason of up to 100 letters is accepted."),
        (replace(CALM, amount=-0.5), "accepted clash in Pen, amount: -0.5 cannot be used; a number from 0 to 1,000,000,000 is accepted."),
        (replace(CALM, birds=-1), "accepted clash in Pen, birds: -1 cannot be used; a whole number from 0 to 1,000,000 is accepted."),
        (replace(CALM, days=0), "accepted clash in Pen, days: 0 cannot be used; a whole number from 1 to 100,000 is accepted."),
        (Trial("t", " "), "trial, name: it is empty; a name of at least one letter is needed."),
        (tried(TrialRecord("aster", ""), TrialRecord("aster", "")), "trial Early, records: “aster” cannot be used; a trial has each record once."),
        (tried(TrialRecord(" ", "")), "trial Early, records: “ ” cannot be used; the id of a record is needed."),
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
    assert told(settings=replace(SETTINGS, sure_pct=100)) == [
        "farm, how sure: 100 cannot be used; a whole number from 50 to 99 is accepted."
    ]
    assert told(settings=replace(SETTINGS, latitude=91.0)) == [
        "farm, latitude: 91.0 cannot be used; between -90 and 90 degrees is accepted."
    ]


def test_fittings_and_work_that_were_told_are_sound() -> None:
    brooder = replace(BROODER, heat_sources=2, feeder_cm=60, drinker_cm=0, light_hours=24.0)
    pen = replace(PEN, light_hours=14.5, work_hours=8.0, work_from=MONDAY)
    assert told(brooder, pen, Person("p", "Ann", build_hours=6.5)) == []


def test_an_accepted_clash_and_a_trial_outlive_their_place_and_batches() -> None:
    gone = replace(GOOD, id="gone")
    record = TrialRecord("gone", json.dumps(tagged(gone)))
    assert told(replace(CALM, place_id="gone", batch_ids=("gone",)), tried(record, TrialRecord("fled", ""))) == []


def test_two_trials_need_two_names() -> None:
    assert told(Trial("t", "Early"), Trial("u", "early")) == [
        "trial, name: “early” cannot be used; another trial has it already, each needs its own."
    ]


@pytest.mark.parametrize(
    "content",
    [
        "hello",
        "[]",
        "3",
        "[" * 100_000,
        json.dumps(plain_of(GOOD)),  # of no type
        json.dumps(tagged(replace(GOOD, id="other"))),
        json.dumps(tagged(GOOD) | {"number": "many"}),
        json.dumps(tagged(GOOD) | {"version": VERSION + 1}),
        json.dumps(tagged(Trial("aster", "within"))),
    ],
)
def test_the_content_of_a_trial_is_a_record_of_its_id(content: str) -> None:
    assert told(tried(TrialRecord("aster", content))) == [
        "trial Early, records, aster: its content is something else; the JSON text of a record with this id is needed."
    ]


def test_all_faults_are_told_at_once() -> None:
    found = told(
        replace(GOOD, number=0, kind="goose"), replace(BROODER, floor_cm2=0), settings=replace(SETTINGS, name="")
    )
    assert len(found) == 4


def test_every_role_is_either_for_eggs_or_for_birds() -> None:
    assert {role for role in Role if role.holds_eggs} == {Role.SETTER, Role.HATCHER, Role.CABINET}
    assert {role for role in Role if role.is_pen} == {Role.PEN, Role.GRASS_PEN}
