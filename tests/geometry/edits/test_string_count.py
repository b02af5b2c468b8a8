"""How many strings there are: names, posts and courses stay together."""

import msgspec
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from geometry.beginning import Numbers, begin
from geometry.beginning.instruments import usual
from geometry.edits import mirror_layout
from geometry.edits.string_count import (
    MOST_STRINGS,
    add_string,
    all_paired,
    pair_all,
    pair_string,
    remove_string,
    shares_course,
    strings_for_posts,
)
from geometry.edits.strings import string_set
from geometry.errors import GeometryError
from geometry.layout import validate
from geometry.strings import runs
from geometry.strings.sets import SETS


def six():
    return begin(Numbers())


def posts(layout):
    """The post of each string, from the bass side on."""
    of = {tuner.string: tuner.id for tuner in layout.tuners}
    return [of.get(string.id) for string in layout.strings]


def courses(layout):
    return [string.course for string in layout.strings]


def names(layout):
    return [string.id for string in layout.strings]


def from_bass():
    """Six strings that are counted from the bass side on, and their courses too, as a file may have them."""
    layout = six()
    return replace(layout, strings=tuple(replace(one, id=str(i), course=i) for i, one in enumerate(layout.strings, 1)),
                   tuners=tuple(replace(one, string=str(7 - int(one.string))) for one in layout.tuners))


