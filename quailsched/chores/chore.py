"""One thing to do on one day."""

from __future__ import annotations

from datetime import date

from quailsched.farm.parts import Part
from quailsched.quick import dataclass
from quailsched.words import marked

# The names of the rules as a calendar shows them, as the category of an entry: to be said.
KIND_WORDS = (
    *(marked("rest"), marked("set"), marked("turn"), marked("candle"), marked("lockdown"), marked("watch")),
    *(marked("hatch"), marked("to brooder"), marked("heat"), marked("heat off"), marked("pebbles")),
    *(marked("feed switch"), marked("harden"), marked("move out"), marked("move"), marked("old drinker")),
    *(marked("arrive"), marked("quarantine"), marked("sex"), marked("cocks out"), marked("sold"), marked("process")),
    *(marked("light"), marked("first eggs"), marked("collect"), marked("bedding"), marked("dust bath")),
    *(marked("grass"), marked("drain"), marked("clean-out"), marked("own chore")),
)


@dataclass(frozen=True, slots=True)
class Chore:
    """A thing to do.

    ``key`` is stable for the life of the chore: made of stored ids and a running number, never of a date or
    a title. ``able`` are the people at home that day who can do it. ``urgent`` marks what cannot wait a day.
    ``has_people`` is false if the farm names nobody at all, so that nobody can be missed.
    """

    key: str
    kind: str  # "set", "candle", "bedding" ...: the name of its rule
    day: date
    title: str
    how: str
    batch_id: str | None
    batch: str  # name, "" if it is about a place only
    place_id: str | None
    place: str  # name
    able: tuple[str, ...]
    caution: str = ""
    urgent: bool = False
    needs_grown_up: bool = False
    has_people: bool = True
    place_batch_ids: tuple[str, ...] = ()  # for a chore about a place: whose birds are there
    part: Part = Part.ALL  # which birds of the batch
    done_on: date | None = None
    left_out: str = ""  # the reason
    put_off_from: date | None = None  # the day that it was due at first
    given_to: str = ""  # the name of the person who is to do it; "" for any of those who can

    @property
    def is_open(self) -> bool:
        """Whether it is still to be done."""
        return self.done_on is None and not self.left_out
