"""Cures that lead a string otherwise: past the other side of its post, or to the other's post; held tuners keep theirs."""

from msgspec.structs import replace

from geometry.checks import check
from geometry.checks.moves import Swap, Wind
from geometry.cures import apply_cure, settle
from tests.geometry.checks.cases_strings import crossed, past_a_post


def _settled(layout, kind):
    before = check(layout)
    return settle(layout, before, next(snag for snag in before.snags if snag.kind == kind))


def test_strings_that_cross_change_posts():
    layout = crossed()
    snag = _settled(layout, "string-to-string")
    assert isinstance(snag.move, Swap) and snag.cure == "Lead string 1 to b and string 2 to a."
    after = apply_cure(layout, snag)
    assert {tuner.id: tuner.string for tuner in after.tuners} == {"a": "2", "b": "1"}
    assert not [one for one in check(after).snags if one.kind == "string-to-string"]


def test_held_tuners_keep_their_strings():
    layout = crossed()
    held = replace(layout, tuners=(replace(layout.tuners[0], held=True), *layout.tuners[1:]))
    assert not isinstance(_settled(held, "string-to-string").move, Swap)


def test_a_string_goes_past_the_other_side_of_its_own_post():
    # Past a post 3 mm beside it: on the other side of its own post, 7 mm away, it runs clear of it.
    layout = past_a_post(3.0)
    snag = _settled(layout, "string-to-post")
    assert snag.move == Wind("a") and snag.cure == "Lead string 1 past the treble side of the post of a."
    assert not [one for one in check(apply_cure(layout, snag)).snags if one.kind == "string-to-post"]
