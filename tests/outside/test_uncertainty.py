"""The uncertainty engine against published examples; the source stands beside each value."""

import math

import numpy as np
import pytest

from tests.geometry.accuracy.uncertain import Input, propagated, simulated

TRIALS = 400_000
SEED = 20


def added(x: np.ndarray) -> np.ndarray:
    return x.sum(axis=0)


# ---- JCGM 101:2008, additive model Y = X1 + X2 + X3 + X4 (as quoted with Tables 2 to 4 in the test suite of a public
# uncertainty library) -----------------------------------------------------------------------------------------------
def test_jcgm_101_section_9_2_2_four_normal_inputs() -> None:
    inputs = [Input(0.0, 1.0)] * 4
    values, found = simulated(added, inputs, TRIALS, SEED)
    # Table 2: u(y) = 2.00, shortest 95 % interval [-3.92, 3.92].
    assert propagated(added, inputs).sd == pytest.approx(2.0)
    assert found.mean == pytest.approx(0.0, abs=0.02)
    assert found.sd == pytest.approx(2.0, abs=0.01)
    assert tuple(np.percentile(values, (2.5, 97.5))) == pytest.approx((-3.92, 3.92), abs=0.03)


def test_jcgm_101_section_9_2_3_four_rectangular_inputs() -> None:
    inputs = [Input(0.0, 1.0, "even")] * 4
    values, found = simulated(added, inputs, TRIALS, SEED)
    # Table 3: u(y) = 2.00 and [-3.88, 3.88]; in closed form 2 sqrt(3) (2 - (3/5)^(1/4)) = 3.87941 (from memory).
    assert found.sd == pytest.approx(2.0, abs=0.01)
    assert tuple(np.percentile(values, (2.5, 97.5))) == pytest.approx((-3.88, 3.88), abs=0.03)
    assert 2 * math.sqrt(3) * (2 - 0.6**0.25) == pytest.approx(3.87941, abs=5e-6)


def test_jcgm_101_section_9_2_4_one_input_ten_times_as_uncertain() -> None:
    inputs = [Input(0.0, 1.0, "even")] * 3 + [Input(0.0, 10.0, "even")]
    (values, found), law = simulated(added, inputs, TRIALS, SEED), propagated(added, inputs)
    # Table 4: u(y) = 10.1, Monte Carlo [-17.0, 17.0]; the simple law's normal interval is [-19.9, 19.9] (from memory).
    assert found.sd == pytest.approx(10.1, abs=0.06)
    assert tuple(np.percentile(values, (2.5, 97.5))) == pytest.approx((-17.0, 17.0), abs=0.06)
    assert law.sd == pytest.approx(math.sqrt(103.0)) and 1.959964 * law.sd == pytest.approx(19.9, abs=0.05)
    assert law.shares == pytest.approx((1 / 103, 1 / 103, 1 / 103, 100 / 103))


# ---- NPL report DEM-ES-011, section 9.2 (as quoted there too) --------------------------------------------------------
def test_npl_logarithm_of_a_rectangular_input() -> None:
    inputs = [Input(0.6, 1.0 / math.sqrt(12.0), "even")]  # even from 0.1 to 1.1
    (values, found), law = simulated(lambda x: np.log(x[0]), inputs, TRIALS, SEED), propagated(lambda x: np.log(x[0]), inputs)
    # Law: y = -0.511, u = 0.481. Monte Carlo: y = -0.665, u = 0.606, shortest 95 % interval [-1.895, 0.095].
    assert law.value == pytest.approx(-0.511, abs=5e-4)
    # The engine's slope is a difference over half a deviation to either side, not a derivative: 2 % here.
    assert law.sd == pytest.approx(0.481, rel=0.03)
    assert found.mean == pytest.approx(-0.665, abs=0.005) and found.sd == pytest.approx(0.606, abs=0.005)
    # Its density grows with y, so the shortest interval is the upper 95 %.
    assert np.percentile(values, 5.0) == pytest.approx(-1.895, abs=0.01) and values.max() == pytest.approx(0.095, abs=0.001)


