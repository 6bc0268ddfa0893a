"""Opening, making, importing and exporting farms."""

from __future__ import annotations

from datetime import date
from itertools import count
from pathlib import Path

from quailsched.farm.records import Farm, Settings, Units
from quailsched.session.open_farm import OpenFarm
from quailsched.session.paths import example_path
from quailsched.store.farm_file import FarmFile


def new_id() -> str:
    from uuid import uuid4

    return str(uuid4())


def open_farm(path: Path) -> OpenFarm:
    """Open the farm in ``path``. Raises StoreError with a sentence; the file is left as it is."""
    return OpenFarm(FarmFile.open(path))


def make_farm(path: Path, name: str, units: Units = Units.METRIC) -> OpenFarm:
    """A new, empty farm in a new file. Raises FarmError for a bad name, StoreError if the file is there."""
    from quailsched.farm.check import require_sound

    farm = require_sound(Farm(Settings(new_id(), name.strip(), units)))
    return OpenFarm(FarmFile.create(path, farm))


def make_example(path: Path, today: date) -> OpenFarm:
    """The example farm around ``today`` in a new file. Raises StoreError if the file is there.

    Raises FarmError for a day so early or late that its batches lie outside the days of a farm.
    """
    from quailsched.farm.check import require_sound
    from quailsched.farm.example import example_farm

    return OpenFarm(FarmFile.create(path, require_sound(example_farm(today, new_id))))


def home_example(today: date) -> OpenFarm:
    """The example that a first start shows, kept among the program's own data.

    As long as nobody has changed it, it is made anew in each week, so that its season lies around ``today``.
    """
    path = example_path()
    if path.exists():
        kept = open_farm(path)
        is_changed = kept.undo_label is not None or kept.redo_label is not None
        if is_changed or _lies_around(kept.plan, today):
            return kept
        path.unlink()
    path.parent.mkdir(parents=True, exist_ok=True)
    return make_example(path, today)


def _lies_around(example: Farm, today: date) -> bool:
    """Whether an example made today would have the same days."""
    from quailsched.farm.example import example_farm

    ids = map(str, count())  # any, as they are not kept
    fresh = example_farm(today, lambda: next(ids))
    return [batch.start for batch in example.batches] == [batch.start for batch in fresh.batches]


def export_farm(opened: OpenFarm, path: Path) -> None:
    """Everything of a farm as one JSON document. Raises StoreError, also if another sort of file is there."""
    from quailsched.session.replacing import DOCUMENT, require_replaceable
    from quailsched.store.document_file import write_document

    require_replaceable(path, DOCUMENT)
    write_document(path, opened.plan, opened.file.published().values())


def import_farm(document: Path, path: Path) -> OpenFarm:
    """A farm file from a document. Raises FarmError with every fault, StoreError; then no file is left."""
    from quailsched.store.document_file import load_document

    read = load_document(document)
    return OpenFarm(FarmFile.create(path, read.farm, read.published))
