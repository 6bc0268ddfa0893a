"""The season as a table: one row for each stay of each batch, with what clashes there. For those who do not look."""

from __future__ import annotations

from datetime import date, timedelta

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from quailsched.desktop.setup.page import TablePage
from quailsched.desktop.setup.tables import NO_BATCHES, NO_PLACES, Row
from quailsched.farm.records import Part
from quailsched.farm.units import count_text, day_text
from quailsched.report.clashes import title_of
from quailsched.report.plan_and_fact import fact_days
from quailsched.season.clash import Clash
from quailsched.season.clashes import Checked
from quailsched.season.occupancy import Presence
from quailsched.season.season import Season
from quailsched.words import marked, say

_HEADINGS = (
    *(marked("Batch"), marked("Place"), marked("From"), marked("To")),
    *(marked("Eggs or birds"), marked("Stages"), marked("Fact and plan"), marked("Clashes")),
)
_PARTS = {Part.HENS: marked("laying group"), Part.COCKS: marked("surplus cocks")}


class SeasonTable(QWidget):
    """Rows in order of days; the selected one is the batch that is picked on the canvas too."""

    batch_chosen = Signal(str)  # batch id
    add_asked = Signal()
    place_asked = Signal()
    change_asked = Signal(str)
    remove_asked = Signal(str)

    def __init__(self, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._today = today
        self._is_showing = False
        self.page = TablePage(marked("Season as a table"), _HEADINGS)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.page)
        self._has_places = False
        self.page.add_asked.connect(self.add_asked)
        self.page.begin_asked.connect(lambda: (self.add_asked if self._has_places else self.place_asked).emit())
        self.page.change_asked.connect(lambda key: self.change_asked.emit(_batch_in(key)))
        self.page.remove_asked.connect(lambda key: self.remove_asked.emit(_batch_in(key)))
        self.page.table.moved.connect(self._choose)

    def show_season(self, now: Checked, clashes: tuple[Clash, ...]) -> None:
        """Show the stays of ``now``; the row that was selected stays so."""
        self._is_showing = True
        self._has_places = bool(now.season.farm.places)
        text, button = NO_BATCHES if self._has_places else NO_PLACES
        self.page.empty.tell(say(text), say(button))
        self.page.show_rows(stay_rows(now.season, clashes))
        self._is_showing = False

    def show_picked(self, batch_id: str | None) -> None:
        """Select the first row of a batch, unless one of its rows is selected."""
        chosen = self.page.chosen()
        if batch_id is None or (chosen is not None and _batch_in(chosen) == batch_id):
            return
        self._is_showing = True
        self.page.choose(_key(batch_id, 0))
        self._is_showing = False

    def take_focus(self) -> None:
        self.page.take_focus()

    def _choose(self) -> None:
        chosen = self.page.chosen()
        if chosen is not None and not self._is_showing:
            self.batch_chosen.emit(_batch_in(chosen))


def _key(batch_id: str, index: int) -> str:
    return f"{batch_id}/{index}"


def _batch_in(key: str) -> str:
    return key.rpartition("/")[0]


def stay_rows(season: Season, clashes: tuple[Clash, ...]) -> list[Row]:
    """A row for each stay: batch, place, first and last day, how many, its stages, what clashes there."""
    rows = []
    of_stays: dict[tuple[str, str], list[Clash]] = {}  # by batch and place
    for clash in clashes:
        for batch_id in clash.batch_ids:
            of_stays.setdefault((batch_id, clash.place_id), []).append(clash)
    for batch in season.farm.batches:
        for presence in season.presences_of(batch):
            own = of_stays.get((batch.id, presence.place_id), ())
            there = [c for c in own if c.first < presence.end and c.last >= presence.start]
            rows.append(_row(season, presence, there))
    return rows


def _row(season: Season, presence: Presence, clashes: list[Clash]) -> Row:
    batch, place = presence.batch, season.farm.place(presence.place_id)
    last = presence.end - timedelta(days=1)
    name = batch.name
    if presence.part in _PARTS:
        name = say("{batch}, {part}", batch=name, part=say(_PARTS[presence.part]))
    most = presence.leg.most
    is_of_eggs = place.role.holds_eggs and most.eggs > 0  # chicks sit in the hatcher for a day
    many = count_text(most.eggs, "egg") if is_of_eggs or not most.birds else count_text(most.birds, "bird")
    stages = ", ".join(dict.fromkeys(say(stage) for _, _, stage in season.stages(presence)))
    told = "; ".join(dict.fromkeys(f"{title_of(season.farm, clash)} ({day_text(clash.first)})" for clash in clashes))
    facts = "; ".join(words for words in _facts(season, presence))
    cells = (name, place.name, _day(presence.start), _day(last), many, stages, facts, told)
    many_there = most.eggs if is_of_eggs else most.birds or most.eggs
    sort = (name.casefold(), place.position, presence.start, last, many_there, stages, facts, -len(clashes))
    return Row(_key(batch.id, presence.leg.index), cells, sort)


def _facts(season: Season, presence: Presence) -> list[str]:
    """What happened during a stay on another day than was planned, and up to when its birds are counted."""
    facts = fact_days(season.farm, presence.batch)
    found = [fact.words for fact in facts if presence.start <= fact.day < presence.end]
    known = season.lived(presence.batch).known_to
    last = presence.batch.start + timedelta(days=known) if known is not None else None
    if last is not None and presence.start <= last and presence.leg.most.birds:
        counted = min(last, presence.end - timedelta(days=1))
        found.append(say("counted until {day}", day=day_text(counted)))
    return found


def _day(day: date) -> str:
    return f"{day_text(day)} {day.year}"
