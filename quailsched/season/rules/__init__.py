"""The rules of the plan. Each module yields the clashes of one idea; the lists here are what is checked.

What a rule may look at is what lets a changed plan be looked at again in a moment (``season.clashes``):

- a rule of a batch: that batch, its kind, and the farm's places, people and settings; no other batch. One that is
  ``timeless`` is broken or not whatever the day on which the batch starts;
- a rule of a place: the place and a row of its slices; each clash rests on the slices within its days and on those
  that touch them. Only places of its ``roles`` can break it, and ``may_break`` tells from a spell's bounds alone
  whether its slices are worth a look;
- a rule of comings and goings: the place and a row of its spells, each clash on two that follow each other;
- a rule of the farm: anything, so it has to be quick.
"""

from collections.abc import Callable, Iterator, Sequence

from quailsched.farm.records import Batch, Place, Role
from quailsched.quick import dataclass
from quailsched.season.clash import Clash
from quailsched.season.occupancy import Slice, Spell
from quailsched.season.rules import eggs, fittings, floor, groups
from quailsched.season.rules.building import build
from quailsched.season.rules.cleanout import cleanout
from quailsched.season.rules.light import dark
from quailsched.season.rules.moving_out import cold, young
from quailsched.season.rules.notready import notready
from quailsched.season.rules.nowhere import nowhere
from quailsched.season.rules.overdue import overdue
from quailsched.season.rules.people import hands
from quailsched.season.season import Season


@dataclass(frozen=True, slots=True)
class BatchRule:
    clashes: Callable[[Season, Batch], Iterator[Clash]]
    timeless: bool = False


@dataclass(frozen=True, slots=True)
class PlaceRule:
    kind: str
    clashes: Callable[[Season, Place, Sequence[Slice]], Iterator[Clash]]
    may_break: Callable[[Season, Place, Spell], bool]
    roles: tuple[Role, ...] = tuple(Role)


SpellRule = Callable[[Season, Place, Sequence[Spell]], Iterator[Clash]]
FarmRule = Callable[[Season], Iterator[Clash]]

_MACHINES = tuple(role for role in Role if role.holds_eggs)
_PENS = tuple(role for role in Role if role.is_pen)
_FLOORS = (Role.BROODER, *_PENS)

BATCH_RULES = (
    BatchRule(eggs.stale),
    BatchRule(young, timeless=True),
    BatchRule(cold),
    BatchRule(notready),
    BatchRule(nowhere, timeless=True),
    BatchRule(groups.cocks, timeless=True),
    BatchRule(hands),
    BatchRule(overdue, timeless=True),
    BatchRule(dark),
)
PLACE_RULES = (
    PlaceRule("eggs", eggs.eggs, eggs.may_be_too_many, _MACHINES),
    PlaceRule("cabinet", eggs.cabinet, eggs.may_be_wrong, _MACHINES),
    PlaceRule("floor", floor.floor, floor.may_be_too_small, _FLOORS),
    PlaceRule("heat", fittings.heat, fittings.may_be_cold, (Role.BROODER,)),
    PlaceRule("water", fittings.water, fittings.may_be_thirsty, _FLOORS),
    PlaceRule("feeder", fittings.feeder, fittings.may_be_hungry, _FLOORS),
    PlaceRule("calm", floor.calm, floor.may_be_too_few, _PENS),
    PlaceRule("crowd", groups.crowd, groups.may_crowd, _FLOORS),
    PlaceRule("ages", groups.ages, groups.may_differ, (Role.BROODER,)),
    PlaceRule("quarantine", groups.quarantine, groups.may_mix, _FLOORS),
)
SPELL_RULES: tuple[SpellRule, ...] = (cleanout,)
FARM_RULES: tuple[FarmRule, ...] = (build,)
