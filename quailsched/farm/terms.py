"""The words that records hold as values, and the words for records: said where they are shown, ``say(place.role)``.

They stand here for ``packaging/translations.py`` to be found; what they mean is told in ``records``.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from quailsched.farm.facts import OwnChore
from quailsched.farm.records import Batch, FigureChoice, Person, Place, Record, Settings, Trial
from quailsched.words import marked, say

ROLE_WORDS: Final = (
    *(marked("setter"), marked("hatcher"), marked("cabinet")),
    *(marked("brooder"), marked("pen"), marked("grass pen")),
)
ORIGIN_WORDS: Final = (marked("own eggs"), marked("shipped eggs"), marked("bought birds"), marked("parted"))
PART_WORDS: Final = (marked("all"), marked("hens"), marked("cocks"))
LEAVING_WORDS: Final = (marked("sold"), marked("processed"))
RECORD_WORDS: Final = (
    *(marked("farm"), marked("place"), marked("person"), marked("batch")),
    *(marked("trial"), marked("name"), marked("reason")),
)
_NAMED: Final[Mapping[type[Record], str]] = {
    Settings: marked("farm {name}"),
    Place: marked("place {name}"),
    Person: marked("person {name}"),
    Batch: marked("batch {name}"),
    FigureChoice: marked("figure {name}"),
    Trial: marked("trial {name}"),
    OwnChore: marked("chore {name}"),
}


def named(cls: type[Record], name: str) -> str:
    """The words for a record with its name: "place Tub brooder". Raises KeyError for a sort without names."""
    return say(_NAMED[cls], name=name)
