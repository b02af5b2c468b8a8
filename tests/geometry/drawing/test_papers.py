"""The drawings that go on paper: template, wrap paper and back paper."""

import math
from functools import partial
from pathlib import Path

import msgspec
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace
from shapely import LineString, Polygon, box

from app.formats.headstock import read
from app.formats.letters import text_width
from app.formats.mark_shapes import drawing_box
from app.languages.catalogue import speak
from app.window.demo import demo
from geometry import saying
from geometry.drawing import STYLES, Area, Cross, Disc, Label, Stroke, blank_box, opened_out
from geometry.drawing.back import back_drawing
from geometry.drawing.solid import solid
from geometry.drawing.template import template_drawing
from geometry.drawing.wood_state import wood_drawing
from geometry.drawing.wrap import wrap_drawing
from geometry.errors import GeometryError
from geometry.layout import Blank, Bore, EdgePlace, Loop, Node, Pin, SingleHole, Tuner, loop_path, slot_path
from geometry.lengths import speaking
from geometry.sequence import operations, wood_after
from geometry.solids import holes
from tests.geometry.checks.heads import bore, head, pattern
from tests.geometry.drawing.specimens import plain_head

DEMO = Path("samples/twelve-string-mixed.headstock.json")


def strokes(drawing, style, owner=None):
    return [m.path for m in drawing if isinstance(m, Stroke) and m.style == style and owner in (None, m.owner)]


def crosses(drawing):
    return {(round(m.centre[0], 6), round(m.centre[1], 6)) for m in drawing if isinstance(m, Cross)}


def test_the_template_opening_is_wider_by_twice_the_offset():
    (opening,) = strokes(template_drawing(plain_head(), 2.5), "template", "slot")
    assert opening.box == pytest.approx((17 - 9, 40 - 9, 17 + 9, 150 + 9))


def test_the_outside_template_is_narrower_by_twice_the_offset():
    (outside,) = strokes(template_drawing(plain_head(), 2.5), "template", "outline")
    assert outside.box == pytest.approx((-37.5, 0.0, 37.5, 177.5)), "down to the nut line, where it is laid on the wood"


def test_a_wider_cutter_than_follower_turns_both_round():
    drawing = template_drawing(plain_head(), -1.0)
    assert strokes(drawing, "template", "slot")[0].box == pytest.approx((17 - 5.5, 34.5, 22.5, 155.5))
    assert strokes(drawing, "template", "outline")[0].box == pytest.approx((-41.0, 0.0, 41.0, 181.0)), "and off at the nut line"


def test_without_a_follower_there_is_no_template_line():
    drawing = template_drawing(plain_head(), None)
    assert not strokes(drawing, "template")
    assert strokes(drawing, "outline") == [loop_path(plain_head().outline)]
    assert strokes(drawing, "slot") == [slot_path(plain_head().slots[0])]


def test_an_opening_that_closes_is_left_out():
    assert not strokes(template_drawing(plain_head(), -7.0), "template", "slot")


@settings(max_examples=25)
@given(st.floats(-3, 5))
def test_every_point_of_the_demo_template_lies_the_offset_away_from_the_work(offset):
    layout = read(DEMO)
    drawing = template_drawing(layout, offset)
    for path in strokes(drawing, "template", "outline"):
        work = loop_path(layout.outline)
        for x, y in path.flatten(0.05)[::25]:
            if y > offset:  # below that the nut line is nearer than the edges (test_nut_end)
                assert work.nearest((float(x), float(y))).distance == pytest.approx(abs(offset), abs=0.005)


def test_every_bore_of_the_face_and_back_is_pricked_on_the_template():
    layout = read(DEMO)
    wanted = {(round(d.start[0], 6), round(d.start[1], 6)) for h in holes(layout) for d in h.drillings if d.upright}
    assert crosses(template_drawing(layout, 0.0)) == wanted


