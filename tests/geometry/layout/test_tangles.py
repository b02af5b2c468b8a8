"""A line that crosses itself a hundred times is refused with a place; a few times it is a snag, as ever."""

import math
from itertools import pairwise

import pytest
from msgspec.structs import replace

from geometry.checks import check
from geometry.curves.polygons import tangled
from geometry.errors import GeometryError
from geometry.layout import loop_path, validate
from geometry.layout.outline import LONGEST, MOST_CROSSINGS, MOST_SHARP
from tests.geometry.checks.heads import drawn, head, loop


def star(points, skip):
    """The star polygon {points/skip}, 80 across: its chords cross points * (skip - 1) times (each chord 2 (skip - 1) others)."""
    turns = [2 * math.pi * i * skip / points for i in range(points)]
    return loop(*((40 * math.cos(turn), 90 + 40 * math.sin(turn)) for turn in turns))


def crossings_by_hand(nodes):
    """Proper crossings of the chords, each pair asked for itself."""
    def side(p, q, r):
        return (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])
    chords = list(pairwise([*nodes, nodes[0]]))
    return sum(side(a, b, c) * side(a, b, d) < 0 and side(c, d, a) * side(c, d, b) < 0
               for i, (a, b) in enumerate(chords) for c, d in chords[i + 2:])


@pytest.mark.parametrize(("points", "skip"), [(13, 2), (21, 5), (25, 6), (31, 15)])
def test_crossings_are_counted_no_further_than_asked(points, skip):
    made = star(points, skip)
    many = points * (skip - 1)
    assert crossings_by_hand([node.at for node in made.nodes]) == many
    assert tangled(loop_path(made), many, 0.1) is None
    at = tangled(loop_path(made), many - 1, 0.1)
    # Any crossing of chords lies on the circle that their midpoints touch or outside of it.
    assert 40 * math.cos(math.pi * skip / points) - 1e-9 <= math.hypot(at[0], at[1] - 90) <= 40


def test_a_line_that_runs_to_and_fro_over_itself_is_one_too():
    """No two of its chords cross: they lie on one another."""
    there_and_back = loop(*[(-40.0, 0.0), (40.0, 0.0), (40.0, 180.0)] * 40)
    assert tangled(loop_path(there_and_back), MOST_CROSSINGS, 0.1) is not None


def test_a_sound_line_touches_itself_nowhere():
    many = loop(*((40 * math.cos(math.pi * i / 300), 90 + 90 * math.sin(math.pi * i / 300)) for i in range(600)))
    assert tangled(loop_path(many), 0, 0.1) is None
    assert validate(head(outline=many)).outline is many


@pytest.mark.parametrize("tangle", [star(25, 6), star(401, 200)])
def test_a_tangle_is_refused_with_its_place(tangle):
    with pytest.raises(GeometryError, match=r"^The line crosses itself more than 100 times, .* across, .* along: draw it anew\.$") as refused:
        validate(head(outline=tangle))
    assert refused.value.place == "$.outline"
    with pytest.raises(GeometryError) as refused:
        validate(head(slots=(drawn("s", *(node.at for node in tangle.nodes)),)))
    assert refused.value.place == "$.slots[0]"


def test_what_crosses_itself_less_often_is_a_snag():
    layout = validate(head(outline=star(21, 5)))
    assert "outline-crosses" in {snag.kind for snag in check(layout).snags}
    assert "outline-crosses" in {snag.kind for snag in check(replace(layout, outline=star(13, 2))).snags}


def test_a_slot_with_thousands_of_teeth_is_refused_with_its_place():
    def saw(count):
        return [(10 * (1 + 0.1 * (i % 2)) * math.cos(turn), 90 + 40 * (1 + 0.1 * (i % 2)) * math.sin(turn))
                for i, turn in ((i, 2 * math.pi * i / count) for i in range(count))]
    with pytest.raises(GeometryError, match=r"^The slot has more than 3000 sharp corners, the first of them at 10\.0 across, "
                                            r"90\.0 along: draw it with fewer\.$") as refused:
        validate(head(slots=(drawn("s", *saw(MOST_SHARP + 2)),)))
    assert refused.value.place == "$.slots[0]"
    validate(head(slots=(drawn("s", *saw(MOST_SHARP)),)))
    validate(head(outline=loop(*saw(MOST_SHARP + 2))))


def test_a_smooth_slot_may_have_any_number_of_nodes():
    many = [(10 * math.cos(2 * math.pi * i / 5000), 90 + 40 * math.sin(2 * math.pi * i / 5000)) for i in range(5000)]
    assert validate(head(slots=(drawn("s", *many),))).slots[0].id == "s"


@pytest.mark.parametrize("where", ["$.outline", "$.slots[0]"])
def test_a_saw_as_long_as_a_road_is_refused_with_its_length(where):
    """A thousand teeth 50 mm deep are 100 m of edge, and a little more for the ways along and about."""
    teeth = loop(*((x, 0.1 * i) for i in range(1000) for x in (-25.0, 25.0)), (-30.0, 100.0), (-30.0, 0.0))
    made = head(outline=teeth) if where == "$.outline" else head(slots=(drawn("slot", *[node.at for node in teeth.nodes]),))
    with pytest.raises(GeometryError, match=r"to and fro over 101 m, and no more than 100 m are taken: draw it anew\.$") as refused:
        validate(made)
    assert refused.value.place == where
    shorter = loop(*(node.at for node in teeth.nodes[100:]))
    assert sum(math.dist(a.at, b.at) for a, b in pairwise([*shorter.nodes, shorter.nodes[0]])) < LONGEST
    validate(head(outline=shorter))
