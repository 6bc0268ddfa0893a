"""Benches of the season canvas: a frame of a drag (edit, check, layout, paint) and of a scroll, at 1x and 2x."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from collections.abc import Iterator, Sequence
from statistics import quantiles

from tests.bench.table import Row
from tests.bench.timing import Times

_GOALS_MS = {("drag", 1): 8.0, ("drag", 2): 16.6, ("scroll", 1): 4.0, ("scroll", 2): None}


def frames() -> Iterator[Row]:
    """500 batches over ten years, 4 pixels a day, 1400 by 900 pixels, drawn without a screen."""
    for scale in (1, 2):
        told = _told(scale)
        for what in ("drag", "scroll"):
            pairs = told[what]
            times = Times(tuple(frame for _, frame in pairs), tuple(floor for floor, _ in pairs))
            yield times.row(f"frame of a {what} at {scale}x: 95th of 100", _GOALS_MS[what, scale], p95)


def p95(times: Sequence[float]) -> float:
    return quantiles(times, n=20, method="inclusive")[18]


def _told(scale: int) -> dict[str, list[tuple[float, float]]]:
    environment = {**os.environ, "QT_QPA_PLATFORM": "offscreen", "QT_SCALE_FACTOR": str(scale)}
    command = [sys.executable, "-m", "tests.bench.canvas_frames"]
    done = subprocess.run(command, env=environment, check=True, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL)
    told: dict[str, list[tuple[float, float]]] = json.loads(done.stdout)
    return told
