"""Which room may know which: the contracts stand in pyproject.toml."""

import subprocess
import sys

import pytest

from app.setup.places import CHECKOUT

OUTSIDE_GEOMETRY = (
    "PySide6",
    "shiboken6",
    "ezdxf",
    "reportlab",
    "fontTools",
    "svgelements",
    "json",
    "app",
    "tempfile",
    "random",
)


def loaded_by(code: str) -> set[str]:
    """Names of the modules that a new process has loaded after running this code."""
    tell = "import sys; print('\\n'.join(sorted(sys.modules)))"
    done = subprocess.run([sys.executable, "-c", f"{code}\n{tell}"], cwd=CHECKOUT, capture_output=True, text=True)
    assert done.returncode == 0, done.stderr
    return set(done.stdout.split())


def test_the_contracts_between_the_rooms_hold() -> None:
    command = [
        sys.executable,
        "-c",
        "from importlinter.cli import lint_imports_command; lint_imports_command()",
        "--no-cache",
    ]
    done = subprocess.run(command, cwd=CHECKOUT, capture_output=True, text=True)
    assert done.returncode == 0, done.stdout + done.stderr
    assert "Contracts: " in done.stdout


def geometry_modules() -> list[str]:
    files = sorted((CHECKOUT / "geometry").rglob("*.py"))
    return [".".join(file.relative_to(CHECKOUT).with_suffix("").parts).removesuffix(".__init__") for file in files]


def test_the_whole_of_geometry_loads_no_screen_no_file_format_and_no_program() -> None:
    bare = loaded_by("import numpy, shapely, msgspec")
    loaded = loaded_by("\n".join(f"import {name}" for name in geometry_modules()))
    assert "geometry" in loaded
    assert loaded.intersection(OUTSIDE_GEOMETRY) - bare == set()
    assert loaded.isdisjoint({"PySide6", "shiboken6", "ezdxf", "reportlab", "app"})


@pytest.mark.parametrize("room", ["app.formats.headstock", "app.formats.drawing_in", "app.tools"])
def test_rooms_without_a_window_load_no_toolkit_and_no_drawing_library(room: str) -> None:
    assert loaded_by(f"import {room}").isdisjoint({"PySide6", "shiboken6", "ezdxf", "reportlab"})


def test_the_document_loads_no_widgets() -> None:
    assert loaded_by("import app.document").isdisjoint({"PySide6.QtWidgets", "ezdxf", "reportlab"})


def test_set_up_and_the_command_line_need_the_standard_library_alone() -> None:
    files = sorted((CHECKOUT / "app" / "setup").glob("*.py"))
    names = ["app.commands.main", *(f"app.setup.{file.stem}" for file in files)]
    code = "import sys; before = set(sys.modules)\n" + "\n".join(f"import {name}" for name in names)
    code += "\nfor name in before: sys.modules.pop(name, None) if name not in ('sys', 'builtins') else None"
    loaded = {name.partition(".")[0] for name in loaded_by(code)}
    assert loaded - set(sys.stdlib_module_names) == {"app"}


def test_the_window_knows_of_all_windows_without_loading_them() -> None:
    """They make it, and not the other way round."""
    assert "app.window.windows" not in loaded_by("import app.window.main")


def test_only_what_wires_the_window_takes_all_of_it() -> None:
    """All else takes a `Frame`, and can be understood without the commands, the journal and the other windows."""
    window = CHECKOUT / "app" / "window"
    takes = {file.relative_to(window).as_posix() for file in window.rglob("*.py")
             if "from app.window.main import MainWindow" in file.read_text(encoding="utf-8")}
    assert takes == {"__init__.py", "closing.py", "commands.py", "looks.py", "opening.py", "windows.py", "front/drops.py",
                     "running/faults.py", "running/recovery.py"}
