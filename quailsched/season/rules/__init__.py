"""The rules of the plan. Each module yields the clashes of one idea; the lists here are what is checked.

What a rule may look at is what lets a changed plan be looked at again in a moment (``season.clashes``):

- a rule of a batch: that batch, its kind, and the farm's places, people and settings; no other batch;
- a rule of a place: the place and a row of its slices; each clash rests on the slices within its days, on those that
  touch them, and (clean-out) on those nearer than the place's clean-out days;
- a rule of the farm: anything, so it has to be quick.
"""

from collections.abc import Callable, Iterator, Sequence

from quailsched.farm.records import Batch, Place
from quailsched.season.clash import Clash
from quailsched.season.occupancy import Slice
from quailsched.season.rules.building import build
from quailsched.season.rules.cleanout import cleanout
from quailsched.season.rules.eggs import cabinet, eggs, stale
from quailsched.season.rules.fittings import feeder, heat, water
from quailsched.season.rules.floor import calm, floor
from quailsched.season.rules.groups import ages, cocks, crowd, quarantine
from quailsched.season.rules.light import dark
from quailsched.season.rules.moving_out import cold, young
from quailsched.season.rules.notready import notready
from quailsched.season.rules.nowhere import nowhere
from quailsched.season.rules.overdue import overdue
from quailsched.season.rules.people import hands
from quailsched.season.season import Season

BatchRule = Callable[[Season, Batch], Iterator[Clash]]
PlaceRule = Callable[[Season, Place, Sequence[Slice]], Iterator[Clash]]
FarmRule = Callable[[Season], Iterator[Clash]]

BATCH_RULES: tuple[BatchRule, ...] = (stale, young, cold, notready, nowhere, cocks, hands, overdue, dark)
PLACE_RULES: tuple[PlaceRule, ...] = (
    eggs, cabinet, floor, heat, water, feeder, calm, crowd, ages, quarantine, cleanout,
)  # fmt: skip
FARM_RULES: tuple[FarmRule, ...] = (build,)
