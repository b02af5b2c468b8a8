"""Flats that go through the rail into a slot, or so deep that their bottom meets no wall of it at all, and the wood that they
leave beside bores."""

import math
import random
import re
from itertools import product

import numpy as np
import pytest
import shapely
from msgspec.structs import replace

from geometry import vectors as v
from geometry.checks import check, flats
from geometry.edits import mirror_layout, set_field
from geometry.layout import Flat, Rack, SingleHole
from geometry.layout.edges import edge
from geometry.layout.outline import loop_path
from geometry.layout.shop import Margins
from tests.geometry.checks.heads import BIT, bore, bulging, drawn, face, head, leaning, loop, pattern, side, slot

SEAT = pattern("of", "side", bore(surface="seat", depth=30.0), post=(6.0, 25.0, 26.0), seat=(12.0, 12.0, 10.0))


def _rails(side_of, depth):
    """The slot is 12 wide and stands 8 mm inside the edge x = 40, or its mirror image."""
    x = 26.0 if side_of == "treble" else -26.0
    layout = head(tuners=(side("a", 90.0, SEAT, edge=side_of, flat=Flat(size=24.0, depth=depth)),), patterns=(SEAT,), slots=(slot(x=x),))
    return [snag for snag in check(layout).snags if snag.kind == "flat-rail"]


@pytest.mark.parametrize("side_of", ["bass", "treble"])
@pytest.mark.parametrize(("depth", "measured", "grade"), [
    (3.0, 5.0, "tight"), (9.0, -1.0, "spoils the work"), (14.0, -6.0, "spoils the work"), (30.0, -22.0, "spoils the work")])
def test_a_flat_that_goes_through_its_rail_is_told_by_how_much(side_of, depth, measured, grade):
    (snag,) = _rails(side_of, depth)
    assert snag.measured == pytest.approx(measured, abs=1e-9) and snag.grade == grade


def test_the_rail_is_told_to_the_side_of_a_flat_too():
    """The flat takes x 37 to 40 from y 78 to 102; the opening lies farther out than its bottom, 2 mm beyond its end."""
    layout = head(tuners=(side("a", 90.0, SEAT, flat=Flat(size=24.0, depth=3.0)),), patterns=(SEAT,),
                  slots=(drawn("slot", (38.0, 104.0), (39.0, 104.0), (39.0, 110.0), (38.0, 110.0)),))
    assert [snag.measured for snag in check(layout).snags if snag.kind == "flat-rail"] == [pytest.approx(2.0, abs=1e-9)]


def test_beside_a_wall_that_leans_a_flat_is_to_be_cut_as_much_shallower_as_leaves_its_rail():
    """The wall leans by 30 degrees; 0.5 mm lack to the corner of the flat's bottom at x 35, y 102."""
    lean = math.radians(30.0)
    foot = 35.0 - (Margins().rail - 0.5) / math.cos(lean)
    points = [(foot + (y - 102.0) * math.tan(lean), y) for y in (60.0, 108.0)]

    def told(depth):
        layout = head(tuners=(side("a", 90.0, SEAT, flat=Flat(size=24.0, depth=depth)),), patterns=(SEAT,),
                      slots=(drawn("slot", (-20.0, 60.0), *points, (-20.0, 108.0)),))
        return [snag for snag in check(layout).snags if snag.kind == "flat-rail"]
    (snag,) = told(5.0)
    less = 0.5 / math.cos(lean)
    assert f"Cut the flat {math.ceil(10 * less) / 10:.1f} mm shallower" in snag.cure and told(5.0 - less + 0.01) and not told(5.0 - less - 1e-6)


