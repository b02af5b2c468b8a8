"""The glue line of a scarf joint against one made by sawing and turning: no formula of the program, only straight pieces of wood.

Source: own trigonometry. A shaft of thickness N lies flat, its underside at depth N; its end is cut down to the slope of the
head's face, which leaves the nut line at the pitch. The head piece is glued under it. So in the frame of the shaft the joint is
level at depth N under the nut line, wherever that is in the frame of the head.
"""

import math

import numpy as np
import pytest

from geometry.layout import Blank, Nut
from geometry.solids.scarf import scarf_of


def turned(pitch: float) -> np.ndarray:
    """From (along, down) of the head to (along, down) of the neck."""
    c, s = math.cos(pitch), math.sin(pitch)
    return np.array([[c, -s], [s, c]])


@pytest.mark.parametrize("degrees", [4.0, 10.0, 13.0, 17.0, 40.0])
@pytest.mark.parametrize("veneers", [(0.0, 0.0), (1.5, 0.6)])
def test_the_joint_is_level_in_the_neck(degrees, veneers):
    blank = Blank(bass=40, treble=40, tip=200, thickness=15.0, face_veneer=veneers[0], back_veneer=veneers[1], scarf=62.0)
    joint = scarf_of(blank, Nut(pitch=degrees))
    at_face, at_back = np.array([joint.face, blank.face_veneer]), np.array([joint.back, blank.thickness - blank.back_veneer])
    neck = turned(math.radians(degrees))
    face, back = neck @ at_face, neck @ at_back
    assert face[1] == pytest.approx(back[1])
    assert np.linalg.norm(at_face - at_back) == pytest.approx(joint.length)
    # Where the core's face leaves the nut line the neck is as thick as the joint lies under that.
    assert face[1] - (neck @ np.array([0.0, blank.face_veneer]))[1] == pytest.approx(joint.neck)
    for share in (0.0, 0.3, 1.0):
        y, z = at_face + share * (at_back - at_face)
        assert joint.level((7.0, y)) == pytest.approx(z)


def test_a_head_of_15_mm_at_13_degrees_by_a_table_of_sines():
    """sin 13 = 0.224951, tan 13 = 0.230868 (four-figure tables: 0.2250, 0.2309): 15 / 0.224951 = 66.681, 15 / 0.230868 = 64.972."""
    joint = scarf_of(Blank(bass=40, treble=40, tip=200, thickness=15.0, scarf=66.68), Nut(pitch=13.0))
    assert joint.length == pytest.approx(66.681, abs=2e-3)
    assert joint.face - joint.back == pytest.approx(64.972, abs=2e-3)
    assert joint.neck == pytest.approx(15.0, abs=1e-3)


@pytest.mark.parametrize("scarf", [None, 0.0])
def test_without_one_in_the_head_there_is_no_line(scarf):
    assert scarf_of(Blank(bass=40, treble=40, tip=200, thickness=15.0, scarf=scarf), Nut(pitch=13.0)) is None


@pytest.mark.parametrize("slant", [-12.0, 0.0, 8.0])
def test_at_a_slanted_nut_the_head_leans_about_its_line_and_the_joint_stays_level_in_the_neck(slant):
    """The head is turned about the nut line in space: whatever lies on the joint then is as deep as any other point of it."""
    blank, nut = Blank(bass=40, treble=40, tip=200, thickness=15.0, face_veneer=1.0, scarf=62.0), Nut(pitch=14.0, slant=slant)
    joint = scarf_of(blank, nut)
    bass, treble = np.array([*nut.at(-20.0), 0.0]), np.array([*nut.at(20.0), 0.0])
    axis = (treble - bass) / np.linalg.norm(treble - bass)

    def down(p: np.ndarray) -> float:
        c, s = math.cos(math.radians(14.0)), math.sin(math.radians(14.0))
        turned = p * c + np.cross(axis, p) * s + axis * (axis @ p) * (1 - c)  # Rodrigues: z runs into the wood, the tip goes down
        return turned[2]

    points = [np.array([x, joint.y(x, back), blank.thickness if back else 1.0]) for x in (-30.0, 0.0, 25.0) for back in (False, True)]
    points += [np.array([x, y, joint.level((x, y))]) for x, y in ((-20.0, 30.0), (10.0, 45.0))]
    assert np.ptp([down(p) for p in points]) < 1e-9
    assert down(points[0]) - down(np.array([0.0, 0.0, 1.0])) == pytest.approx(joint.neck)
    across = np.array([*nut.ahead, 0.0])
    assert abs((points[0] - points[1]) @ across) == pytest.approx(math.sqrt(joint.length ** 2 - 14.0 ** 2))
    for p in points[:6:2]:
        assert joint.off((p[0], p[1]), False) == pytest.approx(0.0)
    assert joint.off(tuple((points[0] + 5.0 * across)[:2]), False) == pytest.approx(5.0)
