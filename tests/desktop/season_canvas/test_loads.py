"""How many birds there are, day by day and column by column."""

from dataclasses import replace
from datetime import date, timedelta

from hypothesis import given
from hypothesis import strategies as st

from quailsched.desktop.season_canvas.loads import birds_on, columns, steps_after, steps_of
from quailsched.edits.batches import shift
from quailsched.edits.change import apply
from quailsched.farm.records import Farm, Role
from quailsched.season.season import Season
from tests.builders import BROODER, HATCHER, MONDAY, OUT, PEN, SETTER, bought, eggs, farm, on, stay

ASTER = eggs("Aster", 20, stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, 40, leaving=OUT))
DILL = bought("Dill", 12, 30, stay(PEN, 0, 50, leaving=OUT), start=on(25))
SEASON = Season(farm(ASTER, DILL))


def plainly(steps: object, first: date, days: int) -> list[int]:
    return [birds_on(steps, first.toordinal() + day) for day in range(days)]  # type: ignore[arg-type]


def test_eggs_are_no_birds_and_birds_of_two_batches_add_up() -> None:
    # Aster: 20 chicks hatch on day 17 and leave on day 40; Dill: 12 birds from day 25 to 75.
    steps, days = steps_of(SEASON), (0, 16, 17, 24, 25, 39, 40, 74, 75)
    assert SEASON.days(ASTER).hatch == 17
    assert [birds_on(steps, on(day).toordinal()) for day in days] == [0, 0, 20, 20, 32, 32, 12, 12, 0]


@given(days=st.integers(-40, 40), name=st.sampled_from(["aster", "dill"]))
def test_a_change_gives_the_steps_of_the_changed_season_and_the_days_that_differ(days: int, name: str) -> None:
    old = steps_of(SEASON)
    new = Season(apply(SEASON.farm, shift(SEASON.farm, name, days)) if days else SEASON.farm)
    after, span = steps_after(old, SEASON, new)
    first = MONDAY - timedelta(days=60)
    assert plainly(after, first, 260) == plainly(steps_of(new), first, 260)
    assert span is not None
    both = zip(plainly(old, first, 260), plainly(after, first, 260), strict=True)
    differ = [first.toordinal() + at for at, (was, now) in enumerate(both) if was != now]
    assert all(span[0] <= day < span[1] for day in differ)


def test_a_batch_that_comes_or_goes_is_a_change_too() -> None:
    alone = Season(farm(ASTER, PEN))
    both = Season(alone.farm.with_records(set(), (DILL,)))
    for old, new in ((alone, both), (both, alone)):
        after, span = steps_after(steps_of(old), old, new)
        assert plainly(after, MONDAY, 120) == plainly(steps_of(new), MONDAY, 120)
        assert span == (on(25).toordinal(), on(75).toordinal())


def test_other_roles_of_places_may_change_everything() -> None:
    other = replace(SEASON.farm, places=tuple(replace(p, role=Role.CABINET) if p.id == "setter" else p
                                              for p in SEASON.farm.places))  # fmt: skip
    assert steps_after(steps_of(SEASON), SEASON, Season(other))[1] is None


@given(day_px=st.floats(0.2, 4), left=st.integers(0, 60), wide=st.integers(1, 200))
def test_a_part_of_the_columns_is_that_part_of_all_of_them(day_px: float, left: int, wide: int) -> None:
    steps, first = steps_of(SEASON), MONDAY.toordinal() - 20
    whole = columns(steps, first, day_px, 0, left + wide)
    assert columns(steps, first, day_px, left, left + wide) == whole[left:]


def test_a_column_of_a_pixel_a_day_is_the_birds_of_that_day() -> None:
    steps = steps_of(SEASON)
    assert columns(steps, MONDAY.toordinal(), 1.0, 0, 100) == plainly(steps, MONDAY, 100)


def test_a_farm_without_batches_has_no_birds() -> None:
    nothing = Season(Farm(SEASON.farm.settings))
    assert steps_of(nothing) == {}
    assert columns({}, MONDAY.toordinal(), 1.0, 0, 3) == [0, 0, 0]
