"""Chances of chi-square and F against an independent library."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from geometry.measured import interval
from geometry.measured.chances import chi_square_below, chi_square_quantile, f_above


@given(st.floats(1e-6, 400), st.integers(1, 200))
def test_chi_square_is_that_of_scipy(x, freedom):
    assert chi_square_below(x, freedom) == pytest.approx(stats.chi2.cdf(x, freedom), abs=1e-11)


@given(st.floats(0.001, 0.999), st.integers(1, 200))
def test_quantiles_are_those_of_scipy(chance, freedom):
    assert chi_square_quantile(chance, freedom) == pytest.approx(stats.chi2.ppf(chance, freedom), rel=1e-8)


@given(st.floats(1e-6, 1e4), st.integers(1, 40), st.integers(1, 120))
def test_f_is_that_of_scipy(f, top, bottom):
    assert f_above(f, top, bottom) == pytest.approx(stats.f.sf(f, top, bottom), abs=1e-11)


@pytest.mark.parametrize("readings, low, high", [(2, 0.4461, 31.9102), (5, 0.5991, 2.8736), (10, 0.6878, 1.8256), (100, 0.8780, 1.1617)])
def test_intervals_of_a_unit_deviation_are_the_published_ones(readings, low, high):
    """Published: Boost Math documentation, Confidence Intervals on the Standard Deviation, 95 %."""
    assert interval(1.0, readings - 1) == (pytest.approx(low, abs=6e-5), pytest.approx(high, abs=6e-5))


def test_no_freedom_is_refused():
    for refused in (lambda: chi_square_below(1, 0), lambda: chi_square_quantile(1, 3), lambda: f_above(1, 0, 3)):
        with pytest.raises(ValueError):
            refused()
