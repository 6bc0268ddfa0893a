"""Opening, making, importing and exporting farms."""

from __future__ import annotations

from datetime import date
from pathlib import Path

from quailsched.farm.records import Farm, Settings, Units
from quailsched.session.open_farm import OpenFarm
from quailsched.session.paths import example_path, last_farm
from quailsched.store.errors import StoreError
from quailsched.store.farm_file import FarmFile


def new_id() -> str:
    from uuid import uuid4

    return str(uuid4())


def open_farm(path: Path) -> OpenFarm:
    """Open the farm in ``path``. Raises StoreError with a sentence; the file is left as it is."""
    return OpenFarm(FarmFile.open(path))


def farm_ahead(file: Path | None, today: date) -> OpenFarm | None:
    """The farm that the window is going to show: ``file``, or that of last time. None if there is none, it cannot be
    opened any more, or it is an example of another week: a word is to be said then, and there may be no language yet.

    Raises StoreError for a ``file`` that cannot be opened: it is told in the terminal, which is English.
    """
    if file is not None:
        return open_farm(file)
    kept = last_farm()
    try:
        opened = None if kept is None else open_farm(kept)
    except StoreError:
        return None
    if opened is not None and kept == example_path() and _is_of_another_week(opened, today):
        return None
    return opened


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
        if not _is_of_another_week(kept, today):
            return kept
        path.unlink()
    path.parent.mkdir(parents=True, exist_ok=True)
    return make_example(path, today)


def _is_of_another_week(example: OpenFarm, today: date) -> bool:
    """Whether it was made in another week than that of ``today``, and nobody has changed it since."""
    from quailsched.farm.example import first_day

    is_changed = example.undo_label is not None or example.redo_label is not None
    return not is_changed and example.plan.batches[0].start != first_day(today)


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