def test_every_hole_is_named_on_the_template():
    words = {m.text for m in template_drawing(plain_head(), 0.0) if isinstance(m, Label)}
    assert {"front.1", "8.8 x 8 deep", "6.5 through", "front.2, back", "1.6 x 9 deep", "flank", "pin: 6", "peep, back",
            "5 x 7 deep", "grain"} <= words


def test_the_grain_arrow_runs_along_y_clear_of_the_outline():
    layout = read(DEMO)
    outline = loop_path(layout.outline)
    (shaft, *_) = [p for p in strokes(template_drawing(layout, 0.0), "note")]
    assert shaft.start[0] == shaft.end[0]
    assert min(outline.nearest(shaft.point_at(s)).distance for s in range(0, 24, 2)) > 2.5


def test_the_wrap_is_as_large_as_the_blank_with_both_edges():
    layout = read(DEMO)
    assert blank_box(layout.blank) == (-66.0, -20.0, 66.0, 200.0)
    assert [p.box for p in strokes(wrap_drawing(layout), "blank")] == [(-66.0, -20.0, 66.0, 200.0)]
    folds = {p.box[0] for p in strokes(wrap_drawing(layout), "fold")}
    assert folds == {-50.0, 50.0}


def test_a_lopsided_blank_is_folded_and_titled_at_its_own_two_edges():
    """42 wide on the bass side and 55 on the treble side, 16 thick: folded out from -58 to 71, bores at half the thickness 8 beside each fold."""
    head = plain_head(blank=Blank(bass=42.0, treble=55.0, tip=190.0, behind=10.0, thickness=16.0))
    other = replace(head.tuners[1], id="other", place=replace(head.tuners[1].place, side="bass"))
    layout = replace(head, tuners=(*head.tuners, other))
    ops = operations(layout)
    for drawing in (wrap_drawing(layout), opened_out(layout), wood_drawing(layout, wood_after(layout, [op.id for op in ops], 0, ops))):
        border = [mark.outer if isinstance(mark, Area) else mark.path for mark in drawing if mark.owner == mark.style == "blank"]
        assert (min(path.box[0] for path in border), max(path.box[2] for path in border)) == (-58.0, 71.0)
        assert {mark.path.start[0] for mark in drawing if isinstance(mark, Stroke) and mark.style == "fold"} == {-42.0, 55.0}
        titles = {mark.text: mark.at[0] for mark in drawing if isinstance(mark, Label) and mark.owner == "blank"}
        assert [titles[name] for name in ("bass edge", "face", "treble edge")] == [-50.0, 6.5, 63.0]
        (middle,) = {(mark.path.start, mark.path.end) for mark in drawing if isinstance(mark, Stroke) and mark.style == "centreline"
                     and mark.owner == "blank"} or {((0.0, -10.0), (0.0, 190.0))}
        assert middle == ((0.0, -10.0), (0.0, 190.0))
    low, high = solid(layout).box
    assert (low.tolist(), high.tolist()) == ([-42.0, -10.0, 0.0], [55.0, 190.0, 16.0])
    mouths = {mark.owner: mark.centre for mark in wrap_drawing(layout) if isinstance(mark, Disc) and mark.style == "side bore"}
    assert mouths == {"flank": pytest.approx((63.0, 100.0)), "other": pytest.approx((-50.0, 100.0))}


def test_the_wrap_pricks_the_face_and_both_edges_and_nothing_of_the_back():
    layout = read(DEMO)
    wanted = set()
    for hole in holes(layout):
        for d in hole.drillings:
            x, y, z = d.mark
            if d.surface == "face":
                wanted.add((round(x, 6), round(y, 6)))
            elif d.surface != "back" and d.role == "post":
                wanted.add((round(x + math.copysign(z, x), 6), round(y, 6)))
    assert crosses(wrap_drawing(layout)) == wanted
    assert not any(m.hidden for m in wrap_drawing(layout) if isinstance(m, Disc))


