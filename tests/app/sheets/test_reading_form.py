"""The form of readings on paper, filled in with what the job book holds."""

import pytest
from msgspec.structs import replace

from app.languages.catalogue import speak
from app.sheets.lay import flow
from app.sheets.reading_pages import reading_blocks
from geometry import saying
from geometry.beginning.begin import begin
from geometry.beginning.instruments import usual
from geometry.drawing import Label
from geometry.layout import Reading
from geometry.measured import drillings
from tests.app.sheets.specimens import demo


def test_a_reading_at_the_square_edge_stands_on_the_form_in_the_forms_terms():
    """0.4 mm off at the square edge is 0.4 mm off on the finished outline."""
    layout = demo()
    bore = next(d for d in drillings(layout).values() if d.role == "post" and d.of == "treble side 1")
    told = {"y": (bore.mark[1], bore.start[1]), "depth": (bore.stop, bore.depth)}
    taken = tuple(Reading(piece=layout.book.piece, drilling=bore.id, what=what, how="square edge", value=square + 0.4, planned=square)
                  for what, (square, _) in told.items())
    blocks = reading_blocks(replace(layout, book=replace(layout.book, readings=taken)), 180.0)
    texts = [mark.text for block in blocks for one in block.placed for mark in one.drawing if isinstance(mark, Label)]
    for _, finished in told.values():
        assert f"{finished + 0.4:.2f}" in texts


def test_the_plans_of_the_form_line_up_to_a_hundredth():
    """91.7 under 49.24 is misread as easily as it is read."""
    layout = demo()
    said = [mark.text for block in reading_blocks(layout, 180.0) for one in block.placed for mark in one.drawing if isinstance(mark, Label)]
    asked = [d for d in drillings(layout).values() if d.operation not in ("screw pilot", "locating pin hole")]
    assert len(asked) == 18 < len(drillings(layout))
    for d in asked:
        row = said.index(f"{d.id} {d.operation}")
        told = [text for text in said[row + 1:row + 9] if text]
        assert told[:3] == [f"{value:.2f}" for value in (d.start[0] if d.upright else d.start[2], d.start[1], d.diameter)], d.id
        assert told[3] == ("through" if d.through else f"{d.depth:.2f}"), d.id


def test_no_word_of_the_form_is_broken_where_words_are_long():
    """The German words for post bore and diameter are wider than any number beside them."""
    speak("de")
    try:
        said = [mark.text for block in reading_blocks(demo(), 165.0) for one in block.placed for mark in one.drawing if isinstance(mark, Label)]
    finally:
        saying.use(None)
    assert {"durch", "Durchmesser", "Wellenbohrung"} <= set(said)


@pytest.mark.parametrize("operation", ["screw pilot", "locating pin hole"])
def test_what_cannot_be_read_is_asked_for_only_where_it_was(operation):
    """No caliper enters 1.6 mm, and pin holes are plugged on the finished piece; what somebody read all the same is told."""
    layout = demo()
    pilots = [d for d in drillings(layout).values() if d.operation == operation]
    taken = (Reading(piece=layout.book.piece, drilling=pilots[0].id, what="diameter", value=1.7, planned=1.6),)

    def told(head):
        return [mark.text for block in reading_blocks(head, 180.0) for one in block.placed for mark in one.drawing if isinstance(mark, Label)]

    assert not any(text.endswith(operation) for text in told(layout))
    assert [text for text in told(replace(layout, book=replace(layout.book, readings=taken))) if text.endswith(operation)] == [f"{pilots[0].id} {operation}"]


def test_distances_that_were_read_are_told_as_they_were_taken():
    layout = demo()
    one, other = list(drillings(layout))[:2]
    taken = tuple(Reading(piece=layout.book.piece, drilling=one, other=other, what="distance", how=how, value=12.34, planned=planned)
                  for how, planned in (("over the walls", 12.0), ("", None)))
    blocks = reading_blocks(replace(layout, book=replace(layout.book, readings=taken)), 180.0)
    said = " ".join(mark.text for block in blocks for placed in block.placed for mark in placed.drawing if isinstance(mark, Label))
    assert f"{one} to {other}, over the walls: 12.34, planned 12" in said and f"{one} to {other}, middle to middle: 12.34" in said


def test_lines_to_write_on_stand_with_what_they_are_for_or_nowhere():
    """Four lines of 6.2 mm for distances, on a page that has all room for them, all but a hair, and next to none."""
    blocks = reading_blocks(demo(), 180.0)
    whole = sum(block.height for block in blocks)
    for room, lines in ((whole + 0.01, 4), (whole - 0.1, 0), (whole - 24.0, 0)):
        (page,) = flow(blocks, (0.0, 0.0, 180.0, room))
        said = [mark.text for one in page for mark in one.drawing if isinstance(mark, Label)]
        assert (said.count("how"), any(text.startswith("Distances between") for text in said)) == (lines, lines > 0)


def test_german_rows_of_short_names_take_one_line():
    """It is the titles that wrap."""
    head = begin(usual("mandolin"))
    speak("de")
    try:
        rows = [[mark.text for one in block.placed for mark in one.drawing if isinstance(mark, Label)] for block in reading_blocks(head, 180.0)]
    finally:
        saying.use(None)
    assert "bass 1.1.1 Wellenbohrung" in [row[0] for row in rows if row]
