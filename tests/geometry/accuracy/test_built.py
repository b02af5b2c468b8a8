"""Which error acts where: one error at a time, with the shift worked out by hand."""

import math

import numpy as np
import pytest
from msgspec.structs import replace as changed

from geometry.accuracy.bench import Bench, bench_of
from geometry.accuracy.built import Built
from geometry.accuracy.sources import BACK, TEMPLATE, WRAP
from geometry.layout import Accuracy, Blank, Headstock, Pin, SingleHole
from geometry.layout.generic import PATTERNS
from tests.geometry.accuracy.first_order import propagate
from tests.geometry.accuracy.specimens import WIDE, face_head, head, side_head


def built(bench: Bench, errors: dict[tuple[str, str, int], float]) -> Built:
    """One trial with errors by (source, where, which of them); every other error is zero."""
    draws = np.zeros((len(bench.deviations), 1))
    for (source, where, number), size in errors.items():
        rows = [i for i, e in enumerate(bench.model.errors.errors) if (e.source, e.where) == (source, where)]
        draws[rows[number]] = size
    return Built(bench.model, draws)


def rod_of(layout: Headstock, drilling: str, **errors: float):
    """(start, end) of a drilling; errors as source__where__number."""
    bench = bench_of(layout)
    given = {(s, w.replace("_", " "), int(n)): size for key, size in errors.items() for s, w, n in [key.split("__")]}
    made = built(bench, given)
    index = next(i for i, r in enumerate(bench.model.recipes) if r.drilling.id == drilling)
    rod = made.rod(index)
    return tuple(tuple(float(c[0]) for c in p) for p in (rod.start, rod.at(rod.length)))


FACE = face_head(Accuracy())
SIDE = side_head(Accuracy())


def test_standard_deviations_are_half_of_the_half_widths() -> None:
    bench = bench_of(side_head(Accuracy()))
    size = {e.source: float(d) for e, d in zip(bench.model.errors.errors, bench.deviations, strict=True)}
    assert size["mark"] == pytest.approx(0.15) and size["stop"] == pytest.approx(0.15)
    assert size["wander"] * 50 == pytest.approx(0.25)
    assert size["tilt"] == pytest.approx(math.radians(0.25))
    assert size["template"] == pytest.approx(0.075) and size["paper"] == pytest.approx(0.001)


def test_a_face_bore_goes_where_it_is_marked() -> None:
    start, end = rod_of(FACE, "face.1.2", mark__face__0=0.3, mark__face__1=-0.2)
    assert start == pytest.approx((25.3, 59.8, 0.0)) and end == pytest.approx((25.3, 59.8, 16.0))


def test_paper_stretches_about_centreline_and_nut_line_and_each_paper_by_itself() -> None:
    start, _ = rod_of(FACE, "face.1.2", **{f"paper__{WRAP.replace(' ', '_')}__1": 0.002})
    assert start == pytest.approx((25.0, 60.12, 0.0))
    # The screws of a face tuner are pricked from the back paper.
    meant, _ = rod_of(FACE, "face.2.1")
    screw, _ = rod_of(FACE, "face.2.1", **{f"paper__{BACK.replace(' ', '_')}__1": 0.002})
    assert screw[1] == pytest.approx(meant[1] * 1.002)
    assert rod_of(FACE, "face.2.1", **{f"paper__{WRAP.replace(' ', '_')}__1": 0.002})[0] == pytest.approx(meant)


def test_a_face_bore_leans_by_the_table_and_by_its_wander() -> None:
    start, end = rod_of(FACE, "face.1.2", square__face__0=0.005, wander__face__1=0.01)
    # face.1.1 is the counterbore, so that the second lot of wander is the post bore's first way: rows 2 and 3 are its.
    assert start == pytest.approx((25.0, 60.0, 0.0)) and end == pytest.approx((25.08, 60.0, 16.0))
    _, end = rod_of(FACE, "face.1.2", wander__face__3=0.01)
    assert end == pytest.approx((25.0, 60.16, 16.0))


def test_counterbore_and_bore_share_the_mark_and_stop_by_themselves() -> None:
    bore, _ = rod_of(FACE, "face.1.2", mark__face__0=0.3)
    counterbore, end = rod_of(FACE, "face.1.1", mark__face__0=0.3, stop__face__0=0.25)
    assert counterbore[:2] == pytest.approx(bore[:2]) and end[2] == pytest.approx(8.25)
    assert rod_of(FACE, "face.1.2", stop__face__0=0.25)[1][2] == pytest.approx(16.0)


def test_a_tilted_table_turns_a_side_bore_about_its_mark_on_the_square_edge() -> None:
    # The mark stands at x = 50, the seat at 40, the bore's end at 10: 40 mm from the mark.
    start, end = rod_of(SIDE, "side.1.1", tilt__side__0=0.01)
    size = math.sqrt(1 + 0.01**2)
    assert start == pytest.approx((50 - 10 / size, 90 - 0.1 / size, 8.0))
    assert end == pytest.approx((50 - 40 / size, 90 - 0.4 / size, 8.0))
    _, end = rod_of(SIDE, "side.1.1", tilt__side__1=0.01)
    assert end[2] == pytest.approx(8 + 0.4 / size)


