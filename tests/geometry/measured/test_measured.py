"""Readings of a piece with planted errors: what is planted is found, and nothing where nothing was."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace
from scipy import optimize, stats

from app.window.demo import demo
from geometry.errors import GeometryError
from geometry.layout import Accuracy, Reading
from geometry.measured import (
    Place,
    centre_distance,
    drillings,
    fit_places,
    implied,
    joined,
    offs,
    planned_value,
    take_accuracy,
    with_side,
)
from geometry.solids.side import side_bore

LAYOUT = demo()
KNOWN = drillings(LAYOUT)
UPRIGHT = [d for d in KNOWN.values() if d.upright]
SIDE = [d for d in KNOWN.values() if not d.upright]


def reading(d, what, off=0.0, how="", other=None):
    asked = Reading(piece="real", drilling=d.id, what=what, value=0.0, how=how, other=other)
    return Reading(piece="real", drilling=d.id, what=what, value=planned_value(LAYOUT, asked) + off, how=how, other=other)


def planted(seed, noise, shift=(0.0, 0.0), turn=0.0, stretch=(0.0, 0.0)):
    """Places of all upright holes, moved exactly (not to first order) and with noise."""
    draw = np.random.default_rng(seed)
    made = []
    for d in UPRIGHT:
        x, y = d.start[0] * (1 + stretch[0]), d.start[1] * (1 + stretch[1])
        moved = (x * math.cos(turn) - y * math.sin(turn) + shift[0], x * math.sin(turn) + y * math.cos(turn) + shift[1])
        made += [Place(d.start[:2], axis, moved[axis] - d.start[axis] + draw.normal(0, noise)) for axis in (0, 1)]
    return made


def test_a_planted_stretch_is_found_to_its_uncertainty():
    fit = fit_places(planted(1, 0.05, (0.2, -0.1), 0.002, (0.004, 0.006)))
    assert fit.real and fit.chance < 1e-6
    assert fit.stretch == (pytest.approx(0.004, abs=0.001), pytest.approx(0.006, abs=0.0004))
    assert fit.rotation == pytest.approx(0.002, abs=0.0005)
    assert math.sqrt(fit.squares / fit.freedom) == pytest.approx(0.05, rel=0.25) and fit.freedom == 2 * len(UPRIGHT) - 5


def test_without_a_stretch_one_is_claimed_about_once_in_a_hundred():
    """200 pieces: at chance 0.01 more than 8 claims would come in fewer than 1 in 1,000 runs (binomial)."""
    claims = sum(fit_places(planted(seed, 0.1)).chance < 0.01 for seed in range(200))
    assert claims <= 8


def test_a_stretch_too_small_to_matter_is_not_claimed_however_clear():
    fit = fit_places(planted(2, 1e-5, stretch=(0.0, 0.0002)))
    assert fit.chance < 1e-6 and not fit.real and fit.stretch == (0.0, 0.0)


def test_what_fits_to_the_last_bit_is_certain_either_way():
    """Across alone, which is no rotation; and holes that only lie elsewhere."""
    stretched, shifted = fit_places(planted(1, 0.0, stretch=(0.01, 0.0))), fit_places(planted(1, 0.0, (0.2, -0.1)))
    assert stretched.chance == 0.0 and stretched.real and stretched.stretch == (pytest.approx(0.01), pytest.approx(0.0, abs=1e-9))
    assert shifted.chance == 1.0 and not shifted.real and shifted.shift == (pytest.approx(0.2), pytest.approx(-0.1))
    assert shifted.freedom == 2 * len(UPRIGHT) - 3


def test_the_fit_is_the_least_squares_of_another_solver():
    places = planted(3, 0.1, (0.3, 0.1), 0.003, (0.01, -0.008))
    fit = fit_places(places)

    def left(p):
        return [place.off - (p[0] - p[2] * place.at[1] + p[3] * place.at[0] if place.axis == 0
                             else p[1] + p[2] * place.at[0] + p[4] * place.at[1]) for place in places]
    other = optimize.least_squares(left, np.zeros(5), x_scale=(1, 1, 1e-2, 1e-2, 1e-2), xtol=1e-14, ftol=1e-14, gtol=1e-14)
    assert (*fit.shift, fit.rotation, *fit.stretch) == pytest.approx(tuple(other.x), abs=1e-7)
    assert fit.squares == pytest.approx(2 * other.cost, rel=1e-8)


def test_the_chance_of_a_stretch_is_that_of_two_nested_models_in_another_library():
    places = planted(3, 0.1, (0.3, 0.1), 0.003, (0.0, 0.001))
    rows = np.array([(1, 0, -p.at[1], p.at[0], 0) if p.axis == 0 else (0, 1, p.at[0], 0, p.at[1]) for p in places], float)
    off, free = np.array([place.off for place in places]), len(places) - 5
    without, whole = (np.linalg.lstsq(rows[:, :n], off)[1][0] for n in (3, 5))
    chance = stats.f.sf((without - whole) / 2 / (whole / free), 2, free)
    assert 1e-4 < chance < 0.9 and fit_places(places).chance == pytest.approx(chance, rel=1e-6)


def test_readings_that_cannot_tell_are_not_fitted():
    assert fit_places(planted(1, 0.1)[:3]) is None
    assert fit_places([Place((1.0, 5.0), 0, 0.1)] * 6) is None
    some = planted(1, 0.1)[::5]
    assert [(fit_places(some[:n]).freedom, fit_places(some[:n]).chance is None) for n in (4, 8, 9)] == [(1, True), (5, True), (6, False)]
    on_a_line = [Place((20.0, 10.0 * k), axis, 0.1 * (k % 3)) for k in range(6) for axis in (0, 1)]
    assert fit_places(on_a_line).chance is None and not fit_places(on_a_line).real, "a stretch across is a shift there"


@given(st.floats(-4, 4), st.sampled_from(UPRIGHT), st.sampled_from(["", "centreline", "bass edge", "treble edge"]))
def test_from_any_edge_the_same_hole_is_off_by_the_same(off, d, how):
    sign = -1 if how == "treble edge" else 1
    found = offs(LAYOUT, [reading(d, "x", sign * off, how)], "real")
    assert sign * found[0].by == pytest.approx(off, abs=1e-9)
    assert not offs(LAYOUT, [reading(d, "x")], "practice")


def test_a_place_is_planned_inwards_from_either_edge_of_a_lopsided_blank():
    layout = replace(LAYOUT, blank=replace(LAYOUT.blank, bass=60.0, treble=50.0))
    for d in (KNOWN["bass face 1.1.2"], KNOWN["treble face 1.1.2"]):
        x = d.start[0]
        asked = [Reading(piece="real", drilling=d.id, what="x", value=0.0, how=how) for how in ("", "bass edge", "treble edge")]
        assert [planned_value(layout, one) for one in asked] == pytest.approx([x, 60.0 + x, 50.0 - x])
    assert x > 0, "the treble side is positive"


def test_what_was_planned_when_it_was_measured_counts_though_it_is_drawn_elsewhere_now():
    one = reading(UPRIGHT[0], "y", 0.3)
    then, gone = replace(one, planned=one.value - 0.1), replace(one, drilling="gone.1.1")
    assert [off.by for off in offs(LAYOUT, [one, then, gone, replace(gone, planned=one.value + 0.2)], "real")] == pytest.approx([0.3, 0.1, -0.2])


def test_places_from_all_edges_are_fitted_as_one():
    """Every hole 0.2 mm nearer to the bass side and 0.1 mm to the tip. A bore from the side, a slip and a hole that is gone tell nothing."""
    edges = ("treble edge", "bass edge", "centreline")
    taken = [reading(d, "x", 0.2 if edges[k % 3] == "treble edge" else -0.2, edges[k % 3]) for k, d in enumerate(UPRIGHT)]
    taken += [reading(d, "y", 0.1) for d in UPRIGHT]
    gone = replace(taken[0], drilling="gone.1.1", planned=taken[0].value - 3.0)
    (mark,), fit = implied(LAYOUT, offs(LAYOUT, [*taken, reading(SIDE[0], "y", 3.0), reading(UPRIGHT[0], "y", 5.1), reading(UPRIGHT[0], "y", -5.1), gone], "real"))
    assert fit.shift == (pytest.approx(-0.2), pytest.approx(0.1)) and max(map(abs, fit.left)) < 1e-9
    assert (mark.field, mark.count, mark.mean, mark.deviation) == ("mark", 2 * len(UPRIGHT), 0.0, pytest.approx(0.0, abs=1e-9))
    assert take_accuracy(Accuracy(), [replace(mark, deviation=0.12345)]).mark == 0.247


@given(st.floats(1, 30), st.floats(1, 30), st.floats(20, 200))
def test_every_way_of_the_jaws_gives_the_same_middles(one, other, apart):
    for how, seen in (("over the wood", apart - one / 2 - other / 2), ("over the walls", apart + one / 2 + other / 2),
                      ("over pins", apart + one / 2 + other / 2), ("", apart)):
        assert centre_distance(seen, how, one, other) == pytest.approx(apart)


def test_what_a_hole_does_not_have_is_refused_with_a_sentence():
    for d, what in ((UPRIGHT[0], "tilt"), (UPRIGHT[0], "below face"), (SIDE[0], "x"), (UPRIGHT[0], "distance")):
        with pytest.raises(GeometryError):
            reading(d, what)
    with pytest.raises(GeometryError, match="two different"):
        reading(UPRIGHT[0], "distance", other=UPRIGHT[0].id)


def test_a_bore_from_the_side_is_planned_where_its_drilling_card_says():
    """The demonstration's bass side 1: its post 8 mm below the face by its pattern, the table tilted by 3.1 degrees on its card."""
    bore = KNOWN["bass side 1.1.1"]
    assert reading(bore, "below face").value == pytest.approx(8.0)
    assert abs(reading(bore, "tilt").value) == pytest.approx(3.1, abs=0.05)
    for one in SIDE:
        assert reading(one, "tilt").value == pytest.approx(math.degrees(side_bore(LAYOUT, one.of).tilt)), one.id
    assert reading(bore, "depth").value == bore.depth == 30.0


