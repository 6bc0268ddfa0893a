"""Birds that do not go together: ages too far apart, too many in one crowd, too many cocks, strangers too soon."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from datetime import date, timedelta

from quailsched.farm.records import Batch, Origin, Part, Place, Role
from quailsched.farm.units import count_text, day_text, names_text
from quailsched.season.clash import Clash, clash_of_run, stretches
from quailsched.season.occupancy import Presence, Share, Slice, Spell
from quailsched.season.season import Season
from quailsched.words import number_text, say, value_text


def ages(season: Season, place: Place, slices: Sequence[Slice]) -> Iterator[Clash]:
    """Two ages in one brooder, further apart than figure age_gap_days: heat differs, small ones are trampled."""
    if place.role is not Role.BROODER:
        return

    def allowed(piece: Slice) -> int:
        return min(season.kind(share.presence.batch).days("age_gap_days") for share in piece.shares)

    def gap(piece: Slice) -> int:
        hatched = [_hatch(season, share.presence.batch) for share in piece.shares if share.run.birds]
        return (max(hatched) - min(hatched)).days if hatched else 0

    for run in stretches(slices, lambda piece: len(piece.shares) > 1 and gap(piece) > allowed(piece)):
        worst = max(run, key=gap)
        by_age = sorted((s for s in worst.shares if s.run.birds), key=lambda s: _hatch(season, s.presence.batch))
        old, young = by_age[0], by_age[-1]
        sentence = say(
            "{old} and {young} would share {place} from {day}: {apart} apart, {most} is the most. They need different "
            "heat, and small ones are trampled.",
            old=_aged(season, old, worst.start),
            young=_aged(season, young, worst.start),
            place=place.name,
            day=day_text(worst.start),
            apart=count_text(gap(worst), "day"),
            most=allowed(worst),
        )
        birds = young.run.birds
        yield clash_of_run("ages", place, run, worst, gap(worst), allowed(worst), "days", sentence, birds)


def may_differ(_season: Season, place: Place, spell: Spell) -> bool:
    return place.role is Role.BROODER and len(spell.presences) > 1


def _hatch(season: Season, batch: Batch) -> date:
    return batch.start + timedelta(days=season.days(batch).hatch)


def _aged(season: Season, share: Share, day: date) -> str:
    batch = share.presence.batch
    return say("{batch} ({days} old)", batch=batch.name, days=count_text((day - _hatch(season, batch)).days, "day"))


def crowd(season: Season, place: Place, slices: Sequence[Slice]) -> Iterator[Clash]:
    """More birds together than figure crowd_birds: in a fright they pile up in the corners."""
    if place.role.holds_eggs:
        return

    def most(piece: Slice) -> int:
        return _most_together(season, [share.presence for share in piece.shares])

    for run in stretches(slices, lambda piece: piece.birds > most(piece)):
        worst = max(run, key=lambda piece: piece.birds)
        over = worst.birds - most(worst)
        names = names_text(list(dict.fromkeys(s.presence.batch.name for s in worst.shares if s.run.birds)))
        sentence = say(
            "{birds} birds of {names} together in {place} by {day} are more than {most}: in a fright they pile up. "
            "Fill the corners, put low cover under a high roof, or part them.",
            birds=number_text(worst.birds),
            names=names,
            place=place.name,
            day=day_text(worst.start),
            most=number_text(most(worst)),
        )
        yield clash_of_run("crowd", place, run, worst, worst.birds, most(worst), "birds", sentence, over)


def may_crowd(season: Season, place: Place, spell: Spell) -> bool:
    return not place.role.holds_eggs and spell.most.birds > _most_together(season, spell.presences)


def _most_together(season: Season, presences: Sequence[Presence]) -> int:
    return min(int(season.kind(presence.batch).value("crowd_birds")) for presence in presences)


def cocks(season: Season, batch: Batch) -> Iterator[Clash]:
    """More cocks than figure hens_per_cock allows, from the day that they mature, in a batch not yet parted."""
    grown = batch.start + timedelta(days=season.days(batch).mature)
    for place, presence in season.stays_of(batch):
        first = max(presence.start, grown)
        if place.role.holds_eggs or presence.part is not Part.ALL or first >= presence.end:
            continue
        alive = season.birds(batch, first)
        males = alive // 2
        allowed = math.ceil((alive - males) / season.kind(batch).value("hens_per_cock"))
        if males > allowed:
            yield _cocks(season, place, presence, first, males, allowed)
    yield from _cocks_not_parted(season, batch, grown)


def _cocks_not_parted(season: Season, batch: Batch, grown: date) -> Iterator[Clash]:
    """Surplus cocks that stay in one place with their hens after they have matured."""
    for place, presence in season.stays_of(batch):
        if presence.part is not Part.COCKS:
            continue
        hens = [p for at, p in season.stays_of(batch) if at is place and p.part is Part.HENS]
        if not hens:
            continue
        first, end = max(presence.start, hens[0].start, grown), min(presence.end, hens[0].end)
        birds = season.birds(batch, first, Part.COCKS)
        if first < end and birds:
            sentence = say(
                "{cocks} of {batch} would still be with the hens in {place} on {day}, grown: they fight and wear out "
                "the hens.",
                cocks=count_text(birds, "surplus cock"),
                batch=batch.name,
                place=place.name,
                day=day_text(first),
            )
            last = end - timedelta(days=1)
            yield Clash("cocks", place.id, (batch.id,), first, last, first, birds, 0, "birds", birds, sentence)


def _cocks(season: Season, place: Place, presence: Presence, first: date, males: int, allowed: int) -> Clash:
    batch = presence.batch
    per = season.kind(batch).value("hens_per_cock")
    return Clash(
        kind="cocks",
        place_id=place.id,
        batch_ids=(batch.id,),
        first=first,
        last=presence.end - timedelta(days=1),
        worst=first,
        need=males,
        have=allowed,
        unit="birds",
        birds_over=males - allowed,
        sentence=say(
            "From {day} the cocks of {batch} in {place} are grown: about {cocks}, where one for {hens} hens is enough. "
            "{surplus} should go before they fight and wear out the hens.",
            day=day_text(first),
            batch=batch.name,
            place=place.name,
            cocks=number_text(males),
            hens=value_text(per),
            surplus=number_text(males - allowed),
        ),
    )


def quarantine(season: Season, place: Place, slices: Sequence[Slice]) -> Iterator[Clash]:
    """Bought birds beside others of the farm before figure quarantine_days are over."""
    if place.role.holds_eggs:
        return
    shares = (share for piece in slices if len(piece.shares) > 1 for share in piece.shares)
    bought = {s.presence.batch.id: s.presence.batch for s in shares if s.presence.batch.origin is Origin.BOUGHT_BIRDS}
    for batch in bought.values():
        yield from _quarantine(season, place, slices, batch)


def may_mix(_season: Season, place: Place, spell: Spell) -> bool:
    return len(spell.presences) > 1 and any(
        presence.batch.origin is Origin.BOUGHT_BIRDS for presence in spell.presences
    )


def _quarantine(season: Season, place: Place, slices: Sequence[Slice], batch: Batch) -> Iterator[Clash]:
    apart = season.kind(batch).days("quarantine_days")
    over = batch.start + timedelta(days=apart)

    def is_mixed(piece: Slice) -> bool:
        ids = {share.presence.batch.id for share in piece.shares if share.run.birds}
        return batch.id in ids and len(ids) > 1

    before = [piece for piece in slices if piece.start < over]
    cut = [piece if piece.end <= over else piece._replace(end=over) for piece in before]
    for run in stretches(cut, is_mixed):
        have = (run[0].start - batch.start).days
        sentence = say(
            "{batch} was brought in on {came} and would be with others in {place} from {day}, after {had}: {apart} "
            "days apart are asked for, until {until}.",
            batch=batch.name,
            came=day_text(batch.start),
            place=place.name,
            day=day_text(run[0].start),
            had=count_text(have, "day"),
            apart=apart,
            until=day_text(over),
        )
        yield clash_of_run("quarantine", place, run, run[0], apart, have, "days", sentence)
