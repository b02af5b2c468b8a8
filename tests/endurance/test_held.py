"""Every test that HELD.md names is there: a promise whose test was renamed or dropped is seen."""

import re
from pathlib import Path

ROOT = Path(__file__).parents[2]


def test_what_is_said_to_be_held_is_held():
    named = re.findall(r"`(tests/[\w/]+\.py)(?:::(\w+))?`", Path(__file__).with_name("HELD.md").read_text(encoding="utf-8"))
    assert len(named) > 40
    for file, test in named:
        path = ROOT / file
        assert path.is_file(), file
        assert not test or re.search(rf"^ *def {test}\(", path.read_text(encoding="utf-8"), re.MULTILINE), f"{file}::{test}"
