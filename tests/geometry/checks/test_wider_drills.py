"""A drill of the rack that is a little wider than what is asked for: wood is counted beside what it cuts."""

import pytest
from msgspec.structs import replace

from app.formats.headstock import read
from geometry.accuracy.bench import bench_of
from geometry.checks import check
from geometry.layout import Margins, SingleHole
from geometry.routing.mouths import mouths
from tests.geometry.checks.heads import DRILLS, FACE, SIDE, bore, face, head, pattern, side, slot
from tests.property.layouts import SAMPLES

BY = 0.04
CROWDED = pattern("crowded", "face", bore(diameter=6.0), bore("pin", 2.0, "back", (6.5, 0.0), 5.0))


def wider(layout, by):
    """The layout with every drill of its rack so much wider."""
    return replace(layout, rack=replace(layout.rack, drills=tuple(replace(d, diameter=d.diameter + by) for d in layout.rack.drills)))


def asked(layout, by):
    """The layout with everything that is drilled asked for so much wider."""
    return replace(layout, patterns=tuple(replace(p, bores=tuple(replace(b, diameter=b.diameter + by) for b in p.bores)) for p in layout.patterns),
                   pins=tuple(replace(p, diameter=p.diameter + by) for p in layout.pins),
                   holes=tuple(h if h.there else replace(h, diameter=h.diameter + by) for h in layout.holes))


def told(layout):
    """What is measured, but for what is said of the drills themselves."""
    return [(s.kind, s.grade, s.between, s.measured, s.needed) for s in check(layout).snags if s.kind not in ("drill-size", "no-drill")]


def test_the_wood_beside_a_bore_is_what_the_wider_drill_leaves():
    """6 mm wide and 4 mm of wood from each: with a drill of 6.04 there is 0.02 less on either side."""
    layout = head(tuners=(face("a", 33.0, 90.0), side("b", 60.0)), patterns=(FACE, SIDE), slots=(slot(),),
                  holes=(SingleHole(id="h", at=(-33.0, 40.0), diameter=6.0, there=True),), margins=Margins(side_cover=5.0))
    assert not {s.kind for s in check(layout).snags} & {"bore-to-outline", "cover", "hole-to-outline"}
    found = {s.kind: s.measured for s in check(wider(layout, BY)).snags}
    assert found["bore-to-outline"] == pytest.approx(4.0 - BY / 2) and found["cover"] == pytest.approx(5.0 - BY / 2)
    assert "hole-to-outline" not in found  # it is there, and no drill widens it
    assert told(wider(layout, -BY)) == told(layout)  # a narrower one: the part may have to be drilled for anew


def test_two_bores_of_one_pattern_are_told_by_their_drills():
    """Axes 6.5 apart, less 3 and 1: 2.5; margin 2.49."""
    layout = head(tuners=(face("a", 0.0, 90.0, CROWDED),), patterns=(CROWDED,), margins=Margins(screw_any=2.49))
    assert "bore-to-pin-hole" not in {s.kind for s in check(layout).snags}
    assert next(s.measured for s in check(wider(layout, BY)).snags if s.kind == "bore-to-pin-hole") == pytest.approx(2.5 - BY)


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.name.split(".")[0])
def test_all_is_told_as_if_it_had_been_asked_for_as_wide_as_it_gets(path):
    layout = read(path)
    sizes = {b.diameter for p in layout.patterns for b in p.bores} | {p.diameter for p in layout.pins} | {h.diameter for h in layout.holes}
    kept = tuple(replace(DRILLS[0], id=f"of {size}", diameter=size) for size in sorted(sizes))
    layout = replace(layout, rack=replace(layout.rack, drills=kept))
    layout = replace(layout, margins=replace(layout.margins, bore_outline=9.0, bore_bore=9.0, bore_slot=9.0, side_cover=9.0, screw_any=9.0))
    as_asked = asked(wider(layout, BY), BY)
    assert told(wider(layout, BY)) == told(as_asked) != told(layout)
    widths = [[rod.drilling.radius for rod in bench_of(one).model.recipes] for one in (wider(layout, BY), as_asked)]
    assert widths[0] == widths[1]
    for of in ("outline", *(one.id for one in layout.slots)):
        assert mouths(wider(layout, BY), of) == mouths(as_asked, of)
