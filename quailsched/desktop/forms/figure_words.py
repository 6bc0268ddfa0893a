"""Figures and curves as they are written in forms and tables. No Qt."""

from __future__ import annotations


def points_text(points: tuple[tuple[float, float], ...]) -> str:
    """Ages and values as "0:103 10:155"."""
    return " ".join(f"{age:g}:{value:g}" for age, value in points)


def points_of(text: str) -> tuple[tuple[float, float], ...]:
    """What ``points_text`` has written. Raises ValueError if it is anything else."""
    pairs = [part.split(":") for part in text.split()]
    return tuple((float(age), float(value)) for age, value in pairs)
