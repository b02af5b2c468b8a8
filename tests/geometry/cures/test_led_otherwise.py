"""Cures that lead a string otherwise: past the other side of its post, or to the other's post; held tuners keep theirs."""

import sys
from pathlib import Path

import pytest
from msgspec.structs import replace

from app.formats.headstock import read
from geometry.checks import check
from geometry.checks.moves import Swap, Wind
from geometry.cures import apply_cure, carried_out, settle
from geometry.edits import move_features
from geometry.layout import Task, Time
from geometry.strings.pairing import present
from tests.geometry.checks.cases_strings import crossed, past_a_post
from tests.geometry.checks.heads import bore, pattern


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


def test_strings_that_cross_above_the_face_with_air_between_them_are_noted():
    """One post is 14 higher: half-way, where they cross, its string lies about 7 above the other."""
    layout = crossed()
    tall = pattern("tall", "face", bore(), post=(6.0, 45.0, 40.0))
    apart = replace(layout, patterns=(*layout.patterns, tall), tuners=(layout.tuners[0], replace(layout.tuners[1], pattern="tall")))
    snag, = [one for one in check(apart).snags if one.kind == "string-to-string"]
    assert snag.grade == "note" and snag.measured is None and snag.text == "Strings 1 and 2 cross on their way to a and b."
    assert snag.where[:2] == pytest.approx((0.0, 50.0), abs=0.5)


def test_strings_that_pass_each_other_in_a_slot_are_left_alone():
    slotted = read(Path("samples/slotted-three-a-side.headstock.json"))
    assert present(slotted).crossings == 2
    assert not [one for one in check(slotted).snags if one.kind == "string-to-string"]


def _past_its_neighbour():
    """Twelve strings; the second post of the bass row stands in the way of the first one's string, on either side of it."""
    return move_features(read(Path("samples/twelve-all-face.headstock.json")), ["bass 1"], (5.0, 0.0))


def test_no_move_is_tried_twice(monkeypatch):
    """A string led otherwise has no amount: tried again with a larger one it would be the same whole check."""
    tried, settling = [], sys.modules["geometry.cures.settle"]
    monkeypatch.setattr(settling, "carried_out", lambda layout, move, mirrored: tried.append(move) or carried_out(layout, move, mirrored))
    snag = _settled(_past_its_neighbour(), "string-to-post")
    assert not isinstance(snag.move, Wind) and {Wind("bass 1"), Wind("bass 2")} <= set(tried)
    assert len(tried) == len(set(tried))


def test_where_strings_alone_could_be_led_otherwise_no_length_is_told():
    layout = _past_its_neighbour()
    done = tuple(Time(piece="real", minutes=1.0, task=Task(operation=f"bore {tuner.id}.1.1", title="bore", features=(tuner.id,)))
                 for tuner in layout.tuners)
    snag = _settled(replace(layout, book=replace(layout.book, times=done)), "string-to-post")
    assert snag.move is None and snag.cure.startswith("Of 3 moves that were tried none does it.")
