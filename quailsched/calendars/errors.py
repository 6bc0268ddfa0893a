"""What is told when a calendar cannot be made or written."""

from __future__ import annotations


class CalendarError(Exception):
    """A calendar that cannot be made or written. Reads as a sentence for the keeper."""
