"""What each lane of the season shows, in days and loads: bands, overflow, closed days, clash marks. No Qt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from quailsched.farm.records import Farm, Part, Place
from quailsched.season.clash import Clash
from quailsched.season.occupancy import Presence, Share, room_of
from quailsched.season.rules.notready import closures
from quailsched.season.season import Season
from quailsched.season.severity import Severity, acceptance_of, severity_of


@dataclass(frozen=True, slots=True)
class Piece:
    """Days on which a band takes the loads from ``low`` to ``high`` (egg places or cm2)."""

    start: date
    end: date
    low: int
    high: int


@dataclass(frozen=True, slots=True)
class Band:
    """One batch in one place without a break. A batch that stays on as a laying group is one band."""

    batch_id: str
    place_id: str
    is_cocks: bool
    pieces: tuple[Piece, ...]

    @property
    def start(self) -> date:
        return self.pieces[0].start

    @property
    def end(self) -> date:
        return self.pieces[-1].end


@dataclass(frozen=True, slots=True)
class Over:
    """Days on which all bands together take ``total``, more than the place has."""

    start: date
    end: date
    total: int


@dataclass(frozen=True, slots=True)
class Closed:
    """Days on which a place cannot take anyone, and why in a word or two."""

    start: date
    end: date
    why: str
    is_clean_out: bool


@dataclass(frozen=True, slots=True)
class Mark:
    """A clash of the lane; ``row`` keeps marks that overlap in time apart. Overflow has ``row`` -1."""

    clash: Clash
    row: int
    severity: Severity
    is_accepted: bool


@dataclass(frozen=True, slots=True)
class LaneContent:
    place: Place
    room: int
    bands: tuple[Band, ...]
    overs: tuple[Over, ...]
    closed: tuple[Closed, ...]
    marks: tuple[Mark, ...]

    @property
    def peak(self) -> int:
        """The most that is taken at once."""
        return max((piece.high for band in self.bands for piece in band.pieces), default=0)

    @property
    def mark_rows(self) -> int:
        return max((mark.row + 1 for mark in self.marks), default=0)


@dataclass(frozen=True, slots=True)
class Link:
    """A move of a batch from one band to the next, in another lane, on ``day``."""

    batch_id: str
    day: date
    from_band: Band
    to_band: Band


def lane_contents(season: Season, clashes: Sequence[Clash]) -> tuple[LaneContent, ...]:
    """The lanes of all places in their order."""
    return tuple(_content(season, place, clashes) for place in season.farm.places)


def _content(season: Season, place: Place, clashes: Sequence[Clash]) -> LaneContent:
    room = room_of(place)
    slices = season.slices(place)
    return LaneContent(
        place=place,
        room=room,
        bands=bands_of(season, place),
        overs=tuple(Over(s.start, s.end, s.taken(place)) for s in slices if s.taken(place) > room),
        closed=_closed(season, place),
        marks=_marks(season.farm, [clash for clash in clashes if clash.place_id == place.id]),
    )


def _order(share: Share) -> tuple[date, str, bool]:
    """The longest there lie lowest, so that a band keeps its level as long as it can."""
    presence = share.presence
    return presence.batch.start, presence.batch.name, presence.part is Part.COCKS


def bands_of(season: Season, place: Place) -> tuple[Band, ...]:
    """The bands of ``place``, each batch at the height that it takes on that day."""
    pieces: dict[tuple[str, bool], list[list[Piece]]] = {}
    for piece in season.slices(place):
        low = 0
        for share in sorted(piece.shares, key=_order):
            high = low + (share.run.eggs if place.role.holds_eggs else share.run.floor_cm2)
            runs = pieces.setdefault((share.presence.batch.id, share.presence.part is Part.COCKS), [])
            step = Piece(piece.start, piece.end, low, high)
            if runs and runs[-1][-1].end == piece.start:
                runs[-1].append(step)
            else:
                runs.append([step])
            low = high
    return tuple(
        Band(batch_id, place.id, is_cocks, tuple(run)) for (batch_id, is_cocks), runs in pieces.items() for run in runs
    )


def _closed(season: Season, place: Place) -> tuple[Closed, ...]:
    found = [Closed(c.start, c.end, c.reason or "out of use", False) for c in closures(place)]
    clean = timedelta(days=place.clean_out_days)
    if clean:
        found += [Closed(e.day, e.day + clean, "clean-out", True) for e in season.emptyings(place)]
    return tuple(found)


def _marks(farm: Farm, clashes: Sequence[Clash]) -> tuple[Mark, ...]:
    """Overflow shows itself; the others get a row each as far as their days overlap."""
    marks: list[Mark] = []
    row_ends: list[date] = []
    for clash in sorted(clashes, key=lambda c: c.first):
        look = severity_of(clash.kind), acceptance_of(farm, clash) is not None
        if clash.kind in ("floor", "eggs"):
            marks.append(Mark(clash, -1, *look))
            continue
        row = next((i for i, end in enumerate(row_ends) if end < clash.first), len(row_ends))
        row_ends[row : row + 1] = [clash.last]
        marks.append(Mark(clash, row, *look))
    return tuple(marks)


def links(season: Season, lanes: Sequence[LaneContent]) -> tuple[Link, ...]:
    """The moves of all batches between lanes."""
    by_batch: dict[tuple[str, str, bool], list[Band]] = {}
    for lane in lanes:
        for band in lane.bands:
            by_batch.setdefault((band.batch_id, band.place_id, band.is_cocks), []).append(band)

    def band_at(presence: Presence, day: date) -> Band | None:
        key = (presence.batch.id, presence.leg.stay.place_id, presence.part is Part.COCKS)
        return next((b for b in by_batch.get(key, ()) if b.start <= day < b.end), None)

    found: list[Link] = []
    for batch in season.farm.batches:
        presences = [p for place in season.farm.places for p in season.presences(place) if p.batch.id == batch.id]
        for after in presences:
            for before in presences:
                follows = before.end == after.start and (before.part is after.part or before.part is Part.ALL)
                if not follows or before.leg.stay.place_id == after.leg.stay.place_id:
                    continue
                old, new = band_at(before, before.end - timedelta(days=1)), band_at(after, after.start)
                if old is not None and new is not None:
                    found.append(Link(batch.id, after.start, old, new))
    return tuple(found)
