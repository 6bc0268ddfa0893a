"""The JSON Schema of the document says what the program writes, field by field."""

from __future__ import annotations

import json
from datetime import date, datetime
from enum import StrEnum
from types import NoneType
from typing import Any, get_args, get_origin

import pytest
from hypothesis import given
from hypothesis import strategies as st
from jsonschema import Draft202012Validator

from quailsched.farm.plain import hints_of
from quailsched.farm.records import Batch, Farm, FigureChoice, Person, Place, Settings, Span, Stay
from quailsched.resources import resource
from quailsched.store.document import SECTIONS, export_document
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
    "published": Published,
}
JSON_TYPES: dict[Any, str] = {str: "string", int: "integer", float: "number", bool: "boolean"}


def test_the_schema_itself_is_valid() -> None:
    Draft202012Validator.check_schema(SCHEMA)


@given(farms(), st.booleans())
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
        ("batch", "number", "count"),
        ("batch", "age_days", "days"),
        ("batch", "egg_age_days", "Days"),
        ("stay", "from_day", "days"),
        ("stay", "to_day", "days"),
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
        ("batches", "number", 0),
        ("batches", "start", "2027-02-30"),
        ("batches", "stays", []),
        ("people", "name", " "),
        ("figures", "points", [[1.0, 2.0, 3.0]]),
    ],
)
def test_the_schema_refuses_what_the_program_refuses(section: str, field: str, value: object) -> None:
    document = json.loads(export_document(small_farm()))
    document[section][0][field] = value
    assert not VALIDATOR.is_valid(document)


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
