"""Words where nothing helps."""

import pytest

from quailsched.planner.ways_out import Looked
from quailsched.report.clashes import TITLES
from quailsched.report.ways_out import BROUGHT, none_text


def test_every_kind_of_clash_has_words_for_being_brought() -> None:
    assert BROUGHT.keys() == TITLES.keys()


@pytest.mark.parametrize(
    ("looked", "text"),
    [
        (Looked((), 0, 0), "There is no small change to try against it. Change the plan by hand."),
        (
            Looked((), 1, 0),
            "1 small change was tried, and none helps: each leaves some of it. Change the plan by hand, or add room.",
        ),
        # The three most frequent, in order of the alphabet where two are as frequent.
        (
            Looked((), 40, 12, 9, {"floor": 2, "ages": 2, "cold": 1, "hands": 5}),
            "40 small changes and 12 pairs of them were tried, and none helps: 9 would remove it but bring another "
            "clash, mostly nobody at home (5), two ages in one brooder (2) and too little floor (2); the others leave "
            "some of it. Change the plan by hand, or add room.",
        ),
    ],
)
def test_what_was_tried_is_told(looked: Looked, text: str) -> None:
    assert none_text(looked) == text
