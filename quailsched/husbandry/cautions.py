"""Short cautions for steps that can hurt somebody, each with its source. Local rules come first."""

from __future__ import annotations

from collections.abc import Callable

from quailsched.husbandry.handbook import sources
from quailsched.husbandry.source import Source
from quailsched.quick import dataclass
from quailsched.words import marked, say


@dataclass(frozen=True, slots=True)
class Caution:
    """One or two sentences for the keeper, in our own words."""

    topic: str
    text: str
    source: Source


# safe.lamp.dist: 18 inches by one of its sources, 3 feet by the other.
_LAMP_CM = {"least": 46.0, "better": 91.0}
# topic: (key of the reference row, text).
_TEXTS = {
    "heat_lamp": (
        "safe.lamp.dist",
        marked(
            "Heat lamps start fires: hang the lamp by a chain and a second cord, never by a clamp alone, at least"
            " {least} from bedding and better {better} from anything that burns."
        ),
    ),
    "hands": (
        "safe.hands",
        marked(
            "Healthy birds can carry Salmonella: wash hands with soap after touching birds, eggs or bedding,"
            " and watch children."
        ),
    ),
    "dust": (
        "safe.dust",
        marked("Poultry dust and ammonia harm lungs: air the place first, wear a mask, damp the bedding."),
    ),
    "processing": (
        "safe.slaughter",
        marked(
            "Only somebody trained kills birds, in a way that leaves them insensible until dead; knives cut. A"
            " licence may be needed: local rules come first."
        ),
    ),
    "food_eggs": (
        "safe.sale.eggs",
        marked(
            "Collect often, throw cracked eggs away, keep eggs cool. Rules on selling eggs differ from place to"
            " place: ask the local authority."
        ),
    ),
    "food_meat": (
        "safe.sale.meat",
        marked(
            "Chill carcasses at once and keep them cold. Rules on processing and selling meat differ from place"
            " to place: ask the local authority."
        ),
    ),
    "bird_flu": (
        "safe.ai",
        marked(
            "Bird flu: keep wild birds off feed and water, keep new birds apart, and report sudden deaths as"
            " local rules ask."
        ),
    ),
    "sick": ("safe.ai", marked("Ask a vet, not a program, about sick birds; keep them apart and see to them last.")),
    "permit": (
        "safe.gamebird.permit",
        marked("Keeping native game birds usually needs a permit: ask the local authority before any come."),
    ),
}

TOPICS = tuple(_TEXTS)


def caution(topic: str, length_text: Callable[[float], str] = "{:g} cm".format) -> Caution:
    """The caution on a topic; ``length_text`` puts centimetres into the words of a farm's units.

    Raises KeyError for a topic that is not among ``TOPICS``.
    """
    key, text = _TEXTS[topic]
    lengths = {name: length_text(cm) for name, cm in _LAMP_CM.items()} if topic == "heat_lamp" else {}
    return Caution(topic, say(text, **lengths), sources()[key])
