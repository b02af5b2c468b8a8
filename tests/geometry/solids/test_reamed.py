"""Bores that a reamer opens for a tapered peg: drilled narrow, kept clear of as wide as their wide end, told with both."""

import pytest
from msgspec.structs import replace

from app.formats import headstock
from app.sheets import plan_work
from app.sheets.needs import reamers, tuner_sizes
from geometry.beginning import begin
from geometry.beginning.instruments import usual
from geometry.checks import check
from geometry.checks.said import read
from geometry.drawing.hole_words import bore_words
from geometry.errors import GeometryError
from geometry.layout import Headstock, Margins, Reading, validate
from geometry.layout.generic import PATTERNS, TAPERED
from geometry.layout.generic_inch import PATTERNS_INCH
from geometry.lengths import speaking
from geometry.measured.readings import planned_value
from geometry.routing import plan_routing
from geometry.sequence import best_order, operations, precedence
from geometry.solids.drilling import drill_for, to_drill
from tests.geometry.accuracy.test_clearances import hold_to_checks
from tests.geometry.checks.heads import bore, face, head, pattern

PEG = next(one for one in PATTERNS if one.id == TAPERED)


def pegs() -> Headstock:
    """Four pegs in wood 13 thick."""
    return begin(replace(usual("soprano ukulele"), face=TAPERED))


def reamed(layout: Headstock):
    return [d for hole in to_drill(layout) for d in hole.drillings if d.reamed]


def test_it_is_drilled_narrow_and_as_wide_as_its_wide_end_for_all_that_stays_clear_of_it():
    """By hand: 7.5 at the back of wood 13 thick is 7.5 - 13 / 30 = 7.067 at the face. A bore drilled 6 and reamed to 8 stands 9 from an edge:
    5 are left, not 6; two of them 20 apart leave 12."""
    layout = pegs()
    assert {(d.diameter, d.finished, round(d.narrow, 3), drill_for(layout, d).diameter) for d in reamed(layout)} == {(6.5, 7.5, 7.067, 6.5)}
    of = pattern("of", "face", bore(surface="back", reamed=8.0))
    two = head(tuners=(face("a", 31.0, 90.0, of), face("b", 11.0, 90.0, of)), patterns=(of,), margins=Margins(bore_outline=50.0, bore_bore=50.0))
    found = {snag.kind: snag.measured for snag in check(two).snags if "a" in snag.between}
    assert (found["bore-to-outline"], found["bore-to-bore"]) == (pytest.approx(5.0), pytest.approx(12.0))
    hold_to_checks(two)


def test_the_reamer_comes_last_whatever_is_asked_for():
    layout = replace(pegs(), pins=())
    ops = operations(layout, plan_routing(layout))
    by, steps = {op.id: op for op in ops}, best_order(ops, precedence(layout, ops)).steps
    assert [by[id].title for id in steps[-4:]] == ["Ream bass 1", "Ream bass 2", "Ream treble 1", "Ream treble 2"]
    last = by[steps[-4]]
    assert "taper 1:30, until it is 7.5 mm wide there" in last.words and last.setup.words() == "bench, reamer 1:30"
    before = {edge.first for edge in precedence(layout, ops) if edge.then == last.id}
    assert before == {"bore bass 1.1.1", "clean up"}
    assert "6.5 mm wide" in by["bore bass 1.1.1"].words


def test_a_counterbore_that_is_reamed_is_so_once_finish_or_not():
    layout = pegs()
    wide = replace(PEG, bores=(replace(PEG.bores[0], role="counterbore", depth=8.0), bore(diameter=5.0, surface="back")))
    layout = replace(layout, patterns=tuple(wide if one.id == TAPERED else one for one in layout.patterns))
    for finish in (False, True):
        ops = operations(replace(layout, blank=replace(layout.blank, finish=finish)), plan_routing(layout))
        assert len({op.id for op in ops}) == len(ops)
        assert [op.title for op in ops if op.kind == "final diameter"] == ["Ream bass 1", "Ream bass 2", "Ream treble 1", "Ream treble 2"]


@pytest.mark.parametrize(("drilled", "taper", "text", "cure"), [
    (7.1, 30.0, "would be 7.06 mm wide at its far end, where the drill leaves 7.10 mm: ", "Drill it 7.0 mm or narrower, or ream it wider."),
    (1.5, 5.0, "would run out to nothing towards its far end: ", "Ream it wider, or with a taper that narrows less.")])
def test_it_is_told_how_narrow_a_reamer_leaves_a_bore_that_it_does_not_open_all_along(drilled, taper, text, cure):
    """By hand: 7.5 narrows by 13 / 30 to 7.067 in wood 13 thick, 2 by 13 / 5 to nothing."""
    layout = pegs()
    peg = replace(PEG, bores=(replace(PEG.bores[0], diameter=drilled, reamed=max(2.0, drilled + 0.4), taper=taper),))
    snags = check(replace(layout, patterns=tuple(peg if one.id == TAPERED else one for one in layout.patterns))).snags
    snag = next(one for one in snags if one.kind == "ream-short")
    assert text in snag.text and read(snag.cure) == cure


def test_sheets_tell_the_drill_and_the_reamer():
    d = reamed(pegs())[0]
    assert bore_words(d) == "6.5 through, reamed 1:30 to 7.5 at the back"
    assert "post 6.5 through, reamed 1:30 to 7.5; post 6.8" in tuner_sizes(PEG)
    assert [(tool.name, tool.work) for tool in reamers(plan_work(pegs()))] == [("reamer 1:30", "4 holes, to 7.5 mm")]
    inches = next(one for one in PATTERNS_INCH if one.bores[0].reamed)
    with speaking("in64"):
        assert 'reamed 1:30 to 19/64"' in bore_words(replace(d, diameter=inches.bores[0].diameter, reamed=inches.bores[0].reamed))


def test_a_reading_of_the_finished_hole_is_held_against_its_wide_end():
    layout = pegs()
    reading = Reading(piece="practice", drilling="bass 1.1.1", what="diameter", value=7.6)
    assert planned_value(layout, reading) == 7.5
    apart = replace(reading, what="distance", other="bass 2.1.1", how="over the wood", value=20.0)
    assert planned_value(layout, replace(apart, how="")) - planned_value(layout, apart) == pytest.approx(7.5)


def test_it_is_kept_in_the_file_and_refused_when_it_makes_no_sense():
    layout = pegs()
    assert headstock.decode(headstock.encode(layout)) == layout
    wrong = replace(PEG, bores=(replace(PEG.bores[0], reamed=6.0),))
    with pytest.raises(GeometryError, match="reamed to less than it is drilled"):
        validate(replace(layout, patterns=tuple(wrong if one.id == TAPERED else one for one in layout.patterns)))
