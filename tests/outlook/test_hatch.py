"""Odds of a hatch, by hand and by properties; against scipy in tests/outside."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quailsched.husbandry.handbook import handbook, kind_with
from quailsched.husbandry.kind import Kind
from quailsched.outlook.hatch import HatchOdds, beta_of, hatch_odds

KINDS = st.sampled_from(list(handbook().values()))


@given(KINDS, st.integers(0, 400))
def test_chances_add_up_and_have_the_published_mean(kind: Kind, eggs: int) -> None:
    odds = hatch_odds(kind, eggs)
    assert len(odds.chances) == eggs + 1
    assert sum(odds.chances) == pytest.approx(1, abs=1e-9)
    rate = kind.value("hatch_of_set_pct") / 100
    assert odds.expected == pytest.approx(eggs * rate, rel=1e-9, abs=1e-9)


def test_alpha_and_beta_follow_from_the_range() -> None:
    # Coturnix: mean 61.31 %, 50 to 84.5 % as the middle nine tenths: spread 0.345 / 3.2897 = 0.10487;
    # 0.6131 x 0.3869 / 0.10487^2 - 1 = 20.569; alpha 12.611, beta 7.958.
    alpha, beta = beta_of(handbook()["coturnix"])
    assert alpha == pytest.approx(12.611, abs=0.005)
    assert beta == pytest.approx(7.958, abs=0.005)


def test_room_and_promise_by_hand() -> None:
    # 3 eggs with chances 0.1, 0.2, 0.4, 0.3: three tenths exceed 2, none exceed 3; nine tenths reach 1.
    odds = HatchOdds((0.1, 0.2, 0.4, 0.3))
    assert [odds.exceeded_by(share) for share in (0.0, 0.1, 0.3, 0.7, 0.95)] == [3, 3, 2, 1, 0]
    assert [odds.reached_by(share) for share in (1.0, 0.9, 0.7, 0.3, 0.29)] == [0, 1, 2, 3, 3]


@given(KINDS, st.integers(1, 200))
def test_more_eggs_need_more_room_and_promise_more(kind: Kind, eggs: int) -> None:
    fewer, more = hatch_odds(kind, eggs), hatch_odds(kind, eggs + 1)
    assert fewer.exceeded_by(0.1) <= more.exceeded_by(0.1)
    assert fewer.reached_by(0.9) <= more.reached_by(0.9)
    assert fewer.reached_by(0.9) <= fewer.exceeded_by(0.1)


def test_a_farm_that_knows_its_hatch_better_is_surer() -> None:
    kind = handbook()["coturnix"]
    own = kind_with(kind, (("hatch_of_set_pct", 70.0, ()),))
    assert hatch_odds(own, 100).expected == pytest.approx(70)


def test_fewer_eggs_than_none_are_refused() -> None:
    with pytest.raises(ValueError, match="-1 eggs cannot be set"):
        hatch_odds(handbook()["coturnix"], -1)
