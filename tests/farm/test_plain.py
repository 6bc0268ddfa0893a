"""Records as plain JSON values and back."""

from __future__ import annotations

import json
from datetime import date
from typing import Any

import pytest
from hypothesis import given

from quailsched.farm.facts import ChoreMark, Count, OwnChore
from quailsched.farm.faults import FarmError
from quailsched.farm.plain import RECORD_TAGS, plain_of, record_from, record_from_tagged, tagged
from quailsched.farm.records import (
    Acceptance,
    Batch,
    Farm,
    FigureChoice,
    Origin,
    Part,
    Person,
    Place,
    Role,
    Settings,
    Span,
    Stay,
    Trial,
)
from tests.strategies import farms

CLOVER = Batch(
    id="b",
    name="Clover",
    kind="coturnix",
    origin=Origin.OWN_EGGS,
    start=date(2027, 2, 3),
    number=90,
    stays=(Stay("s", 0, 15), Stay("p", 15, None, Part.ALL)),
)


def faults_of_reading(cls: type, plain: object) -> list[str]:
    with pytest.raises(FarmError) as told:
        record_from(cls, plain)
    return [fault.sentence() for fault in told.value.faults]


@given(farms(has_facts=True))
def test_every_record_comes_back_equal_through_json_text(farm: Farm) -> None:
    for record in farm.records():
        assert record_from(type(record), json.loads(json.dumps(plain_of(record)))) == record
        assert record_from_tagged(json.loads(json.dumps(tagged(record)))) == record


def test_every_type_of_record_has_a_tag() -> None:
    assert set(RECORD_TAGS.values()) == {
        *(Settings, Place, Person, Batch, FigureChoice, Acceptance, Trial),
        *(Count, ChoreMark, OwnChore),
    }


def test_a_record_is_written_with_every_field_in_the_order_of_its_class() -> None:
    assert plain_of(Person("a", "Ann", away=(Span(date(2027, 1, 1), date(2027, 1, 3)),))) == {
        "id": "a",
        "name": "Ann",
        "is_grown_up": True,
        "away": [{"start": "2027-01-01", "end": "2027-01-03", "reason": ""}],
        "note": "",
        "build_hours": 0.0,
    }
    assert list(plain_of(CLOVER)) == [
        "id", "name", "kind", "origin", "start", "number", "stays", "age_days", "egg_age_days", "note",
        "from_ids",
    ]  # fmt: skip


def test_equal_numbers_are_written_alike() -> None:
    whole = FigureChoice("c", "coturnix", "heat_c", points=((0, 35), (7, -0.0)))
    fraction = FigureChoice("c", "coturnix", "heat_c", points=((0.0, 35.0), (7.0, 0.0)))
    assert json.dumps(plain_of(whole)) == json.dumps(plain_of(fraction))


@pytest.mark.parametrize(
    ("field", "value", "sentence"),
    [
        ("number", True, "batch, number: true cannot be used; a whole number of up to 15 digits is accepted."),
        ("number", 90.0, "batch, number: 90.0 cannot be used; a whole number of up to 15 digits is accepted."),
        ("number", 10**15, f"batch, number: {10**15} cannot be used; a whole number of up to 15 digits is accepted."),
        ("number", None, "batch, number: it is empty (null); a whole number of up to 15 digits is"),
        ("name", 7, "batch, name: 7 cannot be used; text in quotation marks is accepted."),
        ("name", "a\ud800", "batch, name: “a�” cannot be used; text of letters that can be written to a file is"),
        ("start", "2027-02-30", "batch, start: “2027-02-30” cannot be used; there is no such day; year-month-day as"),
        ("start", "20270203", "batch, start: “20270203” cannot be used; a day as year-month-day, such as 2027-02-28,"),
        ("start", "2027-W05-3", "batch, start: “2027-W05-3” cannot be used; a day as year-month-day"),
        ("start", 20270203, "batch, start: 20270203 cannot be used; a day as year-month-day"),
        (
            "origin",
            "eggs",
            "batch, origin: “eggs” cannot be used; one of own eggs, shipped eggs, bought birds, parted is",
        ),
        ("origin", [], "batch, origin: a list stands here; one of own eggs"),
        ("stays", {}, "batch, stays: a group of fields stands here; a list in square brackets is accepted."),
        ("stays", ["x"], "batch, stays, item 1: “x” cannot be used; a group of fields in curly brackets is accepted."),
        ("note", "x" * 100 + "\0", f"batch, note: “{'x' * 59}…” cannot be used; text of letters"),
    ],
)
def test_a_value_of_the_wrong_form_is_told_by_field_value_and_what_is_accepted(
    field: str, value: object, sentence: str
) -> None:
    (told,) = faults_of_reading(Batch, plain_of(CLOVER) | {field: value})
    assert told.startswith(sentence)


@pytest.mark.parametrize("number", [float("nan"), float("inf"), 10**400, True, "20"])
def test_a_number_is_finite_and_no_word(number: Any) -> None:
    plain = plain_of(Settings("f", "Farm")) | {"latitude": number}
    (told,) = faults_of_reading(Settings, plain)
    assert told.startswith("settings, latitude: ")
    assert told.endswith(", or null.")


def test_every_fault_of_a_record_is_told_at_once() -> None:
    plain = plain_of(CLOVER) | {"colour": "red", "number": "many", "start": "2027-13-01"}
    del plain["note"]
    plain["stays"][1] |= {"from_day": None, "part": "chicks"}
    told = faults_of_reading(Batch, plain)
    assert [sentence.split(":")[0] for sentence in told] == [
        "batch, colour",
        "batch, start",
        "batch, number",
        "batch, stays, item 2, from_day",
        "batch, stays, item 2, part",
        "batch, note",
    ]


def test_a_fault_names_the_field_below_the_record_for_its_form() -> None:
    plain = plain_of(CLOVER)
    plain["stays"][0]["to_day"] = "late"
    with pytest.raises(FarmError) as told:
        record_from(Batch, plain)
    assert told.value.faults[0].field == "stays"


def test_a_missing_field_says_what_belongs_there() -> None:
    plain = plain_of(Place("p", "Pen", Role.PEN))
    del plain["ready_on"]
    assert faults_of_reading(Place, plain) == [
        "place, ready_on: this field is missing; a day as year-month-day, such as 2027-02-28, is needed, or null."
    ]


@pytest.mark.parametrize("tag", [None, "hen", 3, ["place"]])
def test_an_unknown_type_of_record_is_refused(tag: object) -> None:
    tags = "settings, place, person, batch, figure, acceptance, trial, count, chore mark, own chore"
    with pytest.raises(FarmError, match=f"one of {tags} is accepted"):
        record_from_tagged({**tagged(CLOVER), "record": tag})
