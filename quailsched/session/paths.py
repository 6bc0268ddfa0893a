"""Where the program keeps its own things (XDG base directory specification 0.8) and what it remembers."""

from __future__ import annotations

import json
import os
import sys
from contextlib import suppress
from pathlib import Path
from typing import Any


def _base(variable: str, *fallback: str) -> Path:
    """The folder of an XDG variable; a relative one is ignored, as the specification says."""
    value = os.environ.get(variable, "")
    if value and Path(value).is_absolute():
        return Path(value)
    if sys.platform == "win32":
        return Path(os.environ.get("APPDATA", str(Path.home())))
    return Path.home().joinpath(*fallback)


def data_dir() -> Path:
    return _base("XDG_DATA_HOME", ".local", "share") / "quailsched"


def example_path() -> Path:
    return data_dir() / "Pebble Bank.quail"


def _memory_path() -> Path:
    return _base("XDG_CONFIG_HOME", ".config") / "quailsched" / "remembered.json"


def remembered() -> dict[str, Any]:
    """What was remembered by ``remember``; empty if there is nothing that can be read."""
    try:
        memory = json.loads(_memory_path().read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return {}
    return memory if isinstance(memory, dict) else {}


def remember(**values: object) -> None:
    """Keep ``values`` for the next start (window place, last farm). Losing them must never stop the program."""
    path, before = _memory_path(), remembered()
    memory = {**before, **values}
    if memory == before:
        return
    with suppress(OSError):
        path.parent.mkdir(parents=True, exist_ok=True)
        beside = path.with_suffix(".new")
        beside.write_text(json.dumps(memory, indent=2), encoding="utf-8")
        os.replace(beside, path)


def last_farm() -> Path | None:
    """The farm that was open last, if its file still stands."""
    name = remembered().get("last_farm")
    path = Path(name) if isinstance(name, str) else None
    return path if path is not None and path.is_file() else None
