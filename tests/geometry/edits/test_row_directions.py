"""Buttons of a straight row that all point one way, as tuners on one plate do."""

import json
import math
from itertools import pairwise

import pytest
from msgspec.structs import replace

from app.formats.errors import FormatError
from app.formats.headstock import decode, encode
from geometry.edits import (
    duplicate,
    echo_features,
    free_from_row,
    make_row,
    mirror_copies,
    mirror_layout,
    move_tuner,
    set_row_heading,
    set_row_spacing,
    set_turn,
    square_row,
)
from geometry.errors import GeometryError
from geometry.layout import FreePlace, StraightRun
from geometry.solids import frames
from tests.geometry.edits.heads import curved, plain, sound, twelve

MEMBERS = ("line 0", "line 1", "line 2")


def ways(layout, ids=MEMBERS):
    """Where each button points, degrees."""
    placed = frames(layout)
    return [math.degrees(math.atan2(placed[id].u[1], placed[id].u[0])) % 360 for id in ids]


def posts(layout, ids=MEMBERS):
    placed = frames(layout)
    return [placed[id].origin for id in ids]


def leaning(turn=None, heading=95.0):
    """The straight row of the curved head, 30 mm apart beside the swelling bass edge."""
    return sound(curved(rows=(replace(plain().row("line"), spacing=45.0, run=StraightRun(start=(-28.0, 40.0), heading=heading, turn=turn)),
                              plain().row("flank"))))


def test_without_a_way_of_its_own_each_points_to_the_nearest_edge_as_single_tuners_do():
    fanned = leaning()
    assert max(ways(fanned)) - min(ways(fanned)) > 3.0
    single = replace(fanned, tuners=tuple(replace(t, place=FreePlace(at=frames(fanned)[t.id].origin[:2])) if t.id in MEMBERS else t
                                          for t in fanned.tuners))
    assert frames(single) == frames(fanned)


@pytest.mark.parametrize("turn", [-77.7, 0.0, 185.0, -340.0])
def test_with_one_all_are_parallel_and_their_posts_stay(turn):
    made = sound(set_turn(leaning(), "line 1", turn))
    assert ways(made) == pytest.approx([turn % 360] * 3, abs=1e-9) and posts(made) == posts(leaning())
    assert [math.dist(a, b) for a, b in pairwise(posts(made))] == pytest.approx([45.0] * 2)
    moved = set_row_spacing(move_tuner(made, "line 2", (-20.0, 120.0)), "line", 30.0)
    assert ways(moved) == pytest.approx([turn % 360] * 3, abs=1e-9)
    assert set_turn(made, "line 2", None) == leaning()


def test_beside_a_straight_edge_both_are_the_same():
    assert ways(plain()) == pytest.approx([180.0] * 3, abs=1e-9) == ways(square_row(plain(), "line"))


def test_square_to_the_row_is_to_the_side_that_the_buttons_point_to():
    assert sound(square_row(leaning(), "line")).row("line").run.turn == 185.0
    assert square_row(leaning(turn=20.0), "line").row("line").run.turn == 5.0
    assert square_row(leaning(heading=-265.0), "line").row("line").run.turn == 185.0
    across = mirror_layout(leaning())
    assert square_row(across, "line") == mirror_layout(square_row(leaning(), "line"))


def test_buttons_turn_with_their_row():
    made = sound(set_row_heading(square_row(leaning(), "line"), "line", 80.25))
    assert (made.row("line").run.heading, made.row("line").run.turn, made.row("line").run.start) == (80.25, 170.25, (-28.0, 40.0))
    assert set_row_heading(leaning(), "line", 80.0) == leaning(heading=80.0)
    assert set_row_heading(leaning(turn=-360.0), "line", -265.0).row("line").run.turn == 0.0


def test_a_mirror_image_points_the_mirrored_way():
    made = leaning(turn=170.5)
    once = sound(mirror_layout(made))
    assert ways(once) == pytest.approx([9.5] * 3, abs=1e-9) and mirror_layout(once) == made
    assert mirror_layout(leaning()).row("line").run.turn is None
    both = sound(mirror_copies(made, MEMBERS))
    copies = tuple(t.id for t in both.tuners[-3:])
    assert ways(both, copies) == pytest.approx([9.5] * 3, abs=1e-9)
    for edit in (lambda now: set_turn(now, "line 1", 190.0), lambda now: set_row_heading(now, "line", 88.0), lambda now: square_row(now, "line")):
        echoed = echo_features(both, edit(both), ["line 1"])
        assert ways(echoed, copies) == pytest.approx([(180.0 - way) % 360 for way in ways(echoed)], abs=1e-9)
        assert ways(echoed)[0] == ways(edit(made))[0] != 170.5


def test_who_joins_or_leaves_the_row_points_its_way():
    made = leaning(turn=170.5)
    more = duplicate(made, ["line 1"])
    assert ways(more, (*MEMBERS, more.tuners[-1].id)) == pytest.approx([170.5] * 4, abs=1e-9)
    freed = sound(free_from_row(made, "line 1"))
    assert freed.tuner("line 1").place.turn == pytest.approx(170.5, abs=1e-9) and ways(freed) == pytest.approx(ways(made), abs=1e-9)


def test_a_row_on_a_line_keeps_the_one_way_that_all_pointed():
    freed = leaning(turn=170.5)
    assert make_row(freed, MEMBERS, "straight").rows[-1].run.turn == 170.5
    for id in MEMBERS:
        freed = set_turn(free_from_row(freed, id), id, 171.25)
    assert make_row(freed, MEMBERS, "straight").rows[-1].run.turn == 171.25
    assert make_row(set_turn(freed, "line 1", 9.0), MEMBERS, "straight").rows[-1].run.turn is None
    assert make_row(set_turn(freed, "line 1", None), MEMBERS, "straight").rows[-1].run.turn is None
    along = make_row(twelve(), [f"treble face {k}" for k in (1, 2, 3)], "straight")
    assert along.rows[-1].run.turn is None


def test_a_file_without_it_opens_and_one_with_what_is_not_known_is_refused_in_a_sentence():
    plainly = json.loads(encode(leaning()))
    run = plainly["rows"][0]["run"]
    del run["turn"]
    assert decode(json.dumps(plainly).encode()) == leaning()
    run["twist"] = 3.0
    with pytest.raises(FormatError, match="twist.*If a newer Pegwright wrote it, update Pegwright to open it"):
        decode(json.dumps(plainly).encode())


def test_refusals():
    for sentence, edit in (
            ("follows its edge", lambda: square_row(plain(), "flank")),
            ("follows its edge", lambda: set_row_heading(plain(), "flank", 90.0)),
            ("no row named", lambda: square_row(plain(), "nothing")),
            ("heading must be at most 360", lambda: set_row_heading(leaning(turn=1.0), "line", 361.0)),
            ("heading must be at least -360", lambda: set_row_heading(leaning(turn=1.0), "line", math.nan))):
        with pytest.raises(GeometryError, match=sentence):
            edit()


def test_one_that_is_freed_and_taken_in_again_points_as_the_others_to_the_last_bit():
    """Turned to radians and back, 180.8 degrees is another number, as one tenth of a degree in seven is."""
    assert math.degrees(math.radians(180.8)) != 180.8
    again = make_row(free_from_row(set_turn(leaning(), "line 1", 180.8), "line 0"), MEMBERS, "straight")
    assert again.row(next(t for t in again.tuners if t.id == "line 0").place.row).run.turn == 180.8
