"""Writes a catalogue's source, Qt's XML, so that two branches merge: one message a block, sorted by its text."""

from __future__ import annotations

import re
import subprocess
from collections.abc import Iterable
from pathlib import Path
from xml.sax.saxutils import escape, unescape

import PySide6

from app.formats.saving import save_bytes
from app.languages.catalogue import CONTEXT, compiled_file, source_file
from tests.languages.collect import Message

BLOCK = re.compile(r"<source>((?:(?!<source>).)*?)</source>\s*(?:<comment>(.*?)</comment>\s*)?"
                   r"<translation[^>]*>(.*?)</translation>", re.DOTALL)
HEAD = '<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n<TS version="2.1" language="{code}" sourcelanguage="en">\n'


def kept(code: str) -> dict[Message, str]:
    """Every translation that the source holds; none for a language that is new.

    Read block by block, so that a file in which two branches were laid together is read too.
    """
    if not source_file(code).exists():
        return {}
    found: dict[Message, str] = {}
    for words, about, said in BLOCK.findall(source_file(code).read_text(encoding="utf-8")):
        message = Message(unescape(words), unescape(about))
        found[message] = unescape(said) or found.get(message, "")
    return found


def text(code: str, wanted: Iterable[Message], translated: dict[Message, str]) -> str:
    """The whole file: what is wanted, sorted, with what is translated; the rest is marked unfinished."""
    blocks = []
    for message in sorted(wanted):
        said = translated.get(message, "")
        about = f"        <comment>{escape(message.about)}</comment>\n" if message.about else ""
        mark = "" if said else ' type="unfinished"'
        blocks.append(f"    <message>\n        <source>{escape(message.text)}</source>\n{about}"
                      f"        <translation{mark}>{escape(said)}</translation>\n    </message>\n")
    return f"{HEAD.format(code=code)}<context>\n    <name>{CONTEXT}</name>\n{''.join(blocks)}</context>\n</TS>\n"


def write(code: str, wanted: Iterable[Message], translated: dict[Message, str]) -> None:
    """Write the source and compile it; whoever is broken off leaves either as it was."""
    save_bytes(source_file(code), text(code, wanted, translated).encode())
    part = compiled_file(code).with_suffix(".part")
    try:
        compile_to(code, part)
        part.replace(compiled_file(code))
    finally:
        part.unlink(missing_ok=True)


def compile_to(code: str, target: Path) -> None:
    """Compile a catalogue with the tool that comes with the toolkit."""
    folder = Path(PySide6.__file__).parent
    tool = next(found for name in ("lrelease", "lrelease.exe") if (found := folder / name).exists())
    subprocess.run([str(tool), "-silent", str(source_file(code)), "-qm", str(target)], check=True)
