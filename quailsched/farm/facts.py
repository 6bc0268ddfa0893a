"""What has happened, and what the keeper has said about chores. Frozen values, as in ``records``.

A count is never changed: one that was wrong is corrected by another, which names it (``corrects``), so that the trace
stays. What counts add up to is in ``ledger``; what follows from them for the season in ``season.lived``.
"""

from __future__ import annotations

from datetime import UTC, date, datetime
from enum import StrEnum

from quailsched.farm.parts import Part
from quailsched.quick import dataclass


class Sort(StrEnum):
    """What a count is of."""

    SET = "set"  # eggs put into the machine
    CLEAR = "clear"  # eggs without a germ, taken out at candling
    QUIT = "quit"  # germs that died, at candling or left in the shell
    PIPPED = "pipped"  # eggs with a hole; some do not hatch
    HATCHED = "hatched"
    COUNTED = "counted"  # a head count
    DIED = "died"
    MOVED = "moved"
    FEATHERED = "feathered"  # all of them, seen on this day
    SEXED = "sexed"
    WEIGHED = "weighed"
    SOLD = "sold"
    PROCESSED = "processed"
    PARTED = "parted"  # birds that became a batch of their own
    JOINED = "joined"  # birds that went over to another batch
    LAID = "laid"
    FEED_BOUGHT = "feed bought"
    FED = "fed"
    BEDDING = "bedding"  # changed
    BUILT = "built"  # a place is finished
    HOURS = "hours"  # worked
    NOTE = "note"
    PHOTO = "photo"

    @property
    def is_of_eggs(self) -> bool:
        """Eggs of a batch that are in a machine (not those that hens lay)."""
        return self in (Sort.SET, Sort.CLEAR, Sort.QUIT, Sort.PIPPED)

    @property
    def takes_birds(self) -> bool:
        """Whether a batch has fewer birds by it."""
        return self in (Sort.DIED, Sort.SOLD, Sort.PROCESSED, Sort.PARTED, Sort.JOINED)

    @property
    def needs_batch(self) -> bool:
        return self.is_of_eggs or self.takes_birds or self in _OF_A_BATCH


_OF_A_BATCH = (Sort.HATCHED, Sort.COUNTED, Sort.MOVED, Sort.FEATHERED, Sort.SEXED, Sort.WEIGHED)


class Cause(StrEnum):
    """Of what birds died, as far as a keeper can tell."""

    UNKNOWN = "unknown"
    WEAK = "weak"  # did not get on its feet after the hatch
    CHILLED = "chilled"
    SMOTHERED = "smothered"  # in a heap
    DROWNED = "drowned"
    HURT = "hurt"  # by an accident, a flight against the wire
    FOUGHT = "fought"  # pecked or killed by others
    TAKEN = "taken"  # by a predator
    SICK = "sick"
    CULLED = "culled"  # put down
    MISSING = "missing"  # not there at a count


@dataclass(frozen=True, slots=True)
class Count:
    """A fact on a day. Which fields a sort has is told by ``ledger.FIELDS``; the others are as they start.

    ``number`` counts eggs, chicks or birds; of those sexed, all: hens, cocks and the rest unsure. ``grams`` are live
    weight of ``number`` birds together, or feed. ``hour`` (0 to 23) is the hour of a hatch. ``to_batch_id`` is where
    birds that parted or joined are now. ``file_name`` is a photo's, in the folder beside the farm.
    ``entered`` is when it was written down. ``corrects`` is the id of the count in whose place it stands;
    with ``is_taken_back`` nothing stands there any more. ``plan_day`` and ``plan_number`` are what the plan said
    at that moment, which cannot be worked out afterwards; of a place that is finished, the number is of hours of work.
    """

    id: str
    sort: Sort
    day: date
    entered: datetime = datetime(2000, 1, 1, tzinfo=UTC)
    number: int = 0
    batch_id: str = ""
    place_id: str = ""
    part: Part = Part.ALL
    hens: int = 0
    cocks: int = 0
    grams: int = 0
    dressed_g: int = 0
    hours: float = 0.0
    hour: int | None = None
    cause: Cause | None = None
    person_id: str = ""
    to_batch_id: str = ""
    words: str = ""
    file_name: str = ""
    corrects: str = ""
    is_taken_back: bool = False
    plan_day: date | None = None
    plan_number: int | None = None

    def __hash__(self) -> int:
        """By the id alone, which is the count's own for ever: all counts of a batch are hashed at each look at it."""
        return hash(self.id)

    @property
    def unsure(self) -> int:
        """Of those sexed, the birds that were neither called hen nor cock."""
        return self.number - self.hens - self.cocks


@dataclass(frozen=True, slots=True)
class ChoreMark:
    """What the keeper has said about one chore (``key``), which was due on ``day``.

    Done on a day, left out for a reason, put off to another day, or given to a person; a chore has one mark at most.
    """

    id: str
    key: str
    day: date
    done_on: date | None = None
    left_out: str = ""
    moved_to: date | None = None
    person_id: str = ""


@dataclass(frozen=True, slots=True)
class OwnChore:
    """A chore that the keeper has added. ``repeat`` is a recurrence rule as in RFC 5545 section 3.3.10
    ("FREQ=WEEKLY;INTERVAL=2"), counted from ``first``; "" for once. ``words`` tell how it is done."""

    id: str
    name: str
    first: date
    repeat: str = ""
    words: str = ""
    place_id: str = ""
    batch_id: str = ""
    person_id: str = ""
