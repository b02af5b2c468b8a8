"""Python's own way of importing, kept beside the window toolkit."""

import builtins

OWN = builtins.__import__
"""As it was when this was loaded: before the toolkit."""


def keep_own() -> None:
    """Go on importing as before the toolkit was loaded; call it as soon as that is.

    The toolkit puts a function in place of Python's that serves modules which
    ask for other names of its methods (`from __feature__ import ...`). To find
    out who does, it reads the source of whatever is loaded from then on, half
    a thousand files in a start, and holds on to it. Nothing here asks for that.
    """
    builtins.__import__ = OWN
