"""The launcher in a home of its own: what the desktop's own specifications ask for, read by readers that are not ours."""

import configparser
import os
import re
import shutil
import subprocess
import sys
from pathlib import Path
from xml.etree import ElementTree

import pytest

from app.launcher import entry, install
from app.look.program_sizes import SIZES
from app.setup.places import CHECKOUT
from tests.app.commands.calling import call

pytestmark = pytest.mark.skipif(sys.platform in ("win32", "darwin"), reason="desktops of freedesktop.org alone")

HARD_WORDS = ["/opt/my shop/python", "50 % off", 'a"b', "c$HOME", "d`e", "f\\g", "h'i", "Grüße", "(x) & y; z* ~ #"]

ASK = """
import os, sys
from PySide6.QtCore import QMimeDatabase
from PySide6.QtGui import QIcon, QGuiApplication
application = QGuiApplication([])
database = QMimeDatabase()
for name in sys.argv[1:]:
    found = database.mimeTypeForFile(name, QMimeDatabase.MatchMode.MatchExtension)
    print(found.name(), found.inherits("application/json"), found.inherits("text/plain"))
places = [os.environ["XDG_DATA_HOME"], *os.environ["XDG_DATA_DIRS"].split(":")]
QIcon.setThemeSearchPaths([f"{place}/icons" for place in places])  # a desktop does so; the screenless platform does not
QIcon.setThemeName("hicolor")
print(sorted({size.width() for size in QIcon.fromTheme("pegwright").availableSizes()}))
"""


def read(text: str) -> configparser.SectionProxy:
    parser = configparser.RawConfigParser(delimiters=("=",), comment_prefixes=("#",), strict=True)
    parser.optionxform = str
    parser.read_string(text)
    assert parser.sections() == ["Desktop Entry"]
    return parser["Desktop Entry"]


def test_the_launcher_keeps_the_rules_of_its_keys():
    """Desktop Entry Specification 1.5, tables of recognized keys, and of main categories in the Menu Specification."""
    text = entry.desktop_entry()
    assert text.startswith("[Desktop Entry]\n") and text.endswith("\n")
    keys = read(text)
    assert (keys["Type"], keys["Name"], keys["Icon"]) == ("Application", "Pegwright", "pegwright")
    assert keys["Terminal"] == "false" and keys["StartupNotify"] == "true"
    for key in ("MimeType", "Categories", "Keywords"):
        assert keys[key].endswith(";"), "a list ends with its separator"
    assert all(re.fullmatch(r"[A-Za-z0-9-]+(\[[a-z]{2,3}(_[A-Z]{2})?\])?", key) for key in keys)
    known = {"Type", "Version", "Name", "GenericName", "Comment", "Icon", "Exec", "Path", "Terminal", "MimeType",
             "Categories", "Keywords", "StartupNotify", "StartupWMClass"}
    assert {key.partition("[")[0] for key in keys} <= known
    assert keys["Categories"].split(";")[0] in {"AudioVideo", "Development", "Education", "Game", "Graphics", "Network",
                                                "Office", "Science", "Settings", "System", "Utility"}
    codes = re.findall(r"(?<!%)(?:%%)*%([^%])", keys["Exec"])
    assert codes == ["F"], "one field code, and files as a list"


def test_hard_words_survive_two_readers():
    """Exec is unescaped as a string, then split as a shell splits double quotes: here by a shell itself."""
    exec_line = read(entry.desktop_entry(HARD_WORDS, Path("/srv/back\\slash")))["Exec"]
    unescaped = re.sub(r"\\(.)", lambda m: {"s": " ", "n": "\n", "t": "\t", "r": "\r"}.get(m[1], m[1]), exec_line)
    assert unescaped.endswith(" %F")
    said = subprocess.run(["sh", "-c", f'printf "%s\\0" {unescaped.removesuffix(" %F")}'], capture_output=True)
    assert said.stdout.decode().split("\0")[:-1] == [word.replace("%", "%%") for word in HARD_WORDS]


def test_the_desktops_own_checker_finds_nothing(tmp_path):
    if not shutil.which("desktop-file-validate"):
        pytest.skip("desktop-file-validate is not on this machine; the rules are checked above")
    for words in (None, HARD_WORDS):
        file = tmp_path / "pegwright.desktop"
        file.write_text(entry.desktop_entry(words), encoding="utf-8")
        done = subprocess.run(["desktop-file-validate", file], capture_output=True, text=True)
        assert (done.returncode, done.stdout) == (0, "")


def test_the_kind_of_file_is_told_by_its_double_ending():
    """Shared MIME-info Specification 0.21: namespace, comment, glob with a weight of 0 to 100."""
    space = "{http://www.freedesktop.org/standards/shared-mime-info}"
    kind = ElementTree.fromstring(entry.mime_package()).find(f"{space}mime-type")
    assert kind.get("type") == entry.KIND and re.fullmatch(r"application/[a-z0-9.+-]+", entry.KIND)
    globs = kind.findall(f"{space}glob")
    assert [(g.get("pattern"), int(g.get("weight"))) for g in globs] == [("*.headstock.json", 60)]
    assert kind.find(f"{space}comment").text
    assert kind.find(f"{space}sub-class-of").get("type") == "application/json"


