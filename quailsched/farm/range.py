"""The days that a farm can have. Whether a farm keeps to them is judged in ``check``."""

from __future__ import annotations

from datetime import date

EARLIEST, LATEST = date(1990, 1, 1), date(2199, 12, 31)
