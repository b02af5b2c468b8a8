"""Chances of the chi-square and the F distribution, without a statistics library at the maker's.

Regularised incomplete gamma by its series and its continued fraction (DLMF
8.11.4 and 8.9.2), regularised incomplete beta by its continued fraction (DLMF
8.17.22), both evaluated by the modified Lentz method; quantiles by bisection.
"""

from __future__ import annotations

import math
from collections.abc import Callable

_SMALL = 1e-300
_CLOSE = 1e-15
_MOST = 100_000


def chi_square_below(x: float, freedom: float) -> float:
    """Chance that a chi-square variable is at most x; 0 for x <= 0. ValueError unless freedom > 0."""
    if not freedom > 0:
        raise ValueError("a chi-square variable needs degrees of freedom above 0")
    return 0.0 if x <= 0 else _gamma_below(freedom / 2, x / 2)


def chi_square_quantile(chance: float, freedom: float) -> float:
    """The value that a chi-square variable stays under with that chance (0 < chance < 1). ValueError otherwise."""
    if not 0 < chance < 1:
        raise ValueError("a quantile needs a chance between 0 and 1")
    low, high = 0.0, max(1.0, freedom)
    while chi_square_below(high, freedom) < chance:
        low, high = high, 2 * high
    for _ in range(200):
        middle = (low + high) / 2
        if middle in (low, high):
            break
        low, high = (middle, high) if chi_square_below(middle, freedom) < chance else (low, middle)
    return (low + high) / 2


def f_above(f: float, top: float, bottom: float) -> float:
    """Chance that an F variable with these degrees of freedom is above f: I_w(bottom/2, top/2), w = bottom / (bottom + top f)."""
    if not (top > 0 and bottom > 0):
        raise ValueError("an F variable needs degrees of freedom above 0")
    if f <= 0:
        return 1.0
    return 0.0 if math.isinf(f) else _beta_below(bottom / (bottom + top * f), bottom / 2, top / 2)


def _gamma_below(a: float, x: float) -> float:
    scale = math.exp(a * math.log(x) - x - math.lgamma(a))
    if x < a + 1:
        term = total = 1 / a
        n = a
        while abs(term) > abs(total) * _CLOSE:
            n += 1
            term *= x / n
            total += term
        return min(1.0, total * scale)
    # Gamma(a, x) = e^-x x^a / (x+1-a- 1(1-a)/(x+3-a- 2(2-a)/(x+5-a- ...)))
    return max(0.0, 1 - scale * _fraction(lambda n: (1.0 if n == 1 else (n - 1) * (a - n + 1), x + 2 * n - 1 - a)))


def _beta_below(x: float, a: float, b: float) -> float:
    if x <= 0 or x >= 1:
        return 0.0 if x <= 0 else 1.0
    if x > (a + 1) / (a + b + 2):
        return 1 - _beta_below(1 - x, b, a)
    scale = math.exp(a * math.log(x) + b * math.log1p(-x) + math.lgamma(a + b) - math.lgamma(a) - math.lgamma(b)) / a

    def term(n: int) -> tuple[float, float]:
        if n == 1:
            return 1.0, 1.0
        m, odd = divmod(n - 1, 2)
        if odd:
            return -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1)), 1.0
        return m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m)), 1.0
    return min(1.0, max(0.0, scale * _fraction(term)))


def _fraction(term: Callable[[int], tuple[float, float]]) -> float:
    """a1 / (b1 + a2 / (b2 + ...)) by the modified Lentz method; term(n) gives (a_n, b_n), n from 1."""
    f = c = _SMALL
    d = 0.0
    for n in range(1, _MOST):
        a, b = term(n)
        d = b + a * d or _SMALL
        c = b + a / c or _SMALL
        d = 1 / d
        f *= c * d
        if abs(c * d - 1) < _CLOSE:
            return f
    return f
