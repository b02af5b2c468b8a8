"""The line over the snags never says more than is known."""

import pytest

from app.panels.snags.chance_words import Chances, whole_words
from geometry.accuracy.simulation import Simulation


def simulation(sound: float, within: float) -> Simulation:
    return Simulation(trials=10_000, sound=sound, within=within, clearances=())


def line(**known) -> str:
    return whole_words(Chances(**known))[0]


def test_both_chances_are_told():
    assert line(simulation=simulation(0.991, 0.97), fresh=True) == "Comes out sound: 991 in 1,000 · every margin kept: 97 in 100"


def test_tight_places_that_are_not_simulated_are_left_out_of_the_margins():
    assert line(simulation=simulation(1.0, 0.97), fresh=True, uncounted=2).endswith("every other margin kept: 97 in 100")


@pytest.mark.parametrize("fresh", [True, False])
def test_beside_snags_that_spoil_no_chance_is_told(fresh):
    assert line(simulation=simulation(0.9, 0.5), fresh=fresh, spoiled=2) == "Does not come out sound as drawn"


def test_what_spoils_the_work_is_told_before_any_chance_is_worked_out():
    assert line(spoiled=1) == "Does not come out sound as drawn"
    assert line() == "Comes out sound: being worked out…"


def test_a_head_just_cured_does_not_wear_the_verdict_of_the_one_before():
    assert line(simulation=simulation(0.0, 0.0), fresh=False) == "Comes out sound: being worked out…"
    assert line(simulation=simulation(0.0, 0.0), fresh=True).startswith("Comes out sound: under 1 in")


def test_of_a_bare_head_no_chance_is_told_but_what_spoils_it_is():
    told = line(simulation=simulation(1.0, 1.0), fresh=True, bare=True)
    assert told == "Comes out sound: told once a tuner, a hole or a slot is drawn"
    assert line(simulation=simulation(1.0, 1.0), fresh=True, bare=True, spoiled=1) == "Does not come out sound as drawn"
