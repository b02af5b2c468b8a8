"""Numbers in the panel: of the right thing, with their unit, and never kinder than they are."""

import pytest
from msgspec.structs import replace

from app.panels.book.reading_rows import degree_words, fit_sentences, length_words, shop_sentences
from app.panels.describe import describe
from app.panels.order.rate_rows import hour_rows, loud_words, tally
from app.panels.router.fit_rows import fit_rows
from app.panels.router.rout_sheet import rout_sheets
from app.sheets.hole_table import paper_rows
from geometry.edits.tuners import slide_tuner
from geometry.layout import Accuracy, StraightSlot
from geometry.layout.hardware import Bore
from geometry.lengths import speaking
from geometry.measured import Found, Joined
from geometry.routing import plan_routing
from geometry.sequence import Counts, Hours, count_changes
from tests.geometry.edits.heads import demo


def fact(rows, label):
    row, = [row for row in rows if row.label == label]
    return row.value


@pytest.mark.parametrize(("value", "sign", "words"), [
    (-0.03, False, "0.0°"), (-3.06, False, "-3.1°"), (-0.03, True, "0.0°"), (0.04, True, "0.0°"), (0.26, True, "+0.3°"),
    (-1.0, True, "−1.0°")])
def test_an_angle_of_a_reading_is_never_minus_nothing(value, sign, words):
    assert degree_words(value, sign) == words


@pytest.mark.parametrize(("mm", "unit", "sign", "words"), [
    (-0.001, "mm", True, "0"), (0.0, "in64", True, '0"'), (0.254, "in", True, '+0.01"'), (-0.254, "in64", True, '−0.01"'),
    (9.525, "in64", False, '0.375"'), (9.525, "mm", False, "9.53")])
def test_a_reading_carries_its_sign_in_inches(mm, unit, sign, words):
    assert length_words(mm, unit, sign) == words


def test_a_table_that_is_all_but_level_is_told_as_level():
    """On paper a tilt of -0.03 degrees stood as -0.0, as if it had a side."""
    head = slide_tuner(demo(), "bass side 2", 105.7)
    tilts = {row[7] for row in paper_rows(head) if row[0].startswith("bass side 2")}
    assert tilts == {"level"}


def test_screws_and_pins_are_counted_by_their_size():
    head = demo()
    tuner = next(one for one in head.tuners if head.pattern(one.pattern).mount == "face")
    pattern = head.pattern(tuner.pattern)
    bores = (*(bore for bore in pattern.bores if bore.role not in ("screw", "pin")),
             Bore(role="screw", diameter=1.8, surface="back", at=(-9.0, 4.0), depth=9.0),
             Bore(role="pin", diameter=2.0, surface="back", at=(9.0, 4.0), depth=4.0),
             Bore(role="screw", diameter=1.8, surface="back", at=(-9.0, -4.0), depth=9.0))
    head = replace(head, patterns=tuple(replace(one, bores=bores) if one is pattern else one for one in head.patterns))
    assert fact(describe(head, tuner.id, "mm").facts, "Screws and pins") == "2 of 1.8, 1 of 2"


@pytest.mark.parametrize(("width", "shown"), [(12.0, "12 mm"), (11.96, "11.96 mm"), (6.35, "6.35 mm"), (11.999, "11.99 mm")])
def test_the_largest_bit_that_passes_is_not_wider_than_the_slot(width, shown):
    """A slot of 11.96 mm that is told as 12 mm sends a maker for a bit that does not enter it."""
    head = demo()
    slot = next(one for one in head.slots if isinstance(one.shape, StraightSlot))
    head = replace(head, slots=(replace(slot, shape=replace(slot.shape, width=width)),))
    assert fact(fit_rows(head, slot.id, "mm"), "Largest bit that passes") == shown
    with speaking("mm"):
        told = {label: words for label, words, _ in rout_sheets(head, plan_routing(head))[0].facts}
    assert told["Narrowest: the largest cutter"] == shown


@pytest.mark.parametrize(("unit", "by", "play"), [("mm", "0.252 mm", "0.2515 mm"), ("in", '0.00992"', '0.0099"')])
def test_a_part_that_does_not_go_on_is_seen_to_be_off_by_more_than_its_play(unit, by, play):
    wrong = fit_sentences((Joined(of="tuner", one="a.1", other="a.2", off=-0.252, play=0.2515),), unit)[0]
    assert f"{by} too near, the play is {play}:" in wrong


@pytest.mark.parametrize(("unit", "by", "play", "held"), [("mm", "0.4 mm", "0.25 mm", "0.3 mm"), ("in", '0.016"', '0.01"', '0.012"')])
def test_what_readings_say_carries_its_unit(unit, by, play, held):
    wrong, = fit_sentences((Joined(of="tuner", one="a.1", other="a.2", off=0.4, play=0.25),), unit)[:1]
    assert f"{by} too far apart, the play is {play}:" in wrong
    found = Found(field="mark", count=9, freedom=8, mean=0.0, deviation=0.15, low=0.1, high=0.25)
    line, = shop_sentences((found,), Accuracy(), unit)
    assert line.startswith("Marking: plus or minus " + held) and line.endswith(f"the layout holds {held}.")


def test_one_thing_is_told_as_one():
    """`from 1 readings` and `1 of 1 pairs take` read as a slip of the program, and make its numbers doubtful too."""
    alone = Found(field="mark", count=1, freedom=1, mean=0.0, deviation=0.15, low=0.1, high=0.25)
    assert ", from 1 reading; the layout" in shop_sentences((alone,), Accuracy(), "mm")[0]
    fits = Joined(of="tuner", one="a.1", other="a.2", off=0.1, play=0.25)
    assert fit_sentences((fits,), "mm") == ["1 of 1 pair of joined holes takes its part."]
    assert fit_sentences((fits, replace(fits, other="a.3")), "mm") == ["2 of 2 pairs of joined holes take their part."]
    one = Counts(operations=1, holes=1, pins=0, drillings=1, counterbores=0, waste_holes=0, set_ups=1, tilts=1,
                 changes=count_changes(()), hours=Hours(1.0, 0.0))
    assert tally(one).startswith("1 step · 1 hole · 1 set-up · 1 tilt\n")
    assert {row.label: row.value for row in hour_rows(one)}["Holes"] == "1 in 1 drilling"
    pinned = replace(one, pins=1, drillings=2)
    assert tally(pinned).startswith("1 step · 1 hole · 1 pin · 1 set-up · 1 tilt\n")
    assert {row.label: row.value for row in hour_rows(pinned)}["Holes"] == "1 + 1 pin in 2 drillings"
    assert loud_words(["a", "b", "c"], ()).endswith("And 1 more that cannot be done: it is marked below.")


@pytest.mark.parametrize("unit", ["mm", "in", "in64"])
def test_a_mark_is_never_told_against_the_very_same_number(unit):
    """Slid along the edge of the demonstration a squared line misses by nothing up to some mm: `98.8, not 98.8` helps nobody."""
    told = set()
    for along in range(60, 125, 5):
        words = fact(describe(slide_tuner(demo(), "treble side 2", float(along)), "treble side 2", unit).facts, "Mark on the edge")
        here, _, there = words.partition(", not ")
        assert here != there
        told.add(bool(there))
    assert told == {True, False}
