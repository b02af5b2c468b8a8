"""The workers of a run load the tests together: most of what that takes is the rewriting of `assert`s, and each worker would do
all of it.

Each begins with a share of its own and keeps the bytecode, so that it finds the shares of the others done.
"""

from __future__ import annotations

import importlib
import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

import pytest

_FOLDER = "PEGWRIGHT_TESTS_BYTECODE"


def keep_bytecode_in(folder: Path) -> None:
    """Of the run, for its workers too, which ask the same: theirs is that of the run. Used where none may be beside the files."""
    os.environ.setdefault(_FOLDER, str(folder))


@contextmanager
def shared_out(config: pytest.Config) -> Iterator[None]:
    """In a worker: the files of tests that were asked for are loaded, its own share first; in a run of one process, nothing."""
    if not hasattr(config, "workerinput"):
        yield
        return
    before = sys.pycache_prefix, sys.dont_write_bytecode
    if sys.dont_write_bytecode:
        sys.pycache_prefix, sys.dont_write_bytecode = os.environ[_FOLDER], False
    try:
        for file in _own_first(config):
            with suppress(Exception, pytest.skip.Exception):  # told when it is collected
                importlib.import_module(".".join(file.relative_to(config.rootpath).with_suffix("").parts))
        yield
    finally:
        sys.pycache_prefix, sys.dont_write_bytecode = before


def _own_first(config: pytest.Config) -> list[Path]:
    asked = [config.invocation_params.dir / word.partition("::")[0] for word in config.args]
    files = sorted({file for path in asked for file in (path.rglob("test_*.py") if path.is_dir() else [path])})
    begins = len(files) * int(config.workerinput["workerid"].removeprefix("gw")) // config.workerinput["workercount"]
    return files[begins:] + files[:begins]
