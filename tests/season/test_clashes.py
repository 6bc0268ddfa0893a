"""Every kind of clash with an answer derived by hand, and its near miss. Batches are set on Monday 1 March 2027."""

from dataclasses import replace

from quailsched.farm.records import FigureChoice, Leaving, Part, Place, Role, Settings, Span
from tests.builders import (
    ARK,
    BROODER,
    CABINET,
    HATCHER,
    OUT,
    PEN,
    PLAIN_FIGURES,
    RUN,
    SETTER,
    bought,
    clashes,
    eggs,
    hatch_route,
    on,
    only,
    resized,
    stay,
    without,
)


def test_eggs_one_more_than_there_are_places() -> None:
    # 60 + 41 eggs in 100 places from the day that the second batch is set (day 7) to the last day of the
    # first (day 14): 1 too many.
    found = clashes(
        eggs("Aster", 60, *hatch_route()),
        eggs("Bracken", 41, *hatch_route(), start=on(7)),
    )
    clash = only(found, "eggs")
    assert (clash.first, clash.last, clash.worst) == (on(7), on(14), on(7))
    assert (clash.need, clash.have, clash.unit, clash.birds_over) == (101, 100, "eggs", 0)
    assert clash.batch_ids == ("aster", "bracken")
    assert clash.sentence == ("Aster and Bracken need 101 egg places by 8 Mar, Setter has 100: 1 egg too many.")


def test_eggs_that_just_fit_are_no_clash() -> None:
    found = clashes(eggs("Aster", 60, *hatch_route()), eggs("Bracken", 40, *hatch_route(), start=on(7)))
    assert "eggs" not in [clash.kind for clash in found]


def test_eggs_that_swap_on_one_day_are_no_clash() -> None:
    # Out on day 15, in on day 15: half-open days do not overlap.
    found = clashes(eggs("Aster", 100, *hatch_route()), eggs("Bracken", 100, *hatch_route(), start=on(15)))
    assert "eggs" not in [clash.kind for clash in found]


def test_turning_and_lockdown_in_one_cabinet() -> None:
    # Aster is in lockdown from day 15 to its last day there, 17. Bracken, set on day 10, turns all the while.
    # The fewer of the two, 30 eggs, are those to move.
    route = (stay(CABINET, 0, 18), stay(BROODER, 18, 46, leaving=OUT))
    found = clashes(eggs("Aster", 30, *route), eggs("Bracken", 40, *route, start=on(10)))
    clash = only(found, "cabinet")
    assert (clash.first, clash.last) == (on(15), on(17))
    assert (clash.need, clash.have, clash.unit) == (30, 0, "eggs")
    assert clash.sentence == (
        "Cabinet cannot do both: the eggs of Bracken need turning while those of Aster must lie still in damper air."
    )


def test_an_own_lockdown_day_moves_the_cabinet_clash() -> None:
    route = (stay(CABINET, 0, 18), stay(BROODER, 18, 46, leaving=OUT))
    own = FigureChoice("own", "coturnix", "lockdown_day", 14)
    found = clashes(eggs("Aster", 30, *route), eggs("Bracken", 40, *route, start=on(10)), own)
    assert only(found, "cabinet").first == on(14)


def test_two_batches_in_lockdown_together_are_no_clash() -> None:
    route = (stay(CABINET, 0, 18), stay(BROODER, 18, 46, leaving=OUT))
    found = clashes(eggs("Aster", 30, *route), eggs("Bracken", 40, *route))
    assert "cabinet" not in [clash.kind for clash in found]


def test_lockdown_in_a_setter_and_turning_in_a_hatcher() -> None:
    late = clashes(eggs("Aster", 30, stay(SETTER, 0, 18), stay(BROODER, 18, 46, leaving=OUT)))
    assert (only(late, "cabinet").first, only(late, "cabinet").last) == (on(15), on(17))
    early = clashes(eggs("Aster", 30, stay(HATCHER, 0, 18), stay(BROODER, 18, 46, leaving=OUT)))
    assert (only(early, "cabinet").first, only(early, "cabinet").last) == (on(0), on(14))


def test_floor_for_one_bird_too_many() -> None:
    # Plain birds take 200 cm2: 100 of them take all of 20,000 cm2, 101 take 200 more on every day of the stay.
    fits = clashes(eggs("Aster", 100, *hatch_route()), resized(SETTER, 200), resized(HATCHER, 200))
    assert without(fits) == []
    found = clashes(eggs("Aster", 101, *hatch_route()), resized(SETTER, 200), resized(HATCHER, 200))
    clash = only(found, "floor")
    assert (clash.first, clash.last, clash.worst) == (on(18), on(45), on(18))
    assert (clash.need, clash.have, clash.unit, clash.birds_over) == (20_200, 20_000, "cm2", 1)
    assert clash.sentence == "101 birds of Aster need 2.02 m² by 19 Mar, Brooder has 2.00 m²: about 1 bird too many."


