"""A reference to spare for what the window toolkit drops once too often.

PySide6 6.11 releases a method twice when it raises while the toolkit was called
from Python (`close`, `repaint`, `show`): at the second release too many the
method is freed while its class still names it, and the next call ends the
program. So each method that an error came through is held on to here.
"""

from __future__ import annotations

import gc
from types import CodeType, FunctionType, TracebackType

_held: list[FunctionType] = []


def hold_on(trace: TracebackType | None) -> None:
    """Hold on once more to every function that the error came through."""
    codes: set[CodeType] = set()
    while trace is not None:
        codes.add(trace.tb_frame.f_code)
        trace = trace.tb_next
    known = {function.__code__: function for function in _held}
    _held.extend(known[code] for code in codes if code in known)
    new = codes - known.keys()
    if new:
        gc.unfreeze()  # what a start has loaded: nobody who refers to it is found while it is out of the collector's way
        # Not gc.get_objects: it takes hold of tuples that another thread is about to fill, which then breaks off.
        _held.extend(one for one in gc.get_referrers(*new) if type(one) is FunctionType)
