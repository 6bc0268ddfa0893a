"""What the counts of a farm come to, in numbers worked out by hand; what was never counted has no measure."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quailsched.farm.facts import Count, Sort
from quailsched.farm.records import Batch, Origin, Part, Record
from quailsched.outlook.batch_measures import Books, Measures
from quailsched.outlook.curves import lay_by_week, weights
from quailsched.outlook.hatch_groups import breeding_groups, incubators
from quailsched.outlook.hens import Flock
from quailsched.season.season import Season
from tests.builders import ARK, BROODER, CABINET, HATCHER, PEN, RUN, SETTER, bought, eggs, farm, hatch_route, on, stay

CLOVER = eggs("Clover", 60, *hatch_route())
# Sixty hens and twenty cocks, grown, in one pen from Monday on.
LAYERS = bought("Dill", 80, 60, stay(PEN, 0, 200))
SEXED = Count("sexed", Sort.SEXED, on(0), number=80, batch_id="dill", hens=60, cocks=20)


def books(*records: Record) -> Books:
    return Books(Season(farm(*records)), on(400))


def measures(batch: Batch, *counts: Count) -> Measures:
    return books(batch, *counts).of(batch)


def count(sort: Sort, day: int, number: int = 0, of: str = "clover", **fields: object) -> Count:
    made = Count(f"{sort}-{day}-{number}-{of}", sort, on(day), number=number, batch_id=of)
    return replace(made, **fields)  # type: ignore[arg-type]


def test_nothing_is_measured_of_what_was_never_counted() -> None:
    assert measures(CLOVER) == {}
    assert measures(LAYERS) == {}


def test_fertility_and_hatch_of_sixty_eggs() -> None:
    # 60 set, 6 clear: 54 fertile, 90 %; 27 hatched: half of the fertile ones, 45 % of those set.
    found = measures(CLOVER, count(Sort.CLEAR, 7, 4), count(Sort.CLEAR, 14, 2), count(Sort.HATCHED, 17, 27))
    assert {key: one.value for key, one in found.items()} == {
        "fertility": 90.0, "hatch_of_fertile": 50.0, "hatch_of_set": 45.0,
    }  # fmt: skip


def test_eggs_that_were_never_candled_have_no_fertility_but_a_hatch() -> None:
    assert {key: one.value for key, one in measures(CLOVER, count(Sort.HATCHED, 17, 27)).items()} == {
        "hatch_of_set": 45.0
    }


def test_a_candling_that_found_none_clear_tells_that_all_are_fertile() -> None:
    assert measures(CLOVER, count(Sort.CLEAR, 7, 0))["fertility"].value == 100.0


def test_no_chick_is_a_hatch_of_0_and_not_an_unknown_one() -> None:
    assert measures(CLOVER, count(Sort.HATCHED, 17, 0))["hatch_of_set"].value == 0.0


def test_a_corrected_count_does_not_count() -> None:
    wrong = count(Sort.HATCHED, 17, 50)
    right = replace(count(Sort.HATCHED, 17, 30), corrects=wrong.id)
    assert measures(CLOVER, wrong, right)["hatch_of_set"].value == 50.0


def test_livability_to_a_day() -> None:
    # 50 hatched on day 17, 2 died on day 18, 3 on day 24; 10 were sold on day 30: they have lived.
    counts = (
        *(count(Sort.HATCHED, 17, 50), count(Sort.DIED, 18, 2), count(Sort.DIED, 24, 3), count(Sort.SOLD, 30, 10)),
    )
    found = books(CLOVER, *counts)
    values = {day: one.value for day in (17, 18, 23, 24, 40) if (one := found.livability(CLOVER, on(day)))}
    assert values == {18: 96.0, 23: 96.0, 24: 90.0, 40: 90.0}  # on day 17 nobody had looked yet


def test_a_hatch_alone_does_not_tell_that_all_live() -> None:
    assert "livability" not in measures(CLOVER, count(Sort.HATCHED, 17, 50))
    assert measures(CLOVER, count(Sort.HATCHED, 17, 50), count(Sort.COUNTED, 30, 50))["livability"].value == 100.0


def test_chicks_can_be_weighed_and_moved_on_the_day_of_their_hatch() -> None:
    counts = count(Sort.HATCHED, 18, 20), count(Sort.WEIGHED, 18, 20, grams=200)
    assert farm(CLOVER, *counts, count(Sort.MOVED, 18, 20, place_id="brooder"))


def test_dressing_of_those_birds_of_which_both_weights_are_known() -> None:
    # 10 birds: 2,000 g live, 1,400 g dressed. Five more were weighed alive alone.
    counts = (
        count(Sort.HATCHED, 17, 50),
        count(Sort.PROCESSED, 55, 10, grams=2_000, dressed_g=1_400),
        count(Sort.PROCESSED, 56, 5, grams=1_000),
    )
    assert measures(CLOVER, *counts)["dressing"].value == 70.0


def test_feed_conversion_until_all_are_gone() -> None:
    # 20 chicks of 10 g weighed on the day of the hatch. 1 died. 9 were processed at 1,800 g together, 10 sold after a
    # weighing of 5 at 1,000 g: 2,000 g. Gain: 1,800 + 2,000 - 200 = 3,600 g, for 10,800 g of feed; the bag that was
    # fed after all had gone does not count.
    counts = (
        *(count(Sort.HATCHED, 17, 20), count(Sort.WEIGHED, 17, 20, grams=200), count(Sort.DIED, 20, 1)),
        *(count(Sort.FED, 18, grams=4_000), count(Sort.FED, 30, grams=6_800), count(Sort.FED, 60, grams=5_000)),
        *(count(Sort.WEIGHED, 52, 5, grams=1_000), count(Sort.PROCESSED, 52, 9, grams=1_800)),
        count(Sort.SOLD, 53, 10),
    )
    found = measures(CLOVER, *counts)["feed_conversion"]
    assert (found.value, found.part, found.whole) == (3.0, 10_800, 3_600)


def test_feed_conversion_waits_for_a_weighing_of_those_still_there() -> None:
    hatched, fed = count(Sort.HATCHED, 17, 20), count(Sort.FED, 18, grams=4_000)
    gone = count(Sort.PROCESSED, 52, 9, grams=1_800)
    assert "feed_conversion" not in measures(CLOVER, hatched, fed, gone)
    # Weighed on day 52: 9 at 1,800 g and 11 of 200 g, less 20 chicks of what the kind's curve has at day 0.
    found = measures(CLOVER, hatched, fed, gone, count(Sort.WEIGHED, 52, 4, grams=800))["feed_conversion"]
    chick = Season(farm(CLOVER)).kind(CLOVER).at("weight_g", 0)
    assert found.whole == pytest.approx(1_800 + 11 * 200 - 20 * chick)


def test_feed_conversion_goes_to_the_last_weighing_while_birds_are_left() -> None:
    # Weighed at 10 g and, on day 52, at 200 g: 20 birds gained 3,800 g, for 7,600 g of feed. What was sold and fed
    # later does not count before the next weighing.
    counts = (
        *(count(Sort.HATCHED, 17, 20), count(Sort.WEIGHED, 17, 20, grams=200), count(Sort.WEIGHED, 52, 5, grams=1_000)),
        *(count(Sort.COUNTED, 52, 20), count(Sort.FED, 20, grams=7_600), count(Sort.FED, 55, grams=999)),
        count(Sort.SOLD, 60, 12),
    )
    found = measures(CLOVER, *counts)["feed_conversion"]
    assert (found.value, found.part, found.whole) == (2.0, 7_600, 3_800)


def test_no_feed_conversion_where_birds_joined_or_left_before_any_weighing() -> None:
    hatched, fed = count(Sort.HATCHED, 17, 20), count(Sort.FED, 18, grams=4_000)
    weighed = count(Sort.WEIGHED, 52, 4, grams=800)
    assert "feed_conversion" not in measures(CLOVER, hatched, fed, count(Sort.SOLD, 30, 3), weighed)
    other = bought("Elder", 5, 20, stay(PEN, 0, 60))
    joined = count(Sort.JOINED, 30, 5, of="elder", to_batch_id="clover")
    found = books(CLOVER, other, hatched, fed, joined, weighed)
    assert "feed_conversion" not in found.of(CLOVER)


def test_lay_by_hen_days_and_by_hens_housed() -> None:
    # 60 hens housed on day 0. Day 10: 45 eggs. Day 11: 10 hens sold, 40 eggs. Day 12: nothing counted. Day 13: 35.
    # Hen-days of the days counted: 60 + 50 + 50 = 160. Eggs 120: 75 %. Housed: 120 / (60 x 3) = 66.67 %.
    counts = (
        *(SEXED, count(Sort.LAID, 10, 45, of="dill"), count(Sort.LAID, 11, 40, of="dill")),
        *(count(Sort.LAID, 13, 35, of="dill"), count(Sort.SOLD, 11, 10, of="dill", part=Part.HENS)),
    )
    found = measures(LAYERS, *counts)
    assert (found["hen_day"].value, found["hen_day"].whole) == (75.0, 160)
    assert found["hen_housed"].value == pytest.approx(200 / 3)
    assert (found["hen_housed"].whole, found["hen_housed"].days) == (60, 3)


def test_a_day_on_which_no_egg_was_laid_counts_when_it_was_counted() -> None:
    counts = SEXED, count(Sort.LAID, 10, 60, of="dill"), count(Sort.LAID, 11, 0, of="dill")
    assert measures(LAYERS, *counts)["hen_day"].value == 50.0


def test_feed_for_a_dozen_eggs() -> None:
    # Days 10 and 11 counted, 45 eggs each: 90 eggs. 3,000 g fed on day 10; what was fed before does not count.
    # 12 x 3,000 / 90 = 400 g.
    counts = [SEXED, count(Sort.LAID, 10, 45, of="dill"), count(Sort.LAID, 11, 45, of="dill")]
    counts += [count(Sort.FED, 10, of="dill", grams=3_000), count(Sort.FED, 2, of="dill", grams=9_999)]
    assert measures(LAYERS, *counts)["feed_per_dozen"].value == 400.0
    # With 45 more eggs on day 13, and none counted on day 12, three of four days' feed count: 12 x 2,250 / 135 = 200.
    assert measures(LAYERS, *counts, count(Sort.LAID, 13, 45, of="dill"))["feed_per_dozen"].value == 200.0


def test_eggs_of_a_pen_are_shared_by_hens() -> None:
    # In the pen: 60 hens of Dill and 30 of Fern (30 birds, all hens), and chicks too young to lay. 45 eggs: 30 and 15.
    fern = bought("Fern", 30, 60, stay(PEN, 0, 200))
    chicks = bought("Hazel", 50, 10, stay(PEN, 0, 20))
    sexed = count(Sort.SEXED, 0, 30, of="fern", hens=30)
    found = books(LAYERS, fern, chicks, SEXED, sexed, count(Sort.LAID, 5, 45, of="", place_id="pen"))
    assert {key: found.eggs_laid(key) for key in ("dill", "fern", "hazel", "")} == {
        "dill": 30.0, "fern": 15.0, "hazel": None, "": None,
    }  # fmt: skip


def test_eggs_of_an_empty_pen_are_of_no_batch() -> None:
    found = books(LAYERS, SEXED, RUN, count(Sort.LAID, 5, 7, of="", place_id="run"))
    assert (found.eggs_laid(""), found.eggs_laid("dill")) == (7.0, None)


def test_feed_of_a_pen_is_shared_by_what_birds_eat() -> None:
    # 80 and 20 grown birds of one kind: 4 to 1.
    fern = bought("Fern", 20, 60, stay(PEN, 0, 200))
    found = books(LAYERS, fern, count(Sort.FED, 5, of="", place_id="pen", grams=1_000))
    assert (found.feed_g("dill"), found.feed_g("fern")) == (800.0, 200.0)


def test_hours_by_batch_and_of_none() -> None:
    hours = count(Sort.HOURS, 5, hours=1.5), count(Sort.HOURS, 6, hours=0.5), count(Sort.HOURS, 6, of="", hours=2.0)
    assert books(CLOVER, *hours).hours == {"clover": 2.0, "": 2.0}


def test_hens_of_a_batch_that_is_set_apart() -> None:
    # 50 chicks, half of them cocks; apart on day 40: 25 hens and 9 cocks (one for 3 hens) stay, 16 go to the ark.
    stays = (*hatch_route()[:2], stay(BROODER, 18, 40), stay(PEN, 40, 200, Part.HENS), stay(ARK, 40, 60, Part.COCKS))
    clover = replace(CLOVER, stays=stays)
    season = Season(farm(clover, count(Sort.HATCHED, 17, 50)))
    assert [Flock(season).hens(clover, on(day)) for day in (16, 17, 39, 40, 100)] == [0, 25, 25, 25, 25]
    # Of 50, 30 were hens at sexing.
    season = Season(farm(clover, count(Sort.HATCHED, 17, 50), count(Sort.SEXED, 38, 50, hens=30, cocks=20)))
    assert Flock(season).hens(clover, on(100)) == 30


def test_hens_where_surplus_cocks_were_sold_without_being_set_apart() -> None:
    season = Season(farm(LAYERS, SEXED, count(Sort.SOLD, 5, 15, of="dill", part=Part.COCKS)))
    assert [Flock(season).hens(LAYERS, on(day)) for day in (4, 5)] == [60, 60]


def test_a_batch_parted_from_the_cocks_has_no_hens() -> None:
    cocks = Batch("mint", "Mint", "coturnix", Origin.PARTED, on(3), 15, (stay(RUN, 0, 40),), age_days=63)
    parted = count(Sort.PARTED, 3, 15, of="dill", to_batch_id="mint", part=Part.COCKS)
    season = Season(farm(LAYERS, cocks, SEXED, parted))
    assert (Flock(season).hens(cocks, on(9)), Flock(season).hens(LAYERS, on(9))) == (0, 60)


def of_pen(name: str, number: int, *from_ids: str, first: Record = SETTER, last: Record = HATCHER) -> Batch:
    stays = stay(first, 0, 15), stay(last, 15, 18), stay(BROODER, 18, 40)  # type: ignore[arg-type]
    return replace(eggs(name, number, *stays), from_ids=from_ids)


def hatch_of(name: str, clear: int, hatched: int) -> tuple[Count, ...]:
    return count(Sort.CLEAR, 7, clear, of=name), count(Sort.HATCHED, 17, hatched, of=name)


def test_breeding_groups_by_the_eggs_that_their_hens_laid() -> None:
    # Dill's eggs: 40 and 60 set, 10 clear of each: 80 %; hatched 20 of the first alone: 50 % of set, 66.7 % of fertile.
    # Iris came of the eggs of Dill and Fern together: a group of its own.
    fern = bought("Fern", 30, 60, stay(PEN, 0, 200))
    first, second, mixed = of_pen("Kale", 40, "dill"), of_pen("Lime", 60, "dill"), of_pen("Iris", 9, "fern", "dill")
    counts = *hatch_of("kale", 10, 20), count(Sort.CLEAR, 7, 10, of="lime"), *hatch_of("iris", 0, 9)
    groups = {one.from_ids: one for one in breeding_groups(farm(LAYERS, fern, first, second, mixed, *counts))}
    assert set(groups) == {("dill",), ("dill", "fern")}
    found = groups["dill",]
    assert (found.eggs, [batch.name for batch in found.batches]) == (100, ["Kale", "Lime"])
    values = {key: one.value for key, one in found.measures.items()}
    assert values == {"fertility": 80.0, "hatch_of_set": 50.0, "hatch_of_fertile": pytest.approx(200 / 3)}
    assert groups["dill", "fern"].measures["hatch_of_set"].value == 100.0


def test_incubators_by_where_eggs_were_set_and_where_they_hatched() -> None:
    # Kale went from the setter to the hatcher, Lime from the cabinet to the hatcher, Iris stayed in the cabinet.
    kale, lime = of_pen("Kale", 40), of_pen("Lime", 50, first=CABINET)
    iris = replace(eggs("Iris", 10, stay(CABINET, 0, 18), stay(BROODER, 18, 40)), start=on(60))
    counts = *hatch_of("kale", 0, 20), *hatch_of("lime", 0, 40)
    found = incubators(Season(farm(kale, lime, iris, *counts)))
    told = [(one.place.name if one.place else "", one.is_set, one.is_hatched, one.eggs) for one in found]
    assert told == [
        ("Setter", True, False, 40),
        ("Hatcher", False, True, 90),
        ("Cabinet", True, False, 60),
        ("Cabinet", False, True, 10),
    ]
    assert [one.measures["hatch_of_set"].value for one in found[:3]] == [50.0, pytest.approx(60 / 0.9), 80.0]
    assert found[3].measures == {}  # its only batch has not hatched


def test_a_machine_that_did_both_jobs_for_the_same_eggs_is_told_once() -> None:
    iris = eggs("Iris", 10, stay(CABINET, 0, 18), stay(BROODER, 18, 40))
    (found,) = incubators(Season(farm(iris)))
    assert (found.is_set, found.is_hatched, found.batches) == (True, True, (iris,))


def test_eggs_that_hatched_before_their_move_did_so_where_they_were_set() -> None:
    kale = of_pen("Kale", 40)
    found = incubators(Season(farm(kale, count(Sort.HATCHED, 14, 20, of="kale"))))
    assert [one.place.name for one in found if one.is_hatched and one.place] == ["Setter"]


def test_lay_by_week_of_age_beside_the_curve() -> None:
    # Dill is 60 days old on day 0: days 3 to 9 are its week 9 (63 to 69 days). 30 and 45 eggs of 60 hens.
    counts = count(Sort.LAID, 3, 30, of="dill"), count(Sort.LAID, 5, 45, of="dill"), count(Sort.LAID, 10, 60, of="dill")
    found = lay_by_week(books(LAYERS, SEXED, *counts), LAYERS)
    assert [(one.age_days, one.value, one.of) for one in found] == [(64, 62.5, 120), (70, 100.0, 60)]
    assert [one.expected for one in found] == [pytest.approx(50 + 30 * 8 / 14), 80.0]  # 50 % at day 56, 80 at 70


def test_weights_by_age_are_means_of_a_day() -> None:
    counts = (
        count(Sort.HATCHED, 17, 20),
        *(count(Sort.WEIGHED, 52, 5, grams=900), count(Sort.WEIGHED, 52, 15, grams=3_300)),
    )
    found = weights(books(CLOVER, *counts), CLOVER)
    assert [(one.age_days, one.value, one.of) for one in found] == [(35, 210.0, 20)]


@given(st.integers(1, 300), st.data())
def test_fertility_times_hatch_of_fertile_is_hatch_of_set_in_counts(number: int, data: st.DataObject) -> None:
    clear = data.draw(st.integers(0, number))
    hatched = data.draw(st.integers(0, number - clear))
    batch = replace(CLOVER, number=number)
    found = measures(batch, count(Sort.CLEAR, 7, clear), count(Sort.HATCHED, 17, hatched))
    assert all(0 <= one.value <= 100 for one in found.values())
    fertility, of_set = found["fertility"], found["hatch_of_set"]
    assert Fraction(int(of_set.part), int(of_set.whole)) == Fraction(hatched, number)
    if number > clear:
        of_fertile = found["hatch_of_fertile"]
        product = Fraction(int(fertility.part), int(fertility.whole)) * Fraction(
            int(of_fertile.part), int(of_fertile.whole)
        )
        assert product == Fraction(int(of_set.part), int(of_set.whole))
    else:
        assert "hatch_of_fertile" not in found


@given(st.lists(st.tuples(st.integers(0, 30), st.integers(0, 90)), min_size=1, max_size=12), st.integers(1, 79))
def test_no_egg_is_lost_or_made_by_sharing(laid: list[tuple[int, int]], hens: int) -> None:
    fern = bought("Fern", 31, 60, stay(PEN, 0, 20))
    sexed = replace(SEXED, hens=hens, cocks=80 - hens)
    counts = [
        replace(count(Sort.LAID, day, number, of="", place_id="pen"), id=str(n)) for n, (day, number) in enumerate(laid)
    ]
    found = books(LAYERS, fern, sexed, *counts)
    shared = [one for of_batch in found.eggs.values() for one in of_batch]
    assert sum(one.amount for one in shared) == sum(number for _, number in laid)
