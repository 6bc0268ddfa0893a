"""Cocks that are parted, birds that leave on their day, hens that are sold."""

from dataclasses import replace
from datetime import date, timedelta

from quailsched.edits.change import apply
from quailsched.edits.parting import leave_on, part_cocks
from quailsched.farm.records import FigureChoice, Leaving, Part, Stay
from quailsched.planner.ways_out import ways_out
from quailsched.season.clashes import clashes_of
from quailsched.season.season import Season
from tests.builders import BROODER, HATCHER, MONDAY, PEN, RUN, SETTER, bought, eggs, farm, only, stay
from tests.planner.judge import sentences

CHAIN = (stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, 46))
SMALL = replace(RUN, floor_cm2=8_000, outdoors=False)  # 20 cocks are calm in it


def on(day: int) -> date:
    return MONDAY + timedelta(days=day)


def test_cocks_are_parted_before_they_mature_and_gone_by_their_latest_day() -> None:
    # Hatch on day 17, mature with 42 days: day 59, 29 April, which is the latest day to process them, too (the high
    # end of process_day): parted the day before. Of 80 birds 40 are cocks; 40 hens keep 14 (one for 3), so 26 go.
    one = farm(eggs("Aster", 80, *CHAIN, stay(PEN, 46, None)), SMALL)
    found = sentences(one, "cocks", on(47))
    assert found[0] == (
        "Part Aster on 28 Apr: its 26 surplus cocks go to Run, until they are processed on 29 Apr; the hens stay."
    )
    (best, *_) = ways_out(one, only(clashes_of(Season(one), on(47)), "cocks"), on(47))
    assert apply(one, best.change).batch("aster").stays[3:] == (
        stay(PEN, 46, 58),
        stay(PEN, 58, None, Part.HENS),
        stay(RUN, 58, 59, Part.COCKS, Leaving.PROCESSED),
    )


def test_cocks_that_may_be_finished_for_longer_are_parted_when_they_mature() -> None:
    # Processed with 56 days on this farm, day 73, 13 May; mature on day 59, 29 April.
    later = FigureChoice("f9", "coturnix", "process_day", 56.0)
    found = sentences(farm(eggs("Aster", 80, *CHAIN, stay(PEN, 46, None)), SMALL, later), "cocks", on(47))
    assert found[0] == (
        "Part Aster on 29 Apr: its 26 surplus cocks go to Run, until they are processed on 13 May; the hens stay."
    )


def test_a_batch_that_comes_grown_is_parted_where_it_comes() -> None:
    one = farm(bought("Aster", 80, 50, stay(PEN, 0, None)), SMALL)
    change = part_cocks(one, "aster", 0, 0, "run", 5, Leaving.SOLD)
    assert apply(one, change).batch("aster").stays == (
        stay(PEN, 0, None, Part.HENS),
        stay(RUN, 0, 5, Part.COCKS, Leaving.SOLD),
    )


def test_a_parting_that_is_planned_too_late_is_brought_forward() -> None:
    late = (stay(PEN, 46, 80), stay(PEN, 80, None, Part.HENS), stay(RUN, 80, 90, Part.COCKS, Leaving.SOLD))
    one = farm(eggs("Aster", 80, *CHAIN, *late), SMALL)
    after = apply(one, part_cocks(one, "aster", 3, 59, "run", 60, Leaving.PROCESSED)).batch("aster")
    assert after.stays[3:] == (
        stay(PEN, 46, 59),
        stay(PEN, 59, 80, Part.HENS),
        stay(PEN, 80, None, Part.HENS),
        stay(RUN, 59, 80, Part.COCKS),
        stay(RUN, 80, 90, Part.COCKS, Leaving.SOLD),
    )


def _parted(cocks_until: int, hens_until: int | None = None) -> tuple[Stay, ...]:
    gone = None if hens_until is None else Leaving.SOLD
    return (
        *CHAIN,
        stay(PEN, 46, 56),
        stay(PEN, 56, hens_until, Part.HENS, gone),
        stay(RUN, 56, cocks_until, Part.COCKS, Leaving.PROCESSED),
    )


def test_cocks_leave_on_their_day_however_late_they_were_planned_to() -> None:
    # The latest day to process is 42 days (figure process_day), day 59: they were to stay until day 120.
    found = sentences(farm(eggs("Aster", 80, *_parted(120)), SMALL), "overdue", on(50))
    assert found[0] == "Process the 26 surplus cocks of Aster on 29 Apr, at 42 days old."