@pytest.fixture
def home(tmp_path, monkeypatch):
    """A private place for the user's data; the system's stay as they are."""
    folder = tmp_path / "our data"
    monkeypatch.setenv("XDG_DATA_HOME", str(folder))
    return folder


def hicolor(tmp_path):
    """The theme that every desktop has, as an index alone (Icon Theme Specification): this machine may have no desktop."""
    folder = tmp_path / "system" / "icons" / "hicolor"
    folder.mkdir(parents=True)
    parts = [f"{size}x{size}/apps" for size in SIZES]
    about = [f"[{part}]\nSize={size}\nContext=Applications\nType=Fixed\n" for part, size in zip(parts, SIZES, strict=True)]
    (folder / "index.theme").write_text(f"[Icon Theme]\nName=Hicolor\nComment=Fallback\nDirectories={','.join(parts)}\n\n"
                                        + "\n".join(about), encoding="utf-8")
    return folder.parents[1]


def test_it_is_put_in_once_found_by_the_desktop_and_taken_out(home, tmp_path):
    done = call("launcher")
    assert done.returncode == 0, done.stderr
    written = [Path(line.partition(": ")[2]) for line in done.stdout.splitlines() if line.startswith("written: ")]
    assert len(written) == len(SIZES) + 4 and all(file.is_file() for file in written)
    assert all(home in file.parents for file in written)
    layout, plain = tmp_path / "my head.headstock.json", tmp_path / "other.json"
    for file in (layout, plain):
        file.write_text("{}", encoding="utf-8")
    environ = {**os.environ, "QT_QPA_PLATFORM": "offscreen", "XDG_DATA_DIRS": f"{hicolor(tmp_path)}:/usr/share"}
    asked = subprocess.run([sys.executable, "-c", ASK, layout, plain], capture_output=True, text=True, env=environ)
    assert asked.stdout.splitlines() == [f"{entry.KIND} True True", "application/json True True", str(list(SIZES))]
    again = call("launcher")
    assert again.stdout.count("as it was: ") == len(written) and again.stdout.endswith("0 files changed.\n")
    (home / "applications" / "pegwright.desktop").write_text("old", encoding="utf-8")
    assert "1 file changed." in call("launcher").stdout
    gone = call("launcher", "--remove")
    assert gone.stdout.count("removed: ") == len(written) and not any(file.exists() for file in written)
    assert call("launcher", "--remove").stdout.endswith("0 files changed.\n")
    asked = subprocess.run([sys.executable, "-c", ASK, layout], capture_output=True, text=True, env=environ)
    assert asked.stdout.splitlines()[0].startswith("application/json")


def test_what_it_starts_is_this_program(home):
    """The words of Exec, run from the folder of Path, are the program."""
    call("launcher")
    keys = read((home / "applications" / "pegwright.desktop").read_text(encoding="utf-8"))
    assert keys["Path"] == str(CHECKOUT)
    words = entry.command()
    assert words[1:] == ["-m", "app"] and Path(words[0]).is_absolute()
    said = subprocess.run([*words, "--version"], cwd=keys["Path"], capture_output=True, text=True)
    assert said.stdout.startswith("Pegwright ")


def test_an_installed_and_a_bundled_copy_start_by_their_own_name(monkeypatch, tmp_path):
    script = tmp_path / "pegwright"
    script.write_text("", encoding="utf-8")
    monkeypatch.setattr(entry, "in_checkout", lambda: False)
    monkeypatch.setattr(sys, "executable", str(tmp_path / "python"))
    assert entry.command() == [str(script)]
    assert "Path" not in read(entry.desktop_entry())
    script.unlink()
    assert entry.command() == [str(tmp_path / "python"), "-m", "app"]
    monkeypatch.setattr(sys, "frozen", True, raising=False)
    assert entry.command() == [str(tmp_path / "python")]


def test_a_place_that_cannot_be_written_is_said(tmp_path, monkeypatch):
    (tmp_path / "file").write_text("", encoding="utf-8")
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "file"))
    done = call("launcher")
    assert done.returncode == 2 and done.stderr.count("\n") == 1 and "Traceback" not in done.stderr


@pytest.mark.parametrize(("named", "expected"), [("/x/y", "/x/y"), ("", None), ("relative", None)])
def test_where_the_users_data_lie(named, expected):
    """Base Directory Specification: a relative path is to be ignored."""
    usual = Path.home() / ".local" / "share"
    assert install.data_folder({"XDG_DATA_HOME": named}) == (Path(expected) if expected else usual)


@pytest.mark.parametrize("system", ["win32", "darwin"])
def test_where_there_is_no_such_thing_it_says_what_to_do(system):
    done = call("launcher", before=f"import sys; sys.platform = {system!r}\n")
    assert done.returncode == 2 and done.stdout == "" and done.stderr.strip().endswith(".")
