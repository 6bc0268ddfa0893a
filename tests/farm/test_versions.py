"""Records that an older version wrote: what it did not have yet is as it was before anybody told it."""

from __future__ import annotations

from dataclasses import fields

import pytest

from quailsched.farm.faults import FarmError
from quailsched.farm.plain import RECORD_TAGS, plain_of, record_from, record_from_tagged, tagged
from quailsched.farm.records import Person, Place, Role
from quailsched.farm.versions import VERSION, came_with, is_version, values_before

# As version 1 wrote it.
PEN_1 = {
    "record": "place", "id": "p", "name": "Pen", "role": "pen", "position": 2, "egg_places": 0, "floor_cm2": 5000,
    "clean_out_days": 3, "outdoors": True, "turns_itself": False, "ready_on": None, "shut": [], "note": "",
}  # fmt: skip


def test_a_record_without_a_version_is_of_the_first() -> None:
    pen = Place("p", "Pen", Role.PEN, 2, floor_cm2=5000, clean_out_days=3, outdoors=True)
    assert record_from_tagged(PEN_1) == pen
    assert record_from_tagged(PEN_1 | {"version": 1}) == pen
    assert tagged(pen)["version"] == VERSION


def test_a_record_of_this_version_needs_all_its_fields() -> None:
    with pytest.raises(FarmError) as told:
        record_from_tagged(PEN_1 | {"version": VERSION})
    assert [fault.field for fault in told.value.faults] == [
        "heat_sources", "feeder_cm", "drinker_cm", "light_hours", "work_hours", "work_from",
    ]  # fmt: skip


def test_a_record_of_an_older_version_needs_what_that_had() -> None:
    plain = {name: value for name, value in PEN_1.items() if name != "note"}
    with pytest.raises(FarmError, match="place, note: this field is missing; text in quotation marks is needed"):
        record_from_tagged(plain)


def test_a_field_that_came_later_is_read_if_it_is_there() -> None:
    plain = plain_of(Person("a", "Ann", build_hours=4.0))
    assert record_from(Person, plain, 1) == Person("a", "Ann", build_hours=4.0)


@pytest.mark.parametrize("version", [0, VERSION + 1, True, "2", None, 1.0])
def test_a_version_that_is_not_known_is_told(version: object) -> None:
    assert not is_version(version)
    with pytest.raises(FarmError, match=r"^version: .*; a version from 1 to 3 is accepted"):
        record_from_tagged(PEN_1 | {"version": version})


def test_every_field_that_came_later_has_a_value_to_start_with() -> None:
    for cls in RECORD_TAGS.values():
        later = [field.name for field in fields(cls) if came_with(cls, field.name) > came_with(cls)]
        assert list(values_before(cls, came_with(cls))) == later
        assert values_before(cls, VERSION) == {}
