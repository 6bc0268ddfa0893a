"""Faults of the program itself: their details are kept in a file for whoever mends them, not shown to the keeper."""

from __future__ import annotations

import logging
import traceback

from quailsched.session.paths import data_dir
from quailsched.words import say


def told_in_words(error: BaseException) -> str:
    """Keep the details of ``error`` in the folder of the program's data; a sentence for the keeper."""
    details = "".join(traceback.format_exception(error))
    path = data_dir() / "faults.txt"
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        with path.open("a", encoding="utf-8") as file:
            file.write(details + "\n")
        where = say(" The details are in {path}.", path=path)
    except OSError:
        logging.getLogger(__name__).error("%s", details)
        where = ""
    return say("Something went wrong inside the program; what was saved stays saved.{where}", where=where)
