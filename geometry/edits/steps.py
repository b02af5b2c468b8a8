"""The maker's running order when features get other names."""

from __future__ import annotations

import re
from collections.abc import Mapping


def renamed_steps(order: tuple[str, ...], names: Mapping[str, str]) -> tuple[str, ...]:
    """The steps with feature names exchanged (old to new).

    A step ends with the name of its feature and perhaps numbers: "rout bass slot 1",
    "side bore treble side 1.1.1". The longest name that fits is meant.
    """
    patterns = [(re.compile(rf"(.* ){re.escape(old)}((?:\.\d+)*(?: \d+)?)"), names[old])
                for old in sorted(names, key=len, reverse=True)]
    return tuple(_renamed(step, patterns) for step in order)


def _renamed(step: str, patterns: list[tuple[re.Pattern[str], str]]) -> str:
    for pattern, new in patterns:
        found = pattern.fullmatch(step)
        if found is not None:
            return f"{found[1]}{new}{found[2]}"
    return step