def _beside(rng):
    """Two tuners on one edge, each with a flat, and a dozen holes through the face about them."""
    outline = rng.choice((leaning(rng.uniform(-8, 8)), bulging(rng.uniform(95.0, 300.0)),
                          loop((-40.0, 0.0), (40.0, 0.0, -rng.uniform(0.02, 0.2)), (40.0, 180.0), (-40.0, 180.0))))
    along = rng.uniform(50.0, 90.0)
    tuners = tuple(side(id, at, SEAT, flat=Flat(size=rng.uniform(10, 40), depth=rng.uniform(0.3, 6), shape=rng.choice(("flat", "spot"))))
                   for id, at in (("a", along), ("b", along + rng.uniform(30.0, 50.0))))
    points = [edge(outline, "treble").seat(rng.uniform(40.0, 140.0)) for _ in range(12)]
    holes = tuple(SingleHole(id=f"h{i}", diameter=rng.uniform(1.0, 8.0), there=rng.random() < 0.3, depth=rng.choice((None, 6.0)),
                             at=v.along(p.point, p.normal, rng.uniform(-12.0, 3.0))) for i, p in enumerate(points))
    return head(outline=outline, tuners=tuners, patterns=(SEAT,), slots=(slot(x=0.0),), holes=holes, rack=Rack(bits=(BIT,)))


@pytest.mark.parametrize("which", range(40))
def test_a_hole_has_the_wood_that_edge_and_flats_leave_together(which):
    """The head without what each flat takes, as polygons: how deep a hole's middle lies in what is left."""
    layout = _beside(random.Random(which))
    wood = shapely.Polygon(loop_path(layout.outline).flatten(1e-5))
    for tuner in layout.tuners:
        seat, flat = edge(layout.outline, "treble").seat(tuner.place.along), tuner.flat
        at, along, out = np.array(seat.point), np.array(seat.tangent) * flat.size / 2, np.array(seat.normal)
        taken = [at - out * flat.depth - along, at - out * flat.depth + along, at + out * 90 + along, at + out * 90 - along]
        wood = wood.difference(shapely.Polygon(taken))
    snags = check(layout).snags
    for hole in layout.holes:
        middle = shapely.Point(hole.at)
        if loop_path(layout.outline).nearest(hole.at).distance < 0.01 or not shapely.Polygon(loop_path(layout.outline).flatten(1e-5)).contains(middle):
            continue
        true = wood.boundary.distance(middle) * (1 if wood.contains(middle) else -1) - hole.diameter / 2
        told = [s.measured for s in snags if s.kind in ("hole-to-outline", "hole-to-flat") and s.between[0] == hole.id]
        assert min(told, default=4.0) == pytest.approx(min(true, 4.0), abs=1e-3)


def test_a_flat_is_cut_so_much_shallower_that_the_hole_has_its_wood():
    done = 0
    for which in range(60):
        layout = _beside(random.Random(which))
        for snag in check(layout).snags:
            match = re.search(r"Cut the flat ([\d.]+) mm shallower", snag.cure) if snag.kind == "hole-to-flat" else None
            if match:
                done += 1
                id = snag.between[1]
                less = set_field(layout, ("tuners", id, "flat", "depth"), layout.tuner(id).flat.depth - float(match[1]))
                assert not [s for s in check(less).snags if (s.kind, s.between) == (snag.kind, snag.between)]
    assert done > 20


def test_a_bore_from_the_other_edge_is_told_by_the_flat_before_it():
    """A head 80 wide, a bore 71 deep from the bass edge: its end lies at x = 31, the flat's bottom at 34, 1 mm aside of the bore."""
    deep = pattern("deep", "side", bore(diameter=4.0, surface="seat", depth=71.0))
    layout = head(tuners=(side("a", 90.0, SEAT, flat=Flat(size=24.0, depth=6.0)), side("b", 105.0, deep, edge="bass")),
                  patterns=(SEAT, deep), slots=(slot(x=0.0),))
    snag, = [s for s in check(layout).snags if s.kind == "hole-to-flat"]
    assert snag.between == ("b", "a") and snag.measured == pytest.approx(np.hypot(34.0 - 31.0, 105.0 - 2.0 - 102.0))
    into = replace(layout, patterns=(SEAT, replace(deep, bores=(replace(deep.bores[0], depth=76.0),))),
                   tuners=(layout.tuners[0], side("b", 98.0, deep, edge="bass")))
    snag, = [s for s in check(into).snags if s.kind == "hole-to-flat"]
    assert snag.measured == pytest.approx(-2.0) and snag.grade == "spoils the work"


