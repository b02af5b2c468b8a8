"""Pythons that the program does not run on."""

import ast
import subprocess
import sys

import pytest

from app.setup.places import CHECKOUT
from app.setup.version import complaint

READ_BY_ANY_PYTHON = (
    "app/__init__.py",
    "app/__main__.py",
    "app/setup/__init__.py",
    "app/setup/version.py",
    "tests/__init__.py",
    "tests/__main__.py",
)


@pytest.mark.parametrize("running", [(3, 11), (3, 12, 1), (3, 13, 0, "final", 0)])
def test_the_three_versions_are_welcome(running: tuple) -> None:
    assert complaint(running, lambda name: None) is None


@pytest.mark.parametrize("running", [(2, 7, 18), (3, 10, 13), (3, 14, 0), (4, 0)])
def test_others_are_told_what_to_get(running: tuple) -> None:
    sentence = complaint(running, lambda name: None)
    assert sentence == (
        f"Pegwright needs Python 3.11, 3.12 or 3.13, and this is Python {running[0]}.{running[1]}: "
        "install one of those and start again with it."
    )


def test_a_fitting_python_on_the_machine_is_named() -> None:
    sentence = complaint((3, 9), {"python3.12": "somewhere"}.get)
    assert sentence.endswith("start it again with python3.12 in place of this one.")


@pytest.mark.parametrize("file", READ_BY_ANY_PYTHON)
def test_what_an_old_python_reads_first_it_can_read(file: str) -> None:
    tree = ast.parse((CHECKOUT / file).read_text(encoding="utf-8"), feature_version=(3, 4))
    annotated = [
        node
        for node in ast.walk(tree)
        if (isinstance(node, ast.arg) and node.annotation) or (isinstance(node, ast.FunctionDef) and node.returns)
    ]
    assert not annotated, "Python 2.7 cannot read annotations"


@pytest.mark.parametrize("module", ["app", "tests"])
def test_a_wrong_python_gets_a_sentence_and_code_2(module: str) -> None:
    pretend = "import sys, runpy; sys.version_info = (3, 10, 1); sys.argv = ['x']\n"
    pretend += f"runpy.run_module('{module}', run_name='__main__')"
    done = subprocess.run([sys.executable, "-c", pretend], cwd=CHECKOUT, capture_output=True, text=True)
    assert done.returncode == 2
    assert done.stderr.startswith("Pegwright needs Python 3.11, 3.12 or 3.13, and this is Python 3.10: ")
    assert done.stderr.count("\n") == 1
