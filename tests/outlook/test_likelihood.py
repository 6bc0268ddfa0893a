"""In how many hatches a clash comes about, held against the rules themselves: every number of chicks is tried."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from itertools import product

import pytest

from quailsched.farm.records import Batch, Farm, FigureChoice, Part, Place, Record
from quailsched.outlook.hatch import hatch_odds
from quailsched.outlook.likelihood import CHANCY, chance_of_clash
from quailsched.season.clash import Clash
from quailsched.season.clashes import clashes_of
from quailsched.season.season import Season
from tests.builders import (
    BROODER,
    HATCHER,
    OUT,
    PEN,
    PLAIN_FIGURES,
    SETTER,
    bought,
    clashes,
    eggs,
    farm,
    on,
    only,
    resized,
    stay,
)

# Half of the eggs hatch, as expected; every chick lives, on 200 cm2. With "all hatch" beside it, n eggs are n chicks.
HALF = (FigureChoice("f1", "coturnix", "hatch_of_set_pct", 50.0), *PLAIN_FIGURES[1:])


def half(*records: Record) -> Farm:
    return farm(*HALF, *records, plain=False)


def hatching(name: str, number: int, place: Place, start: int = 0, end: int = 40) -> Batch:
    route = (stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(place, 18, end, leaving=OUT))
    return eggs(name, number, *route, start=on(start))


def clash_in(plan: Farm, kind: str) -> Clash:
    return only(clashes_of(Season(plan)), kind)


def told(plan: Farm, kind: str, today: int = 0) -> float | None:
    return chance_of_clash(Season(plan), clash_in(plan, kind), on(today))


def by_trying(plan: Farm, kind: str, worst_of: Clash) -> float:
    """The chance by the rules: every number of chicks of every batch of eggs, where all hatch."""
    season = Season(plan)
    sure: list[Record] = [*plan.places, *(batch for batch in plan.batches if not batch.origin.is_eggs)]
    unsure = [batch for batch in plan.batches if batch.origin.is_eggs]
    odds = [hatch_odds(season.kind(batch), batch.number).chances for batch in unsure]
    total = 0.0
    for chicks in product(*(range(len(chances)) for chances in odds)):
        batches = [replace(batch, number=n) for batch, n in zip(unsure, chicks, strict=True) if n]
        found = clashes(*sure, *batches)
        if any(c.kind == kind and c.first <= worst_of.worst <= c.last for c in found):
            chance = 1.0
            for chances, n in zip(odds, chicks, strict=True):
                chance *= chances[n]
            total += chance
    return total


def plans() -> Iterator[tuple[str, Farm]]:
    """A clash of each kind that hangs on the number of birds."""
    yield "floor", half(hatching("Aster", 30, BROODER), resized(BROODER, 14 * 200))  # 15 expected, 14 find room
    yield "heat", half(hatching("Aster", 60, BROODER), replace(BROODER, heat_sources=0))
    yield "water", half(hatching("Aster", 30, BROODER), replace(BROODER, drinker_cm=4))
    yield "feeder", half(hatching("Aster", 30, BROODER), replace(BROODER, feeder_cm=18))
    yield "calm", half(hatching("Aster", 24, PEN), PEN)


PLANS = tuple(plans())


@pytest.mark.parametrize(("kind", "plan"), PLANS, ids=[kind for kind, _ in PLANS])
def test_the_chance_is_that_of_the_hatches_in_which_the_rule_is_broken(kind: str, plan: Farm) -> None:
    assert kind in CHANCY
    chance = told(plan, kind)
    assert chance is not None
    assert chance == pytest.approx(by_trying(plan, kind, clash_in(plan, kind)), abs=1e-9)
    assert 0.2 < chance <= 1.0


def test_one_hatch_in_a_brooder_by_hand() -> None:
    # 2 eggs, half of which hatch, and room for no chick: broken unless none hatches.
    plan = half(hatching("Aster", 2, BROODER), resized(BROODER, 100))
    none = hatch_odds(Season(plan).kind(plan.batches[0]), 2).chances[0]
    assert told(plan, "floor") == pytest.approx(1 - none)


def test_a_crowd_of_many_hatches() -> None:
    # More than 200 together are a crowd (figure crowd_birds): of 410 eggs 205 chicks are expected.
    places = (resized(SETTER, 410), resized(HATCHER, 410), resized(BROODER, 200_000))
    plan = half(*places, hatching("Aster", 410, BROODER))
    clash = clash_in(plan, "crowd")
    chances = hatch_odds(Season(plan).kind(plan.batches[0]), 410).chances
    assert clash.have == 200
    assert told(plan, "crowd") == pytest.approx(sum(chances[201:]))


def test_two_hatches_in_one_brooder_add_up() -> None:
    plan = half(hatching("Aster", 9, BROODER), hatching("Bracken", 12, BROODER, start=2), resized(BROODER, 10 * 200))
    clash = clash_in(plan, "floor")
    assert told(plan, "floor") == pytest.approx(by_trying(plan, "floor", clash), abs=1e-9)


def test_birds_that_are_there_already_are_sure() -> None:
    plan = half(
        hatching("Aster", 14, BROODER),
        bought("Dill", 5, 20, stay(BROODER, 0, 60, leaving=OUT)),
        resized(BROODER, 11 * 200),
    )
    clash = clash_in(plan, "floor")
    assert told(plan, "floor") == pytest.approx(by_trying(plan, "floor", clash), abs=1e-9)


def test_hatches_of_four_batches_together_are_close_to_the_exact_chance() -> None:
    # 4 batches of 60 eggs each, 120 chicks expected; convolved exactly here, with few points there.
    places = (resized(SETTER, 400), resized(HATCHER, 400), resized(BROODER, 119 * 200))
    plan = half(
        *places,
        *(hatching(name, 60, BROODER, start=n) for n, name in enumerate(("Aster", "Bracken", "Clover", "Dill"))),
    )
    each = hatch_odds(Season(plan).kind(plan.batches[0]), 60).chances
    together = [1.0]
    for _ in range(4):
        sums = [0.0] * (len(together) + len(each) - 1)
        for n, chance in enumerate(together):
            for more, its in enumerate(each):
                sums[n + more] += chance * its
        together = sums
    assert told(plan, "floor") == pytest.approx(sum(together[120:]), abs=0.01)


def test_parts_of_one_batch_come_of_the_same_hatch() -> None:
    # Laying group and surplus cocks of one batch in one pen, with room for 13 of the 20 that are expected. Taken for
    # two hatches, they would be short of room together less often: one would make up for the other.
    route = (stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, 46))
    parted = (stay(PEN, 46, 80, Part.HENS, OUT), stay(PEN, 46, 80, Part.COCKS, OUT))
    plan = half(eggs("Aster", 40, *route, *parted), resized(PEN, 13 * 200))
    clash = clash_in(plan, "floor")
    chances = hatch_odds(Season(plan).kind(plan.batches[0]), 40).chances
    assert clash.worst >= on(46)
    assert told(plan, "floor") == pytest.approx(sum(chances[14:]), abs=0.02)  # parts are rounded one by one


def test_nothing_is_said_of_what_hangs_on_no_hatch() -> None:
    late = half(hatching("Aster", 30, BROODER), resized(BROODER, 14 * 200))
    hatch = Season(late).days(late.batches[0]).hatch
    assert told(late, "floor", today=hatch - 1) is not None
    assert told(late, "floor", today=hatch) is None  # they have hatched
    grown = half(bought("Dill", 20, 30, stay(PEN, 0, 50, leaving=OUT)), resized(PEN, 3_000))
    assert told(grown, "floor") is None
    places = resized(SETTER, 20)
    assert told(half(hatching("Aster", 30, BROODER), places), "eggs") is None  # eggs are counted


def test_a_chance_is_known_for_every_kind_it_is_said_to_be_known_for() -> None:
    assert {kind for kind, _ in PLANS} | {"crowd"} == CHANCY
