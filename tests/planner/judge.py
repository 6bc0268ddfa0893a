"""A judge of ways out that shares no code with the program's own: day by day, from a fresh look at everything."""

from __future__ import annotations

from datetime import date, timedelta

from quailsched.edits.change import apply
from quailsched.farm.check import faults_of
from quailsched.farm.records import Farm
from quailsched.planner.ways_out import ways_out
from quailsched.season.clash import Clash
from quailsched.season.clashes import clashes_of
from quailsched.season.season import Season
from tests.builders import MONDAY, only


def days_broken(one: Farm, today: date, origins: dict[str, str] | None = None) -> set[tuple[str, str, str, date]]:
    """(rule, place, batch, day) of everything that is broken, the plainest way to compare two plans.

    ``origins`` gives for a batch that was split off the one that its birds come from.
    """
    return {
        (clash.kind, clash.place_id, (origins or {}).get(batch_id, batch_id), clash.first + timedelta(days=n))
        for clash in clashes_of(Season(one), today)
        for batch_id in clash.batch_ids
        for n in range((clash.last - clash.first).days + 1)
    }


def split_off(one: Farm, after: Farm) -> dict[str, str]:
    """By the id of each batch that is new in ``after``, the one that has become smaller by its number."""
    new = [batch for batch in after.batches if one.find(batch.id) is None]
    origins = {}
    for part in new:
        (whole,) = (
            b for b in one.batches if b.start == part.start and b.number - after.batch(b.id).number == part.number
        )
        origins[part.id] = whole.id
    return origins


def must_help(one: Farm, clash: Clash, today: date) -> int:
    """Check every way out of ``clash`` by means of our own; how many there are."""
    found = ways_out(one, clash, today)
    assert [way.cost for way in found] == sorted(way.cost for way in found)
    for way in found:
        after = apply(one, way.change)
        assert faults_of(after) == []
        origins = split_off(one, after)
        broken, was = days_broken(after, today, origins), days_broken(one, today)
        assert {each[:3] for each in broken} <= {each[:3] for each in was}
        here = (clash.kind, clash.place_id)
        assert len({each for each in broken if each[:2] == here}) < len({each for each in was if each[:2] == here})
        assert apply(after, way.change.inverse()) == one
        for batch in one.batches:
            if batch.start < today:
                changed = after.batch(batch.id)
                parts = [after.batch(part) for part, whole in origins.items() if whole == batch.id]
                assert (changed.start, changed.number + sum(part.number for part in parts)) == (
                    batch.start,
                    batch.number,
                )
    return len(found)


def sentences(one: Farm, kind: str, today: date = MONDAY) -> list[str]:
    """The ways out of the only clash of ``kind``, each of which must help."""
    clash = only(clashes_of(Season(one), today), kind)
    assert must_help(one, clash, today)
    return [way.sentence for way in ways_out(one, clash, today)]
