"""An outline that is made to end along a slanted nut line, by hand and against the sides that it had."""

import math
import random
from pathlib import Path as File

import pytest
import shapely
from msgspec.structs import replace

from app.formats.headstock import read
from geometry.curves.polygons import polygon
from geometry.edits.nut_end import end_along_nut, ends_off_nut
from geometry.errors import GeometryError
from geometry.layout import EdgePlace, EdgeRun, loop_path
from geometry.routing.nut_end import nut_end
from geometry.solids.frames import frames
from tests.geometry.checks.heads import bore, head, loop, pattern, side

SAMPLES = sorted(File("samples").glob("*.headstock.json"))
TAN = math.tan(math.radians(10.0))
OF = pattern("of", "side", bore(surface="seat", depth=30.0))
TUNERS = (side("a", 90.0, OF), side("b", 60.0, OF, edge="bass"))


def slanted(layout, slant):
    return replace(layout, nut=replace(layout.nut, slant=slant))


def test_one_side_is_cut_and_the_other_goes_straight_on():
    """From x = -20 and 20 the sides lean out by 1 in 10: they meet y = -x tan 10 at x = 20 + y / 10 and x = -20 - y / 10."""
    outline = loop((-20.0, 0.0), (20.0, 0.0), (30.0, 100.0), (30.0, 180.0), (-30.0, 180.0), (-30.0, 100.0))
    made = end_along_nut(slanted(head(outline=outline), 10.0))
    treble, bass = 20.0 / (1 + TAN / 10), -20.0 / (1 - TAN / 10)
    points = sorted(node.at for node in made.outline.nodes)
    assert len(points) == 6, "the sides get no nodes more"
    ends = [p for p in points if p[1] < 50.0]
    assert ends == [pytest.approx((bass, -bass * TAN)), pytest.approx((treble, -treble * TAN))]
    assert nut_end(made.outline, made.nut) is not None and not ends_off_nut(made)


@pytest.mark.parametrize("slant", [6.0, -11.0])
@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.name.split(".")[0])
def test_before_the_line_everything_stays_and_back_again_too(path, slant):
    layout = read(path)
    assert not ends_off_nut(layout)
    turned = slanted(layout, slant)
    assert ends_off_nut(turned)
    made = end_along_nut(turned)
    ahead = max(abs(made.nut.at(x)[1]) for x in (loop_path(made.outline).box[0], loop_path(made.outline).box[2])) + 1.0
    beyond = shapely.box(-500.0, ahead, 500.0, 500.0)
    one, two = (polygon(loop_path(of.outline)).intersection(beyond) for of in (layout, made))
    assert one.symmetric_difference(two).area < 1e-6 * one.area + 0.05
    before, after = frames(layout), frames(made)
    assert all(math.dist(before[id].origin, after[id].origin) < 1e-5 for id in before)
    back = end_along_nut(slanted(made, 0.0))
    assert nut_end(back.outline, back.nut) is not None
    wood = polygon(loop_path(layout.outline))
    # Where a curved side was cut and goes straight on again, what it lacks lies within the cut.
    assert polygon(loop_path(back.outline)).symmetric_difference(wood).area < 0.02 * ahead * ahead
    assert all(math.dist(before[id].origin, frame.origin) < 1e-5 for id, frame in frames(back).items())


def test_what_sits_on_an_edge_stays_and_its_length_follows():
    made = end_along_nut(slanted(head(tuners=TUNERS, patterns=(OF,)), 10.0))
    places = {tuner.id: tuner.place for tuner in made.tuners}
    rise = 40.0 * TAN
    assert isinstance(places["a"], EdgePlace) and places["a"].along == pytest.approx(90.0 + rise)
    assert places["b"].along == pytest.approx(60.0 - rise)


def test_an_end_that_is_not_straight_is_refused():
    pointed = loop((-20.0, 0.0), (0.0, -5.0), (20.0, 0.0), (30.0, 180.0), (-30.0, 180.0))
    layout = slanted(head(outline=pointed), 10.0)
    assert not ends_off_nut(layout)
    with pytest.raises(GeometryError, match="one straight edge"):
        end_along_nut(layout)


def test_rows_along_an_edge_keep_their_places():
    layout = next(of for of in map(read, SAMPLES) if any(isinstance(row.run, EdgeRun) for row in of.rows))
    made = end_along_nut(slanted(layout, 9.0))
    assert [row.run.first for row in made.rows] != [row.run.first for row in layout.rows]


def test_again_and_again_nothing_on_the_edges_wanders():
    """Slants of all sizes one after the other, the least and the most too: each end lies along its line, and tuners stay."""
    chance = random.Random(3)
    for _ in range(40):
        layout = read(chance.choice(SAMPLES))
        for _ in range(4):
            turned = slanted(layout, chance.choice((0.0, 30.0, -30.0, chance.uniform(-30, 30), chance.uniform(-0.2, 0.2))))
            made = end_along_nut(turned)
            before, after = frames(turned), frames(made)
            assert nut_end(made.outline, made.nut) is not None
            assert max(math.dist(before[id].origin, after[id].origin) for id in before) < 1e-4
            layout = made
