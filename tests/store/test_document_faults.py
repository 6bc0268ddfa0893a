"""The JSON document to the letter: its text, and the sentence of every fault."""

from __future__ import annotations

import json
from collections.abc import Callable
from typing import Any

import pytest

from quailsched.farm.faults import FarmError
from quailsched.store.document import export_document, read_document, read_whole
from tests.store.sample import CLOVER, PUBLISHED, small_farm
from tests.strategies import ids

Document = dict[str, Any]


def faults_in(text: str) -> list[str]:
    with pytest.raises(FarmError) as told:
        read_document(text)
    return [fault.sentence() for fault in told.value.faults]


def faults_after(break_it: Callable[[Document], object]) -> list[str]:
    document = json.loads(export_document(small_farm(), PUBLISHED))
    break_it(document)
    return faults_in(json.dumps(document))


def test_the_calendar_entries_that_were_given_out_come_along() -> None:
    text = export_document(small_farm(), reversed(PUBLISHED))
    document = read_whole(text)
    assert document.published == PUBLISHED
    assert export_document(document.farm, document.published) == text
    assert json.loads(text)["published"][1] == {
        "uid": ids(902),
        "content": "b" * 64,
        "sequence": 3,
        "revised": "2027-03-01T07:30:00.250000+00:00",
    }


def test_the_document_is_plain_to_read() -> None:
    text = export_document(small_farm())
    assert text.startswith('{\n  "format": "quailsched farm",\n  "version": 3,\n  "farm": {\n    "id": ')
    assert "“quoted”" in text
    assert text.endswith("]\n}\n")


def test_the_order_of_records_in_the_document_does_not_matter() -> None:
    text = export_document(small_farm())
    document = json.loads(text)
    for section in ("places", "batches", "figures", "accepted", "trials", "counts", "marks", "own_chores"):
        document[section].reverse()
    assert export_document(read_document(json.dumps(document))) == text


def test_a_byte_order_mark_is_no_fault() -> None:
    assert read_document("\ufeff" + export_document(small_farm())) == small_farm()


@pytest.mark.parametrize(
    ("text", "where", "found"),
    [
        ("", "document, line 1, column 1", "the text ends too early for JSON; "),
        ('{"a": 1', "document, line 1, column 8", "the text ends too early for JSON; "),
        ('{\n  "format": quail\n}', "document, line 2, column 13", "“quail” is no JSON; "),
        ('{"format": "quailsched farm",}', "document, line 1, column", ""),
        ('{"a": 1} x', "document, line 1, column 10", "“x” is no JSON; "),
    ],
)
def test_what_is_no_json_is_told_by_line_and_column(text: str, where: str, found: str) -> None:
    (told,) = faults_in(text)
    assert told.startswith(where)
    assert f": {found}" in told
    assert "a JSON document as export writes it is needed (" in told


def test_groups_nested_without_end_are_refused() -> None:
    assert faults_in('{"a":' * 200_000) == [
        "document: its groups are nested too deep; groups within groups as in an exported farm are accepted."
    ]


@pytest.mark.parametrize("text", ["[]", "3", "null", '"quailsched farm"', "{}", '{"format": "farm"}', '{"format": []}'])
def test_what_is_no_farm_is_told_once(text: str) -> None:
    (told,) = faults_in(text)
    assert told.endswith("an exported farm, with format “quailsched farm”, is accepted.")


def test_a_newer_document_is_told_by_its_version() -> None:
    assert faults_after(lambda d: d.update(version=4, flocks=[])) == [
        "document, version: 4 cannot be used; it was exported by a newer Quailsched; this one reads versions 1 to 3."
    ]


@pytest.mark.parametrize("version", [True, "1", 1.0, 0, None])
def test_a_version_is_a_whole_number_from_one(version: object) -> None:
    (told,) = faults_after(lambda d: d.update(version=version))
    assert told.endswith("this Quailsched reads versions 1 to 3.")


