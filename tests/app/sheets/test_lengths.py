"""Every length that a bench page shows is measured on the printed page by PDFium and held against the layout."""

import math

import msgspec
import pytest

from app.formats.mark_shapes import drawing_box, mark_box, touches
from app.formats.paper import Placed
from app.formats.paper_look import ink
from app.sheets import pages, plan_work
from app.sheets.card_face import section
from app.sheets.cards import cards
from geometry.curves import Line
from geometry.drawing import Area, Label, Stroke
from geometry.solids import holes
from geometry.solids.side import side_bore
from tests.app.formats.out.pdf_reading import drawn
from tests.app.sheets.printed import layout, made, opened, words, work
from tests.app.sheets.test_pdf_sheets import crosses
from tests.geometry.drawing.specimens import plain_head

HAIR = 0.02
"""Largest error of a measured length, mm."""


def boxes(page):
    """(width, height) of every path on a page, mm."""
    found = []
    for one in drawn(page):
        xs, ys = [p[0] for p in one.points], [p[1] for p in one.points]
        found.append((max(xs) - min(xs), max(ys) - min(ys)))
    return found


def pages_of(name, title, paper="A4"):
    return [page for data, page in zip(made(name, paper), opened(name, paper), strict=True) if data.title == title]


def has(found, width, height=None):
    return any(abs(w - width) < HAIR and (height is None or abs(h - height) < HAIR) for w, h in found)


@pytest.mark.parametrize("name", ["demo", "slotted"])
def test_sections_of_side_bores_are_true_to_scale(name):
    """Stop, diameter, thickness of the wood and width of the slot, at full size."""
    head = layout(name)
    found = [box for page in pages_of(name, "Cards") for box in boxes(page)]
    checked = 0
    for card in cards(head, work(name)):
        if card.kind != "side":
            continue
        post = next(d for d in card.drillings if d.role == "post")
        bore = side_bore(head, card.ids[0])
        assert has(found, post.stop, 0.0), f"the stop of {post.id}"
        assert has(found, post.stop + bore.point, post.diameter), f"the bore of {post.id}"
        assert has(found, bore.crossing.leaves - bore.crossing.enters, head.blank.thickness), f"the slot at {post.id}"
        checked += 1
    assert checked == 6


def test_sections_of_face_bores_are_true_to_scale():
    head = layout("demo")
    found = [box for page in pages_of("demo", "Cards") for box in boxes(page)]
    for hole in holes(head):
        for d in hole.drillings:
            if d.role == "counterbore":
                assert has(found, d.diameter, d.depth), d.id
            elif d.role == "post" and d.upright:
                assert has(found, d.diameter, head.blank.thickness - 8.0), d.id  # under its counterbore of 8


@pytest.mark.parametrize("name", ["demo", "slotted"])
def test_passes_of_the_router_are_true_to_scale(name):
    """Cutter, template and depth of each pass, at full size."""
    found = [box for page in pages_of(name, "Cards") for box in boxes(page)]
    for plan in work(name).plans:
        for one in plan.best.passes:
            bit = one.follower.bit
            assert has(found, bit.cutter, bit.cutting_length), f"the cutter of {one.bit}"
            assert has(found, 0.0, one.ends), f"the depth of {one.words}"
    assert any(abs(h - layout(name).template.thickness) < HAIR for _, h in found)


def test_waste_holes_lie_as_they_are_listed():
    """Distance from the first to the last centre on the card, from the crosses."""
    (page,) = (page for data, page in zip(made("demo"), opened("demo"), strict=True) if "Rout bass slot, then treble slot" in words(data))
    row = work("demo").plans[0].waste
    by_level = {}
    for x, y in crosses(page):
        by_level.setdefault(round(y, 1), []).append(x)
    line = next(sorted(xs) for xs in by_level.values() if len(set(round(x, 1) for x in xs)) == len(row.centres))
    steps = [b - a for a, b in zip(line, line[1:], strict=False)]
    assert steps == pytest.approx([row.spacing] * (len(row.centres) - 1), abs=HAIR)


@pytest.mark.parametrize("name", ["demo", "large", "slotted", "plain"])
def test_every_line_on_paper_is_as_long_as_its_mark_says(name):
    """Each straight mark of each page, its length under the page's map against the printed one."""
    for data, page in zip(made(name), opened(name), strict=True):
        printed = sorted(_printed(page))
        wanted = sorted(_wanted(data))
        assert len(printed) == len(wanted)
        assert printed == pytest.approx(wanted, abs=HAIR)


def _printed(page):
    """Lengths of all paths that are one straight line."""
    return [math.dist(one.points[0][:2], one.points[1][:2]) for one in drawn(page)
            if [p[2] for p in one.points] == ["move", "line"]]


def _wanted(data):
    for placed in data.content:
        for mark in placed.drawing:
            if isinstance(mark, Stroke) and not mark.path.closed and len(mark.path.segments) == 1 and _shown(placed, mark):
                a, b = placed.matrix(mark.path.start), placed.matrix(mark.path.end)
                if _straight(mark):
                    yield math.dist(a, b)


def _straight(mark):
    return isinstance(mark.path.segments[0], Line)


def _shown(placed: Placed, mark):
    return placed.clip is None or touches(mark_box(mark, placed.matrix), placed.clip)


def test_a_section_that_is_too_wide_is_printed_smaller_and_says_so():
    """A blank 400 wide: waste of 150 mm and more beside the head, the section at half size with words that can be read."""
    head = plain_head(blank=msgspec.structs.replace(plain_head().blank, bass=200.0, treble=200.0))
    made_pages = pages(head, "A4", ())
    text = " ".join(m.text for page in made_pages for placed in page.content for m in placed.drawing if isinstance(m, Label))
    assert "Section along the bore, half size" in text
    card = next(card for card in cards(head, plan_work(head)) if card.kind == "side")
    whole = drawing_box(section(head, plan_work(head), card)[0])
    assert whole[2] - whole[0] > 180.0
    for page in made_pages:
        if page.title == "Cards":
            for placed in page.content:
                for mark in placed.drawing:
                    if isinstance(mark, Label):
                        assert mark.height * (placed.matrix.similarity() or 1.0) >= 1.29


def test_grounds_of_titles_are_light_enough_to_read_in_black_and_white():
    for page in made("demo"):
        for placed in page.content:
            for mark in placed.drawing:
                if isinstance(mark, Area) and any(isinstance(m, Label) and _over(mark, m) for m in placed.drawing):
                    assert (ink(mark.style).fill or 0.0) <= 0.25, mark.style


def _over(area, label):
    x0, y0, x1, y1 = area.outer.box
    return x0 < label.at[0] < x1 and y0 < label.at[1] < y1
