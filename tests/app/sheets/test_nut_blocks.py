"""The strings in the nut on paper: where each is marked, by hand, and re-measured in the PDF."""

import math

import pytest
from msgspec.structs import replace

from app.formats.mark_shapes import mark_box
from app.sheets import pages
from app.sheets.lay import flow, space
from app.sheets.nut_blocks import BODY, nut_blocks
from geometry.beginning.begin import begin
from geometry.beginning.instruments import usual
from geometry.drawing import Label, Stroke
from geometry.edits import mirror_layout
from geometry.layout import Ear
from geometry.lengths import speaking
from geometry.strings.runs import runs
from tests.app.formats.out.pdf_reading import drawn
from tests.app.sheets.printed import layout, made, opened, section

WIDE = 180.0
MANDOLIN, GUITAR = begin(usual("mandolin")), begin(usual("guitar"))


def marks(blocks):
    return [mark for block in blocks for placed in block.placed for mark in placed.drawing]


def rows(blocks):
    """The words of each row of the table, from left to right."""
    return [[mark.text for placed in block.placed for mark in placed.drawing if isinstance(mark, Label)] for block in blocks[3:]]


def ticks(blocks):
    """How far from the bass end each string's line crosses the edge at the neck, in order, mm."""
    nut, *others = strokes(blocks)
    (end, edge), *_ = corners(nut)
    lines = [path for path in others if path.start[1] != path.end[1]]
    return [path.start[0] + (path.end[0] - path.start[0]) * (edge - path.start[1]) / (path.end[1] - path.start[1]) - end for path in lines]


def strokes(blocks):
    return [mark.path for mark in marks(blocks[1:2]) if isinstance(mark, Stroke)]


def corners(path):
    return [segment.start for segment in path.segments]


def test_a_mandolins_strings_by_hand():
    """29 wide, 23.4 from the first to the last, pairs of 2.2: the middles of the courses stand (23.4 - 2.2) / 3 = 7.067 apart, the thickest
    string 2.8 from the end. Skins of 1.016 take 1.016 from the air of 2.2, those of 1.016 and 0.66 take 0.838 from 4.867."""
    blocks = nut_blocks(MANDOLIN, WIDE)
    by_hand = [2.8 + 21.2 / 3 * course + 2.2 * second for course in range(4) for second in range(2)]
    assert ticks(blocks) == pytest.approx(by_hand, abs=1e-9)
    found = rows(blocks)
    assert found[0][:5] == ["8", "G3", "4", "1.016", "2.80"]
    assert found[1][:7] == ["7", "G3", "4", "1.016", "5.00", "2.20", "1.18"]
    assert found[2][:7] == ["6", "D4", "3", "0.660", "9.87", "4.87", "4.02"]


def test_on_a_slanted_nut_places_are_along_it_and_the_air_is_square_to_the_strings():
    """Along a line that is 30 degrees off, everything is 1 / cos 30 = 1.1547 as far apart."""
    slanted = replace(MANDOLIN, nut=replace(MANDOLIN.nut, slant=30.0))
    assert ticks(nut_blocks(slanted, WIDE)) == pytest.approx([x / math.cos(math.radians(30)) for x in ticks(nut_blocks(MANDOLIN, WIDE))])
    assert rows(nut_blocks(slanted, WIDE))[1][5:7] == ["2.54", "1.18"]
    assert "30.0° off square" in " ".join(m.text for m in marks(nut_blocks(slanted, WIDE)[:1]) if isinstance(m, Label))


def test_on_a_slanted_nut_lines_and_ends_run_as_the_strings_do():
    """The bass end nearer the tip: with that end on the left and the head above, the centreline leans 20 degrees to the left."""
    nut, *lines = strokes(nut_blocks(replace(GUITAR, nut=replace(GUITAR.nut, slant=20.0)), WIDE))
    bass, treble, treble_at_head, bass_at_head = corners(nut)
    assert treble[0] - bass[0] == pytest.approx(GUITAR.nut.width / math.cos(math.radians(20))), "its length along the slant"
    for low, high in ((bass, bass_at_head), (treble, treble_at_head), *((line.start, line.end) for line in lines)):
        assert math.atan2(high[0] - low[0], high[1] - low[1]) == pytest.approx(math.radians(-20))


def test_it_says_at_which_end_the_first_string_lies_where_they_are_counted():
    def said(layout):
        return " ".join(m.text for m in marks(nut_blocks(layout, WIDE)[:1]) if isinstance(m, Label))
    named = replace(MANDOLIN, strings=tuple(replace(s, id=f"string {s.id}") for s in MANDOLIN.strings))
    assert "String 1 lies at the treble end." in said(MANDOLIN) and "String 1 lies at the bass end." in said(mirror_layout(MANDOLIN))
    assert "String 1" not in said(named) and "String 1" not in said(replace(MANDOLIN, strings=MANDOLIN.strings[-1:], tuners=()))


