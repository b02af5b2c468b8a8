"""Remembering prepared shapes: one thread at a time may ask them anything.

The polygon library lets other threads run while it works, and what it prepares
for many questions is changed by each of them: two threads that ask one prepared
shape at once end the program.
"""

from __future__ import annotations

import threading
from collections.abc import Callable
from functools import wraps
from typing import TypeVar

from geometry.by_size import remembered_by_size

Made = TypeVar("Made")


def remembered_per_thread(maxsize: int, size: Callable[..., int] = lambda *_: 0) -> Callable[[Callable[..., Made]], Callable[..., Made]]:
    """As remembered_by_size, but what one thread made is given to no other. Without `size` every thing is an ordinary one."""
    def wrap(function: Callable[..., Made]) -> Callable[..., Made]:
        own = threading.local()

        @wraps(function)
        def call(*arguments):
            try:
                known = own.known
            except AttributeError:
                known = own.known = remembered_by_size(maxsize, size)(function)
            return known(*arguments)
        return call
    return wrap
