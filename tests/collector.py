"""What a run has loaded is put out of the way of the garbage collector, as a start of the program does with its own.

A whole run holds some four hundred thousand things before its first test: to look through them takes a third of a second
of the processor, and every window test looks for garbage and for timers that are still running.
"""

import gc


def set_aside() -> None:
    """From here on the collector, and who asks it for all objects, knows only what is made later."""
    gc.collect()
    gc.freeze()


def set_aside_again() -> None:
    """The same after somebody has called everything back (`gc.unfreeze`)."""
    if not gc.get_freeze_count():
        set_aside()
