"""Birds that do not go together, old eggs, and nobody at home; derived by hand, with near misses."""

from dataclasses import replace

from quailsched.farm.records import Leaving, Part, Person, Record, Span
from tests.builders import (
    ARK,
    BROODER,
    HATCHER,
    OUT,
    PEN,
    SETTER,
    bought,
    clashes,
    eggs,
    hatch_route,
    on,
    only,
    resized,
    stay,
)


def kinds(*records: Record) -> list[str]:
    return [clash.kind for clash in clashes(*records)]


def test_two_ages_in_one_brooder() -> None:
    # Set 8 days apart, 7 is the most (figure age_gap_days). Together from Bracken's day 18 = day 26 to day 45.
    found = clashes(eggs("Aster", 30, *hatch_route()), eggs("Bracken", 30, *hatch_route(), start=on(8)))
    clash = only(found, "ages")
    assert (clash.first, clash.last, clash.need, clash.have, clash.unit) == (on(26), on(45), 8, 7, "days")
    assert clash.sentence == (
        "Aster (9 days old) and Bracken (1 day old) would share Brooder from 27 Mar: 8 days apart, 7 is the most. "
        "They need different heat, and small ones are trampled."
    )
    assert kinds(eggs("Aster", 30, *hatch_route()), eggs("Bracken", 30, *hatch_route(), start=on(7))) == []


def test_the_widest_gap_of_three_ages_is_told_with_its_own_day() -> None:
    # Bracken joins Aster on its day 18 = day 26, Clover on day 38: from then on 20 days lie between the oldest
    # and the youngest, until Aster leaves on day 46; Bracken and Clover are 12 apart until day 53.
    found = clashes(
        eggs("Aster", 20, *hatch_route()),
        eggs("Bracken", 20, *hatch_route(), start=on(8)),
        eggs("Clover", 20, *hatch_route(), start=on(20)),
    )
    clash = only(found, "ages")
    assert (clash.first, clash.last, clash.worst, clash.need) == (on(26), on(53), on(38), 20)
    assert clash.sentence.startswith(
        "Aster (21 days old) and Clover (1 day old) would share Brooder from 8 Apr: 20 days apart"
    )


def test_two_ages_in_a_pen_are_no_matter_of_that_rule() -> None:
    chain = (*hatch_route()[:2], stay(BROODER, 18, 46), stay(PEN, 46, 58, leaving=OUT))
    other = replace(BROODER, id="other", name="Other", position=9)
    second = (*hatch_route()[:2], stay(other, 18, 46), stay(PEN, 46, 58, leaving=OUT))
    assert "ages" not in kinds(other, eggs("Aster", 30, *chain), eggs("Bracken", 30, *second, start=on(10)))


def test_a_crowd() -> None:
    # 201 birds where 200 are the most (figure crowd_birds), though they have the floor: 1 too many.
    roomy = (resized(SETTER, 300), resized(HATCHER, 300), resized(BROODER, 90_000))
    clash = only(clashes(eggs("Aster", 201, *hatch_route()), *roomy), "crowd")
    assert (clash.first, clash.last, clash.need, clash.have, clash.birds_over) == (on(18), on(45), 201, 200, 1)
    assert "in a fright they pile up" in clash.sentence
    assert kinds(eggs("Aster", 200, *hatch_route()), *roomy) == []


def test_too_many_cocks_once_they_are_grown() -> None:
    # 60 birds: 30 hens, 30 cocks; one for three hens: 10 are enough. Grown at 42 days (cocks_mature_day) = day 59.
    chain = (*hatch_route()[:2], stay(BROODER, 18, 46), stay(PEN, 46, 70, leaving=OUT))
    clash = only(clashes(eggs("Aster", 60, *chain)), "cocks")
    assert (clash.first, clash.last, clash.need, clash.have, clash.birds_over) == (on(59), on(69), 30, 10, 20)
    early = (*hatch_route()[:2], stay(BROODER, 18, 46), stay(PEN, 46, 59, leaving=OUT))
    assert kinds(eggs("Aster", 60, *early)) == []