def test_what_is_drilled_wider_from_the_back_is_not_on_the_wrap_though_its_bore_is():
    layout = plain_head()
    of, side = layout.patterns
    layout = replace(layout, patterns=(replace(of, bores=(*of.bores, Bore(role="clearance", diameter=10.0, surface="back", depth=4.0))), side))
    shown = {(m.style, m.radius) for m in wrap_drawing(layout) if isinstance(m, Disc) and m.centre == (-28.0, 60.0)}
    assert shown == {("counterbore", 4.4), ("post bore", 3.25)}


def test_a_side_bore_whose_axis_meets_no_square_edge_leaves_the_wrap_without_a_mark():
    """110 along the edge lies in the middle of a step that faces the tip: its bore and its screw have nowhere to be pricked."""
    stepped = Loop(nodes=tuple(Node(at=at) for at in ((-40.0, 0.0), (40.0, 0.0), (40.0, 100.0), (20.0, 100.0), (20.0, 180.0), (-40.0, 180.0))))
    flank = replace(plain_head().tuners[1], place=EdgePlace(side="treble", along=110.0))
    drawing = wrap_drawing(plain_head(outline=stepped, slots=(), tuners=(flank,)))
    assert not [mark for mark in drawing if mark.owner == "flank" and isinstance(mark, Cross | Disc)]


def test_the_wrap_has_nothing_of_what_is_drilled_by_hand_when_its_edges_are_gone():
    layout = read(DEMO)
    later = [d for hole in holes(layout) for d in hole.drillings if not d.upright and d.role == "screw"]
    sides = {t.id for t in layout.tuners if " side " in t.id}
    marks = [m for m in wrap_drawing(layout) if m.owner in sides]
    assert len(later) > 6 and not any(m.style == "screw pilot" for m in marks)
    # One axis and one line squared across the edge for each post bore, and no other.
    assert sum(m.style == "axis" for m in marks) == 2 * len(sides)


def test_the_wrap_says_what_to_set_beside_each_side_bore():
    words = {m.text for m in wrap_drawing(plain_head()) if isinstance(m, Label)}
    assert {"flank", "6.4, level, stop 35", "bass edge", "treble edge", "fold", "front", "8.8 x 8 deep",
            "6.5 through"} <= words


@pytest.mark.parametrize(("side", "order"), [("treble", 1), ("bass", -1)])
def test_a_counterbore_from_the_side_is_told_before_its_bore(side, order):
    """Both at one mark, 10 mm outside the seat: 4 mm deep and 30."""
    of = pattern("of", "side", bore("counterbore", diameter=11.0, surface="seat", depth=4.0), bore(surface="seat", depth=30.0))
    drawing = wrap_drawing(head(tuners=(Tuner(id="a", pattern="of", place=EdgePlace(side=side, along=90.0)),), patterns=(of,)))
    words = [m for m in drawing if isinstance(m, Label) and m.owner == "a"]
    assert [m.text for m in words] == ["a", "11, stop 14", "6, level, stop 40"]
    # Clear of each other across the edge, all on it, and above the wider drill's cross.
    across = sorted((m.at[0] - m.height, m.at[0]) for m in words)
    assert all(one[1] < two[0] for one, two in zip(across, across[1:], strict=False))
    assert all(50.0 < order * x < 66.0 for pair in across for x in pair)
    assert all(m.at[1] > 90.0 + 5.5 + 1.0 for m in words)
    assert words[1].at[0] < words[2].at[0]  # the letters' tops point to -x


def test_words_on_a_folded_edge_stay_on_it():
    drawing = wrap_drawing(plain_head())
    for text in ("flank", "6.4, level, stop 35"):
        (label,) = [m for m in drawing if isinstance(m, Label) and m.text == text]
        assert 45.0 <= label.at[0] - label.height and label.at[0] <= 61.0


