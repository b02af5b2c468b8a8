"""System libraries: which are asked for, and what is done or said when some are missing."""

import os
import sys
from pathlib import Path

import pytest

from app.setup import system
from app.setup.progress import Progress
from app.setup.trouble import SetupTrouble
from tests.setup import elf

linux = pytest.mark.skipif(
    not sys.platform.startswith("linux"), reason="only Linux leaves these libraries to the system"
)

OF_EVERY_LINUX = {
    "libc.so.6",
    "libm.so.6",
    "libdl.so.2",
    "libpthread.so.0",
    "librt.so.1",
    "libresolv.so.2",
    "ld-linux-x86-64.so.2",
    "ld-linux-aarch64.so.1",
}


@linux
@pytest.mark.parametrize(
    ("parts", "session"),
    [
        (["Core", "Gui", "Widgets", "Svg", "PrintSupport", "DBus", "Test"], {"QT_QPA_PLATFORM": "offscreen"}),
        (["../plugins/platforms/libqoffscreen.so"], {"QT_QPA_PLATFORM": "offscreen"}),
        (["XcbQpa", "../plugins/platforms/libqxcb.so"], {"DISPLAY": ":0"}),
        (["WaylandClient", "../plugins/platforms/libqwayland.so"], {"WAYLAND_DISPLAY": "wayland-0"}),
    ],
)
def test_the_tables_name_all_that_the_installed_toolkit_asks_the_system_for(
    parts: list[str], session: dict[str, str]
) -> None:
    import PySide6

    folder = Path(PySide6.__file__).parent / "Qt" / "lib"
    bundled = {file.name for file in folder.iterdir()}
    asked: set[str] = set()
    for part in parts:
        asked.update(elf.needed(folder / (part if part.startswith("..") else f"libQt6{part}.so.6")))
    unknown = asked - bundled - OF_EVERY_LINUX - set(system.libraries_for(session))
    assert not unknown


@linux
def test_all_that_the_tests_ask_for_loads_here() -> None:
    assert [name for name in system.libraries_for({"QT_QPA_PLATFORM": "offscreen"}) if not system._loads(name)] == []
    assert not system._loads("libpegwright-has-no-such-library.so.7")


@pytest.mark.parametrize(
    ("environ", "platform", "missing"),
    [
        ({}, "linux", True),
        ({"DISPLAY": ""}, "linux", True),
        ({"DISPLAY": ":0"}, "linux", False),
        ({"WAYLAND_DISPLAY": "wayland-0"}, "linux", False),
        ({"QT_QPA_PLATFORM": "offscreen"}, "linux", False),
        ({}, "win32", False),
        ({}, "darwin", False),
    ],
)
def test_where_a_display_is_missing(environ: dict[str, str], platform: str, missing: bool) -> None:
    assert system.display_missing(environ, platform) is missing


