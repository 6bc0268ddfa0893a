"""Writes the sample of the present schema: ``python -m tests.store.make_sample``. Never over one that is there."""

from datetime import date
from itertools import count
from pathlib import Path
from uuid import UUID

from quailsched.farm.example import example_farm
from quailsched.store.farm_file import FarmFile
from quailsched.store.layout import SCHEMA_VERSION

SAMPLES = Path(__file__).parent / "samples"

if __name__ == "__main__":
    numbers = count(1)
    farm = example_farm(date(2027, 4, 6), lambda: str(UUID(int=next(numbers))))
    FarmFile.create(SAMPLES / f"schema_{SCHEMA_VERSION}.quail", farm)
