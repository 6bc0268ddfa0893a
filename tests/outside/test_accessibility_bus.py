"""The window as a screen reader finds it: on the real accessibility bus of a Linux desktop (AT-SPI 2).

Needs Xvfb, dbus-run-session, at-spi2-core and a Python that knows Atspi; on Debian: apt install xvfb dbus-bin
at-spi2-core python3-gi gir1.2-atspi-2.0. Where one is missing, the test is skipped and tells which.
"""

import json
import os
import shutil
import subprocess
import sys
from datetime import date
from pathlib import Path
from typing import Any

import pytest

from quailsched.session.farms import make_example

_LAUNCHERS = ("/usr/libexec/at-spi-bus-launcher", "/usr/lib/at-spi2-core/at-spi-bus-launcher")
_READERS = (sys.executable, "/usr/bin/python3")
_KNOWS_ATSPI = "import gi; gi.require_version('Atspi', '2.0'); from gi.repository import Atspi"
_NO_SCREEN = "could not load the Qt platform plugin"


def tools() -> tuple[str, str]:
    """The launcher of the bus, and a Python that can read it; skips where something is not installed."""
    for name in ("xvfb-run", "dbus-run-session"):
        if shutil.which(name) is None:
            pytest.skip(f"{name} is not installed")
    launcher = next((path for path in _LAUNCHERS if Path(path).exists()), None)
    if launcher is None:
        pytest.skip("at-spi2-core is not installed")
    for reader in _READERS:
        if Path(reader).exists() and not subprocess.run([reader, "-c", _KNOWS_ATSPI], capture_output=True).returncode:
            return launcher, reader
    pytest.skip("no Python here knows Atspi (python3-gi and gir1.2-atspi-2.0)")


def heard_on_the_bus(folder: Path, farm: Path) -> dict[str, Any]:
    launcher, reader = tools()
    homes = {name: str(folder / name.lower()) for name in ("XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_STATE_HOME")}
    start = ["xvfb-run", "-a", "-s", "-screen 0 1280x800x24", "dbus-run-session", "--"]
    script = str(Path(__file__).with_name("bus_session.py"))
    here = {**os.environ, **homes, "LC_ALL": "C.UTF-8", "PYTHONPATH": str(Path(__file__).parents[2])}
    found = folder / "found.json"
    # Nothing is piped: what the bus starts outlives it for a while, and would keep a pipe open.
    subprocess.run(
        [*start, sys.executable, script, launcher, reader, str(farm), str(found)],
        env=here, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, timeout=150, check=True,
    )  # fmt: skip
    heard: dict[str, Any] = json.loads(found.read_text(encoding="utf-8"))
    if _NO_SCREEN in heard.get("said", ""):
        pytest.skip("the libraries of Qt's xcb platform are not installed")
    assert "fault" not in heard, heard
    return heard


def test_a_screen_reader_finds_the_whole_season_and_can_work_it(tmp_path: Path) -> None:
    today = date.today()
    opened = make_example(tmp_path / "Pebble Bank.quail", today)
    farm, now = opened.farm, opened.checked
    heard = heard_on_the_bus(tmp_path, tmp_path / "Pebble Bank.quail")
    assert heard["frame"] == "Pebble Bank – Quailsched"
    assert heard["menus"] == ["Farm", "Change", "Trials", "Show", "Help"]
    assert heard["nameless"] == []
    clashes = now.since(today)
    assert heard["season"].startswith(f"{len(clashes)} clashes.")
    assert len(heard["clashes"]) == len(clashes)
    assert all(sentence for _, sentence in heard["clashes"])
    # Every stay is in the table; what is one band in the season may be more than one stay.
    stays = [(b.name, farm.place(p.place_id).name) for b in farm.batches for p in now.season.presences_of(b)]
    assert heard["table"][0][:4] == ["Batch", "Place", "From", "To"]
    assert len(heard["table"]) - 1 == len(stays)
    names = {(batch, place) for batch, place in (band.split(", ")[0].split(" in ", 1) for band in heard["bands"])}
    assert names == set(stays)
    assert [row[0] for row in heard["places"]] == ["Name", *(place.name for place in farm.places)]
    assert {"Name", "Latitude", "How sure", "A cold night in Jan"} <= set(heard["form"])
    assert heard["way"].startswith("Do it: ")
    assert heard["done"].startswith("Undo: ")
    assert heard["undone"] == "Nothing to undo"
    assert heard["code"] == 0, heard["said"]
