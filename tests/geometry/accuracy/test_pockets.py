"""Chances beside a pocket that is there: nothing of the shop's moves it, all of what is cut beside it strays."""

import math

import pytest

from geometry.accuracy import requirements
from geometry.layout import Accuracy, Margins, Pin, SingleHole, Slot, StraightSlot
from tests.geometry.accuracy.first_order import propagate
from tests.geometry.accuracy.specimens import WIDE, head, holes, only
from tests.geometry.accuracy.test_clearances import hold_to_checks, simulated, spread

POCKET = Slot(id="pocket", shape=StraightSlot(nut_end=(0.0, -6.0), tip_end=(0.0, 22.0), width=12.0), depth=10.0, there=True)
LONG = Slot(id="pocket", shape=StraightSlot(nut_end=(0.0, -6.0), tip_end=(0.0, 60.0), width=12.0), depth=10.0, there=True)
SLOT = Slot(id="slot", shape=StraightSlot(nut_end=(22.0, 30.0), tip_end=(22.0, 150.0), width=12.0))


def test_a_hole_beside_it_strays_by_its_mark_alone():
    """At x = 11 a hole of 4 mm leaves 3 mm to the wall at 6: the mark strays by half of 0.3 mm, the template takes no part."""
    layout = head(slots=(POCKET,), holes=holes((11.0, 10.0, 4.0)), accuracy=only(mark=0.3, template=0.4))
    assert spread(layout, "hole-to-slot") == pytest.approx((3.0, 0.15))
    assert simulated(layout, "hole-to-slot") == pytest.approx((3.0, 0.15), abs=0.01)
    still = head(slots=(POCKET,), holes=holes((11.0, 10.0, 4.0)), accuracy=only(template=0.4))
    assert [(p.nominal, p.sd) for p in propagate(still) if p.kind == "hole-to-slot"] in ([], [(pytest.approx(3.0), pytest.approx(0.0, abs=1e-9))])


def test_a_hole_that_is_there_does_not_stray_and_nobody_is_asked_to_hold_its_mark():
    """0.4 mm between the two, and the mark of the new hole alone strays, by half of 0.3 mm: 2.33 of that are 0.35."""
    layout = head(holes=(SingleHole(id="old", at=(0.0, 60.0), diameter=5.0, there=True), SingleHole(id="new", at=(5.4, 60.0), diameter=5.0)),
                  accuracy=only(mark=0.3))
    assert spread(layout, "hole-to-hole") == pytest.approx((0.4, 0.15))
    assert simulated(layout, "hole-to-hole") == pytest.approx((0.4, 0.15), abs=0.01)
    assert requirements(layout, 0.99, trials=2000).needs == ()
    assert {where for need in requirements(layout, 0.9999, trials=2000).needs for where in need.where} == {"new"}


def test_a_blind_hole_that_is_there_leaves_what_it_leaves():
    layout = head(holes=(SingleHole(id="old", at=(0.0, 60.0), diameter=5.0, depth=14.0, there=True),), accuracy=Accuracy())
    assert spread(layout, "too-deep") == (2.0, 0.0)


def test_a_pin_beside_it_goes_where_the_template_goes():
    """Drilled through the template, it strays with its place: half of 0.2 mm each way."""
    layout = head(slots=(POCKET,), pins=(Pin(id="pin", at=(11.0, 10.0), diameter=4.0),), accuracy=only(template=0.2), margins=Margins(pin_any=3.0))
    assert spread(layout, "locating-pin-to-slot") == pytest.approx((3.0, 0.1))


def test_the_web_to_a_slot_strays_by_the_place_of_the_template_and_one_wall():
    """10 mm from x = 6 to x = 16; each error half of 0.2 mm. Between two slots the place would cancel and two walls remain."""
    layout = head(slots=(LONG, SLOT), accuracy=only(template=0.2), margins=Margins(web=10.0))
    assert spread(layout, "web") == pytest.approx((10.0, 0.1 * math.sqrt(2)))
    assert simulated(layout, "web") == pytest.approx((10.0, 0.1 * math.sqrt(2)), abs=0.01)
    # The paper of the template stretches about the centreline: 0.1 % of the 16 mm to the slot's wall.
    paper = head(slots=(LONG, SLOT), accuracy=only(paper_percent=0.2), margins=Margins(web=10.0))
    assert spread(paper, "web")[1] == pytest.approx(0.016)


def test_the_rail_strays_by_the_place_of_the_template_and_the_outline():
    beside = Slot(id="pocket", shape=StraightSlot(nut_end=(26.0, 60.0), tip_end=(26.0, 80.0), width=12.0), there=True)
    layout = head(slots=(beside,), accuracy=only(template=0.2), margins=Margins(rail=8.0))
    assert spread(layout, "rail") == pytest.approx((8.0, 0.1 * math.sqrt(2)))


def test_nothing_is_told_of_its_floor_and_the_nut_line_nor_of_two_pockets():
    two = Slot(id="two", shape=StraightSlot(nut_end=(20.0, 10.0), tip_end=(20.0, 22.0), width=12.0), there=True)
    layout = head(slots=(POCKET, two), holes=(SingleHole(id="old", at=(10.0, 5.0), diameter=4.0, there=True),), margins=WIDE)
    assert {p.kind for p in propagate(layout) if "pocket" in p.between} == set()


def test_without_errors_every_clearance_is_what_the_checks_tell():
    hold_to_checks(head(slots=(LONG, SLOT), holes=holes((11.0, 10.0, 4.0), (0.0, 72.0, 4.0)), margins=WIDE))
