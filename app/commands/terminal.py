"""What a terminal may be given. Of the standard library alone: set-up speaks before anything else is there."""

import unicodedata


def shown(line: str) -> str:
    """The line without the signs that terminals obey, which a name in a file may hold: "?" stands for each. Spaces of any width stay."""
    return "".join(sign if sign.isprintable() or unicodedata.category(sign) == "Zs" else "?" for sign in line)
