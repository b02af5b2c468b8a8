"""What a run has loaded is put out of the way of the garbage collector, as a start of the program does with its own.

A whole run holds some four hundred thousand things before its first test: to look through them takes a third of a second
of the processor, and every window test looks for garbage; even to count them (`gc.get_freeze_count`) takes a twentieth. And as
in the program Python collects nothing by itself (app/threads/collector.py): it is done between two tests, where no widget is at
work.
"""

import gc

_called_back = False

MOST = 50_000
"""So many things more than after the last time may be alive when a test is over: a window, say."""


def set_aside() -> None:
    """From here on the collector, and who asks it for all objects, knows only what is made later; it waits to be asked."""
    global _called_back
    gc.disable()
    gc.collect()
    gc.freeze()
    _called_back = False


def call_back() -> None:
    """What was set aside is among what the collector knows again, until this test is over."""
    global _called_back
    gc.unfreeze()
    _called_back = True


def set_aside_again() -> None:
    """Set everything aside after somebody has called it back."""
    if _called_back:
        set_aside()


def collect_when_due() -> None:
    """Between two tests: give up what nobody holds any more, if that may be much."""
    if gc.get_count()[0] > MOST:
        gc.collect()
