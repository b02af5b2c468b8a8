"""System libraries and tools that Python packages cannot bring, and getting them on Linux."""

import os
import sys
from collections.abc import Iterable, Mapping
from pathlib import Path

from .progress import Progress
from .trouble import SetupTrouble

FONT_FOLDERS = ("/usr/share/fonts", "/usr/local/share/fonts", "~/.fonts", "~/.local/share/fonts")
FONT_PACKAGE = "fonts-dejavu-core"

ALWAYS = {
    "libEGL.so.1": "libegl1",
    "libGL.so.1": "libgl1",
    "libX11.so.6": "libx11-6",
    "libxkbcommon.so.0": "libxkbcommon0",
    "libdbus-1.so.3": "libdbus-1-3",
    "libfontconfig.so.1": "libfontconfig1",
    "libfreetype.so.6": "libfreetype6",
    "libglib-2.0.so.0": "libglib2.0-0",
    "libgthread-2.0.so.0": "libglib2.0-0",
    "libz.so.1": "zlib1g",
    "libzstd.so.1": "libzstd1",
    "libstdc++.so.6": "libstdc++6",
    "libgcc_s.so.1": "libgcc-s1",
}
"""What the window's toolkit needs on any display, and the Debian package that holds it."""

X11 = {
    "libX11-xcb.so.1": "libx11-xcb1",
    "libxkbcommon-x11.so.0": "libxkbcommon-x11-0",
    "libxcb.so.1": "libxcb1",
    "libxcb-cursor.so.0": "libxcb-cursor0",
    "libxcb-icccm.so.4": "libxcb-icccm4",
    "libxcb-image.so.0": "libxcb-image0",
    "libxcb-keysyms.so.1": "libxcb-keysyms1",
    "libxcb-randr.so.0": "libxcb-randr0",
    "libxcb-render.so.0": "libxcb-render0",
    "libxcb-render-util.so.0": "libxcb-render-util0",
    "libxcb-shape.so.0": "libxcb-shape0",
    "libxcb-shm.so.0": "libxcb-shm0",
    "libxcb-sync.so.1": "libxcb-sync1",
    "libxcb-util.so.1": "libxcb-util1",
    "libxcb-xfixes.so.0": "libxcb-xfixes0",
    "libxcb-xkb.so.1": "libxcb-xkb1",
}
WAYLAND = {
    "libwayland-client.so.0": "libwayland-client0",
    "libwayland-cursor.so.0": "libwayland-cursor0",
    "libwayland-egl.so.1": "libwayland-egl1",
}


def display_missing(environ: Mapping[str, str], platform: str = sys.platform) -> bool:
    """Whether this is a Linux (or other Unix) session in which no window can be opened."""
    if platform in ("win32", "darwin") or environ.get("QT_QPA_PLATFORM"):
        return False
    return not (environ.get("DISPLAY") or environ.get("WAYLAND_DISPLAY"))


def libraries_for(environ: Mapping[str, str]) -> dict[str, str]:
    """The libraries that a window needs in this session, by the name the loader looks for."""
    chosen = environ.get("QT_QPA_PLATFORM", "")
    wanted = dict(ALWAYS)
    if chosen.startswith("xcb") or (not chosen and environ.get("DISPLAY")):
        wanted |= X11
    if chosen.startswith("wayland") or (not chosen and environ.get("WAYLAND_DISPLAY")):
        wanted |= WAYLAND
    return wanted


def ensure_window_libraries(environ: Mapping[str, str] = os.environ) -> None:
    """Return when a window can be opened here; on Debian as root by installing what is missing.

    Raises SetupTrouble with the command to run where it may not install.
    Does nothing outside Linux, where the Python packages bring everything.
    """
    if not sys.platform.startswith("linux"):
        return
    wanted = libraries_for(environ)
    lacking = [name for name in wanted if not _loads(name)]
    packages = {wanted[name] for name in lacking}
    if not _has_fonts():
        lacking.append("a font")
        packages.add(FONT_PACKAGE)
    if not packages:
        return
    progress = Progress()
    try:
        _install_or_explain("The window", lacking, sorted(packages), progress)
    finally:
        progress.close()


def add_environment_maker(progress: Progress) -> None:
    """Get the package that Debian splits off Python and without which no environment can be made."""
    package = f"python{sys.version_info[0]}.{sys.version_info[1]}-venv"
    _install_or_explain("Set-up", ["ensurepip, a part of Python"], [package], progress)


def _install_or_explain(who: str, lacking: list[str], packages: list[str], progress: Progress) -> None:
    command = ["apt-get", "install", "--yes", "--no-install-recommends", *packages]
    import shutil  # here and below, for no other start needs it

    if not shutil.which("apt-get"):
        raise SetupTrouble(
            f"{who} needs {_listed(lacking)}, which this machine lacks: "
            f"install it with the system's package manager (on Debian: {' '.join(command)})."
        )
    if os.geteuid() != 0:
        raise SetupTrouble(
            f"{who} needs {_listed(lacking)}, which this machine lacks: run `sudo {' '.join(command)}` and start again."
        )
    progress.stage("fetching system packages: " + " ".join(packages))
    if not _quietly(command) and not (_quietly(["apt-get", "update"]) and _quietly(command)):
        raise SetupTrouble(
            f"{who} needs {_listed(lacking)}, and installing failed: "
            f"run `apt-get update && {' '.join(command)}`, see what it says, and start again."
        )


def _quietly(command: list[str]) -> bool:
    import subprocess

    environ = {**os.environ, "DEBIAN_FRONTEND": "noninteractive"}
    options = ["-o", "DPkg::Lock::Timeout=120"]
    done = subprocess.run(
        [command[0], *options, *command[1:]], stdin=subprocess.DEVNULL, capture_output=True, env=environ
    )
    return done.returncode == 0


def _loads(name: str) -> bool:
    import ctypes  # here: the Python that only hands over to the environment's needs it not

    try:
        ctypes.CDLL(name)
    except OSError:
        return False
    return True


def _has_fonts() -> bool:
    for folder in FONT_FOLDERS:
        for _, _, files in os.walk(Path(folder).expanduser()):
            if any(file.lower().endswith((".ttf", ".otf", ".ttc")) for file in files):
                return True
    return False


def _listed(names: Iterable[str]) -> str:
    names = list(names)
    return names[0] if len(names) == 1 else ", ".join(names[:-1]) + " and " + names[-1]
