"""The golden calendar files. ``python -m tests.calendars.make_golden`` writes them anew; look at the difference."""

from __future__ import annotations

from pathlib import Path

from tests.calendars.sample import TODAY, farm_chores, published_text

GOLDEN = Path(__file__).parent.parent / "golden"


def golden_files() -> dict[str, bytes]:
    """The file names and what has to be in them."""
    return {
        "calendar.ics": published_text(farm_chores())[0],
        "calendar_alarms.ics": published_text(farm_chores(), alarms_from=TODAY)[0],
        "calendar_empty.ics": published_text([])[0],
    }


if __name__ == "__main__":
    for name, data in golden_files().items():
        (GOLDEN / name).write_bytes(data)
