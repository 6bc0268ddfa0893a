"""One clash or one batch in words: rows of a label and a text, for the panel beside the season."""

from __future__ import annotations

from datetime import date, timedelta
from functools import partial

from quailsched.farm.kinds import kind_of
from quailsched.farm.records import Batch, Farm, Part
from quailsched.farm.units import (
    area_text,
    count_text,
    day_text,
    hours_text,
    length_text,
    named_day_text,
    span_text,
    two_lengths_text,
    warmth_step_text,
)
from quailsched.husbandry.cautions import caution
from quailsched.husbandry.kind import Kind
from quailsched.outlook.hatch import hatch_odds
from quailsched.report.plan_and_fact import parentage_rows
from quailsched.season.clash import Clash
from quailsched.season.season import Season
from quailsched.season.severity import acceptance_of, severity_of
from quailsched.words import marked, number_text, say

# Which figures a clash rests on, so that its source can be shown.
FIGURES = {
    "floor": ("floor_cm2", "hatch_of_set_pct"),
    "cabinet": ("lockdown_day",),
    "cleanout": ("clean_out_days",),
    "young": ("feathered_day", "heat_off_day"),
    "cold": ("out_min_night_c", "hardened_day"),
    "calm": ("calm_area_cm2",),
    "stale": ("egg_storage_days", "egg_storage_loss_pct_per_day"),
    "ages": ("age_gap_days",),
    "crowd": ("crowd_birds",),
    "cocks": ("hens_per_cock", "cocks_mature_day"),
    "quarantine": ("quarantine_days",),
    "nowhere": ("incubation_days", "hatcher_hold_days"),
    "heat": ("heat_source_chicks", "heat_off_day"),
    "water": ("drinker_cm",),
    "feeder": ("feeder_edge_cm",),
    "overdue": ("process_day", "keep_lay_days"),
    "dark": ("light_hours", "first_egg_day"),
}
# Topics of husbandry.cautions where what helps against a clash can hurt somebody.
CAUTIONS = {"heat": "heat_lamp"}

_SHORT_WORDS = {
    "eggs": marked("egg place"),
    "days": marked("day"),
    "birds": marked("bird"),
    "chicks": marked("chick"),
    "people": marked("pair of hands"),
}


def short_text(farm: Farm, clash: Clash) -> str:
    """By how much need and have differ: "8.1 sq ft, about 37 birds", "2 days", "3 °C", "6 hours"."""
    units, by = farm.settings.units, abs(clash.need - clash.have)
    if clash.unit == "cm2":
        return say("{amount}, about {birds}", amount=area_text(by, units), birds=count_text(clash.birds_over, "bird"))
    if clash.unit == "cm":
        return say(
            "{amount}, about {birds}",
            amount=two_lengths_text(by, 0, units)[0],
            birds=count_text(clash.birds_over, "bird"),
        )
    if clash.unit == "degC":
        return warmth_step_text(by, units)
    if clash.unit == "hours":
        return hours_text(by)
    return count_text(round(by), _SHORT_WORDS[clash.unit])


def clash_rows(farm: Farm, clash: Clash, today: date, chance: float | None = None) -> list[tuple[str, str]]:
    """How grave, when, how much, how sure (where a ``chance`` is known), who, why, why it is accepted, and the
    figures with their sources."""
    when = span_text(clash.first, clash.last, today)
    if clash.worst not in (clash.first, clash.last) or clash.first != clash.last:
        when += say(", worst on {day}", day=day_text(clash.worst))
    rows = [
        (say("Severity"), say(severity_of(clash.kind))),
        (say("When"), when),
        (say("Short by"), short_text(farm, clash)),
    ]
    if chance is not None:
        rows.append((say("How sure"), chance_text(chance)))
    rows.append((say("Who"), ", ".join(farm.batch(batch_id).name for batch_id in clash.batch_ids)))
    rows.append((say("Why"), clash.sentence))
    acceptance = acceptance_of(farm, clash)
    if acceptance is not None:
        rows.append((say("Accepted because"), acceptance.reason))
    kind = kind_of(farm, farm.batch(clash.batch_ids[0]))
    for key in FIGURES.get(clash.kind, ()):
        figure = kind.figures.get(key) or kind.curves[key]
        rows.append((say("Counts on"), f"{say(figure.label)} ({figure.source_text})"))
    if clash.kind in CAUTIONS:
        in_units = partial(length_text, units=farm.settings.units)
        rows.append((say("Take care"), caution(CAUTIONS[clash.kind], in_units).text))
    return rows


