"""The wrap paper as the maker uses it: printed, measured, folded round the blank, and held against the axes in space.

The marks are read back from the PDF by PDFium; nothing of the drawing code is asked where they are.
"""

import math

import pytest

from geometry.solids import holes
from tests.app.formats.out.pdf_reading import lines
from tests.app.sheets.printed import layout, made, opened, work
from tests.app.sheets.test_pdf_sheets import crosses

HAIR = 0.02
"""Largest distance of a printed mark from its axis, mm."""
SINGLE = [("demo", "A4"), ("demo", "Letter"), ("slotted", "A4"), ("slotted", "Letter"), ("plain", "A4")]
"""Layouts and papers whose wrap is one page."""


def sheet(name, paper):
    """(page as data, page in PDFium) of the wrap paper."""
    at = [i for i, page in enumerate(made(name, paper)) if page.title == "Wrap paper"]
    assert len(at) == 1
    return made(name, paper)[at[0]], opened(name, paper)[at[0]]


def folded_back(head, fold_bass, fold_treble, nut, p):
    """A point of the paper (mm on the page) on the blank: the strips beyond the folds go down the edges."""
    middle = (fold_bass * head.blank.treble + fold_treble * head.blank.bass) / (head.blank.bass + head.blank.treble)
    x, y = p[0] - middle, p[1] - nut
    if p[0] > fold_treble + 1e-3:
        return (head.blank.treble, y, p[0] - fold_treble)
    if p[0] < fold_bass - 1e-3:
        return (-head.blank.bass, y, fold_bass - p[0])
    return (x, y, 0.0)


def folds(name, paper):
    """x of both fold lines and y of the nut line, found on the printed page by what the blank must measure."""
    head = layout(name)
    _, page = sheet(name, paper)
    upright = [(a, b) for a, b in lines(page) if abs(a[0] - b[0]) < 1e-3]
    lying = [(a, b) for a, b in lines(page) if abs(a[1] - b[1]) < 1e-3]
    long = head.blank.tip + head.blank.behind
    found = sorted({round(a[0], 3) for a, b in upright if abs(math.dist(a, b) - long) < HAIR})
    wide = head.blank.bass + head.blank.treble
    pairs = [(x, z) for x in found for z in found if abs(z - x - wide) < HAIR]
    # The cut line lies a thickness outside the folds; the folds are the pair with a line a thickness beyond each.
    edges = sorted({round(p[0], 3) for a, b in lines(page) for p in (a, b)})
    (pair,) = [(x, z) for x, z in pairs if any(abs(e - (x - head.blank.thickness)) < HAIR for e in edges)
               and any(abs(e - (z + head.blank.thickness)) < HAIR for e in edges)]
    nut = [a[1] for a, b in lying if abs(math.dist(a, b) - head.nut.width) < HAIR]
    assert len({round(y, 3) for y in nut}) == 1
    return *pair, nut[0]


def off_axis(drilling, p):
    """Distance of a point from the drilling's axis in space, mm."""
    s, d = drilling.start, drilling.direction
    v = [p[i] - s[i] for i in range(3)]
    along = sum(v[i] * d[i] for i in range(3))
    return math.dist(p, [s[i] + along * d[i] for i in range(3)])


def on_the_wrap(d):
    """Whether a drilling is pricked through the wrap: not from the back, and no screw of a side tuner, drilled when the edge is gone."""
    return d.surface != "back" and not (d.surface != "face" and d.role in ("screw", "pin"))


@pytest.mark.parametrize(("name", "paper"), SINGLE)
def test_folded_round_the_blank_every_mark_lies_on_its_axis(name, paper):
    head = layout(name)
    placed = folds(name, paper)
    marks = [folded_back(head, *placed, p) for p in crosses(sheet(name, paper)[1])]
    checked = 0
    for hole in holes(head):
        for d in hole.drillings:
            if not on_the_wrap(d):
                continue
            assert d.mark is not None
            near = min(marks, key=lambda m: math.dist(m, d.mark))
            assert off_axis(d, near) < HAIR, (d.id, near, d.mark)
            assert math.dist(near, d.mark) < HAIR, d.id
            checked += 1
    assert checked == sum(on_the_wrap(d) for hole in holes(head) for d in hole.drillings)


@pytest.mark.parametrize(("name", "paper"), SINGLE)
def test_no_mark_of_the_wrap_lies_where_nothing_is_drilled(name, paper):
    """Crosses are pricked: each is a drilling, a pin or a waste hole."""
    head = layout(name)
    placed = folds(name, paper)
    wanted = [d.mark for hole in holes(head) for d in hole.drillings if on_the_wrap(d)]
    wanted += [(x, y, 0.0) for op in work(name).ops if op.waste_holes for x, y in op.waste_holes.centres]
    page = sheet(name, paper)[0]
    window = page.content[1].clip
    for p in crosses(sheet(name, paper)[1]):
        if window[0] < p[0] < window[2] and window[1] < p[1] < window[3]:
            mark = folded_back(head, *placed, p)
            assert min(math.dist(mark, w) for w in wanted) < HAIR, mark


def test_a_bore_that_starts_on_the_back_is_not_on_the_wrap():
    head = layout("plain")
    placed = folds("plain", "A4")
    marks = [folded_back(head, *placed, p) for p in crosses(sheet("plain", "A4")[1])]
    peep = next(d for hole in holes(head) for d in hole.drillings if d.of == "peep")
    assert min(math.dist(m[:2], peep.start[:2]) for m in marks) > 5.0
