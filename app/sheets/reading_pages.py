"""A form for the caliper: what it can measure of the finished piece, each with its plan and room for the reading."""

from __future__ import annotations

from msgspec.structs import replace

from app.formats.letters import whole_words
from app.sheets.book_pages import taller
from app.sheets.lay import Block, Column, heading, natural, of_marks, paragraph, space, table
from app.sheets.lengths import hundredths, length, unit_words
from geometry.checks.in_wood import by_the_wood
from geometry.drawing import Label, Stroke
from geometry.drawing.heights import READ
from geometry.drawing.shapes import straight
from geometry.layout import PIECES, Blank, Headstock, Reading
from geometry.measured import drillings
from geometry.saying import say
from geometry.solids import Drilling
from geometry.strings.square_line import base_words
from geometry.terms import term

TALL = 6.2
"""Height of a row to write in, mm."""
GAP, WRITTEN = 2.5, 13.0
"""White between columns, and the least room for a number written by hand, mm."""
LEFT_OUT = ("screw pilot", "pin hole", "locating pin hole")
"""Operations whose holes no caliper enters, or that are plugged or cut away on the finished piece: they stand on the form only where they
were read all the same."""
HEADS = {"practice": say("Readings, practice piece"), "real": say("Readings, real piece")}


def reading_blocks(layout: Headstock, width: float) -> list[Block]:
    """A form for the piece on the bench, and what was read of the other piece, if anything was."""
    known = drillings(layout)
    for piece in PIECES:
        layout = by_the_wood(layout, piece)
    pieces = [piece for piece in PIECES if piece == layout.book.piece or any(one.piece == piece for one in layout.book.readings)]
    about = say("Measure the finished piece and write each reading beside its plan; the Readings page of the job book takes "
                "them. x is from the centreline, treble side positive, y from the nut line, both to the middle of the hole; "
                "bores from the side: below the face in place of x. In {unit}.", unit=unit_words())
    read = {one.drilling for one in layout.book.readings}
    asked = [d for d in known.values() if d.operation not in LEFT_OUT and not d.plugged or d.id in read]
    if len(asked) < len(known):
        about = f"{about} {say('Screw pilots, the holes of moulded pins and those of locating pins are left out.')}"
    about = f"{about} {base_words(layout.nut)}".rstrip()
    blocks: list[Block] = []
    for piece in pieces if asked else ():
        taken = [one for one in layout.book.readings if one.piece == piece]
        blocks += [heading(HEADS[piece], width, about), *_form(asked, taken, layout.blank, width), space(4.0),
                   *_distances(taken, width)]
    return blocks


def _form(known: list[Drilling], taken: list[Reading], blank: Blank, width: float) -> list[Block]:
    of = {d.id: d for d in known}
    by = {(one.drilling, one.what): _as_asked(one, blank, of.get(one.drilling)) for one in taken if one.what != "distance"}
    rows = []
    for d in known:
        cells = [f"{d.id} {term(d.operation)}"]
        for what, value in (("x" if d.upright else "below face", d.start[0] if d.upright else d.start[2]), ("y", d.start[1]),
                            ("diameter", d.finished), ("depth", None if d.through else d.depth)):
            found = by.get((d.id, what))
            cells += [say("through", about="in a narrow column") if value is None else hundredths(value), "" if found is None else hundredths(found)]
        rows.append(cells)
    titles = [say("hole")]
    for name in (say("x, below face"), "y", say("diameter"), say("depth")):
        titles += [name, say("read")]
    made = table([Column(title, wide, i > 0) for i, (title, wide) in enumerate(zip(titles, _widths([titles, *rows], width), strict=True))], rows, gap=GAP)
    return [made[0], *(taller(row, TALL) for row in made[1:])]


def _widths(lines: list[list[str]], width: float) -> list[float]:
    """Of what is printed as wide as its words where there is room, else titles as their longest word, and what is left in equal parts
    to write in, WRITTEN mm at least."""
    printed = [0, *range(1, len(lines[0]), 2)]
    room = width - (len(printed) - 1) * (WRITTEN + GAP)
    rows = [[line[i] for i in printed] for line in lines]
    if sum(natural(rows, READ, gap=GAP)) + GAP * (len(printed) - 1) > room:
        rows[0] = [max(whole_words(title), key=len) for title in rows[0]]
    of = dict(zip(printed, natural(rows, READ, room, GAP), strict=True))
    left = (width - sum(of.values()) - GAP * (len(lines[0]) - 1)) / (len(printed) - 1)
    return [of.get(i, left) for i in range(len(lines[0]))]


def _as_asked(one: Reading, blank: Blank, d: Drilling | None) -> float:
    """A reading in the terms of the form, which has x from the centreline and bores on the finished outline, mm."""
    if one.how == "square edge" and one.planned is not None and d is not None:
        return one.value - one.planned + (d.depth if one.what == "depth" else d.start[1])
    return {"bass edge": one.value - blank.bass, "treble edge": blank.treble - one.value}.get(one.how, one.value)


def _distances(taken: list[Reading], width: float) -> list[Block]:
    """Distances that were read, then lines for more, which begin no page where nothing was read."""
    found = [one for one in taken if one.what == "distance"]
    blocks = [replace(paragraph(say("Distances between two holes, and how: over the wood left between, between the far walls, "
                                    "over pins"), width, keep=True), spare=not found)]
    for one in found:
        planned = "" if one.planned is None else say(", planned {length}", length=length(one.planned))
        blocks.append(paragraph(say("{one} to {other}, {how}: {value}{planned}", one=one.drilling, other=one.other,
                                    how=term(one.how) if one.how else say("middle to middle"), value=length(one.value), planned=planned), width))
    line = (Stroke(straight((0.0, -TALL), (width, -TALL)), "dimension"), Label(say("to"), (width * 0.3, -TALL + 1.2), READ, "note"),
            Label(say("how"), (width * 0.55, -TALL + 1.2), READ, "note"), Label(say("read"), (width * 0.82, -TALL + 1.2), READ, "note"))
    return [*blocks, *(of_marks(line, TALL, keep=True) for _ in range(3)), of_marks(line, TALL)]
