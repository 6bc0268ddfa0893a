"""One farm that breaks every rule at once shows each kind of clash once."""

from dataclasses import replace

from quailsched.farm.records import Batch, Leaving, Part, Person, Place, Record, Role, Settings, Span, Stay, Units
from quailsched.report.clashes import TITLES, title_of
from quailsched.report.inspect import clash_rows
from quailsched.season.clashes import clashes_of
from quailsched.season.season import Season
from tests.builders import CABINET, HATCHER, OUT, SETTER, bought, clashes, eggs, farm, on, stay

# 8 °C all year: below 10 (out_min_night_c), which matters only to birds outdoors. Latitude is not told: daylight is
# not counted, so that only lamps that are told can be too few.
CHILLY = Settings("farm", "Thistle Yard", night_lows_c=(8.0,) * 12)


def room(name: str, floor_cm2: int = 30_000, role: Role = Role.BROODER, **told: object) -> Place:
    """A place for one kind of clash, roomy if nothing else is said. In a brooder nobody is too young or too few."""
    return Place(name.lower(), name, role, 10, floor_cm2=floor_cm2, **told)  # type: ignore[arg-type]


def hatched(name: str, place: Place, start: int = 0, setter: Place = SETTER, end: int = 40) -> Batch:
    """20 eggs set on day ``start``; the chicks leave ``place`` at 23 days of age, sold."""
    return eggs(
        name, 20, stay(setter, 0, 15), stay(HATCHER, 15, 18), stay(place, 18, end, leaving=OUT), start=on(start)
    )


def held(name: str, place: Place, birds: int, age: int, days: int, start: int = 0) -> Batch:
    """Birds brought in at ``age`` days, sold after ``days``."""
    return bought(name, birds, age, stay(place, 0, days, leaving=OUT), start=on(start))


def parted_at_40(name: str, together: Place, hens: Stay, cocks: Stay) -> Batch:
    """60 birds that come at 40 days of age and are parted a day later, before the cocks are grown at 42."""
    return bought(name, 60, 40, stay(together, 0, 1), hens, cocks)


