"""The uncertainty engine by itself: streams, spreads, and first order on functions worked out by hand."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from geometry.accuracy.engine import spread_of, stream
from tests.geometry.accuracy.uncertain import Input, drawn, propagated, simulated


def test_the_same_seed_gives_the_same_draws_and_another_seed_others() -> None:
    inputs = [Input(1.0, 2.0), Input(0.0, 1.0, "even"), Input(5.0, 0.5, "student 3")]
    assert (drawn(inputs, 500, 3) == drawn(inputs, 500, 3)).all()
    assert (drawn(inputs, 500, 3) != drawn(inputs, 500, 4)).any()
    assert (stream(1, 0).standard_normal(9) != stream(1, 1).standard_normal(9)).all()


def test_a_spread_tells_mean_deviation_and_histogram() -> None:
    found = spread_of(np.arange(1001.0))
    # The whole numbers 0 to n - 1 have the variance n (n + 1) / 12 about their middle.
    assert (found.mean, found.sd, found.edges[0], found.edges[-1]) == (500.0, pytest.approx((1001 * 1002 / 12) ** 0.5), 0.0, 1000.0)
    assert sum(found.counts) == 1001 and len(found.edges) == len(found.counts) + 1


def test_values_that_are_all_the_same_have_no_spread() -> None:
    found = spread_of(np.full(10, 2.5))
    assert (found.sd, sum(found.counts)) == (0.0, 10) and found.edges[0] < 2.5 < found.edges[-1]


def test_first_order_of_a_product_by_hand() -> None:
    # A = L W with L = 20 +- 0.1 and W = 10 +- 0.2: s^2 = 10^2 0.1^2 + 20^2 0.2^2 = 1 + 16.
    found = propagated(lambda x: x[0] * x[1], [Input(20.0, 0.1), Input(10.0, 0.2)])
    assert found.value == pytest.approx(200.0) and found.sd == pytest.approx(17**0.5)
    assert found.shares == pytest.approx((1 / 17, 16 / 17))


def test_a_function_without_uncertainty_has_no_shares() -> None:
    found = propagated(lambda x: 3 * x[0], [Input(2.0, 0.0)])
    assert (found.value, found.sd, found.shares) == (6.0, 0.0, (0.0,))


@given(st.lists(st.tuples(st.floats(-5, 5), st.floats(0.01, 2)), min_size=1, max_size=6))
def test_first_order_is_exact_where_the_function_is_linear(terms: list[tuple[float, float]]) -> None:
    factors = np.array([factor for factor, _ in terms])
    found = propagated(lambda x: factors @ x, [Input(1.0, sd) for _, sd in terms])
    assert found.sd == pytest.approx(sum((f * sd) ** 2 for f, sd in terms) ** 0.5, abs=1e-9)


def test_simulation_and_first_order_agree_on_a_sum() -> None:
    inputs = [Input(0.0, 0.3), Input(0.0, 0.4)]
    _, found = simulated(lambda x: x[0] + x[1], inputs, 100_000, 5)
    assert found.sd == pytest.approx(0.5, rel=0.01)
    assert propagated(lambda x: x[0] + x[1], inputs).sd == pytest.approx(0.5)
