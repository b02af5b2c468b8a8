"""How many strings there are: names, posts and courses stay together."""

import msgspec
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from geometry.beginning import Numbers, begin
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


@pytest.mark.parametrize("side", ["bass", "treble"])
def test_a_string_comes_outside_the_others_and_they_keep_their_posts(side):
    before = six()
    after = add_string(before, side)
    assert [string.id for string in after.strings] == ["1", "2", "3", "4", "5", "6", "7"]
    assert posts(after) == ([None, *posts(before)] if side == "bass" else [*posts(before), None])
    assert courses(after) == [1, 2, 3, 4, 5, 6, 7]
    beside = before.strings[0 if side == "bass" else -1]
    assert after.strings[0 if side == "bass" else -1].diameter == beside.diameter


def test_six_strings_less_two_are_a_bass_head():
    """Of 1 to 6 the second and the last go: what was 3, 4, 5 is 2, 3, 4 now, on the posts that it had."""
    before = six()
    after = remove_string(remove_string(before, "2"), "5")
    assert [string.id for string in after.strings] == ["1", "2", "3", "4"]
    kept = posts(before)
    assert posts(after) == [kept[0], kept[2], kept[3], kept[4]]
    assert len(after.tuners) == 6 and len(runs(after)) == 4


def test_strings_with_names_of_their_own_keep_them():
    layout = six()
    named = msgspec.structs.replace(
        layout, strings=(msgspec.structs.replace(layout.strings[0], id="low"), *layout.strings[1:]),
        tuners=tuple(msgspec.structs.replace(t, string="low") if t.string == "1" else t for t in layout.tuners))
    assert [string.id for string in add_string(named, "treble").strings][:1] == ["low"]
    assert [string.id for string in remove_string(named, "3").strings] == ["low", "2", "4", "5", "6"]


def test_pairs_are_made_and_parted():
    paired = pair_string(pair_string(six(), "2", True), "4", True)
    assert courses(paired) == [1, 1, 2, 2, 3, 4]
    assert shares_course(paired, 1) and not shares_course(paired, 2)
    assert courses(pair_string(paired, "2", False)) == [1, 2, 3, 3, 4, 5]


def test_all_strings_are_paired_at_once_and_parted_again():
    paired = pair_all(six(), True)
    assert courses(paired) == [1, 1, 2, 2, 3, 3] and all_paired(paired) and posts(paired) == posts(six())
    assert pair_all(paired, False) == six() and not all_paired(six()) and not all_paired(pair_string(paired, "2", False))
    with pytest.raises(GeometryError, match="5 strings cannot all stand in pairs"):
        pair_all(remove_string(six(), "6"), True)
    assert not all_paired(remove_string(paired, "6")) and not all_paired(replace(six(), strings=(), tuners=()))


def test_a_set_takes_its_thick_strings_to_the_side_where_they_are():
    chosen = next(one for one in SETS if len(one) == 6)
    left = string_set(begin(Numbers(left_handed=True)), chosen)
    assert tuple(s.diameter for s in left.strings) == chosen.diameters[::-1] and [s.note for s in left.strings][0] == "E4"
    assert string_set(left, chosen) == left and mirror_layout(left).strings == string_set(six(), chosen).strings


def test_the_partner_of_a_string_that_goes_begins_the_course_itself():
    paired = pair_string(pair_string(six(), "2", True), "4", True)
    assert courses(remove_string(paired, "3")) == [1, 1, 2, 3, 4]


def test_what_cannot_be_done_is_said_in_one_sentence():
    layout = six()
    with pytest.raises(GeometryError, match="none before it"):
        pair_string(layout, "1", True)
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


@settings(max_examples=40, deadline=None, derandomize=True)
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
    counted = courses(layout)
    assert not counted or counted[0] == 1
    assert all(b - a in (0, 1) for a, b in zip(counted, counted[1:], strict=False))


def test_a_string_for_each_post_of_a_head_that_has_none_yet():
    head = six()
    bare = replace(head, strings=(), tuners=tuple(replace(tuner, string=None) for tuner in head.tuners))
    made = strings_for_posts(bare)
    assert [s.id for s in made.strings] == ["1", "2", "3", "4", "5", "6"] and posts(made) == [None] * 6
    # From 1.2 to 0.25 in one ratio, by hand: the second is 1.2 (0.25 / 1.2)^(1 / 5).
    assert [s.diameter for s in made.strings] == [1.2, 0.88, 0.64, 0.47, 0.34, 0.25]
    for wrong in (head, replace(bare, tuners=bare.tuners[:1])):
        with pytest.raises(GeometryError):
            strings_for_posts(wrong)
