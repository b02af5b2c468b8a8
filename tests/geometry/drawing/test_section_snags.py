"""Snags in sections stand where the thing stands that they are about."""

from pathlib import Path

import pytest
from msgspec.structs import replace

from app.formats import headstock
from geometry.checks import check
from geometry.drawing.section_snags import snags_along_bore, snags_on_line
from geometry.drawing.sections import section_along_bore
from geometry.solids import holes
from tests.geometry.drawing.specimens import plain_head

SAMPLE = Path(__file__).parents[3] / "samples" / "mixed-one-slide-too-far.headstock.json"


@pytest.fixture(scope="module")
def head():
    return headstock.read(SAMPLE)


def test_the_bore_that_cuts_a_screw_is_ringed_in_its_own_section(head):
    snags = [snag for snag in check(head).snags if snag.kind != "buttons"]  # buttons turn outside the wood
    signs = snags_along_bore(head, "treble side 2", snags)
    assert len(signs) == 2
    assert all(-head.blank.thickness <= at[1] <= 0.5 for at, _ in signs)
    assert section_along_bore(head, "treble side 2")
    # A tuner on the other side has none in its section.
    assert snags_along_bore(head, "bass side 3", snags) == ()


def test_a_place_at_a_bore_through_the_face_is_as_far_along_as_from_the_border_that_its_button_points_to(head):
    """The plain head's front tuner at (-28, 60) points to the bass border at x = -45: a place at x = -20 is 25 along, 5 deep."""
    snag = replace(next(s for s in check(head).snags if s.grade == "spoils the work"), where=(-20.0, 60.0, 5.0), between=("front", "slot"))
    assert snags_along_bore(plain_head(), "front", [snag]) == (((pytest.approx(25.0), -5.0), "spoils the work"),)
    assert snags_along_bore(plain_head(), "front", [replace(snag, where=(-20.0, 73.0, 5.0))]) == ()


def test_a_line_laid_through_the_place_shows_it_and_one_beside_does_not(head):
    snag = next(s for s in check(head).snags if s.kind == "side-bore-to-screw")
    x, y, z = snag.where
    signs = snags_on_line((x - 20, y), (x + 10, y), [snag])
    assert signs == (((pytest.approx(20.0), pytest.approx(-z)), "spoils the work"),)
    assert snags_on_line((x - 20, y + 6), (x + 10, y + 6), [snag]) == ()
    assert snags_on_line((x + 5, y), (x + 30, y), [snag]) == ()
    assert snags_on_line((x, y), (x, y), [snag]) == ()


def test_notes_are_no_trouble_and_are_not_ringed(head):
    notes = [s for s in check(head).snags if s.grade == "note"]
    assert notes
    for tuner in head.tuners:
        assert snags_along_bore(head, tuner.id, notes, tuple(holes(head))) == ()
