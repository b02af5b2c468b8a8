"""Is this Python one that the program runs on?

This file, `app/__init__.py`, `app/__main__.py` and `tests/__main__.py` are read
by whatever Python the maker has, so they keep to what Python 2.7 can parse.
"""

OLDEST = (3, 11)
NEWEST = (3, 13)


def complaint(running, found):
    """One sentence for a Python outside 3.11 to 3.13, else None.

    `running` is the version as a tuple. `found` is a function from a command
    name to its path, or None where the machine has no such command.
    """
    if OLDEST <= tuple(running[:2]) <= NEWEST:
        return None
    text = "Pegwright needs Python 3.11, 3.12 or 3.13, and this is Python %d.%d: " % tuple(running[:2])
    for minor in range(NEWEST[1], OLDEST[1] - 1, -1):
        name = "python3.%d" % minor
        if found(name):
            return text + "start it again with %s in place of this one." % name
    return text + "install one of those and start again with it."


def find_command(name):
    """The path of a command of this machine, or None; also None where Python is too old to look."""
    try:
        from shutil import which
    except ImportError:
        return None
    return which(name)
