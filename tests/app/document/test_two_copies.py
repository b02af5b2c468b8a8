"""Two running copies that share a journal folder and a file: neither takes the other's work, and both are offered when both die."""

import os
import signal
import subprocess
import sys
from pathlib import Path

import pytest

from app.document.leftovers import leftovers
from app.formats import headstock
from app.window.demo import demo

ROOT = Path(__file__).parents[3]
COPY = """
import sys
from pathlib import Path
from msgspec.structs import replace
from PySide6.QtCore import QCoreApplication
from app.document import Document
from app.document.journal import Journal
from app.document.leftovers import leftovers
from app.formats import headstock
application = QCoreApplication([])
folder, name = Path(sys.argv[1]), sys.argv[2]
path = folder / "head.headstock.json"
layout, seen = headstock.read_marked(path)
document, journal = Document(layout, path), Journal(folder / "journal")
document.seen = seen
for line in sys.stdin:
    word = line.strip()
    if word == "edit":
        document.apply("Rename", replace(document.layout, name=name))
        journal.keep(document)
        journal.write()
        print("kept" if not journal.trouble else journal.trouble, flush=True)
    elif word == "look":
        print(len(leftovers(folder / "journal")), flush=True)
    elif word == "changed":
        print(document.changed_elsewhere, flush=True)
    elif word == "save":
        document.save(path)
        journal.keep(document)
        print("saved", flush=True)
"""


class Copy:
    """One running copy that does what it is told."""

    def __init__(self, folder: Path, name: str) -> None:
        self.process = subprocess.Popen([sys.executable, "-c", COPY, str(folder), name], cwd=ROOT, stdin=subprocess.PIPE,
                                        stdout=subprocess.PIPE, text=True)

    def tell(self, word: str) -> str:
        self.process.stdin.write(f"{word}\n")
        self.process.stdin.flush()
        return self.process.stdout.readline().strip()

    def kill(self) -> None:
        self.process.send_signal(signal.SIGKILL)
        self.process.wait()
        self.process.stdin.close()
        self.process.stdout.close()


@pytest.mark.skipif(os.name == "nt", reason="kill -9 is for POSIX")
def test_two_copies_do_not_fight_over_a_file_or_a_journal(qapp, tmp_path):
    headstock.write(demo(), tmp_path / "head.headstock.json")
    one, two = Copy(tmp_path, "one"), Copy(tmp_path, "two")
    assert (one.tell("edit"), two.tell("edit")) == ("kept", "kept")
    assert (one.tell("look"), two.tell("look")) == ("0", "0"), "the work of a running copy is no leftover"
    assert two.tell("changed") == "False"
    assert one.tell("save") == "saved"
    assert two.tell("changed") == "True", "the second copy hears of it before it saves over it"
    assert (one.tell("edit"), two.tell("look")) == ("kept", "0")
    one.kill()
    two.kill()
    found = leftovers(tmp_path / "journal")
    assert [one.layout.name for one in found] == ["two"], "what the first had saved is in the file"
    assert headstock.read(tmp_path / "head.headstock.json").name == "one"
