"""Every layout that comes with the program opens, checks and exports, and says that it is invented."""

import math
from itertools import pairwise
from pathlib import Path

import pytest

from app.formats import headstock
from app.sheets import write_sheets
from geometry.checks import check
from geometry.checks.kinds import KINDS
from geometry.curves.polygons import crosses_itself
from geometry.layout import loop_path
from geometry.strings import runs

SAMPLES = sorted((Path(__file__).parents[2] / "samples").glob("*.headstock.json"))
DELIBERATE = {
    "six-in-line": {"locating-pin-to-outline"},
    "slotted-snags-to-find": {"string-to-wall", "hole-to-slot", "seats-overlap"},
    "mixed-one-slide-too-far": {"buttons", "side-bore-to-screw", "counterbore-to-screw"}}
"""Snags that a sample has on purpose, to teach; its notes name them."""


def stem(path: Path) -> str:
    return path.name.removesuffix(headstock.SUFFIX)


def test_there_are_eight():
    assert len(SAMPLES) >= 8


@pytest.mark.parametrize("path", SAMPLES, ids=stem)
class TestEach:
    def test_opens_and_saves_to_the_same_bytes(self, path):
        layout = headstock.read(path)
        assert headstock.encode(layout) == path.read_bytes()

    def test_says_that_it_is_invented(self, path):
        assert headstock.read(path).about.startswith("Invented for demonstration")

    def test_has_no_snag_but_those_that_teach(self, path):
        layout = headstock.read(path)
        found = {snag.kind for snag in check(layout).snags if snag.grade != "note"}
        assert found == DELIBERATE.get(stem(path), set())
        assert bool(found) == ("deliberate" in layout.about)

    def test_each_deliberate_snag_is_named_in_a_note_pinned_to_what_it_is_about(self, path):
        layout = headstock.read(path)
        for snag in check(layout).snags:
            if snag.grade != "note":
                title = KINDS[snag.kind].title.lower()
                assert any(note.on in snag.between and title in note.text.lower() for note in layout.book.remarks), title
        assert all(note.text.startswith("Deliberate: ") for note in layout.book.remarks)
        assert {note.on for note in layout.book.remarks} == {
            id for snag in check(layout).snags if snag.grade != "note" for id in snag.between
            if any(note.on == id for note in layout.book.remarks)}

    def test_the_outline_is_a_smooth_line_with_few_corners_and_lies_in_the_blank(self, path):
        layout = headstock.read(path)
        outline = loop_path(layout.outline)
        assert len(outline.segments) <= 14 and len(outline.corners(math.radians(2))) <= 6
        assert crosses_itself(outline) is None

    def test_every_string_has_its_post(self, path):
        layout = headstock.read(path)
        assert sorted(tuner.string for tuner in layout.tuners) == sorted(string.id for string in layout.strings)
        assert len(runs(layout)) == len(layout.strings)

    def test_of_a_course_in_octaves_the_thin_string_lies_on_the_bass_side(self, path):
        """As in the sets of geometry/strings/sets.py (common practice, no source)."""
        strings = headstock.read(path).strings
        assert all(bass.diameter <= treble.diameter for bass, treble in pairwise(strings) if bass.course == treble.course)

    def test_exports(self, path, tmp_path):
        written = write_sheets(headstock.read(path), tmp_path, paper="Letter", stem=stem(path))
        assert {p.suffix for p in written} == {".dxf", ".svg", ".pdf", ".csv"}
        assert all(p.stat().st_size > 500 for p in written)


def test_the_demo_has_36_holes_and_42_drillings():
    # Twelve tuners with a post bore and two screw holes, six of them with a bushing counterbore
    # (common practice, no source).
    counts = check(headstock.read(next(p for p in SAMPLES if stem(p) == "twelve-string-mixed"))).counts
    assert (counts.holes, counts.counterbores, counts.drilling) == (36, 6, 42)
