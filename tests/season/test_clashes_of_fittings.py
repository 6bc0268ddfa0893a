"""Heat sources, drinkers, feeders, lamps, birds past their day, and work left; derived by hand, with near misses."""

from dataclasses import replace
from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quailsched.farm.kinds import kind_in
from quailsched.farm.records import (
    Farm,
    FigureChoice,
    Leaving,
    Part,
    Person,
    Place,
    Record,
    Role,
    Settings,
    Span,
    Stay,
    Units,
)
from quailsched.husbandry.handbook import handbook
from quailsched.season.clash import Clash
from quailsched.season.clashes import clashes_of
from quailsched.season.route import fit_route
from quailsched.season.season import Season
from tests.builders import (
    ARK,
    BROODER,
    HATCHER,
    OUT,
    PEN,
    RUN,
    SETTER,
    bought,
    clashes,
    eggs,
    farm,
    hatch_route,
    on,
    only,
    resized,
    stay,
)
from tests.strategies import farms

ROOMY = (resized(SETTER, 300), resized(HATCHER, 300))
HALL = resized(BROODER, 90_000)


def kinds(*records: Record, settings: Settings | None = None) -> list[str]:
    found = clashes(*records, settings=settings) if settings else clashes(*records)
    return [clash.kind for clash in found]


def to_pen(end: int | None, pen: Place = PEN) -> tuple[Stay, ...]:
    """All birds to ``pen`` on day 46 and on to ``end``, sold there."""
    return (*hatch_route()[:2], stay(BROODER, 18, 46), stay(pen, 46, end, leaving=OUT))


def parted(hens_end: int | None, cocks_end: int | None) -> tuple[Stay, ...]:
    """Parted on day 50: the hens in the pen, the cocks on grass."""
    return (
        *hatch_route()[:2], stay(BROODER, 18, 46), stay(PEN, 46, 50),
        stay(PEN, 50, hens_end, Part.HENS, OUT if hens_end else None),
        stay(ARK, 50, cocks_end, Part.COCKS, Leaving.PROCESSED if cocks_end else None),
    )  # fmt: skip


def test_one_chick_more_than_a_lamp_warms() -> None:
    # 100 chicks to a lamp (figure heat_source_chicks). In the brooder from day 18; heat goes off at 25 days of age
    # (heat_off_day) = day 17 + 25 = 42, though they stay until day 46.
    warm = replace(HALL, heat_sources=1)
    clash = only(clashes(warm, *ROOMY, eggs("Aster", 101, *hatch_route())), "heat")
    assert (clash.first, clash.last, clash.worst) == (on(18), on(41), on(18))
    assert (clash.need, clash.have, clash.unit, clash.birds_over) == (101, 100, "chicks", 1)
    assert clash.sentence == (
        "101 chicks of Aster need heat by 19 Mar, and Brooder has 1 heat source for 100: 1 chick too many. "
        "Chilled chicks pile up and smother."
    )
    assert kinds(warm, *ROOMY, eggs("Aster", 100, *hatch_route())) == []


def test_a_brooder_without_any_heat_says_so() -> None:
    cool = replace(BROODER, heat_sources=0)
    clash = only(clashes(cool, eggs("Aster", 30, *hatch_route())), "heat")
    assert clash.sentence.startswith(
        "30 chicks of Aster need heat by 19 Mar, and Brooder has no heat source: 30 chicks"
    )
    assert "heat" not in kinds(cool, bought("Hazel", 30, 25, stay(BROODER, 0, 10, leaving=OUT)))


def test_only_chicks_on_heat_count() -> None:
    # Aster is off heat on day 42. Bracken, set on day 23, comes on day 41: 60 + 60 chicks on that one day.
    warm = replace(HALL, heat_sources=1)

    def with_second(start: int) -> tuple[Clash, ...]:
        second = eggs("Bracken", 60, *hatch_route(), start=on(start))
        return clashes(warm, *ROOMY, eggs("Aster", 60, *hatch_route()), second)

    clash = only(with_second(23), "heat")
    assert (clash.first, clash.last, clash.need) == (on(41), on(41), 120)
    assert "heat" not in [clash.kind for clash in with_second(24)]