@pytest.mark.parametrize("edge", ["treble", "bass"])
@pytest.mark.parametrize("lean", [0.0, 12.0, -12.0])
def test_a_box_clears_a_flat_only_where_nothing_in_it_comes_near(monkeypatch, edge, lean):
    """The same snags with and without it, while a bore goes all about a flat; far from it nothing is measured."""
    hole = pattern("hole", "face", bore())
    measured = []
    gap = flats._to_flat
    monkeypatch.setattr(flats, "_to_flat", lambda *given: measured.append(1) or gap(*given))
    flattened = side("side", 90.0, SEAT, flat=Flat(size=20.0, depth=2.0))
    told = {}
    for kept in (True, False):
        if not kept:
            monkeypatch.setattr(flats, "_clear", lambda *given: False)
        measured.clear()
        heads = [head(outline=leaning(lean), tuners=(flattened, face("a", float(across), along, hole)), patterns=(SEAT, hole))
                 for across, along in product(np.arange(-10.0, 40.0, 6.0) - 90.0 * math.tan(math.radians(lean)), range(60, 125, 7))]
        told[kept] = [[one for one in check(layout if edge == "treble" else mirror_layout(layout)).snags if one.kind == "hole-to-flat"]
                      for layout in heads]
        told[f"measured {kept}"] = len(measured)
    assert told[True] == told[False] and any(told[True])
    assert told["measured True"] < told["measured False"] / 2


@pytest.mark.parametrize("radius", [95.0, 120.0, 300.0])
@pytest.mark.parametrize("step", [18.0, 21.0])
@pytest.mark.parametrize("edge", ["treble", "bass"])
def test_how_far_a_plate_reaches_over_a_flat_round_the_corner_of_a_curved_edge(radius, step, edge):
    """Both plates reach 12 to either side of their posts. Seen from the one that sits on the bare edge the other's flat, 24 long and 1.5
    deep, is turned by the arc between the two: its near end and the plate's end tell how far, its slope how deep."""
    tuners = side("a", 70.0, SEAT), side("b", 70.0 + step, SEAT, flat=Flat(size=24.0, depth=1.5))
    layout = head(outline=bulging(radius), tuners=tuners, patterns=(SEAT,))
    layout = layout if edge == "treble" else mirror_layout(layout)
    turn, low = step / radius, radius - 1.5
    begins = low * math.sin(turn) - 12.0 * math.cos(turn)
    deep = radius - low * math.cos(turn) - 12.0 * math.sin(turn) + (12.0 - begins) * math.tan(turn)
    snag, = [one for one in check(layout).snags if one.kind == "plate-over-flat"]
    told = float(re.search(r"lies ([\d.]+) mm deeper", snag.text)[1])
    assert snag.measured == pytest.approx(begins - 12.0, abs=1e-6) and -1e-9 <= told - deep <= 0.1


@pytest.mark.parametrize("edge", ["treble", "bass"])
def test_a_plate_that_reaches_much_farther_than_its_bore_is_deep_is_told_too(edge):
    """A flat of 30 about 90, and a plate that reaches 27 towards it from 130; its bore is 5 deep."""
    wide = pattern("wide", "side", bore(surface="seat", depth=5.0), post=(6.0, 25.0, 26.0), seat=(27.0, 27.0, 10.0))
    layout = head(tuners=(side("a", 90.0, SEAT, flat=Flat(size=30.0, depth=1.5)), side("b", 130.0, wide)), patterns=(SEAT, wide))
    told = [snag for snag in check(layout if edge == "treble" else mirror_layout(layout)).snags if snag.kind == "plate-over-flat"]
    assert [(snag.between, snag.measured) for snag in told] == [(("b", "a"), pytest.approx(-2.0))]
