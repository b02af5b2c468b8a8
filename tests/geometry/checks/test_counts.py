"""How much is measured, counted and not timed: it grows with the number of tuners, and a move measures its neighbourhood alone."""

import pytest
from msgspec.structs import replace

from app.window.demo import demo
from geometry.checks import (
    LiveCheck,
    check,
    depths,
    feather,
    flats,
    items,
    nut_line,
    pins,
    posts,
    router,
    side_marks,
    solid_pairs,
    string_angles,
    string_slots,
)
from geometry.edits import free_from_row, move_features, move_tuner, plan_point
from geometry.layout import FreePlace, Nut
from geometry.routing import depth_of_slot, first_plan, fit
from geometry.solids import distance
from tests.benchmarks.heads import waisted
from tests.geometry.checks.cases_strings import _dive
from tests.geometry.checks.heads import FACE, bore, face, head, pattern, slot
from tests.geometry.checks.many import many, many_flats


@pytest.fixture
def counted(monkeypatch):
    """Pairs of solids whose gap is asked for, and of these the ones that no closed form decides."""
    counts = {"asked": 0, "searched": 0}
    gaps, certified = solid_pairs.gaps, distance.certified

    def counting(a, b, beyond):
        counts["asked"] += len(a)
        return gaps(a, b, beyond)

    def searching(a, *others, **more):
        counts["searched"] += len(a)
        return certified(a, *others, **more)

    monkeypatch.setattr(solid_pairs, "gaps", counting)
    monkeypatch.setattr(distance, "certified", searching)
    return counts


def _counts_of(counted, act):
    counted.update(asked=0, searched=0)
    act()
    return dict(counted)


def test_pairs_measured_grow_with_the_tuners(counted):
    first = _counts_of(counted, lambda: check(many(1)))
    for dozens in (4, 16):
        grown = _counts_of(counted, lambda dozens=dozens: check(many(dozens)))
        for kind, count in grown.items():
            assert count <= 1.2 * dozens * max(first[kind], 1)


def _moved(head, at, by):
    tuner = head.tuners[at]
    place = FreePlace(at=(tuner.place.at[0], tuner.place.at[1] + by))
    return replace(head, tuners=(*head.tuners[:at], replace(tuner, place=place), *head.tuners[at + 1:]))


@pytest.mark.parametrize("dozens", [1, 4, 16])
def test_a_move_measures_its_neighbourhood_alone(counted, dozens):
    head = many(dozens)
    at = next(i for i in range(6 * dozens, 12 * dozens) if isinstance(head.tuners[i].place, FreePlace))
    live = LiveCheck()
    live.check(head)
    # Its own drillings among themselves, its buttons, and those of the four tuners about it: none of these where all are clear.
    for by, least in ((0.5, 0), (20.0, 1)):
        after = _moved(head, at, by)
        counts = _counts_of(counted, lambda after=after: live.check(after))
        assert least <= counts["asked"] <= 80 and counts["searched"] <= 12
        assert _counts_of(counted, lambda after=after: live.check(after))["asked"] == 0
        assert live.check(after) == check(after)


def test_nothing_moved_measures_nothing(counted):
    head = many(2)
    live = LiveCheck()
    result = live.check(head)
    counts = _counts_of(counted, lambda: live.check(replace(head, name="another name")))
    assert counts == {"asked": 0, "searched": 0}
    assert live.check(replace(head, name="a third")) == result


def test_flats_are_held_against_what_is_near_them_alone(monkeypatch):
    asked = []
    for name in ("_rail", "_beside"):
        own = getattr(flats, name)
        monkeypatch.setattr(flats, name, lambda *given, own=own: asked.append(given) or own(*given))
    per_flat = 0
    for dozens in (1, 4, 16):
        asked.clear()
        head = many_flats(dozens)
        check(head)
        per_flat = per_flat or len(asked) / 6
        assert 1 <= len(asked) / (6 * dozens) <= 1.5 * per_flat
    at = next(i for i, tuner in enumerate(head.tuners) if isinstance(tuner.place, FreePlace))
    live = LiveCheck()
    live.check(head)
    asked.clear()
    assert live.check(_moved(head, at, 0.5)) == check(_moved(head, at, 0.5))
    live.check(_moved(head, at, 0.7))
    asked.clear()
    live.check(_moved(head, at, 0.9))
    assert len(asked) <= 6, "the flats about the tuner that moved"


