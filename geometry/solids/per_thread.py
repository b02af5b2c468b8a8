"""Remembering prepared shapes: one thread at a time may ask them anything.

The polygon library lets other threads run while it works, and what it prepares
for many questions is changed by each of them: two threads that ask one prepared
shape at once end the program.
"""

from __future__ import annotations

import threading
from collections.abc import Callable
from functools import lru_cache, wraps
from typing import TypeVar

Made = TypeVar("Made")


def remembered_per_thread(maxsize: int) -> Callable[[Callable[..., Made]], Callable[..., Made]]:
    """As lru_cache(maxsize) from the standard library, but what one thread made is given to no other."""
    def wrap(function: Callable[..., Made]) -> Callable[..., Made]:
        own = threading.local()

        @wraps(function)
        def call(*arguments):
            try:
                known = own.known
            except AttributeError:
                known = own.known = lru_cache(maxsize)(function)
            return known(*arguments)
        return call
    return wrap
