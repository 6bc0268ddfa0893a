"""What a season is called."""

from __future__ import annotations

from datetime import date

from quailsched.farm.records import Farm
from quailsched.words import say


def season_name(farm: Farm, today: date) -> str:
    """ "season 2027": of the first batch of this year or later, else of this year."""
    years = [batch.start.year for batch in farm.batches if batch.start.year >= today.year]
    return say("season {year}", year=min(years, default=today.year))