def test_a_batch_past_its_heat_is_no_part_of_that_clash() -> None:
    warm = replace(HALL, heat_sources=1)
    found = clashes(warm, *ROOMY, eggs("Aster", 30, *hatch_route()), eggs("Bracken", 101, *hatch_route(), start=on(25)))
    assert only(found, "heat").batch_ids == ("bracken",)


def test_a_drinker_for_one_bird_too_many() -> None:
    # 0.3 cm a bird (figure drinker_cm): 30 cm for 100, 30.3 for 101, as long as they are there.
    wet = replace(HALL, drinker_cm=30)
    clash = only(clashes(wet, *ROOMY, eggs("Aster", 101, *hatch_route())), "water")
    assert (clash.first, clash.last, clash.need, clash.have) == (on(18), on(45), 30.3, 30)
    assert (clash.unit, clash.birds_over) == ("cm", 1)
    assert clash.sentence == (
        "101 birds of Aster need 30.3 cm of drinker space by 19 Mar, Brooder has 30.0 cm: about 1 bird too many, and "
        "the weaker ones go short."
    )
    assert kinds(wet, *ROOMY, eggs("Aster", 100, *hatch_route())) == []


def test_a_feeder_becomes_too_short_on_the_day_that_the_need_steps_up() -> None:
    # Half an inch to day 10, then an inch (curve feeder_edge_cm): 100 chicks want 127 cm, and 254 from 10 days of age
    # = day 27. 127 cm are short by 127, which is what 50 birds take.
    short = replace(BROODER, feeder_cm=127)
    clash = only(clashes(short, eggs("Aster", 100, *hatch_route())), "feeder")
    assert (clash.first, clash.last, clash.worst) == (on(27), on(45), on(27))
    assert (clash.need, clash.have, clash.birds_over) == (254, 127, 50)
    assert kinds(replace(BROODER, feeder_cm=254), eggs("Aster", 100, *hatch_route())) == []


def test_edges_are_told_in_the_keepers_units() -> None:
    feet = Settings("farm", "Thistle Yard", units=Units.US)
    found = clashes(replace(BROODER, feeder_cm=127), eggs("Aster", 100, *hatch_route()), settings=feet)
    assert "need 100 in of feeder space by 28 Mar, Brooder has 50 in" in only(found, "feeder").sentence


def test_a_farm_with_an_own_value_for_the_figure_that_has_gone_still_opens() -> None:
    own = FigureChoice("own", "coturnix", "feeder_cm", 9.0)
    assert kinds(replace(BROODER, feeder_cm=254), eggs("Aster", 100, *hatch_route()), own) == []


def test_surplus_cocks_kept_past_their_day() -> None:
    # 60 birds: 20 surplus cocks. 42 days (the high end of process_day) = day 59; they stay up to day 72, 56 days old.
    clash = only(clashes(eggs("Aster", 60, *parted(120, 73))), "overdue")
    assert (clash.place_id, clash.first, clash.last, clash.birds_over) == ("ark", on(59), on(72), 20)
    assert (clash.need, clash.have, clash.unit) == (42, 56, "days")
    assert clash.sentence == (
        "20 surplus cocks of Aster should be gone by 29 Apr, at 42 days old, but stay in Ark until 12 May: they eat, "
        "and hardly grow any more."
    )
    assert kinds(eggs("Aster", 60, *parted(120, 59))) == []


def test_an_own_day_of_processing_moves_the_day() -> None:
    own = FigureChoice("own", "coturnix", "process_day", 56)
    assert kinds(eggs("Aster", 60, *parted(120, 73)), own) == []
    assert "overdue" in kinds(eggs("Aster", 60, *parted(120, 74)), own)


