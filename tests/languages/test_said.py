"""What a maker sees was said: found by opening the window with every said text in brackets, and in the source."""

import ast
import os
import re
import subprocess
import sys
from pathlib import Path

from tests.languages.collect import ROOT, SAYING, sources

SHOWN = {
    "GeometryError", "FormatError", "Refusal", "Snag", "Done", "Shown", "QLabel", "QPushButton", "QCheckBox", "QRadioButton",
    "QAction", "FieldRow", "Page", "Label", "Column", "Part", "Entry",
}
"""Whatever is made of these is read by a maker."""
SETTERS = {
    "setText", "setToolTip", "setStatusTip", "setWindowTitle", "setAccessibleName", "setAccessibleDescription",
    "setPlaceholderText", "setTitle", "addRow", "addMenu", "setInformativeText",
}
KEYED = {"Entry", "Snag"}
"""Those whose first word is a key."""
SENTENCE = re.compile(r"[A-Z][a-z]+ [a-z]+ ?[a-z]*|[a-z]{2,} [a-z]{2,} [a-z]{2,}")
"""Words of a sentence: two with a capital before, or three."""
KEPT = {
    "app/commands/arguments.py": "parsed before there is anything to translate with",
    "app/commands/main.py": "said before there is anything to translate with",
    "app/setup": "runs before there is anything to translate with",
    "app/window/running/fault_report.py": "read by whoever mends the program",
    "app/window/dialogs/libraries.py": "read by whoever mends the program",
}
"""Files in which literals stay as they are, and why."""


def run(code: str, **environ: str) -> str:
    done = subprocess.run([sys.executable, *code.split(" ", 1)] if code.startswith("-m ") else [sys.executable, "-c", code],
                          cwd=ROOT, capture_output=True, text=True, timeout=900,
                          env={**os.environ, "QT_QPA_PLATFORM": "offscreen", **environ})
    assert done.returncode == 0, done.stderr
    return done.stdout


def test_nothing_is_shown_that_was_not_said(tmp_path: Path) -> None:
    """Every stage, what is held, the sheets and the dialogs that need nothing else."""
    assert run("-m tests.languages.bracketed", XDG_CONFIG_HOME=str(tmp_path)).splitlines() == []


def literals(tree: ast.AST):
    """Texts given at once to something that a maker reads."""
    for node in ast.walk(tree):
        if not isinstance(node, ast.Call):
            continue
        name = node.func.id if isinstance(node.func, ast.Name) else node.func.attr if isinstance(node.func, ast.Attribute) else ""
        if name in SHOWN | SETTERS:
            first = 1 if name in KEYED else 0
            for given in (*node.args[first:], *(word.value for word in node.keywords)):
                for part in (given.body, given.orelse) if isinstance(given, ast.IfExp) else (given,):
                    if isinstance(part, ast.Constant) and isinstance(part.value, str):
                        yield node.lineno, part.value
                    elif isinstance(part, ast.JoinedStr):
                        yield node.lineno, "".join(v.value for v in part.values if isinstance(v, ast.Constant))


def test_no_sentence_stands_bare_where_a_maker_reads_it() -> None:
    bare = []
    for file in sources():
        name = file.relative_to(ROOT).as_posix()
        if any(name.startswith(kept) for kept in KEPT):
            continue
        found = literals(ast.parse(file.read_text(encoding="utf-8")))
        bare += [f"{name}:{line}: {text!r}" for line, text in found if SENTENCE.search(text)]
    assert bare == []


def test_the_toolkit_translates_nothing_by_itself() -> None:
    """One way: what is said goes through geometry/saying.py, not through tr()."""
    calls = [f"{file.relative_to(ROOT)}" for file in sources() if re.search(r"\.tr\(|\b_tr\(", file.read_text(encoding="utf-8"))]
    assert calls == [] and SAYING == "geometry.saying"