def batch_rows(season: Season, batch: Batch, today: date) -> list[tuple[str, str]]:
    """Kind, numbers, and the route with its days and birds."""
    farm, kind, days = season.farm, season.kind(batch), season.days(batch)

    def on(number: int) -> date:
        return batch.start + timedelta(days=number)

    rows = [(say("Kind"), say(kind.name)), *parentage_rows(farm, batch)]
    has_hatched = season.lived(batch).hatched is not None
    if batch.origin.is_eggs:
        rows += [
            (
                say("Set"),
                say(
                    "{eggs} on {day}, {origin}",
                    eggs=count_text(batch.number, "egg"),
                    day=_long(batch.start),
                    origin=say(batch.origin),
                ),
            ),
            (say("Lockdown"), _long(on(days.lockdown))),
            (
                say("Hatch"),
                say(
                    "{day}, {number} chicks" if has_hatched else "{day}, about {number} chicks",
                    day=_long(on(days.hatch)),
                    number=number_text(season.birds(batch, on(days.hatch))),
                ),
            ),
        ]
        if not has_hatched:
            rows.append((say("How sure"), odds_text(kind, batch.number)))
    else:
        birds, age = count_text(batch.number, "bird"), count_text(batch.age_days, "day")
        rows.append((say("Came"), say("{birds} on {day}, {age} old", birds=birds, day=_long(batch.start), age=age)))
    for leg in season.footprint(batch).legs:
        place = farm.place(leg.stay.place_id)
        until = span_text(on(leg.start), on(leg.end - 1), today)
        run = leg.run_on(leg.start)
        number = "" if place.role.holds_eggs or run is None else f", {count_text(run.birds, 'bird')}"
        who = {Part.ALL: "", Part.HENS: say(", laying group"), Part.COCKS: say(", surplus cocks")}[leg.stay.part]
        end = say(", then {leaving}", leaving=say(leg.stay.leaving)) if leg.stay.leaving else ""
        if leg.stay.to_day is None:
            until = say("from {day}, until they are replaced", day=day_text(on(leg.start), today))
        rows.append((place.name, f"{until}{number}{who}{end}"))
    if any(leg.stay.part is not Part.COCKS and leg.start <= days.first_egg < leg.end
           for leg in season.footprint(batch).legs):  # fmt: skip
        rows.append((say("First eggs"), say("about {day}", day=_long(on(days.first_egg)))))
    if batch.note:
        rows.append((say("Note"), batch.note))
    return rows


def chance_text(chance: float) -> str:
    """ "in 97 of 100 hatches", a chance from 0 to 1."""
    of_100 = round(100 * chance)
    if of_100 < 1:
        return say("in fewer than 1 of 100 hatches")
    if of_100 > 99:
        return say("in more than 99 of 100 hatches")
    return say("in {number} of 100 hatches", number=of_100)


def odds_text(kind: Kind, eggs: int) -> str:
    """What eight hatches in ten lie between."""
    odds = hatch_odds(kind, eggs)
    return say(
        "8 hatches in 10 give {least} to {most} chicks",
        least=number_text(odds.reached_by(0.9)),
        most=number_text(odds.exceeded_by(0.1)),
    )


def _long(day: date) -> str:
    return f"{named_day_text(day)} {day.year}"
