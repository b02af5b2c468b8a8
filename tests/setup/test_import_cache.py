"""What a start finds compiled in one file is what Python would have found in many, or it is not used."""

import compileall
import json
import os
import py_compile
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from app.setup.places import CHECKOUT

LOAD = """
import json, os, sys
from app.setup.import_cache import ImportCache
cache = ImportCache(sys.argv[1])
try:
    from pack import one, two
    said = [one.SAID, two.SAID, one.__file__, two.__cached__, type(two.__loader__).__name__, one.tell.__code__.co_filename, sys.modules["pack"].__path__]
except ImportError as error:
    said = type(error).__name__
cache.stop()
grown = cache.grown
cache.stop()
import late
if grown and "keep" in sys.argv:
    cache.write()
print(json.dumps({"said": said, "grown": grown, "late": type(late.__loader__).__name__, "hooks": cache in sys.meta_path}))
"""


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A program of a package with two modules, and a module that is loaded after the start."""
    (tmp_path / "pack").mkdir()
    for name, text in {"pack/__init__.py": "", "pack/one.py": "SAID = 'first'\ndef tell(): pass\n", "pack/two.py": "SAID = 'other'\n", "late.py": ""}.items():
        (tmp_path / name).write_text(text, encoding="utf-8")
    return tmp_path


def start(folder: Path, *words: str, **more: str) -> dict:
    """What a start in a process of its own tells."""
    told = {name: value for name, value in os.environ.items() if name not in ("PYTHONDONTWRITEBYTECODE", "PYTHONPYCACHEPREFIX")}
    told |= {"PYTHONPATH": str(folder)} | more
    done = subprocess.run([sys.executable, "-c", LOAD, str(folder / "kept"), *words], cwd=CHECKOUT, env=told, capture_output=True, text=True)
    assert not done.stderr, done.stderr
    return json.loads(done.stdout)


def test_the_second_start_is_served_and_is_the_same(folder):
    first, second = start(folder, "keep"), start(folder, "keep")
    assert first["said"][4] == "SourceFileLoader" and first["grown"]
    assert second["said"][4] == "_Loader" and not second["grown"]
    assert first["said"][:4] + first["said"][5:] == second["said"][:4] + second["said"][5:]
    assert second["late"] == "SourceFileLoader" and not second["hooks"], "after the start Python imports alone"


def test_a_source_that_has_changed_is_compiled_anew_and_kept(folder):
    start(folder, "keep")
    (folder / "pack" / "two.py").write_text("SAID = 'something else'\n", encoding="utf-8")
    changed, after = start(folder, "keep"), start(folder)
    assert changed["said"][:2] == ["first", "something else"] and changed["grown"]
    assert after["said"][:2] == ["first", "something else"] and after["said"][4] == "_Loader" and not after["grown"]


def test_a_source_of_another_time_alone_is_not_taken_for_the_same(folder):
    start(folder, "keep")
    source = folder / "pack" / "two.py"
    source.write_text("SAID = 'OTHER'\n", encoding="utf-8")  # as long as before
    os.utime(source, (1_000_000_000, 1_000_000_000))
    assert start(folder)["said"][1] == "OTHER"


def test_a_module_that_is_gone_is_not_found(folder):
    start(folder, "keep")
    (folder / "pack" / "two.py").unlink()
    assert start(folder)["said"] == "ImportError"
    (folder / "pack" / "two").mkdir()
    (folder / "pack" / "two" / "__init__.py").write_text("SAID = 'a package now'\n", encoding="utf-8")
    assert start(folder)["said"][1] == "a package now"


def test_a_damaged_file_is_not_used(folder):
    start(folder, "keep")
    whole = (folder / "kept").read_bytes()
    blank = len(whole) // 2
    wrong_word = whole.replace(b"other", b"otjer")
    assert wrong_word != whole
    for damaged in (b"", b"\0" * 4, whole[:10], whole[:-1], whole[len(whole) // 2:], b"\xff" * 50 + whole[-4:], whole + b"more", wrong_word,
                    whole[:blank] + bytes(64) + whole[blank + 64:], whole[:20] + b"\xff" + whole[21:], bytes(len(whole))):
        (folder / "kept").write_bytes(damaged)
        found = start(folder)
        assert found["said"][:2] == ["first", "other"] and found["said"][4] == "SourceFileLoader" and found["grown"]


def test_a_damaged_file_is_written_anew(folder):
    start(folder, "keep")
    whole = (folder / "kept").read_bytes()
    (folder / "kept").write_bytes(whole.replace(b"other", b"otjer"))
    start(folder, "keep")
    assert b"otjer" not in (folder / "kept").read_bytes(), "not compared whole: the order of modules is any"
    after = start(folder)
    assert after["said"][:2] == ["first", "other"] and after["said"][4] == "_Loader"


def test_another_order_of_folders_is_looked_through_by_python_itself(folder):
    """Something of the same name may lie in the folder that comes first now."""
    start(folder, "keep")
    before = Path(shutil.copytree(folder / "pack", folder / "before" / "pack"))
    (before / "two.py").write_text("SAID = 'before'\n", encoding="utf-8")
    assert start(folder, PYTHONPATH=os.pathsep.join((str(before.parent), str(folder))))["said"][1] == "before"


def test_a_program_that_was_copied_tells_of_its_own_place(folder):
    """What Python compiled in the first place is good for the second one too, but for the name of the file in it."""
    start(folder, "keep")
    second = Path(shutil.copytree(folder, folder.parent / f"{folder.name} again"))
    for _ in range(3):
        said = start(second, "keep")["said"]
        assert [said[2], said[5]] == [str(second / "pack" / "one.py")] * 2
    assert said[4] == "_Loader"


def test_nothing_is_written_where_python_writes_nothing(folder):
    start(folder, "keep", PYTHONDONTWRITEBYTECODE="1")
    assert not (folder / "kept").exists()


def test_what_python_does_not_keep_is_no_reason_to_write_at_each_start(folder):
    """Of sources whose compiled files are known by their content there is no copy; nothing else was new."""
    compileall.compile_dir(folder, invalidation_mode=py_compile.PycInvalidationMode.CHECKED_HASH, quiet=1)
    assert start(folder, "keep")["grown"]
    assert not (folder / "kept").exists()


def test_a_file_that_cannot_be_written_leaves_nothing(folder):
    (folder / "kept").mkdir()
    assert start(folder, "keep")["said"][:2] == ["first", "other"]
    assert [path.name for path in folder.iterdir() if path.name.startswith("kept")] == ["kept"]
