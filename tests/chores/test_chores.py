"""Chores on their days, derived by hand, and keys that outlive any change."""

from collections.abc import Callable
from dataclasses import replace
from datetime import date, timedelta
from itertools import count
from uuid import UUID

import pytest
from hypothesis import given

from quailsched.chores.chore import Chore
from quailsched.chores.work_out import chores_between
from quailsched.edits.batches import shift
from quailsched.edits.change import apply
from quailsched.farm.example import example_farm
from quailsched.farm.records import Batch, Farm, Leaving, Origin, Part, Person, Role, Span
from quailsched.season.season import Season
from tests.builders import ARK, BROODER, CABINET, HATCHER, MONDAY, PEN, RUN, SETTER, bought, eggs, farm, stay
from tests.strategies import farms

TODAY = date(2027, 4, 6)
ANN, LEO = Person("ann", "Ann"), Person("leo", "Leo", is_grown_up=False)


def on(day: int) -> date:
    return MONDAY + timedelta(days=day)


def whole_life() -> Batch:
    return eggs(
        "Aster", 60, stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, 46), stay(RUN, 46, 59),
        stay(RUN, 59, None, Part.HENS), stay(ARK, 59, 73, Part.COCKS, Leaving.PROCESSED),
    )  # fmt: skip


def chores_of(one: Farm) -> tuple[Chore, ...]:
    return chores_between(Season(one), date(2026, 1, 1), date(2029, 1, 1))


def days_of(chores: tuple[Chore, ...], kind: str) -> list[int]:
    return [(chore.day - MONDAY).days for chore in chores if chore.kind == kind]


@pytest.fixture(scope="module")
def life() -> tuple[Chore, ...]:
    return chores_of(farm(whole_life(), replace(BROODER, clean_out_days=3), ANN, LEO, plain=False))


@pytest.mark.parametrize(
    ("kind", "days"),
    [
        # Figures of Coturnix: candling on days 7 and 14, lockdown 15, hatch 17 (watch from 16), dry on 18.
        ("set", [0]),
        ("turn", list(range(1, 15))),
        ("candle", [7, 14]),
        ("lockdown", [15]),
        ("watch", [16]),
        ("hatch", [17]),
        ("to brooder", [18]),
        # Heat falls at 7, 14 and 21 days of age and goes off at 25; pebbles out at 14 days.
        ("heat", [24, 31, 38]),
        ("heat off", [42]),
        ("pebbles", [31]),
        # Sexed at 21 days; out on day 46, hardened off for 7 days before; the old drinker for 5 days after.
        ("sex", [38]),
        ("harden", [39]),
        ("move out", [46]),
        ("old drinker", [51]),
        ("cocks out", [59]),
        ("process", [73]),
        # First eggs at 43 days of age = day 60, long days from 18 days before.
        ("light", [42]),
        ("first eggs", [60]),
        ("clean-out", [46]),
        # The ark moves each day that cocks are on it, from the day after they come to their last.
        ("grass", list(range(60, 73))),
    ],
)
def test_each_chore_has_its_day(life: tuple[Chore, ...], kind: str, days: list[int]) -> None:
    assert days_of(life, kind) == days


def test_bedding_weekly_on_chicks_and_every_six_weeks_in_a_pen(life: tuple[Chore, ...]) -> None:
    brooder = [(c.day - MONDAY).days for c in life if c.kind == "bedding" and c.place == "Brooder"]
    assert brooder == [25, 32, 39]  # every 7 days from day 18, before day 46
    run = [(c.day - MONDAY).days for c in life if c.kind == "bedding" and c.place == "Run"]
    assert run[:2] == [46 + 45, 46 + 90]  # figure bedding_pen_days: 45


def test_eggs_are_collected_each_day_from_the_first(life: tuple[Chore, ...]) -> None:
    collected = days_of(life, "collect")
    assert collected == list(range(60, 270))  # until they are replaced: 17 + 43 + 210


def test_shipped_eggs_rest_the_day_before() -> None:
    chores = chores_of(farm(replace(whole_life(), origin=Origin.SHIPPED_EGGS)))
    assert days_of(chores, "rest") == [-1]


def test_a_machine_that_turns_by_itself_leaves_nothing_to_turn() -> None:
    chores = chores_of(farm(whole_life(), replace(SETTER, turns_itself=True)))
    assert days_of(chores, "turn") == []


