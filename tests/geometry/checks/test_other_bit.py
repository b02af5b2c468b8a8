"""A bit too fat for one slot spoils nothing while another bit of the rack does that slot on the same template."""

from msgspec.structs import replace

from geometry.checks import check
from geometry.edits.rack import choose_route
from geometry.layout import Template
from tests.geometry.routing.specimens import BRAD, bit, head, straight, with_rack

FAT = bit("fat", cutter=14, cutting=16, bearing="shank", high=5, out=38)
SLIM = bit("slim", cutter=12, cutting=16, bearing="shank", high=5, out=38)


def found(*bits):
    layout = replace(with_rack(head(straight(width=13.0)), *bits, drills=(BRAD,)), template=Template(bit="fat", thickness=6.0))
    return next(snag for snag in check(layout).snags if snag.kind == "bit-too-wide")


def test_alone_it_spoils_the_work():
    assert found(FAT).grade == "spoils the work"


def test_with_another_bit_on_the_same_template_it_is_a_note():
    snag = found(FAT, SLIM)
    assert snag.grade == "note" and snag.text.endswith("On the same template slim does it.")
    assert snag.cure == "Change to slim there."


def test_a_bit_that_needs_another_template_does_not_help():
    other = bit("wider ring", cutter=12, cutting=12, bearing="shank", high=5, out=38, ring=16.0)
    assert found(FAT, other).grade == "spoils the work"


def test_a_choice_on_a_template_of_its_own_is_said():
    other = bit("wider ring", cutter=12, cutting=12, bearing="shank", high=5, out=38, ring=16.0)
    layout = replace(with_rack(head(straight(width=13.0, depth=12.0)), FAT, other, drills=(BRAD,)),
                     template=Template(bit="fat", thickness=6.0))
    chosen = choose_route(layout, "slot", (("wider ring", None),))
    snag = next(snag for snag in check(chosen).snags if snag.kind == "bit-too-wide")
    assert snag.grade == "note" and "Your choice wider ring does it on another template." in snag.text
    assert next(snag for snag in check(layout).snags if snag.kind == "bit-too-wide").grade == "spoils the work"


def test_a_bit_too_short_for_a_blind_slot_is_a_note_beside_a_longer_one():
    short = bit("short", cutter=12, cutting=8, bearing="shank", high=5, out=14)
    blind = head(straight(width=13.0, depth=12.0))

    def grade(*bits):
        layout = replace(with_rack(blind, *bits, drills=(BRAD,)), template=Template(bit="short", thickness=6.0))
        return next(snag.grade for snag in check(layout).snags if snag.kind == "bit-too-short")
    assert grade(short) == "tight"
    assert grade(short, bit("long", cutter=12, cutting=10, bearing="shank", high=5, out=30)) == "note"
