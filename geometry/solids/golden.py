"""The bottom of a function of one number that has a single valley, by golden sections."""

from __future__ import annotations

import math
from collections.abc import Callable

_INNER = (math.sqrt(5) - 1) / 2


def lowest(value: Callable[[float], float], low: float, high: float, rounds: int) -> float:
    """Where between `low` and `high` the value is least: within 0.618 to the power of `rounds` of their distance.

    A function with several valleys is led into one of them.
    """
    one, two = high - (high - low) * _INNER, low + (high - low) * _INNER
    left, right = value(one), value(two)
    for _ in range(rounds):
        # Of the two inner places one is an inner place of what is left.
        if left <= right:
            high, two, right = two, one, left
            one = high - (high - low) * _INNER
            left = value(one)
        else:
            low, one, left = one, two, right
            two = low + (high - low) * _INNER
            right = value(two)
    return (low + high) / 2