def test_sections_that_are_missing_or_unknown_or_no_lists_are_told_together() -> None:
    def break_it(document: Document) -> None:
        del document["farm"], document["people"]
        document["figures"] = {}
        document["flocks"] = []

    listed = "a list in square brackets is needed, [] for none."
    assert faults_after(break_it) == [
        "document, flocks: a list stands here; there is no such field here, only format, version, farm, places, "
        "people, batches, figures, accepted, trials, counts, marks, own_chores, published.",
        "document, farm: this field is missing; the farm's own fields are needed.",
        f"document, people: this field is missing; {listed}",
        f"document, figures: a group of fields stands here; {listed}",
    ]


FAULTS: list[tuple[Callable[[Document], object], str]] = [
    (
        lambda d: d["batches"][0].update(start="2027-02-30"),
        "batch Clover, start: “2027-02-30” cannot be used; there is no such day",
    ),
    (
        lambda d: d["places"][1].update(floor_cm2="wide"),
        "place Tub, floor_cm2: “wide” cannot be used; a whole number",
    ),
    (lambda d: d["places"][1].update(floor_cm2=-5), "place Tub, floor in cm²: -5 cannot be used; a whole number from"),
    (
        lambda d: d["places"][1].update(name=None, floor_cm2="wide"),
        "places, item 2, floor_cm2: “wide” cannot be used; a whole number",
    ),
    (lambda d: d["batches"][0].update(number=-1), "batch Clover, eggs set: -1 cannot be used; a whole number from 1"),
    (lambda d: d["batches"][0].update(number=True), "batch Clover, number: true cannot be used; a whole number of"),
    (lambda d: d["batches"][0].update(colour="red"), "batch Clover, colour: “red” cannot be used; there is no such"),
    (
        lambda d: d["batches"][0].pop("number"),
        "batch Clover, number: this field is missing; a whole number of up to 15 digits is needed.",
    ),
    (lambda d: d["batches"][0].update(kind="emu"), "batch Clover, kind: “emu” cannot be used; one of coturnix"),
    (
        lambda d: d["batches"][0]["stays"][1].update(place_id="nowhere"),
        "batch Clover, place of a stay: “nowhere” cannot be used; the id of a place",
    ),
    (
        lambda d: d["batches"][0]["stays"][1].update(from_day=20),
        "batch Clover, stay from day: 20 cannot be used; it leaves a gap: day 18",
    ),
    (
        lambda d: d["batches"][0]["stays"][1].update(from_day=10),
        "batch Clover, stay from day: 10 cannot be used; it overlaps the one before: day 18",
    ),
    (lambda d: d["batches"][1].update(name="clover "), "batch, name: “clover” cannot be used; another batch has it"),
    (lambda d: d["places"][1].update(name="Run"), "place, name: “Run” cannot be used; another place has it"),
    (
        lambda d: d["people"][0].update(id=CLOVER),
        f"batch Clover, id: “{CLOVER}” cannot be used; person Ann has it already",
    ),
    (lambda d: d["people"][0].update(id=" "), "person Ann, id: “ ” cannot be used; an id of at least one letter"),
    (lambda d: d["farm"].update(id="mine"), "farm, id: “mine” cannot be used; a UUID such as"),
    (lambda d: d["farm"].update(night_lows_c=[1, 2]), "farm, night lows: 2 values cannot be used; twelve"),
    (lambda d: d["farm"].update(night_lows_c=["cold"]), "farm, night_lows_c, item 1: “cold” cannot be used; a number"),
    (lambda d: d["farm"].update(name=" "), "farm, name: it is empty; a name of at least one letter"),
    (
        lambda d: d["people"][0]["away"][0].update(end="2027-04-01"),
        "person Ann, away: “2027-05-01 to 2027-04-01” cannot be used; the end is",
    ),
    (
        lambda d: d["figures"][0].update(value=-1),
        "figure coturnix clean_out_days: Days empty between two batches: -1 cannot be used; from 0 to 60 days is",
    ),
    (
        lambda d: d["figures"][1].update(points=[[1]]),
        "figure coturnix heat_c, points, item 1: a list of 1 value cannot be used; a list of 2 values is accepted",
    ),
    (lambda d: d["people"][0].update(build_hours=-1), "person Ann, hours of building a week: -1.0 cannot be used; a"),
    (lambda d: d["places"][0].update(heat_sources=2), "place Setter, heat sources: 2 cannot be used; a cabinet has"),
    (lambda d: d["accepted"][0].update(days=0), "accepted, item 1, days: 0 cannot be used; a whole number from 1"),
    (lambda d: d["accepted"][0].update(days="x"), "accepted, item 1, days: “x” cannot be used; a whole number of"),
    (
        lambda d: d["trials"][0]["records"][0].update(content="x"),
        f"trial Larger Clover, records, {CLOVER}: its content",
    ),
    (
        lambda d: d["counts"][4].update(number=13),
        "counts, item 5, Dill, number: 13 cannot be used; Dill had 12 birds by then",
    ),
    (lambda d: d["counts"][0].update(place_id="x"), "counts, item 1, place: “x” cannot be used; the id of a record"),
    (lambda d: d["counts"][5].update(batch_id=""), "counts, item 6, batch: it is missing; processed needs it"),
    (lambda d: d["counts"][3].update(corrects=""), "counts, item 4, corrects: it is missing; what is taken back"),
    (lambda d: d["marks"][0].update(key=" "), "marks, item 1, key: “ ” cannot be used; the key of a chore"),
    (lambda d: d["own_chores"][1].update(repeat="x"), "chore Order feed, repeat: “x” cannot be used; a rule of"),
    (lambda d: d["published"][0].update(sequence=-1), "published, item 1, sequence: -1 cannot be used; a number from"),
    (
        lambda d: d["published"][0].update(uid=ids(902)),
        f"published, item 2, uid: “{ids(902)}” cannot be used; an entry has it already",
    ),
    (
        lambda d: d["published"][0].update(revised="2027-03-01T07:30:00"),
        "published, item 1, revised: “2027-03-01T07:30:00” cannot be used; a moment with its offset",
    ),
]


