"""Farm files as version 1 wrote them, made from files of the present version. The lists are by hand on purpose."""

from __future__ import annotations

import json
import sqlite3
from contextlib import closing
from dataclasses import replace
from pathlib import Path

from quailsched.farm.records import Farm

_COLUMNS = {
    "farm": ("sure_pct",),
    "place": ("heat_sources", "feeder_cm", "drinker_cm", "light_hours", "work_hours", "work_from"),
    "person": ("build_hours",),
}
_TAGS = {"settings": "farm"}  # a tag in the history is the name of the table, but for this one
_LISTS = {"batch": ("from_ids",)}  # fields of records in the history that are tables of their own
_TABLES = (
    *("accepted_batch", "acceptance", "trial_record", "trial"),
    *("batch_from", "count", "chore_mark", "own_chore"),
)


def farm_1(farm: Farm) -> Farm:
    """What version 1 could hold of ``farm``."""
    return Farm(
        replace(farm.settings, sure_pct=90),
        tuple(
            replace(
                place,
                heat_sources=None,
                feeder_cm=None,
                drinker_cm=None,
                light_hours=None,
                work_hours=0.0,
                work_from=None,
            )
            for place in farm.places
        ),
        tuple(replace(person, build_hours=0.0) for person in farm.people),
        tuple(replace(batch, from_ids=()) for batch in farm.batches),
        farm.choices,
    )


def make_version_1(path: Path) -> None:
    """Takes out of a farm file what came after version 1; its history must touch no record of a later one."""
    with closing(sqlite3.connect(path)) as db:
        for number, text in list(db.execute("SELECT number, forward FROM journal")):
            forward = json.loads(text)
            for touch in forward["touches"]:
                for record in filter(None, touch.values()):
                    del record["version"]
                    for field in _LISTS.get(record["record"], ()):
                        del record[field]
                    for field in _COLUMNS.get(_TAGS.get(record["record"], record["record"]), ()):
                        del record[field]
            db.execute("UPDATE journal SET forward = ? WHERE number = ?", (json.dumps(forward), number))
        for table, columns in _COLUMNS.items():
            for column in columns:
                db.execute(f"ALTER TABLE {table} DROP COLUMN {column}")
        for table in _TABLES:
            db.execute(f'DROP TABLE "{table}"')
        db.execute("PRAGMA user_version = 1")
        db.commit()
        db.execute("VACUUM")
