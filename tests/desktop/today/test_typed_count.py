"""What a few typed words are a count of: sorts by their beginnings, names, days, weights; or what is missing."""

from __future__ import annotations

from datetime import date, timedelta
from uuid import uuid4

import pytest

from quailsched.desktop.today.typed_count import count_meant
from quailsched.farm.example import example_farm
from quailsched.farm.facts import Cause, Count, Sort
from quailsched.farm.records import Farm, Part
from quailsched.season.season import Season
from quailsched.words import Language, use

TODAY = date(2027, 4, 6)  # a Tuesday: Aster lives in the tub, Bracken lies in the setter, Clover comes on Monday


@pytest.fixture
def farm() -> Farm:
    return example_farm(TODAY, lambda: str(uuid4()))


def meant(farm: Farm, typed: str, picked: str = "") -> Count:
    found = count_meant(Season(farm), typed, TODAY, batch(farm, picked) if picked else "")
    assert found.count is not None, found.missing
    return found.count


def missing(farm: Farm, typed: str) -> str:
    found = count_meant(Season(farm), typed, TODAY)
    assert found.count is None, found.count
    return found.missing


def batch(farm: Farm, name: str) -> str:
    return next(one.id for one in farm.batches if one.name == name)


def place(farm: Farm, name: str) -> str:
    return next(one.id for one in farm.places if one.name == name)


def test_one_letter_is_one_bird_that_died_of_the_only_batch_with_birds(farm: Farm) -> None:
    count = meant(farm, "d")
    assert (count.sort, count.number, count.batch_id, count.day) == (Sort.DIED, 1, batch(farm, "Aster"), TODAY)


def test_the_batch_that_is_picked_is_meant_where_none_is_named(farm: Farm) -> None:
    assert meant(farm, "d", picked="Bracken").batch_id == batch(farm, "Bracken")
    assert meant(farm, "d aster", picked="Bracken").batch_id == batch(farm, "Aster")


@pytest.mark.parametrize(
    ("typed", "sort", "number", "name"),
    [
        ("2 died Clover", Sort.DIED, 2, "Clover"),
        ("clover 2 dead", Sort.DIED, 2, "Clover"),
        ("b 2 d", Sort.DIED, 2, "Bracken"),  # the commonest sort takes the d, so the b is a batch
        ("5 clear", Sort.CLEAR, 5, "Bracken"),
        ("5 clear eggs br", Sort.CLEAR, 5, "Bracken"),  # eggs are laid only if nothing else is said
        ("70 hatched bracken", Sort.HATCHED, 70, "Bracken"),
        ("0 hatched", Sort.HATCHED, 0, "Bracken"),
        ("set 140", Sort.SET, 140, "Clover"),
        ("1,300 sold aster", Sort.SOLD, 1300, "Aster"),
        ("3 tub died", Sort.DIED, 3, "Aster"),  # who is in the place
    ],
)
def test_words_in_any_order_from_their_beginnings_on(
    farm: Farm, typed: str, sort: Sort, number: int, name: str
) -> None:
    count = meant(farm, typed)
    assert (count.sort, count.number, count.batch_id) == (sort, number, batch(farm, name))


@pytest.mark.parametrize(
    ("typed", "cause"), [("2 died sick", Cause.SICK), ("2 drowned", Cause.DROWNED), ("2 d ta", Cause.TAKEN)]
)
def test_a_cause_alone_says_that_they_died(farm: Farm, typed: str, cause: Cause) -> None:
    count = meant(farm, typed)
    assert (count.sort, count.number, count.cause) == (Sort.DIED, 2, cause)


@pytest.mark.parametrize(
    ("typed", "days"),
    [
        ("2 died yesterday", -1),
        ("2 died mon", -1),  # a weekday is the last one
        ("tue 2 died", 0),  # of today's own, today
        ("2 died wed", -6),
        ("2 died 3 days ago", -3),
        ("2 died 1 apr", -5),
        ("died 1 apr 2", -5),  # not the year 2002
        ("2 died 2027-04-02", -4),
        ("2 died 2.4.", -4),
    ],
)
def test_a_day_is_one_that_has_been(farm: Farm, typed: str, days: int) -> None:
    count = meant(farm, typed)
    assert (count.day, count.number) == (TODAY + timedelta(days=days), 2)


def test_a_count_without_a_day_is_of_the_day_that_is_looked_at(farm: Farm) -> None:
    before = TODAY - timedelta(days=2)
    found = count_meant(Season(farm), "d aster", TODAY, usual_day=before)
    assert found.count is not None
    assert found.count.day == before
    named = count_meant(Season(farm), "d aster today", TODAY, usual_day=before)
    assert named.count is not None
    assert named.count.day == TODAY


