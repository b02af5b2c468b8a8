"""Nowhere is a hole told deeper than it is: a stop set from a number that was rounded up may go through a wall."""

import math
import re
from functools import cache
from pathlib import Path

import pytest
from msgspec.structs import replace

from app.formats.headstock import read
from app.panels.describe import describe
from app.sheets.card_pages import card_blocks
from app.sheets.cards import cards
from app.sheets.hole_table import paper_rows, rows
from app.sheets.needs import wares
from app.sheets.router_pages import router_blocks
from app.sheets.work import plan_work
from geometry.drawing import Label
from geometry.drawing.sections import section_along_bore
from geometry.drawing.wrap import wrap_drawing
from geometry.edits.tuners import slide_tuner
from geometry.lengths import speaking
from geometry.solids.side import side_bore
from geometry.units import parse_length
from tests.geometry.checks.heads import bore, pattern, side, slot
from tests.geometry.checks.heads import head as bench_head
from tests.geometry.edits.heads import demo

SAMPLES = [Path(f"samples/{name}.headstock.json") for name in ("twelve-string-mixed", "slotted-three-a-side", "slotted-snags-to-find")]
TOUCH = 1e-6


@cache
def head(path):
    return read(path)


def down(mm):
    """In mm to a tenth, never above it."""
    return f"{math.floor(mm * 10 + 1e-5) / 10:.1f}"


def words_of(drawing):
    return " | ".join(mark.text for mark in drawing if isinstance(mark, Label))


@pytest.mark.parametrize("screws", [0, 1])
def test_the_stop_of_a_counterbore_from_the_side_is_told_wherever_its_bore_is(screws):
    """The square edge lies 10 mm outside the seat: 4 mm deep there, and 30; the screw is drilled by hand later."""
    screw = bore("screw", 2.0, "seat", (9.0, 0.0), 8.0)
    of = pattern("of", "side", bore("counterbore", 11.0, "seat", depth=4.0), bore(surface="seat", depth=30.0), *[screw] * screws)
    layout = bench_head(tuners=(side("a", 90.0, of),), patterns=(of,), slots=(slot(),))
    work = plan_work(layout)
    one, = [card for card in cards(layout, work) if card.kind == "side"]
    told = [mark.text for block in card_blocks(layout, work, [one], 190.0) for placed in block.placed for mark in placed.drawing
            if isinstance(mark, Label)]
    assert told.count("14.0") == 1 and told[told.index("40.0") + 1] == "to full diameter"
    assert any("1 screw pilot later (step " in text for text in told) == bool(screws)
    assert "11, stop 14" in words_of(wrap_drawing(layout))


@pytest.mark.parametrize("unit", ["mm", "in", "in64"])
@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.name)
def test_depths_in_the_hole_table(path, unit):
    layout = head(path)
    with speaking(unit):
        cells = paper_rows(layout)
    for row, line in zip(rows(layout), cells, strict=True):
        for told, true in ((line[8], row.drilling.depth), (line[9], row.drilling.stop)):
            if re.match(r"\d", told):
                assert true - 0.11 < parse_length(told, unit) <= true + TOUCH, (row.drilling.id, told)


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.name)
def test_the_stops_of_bores_from_the_side_wherever_they_are_told(path):
    layout = head(path)
    work = plan_work(layout)
    card = " | ".join(words_of(one.drawing) for block in card_blocks(layout, work, cards(layout, work), 190.0)
                      for one in block.placed)
    wrap, steps = words_of(wrap_drawing(layout)), " | ".join(op.words for op in work.ops)
    bores = [bore for tuner in layout.tuners if (bore := side_bore(layout, tuner.id)) is not None and bore.mark is not None]
    for bore in bores:
        full, point = down(bore.stop_full), down(bore.stop_point)
        bare_full, bare_point = (text.removesuffix(".0") for text in (full, point))
        assert f"{full} | to full diameter | " in card and f"{point} to the point | " in card
        assert f"({down(bore.depth)} from the seat)" in card
        assert f"stop {bare_full}" in wrap
        assert f"stop at {bare_full} mm, {bare_point} mm to the point" in steps
        assert f"stop {bare_full}, {bare_point} to the point" in words_of(section_along_bore(layout, bore.tuner))
        panel = {row.label: str(row.value) for row in describe(layout, bore.tuner, "mm").facts}
        assert panel["Stop, to full diameter"] == full and panel["Stop, to the point"].startswith(f"{point}, ")
        if bore.window is not None:
            least, most = f"{math.ceil((bore.window[0] - TOUCH) * 10) / 10:.1f}", down(bore.window[1])
            assert panel["Stops that will do"] == f"{least} to {most}" and f"Stops from {least} to {most} will do." in card
        else:
            assert panel["End of the post"] == f"{down(bore.bears)} deep in the inner wall"
            assert f"The post's end lies {down(bore.bears)} deep in the inner wall." in card


def test_a_stop_that_brings_the_point_into_the_inner_wall_is_marked():
    layout = head(SAMPLES[0])
    bore = side_bore(layout, next(tuner.id for tuner in layout.tuners if side_bore(layout, tuner.id)))
    deeper = replace(layout, patterns=tuple(replace(one, bores=tuple(
        replace(b, depth=b.depth + bore.window[1] - bore.stop_full + 0.1) if b.role == "post" and one.mount == "side" else b
        for b in one.bores)) for one in layout.patterns))
    assert [{row.label: row.warn for row in describe(which, bore.tuner, "mm").facts}["Stops that will do"] for which in (layout, deeper)] == [False, True]


