"""Side bores of crooked heads, worked out anew from the file alone: points along the outline, differences and plane vectors.

Nothing of the program's curves, edges or frames is used. The outline is followed at DENSE points an edge; lengths
are sums of chords, a tangent is the difference of two points REACH mm to either side.
"""

import json
import math
import random
from pathlib import Path

import numpy as np
import pytest
from msgspec.structs import replace

from app.formats.headstock import encode, read
from app.sheets.hole_table import csv_rows
from geometry.edits import mirror_layout
from geometry.layout import EdgePlace, Flat, Headstock, Loop

SAMPLES = ("four-strings-small", "slotted-three-a-side", "twelve-string-mixed")
DENSE, REACH = 3000, 0.02
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


def outline_points(nodes: list[dict]) -> np.ndarray:
    t = np.linspace(0.0, 1.0, DENSE, endpoint=False)[:, None]
    found = []
    for node, after in zip(nodes, [*nodes[1:], nodes[0]], strict=True):
        a, b = np.array(node["at"]), np.array(after["at"])
        if node.get("handles"):
            c, d = map(np.array, node["handles"])
            found.append((1 - t) ** 3 * a + 3 * (1 - t) ** 2 * t * c + 3 * (1 - t) * t * t * d + t ** 3 * b)
        elif node["bulge"]:
            turn, chord = 4 * math.atan(node["bulge"]), b - a  # tan of a quarter of the sweep (DXF)
            half = np.hypot(*chord) / 2
            centre = (a + b) / 2 + np.array((-chord[1], chord[0])) / (2 * half) * half / math.tan(turn / 2)
            c, s = np.cos(turn * t), np.sin(turn * t)
            spoke = a - centre
            found.append(centre + np.hstack([c * spoke[0] - s * spoke[1], s * spoke[0] + c * spoke[1]]))
        else:
            found.append(a + (b - a) * t)
    return np.concatenate(found)


def walked_edge(points: np.ndarray, side: str) -> np.ndarray:
    """Points from the nut line, where the outline is outermost on that side, up to its top."""
    x, y = points.T
    area = np.sum(x * np.roll(y, -1) - np.roll(x, -1) * y)
    if (area > 0) != (side == "treble"):  # so that walking on leads up this side
        points = points[::-1]
    after = np.roll(points, -1, axis=0)
    crosses = np.flatnonzero((points[:, 1] <= 0) & (after[:, 1] > 0))
    share = -points[crosses, 1] / (after - points)[crosses, 1]
    feet = points[crosses] + share[:, None] * (after - points)[crosses]
    k = int(np.argmax(feet[:, 0] if side == "treble" else -feet[:, 0]))
    way = np.roll(points, -(crosses[k] + 1), axis=0)
    top = int(np.argmax(way[:, 1] >= points[:, 1].max() - 1e-9))
    return np.vstack([feet[k], way[:top + 1]])


@pytest.mark.parametrize("mirrored", [False, True], ids=["as drawn", "mirrored"])
@pytest.mark.parametrize("name", SAMPLES)
def test_marks_tilts_and_stops_of_crooked_heads(name, mirrored):
    layout = crooked(name, seed=len(name))
    layout = mirror_layout(layout) if mirrored else layout
    file = json.loads(encode(layout))
    patterns, rows = ({one["id"]: one for one in file[key]} for key in ("patterns", "rows"))
    points = outline_points(file["outline"]["nodes"])
    edges = {side: walked_edge(points, side) for side in ("bass", "treble")}
    told = {row[0]: row for row in csv_rows(layout)}
    compared = 0
    for tuner in file["tuners"]:
        pattern, place = patterns[tuner["pattern"]], tuner["place"]
        if pattern["mount"] != "side":
            continue
        if place["kind"] == "row":
            run = rows[place["row"]]["run"]
            side, along, deep = run["side"], run["first"] + place["index"] * rows[place["row"]]["spacing"], None
        else:
            side, along, deep = place["side"], place["along"], place.get("depth")
        edge = edges[side]
        run = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(edge, axis=0).T))])
        before, seat, after = (np.array([np.interp(s, run, edge[:, k]) for k in (0, 1)]) for s in (along - REACH, along, along + REACH))
        ahead = (after - before) / np.hypot(*(after - before))
        out = np.array((ahead[1], -ahead[0])) * (1 if side == "treble" else -1)
        seat = seat - out * (tuner.get("flat") or {"depth": 0.0})["depth"]
        square = file["blank"]["treble"] if side == "treble" else -file["blank"]["bass"]
        axes = list(dict.fromkeys(tuple(bore["at"]) for bore in pattern["bores"]))
        for number, at in enumerate(axes, 1):
            stack = sorted((b for b in pattern["bores"] if tuple(b["at"]) == at), key=lambda b: -b["diameter"])
            for step, bore in enumerate(stack, 1):
                start = seat + ahead * at[0]
                z = (file["blank"]["thickness"] / 2 if deep is None else deep) + at[1]
                waste = (square - start[0]) / out[0]
                mark = start + out * waste
                mine = (*start, z, *mark, z, math.degrees(math.atan2(out[1], abs(out[0]))), bore["depth"], bore["depth"] + waste)
                row = told[f"{tuner['id']}.{number}.{step}"]
                assert (*row[6:9], *row[12:18]) == pytest.approx(mine, abs=CLOSE), row[0]
                compared += 1
    assert compared >= 12
