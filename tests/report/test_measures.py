"""Measures in words: what they rest on, in the units of the farm, and every word of them in the language chosen."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

import pytest
from hypothesis import given

from quailsched.farm.facts import Count, Sort
from quailsched.farm.records import Units
from quailsched.husbandry.definitions import definitions
from quailsched.outlook.batch_measures import Books, Measured
from quailsched.report.measures import from_text, mass_text, measures_json, measures_text, oddity, value_text
from quailsched.season.season import Season
from quailsched.words import ENGLISH, use
from tests.builders import PEN, SETTINGS, bought, eggs, farm, hatch_route, on, stay
from tests.pseudo import PSEUDO, unsaid
from tests.strategies import farms

NUMBERS = {"part": 27.0, "whole": 60.0}


@pytest.fixture
def pseudo() -> Iterator[None]:
    use(PSEUDO)
    yield
    use(ENGLISH)


@pytest.mark.parametrize(
    ("mass_g", "metric", "us"),
    [(375.4, "375 g", "0.83 lb"), (2_500, "2.50 kg", "5.51 lb"), (183_900, "183.9 kg", "405.4 lb")],
)
def test_masses_are_read_in_the_units_of_the_farm(mass_g: float, metric: str, us: str) -> None:
    # A pound is 453.59237 g: 375.4 / 453.59237 = 0.8276; 2,500 -> 5.5116; 183,900 -> 405.43.
    assert (mass_text(mass_g, Units.METRIC), mass_text(mass_g, Units.US)) == (metric, us)


def test_what_was_never_counted_is_not_0() -> None:
    assert value_text(None, Units.METRIC) == "not counted"


def test_values_in_their_units() -> None:
    made = {key: Measured(key, 3.2467, 27, 60) for key in definitions()}
    assert {value_text(one, Units.METRIC) for one in made.values()} == {"3.2 %", "3.25", "3 g"}
    assert value_text(made["feed_per_dozen"], Units.US) == "0.01 lb"


def test_what_a_measure_rests_on() -> None:
    assert from_text(Measured("hatch_of_set", 45, 27, 60), Units.METRIC) == "27 chicks of 60 eggs set"
    assert from_text(Measured("hen_day", 75, 22.5, 30), Units.METRIC) == "22.5 eggs on 30 hen-days"
    housed = Measured("hen_housed", 75, 180, 60, 4)
    assert from_text(housed, Units.METRIC) == "180 eggs of 60 hens housed, counted on 4 days"
    fed = Measured("feed_conversion", 3, 10_800, 3_600)
    assert from_text(fed, Units.METRIC) == "10.8 kg of feed for 3.60 kg of gain"


def test_more_than_an_egg_a_day_is_told_as_odd() -> None:
    assert oddity(Measured("hen_day", 100.0, 60, 60)) == ""
    assert "several days" in oddity(Measured("hen_day", 100.1, 61, 60))
    assert oddity(Measured("feed_conversion", 200, 1, 1)) == ""


@pytest.mark.usefixtures("pseudo")
@pytest.mark.parametrize("units", Units)
def test_everything_is_said(units: Units) -> None:
    use(ENGLISH)
    clover = replace(eggs("Clover", 60, *hatch_route()), from_ids=("dill", "gone"))
    dill = bought("Dill", 80, 60, stay(PEN, 0, 190))
    counts = (
        *(Count("1", Sort.CLEAR, on(7), number=6, batch_id="clover"), Count("8", Sort.HOURS, on(7), hours=1.0)),
        Count("2", Sort.HATCHED, on(17), number=27, batch_id="clover"),
        Count("3", Sort.DIED, on(18), number=1, batch_id="clover"),
        Count("4", Sort.WEIGHED, on(52), number=5, grams=900, batch_id="clover"),
        Count("5", Sort.FED, on(20), grams=9_000, batch_id="clover"),
        Count("6", Sort.LAID, on(5), number=90, batch_id="dill"),
        Count("7", Sort.FED, on(5), grams=1_500, batch_id="dill"),
        Count("9", Sort.PROCESSED, on(60), number=5, grams=1_000, dressed_g=700, batch_id="clover"),
    )
    books = Books(Season(farm(clover, dill, *counts, settings=replace(SETTINGS, units=units))), on(90))
    use(PSEUDO)
    told = f"{measures_text(books)} {value_text(None, units)}"
    use(ENGLISH)
    english = measures_text(books)
    assert all(definition.name in english for definition in definitions().values())
    assert unsaid(told, ["Thistle Yard", "Clover", "Dill", "Setter", "Hatcher", "kg"]) == []


@given(farms())
def test_any_farm_can_be_measured_and_shares_stay_shares(any_farm: object) -> None:
    books = Books(Season(any_farm), on(2000))  # type: ignore[arg-type]
    measures_text(books)
    document = measures_json(books)
    for group in (*document["batches"], *document["breeding_groups"], *document["incubators"]):
        for key, one in group["measures"].items():
            if one is None:
                continue
            assert one["value"] >= 0
            if key in ("fertility", "hatch_of_fertile", "hatch_of_set", "livability", "dressing"):
                assert one["value"] <= 100
                assert one["value"] == pytest.approx(100 * one["part"] / one["whole"], abs=1e-3)
