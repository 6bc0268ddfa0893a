"""The rules of the plan. Each module yields the clashes of one idea; RULES is the list that is checked."""

from quailsched.season.rules.cleanout import cleanout
from quailsched.season.rules.eggs import cabinet, eggs, stale
from quailsched.season.rules.floor import calm, floor
from quailsched.season.rules.groups import ages, cocks, crowd, quarantine
from quailsched.season.rules.moving_out import cold, young
from quailsched.season.rules.notready import notready
from quailsched.season.rules.nowhere import nowhere
from quailsched.season.rules.people import hands

RULES = (
    *(eggs, cabinet, floor, cleanout, notready, young, cold, calm, nowhere),
    *(stale, ages, crowd, cocks, quarantine, hands),
)
