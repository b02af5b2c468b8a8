"""Broken files into every reader: each ends in a layout or in one sentence, soon and in little room.

The cases run in children that the system holds to a gigabyte; a child that is
slow or dies names the case it was at.
"""

from __future__ import annotations

import json
import random
import re
import signal
import subprocess
import sys
import time
from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from pathlib import Path

from tests.endurance.mutations import mutated
from tests.spent import slowness

ROOT = Path(__file__).parents[2]
SLOWEST = 2.0
"""Seconds of the processor for one file, on the machine of `tests.spent`; it is given up after ten times as many."""
PATIENCE = 1800.0
"""Seconds by the clock for a batch, however busy the machine is."""
ROOM = 1 << 30
"""Bytes of memory for the child, beyond what it has once every reader has read a sound file."""
BATCH = 250


@dataclass
class Found:
    """What came of a job."""

    cases: int = 0
    bad: list[str] = field(default_factory=list)
    ends: Counter = field(default_factory=Counter)

    @property
    def line(self) -> str:
        """A line of numbers."""
        ways = ", ".join(f"{count} {end}" for end, count in sorted(self.ends.items()))
        return f"{self.cases} files: {ways}; {len(self.bad)} bad"


def run(folder: Path, seed: int, count: int, say: Callable[[str], None] = lambda text: None) -> Found:
    """Feed `count` files made from `seed` to the readers, in batches, each batch in a child of its own."""
    found = Found()
    for first in range(0, count, BATCH):
        many = min(BATCH, count - first)
        done = subprocess.run([sys.executable, "-m", "tests.endurance.fuzz", str(folder), str(seed), str(first), str(many)],
                              cwd=ROOT, capture_output=True, text=True, errors="replace", timeout=PATIENCE)
        lines = [line.split("\t") for line in done.stdout.splitlines()]
        found.cases += many
        found.ends.update(line[1] for line in lines if len(line) >= 2)
        found.bad += [" ".join(line) for line in lines if len(line) == 3]
        if done.returncode != 0 or len(lines) != many:
            at = first + len(lines)
            found.bad.append(f"case {at} ended the child ({done.returncode}): {done.stderr.strip()[-400:]}")
        if first // BATCH % 8 == 7:
            say(found.line)
    return found


# ---- in the child -------------------------------------------------------------
def main(folder: Path, seed: int, first: int, many: int) -> None:
    """Run some cases; a line for each: number, how it ended, and what is bad about that."""
    signal.signal(signal.SIGPROF, _late)
    readers = _readers(folder)
    for _, sound, read in readers:
        _one(read, sound(random.Random(1)) if callable(sound) else sound[0])  # brings in the libraries, which map far more than they use
    _hold_down()
    for number in range(first, first + many):
        chance = random.Random(seed * 1_000_003 + number)
        name, sound, read = readers[number % len(readers)]
        data = sound(chance) if callable(sound) else mutated(chance.choice(sound), chance)
        end, bad = _one(read, data)
        print(number, f"{name} {end}", *([f"{bad} (seed {seed})"] if bad else []), sep="\t", flush=True)


def _one(read: Callable[[bytes], object], data: bytes) -> tuple[str, str]:
    from app.formats.errors import FormatError
    from geometry.errors import GeometryError
    began = time.process_time()
    signal.setitimer(signal.ITIMER_PROF, 10 * SLOWEST)
    try:
        read(data)
        end, bad = "read", ""
    except (FormatError, GeometryError) as error:
        end, bad = "refused", _no_sentence(str(error))
    except BaseException as error:  # whatever it is, it is what this job looks for
        end, bad = "broke", f"{type(error).__name__}: {str(error)[:300]}"
    signal.setitimer(signal.ITIMER_PROF, 0.0)
    took = time.process_time() - began
    if not bad and took > SLOWEST and (took := took / slowness()) > SLOWEST:
        bad = f"took {took:.1f} s"
    return end, bad


def _no_sentence(text: str) -> str:
    """What keeps a text from being a sentence for the maker, "" when nothing does."""
    if "\n" in text.strip() or not text.strip():
        return f"not one line: {text[:200]!r}"
    if re.search(r"Traceback|object at 0x|Error\(", text):
        return f"speaks of the program: {text[:200]!r}"
    return "" if len(text) <= 1000 else f"{len(text)} characters long"


def _hold_down() -> None:
    import resource
    taken = int(re.search(r"VmSize:\s+(\d+)", Path("/proc/self/status").read_text()).group(1)) * 1024
    resource.setrlimit(resource.RLIMIT_AS, (taken + ROOM, taken + ROOM))


def _late(*_: object) -> None:
    raise TimeoutError("the file took too long")


