"""Every change of a farm, each a pure function of the farm that returns a Change or raises FarmError."""