def test_cocks_on_an_open_stay_would_stay_as_long_as_the_hens() -> None:
    # An open stay ends when the hens are replaced: 17 + 43 + 210 = day 270.
    clash = only(clashes(eggs("Aster", 60, *parted(120, None))), "overdue")
    assert (clash.first, clash.last) == (on(59), on(269))


def test_cocks_that_move_on_are_one_clash() -> None:
    hut = replace(ARK, id="hut", name="Hut", position=9)
    chain = (
        *parted(120, 59)[:-1], stay(ARK, 50, 65, Part.COCKS), stay(hut, 65, 73, Part.COCKS, Leaving.PROCESSED),
    )  # fmt: skip
    clash = only(clashes(hut, eggs("Aster", 60, *chain)), "overdue")
    assert (clash.place_id, clash.first, clash.last) == ("ark", on(59), on(72))


def test_hens_kept_past_the_end_of_their_lay() -> None:
    # First egg at 43 days, 210 days of lay: 253 days old = day 270; they stay up to day 299.
    clash = only(clashes(eggs("Aster", 90, *parted(300, 59))), "overdue")
    assert (clash.place_id, clash.first, clash.last) == ("pen", on(270), on(299))
    assert (clash.need, clash.have) == (253, 283)
    for end in (270, None):
        assert kinds(eggs("Aster", 90, *parted(end, 59))) == []


def test_birds_that_were_never_parted_are_no_matter_of_that_rule() -> None:
    assert "overdue" not in kinds(eggs("Aster", 60, *to_pen(300)))


@pytest.mark.parametrize("kind", list(handbook()))
def test_the_usual_route_keeps_nobody_too_long(kind: str) -> None:
    made = farm(SETTER, HATCHER, BROODER, PEN, ARK, plain=False)
    batch = fit_route(made, eggs("Aster", 60, kind=kind))
    assert {part.part for part in batch.stays} == set(Part)
    assert "overdue" not in [clash.kind for clash in clashes_of(Season(made.with_records(set(), (batch,))))]


ANN = Person("ann", "Ann", build_hours=7.0)  # an hour a day


def test_fewer_hours_than_the_work_wants() -> None:
    # 60 hours from day 0 on, an hour a day: 46 until Aster comes on day 46; done in 60 days, on day 60.
    built = replace(PEN, work_hours=60.0, work_from=on(0))
    clash = only(clashes(built, ANN, eggs("Aster", 50, *to_pen(58))), "build")
    assert (clash.place_id, clash.batch_ids) == ("pen", ("aster",))
    assert (clash.first, clash.last, clash.worst) == (on(46), on(57), on(46))  # Aster leaves before it is done
    assert (clash.need, clash.have, clash.unit, clash.birds_over) == (60, 46, "hours", 0)
    assert clash.sentence == (
        "Pen needs 60 hours of building, and people have 46 hours for it until Aster comes on 16 Apr: at that pace it "
        "is done by 30 Apr."
    )
    assert kinds(replace(built, work_hours=46.0), ANN, eggs("Aster", 50, *to_pen(58))) == []
    assert kinds(built, ANN) == []  # nobody is due


def test_it_is_over_when_the_work_is_done() -> None:
    built = replace(PEN, work_hours=50.0, work_from=on(0))
    clash = only(clashes(built, ANN, eggs("Aster", 50, *to_pen(58))), "build")
    assert (clash.first, clash.last) == (on(46), on(49))


def test_nobody_builds_on_days_away() -> None:
    # Away on days 10 to 19, told twice over: 36 hours are left of 46.
    away = (Span(on(10), on(18)), Span(on(12), on(20)))
    built = replace(PEN, work_hours=37.0, work_from=on(0))
    clash = only(clashes(built, replace(ANN, away=away), eggs("Aster", 50, *to_pen(58))), "build")
    assert (clash.have, clash.last) == (36, on(46))
    in_time = replace(built, work_hours=36.0)
    assert "build" not in kinds(in_time, replace(ANN, away=away), eggs("Aster", 50, *to_pen(58)))


