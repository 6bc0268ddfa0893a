"""The season by place: one lane for each, its bands as high as what they take. No Qt.

While a batch is dragged most of a lane stays as it is: ``lanes_by_place`` keeps all bands that no changed day
touches, as the same objects, so that whoever draws them can keep what was worked out for them.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import date, timedelta
from itertools import chain
from operator import attrgetter
from weakref import WeakKeyDictionary

from quailsched.desktop.season_canvas.facts import marks_by_place
from quailsched.desktop.season_canvas.lanes import (
    Band,
    Closed,
    FactMark,
    LaneContent,
    Over,
    Piece,
    Timed,
    alike,
    marks_of,
)
from quailsched.farm.records import Part, Place, Role
from quailsched.season.clash import Clash
from quailsched.season.occupancy import Presence, Spell, emptyings_of, room_of
from quailsched.season.rules.notready import closures
from quailsched.season.season import Season
from quailsched.words import say

# Heights in units of the font's height: a place that fills slowly needs more to show its steps.
_BODY = {
    Role.SETTER: 2.5,
    Role.HATCHER: 2.3,
    Role.CABINET: 2.3,
    Role.BROODER: 4.6,
    Role.PEN: 5.2,
    Role.GRASS_PEN: 3.2,
}

_DAY = timedelta(days=1)
_BY_START = attrgetter("start", "batch_id", "is_cocks")  # and always in this order, since outlines overlap by a pixel
_Key = tuple[str, bool]  # batch id, whether the surplus cocks
_Part = tuple[tuple[Piece, ...], tuple[Presence, ...]]  # of a band, in one spell
_PARTS: WeakKeyDictionary[Spell, dict[_Key, _Part]] = WeakKeyDictionary()


def lanes_by_place(
    season: Season, clashes: Sequence[Clash], old: Sequence[LaneContent] = (), before: Season | None = None
) -> tuple[LaneContent, ...]:
    """The lanes of all places in their order. ``old`` are those of the season ``before``: what still holds is kept."""
    by_place: dict[str, list[Clash]] = {place.id: [] for place in season.farm.places}
    for clash in clashes:
        by_place[clash.place_id].append(clash)
    facts = marks_by_place(season)
    known = {lane.id: lane for lane in old}
    lanes = []
    for place in season.farm.places:
        lane = known.get(place.id)
        if lane is None or before is None or lane.place is not place:
            lanes.append(_fresh(season, place, by_place[place.id]))
        else:
            lanes.append(_after(lane, before, season, place, by_place[place.id]))
        own = facts.get(place.id)
        if own is not None or lanes[-1].facts.items:
            lanes[-1] = _with_facts(lanes[-1], own)
    return tuple(lanes)


def _with_facts(lane: LaneContent, facts: Timed[FactMark] | None) -> LaneContent:
    """``lane`` with these marks; itself if it has them."""
    items = facts.items if facts is not None else ()
    return lane if lane.facts.items == items else replace(lane, facts=facts or Timed(()))


def _fresh(season: Season, place: Place, clashes: Sequence[Clash]) -> LaneContent:
    spells = season.spells(place)
    return LaneContent(
        id=place.id,
        title=place.name,
        place=place,
        room=room_of(place),
        body=_BODY[place.role],
        bands=Timed(sorted(_bands(place, spells), key=_BY_START)),
        overs=Timed(list(_overs(place, spells))),
        closed=Timed(sorted((*_shut(place), *_clean_outs(place, spells)), key=attrgetter("start"))),
        marks=marks_of(season.farm, clashes, over_line=True),
    )


def _after(old: LaneContent, before: Season, season: Season, place: Place, clashes: Sequence[Clash]) -> LaneContent:
    known_marks = old.marks.items if before.farm.acceptances is season.farm.acceptances else ()
    is_like = bool(known_marks or not clashes) and [mark.clash for mark in known_marks] == clashes
    marks = old.marks if is_like else marks_of(season.farm, clashes, over_line=True, old=known_marks)
    days = changed_days(before.spells(place), season.spells(place))
    if days is None:
        return old if marks is old.marks else replace(old, marks=marks)
    first, end = days
    touched = old.bands.within(first - _DAY, end + _DAY)
    reach = min([band.start for band in touched] + [first]), max([band.end for band in touched] + [end])
    fresh = [b for b in _bands(place, _around(season, place, *reach)) if b.end >= first and b.start <= end]
    known = {(band.batch_id, band.is_cocks, band.start): band for band in touched}
    fresh = [_known_or(band, known.get((band.batch_id, band.is_cocks, band.start))) for band in fresh]
    spells = _around(season, place, first, end)
    return replace(
        old,
        bands=old.bands.spliced(fresh, first, end, lambda band: band.end >= first and band.start <= end, _BY_START),
        overs=old.overs.spliced(
            (over for over in _overs(place, spells) if first <= over.start <= end),
            first,
            end,
            lambda over: first <= over.start <= end,
        ),
        closed=old.closed.spliced(
            (one for one in _clean_outs(place, spells) if first <= one.start <= end),
            first,
            end,
            lambda one: one.is_clean_out and first <= one.start <= end,
        ),
        marks=marks,
    )


def _known_or(band: Band, known: Band | None) -> Band:
    """``known`` if it shows the very same: whoever draws it need not look at it again."""
    is_same = known is not None and known.presences == band.presences and known.pieces == band.pieces
    return known if known is not None and is_same else band


def changed_days(old: Sequence[Spell], new: Sequence[Spell]) -> tuple[date, date] | None:
    """From the first to the end of the days on which not the same spells stand; None if there are none."""
    if old is new:
        return None
    low = alike(old, new, min(len(old), len(new)))
    if low == len(old) == len(new):
        return None
    back = alike(old[:low:-1], new[:low:-1], min(len(old), len(new)) - low - 1)
    changed = (*old[low : len(old) - back], *new[low : len(new) - back])
    return min(spell.start for spell in changed), max(spell.end for spell in changed)


def _around(season: Season, place: Place, first: date, end: date) -> Sequence[Spell]:
    """The spells that touch the days from ``first`` to ``end``, and one more on each side: who comes next counts."""
    spells = season.spells(place)
    low = max(bisect_left(spells, first, key=attrgetter("end")) - 1, 0)
    return spells[low : bisect_right(spells, end, key=attrgetter("start")) + 1]


def _bands(place: Place, spells: Sequence[Spell]) -> list[Band]:
    """The bands of ``spells`` that follow each other, each batch at the height that it takes on that day."""
    runs: dict[_Key, list[tuple[date, list[_Part]]]] = {}  # with each, the end of its last spell
    for spell in spells:
        for key, part in _parts(place, spell).items():
            of_key = runs.setdefault(key, [])
            if of_key and of_key[-1][0] == spell.start:
                parts = of_key.pop()[1]
                parts.append(part)
            else:
                parts = [part]
            of_key.append((spell.end, parts))
    return [_band(place, key, parts) for key, of_key in runs.items() for _, parts in of_key]


def _band(place: Place, key: _Key, parts: Sequence[_Part]) -> Band:
    presences = dict.fromkeys(chain.from_iterable(presences for _, presences in parts))
    return Band(key[0], place.id, key[1], tuple(chain.from_iterable(pieces for pieces, _ in parts)), tuple(presences))


def _key_of(presence: Presence) -> _Key:
    return presence.batch.id, presence.part is Part.COCKS


def _parts(place: Place, spell: Spell) -> dict[_Key, _Part]:
    known = _PARTS.get(spell)
    if known is None:
        there: dict[_Key, list[Presence]] = {}
        for presence in spell.presences:
            there.setdefault(_key_of(presence), []).append(presence)
        upward = sorted(range(len(spell.presences)), key=lambda number: _order(spell.presences[number]))
        found: dict[_Key, list[Piece]] = {key: [] for key in there}
        layers = [(number, found[_key_of(spell.presences[number])]) for number in upward]
        holds_eggs = place.role.holds_eggs
        for start, end, shares, *_ in spell.slices:
            low = 0
            for number, pieces in layers:
                run = shares[number].run
                high = low + (run.eggs if holds_eggs else run.floor_cm2)
                pieces.append(Piece(start, end, low, high))
                low = high
        known = _PARTS[spell] = {key: (tuple(pieces), tuple(there[key])) for key, pieces in found.items()}
    return known


def _order(presence: Presence) -> tuple[date, str, bool]:
    """The longest there lie lowest, so that a band keeps its level as long as it can."""
    return presence.batch.start, presence.batch.name, presence.part is Part.COCKS


def _overs(place: Place, spells: Sequence[Spell]) -> Iterator[Over]:
    room, eggs = room_of(place), place.role.holds_eggs
    for spell in spells:
        if (spell.most.eggs if eggs else spell.most.floor_cm2) > room:
            for piece in spell.slices:
                if piece.taken(place) > room:
                    yield Over(piece.start, piece.end, piece.taken(place))


def _shut(place: Place) -> Iterator[Closed]:
    return (Closed(one.start, one.end, one.reason or say("out of use"), False) for one in closures(place))


def _clean_outs(place: Place, spells: Sequence[Spell]) -> Iterator[Closed]:
    clean = timedelta(days=place.clean_out_days)
    return (Closed(one.day, one.day + clean, "clean-out", True) for one in emptyings_of(spells) if clean)


def bands_of(season: Season, place: Place) -> tuple[Band, ...]:
    """All bands of ``place``."""
    return tuple(_bands(place, season.spells(place)))
