"""An edge made straight under side tuners: parallel bores, and everything else where it was."""

import math

import pytest
from msgspec.structs import replace

from app.panels.describe import describe
from app.panels.several import several
from geometry.edits import make_row
from geometry.edits.straight_edge import splayed, straighten_edge
from geometry.errors import GeometryError
from geometry.layout.edges import edge
from geometry.solids.frames import frame
from tests.geometry.checks.heads import OBLONG, SIDE, bulging, face, head, loop, side
from tests.geometry.sequence.specimens import demo

BASS = ["bass side 1", "bass side 2", "bass side 3"]
BUTTON = "Make the edge under side tuners straight"


def words(page):
    return [row.label for row in page.fields]


def test_on_an_arc_the_edge_becomes_its_chord_and_the_seats_go_in_by_the_rise():
    """R 400, tuners 60 apart about the middle, plates 4 and 2 long: by the rise of a circular segment, R - sqrt(R² - (c/2)²)."""
    radius, far = 400.0, 30.0
    layout = head(outline=bulging(radius))
    middle = edge(layout.outline, "treble").length / 2
    layout = replace(layout, patterns=(SIDE,), tuners=(side("a", middle - far), side("b", middle + far)))
    made = straighten_edge(layout, ["a", "b"])
    half = radius * math.sin((far + 2.0) / radius)
    top = edge(layout.outline, "treble").seat(middle).point[0]
    for id, was in (("a", layout.tuner("a")), ("b", layout.tuner("b"))):
        now = frame(made, made.tuner(id))
        assert now.origin[0] == pytest.approx(top - (radius - math.sqrt(radius**2 - half**2)), abs=0.01)
        assert now.origin[1] == pytest.approx(frame(layout, was).origin[1], abs=0.02), "it goes in squarely"
        assert now.w[:2] == pytest.approx((-1.0, 0.0), abs=1e-4)
    assert splayed(layout, ["a", "b"]) and not splayed(made, ["a", "b"])


def test_one_bore_that_leans_among_parallel_ones_is_enough():
    """The treble edge straight up to y = 100, and inwards from there on."""
    layout = head(outline=loop((-40.0, 0.0), (40.0, 0.0), (40.0, 100.0), (20.0, 180.0), (-40.0, 180.0)), patterns=(SIDE,),
                  tuners=tuple(side(id, along) for id, along in (("a", 30.0), ("b", 70.0), ("c", 140.0))))
    assert [splayed(layout, ids) for ids in (["a", "b"], ["a", "b", "c"], ["c", "a", "b"])] == [False, True, True]


def test_of_a_symmetric_head_both_edges_are_made_straight_and_what_follows_them_goes_along():
    layout, made = demo(), straighten_edge(demo(), BASS)
    assert not splayed(made, BASS) and not splayed(made, [id.replace("bass", "treble") for id in BASS])
    for one in layout.tuners:
        (x, y, _), (u, w, _) = frame(layout, one).origin, frame(made, made.tuner(one.id)).origin
        far = math.dist((x, y), (u, w))
        assert far < 3.2 and abs(y - w) < (0.2 if "side" in one.id else 0.6), f"{one.id} goes along with its edge, and not along the head"
    assert made.slots == layout.slots and made.pins == layout.pins


def test_a_row_keeps_its_spacing_and_its_last_plate_lies_on_the_straight_edge():
    layout = make_row(demo(), BASS, "edge")
    made = straighten_edge(layout, BASS)
    (was,), (row,) = ([row for row in one.rows if row.id not in [old.id for old in demo().rows]] for one in (layout, made))
    assert row.spacing == was.spacing and not splayed(made, BASS)
    plate = made.pattern(made.tuner(BASS[-1]).pattern).seat
    one, last = edge(made.outline, "bass"), row.run.first + 2 * row.spacing
    normals = [one.seat(along).normal for along in (row.run.first - plate.behind + 0.01, row.run.first, last, last + plate.before - 0.01)]
    assert all(normal == pytest.approx(normals[0], abs=1e-6) for normal in normals)


@pytest.mark.parametrize("ids", [["bass side 1"], ["bass side 1", "treble side 1"], ["bass side 1", "bass face 1"]])
def test_tuners_that_sit_on_no_one_edge_say_nowhere(ids):
    layout = replace(demo(), tuners=tuple(replace(one, place=face("x", -20.0, 60.0).place) if one.id == "bass face 1" else one for one in demo().tuners))
    with pytest.raises(GeometryError, match="one edge"):
        straighten_edge(layout, ids)
    assert not splayed(layout, ids)


def test_the_panel_offers_it_where_bores_are_not_parallel_and_nowhere_else():
    layout = demo()
    row = next(row for row in several(layout, tuple(BASS), "mm").fields if row.label == BUTTON)
    made = row.change(None)
    assert BUTTON not in words(several(made, tuple(BASS), "mm"))
    rowed = make_row(layout, BASS, "edge")
    assert BUTTON in words(describe(rowed, BASS[0], "mm")) and BUTTON not in words(describe(layout, BASS[0], "mm"))
    straight = head(outline=OBLONG, patterns=(SIDE,), tuners=(side("a", 60.0), side("b", 100.0)))
    assert BUTTON not in words(several(straight, ("a", "b"), "mm"))
