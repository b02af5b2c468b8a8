"""What is made in the real piece stays: every advice about it says so, and no other does."""

from msgspec.structs import replace

from geometry.book import tick_off
from geometry.checks import check
from geometry.layout import Book, Ear, Made, Shaped, Task
from tests.geometry.checks.heads import FACE, face, head, slot


def done(layout, *tasks, piece="real"):
    book = Book(piece=piece)
    for operation, *features in tasks:
        book = tick_off(book, Task(operation=operation, features=tuple(features)), 1, Made())
    return replace(layout, book=book)


def advice(layout, kind):
    return next(snag.advice for snag in check(layout).snags if snag.kind == kind)


EAR = head(ears=(Ear(id="ear", side="treble", width=25.0, start=0.0, end=180.0),), tuners=(face("a", 25.0, 90.0),), patterns=(FACE,))


def test_an_ear_that_is_glued_on_is_told_to_stay_and_so_is_a_hole_that_is_drilled():
    plain = advice(EAR, "glue-line")
    ear = advice(done(EAR, ("glue ear ear", "ear")), "glue-line")
    assert ear == f"{plain} Ear is glued on in the real piece already (job book) and stays as it is."
    both = advice(done(EAR, ("glue ear ear", "ear"), ("bore a.1.1", "a")), "glue-line")
    assert both == (f"{plain} A is drilled in the real piece already (job book) and stays where it is. "
                    "Ear is glued on in the real piece already (job book) and stays as it is.")
    assert advice(done(EAR, ("glue ear ear", "ear"), piece="practice"), "glue-line") == plain


def test_a_slot_that_is_cut_can_be_cut_on_and_the_outline_too():
    near = head(slots=(slot(x=36.0, width=6.0),))
    kind = next(snag.kind for snag in check(near).snags if {"slot", "outline"} <= set(snag.between))
    plain = advice(near, kind)
    assert advice(done(near, ("rout slot 1", "slot")), kind) == (
        f"{plain} Slot is cut in the real piece already (job book): more can be taken off, and no wood comes back.")
    assert advice(done(near, ("rout slot 1", "slot"), ("cut outline",)), kind).endswith(
        "are cut in the real piece already (job book): more can be taken off, and no wood comes back.")
    small = head(outline=near.outline, blank=replace(near.blank, treble=41.0))
    assert "Outline is cut" in advice(done(small, ("cut outline",)), "blank-too-small")


def test_what_is_made_elsewhere_changes_no_advice():
    job = done(EAR, ("bore b.1.1", "b"), ("rout slot 1", "slot"))
    assert check(job).snags == check(EAR).snags


def test_a_bit_is_no_snag_of_a_slot_that_is_routed_but_a_note_for_the_next_piece():
    """The bit that did it has gone from the rack. What is only cleared, or was routed in the practice piece, waits for it still."""
    narrow = head(slots=(slot(width=9.0),))

    def grade(*cuts, piece="real", of=narrow):
        book = Book(piece=piece)
        for number, cut in enumerate(cuts, 1):
            book = tick_off(book, Task(operation=f"rout slot {number}", features=("slot",)), number, Made(cut=cut))
        return next(snag.grade for snag in check(replace(of, book=book)).snags if snag.kind == "bit-too-wide")

    whole = Shaped(shape=narrow.slots[0].shape)
    assert grade() == grade(whole, piece="practice") == "spoils the work" and grade(whole) == "note"
    assert grade(replace(whole, light=2.0)) == grade(replace(whole, corners=True)) == "spoils the work"
    upper, lower = replace(whole, ends=9.0), replace(whole, begins=9.0)
    assert grade(upper) == grade(lower) == "spoils the work" and grade(upper, lower) == "note"
    middle, last = replace(whole, begins=5.0, ends=9.0), lower
    first = replace(whole, ends=5.0)
    assert grade(first, last) == "spoils the work" and grade(last, middle, first) == "note"
    blind = replace(narrow, slots=(replace(narrow.slots[0], depth=8.0),))
    assert grade(replace(whole, ends=8.0), of=blind) == "spoils the work" and grade(replace(whole, ends=8.0, floor=True), of=blind) == "note"
    longer = replace(narrow, slots=(slot(width=9.0, tip=160.0),))
    assert grade(whole, of=longer) == "spoils the work"