@pytest.mark.parametrize(("break_it", "sentence"), FAULTS, ids=[sentence.split(" cannot")[0] for _, sentence in FAULTS])
def test_a_fault_is_told_by_field_value_and_what_is_accepted(
    break_it: Callable[[Document], object], sentence: str
) -> None:
    assert any(told.startswith(sentence) for told in faults_after(break_it)), faults_after(break_it)


def test_faults_of_form_and_of_meaning_are_told_together_in_one_batch_too() -> None:
    def break_it(document: Document) -> None:
        document["batches"][0].update(start="2027-02-30", number=-4)
        document["batches"][0]["stays"][1]["from_day"] = 19
        document["places"][0]["egg_places"] = 1.5
        document["people"].append(dict(document["people"][0], id="other"))

    assert [sentence.split(" cannot")[0] for sentence in faults_after(break_it)] == [
        "place Setter, egg_places: 1.5",
        "batch Clover, start: “2027-02-30”",
        "person, name: “Ann”",
        "batch Clover, eggs set: -4",
        "batch Clover, stay from day: 19",
    ]


def whole(section: str, field: str, value: object) -> Callable[[Document], object]:
    return lambda document: document[section][0].update({field: value})


@pytest.mark.parametrize(
    "break_it",
    [
        whole("places", "id", 3),
        whole("places", "name", []),
        whole("places", "role", "nest"),
        lambda d: d["places"][1].update(role="nest"),  # a brooder has heat, a nest might not
        lambda d: d.update(places={}),
        lambda d: d.pop("places"),
        lambda d: d["places"][2].update(work_from="soon"),
        lambda d: d["places"][2].update(work_hours="many"),
        whole("people", "build_hours", "few"),
        whole("accepted", "reason", 4),
        whole("accepted", "place_id", 4),
        whole("accepted", "batch_ids", None),
        whole("trials", "name", 4),
        whole("trials", "records", [4]),
        whole("places", "egg_places", "many"),
        whole("batches", "id", None),
        whole("batches", "name", 4),
        whole("batches", "kind", None),
        whole("batches", "origin", "found"),
        whole("batches", "stays", 5),
        whole("figures", "key", 6),
        whole("figures", "value", "x"),
        lambda d: d["places"].__setitem__(2, "Run"),
        lambda d: d["batches"].__setitem__(0, None),
        lambda d: d["batches"].__setitem__(1, None),  # of which the counts are
        lambda d: d["batches"][1].update(id=7),
        lambda d: d["batches"][1].update(start="soon"),
        lambda d: d["batches"][1].update(number="few"),
        lambda d: d["batches"][1].update(number=0),
        lambda d: d["batches"][1].update(start="1989-12-31"),
        lambda d: d.update(batches={}),
        lambda d: d.pop("people"),
        whole("people", "id", 3),
        lambda d: d["counts"].__setitem__(2, None),  # which another corrects
        lambda d: d["counts"][0].update(day="1989-12-31"),
        lambda d: d["counts"][2].update(id=ids(701)),
        lambda d: d.pop("counts"),
        lambda d: d["marks"].__setitem__(0, None),
        lambda d: d["own_chores"].__setitem__(0, None),
    ],
)
def test_one_fault_of_form_brings_no_faults_that_only_follow_from_it(break_it: Callable[[Document], object]) -> None:
    told = faults_after(break_it)
    assert len(told) == 1, told