@pytest.mark.parametrize(
    ("typed", "grams"),
    [
        ("fed 2500", 2500),
        ("fed 2.5 kg aster", 2500),
        ("2,5kg fed", 2500),
        ("fed 2 lb 4 oz", 1021),  # 2 x 453.59237 + 4 x 28.349523 = 1,020.58
        ("bought 50 lb", 22680),  # 50 x 453.59237 = 22,679.6
    ],
)
def test_weights_in_the_units_of_the_scale(farm: Farm, typed: str, grams: int) -> None:
    assert meant(farm, typed).grams == grams


def test_a_sample_and_a_carcass_have_a_number_and_weights(farm: Farm) -> None:
    sample = meant(farm, "weighed 10 1.8 kg aster")
    assert (sample.sort, sample.number, sample.grams) == (Sort.WEIGHED, 10, 1800)
    processed = meant(farm, "12 processed 3.6 kg 2.5 kg aster")
    assert (processed.number, processed.grams, processed.dressed_g) == (12, 3600, 2500)


def test_hens_and_cocks_are_a_sexing_or_which_birds_died(farm: Farm) -> None:
    sexed = meant(farm, "30 hens 28 cocks 2 unsure")
    assert (sexed.sort, sexed.number, sexed.hens, sexed.cocks, sexed.unsure) == (Sort.SEXED, 60, 30, 28, 2)
    died = meant(farm, "2 hens died")
    assert (died.sort, died.number, died.part) == (Sort.DIED, 2, Part.HENS)


def test_places_people_and_notes(farm: Farm) -> None:
    assert meant(farm, "bedding tub").place_id == place(farm, "Tub brooder")
    moved = meant(farm, "moved aster long run")
    assert (moved.sort, moved.place_id, moved.batch_id) == (Sort.MOVED, place(farm, "Long run"), batch(farm, "Aster"))
    hours = meant(farm, "1.5 h Leo")
    assert (hours.sort, hours.hours, hours.person_id) == (Sort.HOURS, 1.5, farm.people[1].id)
    eggs = meant(farm, "31 eggs long run")
    assert (eggs.sort, eggs.number, eggs.place_id) == (Sort.LAID, 31, place(farm, "Long run"))
    note = meant(farm, "note Feathers late, Look again")
    assert (note.sort, note.words) == (Sort.NOTE, "Feathers late, Look again")


@pytest.mark.parametrize(
    ("typed", "told"),
    [
        ("xyz", "“xyz” is not understood"),
        ("2 died foo", "“foo” is not understood"),
        ("2 3 d", "3 is a number too many"),
        ("1.5 d", "“1.5” is no whole number"),
        ("hatched", "How many? Such as: 12 hatched."),
        ("fed aster", "How much?"),
        ("moved", "To which place? Bench setter"),
        ("bedding", "Which place?"),
        ("aster", "What is it a count of?"),
        ("e 31", "No hens lay yet"),
        ("2 died tomorrow", "is still to come"),
        ("2 died 12 apr", "is still to come"),
        ("note", "What is the note?"),
        ("quit 1 mar", "How many?"),
        ("1 quit 1 mar", "none is known to fit"),
    ],
)
def test_what_is_not_told_is_asked_for(farm: Farm, typed: str, told: str) -> None:
    assert told in missing(farm, typed)


def test_nothing_typed_is_neither_a_count_nor_a_fault(farm: Farm) -> None:
    found = count_meant(Season(farm), "  ", TODAY)
    assert (found.count, found.missing) == (None, "")


def test_of_several_batches_none_is_guessed(farm: Farm) -> None:
    later = date(2027, 5, 4)  # Aster, Bracken and Clover have birds by then
    found = count_meant(Season(farm), "d", later)
    assert found.count is None
    assert found.missing == "Of which batch? Aster, Bracken and Clover"


def test_the_words_of_another_language_are_read_too(farm: Farm) -> None:
    words = {"died, dead": "tot, gestorben", "yesterday": "gestern", "sick": "krank"}
    use(Language(translate=lambda text: words.get(text, text)))
    try:
        count = meant(farm, "2 tot gestern krank")
        assert (count.sort, count.day, count.cause) == (Sort.DIED, TODAY - timedelta(days=1), Cause.SICK)
        assert meant(farm, "t").number == 1
        assert meant(farm, "d").sort is Sort.DIED  # English words go on
    finally:
        use(Language())
