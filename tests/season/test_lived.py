"""Birds, eggs and groups after counts: what was counted until the last of them, thinned by survival from there."""

from __future__ import annotations

import pytest

from quailsched.edits.change import apply
from quailsched.edits.counts import take_back
from quailsched.farm.facts import Count, Sort
from quailsched.farm.records import Part
from quailsched.season.clashes import clashes_of
from quailsched.season.season import Season
from tests.builders import BROODER, HATCHER, PEN, SETTER, bought, farm, on, resized, stay
from tests.edits.counted import NOW, ROUTE, TOGETHER, birds, clover, eggs_in, fact, known

HATCH = fact(Sort.HATCHED, 17, 70)


def test_candling_changes_how_many_are_expected() -> None:
    # 61.3 % of eggs set hatch: 61 of 100. With 20 clear ones out, 71.5 % of the other 80: 57.2.
    one = clover(plain=False)
    assert birds(one, 17) == 61
    one = known(one, fact(Sort.CLEAR, 7, 20))
    assert birds(one, 17) == 57
    # 5 more have quit: 71.5 % of 75 are 53.6.
    one = known(one, fact(Sort.QUIT, 14, 5))
    assert birds(one, 17) == 54
    assert [eggs_in(one, SETTER, day) for day in (6, 7, 13, 14)] == [100, 80, 80, 75]
    assert eggs_in(one, HATCHER, 16) == 75


def test_quit_eggs_alone_leave_no_more_chicks_than_eggs() -> None:
    # None was looked at for being clear, so 61 of those set are expected still; of 30 eggs that are left, 30.
    one = known(clover(plain=False), fact(Sort.QUIT, 14, 10))
    assert birds(one, 17) == 61
    assert birds(known(one, fact(Sort.QUIT, 15, 60)), 17) == 30


def test_after_the_last_count_birds_are_thinned_by_survival() -> None:
    # Of 70 hatched 89.59 % live at 30 days: 62.7. A head count of 66 then holds: of these 87.71 / 89.59 live at 60.
    one = known(clover(plain=False), HATCH)
    assert (birds(one, 17), birds(one, 47)) == (70, 63)
    one = known(one, fact(Sort.COUNTED, 47, 66))
    assert (birds(one, 46), birds(one, 47), birds(one, 77)) == (70, 66, 65)


def test_a_move_without_a_count_says_nothing_of_how_many_live() -> None:
    one = known(clover(plain=False), HATCH, fact(Sort.MOVED, 47, 63, place_id="pen", part=Part.HENS))
    assert birds(one, 47) == 63


def test_a_bird_that_dies_does_not_count_on_its_day_and_one_that_joins_does() -> None:
    one = known(clover(route=TOGETHER), HATCH, fact(Sort.DIED, 20, 5), fact(Sort.SOLD, 22, 3))
    assert [birds(one, day) for day in (19, 20, 21, 22)] == [70, 65, 65, 62]


def test_deaths_before_the_hatch_was_counted_are_of_those_expected() -> None:
    one = known(clover(), fact(Sort.DIED, 20, 5))
    assert (birds(one, 19), birds(one, 20)) == (100, 95)
    assert birds(known(one, fact(Sort.HATCHED, 17, 70)), 20) == 65


def test_birds_that_came_are_counted_as_chicks_are() -> None:
    # Ten that were 30 days old when they came: of 8 counted at 42 days 87.71 / 88.9 live at 60.
    one = farm(bought("Rue", 10, 30, stay(PEN, 0, None)), plain=False)
    one = known(one, fact(Sort.DIED, 5, 1, "rue"), fact(Sort.COUNTED, 12, 8, "rue"))
    assert [birds(one, day, batch="rue") for day in (0, 4, 5, 11, 12, 30)] == [10, 10, 9, 9, 8, 8]


# Groups: of 70 birds 35 are cocks; 12 of these stay with 35 hens, one for each three, and 23 are surplus.


def groups(*facts: Count, day: int = 50) -> tuple[int, int]:
    one = known(clover(), HATCH, *facts)
    found = birds(one, day, Part.HENS), birds(one, day, Part.COCKS)
    assert sum(found) == birds(one, day)
    return found


def test_groups_are_halves_until_they_are_sexed() -> None:
    assert groups() == (47, 23)
    # 40 hens and 5 unsure with 15 of 25 cocks; 10 surplus.
    assert groups(fact(Sort.SEXED, 38, 70, hens=40, cocks=25)) == (60, 10)


def test_losses_between_sexing_and_parting_are_shared() -> None:
    # 63 are left of 70: a seventh of each, as 10 of 70 were surplus: 9.
    assert groups(fact(Sort.SEXED, 38, 70, hens=40, cocks=25), fact(Sort.DIED, 42, 7)) == (54, 9)