def test_a_post_and_the_screws_of_its_plate_are_as_far_apart_as_the_plate_has_them():
    """Post bore 6.5 from the face, screws 1.6 from the back 9 mm to either side of it: over pins 9 + 6.5 / 2 + 1.6 / 2."""
    tuner = LAYOUT.tuner("bass face 1")
    assert [bore.at for bore in LAYOUT.pattern(tuner.pattern).bores if bore.role == "screw"] == [(0.0, 9.0), (0.0, -9.0)]
    post, screw = KNOWN["bass face 1.1.2"], KNOWN["bass face 1.2.1"]
    assert (post.surface, screw.surface) == ("face", "back")
    for how, planned in (("", 9.0), ("over pins", 9.0 + 3.25 + 0.8), ("over the walls", 9.0 + 3.25 + 0.8), ("over the wood", 9.0 - 3.25 - 0.8)):
        assert reading(post, "distance", 0.0, how, screw.id).value == pytest.approx(planned), how
    # A bore from the side goes in 8 mm below the face, from which the post bore comes.
    beside = KNOWN["bass side 1.1.1"]
    flat = math.dist(post.start[:2], beside.start[:2])
    assert reading(post, "distance", other=beside.id).value == pytest.approx(math.hypot(flat, 8.0))
    pair, = joined(LAYOUT, offs(LAYOUT, [reading(post, "distance", 0.25, "over the wood", screw.id)], "real"))
    # The bore is 0.3 mm wider than its post of 6.2, the screw is moved by 0.3 at most.
    assert pair.off == pytest.approx(0.25) and pair.play == pytest.approx(0.15 + 0.3) and pair.fits


