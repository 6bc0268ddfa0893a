"""Measures speed and memory and prints one table: ``python -m tests.bench [name ...]``; exits 1 if a goal is missed."""

from __future__ import annotations

import sys
from collections.abc import Mapping

from tests.bench import canvas, planner, season, starting, tables
from tests.bench.table import Bench, run

BENCHES: Mapping[str, Bench] = {
    "move": season.move,
    "fits": season.fits,
    "check": season.check,
    "memory": season.memory,
    "recount": season.recount,
    "ways": planner.ways,
    "landscape": planner.landscape,
    "tables": tables.tables,
    "frames": canvas.frames,
    "start": starting.start,
}

if __name__ == "__main__":
    sys.exit(run(BENCHES, sys.argv[1:], print))
