"""Plates on the edges of crooked heads, and the flats cut for them, worked out anew from the file alone (tests/outside/from_file.py)."""

import json

import numpy as np
import pytest
import shapely
from msgspec.structs import replace

from app.formats.headstock import encode
from geometry.checks import check
from geometry.checks.seats import ROCK
from tests.outside.from_file import FromFile, slot_points
from tests.outside.test_side_bores import crooked

CLOSE = 0.02
"""mm: what chords and differences may stray"""


def told(layout, kind: str) -> dict[tuple[str, ...], float]:
    return {snag.between: snag.measured for snag in check(layout).snags if snag.kind == kind}


def rocks(head: FromFile, tuner: dict) -> float:
    """How far the edge falls away or rises under a plate, from its seat to where it first comes out from under it, mm; of one on a flat how far it
    still falls away below that."""
    plate, sunk = head.patterns[tuner["pattern"]]["seat"], (tuner.get("flat") or {"depth": 0.0})["depth"]
    side, seat, ahead, out, _ = head.seat(tuner)
    edge = head.edges[side]
    off = edge.points - (seat + out * sunk)
    along, height = off @ ahead, off @ out
    first = last = int(np.argmin(np.hypot(*off.T)))
    while last < len(along) - 1 and -plate["behind"] < along[last] < plate["before"]:
        last += 1
    while first > 0 and -plate["behind"] < along[first] < plate["before"]:
        first -= 1
    under = height[first:last + 1]
    return max(0.0, -under.min() - sunk) if sunk else max(0.0, -under.min(), under.max())


@pytest.mark.parametrize(("name", "seed"), [("four-strings-small", 5), ("twelve-string-mixed", 3)])
def test_how_far_plates_rock_and_what_flats_leave_of_the_rail(name, seed):
    layout = crooked(name, seed)
    long = tuple(replace(of, seat=replace(of.seat, before=26.0, behind=22.0)) for of in layout.patterns)
    layout = replace(layout, patterns=long, margins=replace(layout.margins, rail=20.0))
    head, rocking, thin = FromFile(json.loads(encode(layout))), told(layout, "plate-rocks"), told(layout, "flat-rail")
    assert len(rocking) >= 2 and len(thin) >= 2
    for tuner in head.file["tuners"]:
        if head.patterns[tuner["pattern"]]["mount"] == "side":
            rock, said = rocks(head, tuner), rocking.pop((tuner["id"],), None)
            assert said == pytest.approx(rock, abs=CLOSE) if said is not None else rock <= ROCK + CLOSE, tuner["id"]
    rail = layout.margins.rail
    for seat, ahead, out, flat in head.flats():
        ends = [(seat + ahead * by)[:2] for by in (-flat["size"] / 2, flat["size"] / 2)]
        for slot in head.file["slots"]:
            area, said = shapely.Polygon(slot_points(slot["shape"])), thin.pop((flat["of"], slot["id"]), None)
            wood = shapely.LineString(ends).distance(area)
            if shapely.Polygon([*ends, *(end + out[:2] * flat["depth"] for end in reversed(ends))]).intersects(area):
                wood = 0.0
            if said is None or said <= 0.0:
                assert wood >= rail - CLOSE if said is None else wood < CLOSE, (flat["of"], slot["id"])
            else:
                assert said == pytest.approx(wood, abs=CLOSE), (flat["of"], slot["id"])
    assert not rocking and not thin
