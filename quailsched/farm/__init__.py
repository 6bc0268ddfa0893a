"""What things are: frozen records of a farm, and what makes a farm sound. Nothing here is derived."""
