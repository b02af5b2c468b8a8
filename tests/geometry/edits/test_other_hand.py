"""Left and right hardware."""

from pathlib import Path

import pytest

from app.formats.headstock import read
from geometry.edits import add_tuner, is_handed, take_other_hand
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
