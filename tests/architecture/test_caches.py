"""What is remembered is bounded by what it holds: huge outlines are kept a few times, whatever the number of entries."""

import ast
from pathlib import Path

ROOT = Path(__file__).parents[2]

SMALL = {
    "app/canvas/snag_marks.py": "cards with a few words' room",
    "app/canvas/solid_paint.py": "pens and brushes",
    "app/formats/letters.py": "lines of text, at most 4000 letters each, and the two fonts",
    "app/formats/pdf_out.py": "one circle",
    "app/help/pictures.py": "one drawing for each word of the trade",
    "app/help/tip.py": "pictures of tips, all of one size",
    "app/look/icons/icon.py": "signs of at most 64 points",
    "app/look/plates.py": "plates under a few words",
    "app/look/signs.py": "one sign each",
    "app/look/styles.py": "pens and brushes",
    "app/printing/page_paint.py": "outlines of letters",
    "geometry/curves/cubic.py": "one or seventeen numbers",
    "geometry/drawing/opened_out.py": "marks of the blank, an ear and the nut: a dozen each",
    "geometry/layout/slots.py": "four lines and arcs",
}
"""Files that may remember by number alone, for each entry is of one small size; why."""
FEW = 8
"""Entries that may be of any size."""


def _by_number(path: Path) -> list[str]:
    """Functions of a file that are remembered by the number of their entries, more than FEW."""
    found = []
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        for decorator in getattr(node, "decorator_list", []):
            call = decorator if isinstance(decorator, ast.Call) else None
            name = ast.unparse(call.func if call else decorator)
            if name in ("lru_cache", "cache", "functools.lru_cache", "functools.cache", "remembered_per_thread"):
                sizes = [k.value for k in call.keywords if k.arg == "maxsize"] + call.args[:1] if call else []
                bounded = len(call.args) < 2 if call else True
                most = sizes[0].value if sizes and isinstance(sizes[0], ast.Constant) else None
                if bounded and not (isinstance(most, int) and most <= FEW):
                    found.append(node.name)
    return found


def test_what_may_be_huge_is_remembered_by_size():
    files = [path for room in ("app", "geometry") for path in sorted((ROOT / room).rglob("*.py")) if path.name != "by_size.py"]
    found = {path.relative_to(ROOT).as_posix(): names for path in files if (names := _by_number(path))}
    assert set(found) == set(SMALL), {file: names for file, names in found.items() if file not in SMALL}


def test_a_cache_without_a_bound_by_size_is_seen(tmp_path):
    file = tmp_path / "a.py"
    file.write_text("@lru_cache(maxsize=64)\ndef one(): ...\n\n@lru_cache(maxsize=8)\ndef few(): ...\n\n@cache\ndef all(): ...\n\n"
                    "@remembered_by_size(64, of_loop)\ndef sized(): ...\n\n@remembered_per_thread(32, of_loop)\ndef own(): ...\n\n"
                    "@remembered_per_thread(maxsize=32)\ndef other(): ...\n")
    assert _by_number(file) == ["one", "all", "other"]
