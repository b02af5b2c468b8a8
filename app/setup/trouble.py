"""What set-up raises when it cannot go on."""


class SetupTrouble(Exception):
    """One sentence for the maker: what is missing or in the way, and what to do about it."""
