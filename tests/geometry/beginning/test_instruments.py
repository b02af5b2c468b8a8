"""Beginnings as other instruments: what is known of each is in the layout, and every hardware has its room."""

import math
from itertools import pairwise

import pytest
from msgspec.structs import replace

from geometry.beginning import Numbers, Refused, begin, mended
from geometry.beginning.in_unit import fitting, followed, usual_numbers
from geometry.beginning.instruments import FOLLOWS, INSTRUMENTS, as_usual, following, usual
from geometry.beginning.needs import FACES, THROUGHS
from geometry.checks import check
from geometry.edits import mirror_layout
from geometry.errors import GeometryError
from geometry.layout import Headstock, loop_path
from geometry.layout.generic import FRICTION, PATTERNS, ROLLER
from geometry.solids import frames
from geometry.solids.drilling import to_drill
from geometry.strings.tension import tension
from geometry.units import format_close
from geometry.vectors import dot, sub


def worse(layout: Headstock) -> list[str]:
    """What is more than a note."""
    return [snag.text for snag in check(layout).snags if snag.grade != "note"]


@pytest.mark.parametrize("unit", ["mm", "in64"])
@pytest.mark.parametrize("key", list(INSTRUMENTS))
def test_each_instrument_begins_sound_with_what_is_known_of_it(key, unit):
    kind, numbers = INSTRUMENTS[key], usual_numbers(unit, key)
    layout = begin(fitting(numbers, frozenset(), unit))
    assert worse(layout) == []
    near = {"rel": 0.02} if unit == "in64" else {"abs": 0}
    assert layout.nut.scale_length == pytest.approx(kind.scale, **near) and layout.nut.width == pytest.approx(kind.nut_width, **near)
    assert (layout.nut.height, layout.nut.pitch) == (kind.height, kind.angle)
    assert all(s.note for s in layout.strings)
    assert [tension(s, layout.nut) is None for s in layout.strings] == [key == "classical" or "ukulele" in key] * len(layout.strings), "no wire, no pull to reckon"
    if unit == "in64":
        assert all("." not in format_close(getattr(numbers, field), "in64") for field in ("pitch", "nut_width", "scale", "thickness"))


def test_the_nut_follows_the_strings_until_it_is_typed():
    """By hand: a bass has 42 for four and 6 for each more; a guitar 43 for six, 5 more where they stand in pairs."""
    assert following(Numbers(bass=3, treble=2, instrument="bass")).nut_width == 48.0
    assert following(Numbers(bass=6, treble=6, courses=True)).nut_width == 48.0
    asked = Numbers(bass=3, treble=2, instrument="bass", nut_width=45.5)
    assert following(asked, frozenset({"nut_width"})).nut_width == 45.5
    assert followed(asked, frozenset({"nut_width"}), "in64").nut_width == 45.5


def test_a_typed_blank_is_not_changed_and_one_that_was_not_fits():
    asked = following(Numbers(bass=6, treble=0))
    assert fitting(asked, frozenset(), "mm").length == 224.0
    assert fitting(asked, frozenset(FOLLOWS), "mm") == asked
    with pytest.raises(Refused):
        begin(asked)


@pytest.mark.parametrize("face", list(FACES))
@pytest.mark.parametrize("counts", [(3, 3), (6, 0), (4, 4)], ids=str)
def test_every_face_hardware_has_its_room_in_the_narrowest_row_too(face, counts):
    fit = FACES[face]
    for pitch, thick in ((fit.pitch, fit.thin), (fit.pitch + 8, min(fit.thick, 16.0))):
        _, layout, said = mended(Numbers(*counts, pitch=pitch, length=420, width=180, thickness=thick, face=face))
        assert said == () and {t.pattern for t in layout.tuners} == {face}
        assert worse(layout) == []


@pytest.mark.parametrize("through", list(THROUGHS))
@pytest.mark.parametrize("mount", ["side", "mixed"])
@pytest.mark.parametrize("counts", [(3, 3), (6, 0), (5, 4)], ids=str)
def test_every_side_hardware_has_its_slot(through, mount, counts):
    _, layout, _ = mended(Numbers(*counts, mount, mount, pitch=35.0, length=420, width=180, thickness=18.0, through=through))
    assert worse(layout) == [] and through in {t.pattern for t in layout.tuners}


def test_the_narrowest_row_is_told_for_the_hardware_that_was_chosen():
    with pytest.raises(Refused, match="25 mm") as refused:
        begin(Numbers(face=FRICTION, pitch=20.0, thickness=13.0))
    assert refused.value.field == "pitch"
    with pytest.raises(Refused) as refused:
        begin(Numbers(bass_mount="side", treble_mount="side", through=ROLLER))
    assert refused.value.value == THROUGHS[ROLLER].pitch


def test_what_cannot_be_chosen_is_said():
    with pytest.raises(GeometryError, match="reach into the slot"):
        begin(Numbers(bass_mount="mixed", face="face 10 bushing one screw"))
    with pytest.raises(GeometryError, match="no hardware"):
        begin(Numbers(face="glue"))
    for wrong in (Numbers(angle=31.0), Numbers(slant=float("nan")), Numbers(scale=0.0), Numbers(scale_treble=float("inf"))):
        with pytest.raises(GeometryError, match="is not a"):
            begin(wrong)


@pytest.mark.parametrize("slant", [-12.0, 8.0, 15.0])
@pytest.mark.parametrize("mount", ["face", "side"])
def test_a_slanted_nut_has_its_wood_and_sound_strings(slant, mount):
    asked = following(replace(usual("guitar"), bass=4, treble=4, bass_mount=mount, treble_mount=mount, slant=slant, scale=686.0,
                              scale_treble=648.0), frozenset({"slant", "scale", "scale_treble"}))
    _, layout, _ = mended(asked)
    assert worse(layout) == []
    feet = [node.at for node in layout.outline.nodes if node.at == tuple(round(c, 3) for c in layout.nut.at(node.at[0]))]
    assert {round(abs(x), 3) for x, _ in feet} == {layout.nut.width / 2}
    # By hand: seven steps of 38 / 7.
    assert [s.scale_length for s in layout.strings][:2] == [686.0, pytest.approx(686 - 38 / 7, abs=0.01)]