def test_a_side_bore_wanders_over_the_waste_too() -> None:
    _, end = rod_of(SIDE, "side.1.1", wander__side__1=0.25 / 50)
    assert end[2] == pytest.approx(8 + 0.2, abs=1e-4)


def test_a_side_bore_follows_its_mark_and_its_stop() -> None:
    start, end = rod_of(SIDE, "side.1.1", mark__side__0=0.2, mark__side__1=-0.1, stop__side__0=0.3)
    assert start == pytest.approx((40.0, 90.2, 7.9)) and end == pytest.approx((9.7, 90.2, 7.9))


def test_plate_screws_go_where_the_bore_went_and_where_the_edge_came() -> None:
    meant, _ = rod_of(SIDE, "side.2.1")
    screw, _ = rod_of(SIDE, "side.2.1", mark__side__0=0.2, mark__side__1=-0.1)
    assert screw == pytest.approx((40.0, meant[1] + 0.2, 7.9))
    own, _ = rod_of(SIDE, "side.2.1", mark__side__2=0.3)
    assert own[1] == pytest.approx(meant[1] - 0.3)  # along the edge, turned to the right of the way in
    grown, end = rod_of(SIDE, "side.2.1", template__outline__0=0.1)
    assert grown[0] == pytest.approx(40.1) and end[0] == pytest.approx(31.1)
    laid, _ = rod_of(SIDE, "side.2.1", **{f"template__{TEMPLATE}__0": 0.1})
    assert laid[0] == pytest.approx(40.1)


def test_hardware_that_lists_its_screws_before_its_post_strays_as_any_other() -> None:
    """The screws are drilled through the plate of a post that is in its bore, whatever comes first in a list."""
    pattern = next(one for one in PATTERNS if one.id == SIDE.tuners[0].pattern)
    spreads = []
    for bores in (pattern.bores, tuple(reversed(pattern.bores))):
        layout = side_head(Accuracy(), patterns=(changed(pattern, bores=bores),), margins=WIDE)
        spreads.append(sorted((p.kind, p.between, round(p.nominal, 6), round(p.sd, 6)) for p in propagate(layout)))
    assert spreads[0] == spreads[1]
    assert "screw-to-slot" in {kind for kind, *_ in spreads[0]}


def test_pins_share_the_place_of_the_template() -> None:
    layout = head(pins=(Pin(id="pin", at=(0.0, 100.0)),), accuracy=Accuracy())
    start, _ = rod_of(layout, "pin.1", template__template__0=0.1, template__template__1=0.2, paper__template__1=0.001)
    assert start == pytest.approx((0.1, 100.3, 0.0))
    assert not [e for e in bench_of(layout).model.errors.errors if e.source == "mark"]


def test_the_template_sees_the_wood_the_other_way_round() -> None:
    made = built(bench_of(SIDE), {("template", TEMPLATE, 0): 0.1, ("paper", TEMPLATE, 1): 0.002})
    x, y = made.on_template(np.array([17.1]), np.array([100.2]))
    assert (x[0], y[0]) == pytest.approx((17.0, 100.0))


def test_a_hole_from_the_back_ends_towards_the_face() -> None:
    layout = head(holes=(SingleHole(id="jig", at=(5.0, 30.0), diameter=5.0, depth=6.0, surface="back"),),
                  accuracy=Accuracy())
    start, end = rod_of(layout, "jig.1", stop__jig__0=0.5)
    assert start == pytest.approx((5.0, 30.0, 16.0)) and end == pytest.approx((5.0, 30.0, 9.5))


def test_without_a_mark_a_side_bore_turns_about_its_seat() -> None:
    """A seat on the level tip of the head never meets the square edge; the bore is still measured."""
    layout = head(tuners=side_head(Accuracy(), along=190.0).tuners, accuracy=Accuracy(),
                  blank=Blank(bass=50.0, treble=50.0, tip=190.0, thickness=16.0))
    bench = bench_of(layout)
    recipe = bench.model.recipes[0]
    lost = changed(recipe, drilling=changed(recipe.drilling, mark=None))
    model = changed(bench.model, recipes=(lost, *bench.model.recipes[1:]))
    draws = np.zeros((len(bench.deviations), 1))
    draws[recipe.turn[0]] = 0.01
    rod = Built(model, draws).rod(0)
    assert tuple(float(c[0]) for c in rod.start) == pytest.approx(recipe.drilling.start)


def test_errors_keep_their_order_when_a_tuner_moves() -> None:
    one, two = bench_of(side_head(Accuracy())), bench_of(side_head(Accuracy(), along=70.0))
    assert one.model.errors.errors == two.model.errors.errors