def test_it_says_how_far_each_string_bends_aside_and_down():
    """Against the direction of the string, from where it crosses the nut to where it touches its post."""
    strings = (replace(GUITAR.strings[0], id="1", diameter=1.0),)
    tuner = replace(next(t for t in GUITAR.tuners if t.string == GUITAR.strings[0].id), string="1")
    head = replace(GUITAR, strings=strings, tuners=(tuner,))
    (run,) = runs(head)
    (dx, dy), fall = (run.post[0] - run.nut[0], run.post[1] - run.nut[1]), head.nut.height - run.height
    aside, phi = math.atan2(dx, dy), math.atan(fall / math.hypot(dx, dy))
    # Out of the plane of a neck from which the head leans back by the pitch: the part of the direction that points down from it.
    down = math.asin(math.cos(phi) * math.cos(aside) * math.sin(math.radians(head.nut.pitch)) + math.sin(phi) * math.cos(math.radians(head.nut.pitch)))
    side = "treble" if dx > 0 else "bass"
    assert rows(nut_blocks(head, WIDE))[0][-2:] == [f"{math.degrees(abs(aside)):.1f}° {side}", f"{math.degrees(down):.1f}°"]
    other = mirror_layout(head)
    assert rows(nut_blocks(other, WIDE))[0][-2].endswith("treble" if side == "bass" else "bass")


def test_the_nut_is_not_parted_and_begins_a_page_where_it_has_no_room_left():
    blocks = nut_blocks(MANDOLIN, WIDE)
    whole = sum(block.height for block in blocks)
    above = space(20.0)
    assert len(flow([replace(above, placed=blocks[0].placed), *blocks], (0.0, 0.0, WIDE, whole + 20.0))) == 1
    first, second = flow([replace(above, placed=blocks[0].placed), *blocks], (0.0, 0.0, WIDE, whole + 19.0))
    assert len(first) == 1 and len(second) == sum(len(block.placed) for block in blocks)


def test_names_of_near_strings_stand_on_several_lines():
    blocks = nut_blocks(replace(MANDOLIN, strings=tuple(replace(s, id=f"string {s.id}") for s in MANDOLIN.strings)), WIDE)
    names = [mark for mark in marks(blocks[1:2]) if isinstance(mark, Label) and mark.text.startswith("string")]
    assert len({mark.at[1] for mark in names}) >= 4 and len(names) == 8


def test_no_name_lies_across_the_line_of_another_string_however_wide_it_is():
    for head in (GUITAR, MANDOLIN):
        named = replace(head, strings=tuple(replace(one, id=f"{'wound string with a name as long as the head ' * (i % 2)}{i}") for i, one in enumerate(head.strings)))
        strip = nut_blocks(named, WIDE)[1:2]
        lines = [mark.path.box for mark in marks(strip) if isinstance(mark, Stroke) and mark.style == "check bar"]
        names = [mark for mark in marks(strip) if isinstance(mark, Label)]
        assert len(names) == len(named.strings) + 2
        for mark in names:
            x0, y0, x1, y1 = mark_box(mark)
            assert x0 >= -0.5 and x1 <= WIDE + 0.5
            assert not [box for box in lines if x0 + 0.3 < box[0] < x1 - 0.3 and box[1] < mark.at[1] + mark.height and box[3] > mark.at[1]], mark.text


def test_without_strings_there_is_nothing_and_no_column_is_empty():
    def titles(layout):
        return [mark.text for mark in marks(nut_blocks(layout, WIDE)[2:3]) if isinstance(mark, Label)]

    assert nut_blocks(replace(MANDOLIN, strings=(), tuners=()), WIDE) == []
    assert "course" in titles(MANDOLIN) and "course" not in titles(GUITAR)
    unnamed = replace(GUITAR, strings=tuple(replace(string, note="") for string in GUITAR.strings))
    assert "tuned to" in titles(GUITAR) and "tuned to" not in titles(unnamed)
    assert titles(replace(unnamed, strings=unnamed.strings[:1])) == ["string", "diameter", "from the bass end", "aside", "down"]
    assert titles(replace(unnamed, strings=unnamed.strings[:1], tuners=())) == ["string", "diameter", "from the bass end"]
    with speaking("in"):
        assert rows(nut_blocks(GUITAR, WIDE))[0][2].endswith('"')
    with speaking("in64"):
        assert not any("/" in cell for row in rows(nut_blocks(MANDOLIN, WIDE)) for cell in row)


def test_the_nut_is_printed_at_full_size():
    """Measured in the PDF: the rectangle of the demo's nut is as wide as the nut."""
    head = layout("demo")
    number = next(i for i, page in enumerate(made("demo")) if "Strings in the nut" in page.sections)
    boxes = [[[p[axis] for p in path.points] for axis in (0, 1)] for path in drawn(opened("demo")[number])]
    wide = [max(xs) - min(xs) for xs, ys in boxes if max(ys) - min(ys) == pytest.approx(BODY, abs=0.01)]
    assert wide == [pytest.approx(head.nut.width, abs=0.01)]


def test_the_nut_stands_under_the_lists_or_behind_the_pictures_where_there_is_room():
    at_the_nut, at_full_size = "Where each string crosses the nut", "lay it on the nut, end on end"
    for paper, above in (("A4", "Cut list and parts"), ("Letter", "Running order")):
        assert f"{above} + Strings in the nut" in [page.title for page in made("demo", paper)]
        assert at_full_size in section("demo", "Strings in the nut", paper)
        assert section("demo", "Cover", paper).count(at_the_nut) == 1


def test_the_nut_has_a_page_of_its_own_where_no_other_has_room():
    """Glued up, the demo has longer lists and more steps."""
    ears = tuple(Ear(id=f"ear {side}", side=side, width=12.0, start=20.0, end=180.0) for side in ("bass", "treble"))
    head = replace(layout("demo"), blank=replace(layout("demo").blank, face_veneer=1.5, back_veneer=0.6, scarf=40.0), ears=ears)
    assert "Strings in the nut" in [page.title for page in pages(head, "Letter", ())]
