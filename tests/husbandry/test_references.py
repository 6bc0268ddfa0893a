"""Every figure stands where its rows of the reference table put it, and a wrong one would be found."""

from __future__ import annotations

import csv

import pytest

from quailsched.husbandry.handbook import handbook
from quailsched.resources import resource
from tests.husbandry.reference_rows import ROWS

# Unit of a reference row -> (unit of the figure, factor, what is added after).
CONVERSIONS = {
    "days": ("days", 1.0, 0.0),
    "day": ("days", 1.0, 0.0),
    "weeks": ("days", 7.0, 0.0),
    "weeks of lay": ("days", 7.0, 0.0),
    "hours": ("hours", 1.0, 0.0),
    "degC": ("degC", 1.0, 0.0),
    "degF": ("degC", 5 / 9, -160 / 9),
    "%": ("%", 1.0, 0.0),
    "% of set": ("%", 1.0, 0.0),
    "% of fertile": ("%", 1.0, 0.0),
    "points/day": ("%", 1.0, 0.0),
    "per day": ("count", 1.0, 0.0),
    "F per M": ("count", 1.0, 0.0),
    "ft2": ("cm2", 929.0304, 0.0),
    "m2/bird": ("cm2", 10_000.0, 0.0),
    "inch/bird": ("cm", 2.54, 0.0),
    "cm/bird": ("cm", 1.0, 0.0),
    "ft per 100 birds": ("cm", 0.3048, 0.0),
    "g/bird/day": ("g", 1.0, 0.0),
}
# Hours that stand for days, and points lost in four days that stand for points a day.
SPECIAL = {
    ("storage.rest.shipped", "days"): 1 / 24,
    ("hatcher.hold", "days"): 1 / 24,
    ("storage.loss.4days", "%"): 1 / 4,
}
# Values that a row says in words (quantity, stage or notes) and not in its numbers: (words, unit, value).
SAID = {
    "ex.daycount.ncsu": [("hatch days 21-23", "days", 21.0)],
    "inc.k.temp": [("Stop turning day 14", "days", 14.0)],
    "inc.temp.hub": [("RH 70% throughout", "%", 70.0)],
    "storage.bobwhite": [("<=7 d", "days", 7.0)],
    "storage.hatch.ambient.d7": [("5.57 points/day", "%", 5.57)],
    "lay.replace": [("about 1 year", "days", 365.0)],
    "b.lay": [("~200 d", "days", 200.0)],
    "quar.days": [("14 d", "days", 14.0)],
    "ratio.single.8": [("8 hens", "count", 8.0)],
    "ratio.single.12": [("12 hens", "count", 12.0)],
    "k.space": [("1 male + 2 females", "count", 2.0), ("pair", "count", 1.0)],
    "k.lay": [("8-9 wk", "days", 56.0), ("8-9 wk", "days", 63.0), (">=12 h", "hours", 12.0)],
    "econ.b.flight": [("17-week", "days", 119.0)],
    "b.light": [("5 wk after", "days", 35.0), ("12 wk", "days", 84.0)],
    "protein.start.shim": [("to wk 3", "days", 21.0), ("20%", "%", 20.0)],
    "protein.icar": [("0-3 wk", "days", 21.0)],
    "b.protein.start.0_6w": [("27-28%", "%", 28.0)],
    "brood.feeder.pf": [("0.6 cm/bird", "cm", 0.6)],
}
# Worked out from several rows; each has its own test below.
DERIVED = {
    ("button", "hatch_of_set_pct"),
    ("coturnix-heavy", "half_lay_day"),
    ("bobwhite", "half_lay_day"),
    ("button", "half_lay_day"),
}


def range_of(key: str, unit: str) -> tuple[float, float] | None:
    """What a reference row says in a figure's unit, lowest and highest; None if it says nothing in it."""
    row = ROWS[key]
    numbers: list[float] = []
    to_unit, factor, added = CONVERSIONS.get(row["unit"], ("", 1.0, 0.0))
    if (key, unit) in SPECIAL:
        to_unit, factor, added = unit, SPECIAL[(key, unit)], 0.0
    if to_unit == unit:
        numbers = [float(row[name]) * factor + added for name in ("low", "typical", "high") if row[name]]
    said = " ".join((row["quantity"], row["stage"], row["notes"]))
    for words, said_unit, value in SAID.get(key, []):
        assert words in said, (key, words)
        if said_unit == unit:
            numbers.append(value)
    return (min(numbers), max(numbers)) if numbers else None


