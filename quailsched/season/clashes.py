"""All clashes of a season, and of a changed season without looking at all of it again.

The clashes of each rule are kept batch by batch and place by place. When batches change, only they, and in their
places only the days around them, are looked at again; what follows is the same as from a fresh look at everything.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right, insort
from collections.abc import Callable, Collection, Iterator, Sequence
from datetime import date, timedelta
from functools import cached_property
from weakref import WeakKeyDictionary

from quailsched.farm.records import Batch, Farm, Place
from quailsched.season.clash import Clash
from quailsched.season.footprint import Footprint
from quailsched.season.occupancy import Spell
from quailsched.season.rules import BATCH_RULES, FARM_RULES, PLACE_RULES, SPELL_RULES, BatchRule, PlaceRule
from quailsched.season.season import Season, is_like

Clashes = tuple[Clash, ...]
_LookAt = Callable[[Season, Place, Sequence[Spell]], Iterator[Clash]]

# Timeless rules that batches with this footprint do not break: a batch that is moved need not be asked again.
_KEPT: WeakKeyDictionary[Footprint, set[BatchRule]] = WeakKeyDictionary()


class Checked:
    """A season with its clashes. ``after`` gives those of a changed farm."""

    def __init__(
        self,
        season: Season,
        of_batches: dict[str, Clashes],
        of_places: dict[str, tuple[Clashes, ...]],
        ordered: Sequence[Clash],
    ) -> None:
        """``ordered`` are the clashes of all batches and places, sorted as ``_order_in`` says."""
        self.season = season
        self._of_batches, self._of_places, self._ordered = of_batches, of_places, ordered
        self._since: tuple[date, Clashes] | None = None

    @cached_property
    def clashes(self) -> Clashes:
        """Every clash, sorted by first day, then place, kind and batches."""
        of_farm = clashes_of_farm(self.season)
        if not of_farm:
            return tuple(self._ordered)
        return tuple(sorted((*self._ordered, *of_farm), key=_order_in(self.season.farm)))

    def since(self, day: date) -> Clashes:
        """Those that are not over before ``day``; of the day asked for last they are known."""
        if self._since is None or self._since[0] != day:
            self._since = day, tuple([clash for clash in self.clashes if clash.last >= day])
        return self._since[1]

    def after(self, farm: Farm) -> Checked:
        """The same of a changed farm."""
        old = self.season.farm
        if farm.settings != old.settings or farm.people != old.people or not is_like(old, farm):
            return checked(Season(farm))
        gone, come = old.batches_not_in(farm), farm.batches_not_in(old)
        season = self.season.after(farm, gone, come)
        of_places = dict(self._of_places)
        for place_id, (first, end) in _spans(self.season, gone, season, come).items():
            of_places[place_id] = _mended_place(season, farm.place(place_id), of_places[place_id], first, end)
        touched = {batch.id: batch for batch in come}
        for place in farm.places if farm.places is not old.places else ():
            if old.find(place.id) is not place:
                of_places[place.id] = _of_place(season, place)
                touched.update((p.batch.id, p.batch) for p in season.presences(place))
        of_batches = dict(self._of_batches)
        for batch in gone:
            del of_batches[batch.id]
        for batch in touched.values():
            of_batches[batch.id] = _of_batch(season, batch)
        if farm.places is not old.places:
            return _put_together(season, of_batches, of_places)
        changed = {batch.id for batch in (*gone, *come)}
        return Checked(season, of_batches, of_places, self._reordered(changed, of_batches, of_places))

    def _reordered(
        self, changed: set[str], of_batches: dict[str, Clashes], of_places: dict[str, tuple[Clashes, ...]]
    ) -> list[Clash]:
        """``_ordered`` without the clashes that have gone and with those that have come: in a drag, most stay.

        ``changed`` are the ids of the batches that are not as they were.
        """
        batches = [(self._of_batches.get(one, ()), of_batches.get(one, ())) for one in changed]
        places = [(old, new) for one in of_places for old, new in zip(self._of_places[one], of_places[one], strict=True)
                  if old is not new]  # fmt: skip
        before = {id(clash) for old, _ in (*batches, *places) for clash in old}
        after = [clash for _, new in (*batches, *places) for clash in new]
        still = before & {id(clash) for clash in after}
        ordered = [clash for clash in self._ordered if id(clash) not in before or id(clash) in still]
        key = _order_in(self.season.farm)
        for clash in after:
            if id(clash) not in still:
                insort(ordered, clash, key=key)
        return ordered


def _order_in(farm: Farm) -> Callable[[Clash], tuple[object, ...]]:
    positions = {place.id: (place.position, place.id) for place in farm.places}
    return lambda clash: (
        *(clash.first, positions[clash.place_id], clash.kind),
        *(clash.batch_ids, clash.last, clash.sentence),
    )


def checked(season: Season) -> Checked:
    """A fresh look at everything."""
    of_batches = {batch.id: _of_batch(season, batch) for batch in season.farm.batches}
    return _put_together(season, of_batches, {place.id: _of_place(season, place) for place in season.farm.places})


def _put_together(season: Season, of_batches: dict[str, Clashes], of_places: dict[str, tuple[Clashes, ...]]) -> Checked:
    found = [clash for of_batch in of_batches.values() for clash in of_batch]
    found += [clash for rules in of_places.values() for of_rule in rules for clash in of_rule]
    return Checked(season, of_batches, of_places, sorted(found, key=_order_in(season.farm)))


def clashes_of_farm(season: Season) -> list[Clash]:
    """Those of the rules that look at everything at once: a batch may bring one that others are part of."""
    return [clash for rule in FARM_RULES for clash in rule(season)]


def clashes_around(season: Season, batch: Batch, but: Collection[str]) -> Iterator[Clash]:
    """The clashes of a season that ``batch`` is part of, but for those of the farm's rules (``clashes_of_farm``) and
    some kinds of clashes within places.

    Those of runs of days may be told for the days of the batch alone, though they began before it came.
    """
    yield from _of_batch(season, batch)
    for place, presence in season.stays_of(batch):
        spells = season.spells(place)
        low = max(bisect_left(spells, presence.start, key=_end) - 1, 0)
        high = bisect_right(spells, presence.end, key=_start) + 1
        for kind, (look, _) in zip(_KINDS_OF_PLACES, _LOOKS, strict=True):
            if kind not in but:
                yield from (c for c in look(season, place, spells[low:high]) if batch.id in c.batch_ids)


def clashes_of(season: Season, since: date | None = None) -> Clashes:
    """Every clash that is not over before ``since``, sorted by first day, then place, kind and batches."""
    found = checked(season)
    return found.clashes if since is None else found.since(since)


def _of_batch(season: Season, batch: Batch) -> Clashes:
    kept = _KEPT.setdefault(season.footprint(batch), set())
    found: list[Clash] = []
    for rule in BATCH_RULES:
        if rule in kept:
            continue
        before = len(found)
        found += rule.clashes(season, batch)
        if rule.timeless and len(found) == before:
            kept.add(rule)
    return tuple(dict.fromkeys(found))  # two parts of a batch may break one rule in the same words


def _of_place(season: Season, place: Place) -> tuple[Clashes, ...]:
    return tuple(tuple(look(season, place, season.spells(place))) for look, _ in _LOOKS)


def _slices_of(rule: PlaceRule) -> _LookAt:
    """``rule`` over the slices of those spells that may break it."""

    def look(season: Season, place: Place, spells: Sequence[Spell]) -> Iterator[Clash]:
        if place.role not in rule.roles:
            return iter(())
        slices = [piece for spell in spells if rule.may_break(season, place, spell) for piece in spell.slices]
        return rule.clashes(season, place, slices) if slices else iter(())

    return look


# With each: how many spells before a spell its clashes rest on, too.
_LOOKS: tuple[tuple[_LookAt, int], ...] = (
    *((_slices_of(rule), 0) for rule in PLACE_RULES),
    *((rule, 1) for rule in SPELL_RULES),
)
_KINDS_OF_PLACES = (*(rule.kind for rule in PLACE_RULES), *("" for _ in SPELL_RULES))


def _spans(old: Season, gone: Sequence[Batch], new: Season, come: Sequence[Batch]) -> dict[str, tuple[date, date]]:
    """By place, the first and the end of the days on which a batch that has changed was or is there."""
    presences = [p for batch in gone for p in old.presences_of(batch)]
    presences += [p for batch in come for p in new.presences_of(batch)]
    spans: dict[str, tuple[date, date]] = {}
    for presence in presences:
        first, end = spans.get(presence.place_id, (presence.start, presence.end))
        spans[presence.place_id] = (min(first, presence.start), max(end, presence.end))
    return spans


def _mended_place(
    season: Season, place: Place, known: tuple[Clashes, ...], first: date, end: date
) -> tuple[Clashes, ...]:
    """The clashes of each rule when ``place`` has changed from ``first`` to ``end``."""
    window = _window(season.spells(place), first, end)
    return tuple(
        _mended(look, back, season, place, clashes, window) for (look, back), clashes in zip(_LOOKS, known, strict=True)
    )


_Window = tuple[int, int, date, date]


def _window(spells: Sequence[Spell], first: date, end: date) -> _Window:
    """(low, high, first, end): the spells ``low`` to ``high`` that touch these days, and one more on each side, which
    has not changed, so that what lies beyond it cannot have either; and all of their days."""
    low = max(bisect_left(spells, first, key=_end) - 1, 0)
    high = min(bisect_right(spells, end, key=_start) + 1, len(spells))
    if low < high:
        first, end = min(first, spells[low].start), max(end, spells[high - 1].end)
    return low, high, first, end


def _mended(look: _LookAt, back: int, season: Season, place: Place, clashes: Clashes, window: _Window) -> Clashes:
    """The clashes of one rule when ``place`` has changed within ``window``, which grows until no clash found before
    reaches over its edges."""
    spells = season.spells(place)
    low, high, first, end = window
    while hit := [clash for clash in clashes if clash.first < end and clash.last >= first]:
        if all(first <= clash.first and clash.last < end for clash in hit):
            break
        first = min(first, *(clash.first for clash in hit))
        end = max(end, *(clash.last + timedelta(days=1) for clash in hit))
        low, high, first, end = _window(spells, first, end)
    found = tuple(look(season, place, spells[max(low - back, 0) : high]))
    if not hit:
        return (*clashes, *found) if found else clashes
    return (*(clash for clash in clashes if not (clash.first < end and clash.last >= first)), *found)


def _start(spell: Spell) -> date:
    return spell.start


def _end(spell: Spell) -> date:
    return spell.end