def test_a_left_handed_head_is_the_mirror_image():
    right = begin(following(Numbers(bass=4, treble=2)))
    left = begin(following(Numbers(bass=4, treble=2, left_handed=True)))
    assert left == mirror_layout(right)
    assert loop_path(left.outline).area == pytest.approx(loop_path(right.outline).area)


def test_a_peg_is_one_bore_and_its_button_turns_behind_the_post():
    """By hand: discs of 10 about two posts 25 apart leave 5, where 3 are wanted; nearer rows leave 20 less than the way between their
    posts. None is told to lie behind the head, where it belongs."""
    numbers = replace(usual("soprano ukulele"), pitch=25.0)
    layout = begin(numbers)
    assert {hole.of for hole in to_drill(layout) if hole.of not in ("nut pin", "tip pin")} == {t.id for t in layout.tuners}
    assert sum(len(hole.drillings) for hole in to_drill(layout)) == 4 + len(layout.pins)
    assert {s.kind for s in check(layout).snags} == set()
    row = layout.rows[0]
    near = replace(layout, rows=(replace(row, spacing=22.9), *layout.rows[1:]))
    found = [s for s in check(near).snags if s.kind == "buttons"]
    posts = [frame.origin for tuner, frame in frames(near).items() if tuner.startswith("bass")]
    assert len(found) == 1 and found[0].measured == pytest.approx(math.dist(*posts) - 20, abs=1e-6)


@pytest.mark.parametrize("pattern", [p for p in PATTERNS if p.mount == "face"], ids=lambda p: p.id)
def test_every_generic_face_pattern_can_be_begun_with(pattern):
    assert pattern.id in FACES and pattern.button.straight == ("peg" in pattern.id)


@pytest.mark.parametrize("left", [False, True])
def test_a_drawn_head_takes_what_is_usual_for_its_instrument(left):
    """Eight strings in pairs on posts of a guitar's head become a mandolin's; its width, its posts and the side of its thick strings stay."""
    drawn = begin(Numbers(bass=4, treble=4, courses=True, nut_width=31.0, left_handed=left))
    made = as_usual(drawn, "mandolin", 352.0)
    assert (made.nut.scale_length, made.nut.height, made.nut.pitch, made.nut.width) == (352.0, 5.0, 15.0, 31.0)
    notes = [s.note for s in made.strings]
    assert (notes[::-1] if left else notes) == ["G3", "G3", "D4", "D4", "A4", "A4", "E5", "E5"]
    assert [(s.id, s.course) for s in made.strings] == [(s.id, s.course) for s in drawn.strings] and made.tuners == drawn.tuners
    uke = as_usual(made, "tenor ukulele", 432.0)
    assert {(s.note, s.core) for s in uke.strings} == {("", None)}, "eight strings are no usual set"
    assert as_usual(replace(drawn, strings=(), tuners=()), "bass", 864.0).strings == ()


def test_a_head_without_strings_gets_one_for_each_post():
    """As an imported one is whose holes have become tuners: else nothing would come of the choice."""
    drawn = begin(Numbers(bass=4, treble=4))
    bare = replace(drawn, strings=(), tuners=tuple(replace(tuner, string=None) for tuner in drawn.tuners))
    made = as_usual(bare, "mandolin", 352.0)
    assert [s.note for s in made.strings] == ["G3", "G3", "D4", "D4", "A4", "A4", "E5", "E5"]
    assert [s.course for s in made.strings] == [4, 4, 3, 3, 2, 2, 1, 1] and made.tuners == bare.tuners
    assert [s.course for s in as_usual(bare, "guitar", 648.0).strings] == list(range(8, 0, -1))
    three = as_usual(replace(bare, tuners=bare.tuners[:3]), "mandolin", 352.0)
    assert [s.course for s in three.strings] == [3, 2, 1], "one would be left over"


@pytest.mark.parametrize("left_handed", [False, True])
@pytest.mark.parametrize("name", ["mandolin", "octave mandolin", "bouzouki"])
def test_four_tuners_of_a_side_that_share_a_plate_stand_on_one_line_at_its_pitch_and_square_to_it(name, left_handed):
    kind = INSTRUMENTS[name]
    assert kind.plates
    made = begin(Numbers(bass=4, treble=4, courses=True, instrument=name, pitch=kind.pitch, nut_width=kind.nut_width, scale=kind.scale,
                         scale_treble=kind.scale, angle=kind.angle, thickness=kind.thickness, left_handed=left_handed))
    placed = frames(made)
    for side in ("bass", "treble"):
        posts = [placed[f"{side} {i}"].origin[:2] for i in (1, 2, 3, 4)]
        assert math.dist(posts[0], posts[3]) == pytest.approx(3 * kind.pitch)
        assert [math.dist(one, two) for one, two in pairwise(posts)] == pytest.approx([kind.pitch] * 3)
        along = sub(posts[3], posts[0])
        for i in (1, 2, 3, 4):
            u = placed[f"{side} {i}"].u
            assert u[:2] == pytest.approx(placed[f"{side} 1"].u[:2], abs=1e-9) and dot(u[:2], along) == pytest.approx(0.0, abs=1e-6)
            assert (u[0] > 0.9) == (side == "treble"), "outwards"
    assert [snag.kind for snag in check(made).snags if snag.grade != "note"] == []