def test_the_place_that_is_needed_first_takes_its_hours_first() -> None:
    # The pen wants 40 hours by day 46, the run 20 by day 50: 50 hours less 40 are 10; both done on day 60.
    pen = replace(PEN, work_hours=40.0, work_from=on(0))
    run = replace(RUN, work_hours=20.0, work_from=on(0))
    second = eggs("Bracken", 50, *to_pen(58, RUN), start=on(4))
    clash = only(clashes(HALL, pen, run, ANN, eggs("Aster", 50, *to_pen(58)), second), "build")
    assert (clash.place_id, clash.need, clash.have, clash.last) == ("run", 20, 10, on(59))
    alone = only(clashes(HALL, replace(pen, work_hours=0.0), replace(run, work_hours=51.0), ANN, second), "build")
    assert alone.have == 50


def test_hours_begin_on_the_day_on_which_the_work_was_counted() -> None:
    built = replace(PEN, work_hours=7.0, work_from=on(40))
    clash = only(clashes(built, ANN, eggs("Aster", 50, *to_pen(58))), "build")
    assert (clash.have, clash.last) == (6, on(46))


def test_nobody_has_hours_for_building() -> None:
    built = replace(PEN, work_hours=5.0, work_from=on(0))
    clash = only(clashes(built, replace(ANN, build_hours=0.0), eggs("Aster", 50, *to_pen(58))), "build")
    assert (clash.have, clash.first, clash.last) == (0, on(46), on(57))
    assert clash.sentence == (
        "Pen needs 5 hours of building, Aster comes on 16 Apr, and nobody has hours for building."
    )


def test_a_place_with_birds_in_it_already() -> None:
    built = replace(PEN, work_hours=5.0, work_from=on(50))
    clash = only(clashes(built, ANN, eggs("Aster", 50, *to_pen(58))), "build")
    assert (clash.first, clash.last, clash.have) == (on(50), on(54), 0)
    assert clash.sentence == (
        "Pen needs 5 hours of building, and on 20 Apr Aster is in it already: at that pace it is done by 25 Apr."
    )


def test_lamps_too_short_for_laying_birds() -> None:
    # 13 hours are the least (light_hours, low end; light.min). First egg at 43 days = day 60; until day 119.
    dim = replace(PEN, light_hours=12.9)
    clash = only(clashes(dim, eggs("Aster", 90, *parted(120, 59))), "dark")
    assert (clash.first, clash.last, clash.worst) == (on(60), on(119), on(60))
    assert (clash.need, clash.have, clash.unit) == (13, 12.9, "hours")
    # 90 birds: 45 hens and 15 cocks kept with them.
    assert clash.sentence == (
        "60 laying birds of Aster would have 12.9 hours of light of lamps in Pen on 30 Apr; with less than 13 hours "
        "they lay less, or stop. Without the farm's latitude daylight is not counted."
    )
    assert kinds(replace(PEN, light_hours=13.0), eggs("Aster", 90, *parted(120, 59))) == []
    assert kinds(PEN, eggs("Aster", 90, *parted(120, 59))) == []  # nothing is told


def test_young_birds_and_surplus_cocks_need_no_long_days() -> None:
    dim = replace(ARK, light_hours=1.0)
    assert kinds(dim, eggs("Aster", 60, *parted(120, 59))) == []
    assert kinds(replace(PEN, light_hours=1.0), eggs("Aster", 60, *to_pen(59))) == []  # out before the first egg


NORTH = Settings("farm", "Thistle Yard", latitude=51.0)


def test_autumn_days_are_too_short() -> None:
    # At 51 degrees 13 hours are left where tan(declination) = -cos(13 pi / 24) / tan(51) = 0.1305 / 1.2349: it is
    # 0.1053 = 0.409 sin(2 pi J / 365 - 1.39), falling, at J = 248.1. Day 249 of 2027 is 6 September; the hens are
    # replaced on day 270, so 25 November is the last and the darkest: J 329, declination
    # -0.3703, 24 / pi x acos(1.2349 x 0.3882) = 8.18 hours.
    clash = only(clashes(eggs("Aster", 90, *parted(None, 59)), settings=NORTH), "dark")
    assert (clash.first, clash.last, clash.worst) == (date(2027, 9, 6), date(2027, 11, 25), date(2027, 11, 25))
    assert (clash.need, clash.have) == (13, 8.2)
    lit = replace(PEN, light_hours=14.0)
    assert kinds(lit, eggs("Aster", 90, *parted(None, 59)), settings=NORTH) == []


