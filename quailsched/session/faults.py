"""The faults that a use case may raise, for those who do not know the store or the calendar."""

from quailsched.calendars.errors import CalendarError
from quailsched.farm.faults import FarmError, Fault
from quailsched.store.errors import StoreError

__all__ = ["CalendarError", "FarmError", "Fault", "StoreError"]
