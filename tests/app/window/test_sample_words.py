"""The samples in another language: their words are said anew, everything that is measured stays."""

import json
import re
import subprocess
import sys
from pathlib import Path

import pytest
from msgspec.structs import replace

from app.formats import headstock
from app.formats.reading import known
from app.window.demo import in_language, samples
from app.window.sample_words import HEADS, PATTERNS, REMARKS
from geometry.edits.fields import rename
from geometry.edits.parts import FEATURE_GROUPS
from geometry.layout.generic import PATTERNS as GENERIC

FILES = sorted(samples().glob("*.json"))
ROOT = Path(__file__).parents[3]
IN_GERMAN = """
import json
import re
from app.languages.catalogue import speak
speak("de")
from app.formats import headstock
from app.formats.reading import known
from app.window.demo import in_language, samples
print(json.dumps([headstock.encode(in_language(known(file), headstock.read(file))).decode() for file in sorted(samples().glob("*.json"))]))
"""


@pytest.mark.parametrize("file", FILES, ids=lambda file: file.name)
def test_the_words_to_be_said_are_those_of_the_file(file):
    layout, stem = headstock.read(file), file.name.split(".")[0]
    assert HEADS[stem] == (layout.name, layout.about)
    assert REMARKS.get(stem, ()) == tuple(remark.text for remark in layout.book.remarks)
    about = {pattern.id: pattern.about for pattern in GENERIC} | PATTERNS
    assert all(about[pattern.id] == pattern.about for pattern in layout.patterns)
    assert in_language(known(file), layout) is layout, "in English there is nothing to say anew"


def test_in_another_language_words_change_and_nothing_else():
    done = subprocess.run([sys.executable, "-c", IN_GERMAN], cwd=ROOT, capture_output=True, text=True, encoding="utf-8", check=True)
    for file, said in zip(FILES, json.loads(done.stdout), strict=True):
        english, german = headstock.read(file), headstock.decode(said.encode())
        for group in (*FEATURE_GROUPS, "rows"):
            for one, other in zip(getattr(english, group), getattr(german, group), strict=True):
                assert one.id != other.id, "parts have German names"
                assert all(other.id in b.text for a, b in zip(english.book.remarks, german.book.remarks, strict=True)
                           if re.search(rf"\b{one.id}\b(?! slot)", a.text) and " " in one.id), one.id
                german = rename(german, group, other.id, one.id)
        for group in ("patterns", "bits", "bushes", "drills"):
            owner = (english, german) if group == "patterns" else (english.rack, german.rack)
            for one, other in zip(*(getattr(whole, group) for whole in owner), strict=True):
                assert one.id != other.id, "hardware and tools have German names"
                german = rename(german, group, other.id, one.id)
        assert german.name != english.name and german.about != english.about
        assert all(a.text != b.text and replace(a, text=b.text) == b
                   for a, b in zip(german.book.remarks, english.book.remarks, strict=True))
        assert all(a.about != b.about for a, b in zip(german.patterns, english.patterns, strict=True))
        assert replace(german, name=english.name, about=english.about, book=english.book, patterns=english.patterns) == english
        assert [replace(pattern, about="") for pattern in german.patterns] == [replace(pattern, about="") for pattern in english.patterns]
