"""The sizes of paper that are known, and how many weeks a chore sheet may hold. No Qt: the command line asks too."""

from __future__ import annotations

from enum import StrEnum
from typing import Final

from quailsched.farm.records import Units

LEAST_WEEKS: Final = 2
MOST_WEEKS: Final = 4
MOST_SHARP: Final = 4  # dots of a PNG to a pixel, each way
ENDINGS: Final = (".pdf", ".png", ".svg")  # of the files that can be made


class Paper(StrEnum):
    """ISO 216, and ANSI/ASME Y14.1 size A."""

    A4 = "A4"
    A3 = "A3"
    LETTER = "Letter"


def usual_paper(units: Units) -> Paper:
    """What lies in the printers of those who reckon in ``units``."""
    return Paper.LETTER if units is Units.US else Paper.A4
