"""Moves that are proposed: they gain, they harm nothing, they keep what is held, and twins stay twins."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from geometry.accuracy.knobs import knobs
from geometry.accuracy.proposal import propose_moves
from geometry.accuracy.simulation import simulate
from geometry.cancellation import Stopped, asking
from geometry.checks import check
from geometry.edits import set_field
from geometry.layout import EdgePlace, FreePlace, Headstock, Row, RowPlace, StraightRun, Tuner, validate
from geometry.solids.frames import frames
from geometry.solids.pins_along import in_bores, pins_along
from tests.geometry.accuracy.specimens import FACE, SIDE, crowded, demo, face_head, head, only, rough, sample, side_head


def worse(before: Headstock, after: Headstock) -> set:
    """Kinds and features of snags that are more than notes and that were not there before."""
    def told(layout):
        return {(s.kind, frozenset(s.between)) for s in check(layout).snags if s.grade != "note"}

    return told(after) - told(before)


def test_a_crowded_tuner_is_moved_away_and_gains() -> None:
    found = propose_moves(crowded(), trials=1500)
    assert found.aim == "within" and found.before.worst > 0.8
    assert found.after.worst < 0.05 and found.after.chance - found.before.chance > 0.7
    moved = dict(found.moves)
    assert moved["treble side 2"][1] == pytest.approx(4.3, abs=1.0)
    assert not worse(crowded(), found.layout)
    # Told as simulated afresh.
    again = simulate(found.layout, 1500, 9)
    assert again.within == pytest.approx(found.after.chance, abs=0.02)


def test_what_is_held_stays() -> None:
    layout = replace(crowded(), tuners=tuple(replace(t, held=t.id in ("treble side 2", "bass side 1"))
                                             for t in crowded().tuners))
    found = propose_moves(layout, trials=500)
    assert not {"treble side 2", "bass side 1"} & set(dict(found.moves))
    every = replace(layout, tuners=tuple(replace(t, held=True) for t in layout.tuners))
    nothing = propose_moves(every, trials=200)
    assert nothing.moves == () and nothing.layout is every and nothing.after == nothing.before


def test_a_row_with_a_held_member_stays() -> None:
    layout = replace(demo(), tuners=tuple(replace(t, held=t.id == "bass face 2") for t in demo().tuners))
    features = [knob.features for knob in knobs(layout)]
    assert not any("bass face 1" in f for f in features) and any("treble face 1" in f for f in features)


def test_a_symmetric_head_stays_symmetric() -> None:
    found = propose_moves(rough(demo(), 1.6), trials=600)
    assert found.moves
    placed = frames(found.layout)
    for id, frame in placed.items():
        if id.startswith("bass"):
            twin = placed[id.replace("bass", "treble")].origin
            assert (-frame.origin[0], frame.origin[1]) == pytest.approx(twin[:2], abs=0.01)


def test_nothing_moves_farther_than_allowed() -> None:
    found = propose_moves(crowded(), farthest=1.5, trials=400)
    assert found.moves and all((x * x + y * y) ** 0.5 < 1.6 for _, (x, y) in found.moves)


def test_a_layout_that_no_move_helps_comes_back_as_it_was() -> None:
    layout = sample("six-in-line")  # its trouble is a pin, which proposals leave alone
    found = propose_moves(layout, trials=1000)
    assert found.layout is layout and found.moves == () and found.before == found.after


def test_the_same_seed_proposes_the_same_and_tells_how_far_it_is() -> None:
    heard: list[float] = []
    assert propose_moves(crowded(), trials=200, seed=4, progress=heard.append) == propose_moves(crowded(), trials=200, seed=4)
    assert heard == sorted(heard) and heard[-1] == 1.0


def test_it_can_be_stopped() -> None:
    count = [0]

    def cancelled() -> bool:
        count[0] += 1
        return count[0] > 400

    with pytest.raises(Stopped):
        propose_moves(crowded(), trials=300, ask=asking(cancelled))


def test_a_tuner_takes_the_pin_in_its_bore_along() -> None:
    """A bore 3 mm from the outline, a pin in it: as without a pin it goes farther in, and the pin with it."""
    head = sample("three-a-side")
    near = set_field(head, ("rows", "bass row", "run", "inset"), 9.5)
    pinned = pins_along(head, near)
    found, bare = propose_moves(pinned, "within", trials=200), propose_moves(replace(near, pins=()), "within", trials=200)
    assert found.moves == bare.moves and {id for id, _ in found.moves} >= {"bass 1"}
    assert in_bores(head).keys() == in_bores(found.layout).keys() == {"nut pin", "tip pin"}
    assert found.layout.pins[0].at == pytest.approx(frames(found.layout)["bass 1"].origin[:2])


def test_free_face_tuners_move_in_plan_and_straight_rows_by_their_start() -> None:
    free = face_head(only(mark=0.3), at=(34.0, 60.0))
    # Its bore leaves 1.6 mm to the outline at x 40: the way in is the cure.
    found = propose_moves(free, aim="within", trials=1000)
    assert found.moves[0][1][0] < -1.0 and found.after.chance >= found.before.chance
    row = head(rows=(Row(id="line", run=StraightRun(start=(33.0, 40.0), heading=90.0), spacing=40.0),),
               tuners=tuple(Tuner(id=f"line {k}", pattern=FACE, place=RowPlace(row="line", index=k)) for k in range(3)),
               accuracy=only(mark=0.3))
    moved = propose_moves(row, aim="within", trials=1000)
    shifts = {tuple(round(c, 3) for c in by) for _, by in moved.moves}
    assert len(moved.moves) == 3 and len(shifts) == 1 and next(iter(shifts))[0] < -1.0


def test_a_layout_without_tuners_has_nothing_to_turn() -> None:
    assert knobs(head()) == [] and propose_moves(head(), trials=50).moves == ()


def test_soundness_is_looked_after_first() -> None:
    layout = rough(side_head(only(mark=0.3, tilt_degrees=1.0, stop=0.3), along=40.5), 2.0)
    found = propose_moves(layout, trials=1500)
    assert found.aim == "sound" and found.after.chance > found.before.chance and found.moves


@settings(max_examples=5)
@given(st.floats(30, 150), st.floats(30, 150), st.floats(12, 34))
def test_no_proposal_brings_a_new_snag(one: float, two: float, x: float) -> None:
    layout = validate(side_head(only(mark=0.4, tilt_degrees=1.0, template=0.3), tuners=(
        Tuner(id="a", pattern=SIDE, place=EdgePlace(side="treble", along=one)),
        Tuner(id="b", pattern=SIDE, place=EdgePlace(side="bass", along=two)),
        Tuner(id="c", pattern=FACE, place=FreePlace(at=(-x, 90.0))))))
    found = propose_moves(layout, trials=200)
    validate(found.layout)
    assert not worse(layout, found.layout)
    assert found.after.worst <= found.before.worst
