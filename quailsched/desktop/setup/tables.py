"""The tables of the Setup view as rows of text, from the farm and its season. No Qt."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta
from math import inf

from quailsched.farm.kinds import kind_in
from quailsched.farm.records import Farm
from quailsched.farm.units import count_text, day_text, span_text
from quailsched.husbandry.figure import Curve, Figure
from quailsched.quick import dataclass
from quailsched.report.clashes import said_severity, title_of
from quailsched.report.figures import unit_text
from quailsched.report.places import place_line, room_text
from quailsched.season.clash import Clash
from quailsched.season.clashes import Checked
from quailsched.season.freeing import place_states
from quailsched.season.occupancy import room_of
from quailsched.season.season import Season
from quailsched.season.severity import Severity
from quailsched.words import marked, say, value_text


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
    empty: str  # what is said where there are no rows
    begin: str  # the words of the button that makes the first


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
            say(state.place.role),
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
        grown = say("grown-up") if person.is_grown_up else say("young person")
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
        stage = ", ".join(dict.fromkeys(say(season.stage(p, today)) for _, p in here))
        own = [clash for clash in clashes if batch.id in clash.batch_ids]
        what = count_text(batch.number, "egg" if batch.origin.is_eggs else "bird")
        rows.append(
            _row(
                batch.id,
                batch.name,
                say(season.kind(batch).name),
                (_day(batch.start), batch.start),
                (what, batch.number),
                (_day(hatch) if batch.origin.is_eggs else "", hatch),
                (_day(out) if out else "", out or date.max),
                where or (say("not yet") if batch.start > today else say("gone")),
                stage,
                _clashes_cell(season.farm, own),
            )
        )
    return rows


_GROUPS = {
    Severity.STOPS.value: marked("Stops the plan"),
    Severity.WATCH.value: marked("Watch"),
    "accepted": marked("Accepted"),
}


def _clashes_cell(farm: Farm, clashes: list[Clash]) -> tuple[str, tuple[int, ...]]:
    """Their titles after how grave they are, the gravest first; sorted by how many of each there are."""
    titles: dict[str, list[str]] = {said: [] for said in (*Severity, "accepted")}
    for clash in clashes:
        titles[said_severity(farm, clash)].append(title_of(farm, clash))
    told = [
        say("{group}: {clashes}", group=say(_GROUPS[said]), clashes="; ".join(found))
        for said, found in titles.items()
        if found
    ]
    return ". ".join(told) or say("none"), tuple(len(found) for found in titles.values())


def figure_rows(season: Season, kind_id: str) -> list[Row]:
    kind = kind_in(season.farm, kind_id)
    rows = []
    known: list[Figure | Curve] = [*kind.figures.values(), *kind.curves.values()]
    for one in known:
        if isinstance(one, Figure):
            value = (value_text(one.value), (0, one.value))
            span = (f"{value_text(one.low)} – {value_text(one.high)}" if one.low != one.high else "", one.low)
        else:
            value = (say("a curve, {shape}", shape=say(one.shape)), (1, 0.0))
            span = ("", inf)
        year = ", ".join(dict.fromkeys(source.year_text for source in one.sources if source.year))
        own = say("your own") if one.is_replaced else ""
        source = "; ".join(dict.fromkeys(source.text for source in one.sources)) or one.basis
        rows.append(
            _row(
                one.key, say(one.label), value, span, unit_text(one.unit), own, say(one.confidence.value), source, year
            )
        )
    return rows


def _day(day: date) -> str:
    return f"{day_text(day)} {day.year}"


NO_BATCHES = (
    marked("No batches yet. Say how many eggs go in and when: the days follow by themselves."),
    marked("Add a batch"),
)
NO_PLACES = (
    marked("No batches yet, and no places for them. Begin with what holds your eggs, then the brooder and the pen."),
    marked("Add a place"),
)
TABLES = (
    Table(
        marked("Places"),
        (marked("Name"), marked("What"), marked("Room"), marked("Clean-out"), marked("Now and next")),
        place_rows,
        marked("No places yet. Begin with what holds your eggs, then the brooder and the pen."),
        marked("Add a place"),
    ),
    Table(
        marked("People"),
        (marked("Name"), marked("Who"), marked("Away"), marked("Note")),
        person_rows,
        marked("Nobody yet. Tell who does the chores, and when they are away: work that needs hands is checked."),
        marked("Add a person"),
    ),
    Table(
        marked("Batches"),
        (
            *(marked("Name"), marked("Kind"), marked("Set on"), marked("Number"), marked("Hatch")),
            *(marked("Move out"), marked("Where now"), marked("Stage"), marked("Clashes ahead")),
        ),
        batch_rows,
        *NO_BATCHES,
    ),
)
FIGURE_HEADINGS = (
    marked("Figure"),
    marked("Value"),
    marked("Range"),
    marked("Unit"),
    marked("Yours"),
    marked("How sure"),
    marked("Source"),
    marked("Year"),
)
