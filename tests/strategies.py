"""Random sound farms for property tests."""

from __future__ import annotations

from datetime import date, timedelta

from hypothesis import strategies as st

from quailsched.farm.check import require_sound
from quailsched.farm.records import (
    Batch,
    Farm,
    FigureChoice,
    Leaving,
    Origin,
    Part,
    Person,
    Place,
    Role,
    Settings,
    Span,
    Stay,
    Units,
)

DAYS = st.dates(date(2026, 1, 1), date(2029, 12, 31))
_WORDS = st.text(st.characters(codec="utf-8", exclude_categories=["Cs", "Cc"]), max_size=12)


@st.composite
def spans(draw: st.DrawFn) -> tuple[Span, ...]:
    found = []
    for _ in range(draw(st.integers(0, 2))):
        start = draw(DAYS)
        found.append(Span(start, start + timedelta(days=draw(st.integers(1, 40))), draw(_WORDS)))
    return tuple(found)


@st.composite
def places(draw: st.DrawFn) -> tuple[Place, ...]:
    """At least one place for eggs, one brooder and one pen."""
    roles = [draw(st.sampled_from([Role.SETTER, Role.CABINET])), Role.BROODER, Role.PEN]
    roles += draw(st.lists(st.sampled_from(list(Role)), max_size=4))
    return tuple(
        Place(
            id=f"place {number}",
            name=f"{role} {number}",
            role=role,
            position=draw(st.integers(0, 9)),
            egg_places=draw(st.integers(1, 400)) if role.holds_eggs else 0,
            floor_cm2=0 if role.holds_eggs else draw(st.integers(100, 90_000)),
            clean_out_days=draw(st.integers(0, 14)),
            outdoors=draw(st.booleans()) and role.is_pen,
            turns_itself=draw(st.booleans()) and role.holds_eggs,
            ready_on=draw(st.none() | DAYS),
            shut=draw(spans()),
            note=draw(_WORDS),
        )
        for number, role in enumerate(roles)
    )


@st.composite
def _chain(draw: st.DrawFn, homes: list[str], start: int, part: Part, is_last: bool) -> list[Stay]:
    """Stays that follow each other from ``start``; the last is open or ends only if ``is_last``."""
    stays: list[Stay] = []
    for _ in range(draw(st.integers(1, 3))):
        end = start + draw(st.integers(1, 45))
        stays.append(Stay(draw(st.sampled_from(homes)), start, end, part))
        start = end
    if is_last:
        last = stays.pop()
        ends = draw(st.booleans())
        leaving = draw(st.none() | st.sampled_from(Leaving)) if ends else None
        stays.append(Stay(last.place_id, last.from_day, last.to_day if ends else None, part, leaving))
    return stays


@st.composite
def batches(draw: st.DrawFn, farm_places: tuple[Place, ...], number: int) -> Batch:
    origin = draw(st.sampled_from(Origin))
    egg_homes = [place.id for place in farm_places if place.role.holds_eggs]
    homes = [place.id for place in farm_places if not place.role.holds_eggs]
    first = Stay(draw(st.sampled_from(egg_homes if origin.is_eggs else homes)), 0, draw(st.integers(1, 20)))
    assert first.to_day is not None
    splits = draw(st.booleans())
    stays = [first, *draw(_chain(homes + egg_homes, first.to_day, Part.ALL, not splits))]
    if splits:
        split_day = stays[-1].to_day
        assert split_day is not None
        parts = draw(st.sampled_from([(Part.HENS,), (Part.COCKS,), (Part.HENS, Part.COCKS)]))
        for part in parts:
            stays += draw(_chain(homes, split_day, part, True))
    return Batch(
        id=f"batch {number}",
        name=f"Batch {number}",
        kind=draw(st.sampled_from(["coturnix", "coturnix-heavy", "bobwhite", "button"])),
        origin=origin,
        start=draw(DAYS),
        number=draw(st.integers(1, 500)),
        stays=tuple(stays),
        age_days=0 if origin.is_eggs else draw(st.integers(0, 200)),
        egg_age_days=draw(st.integers(0, 20)) if origin.is_eggs else 0,
        note=draw(_WORDS),
    )


@st.composite
def farms(draw: st.DrawFn, most_batches: int = 6) -> Farm:
    """A farm that ``farm.check`` finds sound."""
    made = draw(places())
    lows = st.tuples(*[st.floats(-30, 30).map(lambda low: round(low, 1))] * 12)
    choices = []
    if draw(st.booleans()):
        choices.append(FigureChoice("choice", "coturnix", "hatch_of_set_pct", draw(st.integers(1, 100)) * 1.0))
    return require_sound(
        Farm(
            Settings(
                id="0b0e8f5c-58f1-4f0d-9a3e-6f3f0f6a2f11",
                name=draw(st.sampled_from(["Thistle Yard", "Äckerchen", "鶉舎"])),
                units=draw(st.sampled_from(Units)),
                night_lows_c=draw(st.just(()) | lows),
                latitude=draw(st.none() | st.integers(-90, 90).map(float)),
                note=draw(_WORDS),
            ),
            made,
            tuple(
                Person(f"person {n}", f"Person {n}", draw(st.booleans()), draw(spans()), draw(_WORDS))
                for n in range(draw(st.integers(0, 3)))
            ),
            tuple(draw(batches(made, n)) for n in range(draw(st.integers(0, most_batches)))),
            tuple(choices),
        )
    )