def test_cocks_that_were_parted_in_time_do_not_fight() -> None:
    parted = (
        *hatch_route()[:2], stay(BROODER, 18, 46), stay(PEN, 46, 52), stay(PEN, 52, 120, Part.HENS, OUT),
        stay(ARK, 52, 59, Part.COCKS, Leaving.PROCESSED),
    )  # fmt: skip
    assert kinds(eggs("Aster", 60, *parted)) == []


def test_bought_birds_among_others_before_thirty_days() -> None:
    # They come on day 50 and are with Aster, who is there from day 46: mixed on days 50 to 79, 0 of 30 days apart.
    chain = (*hatch_route()[:2], stay(BROODER, 18, 46), stay(PEN, 46, 59), stay(PEN, 59, 150, Part.HENS, OUT))
    cocks = stay(ARK, 59, 73, Part.COCKS, Leaving.PROCESSED)
    aster = eggs("Aster", 60, *chain, cocks)
    at_once = bought("Hazel", 20, 40, stay(PEN, 0, 1), stay(PEN, 1, 60, Part.HENS, OUT), start=on(50))
    clash = only(clashes(aster, at_once), "quarantine")
    assert (clash.first, clash.last, clash.need, clash.have) == (on(50), on(79), 30, 0)
    other = replace(ARK, id="hut", name="Hut", position=9)
    apart = bought(
        "Hazel",
        20,
        40,
        stay(other, 0, 1),
        stay(other, 1, 30, Part.HENS),
        stay(PEN, 30, 60, Part.HENS, OUT),
        start=on(50),
    )
    assert "quarantine" not in kinds(aster, apart, other)


def test_eggs_that_waited_too_long() -> None:
    # Seven days are the rule (figure egg_storage_days, Shim); 0.6 points of hatch are lost each day.
    clash = only(clashes(replace(eggs("Aster", 30, *hatch_route()), egg_age_days=9)), "stale")
    assert (clash.first, clash.last, clash.need, clash.have, clash.unit) == (on(0), on(0), 7, 9, "days")
    assert clash.sentence == (
        "The oldest eggs of Aster would be 9 days old when they are set on 1 Mar; 7 days is the rule, and each day "
        "costs about 0.6 chicks in 100 eggs."
    )
    assert kinds(replace(eggs("Aster", 30, *hatch_route()), egg_age_days=7)) == []


def test_nobody_home_on_the_day_of_hatch() -> None:
    # Hatch on day 17 = Thursday 18 March.
    ann = Person("ann", "Ann", away=(Span(on(17), on(18), "market"),))
    leo = Person("leo", "Leo", is_grown_up=False)
    clash = only(clashes(eggs("Aster", 30, *hatch_route()), ann), "hands")
    assert (clash.first, clash.last, clash.place_id) == (on(17), on(17), "hatcher")
    assert clash.sentence == "Aster hatches on Thursday 18 Mar, and nobody is at home."
    assert kinds(eggs("Aster", 30, *hatch_route()), ann, leo) == []
    assert kinds(eggs("Aster", 30, *hatch_route())) == []  # a farm that names nobody can miss nobody


def test_processing_takes_a_grown_up() -> None:
    chain = (*hatch_route()[:2], stay(BROODER, 18, 46, leaving=Leaving.PROCESSED))
    ann = Person("ann", "Ann", away=(Span(on(46), on(47)),))
    leo = Person("leo", "Leo", is_grown_up=False)
    clash = only(clashes(eggs("Aster", 30, *chain), ann, leo), "hands")
    assert clash.first == on(46)
    assert clash.sentence == "Aster is to be processed on Friday 16 Apr, and no grown-up is at home."


def test_surplus_cocks_that_stay_with_the_hens() -> None:
    # Parted on day 50, but into the same pen: grown from day 59 to day 72. 60 birds: 20 surplus cocks.
    parted = (
        *hatch_route()[:2], stay(BROODER, 18, 46), stay(PEN, 46, 50), stay(PEN, 50, 120, Part.HENS, OUT),
        stay(PEN, 50, 73, Part.COCKS, Leaving.PROCESSED),
    )  # fmt: skip
    clash = only(clashes(eggs("Aster", 60, *parted)), "cocks")
    assert (clash.first, clash.last, clash.birds_over) == (on(59), on(72), 20)
    in_time = (*parted[:-1], stay(PEN, 50, 59, Part.COCKS, Leaving.PROCESSED))
    assert kinds(eggs("Aster", 60, *in_time)) == []