def test_what_hangs_on_the_outline_alone_is_looked_up_once(monkeypatch):
    """Where its wood ends at the nut line: no tuner that moves changes that."""
    clipped = []
    clip = nut_line.shapely.clip_by_rect
    monkeypatch.setattr(nut_line.shapely, "clip_by_rect", lambda *given: clipped.append(1) or clip(*given))
    head = many(1)
    at = next(i for i, tuner in enumerate(head.tuners) if isinstance(tuner.place, FreePlace))
    live = LiveCheck()
    for by in (0.0, 0.5, 1.0):
        live.check(_moved(head, at, by))
    assert len(clipped) == 2  # at the line, and as far from it as corners are rounded


def test_a_tuner_through_the_face_asks_nothing_of_those_from_the_side(monkeypatch):
    """How their posts and bores lie, and which locating pins their bores pass on the way in."""
    asked = []
    for place, name in ((posts, "_boxes"), (side_marks, "_boxes"), (pins, "_in_the_way")):
        own = getattr(place, name)
        monkeypatch.setattr(place, name, lambda *given, own=own, name=name: asked.append(name) or own(*given))
    layout, live = free_from_row(demo(), "treble face 2"), LiveCheck()
    live.check(layout)
    sides = sum(" side " in tuner.id for tuner in layout.tuners)
    assert layout.pins and asked.count("_in_the_way") == len(layout.pins) * sides and asked.count("_boxes") == 2
    asked.clear()
    x, y = plan_point(layout, "treble face 2")
    for by in (0.5, 9.0):
        live.check(move_tuner(layout, "treble face 2", (x, y + by)))
    assert not asked


def test_a_move_asks_its_own_string_alone_and_what_it_is_not_again(monkeypatch):
    """How strings bend at the nut hangs on each string, what kinds of holes hardware has on none of their places."""
    bends, kinds = [], []
    bend, kind = string_angles.break_angle, items._kind
    monkeypatch.setattr(string_angles, "break_angle", lambda run, nut: bends.append(run.tuner) or bend(run, nut))
    monkeypatch.setattr(items, "_kind", lambda *given: kinds.append(given) or kind(*given))
    layout, live = demo(), LiveCheck()
    live.check(layout)
    used = {tuner.pattern for tuner in layout.tuners}
    assert len(bends) == 12 and len(kinds) == len(used) + len(layout.holes) + len(layout.pins)
    moved = move_tuner(free_from_row(layout, "treble face 2"), "treble face 2", (24.0, 90.0))
    assert live.check(moved) == check(moved)
    bends.clear(), kinds.clear()
    live.check(move_tuner(moved, "treble face 2", (24.0, 91.0)))
    assert bends == ["treble face 2"] and not kinds
    live.check(replace(moved, blank=replace(moved.blank, thickness=moved.blank.thickness + 1.0)))
    assert kinds


def test_hardware_in_order_is_asked_once_for_all_its_tuners_through_the_face(monkeypatch):
    """Their depths, and the drills and the quill that they take, are the same wherever they are."""
    head, asked = demo(), []
    patterns = {tuner.id: tuner.pattern for tuner in head.tuners}
    own = depths.alone
    monkeypatch.setattr(depths, "alone", lambda item, around: asked.append(patterns.get(item.id)) or own(item, around))
    check(head)
    face = {pattern.id for pattern in head.patterns if pattern.mount == "face" and pattern.id in patterns.values()}
    assert len([pattern for pattern in patterns.values() if pattern in face]) > len(face)
    assert sorted(pattern for pattern in asked if pattern in face) == sorted(face)


def test_hardware_with_a_fault_is_told_of_every_tuner_and_again_with_other_margins():
    deep = pattern("deep", "face", bore(), bore(role="screw", diameter=2.0, at=(9.0, 0.0), surface="back", depth=13.5))
    two = head(tuners=(face("a", -20.0, 60.0, deep), face("b", 20.0, 60.0, deep), face("c", 20.0, 100.0, deep)), patterns=(deep,))
    live = LiveCheck()
    easy = replace(two, margins=replace(two.margins, screw_any=0.1))
    for layout, told in ((easy, []), (two, ["a", "b", "c"]), (easy, []), (two, ["a", "b", "c"])):
        assert sorted(snag.between[0] for snag in live.check(layout).snags if snag.kind == "too-deep") == told


