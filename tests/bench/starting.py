"""Benches of the window's start on the example farm against a bare window with one label, in turns in one run."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from statistics import median
from time import monotonic

from tests.bench.table import Row

_TURNS = 7
_MOST_TIMES, _MOST_MB, _MOST_STALL_MS = 2.0, 110.0, 20.0
_BARE_MS = 95.0  # of the bare window on the machine for which the goal of a turn is meant

Told = dict[str, float]


def start() -> Iterator[Row]:
    """From the call of the process to the first painted season, memory after it, and the longest turn of the window's
    thread in the seconds after. The example farm is there already: its making is the cost of the first start alone."""
    with tempfile.TemporaryDirectory() as home:
        _told("season", home)
        pairs = [(_told("label", home), _told("season", home)) for _ in range(_TURNS)]
    bare, season = (median(pair[n]["shown_ms"] for pair in pairs) for n in (0, 1))
    times = season / bare
    texts = (f"{season:,.0f} ms", f"{bare:,.0f} ms", f"{times:.1f}")
    yield Row(
        "start to the first painted season", *texts, f"at most {_MOST_TIMES:g} bare windows", times <= _MOST_TIMES
    )
    most, label = (max(pair[n]["memory_mb"] for pair in pairs) for n in (1, 0))
    texts = (f"{most:.0f} MB", f"{label:.0f} MB", f"{most / label:.1f}")
    yield Row("memory of the window", *texts, f"under {_MOST_MB:g} MB", most < _MOST_MB)
    stall = median(pair[1]["stall_ms"] for pair in pairs)
    part, most_part = stall / bare, _MOST_STALL_MS / _BARE_MS
    texts = (f"{stall:.1f} ms", f"{bare:,.0f} ms", f"{part:.2f}")
    goal = f"not over {_MOST_STALL_MS:g} ms (ratio {most_part:.2f})"
    yield Row("longest turn after the start, untouched", *texts, goal, part <= most_part)


def _told(what: str, home: str) -> Told:
    environment = {**os.environ, "QT_QPA_PLATFORM": "offscreen", "HOME": home}
    environment.pop("PYTHONDONTWRITEBYTECODE", None)  # a second start finds everything compiled
    environment |= {f"XDG_{name}_HOME": home for name in ("DATA", "CONFIG", "STATE", "CACHE")}
    command = [sys.executable, "-m", "tests.bench.start_once", what, str(monotonic())]
    done = subprocess.run(command, env=environment, check=True, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL)
    told: Told = json.loads(done.stdout)
    return told
