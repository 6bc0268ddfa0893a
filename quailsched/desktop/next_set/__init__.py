"""The Next set view: on which day how many eggs can go in, and what follows from a choice."""