def test_floor_grows_with_age_and_is_worst_at_the_end() -> None:
    # Floor rises from 100 cm2 on the day of hatch to 300 at 40 days: 5 cm2 a day. 100 birds in 20,000 cm2 are
    # over from the day after age 20 (200 cm2), age 21 = day 38, to the last day in, 45 = age 28: 240 cm2.
    figures = (*PLAIN_FIGURES[:2], FigureChoice("own", "coturnix", "floor_cm2", None, ((0.0, 100.0), (40.0, 300.0))))
    found = clashes(eggs("Aster", 100, *hatch_route()), *figures, plain=False)
    clash = only(found, "floor")
    assert (clash.first, clash.last, clash.worst) == (on(38), on(45), on(45))
    assert clash.need == 24_000
    assert clash.birds_over == 17  # 4,000 / 240 = 16.7


def test_two_batches_share_a_floor_only_on_the_days_that_both_are_there() -> None:
    # 60 and 60 birds of 200 cm2 take 24,000. The second comes on its day 18 = day 30; the first leaves on day 46.
    found = clashes(eggs("Aster", 60, *hatch_route()), eggs("Bracken", 60, *hatch_route(), start=on(12)))
    clash = only(found, "floor")
    assert (clash.first, clash.last) == (on(30), on(45))
    assert clash.birds_over == 20


def test_no_clean_out_between_two_batches() -> None:
    # Aster leaves the brooder on day 46; three days of clean-out end before day 49. Bracken is due on its day
    # 18; set on day 29 that is day 47, one day after: days 47 and 48 are missing.
    tidy = replace(BROODER, clean_out_days=3)
    found = clashes(tidy, eggs("Aster", 50, *hatch_route()), eggs("Bracken", 50, *hatch_route(), start=on(29)))
    clash = only(found, "cleanout")
    assert (clash.first, clash.last, clash.need, clash.have, clash.unit) == (on(47), on(48), 3, 1, "days")
    assert clash.batch_ids == ("aster", "bracken")
    assert clash.sentence == (
        "Brooder needs 3 days of clean-out after Aster leaves on 16 Apr, but Bracken comes in on 17 Apr, after 1 day."
    )
    on_time = clashes(tidy, eggs("Aster", 50, *hatch_route()), eggs("Bracken", 50, *hatch_route(), start=on(31)))
    assert "cleanout" not in [clash.kind for clash in on_time]


def test_a_swap_on_the_same_day_leaves_no_clean_out() -> None:
    tidy = replace(BROODER, clean_out_days=3)
    found = clashes(tidy, eggs("Aster", 50, *hatch_route()), eggs("Bracken", 50, *hatch_route(), start=on(28)))
    clash = only(found, "cleanout")
    assert (clash.first, clash.last, clash.have) == (on(46), on(48), 0)
    assert clash.sentence.endswith("but Bracken comes in on 16 Apr, the same day.")


def test_a_batch_that_stays_on_as_a_laying_group_is_no_clean_out() -> None:
    tidy = replace(PEN, clean_out_days=7)
    found = clashes(
        tidy,
        eggs(
            "Aster", 90, *hatch_route()[:2], stay(BROODER, 18, 46), stay(PEN, 46, 59),
            stay(PEN, 59, 80, Part.HENS, OUT), stay(ARK, 59, 70, Part.COCKS, Leaving.PROCESSED),
        ),
    )  # fmt: skip
    assert "cleanout" not in [clash.kind for clash in found]


def test_a_pen_that_is_not_finished() -> None:
    # In the pen from day 46, ready on day 50: four days, 46 to 49.
    built = replace(PEN, ready_on=on(50))
    route = (*hatch_route()[:2], stay(BROODER, 18, 46), stay(PEN, 46, 90, leaving=OUT))
    clash = only(clashes(built, eggs("Aster", 50, *route)), "notready")
    assert (clash.first, clash.last, clash.need, clash.birds_over) == (on(46), on(49), 50, 50)
    assert clash.sentence == (
        "Aster (50 birds) is due in Pen on 16 Apr, but it cannot be used: being built, ready on 20 Apr."
    )
    in_time = clashes(replace(PEN, ready_on=on(46)), eggs("Aster", 50, *route))
    assert "notready" not in [clash.kind for clash in in_time]


