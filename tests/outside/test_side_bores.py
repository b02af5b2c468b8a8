"""Side bores of crooked heads, worked out anew from the file alone (tests/outside/from_file.py)."""

import json
import math
import random
from pathlib import Path

import pytest
from msgspec.structs import replace

from app.formats.headstock import encode, read
from app.sheets.hole_table import csv_rows
from geometry.edits import mirror_layout
from geometry.layout import EdgePlace, Flat, Headstock, Loop
from tests.outside.from_file import FromFile

SAMPLES = ("four-strings-small", "slotted-three-a-side", "twelve-string-mixed")
CLOSE = 0.003
"""mm, and degrees: what chords and differences may stray."""


def crooked(name: str, seed: int) -> Headstock:
    """A sample with its nodes and handles moved, some edges made arcs, its side tuners slid, sunk or set on flats."""
    layout, chance = read(Path(f"samples/{name}.headstock.json")), random.Random(seed)

    def moved(p, by):
        return (p[0] + chance.uniform(-by, by), p[1] + (chance.uniform(-by, by) if p[1] > 5 else 0.0))
    nodes = []
    for node in layout.outline.nodes:
        arc = chance.random() < 0.4
        handles = None if arc or node.handles is None else tuple(moved(p, 3.0) for p in node.handles)
        nodes.append(replace(node, at=moved(node.at, 5.0), handles=handles, bulge=chance.uniform(-0.25, 0.25) if arc else 0.0, smooth=False))
    thick = chance.choice((12.7, 15.875, 18.3))
    tuners = []
    for tuner in layout.tuners:
        if layout.pattern(tuner.pattern).mount == "side":
            place = tuner.place
            if isinstance(place, EdgePlace):
                place = replace(place, along=place.along + chance.uniform(-20.0, 20.0), depth=chance.choice((None, 5.5)))
            flat = chance.choice((None, Flat(size=14.0, depth=0.7), Flat(shape="spot", size=15.0, depth=1.3)))
            tuner = replace(tuner, place=place, flat=flat)
        tuners.append(tuner)
    return replace(layout, outline=Loop(nodes=tuple(nodes)), tuners=tuple(tuners),
                   blank=replace(layout.blank, thickness=thick, treble=layout.blank.treble + chance.uniform(-3.0, 20.0)))


@pytest.mark.parametrize("mirrored", [False, True], ids=["as drawn", "mirrored"])
@pytest.mark.parametrize("name", SAMPLES)
def test_marks_tilts_and_stops_of_crooked_heads(name, mirrored):
    layout = crooked(name, seed=len(name))
    layout = mirror_layout(layout) if mirrored else layout
    file = json.loads(encode(layout))
    head = FromFile(file)
    told = {row[0]: row for row in csv_rows(layout)}
    compared = 0
    for bored in head.holes:
        if not bored.side:
            continue
        out = -bored.way
        square = head.blank["treble"] if bored.side == "treble" else -head.blank["bass"]
        waste = (square - bored.start[0]) / out[0]
        mark = bored.start + out * waste
        mine = (*bored.start, *mark, math.degrees(math.atan2(out[1], abs(out[0]))), bored.depth, bored.depth + waste)
        row = told[bored.id]
        assert (*row[6:9], *row[12:18]) == pytest.approx(mine, abs=CLOSE), row[0]
        compared += 1
    assert compared >= 12
