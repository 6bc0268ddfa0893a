"""No time to clean a place out between those who leave and those who come."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import timedelta
from itertools import pairwise

from quailsched.farm.records import Place
from quailsched.farm.units import count_text, day_text, names_text
from quailsched.season.clash import Clash
from quailsched.season.occupancy import Presence, Slice
from quailsched.season.season import Season


def cleanout(season: Season, place: Place, slices: Sequence[Slice]) -> Iterator[Clash]:
    """The next batch comes before the place's clean-out days are over. Who overlaps is no matter of this rule."""
    for left_in, came_in in pairwise(slices):
        left = tuple(share.presence for share in left_in.shares)
        day, have = left_in.end, (came_in.start - left_in.end).days
        if have >= place.clean_out_days or any(presence.end > day for presence in left):
            continue
        came = tuple(share.presence for share in came_in.shares)
        if {p.batch.id for p in left} & {p.batch.id for p in came if p.start == day}:
            continue  # a batch that stays on has not left
        after = f", after {count_text(have, 'day')}" if have else ", the same day"
        yield Clash(
            kind="cleanout",
            place_id=place.id,
            batch_ids=tuple(dict.fromkeys(p.batch.id for p in (*left, *came))),
            first=came_in.start,
            last=day + timedelta(days=place.clean_out_days - 1),
            worst=came_in.start,
            need=place.clean_out_days,
            have=have,
            unit="days",
            birds_over=0,
            sentence=f"{place.name} needs {count_text(place.clean_out_days, 'day')} of clean-out after "
            f"{_names(left)} {'leave' if len(left) > 1 else 'leaves'} on "
            f"{day_text(day)}, but {_names(came)} "
            f"{'come' if len(came) > 1 else 'comes'} in on {day_text(came_in.start)}"
            f"{after}.",
        )


def _names(presences: tuple[Presence, ...]) -> str:
    return names_text(list(dict.fromkeys(presence.batch.name for presence in presences)))
