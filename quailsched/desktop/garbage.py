"""When Python looks for cyclic garbage while a window is open. Not while work runs beside it: ``tasks``."""

from __future__ import annotations

import gc

# How many more objects there are before the young ones are looked through, and how often the older ones with them. A
# frame of a drag makes some thousand that are gone after it; Python's own 700 takes a twentieth of each frame.
_YOUNG, _OLDER = 20_000, 20


def settle() -> None:
    """What there is now stays for good; garbage is looked for among what comes from now on, as it grows to some MB."""
    gc.freeze()
    gc.set_threshold(_YOUNG, _OLDER, _OLDER)