def test_the_bores_of_one_tuner_are_held_against_each_other():
    crowded = pattern("crowded", "face", bore(), bore(role="screw", diameter=2.0, at=(5.0, 0.0), surface="back", depth=6.0))
    found = check(head(tuners=(face("a", -20.0, 60.0, crowded), face("b", 20.0, 60.0, crowded)), patterns=(crowded,)))
    # Axes 5 apart, less the post bore's radius and the screw's.
    apart, wanted = 5.0 - crowded.bores[0].diameter / 2 - 1.0, head().margins.screw_any
    own = {snag.between: snag.measured for snag in found.snags if len(snag.between) == 1 and snag.needed == wanted}
    assert apart < wanted and own == {("a",): pytest.approx(apart, abs=1e-9), ("b",): pytest.approx(apart, abs=1e-9)}


def test_slots_at_a_feather_edge_are_not_asked_again_while_a_tuner_moves(monkeypatch):
    asked, cut = [], feather._cut

    def counted(opening, *others):
        asked.append(opening.id)
        return cut(opening, *others)
    monkeypatch.setattr(feather, "_cut", counted)
    layout = head(tuners=(face("a", -20.0, 60.0),), patterns=(FACE,), slots=(slot(),), nut=Nut(pitch=14.0))
    layout = replace(layout, blank=replace(layout.blank, scarf=90.0))
    live = LiveCheck()
    for y in (60.0, 61.0, 62.0):
        found = live.check(replace(layout, tuners=(face("a", -20.0, y),)))
        assert "feather-edge" in {snag.kind for snag in found.snags}
    assert asked == ["slot", "slot"], "once for the face and once for the back"


def test_a_slot_that_moves_is_planned_once_and_one_with_another_shape_again(monkeypatch):
    """A drawn one takes long to plan; where it stands changes nothing of what cutters and drills do in it."""
    asked = {"narrowest": 0, "waste": 0, "plan": 0, "entering": 0}

    def counted(name, place, attribute):
        own = getattr(place, attribute)

        def counting(*given, **more):
            asked[name] += 1
            return own(*given, **more)
        monkeypatch.setattr(place, attribute, counting)
    for name, place, attribute in (("narrowest", fit, "_about_narrowest"), ("waste", depth_of_slot, "drilled"),
                                   ("plan", first_plan, "first_of_slot"), ("entering", router, "enters")):
        counted(name, place, attribute)
    slot = waisted()
    layout = replace(demo(), slots=(slot,))
    live = LiveCheck()
    first = live.check(layout)
    assert any(snag.kind == "bit-too-wide" for snag in first.snags)
    once = dict(asked)
    assert all(once.values())
    for by in ((0.3, 0.1), (1 / 3, -7.7), (-2.6, 0.4)):
        there = live.check(move_features(layout, [slot.id], by))
        assert there == check(move_features(layout, [slot.id], by))
        one, other = ([s for s in found.snags if s.kind == "bit-too-wide"] for found in (first, there))
        assert [replace(s, where=None) for s in one] == [replace(s, where=None) for s in other]
        assert other[0].where == pytest.approx(tuple(a + b for a, b in zip(one[0].where, (*by, 0.0), strict=True)), abs=1e-9)
    # That a fresh check asks whether the cutter goes in is all: what it remembers of the slot itself is kept for all.
    assert asked == {**once, "entering": once["entering"] + 3}
    live.check(replace(layout, slots=(replace(slot, depth=9.0),)))
    assert asked["entering"] == once["entering"] + 4


def test_a_slot_dragged_into_strings_asks_once_how_they_dive_into_it(monkeypatch):
    asked, dives = [], string_slots.dives_into
    monkeypatch.setattr(string_slots, "dives_into", lambda runs, slot, wall: asked.append(slot) or dives(runs, slot, wall))
    live = LiveCheck()
    for x in (-5.3, -5.4, -5.5):
        layout = _dive(30.0, x=x)
        assert "string-to-wall" in {snag.kind for snag in live.check(layout).snags}
    assert len(asked) == 3


def test_the_wood_between_bores_of_posts_is_asked_once_for_all(monkeypatch):
    asked, gaps = [], posts.gaps
    monkeypatch.setattr(posts, "gaps", lambda one, *more: asked.append(len(one)) or gaps(one, *more))
    layout = demo()
    layout = replace(layout, margins=replace(layout.margins, post_wall=60.0))
    found = [snag for snag in check(layout).snags if snag.kind == "post-to-post"]
    assert len(found) > 3 and len(asked) == 1 and asked[0] >= len(found)