def test_each_winter_is_a_clash_of_its_own() -> None:
    found = [c for c in clashes(eggs("Aster", 90, *parted(700, 59)), settings=NORTH) if c.kind == "dark"]
    assert [(c.first.year, c.worst.month) for c in found] == [(2027, 12), (2028, 12)]
    assert found[0].last + timedelta(days=100) < found[1].first


def test_an_own_length_of_day_holds_as_it_stands() -> None:
    own = FigureChoice("own", "coturnix", "light_hours", 16.0)
    lit = replace(PEN, light_hours=15.0)
    assert only(clashes(lit, own, eggs("Aster", 90, *parted(120, 59))), "dark").need == 16


def fitted(one: Farm, **told: float | None) -> Farm:
    """``one`` with these fittings in every brooder and pen."""
    floors = [place for place in one.places if not place.role.holds_eggs]
    changed = []
    for place in floors:
        own = {key: value for key, value in told.items() if key != "heat_sources" or place.role is Role.BROODER}
        changed.append(replace(place, **own))  # type: ignore[arg-type]
    return one.with_records(set(), tuple(changed))


def days_of(one: Farm, kind: str) -> set[tuple[str, date]]:
    """Each place with each day on which it has a clash of ``kind``."""
    found = [c for c in clashes_of(Season(one)) if c.kind == kind]
    return {
        (c.place_id, c.first + timedelta(days=n)) for c in found for n in range((c.last - c.first).days + 1)
    }  # fmt: skip


@given(farms(most_batches=4), st.sampled_from(["heat", "water", "feeder"]), st.integers(0, 4), st.integers(1, 300))
def test_more_fittings_never_make_a_clash_worse(one: Farm, kind: str, few: int, more: int) -> None:
    field = {"heat": "heat_sources", "water": "drinker_cm", "feeder": "feeder_cm"}[kind]
    before, after = fitted(one, **{field: few}), fitted(one, **{field: few + more})
    assert days_of(after, kind) <= days_of(before, kind)


@given(farms(most_batches=4))
def test_what_was_not_told_is_not_checked(one: Farm) -> None:
    silent = fitted(one, heat_sources=None, feeder_cm=None, drinker_cm=None)
    assert not {c.kind for c in clashes_of(Season(silent))} & {"heat", "water", "feeder"}


@given(farms(most_batches=4))
def test_lamps_for_the_hours_of_the_figure_leave_no_bird_in_the_dark(one: Farm) -> None:
    hours = max((kind_in(one, batch.kind).value("light_hours") for batch in one.batches), default=0.0)
    assert not days_of(fitted(one, light_hours=hours), "dark")


@given(farms(most_batches=4), st.floats(0, 40), st.floats(0, 40), st.data())
def test_more_hours_of_building_never_bring_a_clash(one: Farm, hours: float, more: float, data: st.DataObject) -> None:
    first = min((batch.start for batch in one.batches), default=on(0))
    works = st.tuples(st.floats(0, 200), st.integers(-30, 60))
    left = [(place, data.draw(works)) for place in one.places]
    built = [replace(p, work_hours=work, work_from=first + timedelta(days=day)) for p, (work, day) in left]

    def with_hours(a_week: float) -> set[str]:
        people = [replace(person, build_hours=a_week) for person in one.people]
        changed = one.with_records(set(), (*built, *people))
        return {clash.place_id for clash in clashes_of(Season(changed)) if clash.kind == "build"}

    assert with_hours(hours + more) <= with_hours(hours)
