"""Outlines of bands that are not of the season shown."""

from datetime import date, timedelta

from quailsched.desktop.season_canvas.by_place import lanes_by_place
from quailsched.desktop.season_canvas.ghosts import ghosts_of
from quailsched.season.season import Season
from tests.builders import BROODER, HATCHER, MONDAY, PEN, SETTER, eggs, farm, stay


def season() -> Season:
    route = (stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, 46), stay(PEN, 46, 66))
    return Season(farm(eggs("Elder", 60, *route), eggs("Fern", 40, *route, start=date(2027, 3, 15))))


def test_a_ghost_is_the_band_as_its_own_season_has_it() -> None:
    found = ghosts_of(season(), {"fern"}, "plan")
    bands = [b for content in lanes_by_place(season(), ()) for b in content.bands.items if b.batch_id == "fern"]
    assert [(ghost.band.key, ghost.band.pieces) for ghost in found] == [(band.key, band.pieces) for band in bands]
    assert {ghost.label for ghost in found} == {"Fern (plan)"}
    # Set on 15 March: setter, hatcher on day 15, brooder on day 18, pen on day 46.
    starts = [(ghost.band.place_id, ghost.band.start) for ghost in found]
    day_0 = date(2027, 3, 15)
    assert starts == [
        (place.id, day_0 + timedelta(days=n)) for place, n in ((SETTER, 0), (HATCHER, 15), (BROODER, 18), (PEN, 46))
    ]
    assert all(ghost.band.start >= MONDAY for ghost in found)


def test_batches_that_a_season_does_not_know_have_no_ghosts() -> None:
    assert ghosts_of(season(), {"nobody"}, "plan") == ()
    assert ghosts_of(season(), set(), "plan") == ()