class Machine:
    """A pretended Linux machine: which libraries it has, who is at it, and an apt-get that notes its calls."""

    def __init__(self, folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        self.calls = folder / "calls"
        self.calls.touch()
        self._tools = folder / "bin"
        self._tools.mkdir()
        self._monkeypatch = monkeypatch
        monkeypatch.setattr(sys, "platform", "linux")
        monkeypatch.setenv("PATH", str(self._tools))
        monkeypatch.setenv("DISPLAY", ":0")
        monkeypatch.delenv("QT_QPA_PLATFORM", raising=False)
        monkeypatch.delenv("WAYLAND_DISPLAY", raising=False)
        monkeypatch.setattr(system, "_has_fonts", lambda: True)
        self.lacks()

    def lacks(self, *names: str) -> None:
        self._monkeypatch.setattr(system, "_loads", lambda name: name not in names)

    def user(self, number: int) -> None:
        self._monkeypatch.setattr(os, "geteuid", lambda: number)

    def apt(self, script: str) -> None:
        tool = self._tools / "apt-get"
        tool.write_text(f'#!/bin/sh\necho "$@" >> "{self.calls}"\n{script}\n', encoding="utf-8")
        tool.chmod(0o755)

    def called(self) -> list[str]:
        return self.calls.read_text(encoding="utf-8").splitlines()


@pytest.fixture
def machine(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Machine:
    """A pretended machine that has every library."""
    if os.name == "nt":
        pytest.skip("needs a POSIX shell")
    return Machine(tmp_path, monkeypatch)


def test_a_machine_that_has_all_is_left_alone(machine: Machine) -> None:
    machine.apt("exit 1")
    system.ensure_window_libraries(os.environ)
    assert machine.called() == []


def test_root_on_debian_gets_exactly_what_is_missing(machine: Machine) -> None:
    machine.apt("exit 0")
    machine.user(0)
    machine.lacks("libEGL.so.1", "libxcb-cursor.so.0")
    system.ensure_window_libraries(os.environ)
    assert machine.called() == [
        "-o DPkg::Lock::Timeout=120 install --yes --no-install-recommends libegl1 libxcb-cursor0"
    ]


def test_the_lists_of_packages_are_fetched_if_installing_fails_at_first(machine: Machine) -> None:
    machine.apt(f'[ $(wc -l < "{machine.calls}") -gt 1 ]'.replace("wc", "/usr/bin/wc"))
    machine.user(0)
    machine.lacks("libEGL.so.1")
    system.ensure_window_libraries(os.environ)
    assert [call.split()[2] for call in machine.called()] == ["install", "update", "install"]


def test_root_is_told_the_command_when_installing_fails(machine: Machine) -> None:
    machine.apt("exit 100")
    machine.user(0)
    machine.lacks("libEGL.so.1")
    with pytest.raises(SetupTrouble) as caught:
        system.ensure_window_libraries(os.environ)
    assert "run `apt-get update && apt-get install --yes --no-install-recommends libegl1`" in str(caught.value)


def test_others_are_told_the_exact_command(machine: Machine) -> None:
    machine.apt("exit 0")
    machine.user(1000)
    machine.lacks("libEGL.so.1", "libdbus-1.so.3", "libxcb-cursor.so.0")
    with pytest.raises(SetupTrouble) as caught:
        system.ensure_window_libraries(os.environ)
    assert str(caught.value) == (
        "The window needs libEGL.so.1, libdbus-1.so.3 and libxcb-cursor.so.0, which this machine lacks: "
        "run `sudo apt-get install --yes --no-install-recommends libdbus-1-3 libegl1 libxcb-cursor0` and start again."
    )
    assert machine.called() == []


def test_a_machine_without_apt_is_told_the_names(machine: Machine) -> None:
    machine.user(0)
    machine.lacks("libEGL.so.1")
    with pytest.raises(
        SetupTrouble, match=r"libEGL\.so\.1, which this machine lacks: install it with the system's package manager"
    ):
        system.ensure_window_libraries(os.environ)


def test_a_machine_without_any_font_gets_one(machine: Machine, monkeypatch: pytest.MonkeyPatch) -> None:
    machine.apt("exit 0")
    machine.user(0)
    monkeypatch.setattr(system, "_has_fonts", lambda: False)
    system.ensure_window_libraries(os.environ)
    assert machine.called()[0].endswith(" fonts-dejavu-core")


def test_fonts_are_found_below_the_usual_folders(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(system, "FONT_FOLDERS", (str(tmp_path / "none"), str(tmp_path)))
    assert not system._has_fonts()
    (tmp_path / "deep" / "deeper").mkdir(parents=True)
    (tmp_path / "deep" / "deeper" / "Plain.TTF").touch()
    assert system._has_fonts()


def test_the_split_off_part_of_python_is_fetched_by_its_version(machine: Machine) -> None:
    machine.apt("exit 0")
    machine.user(0)
    system.add_environment_maker(Progress(None))
    assert machine.called()[0].endswith(f" python{sys.version_info[0]}.{sys.version_info[1]}-venv")
