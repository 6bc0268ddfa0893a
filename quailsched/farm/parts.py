"""Which birds of a batch are meant."""

from __future__ import annotations

from enum import StrEnum


class Part(StrEnum):
    """Which birds of a batch a stay holds, or a count is about."""

    ALL = "all"
    HENS = "hens"  # the laying group: the hens and the cocks kept with them
    COCKS = "cocks"  # the surplus cocks
