"""The glue line of a scarf joint against one made by sawing and turning: no formula of the program, only straight pieces of wood.

Source: own trigonometry. A shaft of thickness N lies flat, its underside at depth N; its end is cut down to the slope of the
head's face, which leaves the nut line at the pitch. The head piece is glued under it. So in the frame of the shaft the joint is
level at depth N under the nut line, wherever that is in the frame of the head.
"""

import math

import numpy as np
import pytest

from geometry.layout import Blank
from geometry.solids.scarf import scarf_of


def turned(pitch: float) -> np.ndarray:
    """From (along, down) of the head to (along, down) of the neck."""
    c, s = math.cos(pitch), math.sin(pitch)
    return np.array([[c, -s], [s, c]])


@pytest.mark.parametrize("degrees", [4.0, 10.0, 13.0, 17.0, 40.0])
@pytest.mark.parametrize("veneers", [(0.0, 0.0), (1.5, 0.6)])
def test_the_joint_is_level_in_the_neck(degrees, veneers):
    blank = Blank(bass=40, treble=40, tip=200, thickness=15.0, face_veneer=veneers[0], back_veneer=veneers[1], scarf=62.0)
    joint = scarf_of(blank, degrees)
    at_face, at_back = np.array([joint.face, blank.face_veneer]), np.array([joint.back, blank.thickness - blank.back_veneer])
    neck = turned(math.radians(degrees))
    face, back = neck @ at_face, neck @ at_back
    assert face[1] == pytest.approx(back[1])
    assert np.linalg.norm(at_face - at_back) == pytest.approx(joint.length)
    # Where the core's face leaves the nut line the neck is as thick as the joint lies under that.
    assert face[1] - (neck @ np.array([0.0, blank.face_veneer]))[1] == pytest.approx(joint.neck)
    for share in (0.0, 0.3, 1.0):
        y, z = at_face + share * (at_back - at_face)
        assert joint.level(y) == pytest.approx(z)


def test_a_head_of_15_mm_at_13_degrees_by_a_table_of_sines():
    """sin 13 = 0.224951, tan 13 = 0.230868 (four-figure tables: 0.2250, 0.2309): 15 / 0.224951 = 66.681, 15 / 0.230868 = 64.972."""
    joint = scarf_of(Blank(bass=40, treble=40, tip=200, thickness=15.0, scarf=66.68), 13.0)
    assert joint.length == pytest.approx(66.681, abs=2e-3)
    assert joint.face - joint.back == pytest.approx(64.972, abs=2e-3)
    assert joint.neck == pytest.approx(15.0, abs=1e-3)


@pytest.mark.parametrize("scarf", [None, 0.0])
def test_without_one_in_the_head_there_is_no_line(scarf):
    assert scarf_of(Blank(bass=40, treble=40, tip=200, thickness=15.0, scarf=scarf), 13.0) is None