def test_birds_that_are_overdue_today_leave_today() -> None:
    found = sentences(farm(eggs("Aster", 80, *_parted(120)), SMALL), "overdue", on(80))
    assert found[0] == "Process the 26 surplus cocks of Aster on 20 May, at 63 days old."


def test_hens_past_their_lay_leave_on_their_day() -> None:
    one = farm(eggs("Aster", 80, *_parted(59, 900)), SMALL)
    clash = only(clashes_of(Season(one), on(60)), "overdue")
    (best, *_) = ways_out(one, clash, on(60))
    (hens,) = (s for s in apply(one, best.change).batch("aster").stays if s.part is Part.HENS)
    assert on(hens.to_day or 0) == clash.first


def test_cocks_that_would_be_parted_on_the_day_that_they_are_due_are_parted_a_day_sooner() -> None:
    chain = (
        *CHAIN,
        stay(PEN, 46, 59),
        stay(PEN, 59, None, Part.HENS),
        stay(RUN, 59, 73, Part.COCKS, Leaving.PROCESSED),
    )
    found = sentences(farm(eggs("Aster", 80, *chain), SMALL), "overdue", on(50))
    assert found[0] == "Part Aster on 28 Apr and process the 26 surplus cocks out of Run on 29 Apr."


def test_too_few_hens_can_be_sold() -> None:
    # Day 200 is today: what is past stays as it was.
    huge = replace(PEN, floor_cm2=900_000)
    one = farm(huge, eggs("Aster", 4, *CHAIN, stay(huge, 46, None)))
    assert sentences(one, "calm", on(200)) == ["Sell the 4 birds of Aster by 17 Sep, at 183 days old."]


def test_leaving_takes_away_what_would_follow() -> None:
    one = farm(eggs("Aster", 80, *_parted(70)), SMALL)
    assert apply(one, leave_on(one, "aster", Part.ALL, 40, Leaving.SOLD)).batch("aster").stays == (
        *CHAIN[:2],
        stay(BROODER, 18, 40, leaving=Leaving.SOLD),
    )
    hens = apply(one, leave_on(one, "aster", Part.HENS, 100, Leaving.SOLD)).batch("aster").stays
    assert hens[4] == stay(PEN, 56, 100, Part.HENS, Leaving.SOLD)
    assert hens[5] == _parted(70)[5]


def test_bought_birds_wait_for_the_end_of_quarantine_in_a_place_of_their_own() -> None:
    # Sold before its cocks mature (with 42 days, on its day 16).
    settled = eggs("Aster", 80, *CHAIN, stay(PEN, 46, 59, leaving=Leaving.SOLD), start=on(-46))
    one = farm(settled, bought("Bracken", 30, 26, stay(PEN, 0, 15, leaving=Leaving.SOLD)), SMALL)
    assert "Give Bracken Run instead of Pen; the days stay as they are." in sentences(one, "quarantine")


def test_birds_that_come_parted_already_have_ways_out_too() -> None:
    # 60 birds come with 40 days on day 30: 40 in Pen as the laying group, 20 surplus cocks in 3,000 cm2, room for 15.
    # They come from no stay on this farm, so that none can end sooner or later before them.
    tight = replace(RUN, floor_cm2=3_000, outdoors=False)
    groups = stay(PEN, 0, 40, Part.HENS, Leaving.SOLD), stay(tight, 0, 40, Part.COCKS, Leaving.PROCESSED)
    one = farm(bought("Aster", 60, 40, *groups, start=on(30)), tight)
    # Three quarters of them are 45: 23 hens keep 8 of 22 cocks, 14 are too many.
    assert sentences(one, "floor") == ["Take 45 birds for Aster instead of 60: 15 birds fewer."]


def test_surplus_cocks_that_come_too_old_are_not_parted_before_they_come() -> None:
    # They come parted, with 60 days on day 30; they should be gone with 42 (the high end of process_day), a day that
    # is before they come and still ahead. There was no day on which they were together, so none to part them on, and
    # none on which they can be gone in time.
    groups = stay(PEN, 0, None, Part.HENS), stay(SMALL, 0, 40, Part.COCKS, Leaving.PROCESSED)
    one = farm(bought("Aster", 60, 60, *groups, start=on(30)), SMALL)
    overdue = [clash for clash in clashes_of(Season(one), MONDAY) if clash.kind == "overdue"]
    assert overdue
    assert all(ways_out(one, clash, MONDAY) == () for clash in overdue)