@pytest.mark.parametrize(("spacing", "lines"), [(60.0, 1), (31.0, 2)])
def test_words_on_an_edge_end_before_the_next_mark(spacing, lines):
    """In inches they are long: two lines where the next bore is near, the first read first on either edge."""
    tuners = tuple(Tuner(id=f"{side} {n}", pattern="plate", place=EdgePlace(side=side, along=60.0 + n * spacing))
                   for side in ("bass", "treble") for n in (0, 1))
    with speaking("in64"):
        drawing = wrap_drawing(head(tuners=tuners, patterns=(pattern("plate", "side", bore(surface="seat", depth=30.0)),)))
    for side, own in (("bass", -1), ("treble", 1)):
        words = [m for m in drawing if isinstance(m, Label) and m.owner == f"{side} 0" and m.text != f"{side} 0"]
        assert len(words) == lines and all(m.angle == math.pi / 2 for m in words)
        assert [m.text.split()[0] for m in words] == (['15/64",'] if lines == 1 else ['15/64",', "stop"])
        assert all(m.at[1] + text_width(m.text, m.height) < 60.0 + spacing for m in words)
        assert [m.at[0] for m in words] == sorted(m.at[0] for m in words)
        assert all(50.0 < own * m.at[0] < 66.0 for m in words)


@pytest.mark.parametrize(("unit", "wider"), [("mm", ()), ("in64", ()), ("mm", (bore("counterbore", diameter=9.0, surface="seat", depth=4.0),))])
def test_words_on_a_low_edge_lie_on_no_others(unit, wider):
    """Bores 26 mm apart in 13 mm of wood: the name stands over the fold, on the face, where the settings need all of the edge."""
    of = pattern("of", "side", *wider, bore(surface="seat", depth=30.0))
    tuners = tuple(Tuner(id=f"{side} {n}", pattern="of", place=EdgePlace(side=side, along=60.0 + n * 26.0)) for side in ("bass", "treble") for n in (0, 1, 2))
    lean = Loop(nodes=(Node(at=(-40.0, 0.0)), Node(at=(40.0, 0.0)), Node(at=(46.0, 180.0)), Node(at=(-46.0, 180.0))))
    low = head(tuners=tuners, patterns=(of,), outline=lean)
    with speaking(unit):
        drawing = wrap_drawing(replace(low, blank=replace(low.blank, thickness=13.0)))
    words = [(m, drawing_box((m,))) for m in drawing if isinstance(m, Label) and m.angle and m.owner in {one.id for one in tuners}]
    assert [m.text for m, _ in words if m.owner == "bass 0"][-1].startswith("stop")
    for i, (one, a) in enumerate(words):
        for other, b in words[i + 1:]:
            # the box of one line has the tails of its letters in the white of the next
            assert a[2] <= b[0] + 0.2 or b[2] <= a[0] + 0.2 or a[3] <= b[1] or b[3] <= a[1], (one.text, other.text)
    over = [m.owner for m, _ in words if m.text == m.owner and abs(m.at[0] - m.height / 2) < 50.0]
    assert over == (["bass 0", "bass 1", "treble 0", "treble 1"] if wider else []), "there is room behind the last of each side"


def test_the_back_is_seen_from_behind():
    """The screw at (-28, 51) of the bass side shows at x = +28; the blind hole of the back is pricked too."""
    drawing = back_drawing(plain_head())
    full = {(round(m.centre[0], 6), round(m.centre[1], 6)) for m in drawing if isinstance(m, Disc) and not m.hidden}
    assert full == {(28.0, 51.0), (0.0, 160.0)}
    dashed = {(round(m.centre[0], 6), m.radius) for m in drawing if isinstance(m, Disc) and m.hidden}
    assert dashed == {(28.0, 3.25), (0.0, 3.0)}  # the through bore and the pin, not the counterbore
    assert crosses(drawing) == {(28.0, 51.0), (28.0, 60.0), (0.0, 160.0), (0.0, 25.0)}


def test_without_work_on_the_back_there_is_no_back_paper():
    head = plain_head(holes=(), tuners=plain_head().tuners[1:])
    assert back_drawing(head) == ()


