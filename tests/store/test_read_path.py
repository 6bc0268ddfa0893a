"""Opening and reading must not wait for SQLModel: the window is up first."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

from quailsched.store.farm_file import FarmFile
from tests.store.sample import PUBLISHED, small_farm

_READ = """
import sys
from pathlib import Path
from quailsched.store.document import export_document
from quailsched.store.farm_file import FarmFile

file = FarmFile.open(Path(sys.argv[1]))
assert file.farm.batches
export_document(file.farm, file.published().values())
file.history(), file.undo_label
heavy = {"sqlmodel", "sqlalchemy", "pydantic"} & sys.modules.keys()
print(sorted(heavy))
"""


def test_reading_imports_the_standard_library_only(tmp_path: Path) -> None:
    path = tmp_path / "farm.quail"
    FarmFile.create(path, small_farm(), PUBLISHED)
    done = subprocess.run([sys.executable, "-c", _READ, str(path)], capture_output=True, text=True, check=False)
    assert (done.stdout, done.stderr) == ("[]\n", "")


def test_reading_writes_nothing(tmp_path: Path) -> None:
    path = tmp_path / "farm.quail"
    FarmFile.create(path, small_farm(), PUBLISHED)
    before = path.stat()
    file = FarmFile.open(path)
    file.published()
    assert (path.stat().st_mtime_ns, path.stat().st_size) == (before.st_mtime_ns, before.st_size)
    assert [item.name for item in tmp_path.iterdir()] == ["farm.quail"]