def _readers(folder: Path) -> list[tuple[str, list[bytes], Callable[[bytes], object]]]:
    import msgspec
    from PySide6.QtCore import QSettings

    from app.document.leftovers import leftovers
    from app.formats import headstock
    from app.formats.drawing_in.read import read_drawing
    from app.formats.picture_in import grey_of, read_picture
    from app.formats.rack import decode_rack, encode_rack, starting_rack
    from app.formats.reading import real
    from app.printing import printers
    from app.window import kept
    from app.window.demo import demo
    from app.window.input import clipboard
    from app.window.running import one_program
    from geometry.book.edits import read_amount, read_minutes
    from geometry.checks import check
    from geometry.edits.clipping import clip, paste
    from geometry.errors import GeometryError
    from geometry.layout import feature_ids
    from geometry.units import parse_length
    from tests.endurance import grammar, whole

    def drawing(data: bytes) -> None:
        file = folder / "case.drawing"
        file.write_bytes(data)
        read_drawing(file)

    def layout(data: bytes) -> None:
        made = headstock.decode(data)
        assert headstock.decode(headstock.encode(made)) == made, "not the same when read again"
        check(made)

    def typed(data: bytes) -> None:
        text = data.decode("utf-8", "surrogateescape")
        refusals = []
        for read in (lambda t: parse_length(t, "mm"), read_amount, read_minutes):
            try:
                read(text)
            except GeometryError as error:
                refusals.append(error)
        if refusals:
            raise max(refusals, key=lambda error: bool(_no_sentence(str(error))))

    def picture(data: bytes) -> None:
        file = folder / "case.picture"
        file.write_bytes(data)
        grey_of(read_picture(file).jpeg)

    def left(data: bytes) -> None:
        """A journal is never refused: it is offered or left where it is."""
        place = folder / "journal"
        place.mkdir(exist_ok=True)
        (place / "case.journal.json").write_bytes(data)
        for one in leftovers(place):
            check(one.layout)

    def settings(data: bytes) -> None:
        file = folder / "settings.ini"
        file.write_bytes(data)
        found = QSettings(str(file), QSettings.Format.IniFormat)
        assert kept.one_of(found, "unit", ("mm", "in"), "mm") in ("mm", "in")
        assert kept.flag(found, "solid") in (True, False) and all(isinstance(word, str) for word in kept.words(found, "recent"))

    def pasted(data: bytes) -> None:
        """What lies on the clipboard, into the demo."""
        check(paste(demo(), clipboard.read_clip(data)))

    def message(data: bytes) -> None:
        """What another start of the program hands over."""
        for name in one_program.read_message(data) or ():
            real(name)

    def spoiled(make: Callable[[random.Random], bytes]) -> Callable[[random.Random], bytes]:
        return lambda chance: mutated(make(chance), chance) if chance.random() < 0.7 else make(chance)

    def reworked(sound: list[bytes]) -> Callable[[random.Random], bytes]:
        return lambda chance: whole.reworked(chance.choice(sound), chance)

    full = headstock.encode(whole.whole())
    layouts = [p.read_bytes() for p in sorted((ROOT / "samples").glob("*.headstock.json"))] + [full]
    drawings = [p.read_bytes() for p in sorted((ROOT / "samples" / "outlines").glob("*.*")) if p.stat().st_size < 300_000]
    racks = [encode_rack(starting_rack(unit)) for unit in ("mm", "inch")]
    entries = list(_printers(folder))
    words = [b'1 5/8" + 2 mm', b"12,5", b"3h 20", b"90 s", b"1.234,50", b"-2.5 in"]
    clips = [msgspec.json.encode(clip(one, feature_ids(one))) for one in (demo(), whole.whole())]
    messages = [json.dumps(["/a/b.headstock.json", "/\ud800"]).encode(), b"[" * 900_000]
    return [("layout", layouts, layout), ("drawing", drawings, drawing), ("rack", racks, decode_rack),
            ("drawing", drawings, drawing), ("printer", entries, printers.decode), ("typed", words, typed),
            ("layout", layouts, layout), ("svg", grammar.svg, drawing), ("dxf", grammar.dxf, drawing),
            ("picture", spoiled(grammar.picture), picture), ("picture", spoiled(grammar.picture), picture),
            ("journal", spoiled(lambda chance: grammar.journal(chance.choice(layouts), chance)), left),
            ("layout", lambda chance: grammar.head(chance, chance.choice(layouts)), layout),
            ("layout", reworked([full, *layouts]), layout), ("rack", reworked(racks), decode_rack), ("printer", reworked(entries), printers.decode),
            ("layout", reworked([full]), layout), ("clip", reworked(clips), pasted), ("clip", clips, pasted), ("message", messages, message),
            ("settings", [b"[General]\nunit=mm\nsolid=true\nrecent=/a, /b\ngeometry=@ByteArray(\\x1\\xd9)\n"], settings)]


def _printers(folder: Path) -> Iterator[bytes]:
    from app.printing.correction import Correction
    from app.printing.printers import keep_correction
    file = folder / "printers.json"
    keep_correction("front room", "A4", Correction(across=1.004, along=0.998), file)
    yield file.read_bytes()


if __name__ == "__main__":
    main(Path(sys.argv[1]), *map(int, sys.argv[2:5]))
