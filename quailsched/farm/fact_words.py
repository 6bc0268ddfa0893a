"""The words for counts, their fields and causes: said where they are shown."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from quailsched.farm.facts import Count
from quailsched.farm.units import day_text
from quailsched.words import marked, say

SORT_WORDS: Final = (
    *(marked("set"), marked("clear"), marked("quit"), marked("pipped"), marked("hatched"), marked("counted")),
    *(marked("died"), marked("moved"), marked("feathered"), marked("sexed"), marked("weighed"), marked("sold")),
    *(marked("processed"), marked("parted"), marked("joined"), marked("laid"), marked("feed bought"), marked("fed")),
    *(marked("bedding"), marked("built"), marked("hours"), marked("note"), marked("photo")),
)
CAUSE_WORDS: Final = (
    *(marked("unknown"), marked("weak"), marked("chilled"), marked("smothered"), marked("drowned"), marked("hurt")),
    *(marked("fought"), marked("taken"), marked("sick"), marked("culled"), marked("missing")),
)
_FIELDS: Final[Mapping[str, str]] = {
    "number": marked("number"),
    "hens": marked("hens"),
    "cocks": marked("cocks"),
    "grams": marked("grams"),
    "dressed_g": marked("grams dressed"),
    "hours": marked("hours"),
    "hour": marked("hour"),
    "words": marked("words"),
    "file_name": marked("file"),
    "batch_id": marked("batch"),
    "to_batch_id": marked("other batch"),
    "place_id": marked("place"),
    "person_id": marked("person"),
    "cause": marked("cause"),
    "part": marked("which birds"),
}


def count_words(count: Count) -> str:
    """ "died on 3 May", as faults name a count."""
    return say("{sort} on {day}", sort=say(count.sort), day=day_text(count.day))


def field_words(field: str) -> str:
    """The words for a field of a count. Raises KeyError for one that has none."""
    return say(_FIELDS[field])
