"""No time to clean a place out between those who leave and those who come."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import timedelta

from quailsched.farm.records import Place
from quailsched.farm.units import count_text, day_text, names_text
from quailsched.season.clash import Clash
from quailsched.season.occupancy import Presence, Spell, emptyings_of
from quailsched.season.season import Season


def cleanout(_season: Season, place: Place, spells: Sequence[Spell]) -> Iterator[Clash]:
    """The next batch comes before the place's clean-out days are over. Who overlaps is no matter of this rule."""
    if not place.clean_out_days:
        return
    for emptying in emptyings_of(spells):
        if emptying.next_day is None or (have := (emptying.next_day - emptying.day).days) >= place.clean_out_days:
            continue
        left, came = emptying.left, emptying.came
        after = f", after {count_text(have, 'day')}" if have else ", the same day"
        yield Clash(
            kind="cleanout",
            place_id=place.id,
            batch_ids=tuple(dict.fromkeys(p.batch.id for p in (*left, *came))),
            first=emptying.next_day,
            last=emptying.day + timedelta(days=place.clean_out_days - 1),
            worst=emptying.next_day,
            need=place.clean_out_days,
            have=have,
            unit="days",
            birds_over=0,
            sentence=f"{place.name} needs {count_text(place.clean_out_days, 'day')} of clean-out after "
            f"{_names(left)} {'leave' if len(left) > 1 else 'leaves'} on "
            f"{day_text(emptying.day)}, but {_names(came)} "
            f"{'come' if len(came) > 1 else 'comes'} in on {day_text(emptying.next_day)}"
            f"{after}.",
        )


def _names(presences: tuple[Presence, ...]) -> str:
    return names_text(list(dict.fromkeys(presence.batch.name for presence in presences)))
