"""The measures of batches, breeding groups and incubators, in words and as JSON. What they mean: ``definitions``."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any, Final

from quailsched.farm.records import Farm, Units
from quailsched.farm.units import count_text, hours_text, names_text
from quailsched.husbandry.definitions import definitions
from quailsched.outlook.batch_measures import Books, Measured, Measures
from quailsched.outlook.hatch_groups import HatchGroup, breeding_groups, incubators
from quailsched.words import marked, number_text, say

G_PER_LB: Final = 453.59237  # the avoirdupois pound, exactly (NIST SP 811)
HATCHES: Final = ("fertility", "hatch_of_fertile", "hatch_of_set")
# What a measure was worked out from, in one line.
_FROM: Final[Mapping[str, str]] = {
    "fertility": marked("{part} of {whole} eggs set were fertile"),
    "hatch_of_fertile": marked("{part} chicks of {whole} fertile eggs"),
    "hatch_of_set": marked("{part} chicks of {whole} eggs set"),
    "livability": marked("{part} of {whole} birds lived"),
    "hen_day": marked("{part} eggs on {whole} hen-days"),
    "hen_housed": marked("{part} eggs of {whole} hens housed, counted on {days}"),
    "feed_conversion": marked("{part} of feed for {whole} of gain"),
    "dressing": marked("{part} dressed of {whole} live"),
    "feed_per_dozen": marked("{part} of feed for {whole} eggs"),
}
_GRAMS = {"feed_conversion": ("part", "whole"), "dressing": ("part", "whole"), "feed_per_dozen": ("part",)}


def mass_text(mass_g: float, units: Units) -> str:
    """A mass given in grams: "2.50 kg", "183.9 kg", "375 g" or "0.83 lb"."""
    if units is not Units.US and mass_g < 1000:
        return f"{number_text(mass_g)} g"
    mass, unit = (mass_g / G_PER_LB, say("lb")) if units is Units.US else (mass_g / 1000, "kg")
    return f"{number_text(mass, 2 if mass < 10 else 1)} {unit}"


def value_text(found: Measured | None, units: Units) -> str:
    """ "61.6 %", "3.25", "400 g"; "not counted" for none."""
    if found is None:
        return say("not counted")
    if found.key == "feed_per_dozen":
        return mass_text(found.value, units)
    if found.key == "feed_conversion":
        return number_text(found.value, 2)
    return f"{number_text(found.value, 1)} %"


def from_text(found: Measured, units: Units) -> str:
    """What the measure was worked out from: "37 chicks of 60 eggs set"."""
    amounts = {"part": found.part, "whole": found.whole}
    told = {name: _number(amount) for name, amount in amounts.items()}
    for name in _GRAMS.get(found.key, ()):
        told[name] = mass_text(amounts[name], units)
    return say(_FROM[found.key], **told, days=count_text(found.days, "day"))


def _number(amount: float) -> str:
    """Whole where it is; shared eggs need not be."""
    return number_text(amount, 0 if float(amount).is_integer() else 1)


def oddity(found: Measured) -> str:
    """A sentence on a measure that can hardly be; "" for any other."""
    if found.key in ("hen_day", "hen_housed") and found.value > 100:
        return say("More than one egg a hen and day: were eggs of several days counted on one?")
    return ""


def group_name(farm: Farm, group: HatchGroup) -> str:
    """The batches whose hens laid the eggs: "Clover and Elder"; or the machine: "Cabinet"."""
    if group.place is not None:
        return group.place.name
    found = [farm.find(one) for one in group.from_ids]
    return names_text([getattr(one, "name", say("a batch that was removed")) for one in found])


def use_text(group: HatchGroup) -> str:
    """What a machine was used for: "set", "hatched" or both."""
    if group.is_set and group.is_hatched:
        return say("set and hatched here")
    return say("set here") if group.is_set else say("hatched here")


def measures_text(books: Books) -> str:
    """Each batch of which something is known, with its measures and what they rest on; then groups and incubators."""
    farm = books.season.farm
    lines = [say("{farm}: measures", farm=farm.settings.name)]
    batches = [(batch.name, books.of(batch), _sums(books, batch.id)) for batch in farm.batches]
    told = [(name, found, sums) for name, found, sums in batches if found or sums]
    if not told:
        lines += ["", say("Nothing has been counted yet.")]
    for name, found, sums in told:
        lines += ["", name, *_lines(found, farm.settings.units)]
        lines += [f"  {one}" for one in sums]
    for title, groups in (
        (say("Breeding groups"), breeding_groups(farm)),
        (say("Incubators"), incubators(books.season)),
    ):
        known = [group for group in groups if group.measures]
        lines += ["", title] if known else []
        for group in known:
            use = f", {use_text(group)}" if group.place is not None else ""
            lines.append(f"  {group_name(farm, group)}{use} ({count_text(group.eggs, 'egg')})")
            lines += [f"  {line}" for line in _lines(group.measures, farm.settings.units)]
    if left := _sums(books, ""):
        lines += ["", say("Of no batch: {sums}", sums="; ".join(left))]
    return "\n".join(lines)


def _lines(found: Measures, units: Units) -> Iterator[str]:
    wide = max(len(say(one.name)) for one in definitions().values())
    for key, definition in definitions().items():
        if key in found:
            one = found[key]
            odd = f". {oddity(one)}" if oddity(one) else ""
            yield f"  {say(definition.name):<{wide}}  {value_text(one, units):>8}  {from_text(one, units)}{odd}"


def _sums(books: Books, batch_id: str) -> list[str]:
    """Eggs, feed and hours that were recorded, in words."""
    units, sums = books.season.farm.settings.units, []
    if (eggs := books.eggs_laid(batch_id)) is not None:
        sums.append(say("{eggs} eggs laid", eggs=_number(eggs)))
    if (feed := books.feed_g(batch_id)) is not None:
        sums.append(say("{mass} of feed", mass=mass_text(feed, units)))
    if (hours := books.hours.get(batch_id)) is not None:
        sums.append(say("{hours} worked", hours=hours_text(hours)))
    return sums


def left_text(books: Books) -> str:
    """What was recorded of no batch, in a sentence; "" if nothing was."""
    left = _sums(books, "")
    return say("Of no batch: {sums}", sums="; ".join(left)) if left else ""


def measures_json(books: Books) -> dict[str, Any]:
    """The document of ``quailsched measures --json``: percentages, grams and hours; null for what was not counted.

    ``part`` and ``whole`` are what each value was worked out from, in the unit of its formula.
    """
    farm = books.season.farm
    return {
        "farm": farm.settings.name,
        "day": books.today.isoformat(),
        "batches": [
            {
                "batch": batch.name, "id": batch.id, "kind": batch.kind, "start": batch.start.isoformat(),
                "measures": _json_of(books.of(batch), tuple(definitions())),
                "eggs_laid": books.eggs_laid(batch.id), "feed_g": books.feed_g(batch.id),
                "hours": books.hours.get(batch.id),
            }
            for batch in farm.batches
        ],
        "breeding_groups": [
            {"from": [group_name(farm, one)], "from_ids": list(one.from_ids), **_group_json(one)}
            for one in breeding_groups(farm)
        ],
        "incubators": [
            {"place": group_name(farm, one), "set_here": one.is_set, "hatched_here": one.is_hatched,
             **_group_json(one)}
            for one in incubators(books.season)
        ],
        "of_no_batch": {
            "eggs_laid": books.eggs_laid(""), "feed_g": books.feed_g(""), "hours": books.hours.get(""),
        },
        "definitions": {
            key: {"name": one.name, "unit": one.unit, "formula": one.formula, "note": one.note,
                  "source": one.source_text}
            for key, one in definitions().items()
        },
    }  # fmt: skip


def _group_json(group: HatchGroup) -> dict[str, Any]:
    batches = [batch.name for batch in group.batches]
    return {"batches": batches, "eggs": group.eggs, "measures": _json_of(group.measures, HATCHES)}


def _json_of(found: Measures, keys: tuple[str, ...]) -> dict[str, Any]:
    return {key: _measured_json(found[key]) if key in found else None for key in keys}


def _measured_json(one: Measured) -> dict[str, float]:
    told = {"value": round(one.value, 4), "part": round(one.part, 4), "whole": round(one.whole, 4)}
    return {**told, "days": one.days} if one.days else told
