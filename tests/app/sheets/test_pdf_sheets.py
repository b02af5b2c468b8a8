"""The printed sheets measured by PDFium: bars, crosses, and pages that join without a step."""

import math

import pytest

from app.formats.paper import PAPERS
from app.formats.pdf_out import pdf_bytes
from app.printing.correction import corrected, measured
from app.sheets.words import PRINT_AT
from geometry.solids import holes
from tests.app.formats.out.pdf_reading import letters, lines, open_pdf
from tests.app.sheets.printed import made, opened
from tests.app.sheets.specimens import large

HAIR = 0.02
"""Largest error of a measured length, mm."""


def crosses(page, x=1.0, y=1.0):
    """Centres of all right-angled crosses of two equal lines, mm on the page when it is stretched so much both ways."""
    found = []
    every = sorted((((a[0] + b[0]) / 2 * x, (a[1] + b[1]) / 2 * y), (a[0] * x, a[1] * y), (b[0] * x, b[1] * y)) for a, b in lines(page))
    for i, (at, a, b) in enumerate(every):
        for other, c, d in every[i + 1:]:
            if other[0] - at[0] > 0.01:
                break
            across = (b[0] - a[0]) * (d[0] - c[0]) + (b[1] - a[1]) * (d[1] - c[1])
            if abs(other[1] - at[1]) < 0.01 and abs(across) < 0.01 and abs(math.dist(a, b) - math.dist(c, d)) < 0.01:
                found.append(at)
    return found


@pytest.fixture(scope="module")
def printed():
    """(pages, opened PDF) of the large head on A4."""
    return made("large"), opened("large")


@pytest.mark.parametrize("paper", sorted(PAPERS))
def test_every_page_has_a_100_mm_bar_both_ways_and_says_how_to_print(paper):
    document = opened("demo", paper)
    assert len(document) == len(made("demo", paper))
    for number, page in enumerate(document, 1):
        bars = [(a, b) for a, b in lines(page) if abs(math.dist(a, b) - 100.0) < 1.0]
        lying = [(a, b) for a, b in bars if abs(a[1] - b[1]) < 0.01]
        upright = [(a, b) for a, b in bars if abs(a[0] - b[0]) < 0.01]
        for kind in (lying, upright):
            assert any(math.dist(a, b) == pytest.approx(100.0, abs=HAIR) for a, b in kind)
        words = " ".join(page.get_textpage().get_text_bounded().split())
        assert PRINT_AT in words and f"page {number} of {len(document)}" in words
        assert "All cautions: on the cover." in words and "Twelve strings, mixed" in words


def test_the_ticks_of_the_bar_stand_every_10_mm(printed):
    page = printed[1][1]
    (bar,) = [(a, b) for a, b in lines(page) if abs(a[1] - b[1]) < 0.01 and abs(math.dist(a, b) - 100) < HAIR]
    ticks = sorted(a[0] for a, b in lines(page) if abs(a[0] - b[0]) < 0.01 and abs(max(a[1], b[1]) - bar[0][1]) < 0.01)
    assert ticks == pytest.approx([bar[0][0] + 10 * i for i in range(11)], abs=HAIR)


def test_nothing_is_printed_in_the_margins_of_the_printer(printed):
    for data, page in zip(*printed, strict=True):
        for a, b in lines(page):
            for x, y in (a, b):
                if not _clipped(data, x, y):
                    assert 9.99 <= x <= data.width - 9.99 and 9.99 <= y <= data.height - 9.99


def _clipped(made, x, y):
    """Whether a clip hides the point: only drawings in windows reach past the margins."""
    return any(p.clip and not (p.clip[0] <= x <= p.clip[2] and p.clip[1] <= y <= p.clip[3]) for p in made.content)


def test_each_tile_shows_its_bores_at_full_size(printed):
    """Every cross on every template page lies where the layout says, moved by that page's own shift."""
    wanted = [d.start[:2] for hole in holes(large()) for d in hole.drillings if d.upright]
    seen = set()
    for sheet, page in _template(printed):
        matrix, clip = sheet.content[1].matrix, sheet.content[1].clip
        found = crosses(page)
        for at in set(wanted):
            x, y = matrix(at)
            if clip[0] + 6 < x < clip[2] - 6 and clip[1] + 6 < y < clip[3] - 6:
                assert min(math.dist((x, y), f) for f in found) < HAIR
                seen.add(at)
    assert len(seen) >= 0.8 * len(set(wanted))


def _template(printed):
    return [(made, page) for made, page in zip(*printed, strict=True) if made.title.startswith("Template")]


@pytest.mark.parametrize(("across", "along"), [(100.0, 100.0), (99.2, 100.7)], ids=["true", "a printer that stretches"])
def test_pages_laid_on_their_joining_letters_make_one_drawing(printed, across, along):
    """As the maker does it: measure the bars, print again corrected, shift each page until equal letters meet, then measure every bore."""
    made_true, document = printed
    if (across, along) != (100.0, 100.0):
        document = open_pdf(pdf_bytes(corrected(made_true, measured(across, along)), "corrected"))
    sheets = [_as_it_comes_out(sheet, page, across / 100, along / 100) for sheet, page in _template((made_true, document))]
    assert len(sheets) >= 4
    shifts = {0: (0.0, 0.0)}
    joints = [names for names, _ in sheets]
    while len(shifts) < len(sheets):
        before = len(shifts)
        for i, here in enumerate(joints):
            for k in [k for k in shifts if i not in shifts]:
                common = sorted(here.keys() & joints[k].keys())
                if common:
                    moves = [(joints[k][c][0] - here[c][0] + shifts[k][0], joints[k][c][1] - here[c][1] + shifts[k][1])
                             for c in common]
                    for move in moves:
                        assert move == pytest.approx(moves[0], abs=HAIR)
                    shifts[i] = moves[0]
                    break
        assert len(shifts) > before, "a page joins no other"
    whole = {(round(x + shifts[i][0], 1), round(y + shifts[i][1], 1)): (x + shifts[i][0], y + shifts[i][1])
             for i, (_, found) in enumerate(sheets) for x, y in found}
    wanted = sorted({d.start[:2] for hole in holes(large()) for d in hole.drillings if d.upright})
    offset = _best_offset(wanted, list(whole.values()))
    for x, y in wanted:
        assert min(math.dist((x + offset[0], y + offset[1]), p) for p in whole.values()) < 2 * HAIR


def _as_it_comes_out(sheet, page, across, along):
    """(joining letters with their places, crosses) of a page of a printer that stretches the sides of the paper by so much."""
    x, y = (along, across) if sheet.width > sheet.height else (across, along)
    return {word: (at[0] * x, at[1] * y) for word, at in _joint_letters(page)}, crosses(page, x, y)


def _joint_letters(page):
    """(letter, place) of the joining marks: single capitals, with a number after Z."""
    return [(word, (x, y)) for word, x, y in letters(page)
            if word and word[0].isupper() and (len(word) == 1 or word[1:].isdigit())]


def _best_offset(wanted, found):
    """The shift from layout to paper: the one that brings most bores onto crosses."""
    anchor = wanted[0]
    def score(f):
        dx, dy = f[0] - anchor[0], f[1] - anchor[1]
        return sum(min(math.dist((x + dx, y + dy), p) for p in found) < 2 * HAIR for x, y in wanted)
    best = max(found, key=score)
    return best[0] - anchor[0], best[1] - anchor[1]
