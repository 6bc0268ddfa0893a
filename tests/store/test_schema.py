"""The JSON Schema of the document says what the program writes, field by field."""

from __future__ import annotations

import json
from contextlib import nullcontext
from datetime import date, datetime
from enum import StrEnum
from types import NoneType
from typing import Any, get_args, get_origin

import pytest
from hypothesis import given
from hypothesis import strategies as st
from jsonschema import Draft202012Validator

from quailsched.farm.facts import ChoreMark, Count, OwnChore
from quailsched.farm.faults import FarmError
from quailsched.farm.plain import RECORD_TAGS, hints_of
from quailsched.farm.records import (
    Acceptance,
    Batch,
    Farm,
    FigureChoice,
    Person,
    Place,
    Settings,
    Span,
    Stay,
    Trial,
    TrialRecord,
)
from quailsched.resources import resource
from quailsched.store.document import SECTIONS, export_document, read_document
from quailsched.store.published import Published
from tests.store.sample import PUBLISHED, small_farm
from tests.strategies import farms

SCHEMA: dict[str, Any] = json.loads(resource("schema", "farm.schema.json").read_text(encoding="utf-8"))
VALIDATOR = Draft202012Validator(SCHEMA, format_checker=Draft202012Validator.FORMAT_CHECKER)
CLASSES: dict[str, type] = {
    "farm": Settings,
    "place": Place,
    "person": Person,
    "span": Span,
    "batch": Batch,
    "stay": Stay,
    "figure": FigureChoice,
    "acceptance": Acceptance,
    "trial": Trial,
    "trial_record": TrialRecord,
    "count": Count,
    "chore_mark": ChoreMark,
    "own_chore": OwnChore,
    "published": Published,
}
JSON_TYPES: dict[Any, str] = {str: "string", int: "integer", float: "number", bool: "boolean"}


def test_the_schema_itself_is_valid() -> None:
    Draft202012Validator.check_schema(SCHEMA)


@given(farms(has_facts=True), st.booleans())
def test_exported_farms_are_valid(farm: Farm, has_published: bool) -> None:
    document = json.loads(export_document(farm, PUBLISHED if has_published else ()))
    assert [error.message for error in VALIDATOR.iter_errors(document)] == []


def test_the_schema_defines_every_class_and_section() -> None:
    assert set(SCHEMA["$defs"]) == set(CLASSES)
    assert list(SCHEMA["properties"]) == ["format", "version", "farm", *SECTIONS]
    assert SCHEMA["required"] == list(SCHEMA["properties"])


@pytest.mark.parametrize("name", CLASSES)
def test_fields_of_schema_and_class_agree_exactly(name: str) -> None:
    definition = SCHEMA["$defs"][name]
    hints = hints_of(CLASSES[name])
    assert list(definition["properties"]) == list(hints)
    assert definition["required"] == list(hints)
    assert definition["additionalProperties"] is False
    for field, hint in hints.items():
        assert said(definition["properties"][field]) == meant(hint), field


@pytest.mark.parametrize("name", CLASSES)
def test_every_field_is_described(name: str) -> None:
    for field, told in SCHEMA["$defs"][name]["properties"].items():
        assert told["description"].endswith("."), field


@pytest.mark.parametrize(
    ("name", "field", "unit"),
    [
        ("farm", "night_lows_c", "°C"),
        ("farm", "latitude", "Degrees"),
        ("place", "floor_cm2", "cm²"),
        ("place", "egg_places", "count"),
        ("place", "clean_out_days", "Days"),
        ("place", "heat_sources", "count"),
        ("place", "feeder_cm", "in cm"),
        ("place", "drinker_cm", "in cm"),
        ("place", "light_hours", "Hours a day"),
        ("place", "work_hours", "Hours"),
        ("person", "build_hours", "Hours a week"),
        ("farm", "sure_pct", "of 100"),
        ("acceptance", "amount", "in the unit of the clash"),
        ("acceptance", "birds", "count"),
        ("acceptance", "days", "days"),
        ("batch", "number", "count"),
        ("batch", "age_days", "days"),
        ("batch", "egg_age_days", "Days"),
        ("stay", "from_day", "days"),
        ("stay", "to_day", "days"),
        ("count", "number", "count"),
        ("count", "hens", "count"),
        ("count", "cocks", "count"),
        ("count", "grams", "Grams"),
        ("count", "dressed_g", "Grams"),
        ("count", "hours", "Hours"),
        ("count", "hour", "hour"),
        ("count", "plan_number", "count"),
    ],
)
def test_the_description_of_a_number_says_its_unit(name: str, field: str, unit: str) -> None:
    assert unit in SCHEMA["$defs"][name]["properties"][field]["description"]