def test_bought_birds_are_kept_apart_for_thirty_days() -> None:
    chores = chores_of(farm(bought("Hazel", 30, 60, stay(PEN, 0, 90, leaving=Leaving.SOLD))))
    assert days_of(chores, "arrive") == [0]
    assert days_of(chores, "quarantine") == [30]
    assert days_of(chores, "sold") == [90]
    assert not days_of(chores, "set")


def test_people_who_are_away_or_too_young_are_not_named() -> None:
    away = replace(ANN, away=(Span(on(73), on(74), "market"),))
    chores = chores_of(farm(whole_life(), away, LEO))
    process = next(c for c in chores if c.kind == "process")
    assert process.able == ()  # Ann is away on day 73, Leo is a minor
    assert next(c for c in chores if c.kind == "old drinker").able == ("Ann", "Leo")
    assert next(c for c in chores_of(farm(whole_life(), ANN, LEO)) if c.kind == "process").able == ("Ann",)


@pytest.mark.parametrize(
    ("kind", "words"),
    [
        ("to brooder", "fire"),
        ("heat", "fire"),
        ("set", "Salmonella"),
        ("bedding", "lungs"),
        ("process", "local rules"),
        ("first eggs", "local authority"),
    ],
)
def test_what_can_hurt_somebody_carries_its_caution(life: tuple[Chore, ...], kind: str, words: str) -> None:
    assert all(words in chore.caution for chore in life if chore.kind == kind)


def test_every_chore_says_how_and_where(life: tuple[Chore, ...]) -> None:
    assert all(chore.title and chore.how.endswith(".") and chore.place for chore in life)


def ids() -> Callable[[], str]:
    numbers = count(1)
    return lambda: str(UUID(int=next(numbers)))


@given(farms(most_batches=4))
def test_keys_are_unique_and_lie_in_the_days_asked_for(one: Farm) -> None:
    chores = chores_between(Season(one), date(2027, 1, 1), date(2027, 12, 31))
    assert len({chore.key for chore in chores}) == len(chores)
    assert all(date(2027, 1, 1) <= chore.day < date(2027, 12, 31) for chore in chores)
    assert list(chores) == sorted(chores, key=lambda chore: chore.day)


def test_keys_survive_a_move_and_new_names() -> None:
    before = farm(whole_life(), ANN)
    moved = apply(before, shift(before, "aster", 9))
    renamed = before.with_records(set(), (replace(before.batch("aster"), name="Zinnia"),))
    old, late, other = (chores_of(one) for one in (before, moved, renamed))
    assert {c.key for c in old} == {c.key for c in late} == {c.key for c in other}
    by_key = {chore.key: chore for chore in old}
    assert all(chore.day - by_key[chore.key].day == timedelta(days=9) for chore in late)
    assert all(chore.day == by_key[chore.key].day for chore in other)


def test_asking_for_fewer_days_gives_a_part_of_the_same() -> None:
    season = Season(example_farm(TODAY, ids()))
    long = chores_between(season, TODAY, TODAY + timedelta(days=90))
    short = chores_between(season, TODAY + timedelta(days=20), TODAY + timedelta(days=40))
    assert short == tuple(c for c in long if TODAY + timedelta(days=20) <= c.day < TODAY + timedelta(days=40))


def test_a_day_goes_from_eggs_to_chicks_to_grown_birds() -> None:
    season = Season(example_farm(TODAY, ids()))
    order = {Role.SETTER: 0, Role.HATCHER: 1, Role.CABINET: 2, Role.BROODER: 3, Role.PEN: 4, Role.GRASS_PEN: 4}
    roles = {place.id: order[place.role] for place in season.farm.places}
    chores = chores_between(season, TODAY, TODAY + timedelta(days=120))
    for day in {chore.day for chore in chores}:
        walk = [roles[c.place_id] for c in chores if c.day == day and c.place_id]
        assert walk == sorted(walk)


def test_a_cabinet_is_turned_by_hand_until_lockdown() -> None:
    one = farm(eggs("Aster", 30, stay(CABINET, 0, 18), stay(BROODER, 18, 46, leaving=Leaving.SOLD)))
    assert days_of(chores_of(one), "turn") == list(range(1, 15))
