"""Which clashes stop the plan, which are to be watched, and how long an accepted one stays accepted."""

from dataclasses import replace
from datetime import date, timedelta

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from quailsched.edits.acceptances import accept
from quailsched.edits.change import apply
from quailsched.farm.records import Acceptance, Farm
from quailsched.report.clashes import TITLES
from quailsched.season.clash import Clash
from quailsched.season.severity import (
    STOPPING,
    WATCHED,
    Severity,
    acceptance_of,
    acceptances_of,
    open_clashes,
    severity_of,
)
from tests.builders import SETTINGS
from tests.strategies import clashes, farms

# 19 birds where 25 are calm, for ten days: amount 6, no bird without room.
FIRST, LAST = date(2027, 5, 1), date(2027, 5, 10)
CALM = Clash("calm", "pen", ("aster", "bracken"), FIRST, LAST, FIRST, 25, 19, "birds", 0, "Few.")
LIVED_WITH = Acceptance("a1", "calm", "pen", ("aster",), 6, 0, 10, "They are calm anyway")


def of(*accepted: Acceptance) -> Farm:
    return Farm(SETTINGS, acceptances=accepted)


@pytest.mark.parametrize("kind", TITLES)
def test_every_kind_of_clash_has_a_severity(kind: str) -> None:
    assert severity_of(kind) in Severity


def test_no_kind_has_both_severities_and_an_unknown_one_has_none() -> None:
    assert not STOPPING & WATCHED
    with pytest.raises(KeyError):
        severity_of("moonlight")


def test_what_cannot_be_done_stops_the_plan_and_what_costs_is_watched() -> None:
    assert severity_of("floor") is Severity.STOPS
    assert severity_of("water") is Severity.STOPS
    assert severity_of("calm") is Severity.WATCH
    assert severity_of("dark") is Severity.WATCH


def test_an_accepted_clash_is_known_by_rule_place_and_a_batch_in_common() -> None:
    assert acceptance_of(of(LIVED_WITH), CALM) == LIVED_WITH
    assert acceptance_of(of(LIVED_WITH), replace(CALM, batch_ids=("bracken",))) is None
    assert acceptance_of(of(LIVED_WITH), replace(CALM, place_id="run")) is None
    assert acceptance_of(of(LIVED_WITH), replace(CALM, kind="crowd")) is None
    assert acceptance_of(of(), CALM) is None


def test_it_moves_along_and_shrinks_without_coming_back() -> None:
    later = replace(CALM, first=date(2027, 8, 1), last=date(2027, 8, 5), worst=date(2027, 8, 2), have=24)
    assert acceptance_of(of(LIVED_WITH), later) == LIVED_WITH


def test_it_comes_back_when_it_is_about_more_or_more_birds_or_lasts_longer() -> None:
    assert acceptance_of(of(LIVED_WITH), replace(CALM, have=18)) is None  # 7 birds too few, 6 were accepted
    assert acceptance_of(of(LIVED_WITH), replace(CALM, birds_over=1)) is None
    assert acceptance_of(of(LIVED_WITH), replace(CALM, last=date(2027, 5, 11))) is None  # an eleventh day


def test_what_stops_the_plan_is_never_accepted_whatever_a_document_says() -> None:
    forged = replace(LIVED_WITH, kind="floor", amount=1e9, birds=1_000, days=1_000)
    assert acceptance_of(of(forged), replace(CALM, kind="floor")) is None


def test_open_clashes_keep_their_order() -> None:
    cold, crowd = replace(CALM, kind="cold"), replace(CALM, kind="crowd")
    assert open_clashes(of(LIVED_WITH), [crowd, CALM, cold]) == (crowd, cold)


def test_two_records_may_hold_for_one_clash() -> None:
    other = replace(LIVED_WITH, id="a2", batch_ids=("bracken",))
    assert acceptances_of(of(LIVED_WITH, other), CALM) == (LIVED_WITH, other)


@given(st.data())
def test_an_accepted_clash_comes_back_exactly_when_it_grows(data: st.DataObject) -> None:
    one = data.draw(farms())
    assume(one.batches)
    one = replace(one, acceptances=())
    clash = data.draw(clashes(one, WATCHED))
    number = st.integers(-3, 3)
    amount, birds, lasting = data.draw(number), data.draw(number), data.draw(number)
    assume(abs(clash.need - clash.have) + amount >= 0)
    assume(clash.birds_over + birds >= 0 and clash.last + timedelta(days=lasting) >= clash.first)
    after = apply(one, accept(one, clash, "We manage", lambda: "a1"))
    assert acceptance_of(after, clash) is not None
    changed = replace(
        clash,
        need=abs(clash.need - clash.have) + amount,
        have=0,
        birds_over=clash.birds_over + birds,
        last=clash.last + timedelta(days=lasting),
    )
    has_grown = amount > 0 or birds > 0 or lasting > 0
    assert (acceptance_of(after, changed) is None) == has_grown
