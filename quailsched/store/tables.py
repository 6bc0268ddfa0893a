"""The tables of a farm file, of the present version. Imported on the first write only: SQLModel takes 300 ms.

Rows are rows: no rules live here (a table class does not check its values). Days and moments are ISO text;
units are in the names. Which record goes where is in ``layout``.
"""

from __future__ import annotations

from sqlalchemy import Column, ForeignKey, MetaData, String
from sqlmodel import Field, SQLModel


class Table(SQLModel):
    """What all tables share: their own list of tables, apart from any other program's."""

    metadata = MetaData()


class FileState(Table, table=True):
    """One row: where the history stands, and a stamp that changes with every write."""

    __tablename__ = "file_state"
    id: int = Field(primary_key=True)
    cursor: int
    stamp: str


class FarmRow(Table, table=True):
    __tablename__ = "farm"
    id: str = Field(primary_key=True)
    name: str
    units: str
    latitude: float | None
    note: str
    sure_pct: int


class NightLowRow(Table, table=True):
    """A cold night of one month; position 0 is January."""

    __tablename__ = "night_low"
    farm_id: str = Field(primary_key=True, foreign_key="farm.id", ondelete="CASCADE")
    position: int = Field(primary_key=True)
    low_c: float


class PlaceRow(Table, table=True):
    __tablename__ = "place"
    id: str = Field(primary_key=True)
    name: str
    role: str
    position: int
    egg_places: int
    floor_cm2: int
    clean_out_days: int
    outdoors: bool
    turns_itself: bool
    ready_on: str | None
    note: str
    heat_sources: int | None
    feeder_cm: int | None
    drinker_cm: int | None
    light_hours: float | None
    work_hours: float
    work_from: str | None


class PersonRow(Table, table=True):
    __tablename__ = "person"
    id: str = Field(primary_key=True)
    name: str
    is_grown_up: bool
    note: str
    build_hours: float


class SpanRow(Table, table=True):
    """Days that a place is shut or a person is away; ``end`` is the first day after."""

    __tablename__ = "span"
    id: int | None = Field(default=None, primary_key=True)
    shut_place_id: str | None = Field(default=None, foreign_key="place.id", ondelete="CASCADE", index=True)
    away_person_id: str | None = Field(default=None, foreign_key="person.id", ondelete="CASCADE", index=True)
    position: int
    start: str
    end: str
    reason: str


class BatchRow(Table, table=True):
    __tablename__ = "batch"
    id: str = Field(primary_key=True)
    name: str
    kind: str
    origin: str
    start: str
    number: int
    age_days: int
    egg_age_days: int
    note: str


class StayRow(Table, table=True):
    """Days count from the batch's day 0; ``to_day`` is the first day after, none while it is open."""

    __tablename__ = "stay"
    batch_id: str = Field(primary_key=True, foreign_key="batch.id", ondelete="CASCADE")
    position: int = Field(primary_key=True)
    # Deferred: a place that is changed is taken out and put in again within one transaction.
    place_id: str = Field(
        sa_column=Column(String, ForeignKey("place.id", deferrable=True, initially="DEFERRED"), nullable=False)
    )
    from_day: int
    to_day: int | None
    part: str
    leaving: str | None


class BatchFromRow(Table, table=True):
    """A batch that another comes from. It may have gone, so nothing refers to it."""

    __tablename__ = "batch_from"
    batch_id: str = Field(primary_key=True, foreign_key="batch.id", ondelete="CASCADE")
    position: int = Field(primary_key=True)
    from_id: str


class FigureChoiceRow(Table, table=True):
    __tablename__ = "figure_choice"
    id: str = Field(primary_key=True)
    kind: str
    key: str
    value: float | None
    reason: str


class FigurePointRow(Table, table=True):
    __tablename__ = "figure_point"
    choice_id: str = Field(primary_key=True, foreign_key="figure_choice.id", ondelete="CASCADE")
    position: int = Field(primary_key=True)
    age_days: float
    value: float


class AcceptanceRow(Table, table=True):
    """A clash that the keeper lives with. Its place and batches may have gone, so nothing refers to them."""

    __tablename__ = "acceptance"
    id: str = Field(primary_key=True)
    kind: str
    place_id: str
    amount: float
    birds: int
    days: int
    reason: str


class AcceptedBatchRow(Table, table=True):
    __tablename__ = "accepted_batch"
    acceptance_id: str = Field(primary_key=True, foreign_key="acceptance.id", ondelete="CASCADE")
    position: int = Field(primary_key=True)
    batch_id: str


class TrialRow(Table, table=True):
    __tablename__ = "trial"
    id: str = Field(primary_key=True)
    name: str
    note: str


class TrialRecordRow(Table, table=True):
    """A record as a trial has it: JSON text, or "" where the trial takes it away."""

    __tablename__ = "trial_record"
    trial_id: str = Field(primary_key=True, foreign_key="trial.id", ondelete="CASCADE")
    position: int = Field(primary_key=True)
    record_id: str
    content: str


class CountRow(Table, table=True):
    """A fact. What it is of may have gone, so nothing refers to it; ``farm.check`` looks after that."""

    __tablename__ = "count"
    id: str = Field(primary_key=True)
    sort: str
    day: str
    entered: str
    number: int
    batch_id: str
    place_id: str
    part: str
    hens: int
    cocks: int
    grams: int
    dressed_g: int
    hours: float
    hour: int | None
    cause: str | None
    person_id: str
    to_batch_id: str
    words: str
    file_name: str
    corrects: str
    is_taken_back: bool
    plan_day: str | None
    plan_number: int | None


class ChoreMarkRow(Table, table=True):
    """What was said about one chore: done, left out, put off, given to somebody."""

    __tablename__ = "chore_mark"
    id: str = Field(primary_key=True)
    key: str
    day: str
    done_on: str | None
    left_out: str
    moved_to: str | None
    person_id: str


class OwnChoreRow(Table, table=True):
    __tablename__ = "own_chore"
    id: str = Field(primary_key=True)
    name: str
    first: str
    repeat: str
    words: str
    place_id: str
    batch_id: str
    person_id: str


class JournalRow(Table, table=True):
    """One change. ``forward`` is JSON: its records before and after (see ``journal``)."""

    __tablename__ = "journal"
    number: int = Field(primary_key=True)
    label: str
    at: str
    merge_key: str
    forward: str


class PublishedRow(Table, table=True):
    __tablename__ = "published"
    uid: str = Field(primary_key=True)
    content: str
    sequence: int
    revised: str
