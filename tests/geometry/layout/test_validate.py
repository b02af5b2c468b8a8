"""What validate() refuses, each in one sentence with its place."""

import sys
from contextlib import suppress
from pathlib import Path

import msgspec
import pytest

from app.formats import headstock
from app.formats.errors import FormatError
from geometry.edits import set_field
from geometry.errors import GeometryError
from geometry.layout import EdgePlace, Headstock, Pin, Row, RowPlace, StraightRun, Template, Tuner, feature_ids, validate
from geometry.layout.generic import PATTERNS, RACK
from geometry.layout.generic_inch import RACK_INCH
from tests.geometry.checks.heads import FACE, SIDE, bore, drawn, face, head, pattern, side, slot

validating = sys.modules["geometry.layout.validate"]  # the function of that name hides its module
LAYOUT = headstock.read(Path("samples/twelve-string-mixed.headstock.json"))
_ROW = Row(id="row", run=StraightRun(start=(0.0, 0.0), heading=90.0), spacing=10.0)


@pytest.mark.parametrize(("layout", "words"), [
    (head(pins=(Pin(id="a", at=(0.0, 0.0)), Pin(id="a", at=(9.0, 0.0)))), "name a is used more than once"),
    (head(slots=(slot("a"),), tuners=(face("a", 0.0, 90.0),), patterns=(FACE,)), "name a is used more than once"),
    (head(tuners=(face("a", 0.0, 90.0),)), "names the pattern face"),
    (head(tuners=(Tuner(id="a", pattern="face", place=RowPlace(row="gone", index=0)),), patterns=(FACE,)),
     "stands in the row gone"),
    (head(tuners=(Tuner(id="a", pattern="side", place=RowPlace(row="row", index=0)),), patterns=(SIDE,), rows=(_ROW,)),
     "its row must follow an edge"),
    (head(tuners=(face("a", 0.0, 90.0, SIDE),), patterns=(SIDE,)), "its place is on an edge"),
    (head(tuners=(Tuner(id="a", pattern="face", place=EdgePlace(side="bass", along=1.0)),), patterns=(FACE,)),
     "its place is a point or a row"),
    (head(tuners=(face("a", 0.0, 90.0, string="7"),), patterns=(FACE,)), "names the string 7"),
    (head(template=Template(bit="gone")), "bit gone, which is not in the rack"),
    (head(template=Template(bit="bit 10", bush="gone")), "guide bush gone"),
    (head(patterns=(pattern("p", "side", bore()),)), "its bores start at the seat"),
    (head(patterns=(pattern("p", "face", bore(surface="seat", depth=3.0)),)), "start at the face or the back"),
    (head(patterns=(pattern("p", "side", bore(surface="seat")),)), "without a depth"),
    (head(slots=(drawn("s", (1.0, 1.0), (1.0, 1.0)),)), "no length"),
], ids=lambda value: value[:24] if isinstance(value, str) else "")
def test_refuses(layout, words):
    with pytest.raises(GeometryError, match=words) as caught:
        validate(layout)
    assert str(caught.value).count(". ") == 0 and str(caught.value).endswith(".")


def test_the_place_is_told_of_a_file_and_not_of_a_number_that_is_typed():
    """`$.blank.scarf` helps whoever mends a file by hand: who typed 70 mm into a field has it before him."""
    flat = msgspec.structs.replace(LAYOUT, nut=msgspec.structs.replace(LAYOUT.nut, pitch=0.0))
    with pytest.raises(GeometryError) as typed:
        set_field(flat, ("blank", "scarf"), 70.0)
    assert "$" not in str(typed.value) and typed.value.place == "$.blank.scarf"
    scarfed = msgspec.structs.replace(flat, blank=msgspec.structs.replace(flat.blank, scarf=70.0))
    with pytest.raises(FormatError, match=r"or more \(at \$\.blank\.scarf\)\.$"):
        headstock.decode(headstock.encode(scarfed))


def test_accepts_what_is_sound():
    layout = head(tuners=(face("a", 0.0, 90.0), side("b", 90.0)), patterns=(FACE, SIDE), slots=(slot(),))
    assert validate(layout) is layout
    assert feature_ids(layout) == ["slot", "a", "b", "nut pin", "tip pin"]


def test_the_generic_hardware_is_sound_and_of_both_mounts():
    assert validate(head(patterns=PATTERNS)).patterns == PATTERNS
    assert len(PATTERNS) >= 6 and {p.mount for p in PATTERNS} == {"face", "side"}
    ids = [tool.id for tool in (*RACK.bits, *RACK.bushes, *RACK.drills)]
    assert len(ids) == len(set(ids))


@pytest.mark.parametrize("rack, board", [(RACK, Template().thickness), (RACK_INCH, 6.35)], ids=["mm", "inch"])
def test_no_bush_to_begin_with_stands_on_the_wood_before_the_base_sits_on_its_template(rack, board):
    assert all(bush.length <= board - 0.5 for bush in rack.bushes)


def test_lookups_raise_for_what_is_not_there():
    layout = head()
    for find in (layout.pattern, layout.row, layout.tuner):
        with pytest.raises(KeyError):
            find("gone")


@pytest.mark.parametrize("name", ["pin\n", "\npin", "pin\nhole", " pin", "", "p" * 61])
def test_a_name_is_one_line_of_plain_signs(name):
    with pytest.raises(msgspec.ValidationError):
        msgspec.convert({"id": name, "at": (0.0, 0.0), "diameter": 6.0}, Pin)
    assert msgspec.convert({"id": "pin 1.a_b-c", "at": (0.0, 0.0), "diameter": 6.0}, Pin).id == "pin 1.a_b-c"


def test_what_an_edit_did_not_touch_is_not_looked_at_again(monkeypatch):
    looked = []
    monkeypatch.setattr(validating, "_CHECKS", tuple(
        (lambda layout, check=check: looked.append(check.__name__) or check(layout), parts) for check, parts in validating._CHECKS))
    validate(LAYOUT)
    assert len(looked) == len(validating._CHECKS)
    looked.clear()
    first = LAYOUT.tuners[0]
    validate(msgspec.structs.replace(LAYOUT, tuners=(msgspec.structs.replace(first, held=not first.held), *LAYOUT.tuners[1:])))
    assert looked == ["_features", "hold_to_no_heap", "_tuners", "_strings"]


def test_each_check_says_every_field_that_it_reads():
    """Else it would let a change of that field through unseen."""
    full = msgspec.structs.replace(LAYOUT, tuners=LAYOUT.tuners * 9)  # so many that they are held to be no heap

    class Watched:
        def __init__(self):
            self.read = set()

        def __getattr__(self, name):
            if name in Headstock.__struct_fields__:
                self.read.add(name)
            return getattr(full, name)

    for check, parts in validating._CHECKS:
        told, read = Watched(), Watched()
        parts(told)
        with suppress(GeometryError):
            check(read)
        assert read.read <= told.read, check.__name__


def test_what_was_refused_is_refused_again_and_what_is_mended_is_let_through():
    twice = msgspec.structs.replace(LAYOUT, slots=(slot("a"), slot("a")))
    for _ in range(3):
        with pytest.raises(GeometryError, match="name a is used more than once"):
            validate(twice)
        validate(LAYOUT)
