"""Left and right hardware."""

from pathlib import Path

import pytest

from app.formats.headstock import read
from geometry.edits import add_hole, add_tuner, hand_for_edge, is_handed, set_hand_by_side, take_other_hand
from geometry.edits.holes import tuners_for_holes
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.layout.generic import PATTERNS
from geometry.solids import holes
from tests.geometry.edits.heads import FACE, LOPSIDED, SIDE, plain, sound

SAMPLES = Path(__file__).parents[3] / "samples"


def screw(head: Headstock, tuner: str) -> tuple[float, float]:
    """Where the one screw of a tuner goes in."""
    drilling, = [drilling for hole in holes(head) if hole.of == tuner for drilling in hole.drillings if drilling.role == "screw"]
    return drilling.start[:2]


def test_the_screw_changes_sides_and_all_else_stays() -> None:
    """By hand: the button points to +x; the screw is 9 mm inward and 9 aside, to the left of it at first."""
    before = add_tuner(plain(), LOPSIDED, (25.0, 120.0))
    name = before.tuners[-1].id
    assert screw(before, name) == pytest.approx((16.0, 129.0))
    after = sound(take_other_hand(before, [name]))
    assert screw(after, name) == pytest.approx((16.0, 111.0))
    assert after.tuner(name).place == before.tuner(name).place
    assert [tuner for tuner in after.tuners if tuner.id != name] == list(before.tuners[:-1])


def test_twice_is_the_first_hardware_again() -> None:
    before = plain()
    once = take_other_hand(before, ["line 0", "line 2", "treble face 1"])
    assert [once.tuner(id).pattern for id in ("line 0", "line 1", "line 2", "treble face 1")] == [
        f"{LOPSIDED} mirrored", LOPSIDED, f"{LOPSIDED} mirrored", FACE]
    twice = take_other_hand(once, ["line 0", "line 2"])
    assert twice.tuners == before.tuners
    assert twice.patterns == once.patterns


def test_hardware_that_is_its_own_image_is_refused() -> None:
    with pytest.raises(GeometryError, match="no left and right"):
        take_other_hand(plain(), ["treble face 1", "treble side 1"])
    assert [pattern.id for pattern in PATTERNS if is_handed(pattern)] == [LOPSIDED]
    assert not is_handed(plain().pattern(SIDE))


@pytest.mark.parametrize("name", ["three-a-side", "eight-strings"])
def test_samples_with_tuners_on_both_edges_have_left_and_right_ones(name: str) -> None:
    """Common practice, no source: cast tuners for three a side are sold as three left and three right."""
    head = read(SAMPLES / f"{name}.headstock.json")
    for tuner in head.tuners:
        if tuner.id.startswith("bass"):
            x, y = screw(head, tuner.id)
            assert screw(head, tuner.id.replace("bass", "treble")) == pytest.approx((-x, y))


BASS, TREBLE = (-25.0, 60.0), (25.0, 60.0)
"""Points near either edge of it."""


def bare() -> Headstock:
    """The plain head without its tuners."""
    return plain(tuners=(), rows=())


def test_a_new_one_on_the_other_edge_is_the_mirror_image() -> None:
    """By hand: screws 9 mm inward; towards the nut on the bass edge, whose left that is, so towards the nut on the treble edge too."""
    head, hardware = hand_for_edge(bare(), LOPSIDED, BASS)
    assert (head, hardware) == (bare(), LOPSIDED), "the first is as it was chosen"
    head = add_tuner(head, hardware, (-25.0, 60.0))
    assert hand_for_edge(head, LOPSIDED, BASS)[1] == LOPSIDED
    for y in (60.0, 90.0):
        head, hardware = hand_for_edge(head, LOPSIDED, TREBLE)
        head = sound(add_tuner(head, hardware, (25.0, y)))
    bass, first, second = (tuner.id for tuner in head.tuners)
    assert screw(head, bass) == pytest.approx((-16.0, 51.0))
    assert screw(head, first) == pytest.approx((16.0, 51.0)) and screw(head, second) == pytest.approx((16.0, 81.0))
    assert hand_for_edge(head, f"{LOPSIDED} mirrored", BASS)[1] == LOPSIDED, "and back"


def test_who_wants_one_hand_on_both_edges_turns_the_first_and_has_it_so() -> None:
    head = add_tuner(add_tuner(bare(), LOPSIDED, (-25.0, 60.0)), LOPSIDED, (25.0, 60.0))
    assert hand_for_edge(head, LOPSIDED, TREBLE) == (head, LOPSIDED)


def test_a_six_in_line_keeps_its_hand() -> None:
    head = add_tuner(bare(), LOPSIDED, (25.0, 60.0))
    head = take_other_hand(head, [head.tuners[0].id])
    assert hand_for_edge(head, f"{LOPSIDED} mirrored", TREBLE) == (head, f"{LOPSIDED} mirrored")


def test_hardware_without_a_hand_is_itself_on_every_edge() -> None:
    head = add_tuner(bare(), FACE, (-25.0, 60.0))
    assert hand_for_edge(head, FACE, TREBLE) == (head, FACE)


def test_holes_on_both_edges_become_left_and_right_ones() -> None:
    head = bare()
    for at in ((-25.0, 60.0), (25.0, 61.0), (-25.0, 90.0), (25.0, 91.0)):
        head = add_hole(head, at, 10.0)
    head = sound(tuners_for_holes(head, [hole.id for hole in head.holes if hole.diameter == 10.0], LOPSIDED))
    assert {(tuner.id.split()[0], tuner.pattern) for tuner in head.tuners} == {("bass", LOPSIDED), ("treble", f"{LOPSIDED} mirrored")}


def test_hardware_of_all_goes_by_the_edge_of_the_first() -> None:
    head = add_tuner(add_tuner(bare(), FACE, (-25.0, 60.0)), FACE, (25.0, 60.0))
    bass, treble = (tuner.id for tuner in head.tuners)
    for first, other in ((bass, treble), (treble, bass)):
        made = sound(set_hand_by_side(head, [first, other], LOPSIDED))
        assert (made.tuner(first).pattern, made.tuner(other).pattern) == (LOPSIDED, f"{LOPSIDED} mirrored")
    assert set_hand_by_side(head, [bass, treble], FACE) == head
    assert len(set_hand_by_side(head, [bass], LOPSIDED).patterns) == len(head.patterns), "nothing that nobody uses"