def test_a_place_out_of_use_for_some_days() -> None:
    shut = replace(BROODER, shut=(Span(on(40), on(43), "new lamp"),))
    clash = only(clashes(shut, eggs("Aster", 50, *hatch_route())), "notready")
    assert (clash.first, clash.last) == (on(40), on(42))
    assert clash.sentence.endswith("but it cannot be used: new lamp, until 12 Apr.")  # day 42, inclusive


def test_out_before_they_are_feathered() -> None:
    # Feathered and off heat at 25 days (figures feathered_day, heat_off_day) = day 42. In the pen from day 38,
    # at 21 days of age: four days too young.
    route = (*hatch_route()[:2], stay(BROODER, 18, 38), stay(PEN, 38, 90, leaving=OUT))
    clash = only(clashes(eggs("Aster", 50, *route)), "young")
    assert (clash.first, clash.last, clash.need, clash.have, clash.unit) == (on(38), on(41), 25, 21, "days")
    assert clash.birds_over == 50
    old_enough = (*hatch_route()[:2], stay(BROODER, 18, 42), stay(PEN, 42, 90, leaving=OUT))
    assert "young" not in [clash.kind for clash in clashes(eggs("Aster", 50, *old_enough))]


def test_nights_too_cold_until_they_are_hardened() -> None:
    # 8 °C all year, at least 10 (figure out_min_night_c) until 42 days of age (hardened_day) = day 59.
    chilly = Settings("farm", "Thistle Yard", night_lows_c=(8.0,) * 12)
    route = (*hatch_route()[:2], stay(BROODER, 18, 46), stay(RUN, 46, 90, leaving=OUT))
    clash = only(clashes(eggs("Aster", 50, *route), settings=chilly), "cold")
    assert (clash.first, clash.last, clash.need, clash.have, clash.unit) == (on(46), on(58), 10, 8, "degC")
    mild = replace(chilly, night_lows_c=(10.0,) * 12)
    assert "cold" not in [clash.kind for clash in clashes(eggs("Aster", 50, *route), settings=mild)]
    indoors = (*hatch_route()[:2], stay(BROODER, 18, 46), stay(PEN, 46, 90, leaving=OUT))
    assert "cold" not in [clash.kind for clash in clashes(eggs("Aster", 50, *indoors), settings=chilly)]


def test_nights_warm_up_from_the_middle_of_one_month_to_the_next() -> None:
    # 4 °C on 15 April, 16 on 15 May: 0.4 a day, 10 °C on 30 April = day 60. Out on day 46 = 16 April at 4.4 °C;
    # hardened on day 59, so the last cold night is day 58 = 28 April, 9.2 °C.
    lows = Settings("farm", "Thistle Yard", night_lows_c=(4.0,) * 4 + (16.0,) * 8)
    route = (*hatch_route()[:2], stay(BROODER, 18, 46), stay(RUN, 46, 90, leaving=OUT))
    clash = only(clashes(eggs("Aster", 50, *route), settings=lows), "cold")
    assert (clash.first, clash.last, clash.worst, clash.have) == (on(46), on(58), on(46), 4.4)


def test_a_night_hardly_too_cold_is_not_shown_as_the_limit() -> None:
    # 9.97 °C is below 10; to a tenth it would read "10.0, at least 10".
    nearly = Settings("farm", "Thistle Yard", night_lows_c=(9.97,) * 12)
    route = (*hatch_route()[:2], stay(BROODER, 18, 46), stay(RUN, 46, 90, leaving=OUT))
    clash = only(clashes(eggs("Aster", 50, *route), settings=nearly), "cold")
    assert (clash.need, clash.have) == (10, 9.9)
    assert clash.sentence == (
        "50 birds of Aster would be out in Run at 29 days old, in nights down to 9.9 °C; below 10.0 °C is too cold "
        "before day 42."
    )


def test_too_few_birds_for_the_pen() -> None:
    # 60,000 cm2 at 2,787 cm2 a bird at most (figure calm_area_cm2): 21.5, so 22 birds are needed.
    route = (*hatch_route()[:2], stay(BROODER, 18, 46), stay(PEN, 46, 90, leaving=OUT))
    clash = only(clashes(eggs("Aster", 21, *route)), "calm")
    assert (clash.first, clash.last, clash.need, clash.have, clash.unit) == (on(46), on(89), 22, 21, "birds")
    assert without(clashes(eggs("Aster", 22, *route)), "cocks") == []