def test_the_first_string_is_the_thinnest_whichever_hand_plays_and_the_first_two_are_the_first_course():
    """Common practice, no source."""
    right, left = six(), begin(Numbers(left_handed=True))
    assert names(right) == ["6", "5", "4", "3", "2", "1"] and names(left) == ["1", "2", "3", "4", "5", "6"]
    for layout in (right, left, begin(usual("mandolin")), begin(usual("banjo"))):
        assert [s.diameter for s in sorted(layout.strings, key=lambda s: int(s.id))] == sorted(s.diameter for s in layout.strings)
    for layout in (begin(Numbers(4, 4, courses=True, left_handed=True)), begin(usual("mandolin")), pair_all(left, True), pair_all(right, True)):
        assert all(string.course == (int(string.id) + 1) // 2 for string in layout.strings)


@pytest.mark.parametrize("side", ["bass", "treble"])
@pytest.mark.parametrize("before", [six(), from_bass()], ids=["from the treble side", "from the bass side"])
def test_a_string_comes_outside_the_others_and_they_keep_their_posts(before, side):
    after = add_string(before, side)
    counted = list(range(1, 8))[::1 if before.strings[0].id == "1" else -1]
    assert names(after) == [str(n) for n in counted]
    assert posts(after) == ([None, *posts(before)] if side == "bass" else [*posts(before), None])
    assert courses(after) == counted
    beside = before.strings[0 if side == "bass" else -1]
    new = after.strings[0 if side == "bass" else -1]
    assert (new.diameter, new.core) == (beside.diameter, beside.core)


def test_six_strings_less_two_are_a_bass_head():
    """Of 1 to 6 the second and the last go: what was 3, 4, 5 is 2, 3, 4 now, on the posts that it had."""
    before = six()
    after = remove_string(remove_string(before, "2"), "5")
    assert names(after) == ["4", "3", "2", "1"] and courses(after) == [4, 3, 2, 1]
    kept = posts(before)
    assert posts(after) == [kept[1], kept[2], kept[3], kept[5]]
    assert len(after.tuners) == 6 and len(runs(after)) == 4
    assert names(remove_string(from_bass(), "2")) == ["1", "2", "3", "4", "5"]


def test_strings_with_names_of_their_own_keep_them():
    layout = six()
    named = msgspec.structs.replace(
        layout, strings=(msgspec.structs.replace(layout.strings[0], id="low"), *layout.strings[1:]),
        tuners=tuple(msgspec.structs.replace(t, string="low") if t.string == "6" else t for t in layout.tuners))
    assert [string.id for string in add_string(named, "treble").strings][:1] == ["low"]
    assert [string.id for string in remove_string(named, "3").strings] == ["low", "5", "4", "2", "1"]


def test_pairs_are_made_and_parted():
    paired = pair_string(pair_string(six(), "5", True), "3", True)
    assert courses(paired) == [4, 4, 3, 3, 2, 1]
    assert shares_course(paired, 1) and not shares_course(paired, 2)
    assert courses(pair_string(paired, "5", False)) == [5, 4, 3, 3, 2, 1]
    assert courses(pair_string(from_bass(), "2", True)) == [1, 1, 2, 3, 4, 5]


@pytest.mark.parametrize("before", [six(), from_bass(), mirror_layout(six())], ids=["treble", "bass", "left-handed"])
def test_strings_of_one_course_are_parted_again_as_they_were(before):
    one = before
    for string in before.strings[1:]:
        one = pair_string(one, string.id, True)
    assert courses(one) == [1] * 6 and pair_all(one, False) == before


def test_all_strings_are_paired_at_once_and_parted_again():
    paired = pair_all(six(), True)
    assert courses(paired) == [3, 3, 2, 2, 1, 1] and all_paired(paired) and posts(paired) == posts(six())
    assert pair_all(paired, False) == six() and not all_paired(six()) and not all_paired(pair_string(paired, "5", False))
    with pytest.raises(GeometryError, match="5 strings cannot all stand in pairs"):
        pair_all(remove_string(six(), "6"), True)
    assert not all_paired(remove_string(paired, "6")) and not all_paired(replace(six(), strings=(), tuners=()))


def test_a_set_takes_its_thick_strings_to_the_side_where_they_are():
    chosen = next(one for one in SETS if len(one) == 6)
    left = string_set(begin(Numbers(left_handed=True)), chosen)
    assert tuple(s.diameter for s in left.strings) == chosen.diameters[::-1] and [s.note for s in left.strings][0] == "E4"
    assert string_set(left, chosen) == left and mirror_layout(left).strings == string_set(six(), chosen).strings


def test_the_partner_of_a_string_that_goes_begins_the_course_itself():
    paired = pair_string(pair_string(six(), "5", True), "3", True)
    assert courses(remove_string(paired, "4")) == [4, 4, 3, 2, 1]


def test_what_cannot_be_done_is_said_in_one_sentence():
    layout = six()
    with pytest.raises(GeometryError, match="none lies before it"):
        pair_string(layout, "6", True)
    with pytest.raises(GeometryError, match="no string named"):
        remove_string(layout, "none")
    while len(layout.strings) < MOST_STRINGS:
        layout = add_string(layout, "treble")
    with pytest.raises(GeometryError, match="no more"):
        add_string(layout, "bass")


def test_all_strings_may_go_and_come_again():
    layout = six()
    for _ in range(6):
        layout = remove_string(layout, layout.strings[0].id)
    assert layout.strings == () and runs(layout) == ()
    assert len(add_string(layout, "bass").strings) == 1


@settings(max_examples=40)
@given(st.lists(st.tuples(st.sampled_from(["bass", "treble", "remove", "pair", "part"]), st.integers(0, 30)), max_size=12))
def test_any_order_of_edits_leaves_a_sound_layout(steps):
    layout = six()
    for what, pick in steps:
        try:
            if what in ("bass", "treble"):
                layout = add_string(layout, what)
            else:
                id = layout.strings[pick % len(layout.strings)].id if layout.strings else "none"
                layout = remove_string(layout, id) if what == "remove" else pair_string(layout, id, what == "pair")
        except GeometryError:
            continue
    assert validate(layout) is layout
    counted = courses(layout)[::-1]
    assert names(layout) == [str(n) for n in range(len(counted), 0, -1)] and (not counted or counted[0] == 1)
    assert all(b - a in (0, 1) for a, b in zip(counted, counted[1:], strict=False))


def test_a_string_for_each_post_of_a_head_that_has_none_yet():
    head = six()
    bare = replace(head, strings=(), tuners=tuple(replace(tuner, string=None) for tuner in head.tuners))
    made = strings_for_posts(bare)
    assert names(made) == ["6", "5", "4", "3", "2", "1"] and posts(made) == [None] * 6
    # From 1.2 to 0.25 in one ratio, by hand: the second is 1.2 (0.25 / 1.2)^(1 / 5).
    assert [s.diameter for s in made.strings] == [1.2, 0.88, 0.64, 0.47, 0.34, 0.25]
    for wrong in (head, replace(bare, tuners=bare.tuners[:1])):
        with pytest.raises(GeometryError):
            strings_for_posts(wrong)
