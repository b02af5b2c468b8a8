"""Remembering results by how much they hold: many of ordinary things, a few of huge ones.

A number of entries alone is no bound. An outline traced or read from a drawing may
have twenty thousand nodes, and every step of a drag makes another one.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache, wraps
from typing import TypeVar

Made = TypeVar("Made")

HUGE = 400
"""corners or segments of a thing above which only FEW are remembered"""
FEW = 6


def remembered_by_size(maxsize: int, size: Callable[..., int]) -> Callable[[Callable[..., Made]], Callable[..., Made]]:
    """As lru_cache(maxsize) from the standard library, but of what `size` gives more than HUGE for only FEW are kept.

    `size` takes the function's arguments.
    """
    def wrap(function: Callable[..., Made]) -> Callable[..., Made]:
        ordinary, huge = lru_cache(maxsize)(function), lru_cache(min(FEW, maxsize))(function)

        @wraps(function)
        def call(*arguments):
            return (huge if size(*arguments) > HUGE else ordinary)(*arguments)
        return call
    return wrap