def everything() -> list[Record]:
    small, tray = Place("small", "Small setter", Role.SETTER, 8, egg_places=19), room("Tray")
    left, right, stable, twin, mixed, door = (room(n) for n in ("Left", "Right", "Stable", "Twin", "Mixed", "Door"))
    tight, tidy = room("Tight", 2_000), room("Tidy", clean_out_days=3)
    shut = room("Shut", shut=(Span(on(4), on(6), "new floor"),))
    pen, hall = (room(n, 60_000, Role.PEN) for n in ("Pen", "Hall"))
    field = room("Field", 60_000, Role.PEN, outdoors=True)
    barn, loft, shed = room("Barn", 90_000), room("Loft"), room("Shed")
    lamp, trough, drink = room("Lamp", heat_sources=1), room("Trough", feeder_cm=25), room("Drink", drinker_cm=3)
    hut, cote, nest, yard, dim = *(room(n) for n in ("Hut", "Cote", "Nest", "Yard")), room("Dim", light_hours=8.0)
    bare = room("Bare", work_hours=5.0, work_from=on(-1))
    places = [
        small, tray, left, right, stable, twin, mixed, door, tight, tidy, shut, pen, hall, yard, field, barn,
        loft, shed, lamp, trough, drink, hut, cote, dim, nest, bare, CABINET,
    ]  # fmt: skip
    both = (stay(CABINET, 0, 18),)
    batches = [
        hatched("Aster", tray, setter=small),  # eggs: 20 of them in 19 places
        # cabinet: Bracken in lockdown on days 15 to 17, while Clover, set on day 10, is turned
        eggs("Bracken", 20, *both, stay(left, 18, 40, leaving=OUT)),
        eggs("Clover", 20, *both, stay(right, 18, 40, leaving=OUT), start=on(10)),
        held("Dill", tight, 11, 20, 10),  # floor: 11 birds of 200 cm2 in 2,000
        # cleanout: Elder leaves on day 5, Fern comes on day 6, three days are asked for
        held("Elder", tidy, 10, 20, 5),
        held("Fern", tidy, 10, 20, 5, start=6),
        held("Gorse", shut, 10, 20, 10),  # notready: there on days 4 and 5, while it is shut
        held("Hazel", pen, 30, 20, 15),  # young: in a pen at 20 days of age, feathered at 25
        held("Iris", field, 30, 30, 10),  # cold: outdoors at 30 days of age, hardened at 42
        held("Jasmine", hall, 10, 30, 5),  # calm: 10 birds in 6 m2, 22 are wanted
        bought("Kale", 10, 20, stay(door, 0, 10)),  # nowhere: no stay and no buyer after day 10
        replace(hatched("Lime", stable, start=1), egg_age_days=9),  # stale: 7 days are the most
        hatched("Mint", twin),  # ages: Mint and Nettle share a brooder, ten days apart
        hatched("Nettle", twin, start=10),
        held("Olive", barn, 201, 20, 4),  # crowd: 201 together, 200 are the most
        held("Poppy", loft, 60, 40, 5),  # cocks: not parted at 42 days of age
        # quarantine: Rue is bought and comes to Quince, five days old like those, at once
        hatched("Quince", mixed),
        held("Rue", mixed, 10, 5, 18, start=22),
        hatched("Sage", shed, start=3),  # hands: hatches on day 20, on which Ann is away
        held("Thyme", lamp, 101, 5, 19),  # heat: 101 chicks at one lamp for 100, until 24 days of age
        held("Vetch", drink, 11, 26, 4),  # water: 11 birds need 3.3 cm, there are 3
        held("Willow", trough, 10, 26, 4),  # feeder: 10 birds of 26 days need 25.4 cm, there are 25
        # overdue: the surplus cocks of Yarrow stay to day 9, 42 days of age are reached on day 2
        parted_at_40("Yarrow", hut, stay(hut, 1, 3, Part.HENS, OUT), stay(cote, 1, 10, Part.COCKS, Leaving.PROCESSED)),
        # dark: the hens of Zinnia lay from 43 days of age = day 3 on, by 8 hours of lamps
        parted_at_40("Zinnia", nest, stay(dim, 1, 10, Part.HENS, OUT), stay(yard, 1, 2, Part.COCKS, OUT)),
        held("Balm", bare, 10, 20, 5),  # build: five hours are left, and nobody has any
    ]
    return [*places, Person("ann", "Ann", away=(Span(on(20), on(21), "market"),)), *batches]


def test_each_kind_of_clash_is_shown_once() -> None:
    found = clashes(*everything(), settings=CHILLY)
    assert sorted(clash.kind for clash in found) == sorted(TITLES), [clash.sentence for clash in found]
    assert len({(clash.kind, clash.place_id, clash.batch_ids) for clash in found}) == 21


def test_each_is_at_the_place_that_was_made_for_it() -> None:
    found = {clash.kind: (clash.place_id, clash.batch_ids) for clash in clashes(*everything(), settings=CHILLY)}
    assert found == {
        "eggs": ("small", ("aster",)),
        "cabinet": ("cabinet", ("bracken", "clover")),
        "floor": ("tight", ("dill",)),
        "cleanout": ("tidy", ("elder", "fern")),
        "notready": ("shut", ("gorse",)),
        "young": ("pen", ("hazel",)),
        "cold": ("field", ("iris",)),
        "calm": ("hall", ("jasmine",)),
        "nowhere": ("door", ("kale",)),
        "stale": ("setter", ("lime",)),
        "ages": ("twin", ("mint", "nettle")),
        "crowd": ("barn", ("olive",)),
        "cocks": ("loft", ("poppy",)),
        "quarantine": ("mixed", ("quince", "rue")),
        "hands": ("hatcher", ("sage",)),
        "heat": ("lamp", ("thyme",)),
        "water": ("drink", ("vetch",)),
        "feeder": ("trough", ("willow",)),
        "overdue": ("cote", ("yarrow",)),
        "dark": ("dim", ("zinnia",)),
        "build": ("bare", ("balm",)),
    }


def test_each_is_told_in_words() -> None:
    for units in Units:
        plan = farm(*everything(), settings=replace(CHILLY, units=units))
        for clash in clashes_of(Season(plan)):
            rows = clash_rows(plan, clash, on(0))
            assert title_of(plan, clash)
            assert dict(rows)["Short by"].split()[0] not in ("0", "")
            assert any(label == "Take care" for label, _ in rows) is (clash.kind == "heat")
