"""The one exception that geometry raises for input it cannot make sense of."""


class GeometryError(ValueError):
    """A shape or a number that has no meaning here.

    The message is one sentence for the maker: what is wrong, where, what to do.
    A judgement about the work (a thin rail, a hole too close) is never raised:
    it is a snag, returned as data.
    """