def rounding(text: str) -> float:
    """Half of the last digit that is written: 0.05 for "37.5", 0.5 for "103"."""
    return 0.5 * 10.0 ** -len(text.partition(".")[2])


def written() -> list[dict[str, str]]:
    with resource("husbandry", "figures.csv").open(encoding="utf-8", newline="") as lines:
        return list(csv.DictReader(lines))


def outside_its_source(row: dict[str, str]) -> str:
    """Why a row of figures.csv does not stand on its references; "" if it does.

    Without a basis the first reference has to contain the value. In any case each end of the range has to
    lie within what all references say together.
    """
    ranges = [r for key in row["references"].split() if (r := range_of(key, row["unit"])) is not None]
    if not ranges:
        return "" if row["basis"] or not row["references"] else "no reference speaks of it"
    first = range_of(row["references"].split()[0], row["unit"])
    slack = rounding(row["value"])
    if not row["basis"]:
        if first is None:
            return "the first reference does not speak of it"
        if not first[0] - slack <= float(row["value"]) <= first[1] + slack:
            return f"{row['value']} is outside {first}"
    least, most = min(low for low, _ in ranges), max(high for _, high in ranges)
    takes_own = row["basis"] in ("common practice", "from memory")
    low, high = float(row["low"]), float(row["high"])
    if not takes_own and not (least - rounding(row["low"]) <= low and high <= most + rounding(row["high"])):
        return f"{low} to {high} is outside {least} to {most}"
    overlap = all(r[0] <= high + rounding(row["high"]) and r[1] >= low - rounding(row["low"]) for r in ranges)
    return "" if overlap else f"a reference lies wholly outside {low} to {high}"


@pytest.mark.parametrize(
    "row",
    [row for row in written() if (row["kind"], row["key"]) not in DERIVED],
    ids=lambda row: f"{row['kind']} {row['key']}",
)
def test_a_figure_stands_on_its_references(row: dict[str, str]) -> None:
    assert outside_its_source(row) == ""


@pytest.mark.parametrize(
    ("key", "change"),
    [
        ("incubation_days", {"value": "21", "high": "21"}),
        ("setter_temp_c", {"value": "38.5", "high": "38.5"}),
        ("drinker_cm", {"value": "0.5"}),  # within the range, but not what the first reference says
        ("calm_area_cm2", {"value": "3200"}),
        ("heat_off_day", {"low": "14"}),
        ("hens_per_cock", {"high": "20"}),
        ("light_hours", {"value": "18", "high": "18"}),
    ],
)
def test_a_wrong_figure_does_not_stand_on_its_references(key: str, change: dict[str, str]) -> None:
    row = next(row for row in written() if row["kind"] == "coturnix" and row["key"] == key)
    assert outside_its_source(row | change) != ""


def test_button_hatch_of_set_is_the_product_of_its_two_rates() -> None:
    # 0.91 x 0.84 = 0.7644
    assert float(ROWS["inc.k.fertility"]["typical"]) * float(ROWS["inc.k.hof"]["typical"]) / 100 == pytest.approx(76.44)
    assert handbook()["button"].value("hatch_of_set_pct") == pytest.approx(76.44, abs=0.05)


def test_heavy_and_button_hens_take_as_long_to_half_lay_as_standard_ones() -> None:
    # Standard: 8 weeks (lay.50) less day 43 (lay.first.14L, 42.8) = 13 days. Heavy 54 + 13, button 60 + 13.
    after = 7 * float(ROWS["lay.50"]["typical"]) - round(float(ROWS["lay.first.14L"]["typical"]))
    assert after == 13
    assert handbook()["coturnix-heavy"].value("half_lay_day") == 54 + after
    assert handbook()["button"].value("half_lay_day") == 60 + after


def test_bobwhite_half_lay_is_on_the_line_from_first_egg_to_the_first_week_recorded() -> None:
    # 4.06 eggs in week 29 are 58 %. From day 154 to day 203 that is 49 days, 50 / 58 of them 42.2: day 196.
    first, recorded = 7 * float(ROWS["b.first"]["typical"]), 29 * 7
    assert "weekly 4.06," in ROWS["b.lay.bayer"]["notes"]
    half = first + (recorded - first) * 50 / (4.06 / 7 * 100)
    assert handbook()["bobwhite"].value("half_lay_day") == round(half)