def test_a_peg_that_its_taper_holds_has_no_play():
    tuner = LAYOUT.tuner("bass face 1")
    pattern = LAYOUT.pattern(tuner.pattern)
    bores = tuple(replace(bore, reamed=7.5) if bore.role == "post" else bore for bore in pattern.bores)
    layout = replace(LAYOUT, patterns=tuple(replace(one, bores=bores) if one is pattern else one for one in LAYOUT.patterns))
    asked = Reading(piece="real", drilling="bass face 1.1.2", what="distance", value=0.0, how="over the wood", other="bass face 1.2.1")
    taken = replace(asked, value=planned_value(layout, asked) + 0.25)
    pair, = joined(layout, offs(layout, [taken], "real"))
    assert pair.off == pytest.approx(0.25) and pair.play == pytest.approx(0.3), "the screw's alone"


def test_the_shop_is_found_from_planted_errors_and_a_slip_is_left_out():
    draw = np.random.default_rng(5)
    taken = [reading(d, what, draw.normal(0, 0.12)) for d in UPRIGHT for what in ("x", "y")]
    depths = [draw.normal(0.4, 0.2) for _ in UPRIGHT]
    taken += [reading(d, "depth", off) for d, off in zip(UPRIGHT, depths, strict=True)]
    taken += [reading(d, "tilt", draw.normal(0, 0.3)) for d in SIDE]
    taken[0] = reading(UPRIGHT[0], "x", 30.0)
    found, fit = implied(LAYOUT, offs(LAYOUT, taken, "real"))
    by = {one.field: one for one in found}
    assert by["mark"].low < 0.12 < by["mark"].high and not fit.real and by["mark"].count == 2 * len(UPRIGHT) - 1
    assert by["stop"].mean == pytest.approx(np.mean(depths)) and by["stop"].deviation == pytest.approx(np.std(depths, ddof=1))
    assert by["tilt_degrees"].low < 0.3 < by["tilt_degrees"].high
    taken_over = take_accuracy(Accuracy(), found)
    assert taken_over.mark == round(2 * by["mark"].deviation, 3) and taken_over.template == Accuracy().template


