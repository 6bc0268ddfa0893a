"""What is to be done on which day, worked out from the season. Nothing here is stored."""
