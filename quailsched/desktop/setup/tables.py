"""The tables of the Setup view as rows of text, from the farm and its season. No Qt."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, timedelta
from math import inf

from quailsched.farm.kinds import kind_in
from quailsched.farm.records import Farm
from quailsched.farm.units import count_text, day_text, span_text
from quailsched.husbandry.figure import Curve, Figure
from quailsched.report.clashes import said_severity, title_of
from quailsched.report.figures import unit_text
from quailsched.report.places import place_line, room_text
from quailsched.season.clash import Clash
from quailsched.season.clashes import Checked
from quailsched.season.freeing import place_states
from quailsched.season.occupancy import room_of
from quailsched.season.season import Season
from quailsched.season.severity import Severity


@dataclass(frozen=True, slots=True)
class Row:
    """One line: what it is about (an id or a key), its cells, and what they sort by where that is not their text."""

    key: str
    cells: tuple[str, ...]
    sort: tuple[object, ...]


@dataclass(frozen=True, slots=True)
class Table:
    """A page of the Setup view."""

    title: str
    headings: tuple[str, ...]
    rows: Callable[[Checked, date], list[Row]]
    empty: str


def _row(key: str, *cells: str | tuple[str, object]) -> Row:
    """A row of cells; a pair is a text and what it sorts by."""
    texts = tuple(cell if isinstance(cell, str) else cell[0] for cell in cells)
    return Row(key, texts, tuple(cell.casefold() if isinstance(cell, str) else cell[1] for cell in cells))


def place_rows(now: Checked, today: date) -> list[Row]:
    season = now.season
    return [
        _row(
            state.place.id,
            state.place.name,
            state.place.role.value,
            (room_text(season.farm, state.place, room_of(state.place)), room_of(state.place)),
            (count_text(state.place.clean_out_days, "day"), state.place.clean_out_days),
            place_line(season.farm, state, today).split("): ", 1)[1],
        )
        for state in place_states(season, today, weeks=1)
    ]


def person_rows(now: Checked, today: date) -> list[Row]:
    rows = []
    for person in now.season.farm.people:
        ahead = [span for span in person.away if span.end > today]
        away = "; ".join(span_text(s.start, s.last_day, today) + (f" ({s.reason})" if s.reason else "") for s in ahead)
        grown = "grown-up" if person.is_grown_up else "young person"
        rows.append(_row(person.id, person.name, grown, (away, ahead[0].start if ahead else date.max), person.note))
    return rows


def batch_rows(now: Checked, today: date) -> list[Row]:
    """The season in words: the table that says what the canvas shows."""
    season, clashes = now.season, now.since(today)
    rows = []
    for batch in season.farm.batches:
        days = season.days(batch)
        hatch = batch.start + timedelta(days=days.hatch)
        out = min((p.start for place, p in season.stays_of(batch) if place.role.is_pen), default=None)
        here = [(place, p) for place, p in season.stays_of(batch) if p.start <= today < p.end]
        where = ", ".join(dict.fromkeys(place.name for place, _ in here))
        stage = ", ".join(dict.fromkeys(season.stage(p, today).value for _, p in here))
        own = [clash for clash in clashes if batch.id in clash.batch_ids]
        what = count_text(batch.number, "egg" if batch.origin.is_eggs else "bird")
        rows.append(
            _row(
                batch.id,
                batch.name,
                season.kind(batch).name,
                (_day(batch.start), batch.start),
                (what, batch.number),
                (_day(hatch) if batch.origin.is_eggs else "", hatch),
                (_day(out) if out else "", out or date.max),
                where or ("not yet" if batch.start > today else "gone"),
                stage,
                _clashes_cell(season.farm, own),
            )
        )
    return rows


def _clashes_cell(farm: Farm, clashes: list[Clash]) -> tuple[str, tuple[int, ...]]:
    """Their titles after how grave they are, the gravest first; sorted by how many of each there are."""
    titles: dict[str, list[str]] = {said: [] for said in (*Severity, "accepted")}
    for clash in clashes:
        titles[said_severity(farm, clash)].append(title_of(farm, clash))
    told = [f"{said.capitalize()}: {'; '.join(found)}" for said, found in titles.items() if found]
    return ". ".join(told) or "none", tuple(len(found) for found in titles.values())


def figure_rows(season: Season, kind_id: str) -> list[Row]:
    kind = kind_in(season.farm, kind_id)
    rows = []
    known: list[Figure | Curve] = [*kind.figures.values(), *kind.curves.values()]
    for one in known:
        if isinstance(one, Figure):
            value = (f"{one.value:g}", (0, one.value))
            span = (f"{one.low:g} – {one.high:g}" if one.low != one.high else "", one.low)
        else:
            value = (f"a curve, {one.shape}", (1, 0.0))
            span = ("", inf)
        year = ", ".join(dict.fromkeys(source.year_text for source in one.sources if source.year))
        own = "your own" if one.is_replaced else ""
        source = "; ".join(dict.fromkeys(source.text for source in one.sources)) or one.basis
        rows.append(_row(one.key, one.label, value, span, unit_text(one.unit), own, one.confidence.value, source, year))
    return rows


def _day(day: date) -> str:
    return f"{day_text(day)} {day.year}"


TABLES = (
    Table(
        "Places", ("Name", "What", "Room", "Clean-out", "Now and next"), place_rows,
        "No places yet. Add a setter, a brooder and a pen.",
    ),
    Table("People", ("Name", "Who", "Away", "Note"), person_rows, "Nobody yet. Add who does the chores."),
    Table(
        "Batches",
        ("Name", "Kind", "Set on", "Number", "Hatch", "Move out", "Where now", "Stage", "Clashes ahead"),
        batch_rows,
        "No batches yet. Add places first, then the first eggs.",
    ),
)  # fmt: skip
FIGURE_HEADINGS = ("Figure", "Value", "Range", "Unit", "Yours", "How sure", "Source", "Year")