@pytest.mark.parametrize(
    ("section", "field", "value"),
    [
        ("places", "floor_cm2", -1),
        ("places", "ready_on", "soon"),
        ("places", "colour", "red"),
        ("places", "feeder_cm", 5),  # the first place is a cabinet
        ("places", "heat_sources", 0),
        ("places", "light_hours", 10.0),
        ("places", "work_hours", 3.0),  # with no day on which they were counted
        ("places", "work_hours", None),
        ("people", "build_hours", 168.5),
        ("people", "build_hours", -1.0),
        ("batches", "number", 0),
        ("batches", "start", "2027-02-30"),
        ("batches", "stays", []),
        ("people", "name", " "),
        ("figures", "points", [[1.0, 2.0, 3.0]]),
        ("accepted", "kind", " "),
        ("accepted", "place_id", ""),
        ("accepted", "batch_ids", []),
        ("accepted", "batch_ids", [" "]),
        ("accepted", "amount", -0.5),
        ("accepted", "amount", 1e9 + 1),
        ("accepted", "birds", 1_000_001),
        ("accepted", "days", 0),
        ("accepted", "days", 100_001),
        ("accepted", "reason", "two\nlines"),
        ("counts", "number", -1),
        ("counts", "sort", "vanished"),
        ("counts", "day", "yesterday"),
        ("counts", "hour", 24),
        ("counts", "hours", 24.5),
        ("counts", "grams", -1),
        ("counts", "cause", "boredom"),
        ("marks", "key", ""),
        ("own_chores", "name", " "),
        ("trials", "name", ""),
        ("trials", "records", [{"record_id": " ", "content": ""}]),
        ("trials", "records", [{"record_id": "b"}]),
    ],
)
def test_the_schema_refuses_what_the_program_refuses(section: str, field: str, value: object) -> None:
    document = json.loads(export_document(small_farm()))
    document[section][0][field] = value
    assert not VALIDATOR.is_valid(document)
    with pytest.raises(FarmError):
        read_document(json.dumps(document))


# Of the brooder, which may have them all. Each bound is accepted and one more or less is not, by both.
BOUNDS = [
    ("heat_sources", 0, 1_000, 1),
    ("feeder_cm", 0, 1_000_000, 1),
    ("drinker_cm", 0, 1_000_000, 1),
    ("light_hours", 0.0, 24.0, 0.5),
    ("work_hours", 0.0, 10_000.0, 0.5),
]


@pytest.mark.parametrize(("field", "least", "most", "step"), BOUNDS)
def test_schema_and_program_have_the_same_bounds(field: str, least: float, most: float, step: float) -> None:
    for value, is_accepted in ((least, True), (most, True), (least - step, False), (most + step, False)):
        document = json.loads(export_document(small_farm()))
        document["places"][1].update({"work_from": "2027-03-06", field: value})
        assert VALIDATOR.is_valid(document) is is_accepted, value
        with nullcontext() if is_accepted else pytest.raises(FarmError):
            read_document(json.dumps(document))


def test_the_content_of_a_trial_is_said_to_be_json() -> None:
    told = SCHEMA["$defs"]["trial_record"]["properties"]["content"]
    assert told["contentMediaType"] == "application/json"
    assert all(tag in told["description"] for tag in RECORD_TAGS if tag != "trial")


def meant(hint: Any) -> tuple[frozenset[str], object]:
    """What a declared type is in JSON: its types, and more about them (values, format, or the record)."""
    options = get_args(hint)
    if NoneType in options:
        (inner,) = [option for option in options if option is not NoneType]
        types, more = meant(inner)
        return types | {"null"}, more
    if get_origin(hint) is tuple:
        item = meant(options[0]) if options[-1] is Ellipsis else tuple(meant(option) for option in options)
        return frozenset({"array"}), item
    if hint in (date, datetime):
        return frozenset({"string"}), "date" if hint is date else "date-time"
    if isinstance(hint, type) and issubclass(hint, StrEnum):
        return frozenset({"string"}), {member.value for member in hint}
    if hint in JSON_TYPES:
        return frozenset({JSON_TYPES[hint]}), None
    return frozenset({"object"}), next(name for name, cls in CLASSES.items() if cls is hint)


def said(told: dict[str, Any]) -> tuple[frozenset[str], object]:
    """The same of one field of the schema."""
    if "$ref" in told:
        return frozenset({"object"}), told["$ref"].removeprefix("#/$defs/")
    if "enum" in told:
        values = set(told["enum"])
        types = {"string"} | ({"null"} if None in values else set())
        return frozenset(types), values - {None}
    types = {told["type"]} if isinstance(told["type"], str) else set(told["type"])
    if "prefixItems" in told:
        assert told["items"] is False
        return frozenset(types), tuple(said(item) for item in told["prefixItems"])
    return frozenset(types), said(told["items"]) if "items" in told else told.get("format")
