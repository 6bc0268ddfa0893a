"""How many birds more a brooder or pen takes, day by day, for a kind that is not there yet.

What the rules of ``season.rules`` ask for (floor, crowd, heat, drinkers, feeders, calm), turned round: not "is it
broken?" but "from how many birds on would it be?". Tests hold it against the rules, number by number.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from datetime import date

from quailsched.farm.records import Batch, Place, Role
from quailsched.husbandry.kind import Kind
from quailsched.quick import dataclass
from quailsched.season.occupancy import Slice
from quailsched.season.rules.fittings import at_heat_off, at_steps, heat_off_of
from quailsched.season.season import Season

NO_LIMIT = 10**9


@dataclass(frozen=True, slots=True)
class Left:
    """What is left for others on days ``start`` to ``end`` (ordinals, half-open).

    ``birds`` more may come before it is a crowd, ``thirsty`` before drinkers are short, ``warm`` chicks on heat;
    ``floor_cm2`` and ``feeder_cm`` are not taken (None: not told). From ``calm`` birds on, with the ``there`` that
    are there already, the group is calm.
    """

    start: int
    end: int
    floor_cm2: int
    birds: int
    thirsty: int
    warm: int
    feeder_cm: float | None
    calm: int
    there: int

    def most(self, each_cm2: int, edge_cm: float, is_on_heat: bool) -> tuple[int, str]:
        """The most birds of ``each_cm2`` that find room, and the kind of clash that one more would make."""
        limits = [(self.birds, "crowd"), (self.thirsty, "water")]
        if each_cm2:
            limits.append((max(self.floor_cm2 // each_cm2, -1), "floor"))
        if is_on_heat:
            limits.append((self.warm, "heat"))
        if self.feeder_cm is not None:
            limits.append((_most_at(edge_cm, self.feeder_cm), "feeder"))
        return min(limits)


def left_in(season: Season, place: Place, kind: Kind, first: date, end: date) -> tuple[Left, ...]:
    """What is left in ``place`` for birds of ``kind`` from ``first`` to ``end``, without gaps."""
    return tuple(_left_in(season, place, kind, first.toordinal(), end.toordinal()))


def empty(season: Season, place: Place, kind: Kind) -> Left:
    """What there is in ``place`` for birds of ``kind`` with nobody else in it, on a day of its own."""
    return _left(season, place, kind, None, 0, 1)


def _left_in(season: Season, place: Place, kind: Kind, first: int, end: int) -> Iterator[Left]:
    day = first
    for spell in season.spells(place):
        if spell.end.toordinal() <= first or spell.start.toordinal() >= end:
            continue
        for whole in spell.slices:
            if whole.end.toordinal() <= day or whole.start.toordinal() >= end:
                continue
            for piece in _pieces(season, place, whole):
                start, stop = max(piece.start.toordinal(), day), min(piece.end.toordinal(), end)
                if start > day:
                    yield _left(season, place, kind, None, day, start)
                if start < stop:
                    yield _left(season, place, kind, piece, start, stop)
                    day = stop
    if day < end:
        yield _left(season, place, kind, None, day, end)


def _pieces(season: Season, place: Place, piece: Slice) -> Iterator[Slice]:
    """``piece`` cut where the need of its birds for heat or feeder changes, if those are told."""
    parts = at_steps(season, piece) if place.feeder_cm is not None else iter((piece,))
    for part in parts:
        yield from at_heat_off(season, part) if place.heat_sources is not None else (part,)


def _left(season: Season, place: Place, kind: Kind, piece: Slice | None, start: int, end: int) -> Left:
    shares = piece.shares if piece is not None else ()
    kinds = {id(kind): kind, **{id(k): k for k in (season.kind(share.presence.batch) for share in shares)}}.values()
    birds = sum(share.run.birds for share in shares)
    crowd = min(int(one.value("crowd_birds")) for one in kinds)
    thirsty = warm = NO_LIMIT
    feeder: float | None = None
    if place.drinker_cm is not None:
        used = sum(s.run.birds * season.kind(s.presence.batch).value("drinker_cm") for s in shares)
        thirsty = _most_at(kind.value("drinker_cm"), place.drinker_cm - used)
    if place.heat_sources is not None and place.role is Role.BROODER:
        on_heat = sum(s.run.birds for s in shares if start < heat_off_of(season, s))
        # Chicks off heat count for the kind of the fewest to a lamp only while they are on heat.
        warm_kinds = [kind, *(season.kind(s.presence.batch) for s in shares if start < heat_off_of(season, s))]
        warm = math.floor(place.heat_sources * min(one.value("heat_source_chicks") for one in warm_kinds)) - on_heat
    if place.feeder_cm is not None:
        feeder = place.feeder_cm - sum(s.run.birds * _edge(season, s.presence.batch, start) for s in shares)
    calm = math.ceil(place.floor_cm2 / max(one.value("calm_area_cm2") for one in kinds)) if place.role.is_pen else 0
    floor_cm2 = place.floor_cm2 - (piece.floor_cm2 if piece is not None else 0)
    return Left(start, end, floor_cm2, crowd - birds, thirsty, warm, feeder, calm, birds)


def _edge(season: Season, batch: Batch, day: int) -> float:
    return season.kind(batch).at("feeder_edge_cm", day - batch.start.toordinal() - season.days(batch).hatch)


def _most_at(each: float, left: float) -> int:
    """How many of ``each`` fit into ``left``, as exactly as the rules count (to a millionth)."""
    return math.floor(round(left, 6) / each + 1e-9) if each > 0 else NO_LIMIT
