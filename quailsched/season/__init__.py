"""What follows from a farm: days, birds, occupancy, clashes, when places free up. Pure; today is an argument."""