@pytest.mark.parametrize("unit", ["mm", "in", "in64"])
def test_pilots_by_hand_and_hardware_are_told_no_deeper_than_they_are(unit):
    """9.9 mm is 25/64 in (9.922) to the nearest 64th."""
    layout = head(SAMPLES[0])
    layout = replace(layout, patterns=tuple(replace(one, bores=tuple(
        bore if bore.depth is None else replace(bore, depth=9.9) for bore in one.bores)) for one in layout.patterns))
    with speaking(unit):
        work = plan_work(layout)
        card = " | ".join(words_of(one.drawing) for block in card_blocks(layout, work, cards(layout, work), 190.0)
                          for one in block.placed)
        sizes = " | ".join(ware.sizes for ware in wares(layout))
    panel = " | ".join(str(row.value) for other in layout.tuners for row in describe(layout, other.id, unit).facts)
    told = [*re.findall(r"wide, (\S+(?: \d+/\d+)?\"?) deep", card), *re.findall(r"(?<=, )(\S+(?: \d+/\d+)?\"?) deep", sizes),
            *re.findall(r"(?<=, )(\S+(?: \d+/\d+)?\"?) deep, from", panel), *re.findall(r" to (\S+)(?=[,;])", sizes)]
    assert len(told) > 5
    for length in told:
        assert 9.9 - 0.03 < parse_length(length, unit) <= 9.9 + TOUCH, length


@pytest.mark.parametrize("unit", ["mm", "in64"])
def test_a_card_cut_from_its_page_says_its_unit_and_how_wide_the_hole_is(unit):
    """A drill of the rack may have any name."""
    layout = head(SAMPLES[0])
    renamed = replace(layout, rack=replace(layout.rack, drills=tuple(
        replace(drill, id=f"old one {n}") for n, drill in enumerate(layout.rack.drills))))
    with speaking(unit):
        work = plan_work(renamed)
        made = cards(renamed, work)
        texts = [words_of(one.drawing) for block in card_blocks(renamed, work, made, 86.0) for one in block.placed]
    whole = " | ".join(texts)
    for card in made:
        assert re.search(rf"card {card.number}{', mm' if unit == 'mm' else ''}(?=, plan| \||$)", whole), card.number
    with speaking(unit):
        routed = [words_of(one.drawing) for block in router_blocks(renamed, work, 90, 170.0) for one in block.placed]
    assert re.search(rf"card 90{', mm' if unit == 'mm' else ''}(?=, plan| \||$)", " | ".join(routed))
    sides = [card for card in made if card.kind == "side"]
    assert sides
    for card in sides:
        bore = next(d for d in card.drillings if d.role == "post")
        with speaking(unit):
            own = " | ".join(words_of(one.drawing) for block in card_blocks(renamed, work, [card], 86.0) for one in block.placed)
        wide = re.findall(r"old one \d+, (\S+) wide;", own)
        assert wide and all(abs(parse_length(text, unit) - bore.diameter) < 0.02 for text in wide), card.title


@pytest.mark.parametrize("unit", ["mm", "in64"])
def test_no_card_warns_of_the_very_place_that_it_tells(unit):
    """A line squared from the seat misses by 0.1 mm there, which is less than a 64th."""
    seen = set()
    for along in (100.0, 107.0, 118.0):
        layout = slide_tuner(demo(), "treble side 2", along)
        bore = side_bore(layout, "treble side 2")
        with speaking(unit):
            work = plan_work(layout)
            card = next(card for card in cards(layout, work) if card.ids[0] == "treble side 2")
            words = " | ".join(words_of(one.drawing) for block in card_blocks(layout, work, [card], 86.0) for one in block.placed)
        mark = re.search(r"([^|]+) \| from the nut line", words)[1].strip()
        squared = re.search(r"not at ([^|]+), squared", words)
        assert squared is None or squared[1] != mark
        assert parse_length(mark, unit) == pytest.approx(bore.mark[1], abs=0.2)
        seen.add(squared is not None)
    assert seen == {True, False}


@pytest.mark.parametrize("unit", ["in", "in64"])
def test_the_order_and_the_cards_set_a_tilt_over_the_same_board(unit):
    """A maker in inches whose rack still has the board of 100 mm lays one of 4 inches: 4 sin(3.1 degrees) is 0.216."""
    whole = demo()
    with speaking(unit):
        made = plan_work(whole)
        tilted = next(op for op in made.ops if op.id == "side bore bass side 1.1.1")
        said = re.search(r'\((\S+) of blocks over (\S+)\)', tilted.setup.words(unit))
        card = " ".join(mark.text for block in card_blocks(whole, made, cards(whole, made)[:1], 190.0)
                        for one in block.placed for mark in one.drawing if isinstance(mark, Label))
    tilt = abs(tilted.setup.table.tilt)
    assert said[2] == '4"' and float(said[1].rstrip('"')) == pytest.approx(4 * math.sin(tilt), abs=6e-4)
    assert f'blocks {said[1]} over 4"' in card