def test_few_readings_change_nothing_in_the_shop():
    found, _ = implied(LAYOUT, offs(LAYOUT, [reading(d, "depth", 0.1 * i) for i, d in enumerate(UPRIGHT[:3])], "real"))
    assert found[0].freedom == 2 and take_accuracy(Accuracy(), found) == Accuracy()


def test_a_plate_goes_on_while_its_holes_are_off_together_and_not_apart():
    tuner = next(d.of for d in UPRIGHT if d.role == "screw")
    a, b = [d for d in UPRIGHT if d.of == tuner and d.role == "screw"][:2]
    together = [reading(d, what, 0.9) for d in (a, b) for what in ("x", "y")]
    pair, = joined(LAYOUT, offs(LAYOUT, together, "real"))
    assert pair.fits and pair.off == pytest.approx(0.0, abs=1e-9) and pair.play == 0.6
    edges = [reading(a, "x", -0.9, "treble edge"), reading(b, "x", 0.9, "bass edge"), reading(a, "y", 0.4), reading(b, "y")]
    pair, = joined(LAYOUT, offs(LAYOUT, edges, "real"))
    x, y = a.start[0] - b.start[0], a.start[1] - b.start[1]
    assert pair.off == pytest.approx(math.hypot(x, y + 0.4) - math.hypot(x, y)) and abs(pair.off) > 0.3
    for off, fits in ((0.59, True), (0.6, True), (0.61, False), (-0.61, False)):
        pair, = joined(LAYOUT, offs(LAYOUT, [reading(a, "distance", off, "over the wood", b.id)], "real"))
        assert pair.off == pytest.approx(off) and pair.fits is fits
    wide = [reading(a, "diameter", 0.2), reading(a, "distance", 0.59, "over the wood", b.id)]
    pair, = joined(LAYOUT, offs(LAYOUT, wide, "real"))
    assert pair.off == pytest.approx(0.69) and not pair.fits
    slip, gone = reading(a, "distance", 5.1, "over the wood", b.id), replace(reading(a, "distance", 0.1, "over the wood", b.id), drilling="gone.1.1", planned=9.0)
    lost = replace(reading(a, "distance", 0.1, "over the wood", b.id), other="gone.1.1")
    assert joined(LAYOUT, offs(LAYOUT, [slip, gone, lost], "real")) == (), "none says anything of this plate"


@pytest.mark.parametrize(("planned", "typed", "meant"), [
    (-22.67, 22.7, -22.7), (-22.67, -22.7, -22.7), (22.67, 22.7, 22.7), (-0.3, 0.2, 0.2), (-5.0, 4.9, 4.9), (None, 22.7, 22.7)])
def test_a_caliper_on_the_bass_side_knows_no_sign(planned, typed, meant):
    """Next to the centreline a hole may have come out on the other side of it: there the sign counts."""
    one = Reading(piece="real", drilling="b.1.1", what="x", how="centreline", value=0.0, planned=planned)
    assert with_side(one, typed) == meant
    edge = Reading(piece="real", drilling="b.1.1", what="x", how="bass edge", value=0.0, planned=planned)
    assert with_side(edge, typed) == typed


def test_at_the_square_edge_a_bore_from_the_side_is_planned_as_its_card_tells():
    post = next(d for d in SIDE if d.role == "post" and d.of == "treble side 2")
    bore = side_bore(LAYOUT, "treble side 2")
    assert reading(post, "y", how="square edge").value == pytest.approx(bore.mark[1])
    assert reading(post, "depth", how="square edge").value == pytest.approx(bore.stop_full)
    assert reading(post, "y").value == pytest.approx(bore.seat[1]) != pytest.approx(bore.mark[1])
    for d, what in ((UPRIGHT[0], "y"), (next(d for d in SIDE if d.role == "screw"), "y"), (post, "diameter")):
        with pytest.raises(GeometryError, match="not drilled from the square edge"):
            reading(d, what, how="square edge")
