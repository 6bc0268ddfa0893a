"""The JSON document: the same bytes back, a schema that says the same as the records, and every fault at once."""

import json
from contextlib import suppress
from datetime import UTC, datetime
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quailsched.farm.faults import FarmError
from quailsched.farm.records import Farm, Person, Settings
from quailsched.farm.versions import VERSION
from quailsched.store.document import export_document, read_document, read_whole
from quailsched.store.published import Published
from tests.builders import BROODER, HATCHER, SETTER, eggs, farm, stay
from tests.strategies import farms

PUBLISHED = st.lists(
    st.builds(
        Published,
        uid=st.uuids().map(str),
        content=st.text("0123456789abcdef", min_size=8, max_size=8),
        sequence=st.integers(0, 99),
        revised=st.datetimes(datetime(2026, 1, 1), datetime(2030, 1, 1)).map(
            lambda moment: moment.replace(microsecond=0, tzinfo=UTC)
        ),
    ),
    max_size=3,
    unique_by=lambda entry: entry.uid,
)


@given(farms(), PUBLISHED)
def test_export_import_export_gives_the_same_bytes(one: Farm, published: list[Published]) -> None:
    text = export_document(one, published)
    read = read_whole(text)
    assert read.farm == one
    assert export_document(read.farm, read.published) == text


BACKWARDS = {"start": "2027-05-02", "end": "2027-05-01", "reason": ""}


def example() -> Farm:
    return farm(
        eggs("Aster", 60, stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, None)),
        Person("ann", "Ann"),
        settings=Settings("0b0e8f5c-58f1-4f0d-9a3e-6f3f0f6a2f11", "Thistle Yard"),
    )


def changed(*steps: tuple[tuple[str | int, ...], Any]) -> str:
    """The example's document with values replaced (or, for ..., taken out)."""
    plain = json.loads(export_document(example()))
    for path, value in steps:
        spot = plain
        for step in path[:-1]:
            spot = spot[step]
        if value is ...:
            del spot[path[-1]]
        else:
            spot[path[-1]] = value
    return json.dumps(plain)


@pytest.mark.parametrize(
    ("path", "value", "words"),
    [
        (("batches", 0, "number"), "sixty", ["batch Aster, number", "“sixty”", "whole number"]),
        (("batches", 0, "number"), True, ["batch Aster, number", "whole number"]),
        (("batches", 0, "number"), -1, ["batch Aster", "-1", "from 1 to 100,000"]),
        (("batches", 0, "start"), "2027-02-30", ["batch Aster, start", "“2027-02-30”"]),
        (("batches", 0, "start"), ..., ["batch Aster, start", "missing"]),
        (("batches", 0, "hens"), 4, ["batch Aster, hens"]),
        (("batches", 0, "stays", 1, "from_day"), 16, ["batch Aster", "16", "gap", "day 15"]),
        (("batches", 0, "stays", 1, "from_day"), 14, ["batch Aster", "14", "overlaps", "day 15"]),
        (("batches", 0, "stays", 0, "place_id"), "attic", ["batch Aster", "“attic”", "place of this farm"]),
        (("batches", 0, "origin"), "stork", ["batch Aster, origin", "“stork”", "own eggs"]),
        (("places", 0, "role"), "barn", ["place Setter, role", "“barn”", "setter"]),
        (("places", 0, "id"), "hatcher", ["“hatcher”"]),
        (("places", 1, "name"), "SETTER", ["“SETTER”", "another place has it already"]),
        (("farm", "night_lows_c"), [1, 2], ["night lows", "twelve"]),
        (("farm", "units"), None, ["units"]),
        (("people", 0, "away"), [BACKWARDS], ["person Ann", "after the start"]),
        (("places",), {}, ["places", "a list in square brackets"]),
        (("version",), VERSION + 1, ["version", "newer Quailsched"]),
        (("format",), "farm", ["format"]),
    ],
)  # fmt: skip
def test_each_fault_names_field_value_and_what_is_accepted(path: tuple[str, ...], value: Any, words: list[str]) -> None:
    with pytest.raises(FarmError) as caught:
        read_document(changed((path, value)))
    told = str(caught.value)
    assert all(word in told for word in words), told


def test_all_faults_come_at_once() -> None:
    with pytest.raises(FarmError) as caught:
        read_document(
            changed(
                (("batches", 0, "number"), -1),
                (("batches", 0, "start"), "soon"),
                (("places", 2, "floor_cm2"), "big"),
                (("people", 0, "shoes"), 44),
                (("farm", "name"), ""),
            )
        )
    assert len(caught.value.faults) == 5


@pytest.mark.parametrize("text", ["", "{", "[]", "null", '"farm"', "{'a': 1}", '{"format": "quailsched farm"}', "\0"])
def test_what_is_no_document_is_refused_in_a_sentence(text: str) -> None:
    with pytest.raises(FarmError) as caught:
        read_document(text)
    assert all(fault.sentence().endswith(".") for fault in caught.value.faults)


ANY_JSON = st.recursive(
    st.none() | st.booleans() | st.floats() | st.text(),
    lambda inner: st.lists(inner) | st.dictionaries(st.text(), inner),
)


@given(ANY_JSON)
def test_any_json_is_read_or_refused(value: Any) -> None:
    with pytest.raises(FarmError):
        read_document(json.dumps(value))


@given(farms(most_batches=2), st.data())
def test_any_one_value_replaced_is_read_or_refused(one: Farm, data: st.DataObject) -> None:
    plain = json.loads(export_document(one))
    section = data.draw(st.sampled_from(["places", "people", "batches", "figures", "accepted", "trials"]))
    if not plain[section]:
        return
    record = data.draw(st.sampled_from(plain[section]))
    record[data.draw(st.sampled_from(sorted(record)))] = data.draw(
        st.none() | st.booleans() | st.integers() | st.floats() | st.text() | st.lists(st.integers(), max_size=2)
    )
    with suppress(FarmError):
        again = read_document(json.dumps(plain))
        assert read_document(export_document(again)) == again