def test_marks_have_known_styles():
    layout = read(DEMO)
    for drawing in (template_drawing(layout, 2.5), wrap_drawing(layout), back_drawing(layout)):
        assert {mark.style for mark in drawing} <= set(STYLES)


def test_a_loop_without_length_is_refused_in_a_sentence():
    with pytest.raises(GeometryError, match="no length"):
        template_drawing(plain_head(outline=Loop(nodes=(Node(at=(1.0, 1.0)), Node(at=(1.0, 1.0))))), 0.0)


def test_a_slot_in_the_nut_corner_moves_the_grain_arrow_outside():
    (shaft, *_) = strokes(template_drawing(plain_head(), 0.0), "note")
    assert shaft.start[0] == -43.0  # the square outline leaves no free corner


def test_mirrored_layouts_give_mirrored_templates():
    head = plain_head()
    mirrored = msgspec.structs.replace(
        head, slots=tuple(msgspec.structs.replace(s, shape=msgspec.structs.replace(
            s.shape, nut_end=(-17.0, 40.0), tip_end=(-17.0, 150.0))) for s in head.slots))
    one, two = (strokes(template_drawing(h, 1.5), "template", "slot")[0].box for h in (head, mirrored))
    assert two == pytest.approx((-one[2], one[1], -one[0], one[3]))


def pin_words(drawing):
    return [m for m in drawing if isinstance(m, Label) and m.text.startswith("pin x")]


def test_the_words_at_a_pin_cross_no_slot():
    """In the web between two slots, 9 wide on either side of the pin, there is no room for words that lie."""
    from geometry.layout import Pin, Slot, StraightSlot
    slots = tuple(Slot(id=f"slot {x}", shape=StraightSlot(nut_end=(x, 40.0), tip_end=(x, 150.0), width=12.0)) for x in (-15.0, 15.0))
    narrow = msgspec.structs.replace(plain_head(), slots=slots, pins=(Pin(id="pin x", at=(0.0, 90.0)),))
    free = msgspec.structs.replace(narrow, pins=(Pin(id="pin x", at=(0.0, 20.0)),))
    for drawing in (template_drawing, wrap_drawing):
        made = partial(drawing, offset=None) if drawing is template_drawing else drawing
        (upright,), (lying,) = pin_words(made(narrow)), pin_words(made(free))
        assert upright.angle == math.pi / 2 and upright.anchor == "right" and lying.angle == 0.0
        assert 0 < upright.at[0] < 9.0 - 0.6 and upright.at[1] < 90.0 - 3.0
    assert lying.at[1] < 20.0 - 3.0


def test_a_pin_in_a_bore_is_named_clear_of_the_words_of_the_bore():
    from geometry.layout import Pin
    head = plain_head()
    bore = next(hole for hole in holes(head) if hole.drillings[0].upright and hole.drillings[0].role != "locating"
                and hole.drillings[0].surface == "face")
    drawing = wrap_drawing(msgspec.structs.replace(head, pins=(Pin(id="pin x", at=bore.drillings[0].start[:2], diameter=8.8),)))
    pin, = pin_words(drawing)
    own = [drawing_box((m,)) for m in drawing if isinstance(m, Label) and m.owner == bore.of]
    taken = drawing_box((pin,))
    assert len(own) == 3 and not any(box(*taken).intersects(box(*one)) for one in own)


def test_the_titles_of_a_narrow_back_lie_one_over_the_other():
    """The middle word of 60 mm between two others has no room beside them; of 120 mm it has."""
    from geometry.drawing.side_titles import side_titles
    for half, lines in ((30.0, 2), (60.0, 1)):
        labels = side_titles(-half, half, 100.0, "treble side", "seen from the back", "bass side")
        assert len({label.at[1] for label in labels}) == lines and labels[1].at[1] >= labels[0].at[1]


