"""Chance: how many chicks a number of eggs may give. Pure, standard library only."""
