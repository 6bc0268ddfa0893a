"""A batch, a place or a day by a few letters. Today is Tuesday, 6 April 2027."""

from dataclasses import replace
from datetime import date, timedelta
from itertools import count

import pytest

from quailsched.desktop.finding import Match, days, matches
from quailsched.farm.example import example_farm
from quailsched.farm.records import Farm, Units
from tests.bench.big_farm import big_farm

TODAY = date(2027, 4, 6)


@pytest.fixture(scope="module")
def farm() -> Farm:
    numbers = count(1)
    return example_farm(TODAY, lambda: str(next(numbers)))


def texts(found: list[Match]) -> list[str]:
    return [match.text for match in found]


def test_names_come_in_the_order_of_how_well_they_fit(farm: Farm) -> None:
    assert texts(matches(farm, "BROO", TODAY)) == ["Tub brooder", "Shed brooder"]
    (clover,) = matches(farm, "clo", TODAY)
    assert clover.batch_id == next(batch.id for batch in farm.batches if batch.name == "Clover")
    assert texts(matches(farm, "e", TODAY))[0] == "Elder"  # it begins with it, others only hold it
    renamed = replace(farm, places=(replace(farm.places[0], name="Crunch"), *farm.places[1:]))
    assert texts(matches(renamed, "run", TODAY)) == ["Long run", "Crunch"]  # a word that begins with it


def test_of_names_that_fit_as_well_the_batch_nearest_to_today_comes_first() -> None:
    # A batch a week from 4 January 2027 on: on 5 March 2029 the nearest begin at about the 113th week.
    farm, today = big_farm(), date(2029, 3, 5)
    found = [farm.batch(match.batch_id) for match in matches(farm, "batch 1", today) if match.batch_id]
    away = [abs((batch.start - today).days) for batch in found[1:]]
    assert found[0].name == "Batch 1"  # the name itself
    assert away == sorted(away)
    assert max(away) < 60


def test_accents_and_blanks_do_not_matter(farm: Farm) -> None:
    kept = replace(farm, places=(replace(farm.places[0], name="Käfig  Süd"), *farm.places[1:]))
    assert texts(matches(kept, "kafig sud", TODAY)) == ["Käfig  Süd"]


def test_what_tells_one_from_another_stands_beside_it(farm: Farm) -> None:
    assert matches(farm, "clover", TODAY)[0].more == "140 eggs, Mon 12 Apr 2027"
    assert matches(farm, "tub", TODAY)[0].more == "1.30 m²"
    assert matches(farm, "bench", TODAY)[0].more == "180 egg places"
    found = [(match.text, match.more) for match in matches(farm, "12 apr", TODAY)]
    assert found[0] == ("Mon 12 Apr 2027", "in 6 days")
    assert found[1] == ("Sun 12 Apr 2026", "359 days ago")
    assert matches(farm, "today", TODAY)[0].more == "today"


def test_a_day_of_a_batch_is_counted_from_its_setting(farm: Farm) -> None:
    clover = next(batch for batch in farm.batches if batch.name == "Clover")
    for typed in ("day 30 of clover", "day 30 clo", "Clover day 30", "clover, day 30"):
        (match,) = matches(farm, typed, TODAY)
        assert (match.batch_id, match.day) == (clover.id, clover.start + timedelta(days=30)), typed
        assert match.day == date(2027, 5, 12)  # set on 12 April
        assert match.text == "Day 30 of Clover"


def test_days_alone_are_found_where_days_are_asked_for(farm: Farm) -> None:
    marigold = replace(farm, batches=(replace(farm.batches[0], name="Mar"), *farm.batches[1:]))
    assert texts(matches(marigold, "mar", TODAY)) == ["Mar", "Mon 1 Mar 2027", "Wed 1 Mar 2028"]
    assert texts(days(marigold, "mar", TODAY)) == ["Mon 1 Mar 2027", "Wed 1 Mar 2028"]


def test_a_farm_in_feet_reads_the_month_first(farm: Farm) -> None:
    us = replace(farm, settings=replace(farm.settings, units=Units.US))
    assert days(us, "4/12", TODAY)[0].day == date(2027, 4, 12)
    assert days(farm, "4/12", TODAY)[0].day == date(2026, 12, 4)


@pytest.mark.parametrize("typed", ["", "  ", "xyzzy", "day 30 of nobody", "day 9999 of", "moon 30 of clover"])
def test_what_is_nothing_finds_nothing(farm: Farm, typed: str) -> None:
    assert matches(farm, typed, TODAY) == []