# ---- NIST Technical Note 1900, example 13: thermal expansion coefficient ---------------------------------------------
def expansion(x: np.ndarray) -> np.ndarray:
    first, last, cold, warm = x
    return (last - first) / (first * (warm - cold))


@pytest.mark.parametrize("shape", ["normal", "student 3"])
def test_nist_tn_1900_example_13(shape: str) -> None:
    inputs = [Input(1.4999, 0.0001, shape), Input(1.5021, 0.0002, shape), Input(288.15, 0.02, shape),
              Input(373.10, 0.05, shape)]
    (_, found), law = simulated(expansion, inputs, TRIALS, SEED), propagated(expansion, inputs)
    # 1.727e-5 per kelvin with u = 1.76e-6 (read in the public library's example).
    assert law.value == pytest.approx(1.727e-5, abs=0.5e-8) and law.sd == pytest.approx(1.76e-6, abs=0.5e-8)
    assert found.mean == pytest.approx(1.727e-5, abs=2e-8) and found.sd == pytest.approx(1.76e-6, rel=0.02)


# ---- Root of summed squares in published tolerance stacks (half-widths stand for three deviations) -----------------
@pytest.mark.parametrize(("parts", "worst", "rss", "source"), [
    ((0.005, 0.005, 0.003, 0.002), 0.015, 0.00794, "ficientdesign.com/tolerance-stack-up-analysis"),
    ((0.1,) * 5, 0.5, 0.224, "mech.toolfusion.net/?p=440"),
    ((0.1,) * 10, 1.0, 0.316, "mech.toolfusion.net/?p=440"),
    ((0.10, 0.05, 0.03, 0.05), 0.23, 0.12610, "metricmech.com tolerance stackup worked example; RSS recomputed"),
])
def test_root_of_summed_squares(parts: tuple[float, ...], worst: float, rss: float, source: str) -> None:
    signs = np.array([1.0] + [-1.0] * (len(parts) - 1))
    law = propagated(lambda x: signs @ x, [Input(0.0, part / 3) for part in parts])
    assert sum(parts) == pytest.approx(worst), source
    assert 3 * law.sd == pytest.approx(rss, rel=2e-3), source


def test_a_gap_of_four_parts_stays_in_its_root_of_summed_squares() -> None:
    # Gap 4.020 less 2.000, 1.500 and 0.500: RSS 0.012 to 0.028, which is 99.73 % when each half-width is three
    # deviations (ficientdesign.com/tolerance-stack-up-analysis).
    inputs = [Input(4.020, 0.005 / 3), Input(2.0, 0.005 / 3), Input(1.5, 0.003 / 3), Input(0.5, 0.002 / 3)]
    values, found = simulated(lambda x: x[0] - x[1] - x[2] - x[3], inputs, TRIALS, SEED)
    assert found.mean == pytest.approx(0.020, abs=1e-4)
    assert tuple(np.percentile(values, (0.1, 99.9))) == pytest.approx(
        (0.020 - 3.0902 * 0.007937 / 3, 0.020 + 3.0902 * 0.007937 / 3), abs=1e-4)


def test_an_even_tolerance_is_wider_than_a_normal_one() -> None:
    # Even over +-t has a deviation of t / sqrt(3), not t / 3 (Scholz, Tolerance Stack Analysis Methods, 1995).
    values, even = simulated(lambda x: x[0], [Input(0.0, 0.3 / math.sqrt(3.0), "even")], TRIALS, SEED)
    assert (values.min(), values.max()) == pytest.approx((-0.3, 0.3), abs=1e-4)
    assert even.sd == pytest.approx(0.3 / math.sqrt(3.0), rel=0.01)


def test_gum_h_1_end_gauge() -> None:
    # JCGM 100:2008 H.1: components 25, 9.7, 2.9 and 16.6 nm (from memory) give u_c = 32 nm (read).
    law = propagated(added, [Input(0.0, u) for u in (25.0, 9.7, 2.9, 16.6)])
    assert law.sd == pytest.approx(31.67, abs=0.01) and round(law.sd) == 32
