"""Small words that the sentences of this room share."""

from __future__ import annotations

from collections.abc import Sequence

from geometry.lengths import spoken
from geometry.saying import count, number, say
from geometry.units import MM_PER_INCH


def rim(speed: float) -> str:
    """A rim speed given in m/s: so with mm, in feet a minute with inches."""
    return (f"{number(speed, '.0f')} m/s" if spoken() == "mm" else
            f"{number(round(speed * 60000 / MM_PER_INCH / 12, -1), ',.0f')} ft/min")


def with_bush(bit: str, bush: str | None) -> str:
    """A bit with its guide bush, if it runs in one."""
    return bit if bush is None else say("{bit} with {bush}", bit=bit, bush=bush)


def in_turn(names: Sequence[str]) -> str:
    """`a`, `a then b`."""
    said = names[0]
    for name in names[1:]:
        said = say("{bits} then {bit}", bits=said, bit=name)
    return said


def passes(n: int) -> str:
    """`1 pass`, `2 passes`."""
    return count(n, "{n} pass", "{n} passes")
