"""Remembering results by how much they hold: many of ordinary things, a few of huge ones.

A number of entries alone is no bound. An outline traced or read from a drawing may
have twenty thousand nodes, and every step of a drag makes another one.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache, partial, wraps
from typing import TypeVar

Made = TypeVar("Made")

HUGE = 400
"""corners or segments of a thing above which only FEW are remembered"""
FEW = 6


# What `size` is for most: how many corners or segments the first argument has.
def of_loop(loop, *_: object) -> int:
    """Of a loop."""
    return len(loop.nodes)


def of_same(loop, *_: object) -> int:
    """Of a loop that is known by its identity."""
    return len(loop.value.nodes)


def of_shape(shape, *_: object) -> int:
    """Of the shape of a slot; 0 for a straight one."""
    loop = getattr(shape, "loop", None)
    return 0 if loop is None else len(loop.nodes)


def of_slot(slot, *_: object) -> int:
    """Of a slot; 0 for a straight one."""
    return of_shape(slot.shape)


def of_wall(wall, *_: object) -> int:
    """Of a wall."""
    return len(wall.path.segments)


def remembered_by_size(maxsize: int, size: Callable[..., int]) -> Callable[[Callable[..., Made]], Callable[..., Made]]:
    """As lru_cache(maxsize) from the standard library, but of what `size` gives more than HUGE for only FEW are kept.

    `size` takes the function's arguments.
    """
    def wrap(function: Callable[..., Made]) -> Callable[..., Made]:
        ordinary, huge = lru_cache(maxsize)(function), lru_cache(min(FEW, maxsize))(function)

        @wraps(function)
        def call(*arguments):
            return (huge if size(*arguments) > HUGE else ordinary)(*arguments)

        def cache_clear() -> None:
            """Forget all, as with lru_cache."""
            ordinary.cache_clear()
            huge.cache_clear()
        call.cache_clear = cache_clear
        return call
    return wrap


def remembered_of_each(maxsize: int, size: Callable[..., int], each: int) -> Callable[[Callable[..., Made]], Callable[..., Made]]:
    """For a function of one large thing and several small ones: up to `each` results of up to `maxsize` large things.

    The large thing is the first argument, `size` takes it alone. Else every small result would keep a large thing of its own.
    """
    def wrap(function: Callable[..., Made]) -> Callable[..., Made]:
        @remembered_by_size(maxsize, size)
        def own(large: object) -> Callable[..., Made]:
            return lru_cache(each)(partial(function, large))

        @wraps(function)
        def call(large, *small):
            return own(large)(*small)
        return call
    return wrap
