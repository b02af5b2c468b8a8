"""Where the program's own files are, in a checkout and in an installed copy."""

import os
import sys
from pathlib import Path

APP = Path(__file__).resolve().parent.parent
CHECKOUT = APP.parent
ENVIRONMENT = CHECKOUT / ".venv"
PINS = {"app": APP / "setup" / "pins.txt", "tests": APP / "setup" / "pins-tests.txt"}


def in_checkout() -> bool:
    """Whether the program runs from its source folder, rather than as an installed package.

    An installed copy has the samples inside. That is asked too, because other
    packages may leave a pyproject.toml in the folder that all are installed in.
    """
    return (CHECKOUT / "pyproject.toml").is_file() and not (APP / "samples").is_dir()


def interpreter(environment: Path) -> Path:
    """The Python inside an environment, whether or not it is there yet."""
    if os.name == "nt":
        return environment / "Scripts" / "python.exe"
    return environment / "bin" / "python"


def inside(environment: Path) -> bool:
    """Whether the running Python is the one inside `environment`."""
    return os.path.realpath(sys.prefix) == os.path.realpath(environment)


def base_python() -> str:
    """The Python that environments are made from: the running one, or the one below the running environment."""
    return getattr(sys, "_base_executable", None) or sys.executable
