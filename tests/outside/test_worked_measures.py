"""The measures of the trade against printed worked examples. The source stands beside each.

Numbers are written out here, so that a slip in the data does not move both sides. Fertility and hatch are checked in
``test_published_figures``.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from quailsched.farm.facts import Cause, Count, Sort
from quailsched.farm.records import Batch, Origin, Place, Role
from quailsched.husbandry.handbook import sources
from quailsched.husbandry.measures import (
    dressing_pct,
    feed_conversion,
    feed_per_dozen_g,
    hen_day_pct,
    hen_housed_pct,
    livability_pct,
)
from quailsched.outlook.batch_measures import Books
from quailsched.season.season import Season
from tests.builders import MONDAY, farm, on, stay


def test_hen_day_lay_of_a_flock_of_345_000() -> None:
    # Calculating Agriculture ch. 12, 2019, p. 141 ex. B: 345,000 hens, 31 days, 9,090,750 eggs: 85.0 %.
    assert hen_day_pct(9_090_750, 345_000 * 31) == pytest.approx(85.0, abs=1e-9)


HEN_DAYS = {"Oct": 37_627, "Nov": 35_955, "Dec": 36_699, "Jan": 36_334, "Feb": 29_398}
EGGS = {"Oct": 20_001, "Nov": 25_684, "Dec": 26_661, "Jan": 24_280, "Feb": 20_337}


def test_lay_of_a_flock_from_october_to_february() -> None:
    # Student handout, n.d.: 1,223 housed, 151 days, hen-days as above. It prints a total of 116,863 eggs, 100 fewer
    # than its months add up to, and from that 66.39 % hen-day (rounded down from 66.395) and 63.28 % hen-housed.
    assert sum(HEN_DAYS.values()) == 176_013
    assert sum(EGGS.values()) == 116_963 == 116_863 + 100
    assert hen_day_pct(116_863, 176_013) == pytest.approx(66.39, abs=0.005)
    assert hen_housed_pct(116_863, 1_223, 151) == pytest.approx(63.28, abs=0.005)
    # What it should print, by its own months:
    assert hen_day_pct(116_963, 176_013) == pytest.approx(66.45, abs=0.005)
    assert hen_housed_pct(116_963, 1_223, 151) == pytest.approx(63.34, abs=0.005)


def test_the_misprint_is_told_in_our_copy_of_the_table() -> None:
    assert "100 short" in sources()["ex.henday3.henday"].note


def ten_thousand() -> Batch:
    return Batch("b", "Amsel", "coturnix", Origin.BOUGHT_BIRDS, MONDAY, 10_000, (stay(HOUSE, 0, 30),), age_days=60)


HOUSE = Place("house", "House", Role.PEN, floor_cm2=100_000_000)


def test_a_hen_that_died_does_not_count_on_the_day_of_its_death() -> None:
    # Big Book Project, n.d.: 10,000 hens housed, 100 died, 9,108 eggs in a day: hen-day 9,108 / 9,900 = 92.0 %,
    # hen-housed 9,108 / 10,000 = 91.08 %. Here they die on the day of the eggs itself: the worst case.
    batch = ten_thousand()
    sexed = Count("s", Sort.SEXED, MONDAY, number=10_000, batch_id="b", hens=10_000)
    died = Count("d", Sort.DIED, on(1), number=100, batch_id="b", cause=Cause.SICK)
    laid = Count("l", Sort.LAID, on(1), number=9_108, batch_id="b")
    found = Books(Season(farm(HOUSE, batch, sexed, died, laid)), on(1)).of(batch)
    assert found["hen_day"].value == pytest.approx(92.0, abs=1e-9)
    assert found["hen_day"].whole == 9_900
    assert found["hen_housed"].value == pytest.approx(91.08, abs=1e-9)
    assert found["livability"].value == pytest.approx(99.0, abs=1e-9)
    # Had they died a day later, all 10,000 would have counted: 91.08 %.
    later = Books(Season(farm(HOUSE, batch, sexed, replace(died, day=on(2)), laid)), on(2)).of(batch)
    assert later["hen_day"].value == pytest.approx(91.08, abs=1e-9)


def test_a_hen_that_joins_counts_on_the_day_on_which_it_joins() -> None:
    # The same convention from its other side: 9,900 housed, 100 join on the day of 9,200 eggs: 92.0 % of 10,000.
    batch = replace(ten_thousand(), number=9_900)
    others = replace(ten_thousand(), id="o", name="Buche", number=100)
    counts = (
        Count("s", Sort.SEXED, MONDAY, number=9_900, batch_id="b", hens=9_900),
        Count("t", Sort.SEXED, MONDAY, number=100, batch_id="o", hens=100),
        Count("j", Sort.JOINED, on(1), number=100, batch_id="o", to_batch_id="b"),
        Count("l", Sort.LAID, on(1), number=9_200, batch_id="b"),
    )
    lay = Books(Season(farm(HOUSE, batch, others, *counts)), on(1)).lay(batch)
    assert lay is not None
    assert (lay.hen_days, lay.hens_housed) == (10_000, 9_900)


def test_feed_conversion_of_heavy_quail_in_week_5() -> None:
    # Indian J. Anim. Res. BF-1579, 2023: 21.34 g a day for 7 days, from 180.44 to 226.45 g: 3.25 (3.2467).
    assert feed_conversion(21.34 * 7, 226.45 - 180.44) == pytest.approx(3.25, abs=0.005)


def test_feed_conversion_by_counts_of_a_farm() -> None:
    # The same week as a keeper records it, for 100 birds: weighed when they came and a week later, 14,938 g fed.
    batch = Batch("b", "Amsel", "coturnix-heavy", Origin.BOUGHT_BIRDS, MONDAY, 100, (stay(HOUSE, 0, 30),), age_days=28)
    counts = (
        Count("w", Sort.WEIGHED, MONDAY, number=100, grams=18_044, batch_id="b"),
        Count("x", Sort.WEIGHED, on(7), number=100, grams=22_645, batch_id="b"),
        Count("c", Sort.COUNTED, on(7), number=100, batch_id="b"),
        *(Count(f"f{n}", Sort.FED, on(n), grams=2_134, batch_id="b") for n in range(1, 8)),
    )
    found = Books(Season(farm(HOUSE, batch, *counts, plain=False)), on(7)).of(batch)
    assert found["feed_conversion"].value == pytest.approx(3.25, abs=0.005)
    assert found["feed_conversion"].whole == pytest.approx(4_601)


def test_dressing_of_a_quail_of_188_g() -> None:
    # A breeder's record, New Zealand, 2010s: 188 g live, 105 g dressed; printed as 56 %, which is 55.9 rounded.
    assert dressing_pct(188, 105) == pytest.approx(56, abs=0.5)
    assert dressing_pct(188, 105) == pytest.approx(55.85, abs=0.005)


def test_birds_for_a_dressed_weight() -> None:
    # Calculating Agriculture ch. 12, 2019, p. 149: 75 % of 28.25 lb dressed, 250 lb wanted: 11.799, so 12 birds.
    share = dressing_pct(28.25, 28.25 * 0.75)
    assert share is not None
    assert 250 / (28.25 * share / 100) == pytest.approx(11.799, abs=0.0005)


def test_feed_for_twelve_eggs() -> None:
    # Leaflet of CARI and TANUVAS, a copy: 400 g; as its note in the table says, 25 g a day at 75 % lay are
    # 25 x 12 / 0.75 = 400.
    assert feed_per_dozen_g(25 * 100, 75) == pytest.approx(400)


def test_livability_against_a_printed_mortality() -> None:
    # Central Poultry Development Organisation, Bhubaneswar, 2015: 7.25 % died in week 1; of 10,000 chicks 725.
    assert livability_pct(10_000, 725) == pytest.approx(100 - 7.25)
