"""What is drawn of one season: its lanes in one of the two groupings, the moves between them, names, colours. No Qt.

``layout_of`` with an old layout keeps all that still holds of it; a drag asks for one in every frame.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import field
from datetime import date, timedelta
from typing import Any

from quailsched.desktop.season_canvas.by_place import lanes_by_place
from quailsched.desktop.season_canvas.lanes import Band, Grouping, LaneContent, Timed
from quailsched.farm.records import Batch, Part
from quailsched.quick import dataclass
from quailsched.season.clash import Clash
from quailsched.season.occupancy import Presence
from quailsched.season.season import Season

_DAY = timedelta(days=1)
_BEFORE = timedelta(days=12)  # before the first band, where its name may stand
_COLOURS = 8  # of the theme, told apart by the colour-blind when they stand side by side
_NEIGHBOURS = 3  # batches on either side that are on the farm at about the same time


@dataclass(frozen=True, slots=True)
class Link:
    """A move of a batch on ``day`` from one place to another; ``is_cocks``, of the surplus cocks. The stays may be
    of all birds before and of a part of them after it."""

    batch_id: str
    day: date
    from_place: str
    to_place: str
    was_cocks: bool
    is_cocks: bool
    start: date  # the days on which it is drawn
    end: date
    kept: dict[str, Any] = field(default_factory=dict, repr=False, compare=False)  # what whoever draws it worked out


@dataclass(frozen=True, slots=True)
class SeasonLayout:
    """``numbers`` gives each batch its colour of the theme; it keeps it as long as the batch is there."""

    season: Season | None = None
    clashes: tuple[Clash, ...] = ()
    grouping: Grouping = Grouping.PLACES
    lanes: tuple[LaneContent, ...] = ()
    links: Timed[Link] = field(default_factory=lambda: Timed(()))
    numbers: Mapping[str, int] = field(default_factory=dict)

    def label(self, band: Band) -> str:
        """What stands on ``band``: what its lane does not say already."""
        assert self.season is not None
        farm = self.season.farm
        return farm.batch(band.batch_id).name if self.grouping is Grouping.PLACES else farm.place(band.place_id).name

    def first_and_last(self) -> tuple[date, date] | None:
        """The first day and the end of all bands; None if there are none."""
        spans = [span for lane in self.lanes if (span := lane.bands.span) is not None]
        return (min(start for start, _ in spans), max(end for _, end in spans)) if spans else None


def layout_of(
    season: Season, clashes: tuple[Clash, ...], grouping: Grouping, old: SeasonLayout | None = None
) -> SeasonLayout:
    """The layout of ``season``, what still holds of ``old`` kept."""
    before = old.season if old is not None else None
    known: Sequence[LaneContent] = old.lanes if old is not None and old.grouping is grouping else ()
    return SeasonLayout(
        season,
        clashes,
        grouping,
        _lanes(grouping)(season, clashes, known, before),
        _links(season, old if known else None) if grouping is Grouping.PLACES else Timed(()),
        numbers_after(old.numbers if old is not None else {}, season.farm.batches),
    )


def _lanes(grouping: Grouping) -> Callable[..., tuple[LaneContent, ...]]:
    if grouping is Grouping.PLACES:
        return lanes_by_place
    from quailsched.desktop.season_canvas.by_batch import lanes_by_batch

    return lanes_by_batch


def fit_span(layout: SeasonLayout, today: date) -> tuple[date, date]:
    """The days that show the season at once: from its start, or a while before today, to its last beginnings."""
    starts = [lane.bands.items[0].start for lane in layout.lanes if lane.bands.items]
    if not starts:
        return today - timedelta(days=14), today + timedelta(days=120)
    last = max(lane.bands.items[-1].start for lane in layout.lanes if lane.bands.items)
    start = max(min(starts), today - timedelta(days=70))
    return start - _BEFORE, max(last + timedelta(days=35), today + timedelta(days=60))


def _links(season: Season, old: SeasonLayout | None) -> Timed[Link]:
    """The moves between lanes. What batches have changed, others need not be asked again."""
    if old is None or old.season is None:
        return Timed(sorted(_links_of(season, season.farm.batches), key=lambda link: link.day))
    gone = {batch.id for batch in old.season.farm.batches_not_in(season.farm)}
    come = season.farm.batches_not_in(old.season.farm)
    if not gone and not come:
        return old.links
    changed = [batch for batch in old.season.farm.batches if batch.id in gone]
    days = [p for batch in changed for p in old.season.presences_of(batch)]
    first, end = min((p.start for p in days), default=date.max), max((p.end for p in days), default=date.min)
    return old.links.spliced(_links_of(season, come), first, end, lambda link: link.batch_id in gone)


def _links_of(season: Season, batches: Sequence[Batch]) -> list[Link]:
    return [
        Link(
            batch.id,
            after.start,
            before.place_id,
            after.place_id,
            _is_cocks(before),
            _is_cocks(after),
            after.start,
            after.start + _DAY,
        )
        for batch in batches
        for after in season.presences_of(batch)
        for before in season.presences_of(batch)
        if before.end == after.start
        and (before.part is after.part or before.part is Part.ALL)
        and before.place_id != after.place_id
    ]


def _is_cocks(presence: Presence) -> bool:
    return presence.part is Part.COCKS


def numbers_after(old: Mapping[str, int], batches: Sequence[Batch]) -> Mapping[str, int]:
    """The number of each batch's colour: the old one, or for a new batch the next that none near it has.

    A batch that is moved, or that another before it has left, keeps its colour.
    """
    if len(old) == len(batches) and all(batch.id in old for batch in batches):
        return old
    numbers = {batch.id: old[batch.id] for batch in batches if batch.id in old}
    last = -1
    for at, batch in enumerate(batches):
        if batch.id not in numbers:
            near = batches[max(at - _NEIGHBOURS, 0) : at + _NEIGHBOURS + 1]
            taken = {numbers[other.id] for other in near if other.id in numbers}
            turns = [(last + step) % _COLOURS for step in range(1, _COLOURS + 1)]
            numbers[batch.id] = next(number for number in turns if number not in taken)
        last = numbers[batch.id]
    return numbers