def test_birds_not_found_at_sexing_are_missing_from_all() -> None:
    # 64 found: 34 hens with 12 of 30 cocks; 18 surplus.
    assert groups(fact(Sort.SEXED, 38, 64, hens=34, cocks=30)) == (46, 18)


@pytest.mark.parametrize("day", [40, 46, 48])
def test_cocks_that_go_are_cocks_whenever_they_go(day: int) -> None:
    assert groups(fact(Sort.PROCESSED, day, 10, part=Part.COCKS)) == (47, 13)
    assert groups(fact(Sort.SOLD, day, 10, part=Part.HENS)) == (37, 23)


def test_cocks_that_went_after_sexing_are_no_longer_there() -> None:
    sexed = fact(Sort.SEXED, 38, 70, hens=40, cocks=25)
    assert groups(sexed, fact(Sort.PROCESSED, 40, 4, part=Part.COCKS)) == (60, 6)


def test_cocks_that_went_before_sexing_were_not_among_those_sexed() -> None:
    sold = fact(Sort.SOLD, 30, 20, part=Part.COCKS)
    # 50 sexed: 36 hens with 12 of 14 cocks; 2 surplus.
    assert groups(sold, fact(Sort.SEXED, 38, 50, hens=36, cocks=14)) == (48, 2)


@pytest.mark.parametrize(("part", "left"), [(Part.HENS, (0, 20)), (Part.COCKS, (20, 0)), (Part.ALL, (0, 20))])
def test_more_of_a_group_than_it_was_thought_to_have_are_of_the_other(part: Part, left: tuple[int, int]) -> None:
    assert groups(fact(Sort.SOLD, 48, 50, part=part)) == left


def test_all_that_die_before_they_part_are_shared() -> None:
    # 60 left: 30 hens with 10 of 30 cocks; 20 surplus.
    assert groups(fact(Sort.DIED, 46, 10)) == (40, 20)


def test_all_that_die_after_they_part_are_of_the_hens_as_nobody_told() -> None:
    assert groups(fact(Sort.DIED, 47, 10)) == (37, 23)


# Footprints and clashes


def test_the_same_facts_have_the_same_footprint_and_others_another() -> None:
    before = clover()
    one = known(before, fact(Sort.HATCHED, 16, 60), fact(Sort.DIED, 30, 1))
    footprint = Season(before).footprint(before.batch("clover"))
    assert Season(one).footprint(one.batch("clover")) is not footprint
    assert Season(clover()).footprint(clover().batch("clover")) is footprint
    # Counted on other days of the year, but on the same days of the batch.
    moved = one.batch("clover")
    again = known(before, fact(Sort.HATCHED, 16, 60), fact(Sort.DIED, 30, 1))
    assert Season(again).footprint(again.batch("clover")) is Season(one).footprint(moved)
    fewer = known(before, fact(Sort.HATCHED, 16, 60), fact(Sort.DIED, 30, 2))
    assert Season(fewer).footprint(fewer.batch("clover")) is not Season(one).footprint(moved)


def test_a_count_that_is_taken_back_leaves_the_footprint_of_before() -> None:
    before = known(clover(), HATCH)
    one = known(before, fact(Sort.DIED, 20, 1))
    one = apply(one, take_back(one, "died-20-0", "gone", NOW))
    assert Season(one).footprint(one.batch("clover")) is Season(before).footprint(before.batch("clover"))


def test_an_odd_number_fewer_than_expected_removes_a_clash_of_floor() -> None:
    # 103 chicks of 200 cm2 have 20,000 cm2, enough for 100; 100 hatched, three fewer.
    wide = (resized(SETTER, 200), resized(HATCHER, 200))
    one = clover(*wide, number=103, route=ROUTE)
    assert "floor" in [clash.kind for clash in clashes_of(Season(one)) if clash.place_id == BROODER.id]
    for hatched, has_clash in ((101, True), (100, False)):
        after = known(one, fact(Sort.HATCHED, 17, hatched))
        found = [clash for clash in clashes_of(Season(after)) if clash.place_id == BROODER.id and clash.kind == "floor"]
        assert bool(found) is has_clash
        if found:
            assert (found[0].need, found[0].have, found[0].first) == (20_200, 20_000, on(18))


def test_a_death_ends_a_clash_of_floor_on_its_day() -> None:
    one = known(clover(resized(SETTER, 200), resized(HATCHER, 200), number=103), fact(Sort.HATCHED, 17, 101))
    one = known(one, fact(Sort.DIED, 25, 1))
    (clash,) = [clash for clash in clashes_of(Season(one)) if clash.place_id == BROODER.id and clash.kind == "floor"]
    assert (clash.first, clash.last) == (on(18), on(24))