def test_one_bird_is_told_of_as_one() -> None:
    # One bird in 60,000 cm2 is alone; in 100 cm2 it has half of the 200 that a plain bird takes.
    alone = only(clashes(bought("Hazel", 1, 40, stay(PEN, 0, 20, leaving=OUT))), "calm")
    assert alone.sentence.startswith("1 bird of Hazel is too few to be calm in the 6.00 m² of Pen; ")
    tight = resized(PEN, 100)
    found = only(clashes(tight, bought("Hazel", 1, 40, stay(tight, 0, 20, leaving=OUT))), "floor")
    assert found.sentence.startswith("1 bird of Hazel needs 200 cm² by ")


def test_two_groups_are_calm_together_that_are_not_alone() -> None:
    route = (*hatch_route()[:2], stay(BROODER, 18, 46), stay(PEN, 46, 90, leaving=OUT))
    found = clashes(eggs("Aster", 12, *route), eggs("Bracken", 12, *route))
    assert without(found, "cocks") == []


def test_chicks_that_hatch_without_a_brooder() -> None:
    # Hatch on day 17; 48 hours are the most (hatcher_hold_days, high 2), so from day 20 they may not be there.
    found = clashes(eggs("Aster", 30, stay(SETTER, 0, 15), stay(HATCHER, 15, 25, leaving=OUT)))
    clash = only(found, "nowhere")
    assert (clash.first, clash.last, clash.need, clash.have, clash.unit) == (on(20), on(24), 30, 0, "birds")
    assert "have no brooder" in clash.sentence


def test_birds_that_leave_for_nowhere() -> None:
    found = clashes(eggs("Aster", 30, stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, 46)))
    clash = only(found, "nowhere")
    # Until they would be replaced: hatch 17 + first egg 43 + 210 days of lay = day 270.
    assert (clash.first, clash.last, clash.birds_over) == (on(46), on(270), 30)
    assert clash.sentence == "30 birds of Aster leave Brooder on 16 Apr and have no place to go to."


def test_surplus_cocks_without_a_place() -> None:
    # 30 birds: 15 cocks and 15 hens; one cock for three hens is kept: 5. Ten are surplus.
    found = clashes(
        eggs(
            "Aster", 30, stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, 46),
            stay(BROODER, 46, 90, Part.HENS, OUT),
        ),
    )  # fmt: skip
    clash = only(found, "nowhere")
    assert (clash.first, clash.birds_over) == (on(46), 10)
    assert clash.sentence == "10 surplus cocks of Aster leave Brooder on 16 Apr and have no place to go to."


def test_eggs_that_leave_the_machine_too_soon() -> None:
    on_floor = clashes(eggs("Aster", 30, stay(SETTER, 0, 15), stay(BROODER, 15, 46, leaving=OUT)))
    clash = only(on_floor, "nowhere")
    # Hatched on day 17 and dry on day 18 (hatcher_hold_days 1): out on day 15 is three days too soon.
    assert (clash.first, clash.last, clash.need, clash.unit) == (on(15), on(17), 30, "eggs")
    gone = only(clashes(eggs("Aster", 30, stay(SETTER, 0, 15))), "nowhere")
    assert (gone.first, gone.unit, gone.birds_over) == (on(15), "eggs", 0)


def test_bought_birds_count_from_the_age_at_which_they_came() -> None:
    # 30 birds of 20 days: feathered at 25, five days after they came.
    clash = only(clashes(bought("Hazel", 30, 20, stay(PEN, 0, 60, leaving=OUT))), "young")
    assert (clash.first, clash.last, clash.have) == (on(0), on(4), 20)


def test_a_good_plan_has_no_clash() -> None:
    found = clashes(
        replace(BROODER, clean_out_days=3),
        eggs(
            "Aster", 80, *hatch_route()[:2], stay(BROODER, 18, 46), stay(PEN, 46, 52),
            stay(PEN, 52, 120, Part.HENS, OUT), stay(ARK, 52, 59, Part.COCKS, Leaving.PROCESSED),
        ),
    )  # fmt: skip
    assert found == ()


def test_clashes_that_are_over_are_left_out() -> None:
    from quailsched.season.clashes import clashes_of
    from quailsched.season.season import Season
    from tests.builders import farm

    season = Season(farm(eggs("Aster", 101, *hatch_route()), resized(SETTER, 200), resized(HATCHER, 200)))
    assert len(clashes_of(season, on(45))) == 1
    assert clashes_of(season, on(46)) == ()


def test_places_of_other_roles_are_not_judged_by_rules_for_pens() -> None:
    roomy = Place("hall", "Hall", Role.BROODER, 9, floor_cm2=900_000)
    found = clashes(roomy, eggs("Aster", 5, *hatch_route()[:2], stay(roomy, 18, 46, leaving=OUT)))
    assert without(found) == []
