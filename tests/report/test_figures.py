"""The listing of figures names value, range, unit, source and year, and marks what the farm replaced."""

from __future__ import annotations

import json

from quailsched.husbandry.handbook import handbook, kind_with
from quailsched.report.figures import figures_json, figures_text

KINDS = list(handbook().values())
COTURNIX = handbook()["coturnix"]


def test_the_listing_shows_value_range_unit_confidence_source_and_year() -> None:
    text = figures_text([COTURNIX])
    assert "  Day of lockdown: turning stops, into the hatcher: 15 days (14 to 15)\n" in text
    assert "[published] Romao et al., LRRD 21(3): day 15 = 360 h, 2009" in text
    assert "  Rest of shipped eggs before setting: 1 day (0.25 to 2)\n      [common practice]\n" in text
    assert "35 at 0 d, 31.5 at 7 d, 28 at 14 d, 24.5 at 21 d (°C, in steps)" in text
    assert "A = 242.1, b = 3.325, k = 0.06737" in text


def test_units_and_missing_years_are_words_not_those_of_the_tables() -> None:
    words = " ".join(figures_text(KINDS).split()).replace(",", " ").split()
    assert not {"degC", "degF", "cm2", "n.d."} & set(words)
    assert "Turns a day by hand: 3 (2 to 3)" in figures_text([COTURNIX])  # a count wants no unit
    assert "°C" in words
    undated = {s.year_text for f in COTURNIX.figures.values() for s in f.sources if s.year == "n.d."}
    assert undated == {"no date"}


def test_every_figure_and_curve_of_every_kind_is_listed() -> None:
    text = " ".join(figures_text(KINDS).split())
    for kind in KINDS:
        assert f"{kind.name} ({kind.latin})" in text
        items = {item.label: item.note for item in kind.figures.values()}
        items |= {item.label: item.note for item in kind.curves.values()}
        for label, note in items.items():
            assert label in text
            assert note in text


def test_no_line_is_longer_than_the_width() -> None:
    for width in (60, 100):
        assert max(len(line) for line in figures_text(KINDS, width).splitlines()) <= width


def test_a_farms_own_values_are_marked_beside_ours() -> None:
    own = kind_with(COTURNIX, (("lockdown_day", 14.0, ()), ("floor_cm2", None, ((0.0, 200.0), (42.0, 400.0)))))
    text = " ".join(figures_text([own], 2000).split())
    assert "* Day of lockdown: turning stops, into the hatcher: 14 days, this farm's own in place of 15 days" in text
    assert (
        "* Floor for each bird by age: 200 at 0 d, 400 at 42 d (cm², straight lines between), this farm's own" in text
    )
    assert "in place of 103 at 0 d, 155 at 10 d, 310 at 42 d" in text
    assert text.count("* ") == 2


def test_json_holds_all_fields_in_a_stable_order() -> None:
    first, again = json.dumps(figures_json(KINDS)), json.dumps(figures_json(KINDS))
    assert first == again
    kinds = json.loads(first)["kinds"]
    assert [kind["id"] for kind in kinds] == list(handbook())
    for plain, kind in zip(kinds, KINDS, strict=True):
        assert [f["key"] for f in plain["figures"]] == list(kind.figures)
        assert [c["key"] for c in plain["curves"]] == list(kind.curves)
        for fields in plain["figures"]:
            figure = kind.figures[fields["key"]]
            assert (fields["value"], fields["low"], fields["high"]) == (figure.value, figure.low, figure.high)
            assert fields["confidence"] == figure.confidence
            assert [source["url"] for source in fields["sources"]] == [source.url for source in figure.sources]


def test_json_gives_points_and_parameters_of_curves() -> None:
    curves = {curve["key"]: curve for curve in figures_json([COTURNIX])["kinds"][0]["curves"]}
    assert curves["floor_cm2"]["points"] == [[0, 103], [10, 155], [42, 310]]
    assert curves["floor_cm2"]["shape"] == "linear"
    assert curves["weight_g"]["parameters"] == {"A": 242.1, "b": 3.325, "k": 0.06737, "until": 42}


def test_json_marks_a_farms_own_value() -> None:
    own = kind_with(COTURNIX, (("sex_day", 20.0, ()),))
    figures = {figure["key"]: figure for figure in figures_json([own])["kinds"][0]["figures"]}
    assert figures["sex_day"]["is_replaced"]
    assert figures["sex_day"]["confidence"] == "the farm's own"
    assert not figures["out_day"]["is_replaced"]