def test_a_hole_is_told_whole_across_a_line_rather_than_without_its_size():
    """A small hole in the web of a slotted sample: beside it there is room for two lines of words only across its own hairlines."""
    layout = read(Path("samples/slotted-snags-to-find.headstock.json"))
    said = [m.text for m in wrap_drawing(layout) if isinstance(m, Label) and m.owner == "hole 1"]
    assert said == ["hole 1", "3 x 9 deep"]


@pytest.mark.parametrize("language", ["en", "de"])
@pytest.mark.parametrize("unit", ["mm", "in64"])
def test_no_line_runs_through_the_words_at_a_hole_of_the_face(unit, language):
    """Between its slots, its outline and its bores from the side the demo has room for the name on one side of a hole and the sizes on
    the other. The letters are as wide as in print."""
    speak(language)
    try:
        with speaking(unit):
            drawing = wrap_drawing(read(DEMO))
    finally:
        saying.use(None)
    lines = [LineString(mark.path.flatten(0.05)) for mark in drawing if isinstance(mark, Stroke)]
    lines += [Polygon(mark.outer.flatten(0.05)).exterior for mark in drawing if isinstance(mark, Area)]
    words = [mark for mark in drawing if isinstance(mark, Label) and " face " in (mark.owner or "")]
    assert len(lines) > 30 and len(words) == 18
    for word in words:
        (x, y), wide = word.at, text_width(word.text, word.height)
        along = {"left": 0.0, "middle": -wide / 2, "right": -wide}[word.anchor]
        covered = box(x - word.height, y + along, x, y + along + wide) if word.angle else box(x + along, y, x + along + wide, y + word.height)
        assert not any(covered.intersects(line) for line in lines), word.text


@pytest.mark.parametrize("unit", ["mm", "in64"])
def test_no_line_of_words_on_the_wrap_runs_off_the_face(unit):
    """How a bore is reamed takes fifty letters in inches: in one line they were longer than the face is wide."""
    layout = demo()
    wider = replace(layout.patterns[0].bores[0], reamed=9.5, taper=25)
    layout = replace(layout, patterns=(replace(layout.patterns[0], bores=(wider, *layout.patterns[0].bores[1:])), *layout.patterns[1:]))
    with speaking(unit):
        lines = [m for m in wrap_drawing(layout) if isinstance(m, Label) and "face" in m.owner]
    assert any("reamed" in m.text for m in lines) and max(text_width(m.text, m.height) for m in lines) < 45.0


def test_where_there_is_no_room_for_all_a_hole_has_its_name_if_that_fits():
    """Twenty-four holes as close as beads: the name leads to the hole table, a size alone does not."""
    beads = tuple(SingleHole(id=f"inlay {i}", at=(-12.5 + i % 3 * 12.5, 40.0 + i // 3 * 9.0), diameter=5.0, depth=3.0) for i in range(24))
    named = {}
    for m in wrap_drawing(replace(plain_head(), slots=(), tuners=(), rows=(), pins=(), holes=beads)):
        if isinstance(m, Label) and m.owner.startswith("inlay"):
            named.setdefault(m.owner, []).append(m.text)
    whole = [id for id, words in named.items() if set(words) == {id, "5 x 3 deep"}]
    assert len(named) == 24 > len(whole) >= 16 and all(words == [id] for id, words in named.items() if id not in whole)


def test_a_pin_where_a_bore_from_the_back_comes_later_is_pricked_on_the_wrap():
    """The bore is marked from behind; the pin, which goes in first, from the face."""
    at = (0.0, 160.0)
    head = plain_head(holes=(SingleHole(id="later", at=at, diameter=10.0, surface="back"),), pins=(Pin(id="pin", at=at, diameter=6.0),))
    drawing = wrap_drawing(head)
    assert [mark.owner for mark in drawing if isinstance(mark, Cross) and mark.centre == at] == ["pin"]
    assert [mark.radius for mark in drawing if isinstance(mark, Disc) and mark.centre == at] == [3.0]