def breaking(section: str, place: int, field: str) -> Callable[[Document], object]:
    return lambda document: document[section][place].update({field: {}})


def test_one_field_of_a_fact_that_cannot_be_used_brings_one_fault() -> None:
    whole_document = json.loads(export_document(small_farm(), PUBLISHED))
    for section in ("counts", "marks", "own_chores"):
        for place, item in enumerate(whole_document[section]):
            for field in item:
                told = faults_after(breaking(section, place, field))
                assert len(told) == 1, (section, place, field, told)


def test_an_id_that_stands_twice_brings_no_faults_of_records_that_look_for_it() -> None:
    setter = ids(100)  # on which Clover's route begins

    def break_it(document: Document) -> None:
        document["places"][1]["id"] = document["batches"][1]["id"] = setter

    already = f"“{setter}” cannot be used; place Setter has it already, each record needs its own."
    assert faults_after(break_it) == [f"place Tub, id: {already}", f"batch Dill, id: {already}"]


def test_an_id_of_a_place_and_of_a_batch_is_told_once() -> None:
    told = faults_after(lambda d: d["batches"][0].update(id=d["places"][0]["id"]))
    assert told == [
        f"batch Clover, id: “{ids(100)}” cannot be used; place Setter has it already, each record needs its own."
    ]


def test_of_two_accepted_clashes_in_one_place_the_right_one_is_told() -> None:
    def break_it(document: Document) -> None:
        first = document["accepted"][0]
        document["accepted"] += [first | {"id": "second", "days": 0}, first | {"id": "third", "days": "many"}]

    assert [sentence.split(" cannot")[0] for sentence in faults_after(break_it)] == [
        "accepted, item 3, days: “many”",
        "accepted, item 2, days: 0",
    ]


def test_of_two_batches_with_one_name_the_right_one_is_told() -> None:
    def break_it(document: Document) -> None:
        document["batches"][0].update(number=-1)
        document["batches"][1].update(name="Clover", number="many")

    assert [sentence.split(" cannot")[0] for sentence in faults_after(break_it)] == [
        "batch Clover, number: “many”",
        "batch, name: “Clover”",
        "batch Clover, eggs set: -1",
    ]


def test_a_field_that_stands_twice_is_told() -> None:
    text = export_document(small_farm()).replace('"version": 3,', '"version": 3,\n  "version": 3,', 1)
    assert faults_in(text) == ["document, field version: it stands twice in one group; once is accepted."]


def test_a_number_of_thousands_of_digits_is_a_fault_like_others() -> None:
    text = export_document(small_farm()).replace('"number": 96', f'"number": {"9" * 5000}')
    assert faults_in(text) == [
        "batch Clover, number: a very long number cannot be used; a whole number of up to 15 digits is accepted."
    ]


@pytest.mark.parametrize("word", ["NaN", "Infinity", "-Infinity", "1e999"])
def test_numbers_that_json_does_not_know_are_faults(word: str) -> None:
    text = export_document(small_farm()).replace('"latitude": 51.5', f'"latitude": {word}')
    (told,) = faults_in(text)
    assert told.startswith("farm, latitude: ")
