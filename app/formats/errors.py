"""The exceptions that a reader or writer of files raises for the maker."""


class FormatError(ValueError):
    """A file that cannot be used as it is.

    The message is one sentence: what is wrong, where, and what to do about it.
    It is shown to the maker as it stands, so it names no code and no library.
    """


class Unconfirmed(FormatError):
    """A file whose new bytes are in place, while the disk did not confirm that a loss of power leaves them there."""


class StaysAsItIs(FormatError):
    """A file that may be sound, but cannot be read now, or is of a newer program: nobody sets it aside or writes over it."""
