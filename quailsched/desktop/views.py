"""The views in the order of the rail: which part of the window each is, its icon, its name and a sentence."""

from __future__ import annotations

from quailsched.quick import dataclass
from quailsched.words import marked, say


@dataclass(frozen=True, slots=True)
class View:
    part: str  # of the window
    picture: str
    name: str
    tip: str


VIEWS = (
    View("season", "season", marked("Season"), marked("Lanes of places over time (Ctrl+1)")),
    View("day_view", "today", marked("Today"), marked("What is due, to tick and to count (Ctrl+2)")),
    View("next_set", "egg", marked("Next set"), marked("When the next eggs can go in, and how many (Ctrl+3)")),
    View("books", "books", marked("Books"), marked("Hatch, lay, feed and work by what was counted (Ctrl+4)")),
    View("setup_view", "setup", marked("Setup"), marked("Places, people, batches and figures (Ctrl+5)")),
)


def rail_rows() -> list[tuple[str, str, str]]:
    """Icon, name and sentence of each, as the rail takes them."""
    return [(view.picture, say(view.name), say(view.tip)) for view in VIEWS]
