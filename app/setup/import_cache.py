"""What Python has compiled of the modules that a start loads, kept together in one file.

A start loads some four hundred modules. Python looks for each in its folder,
opens the file with what it has compiled of it, and reads that. Here copies of
these files lie one behind the other in one file, which is read in one go. A copy
is used as Python uses its own file: while the source is as old and as long as it
was when it was compiled. Whatever is not found here, or has changed, is loaded as
ever; to lose the file costs nothing but time.
"""

from __future__ import annotations

import marshal
import os
import struct
import sys
import zlib
from collections.abc import Sequence
from contextlib import suppress
from importlib.machinery import ModuleSpec, SourceFileLoader
from importlib.util import MAGIC_NUMBER, cache_from_source
from types import CodeType, ModuleType

from .places import APP

_CHECKSUM = struct.Struct("<L")
"""The last bytes of the file, of all before them: one that was cut off or damaged is not read. Python itself would
execute a damaged copy, and might fail at every start, or crash."""
_UNCHECKED = MAGIC_NUMBER + bytes(4)
"""How a compiled file begins whose source is known by its time and its length, which follow: 4 bytes each."""
_HEAD = len(_UNCHECKED)


def place() -> str:
    """The file for starts of the window: where Python has what it compiled of the program."""
    return cache_from_source(str(APP / "start.py")) + "s"


class ImportCache:
    """Hands Python what is kept of the modules that it imports, from now until `stop`.

    `grown` tells then whether others were loaded too; `write` keeps these as well.
    """

    def __init__(self, place: str) -> None:
        self._place = place
        self._before = frozenset(sys.modules)
        self._known: dict[str, tuple[str, str, bool]] = {}
        """source of each module, the file with what Python compiled of it, and whether it is a package"""
        self._new: set[str] = set()
        """modules that were loaded and of which nothing was kept"""
        self._copies = _read(place)
        sys.meta_path.insert(0, self)

    @property
    def grown(self) -> bool:
        """Whether there is something new to keep."""
        return bool(self._new)

    def find_spec(self, name: str, path: Sequence[str] | None = None, target: ModuleType | None = None) -> ModuleSpec | None:
        """What Python asks of each module: where it is, with what is kept of it; None where nothing is, or the source has changed."""
        copy = self._copies.pop(name, None)
        if copy is None:
            return None
        source, cached, is_package, compiled = copy
        try:
            found = os.stat(source)
        except OSError:
            return None
        if compiled[_HEAD:_HEAD + 8] != struct.pack("<LL", int(found.st_mtime) & 0xFFFFFFFF, found.st_size & 0xFFFFFFFF):
            return None
        self._known[name] = source, cached, is_package
        # As `spec_from_file_location` makes it, which would work out the name of the compiled file of each module again.
        spec = ModuleSpec(name, _Loader(name, source, compiled), origin=source)
        spec.submodule_search_locations = [os.path.dirname(source)] if is_package else None
        spec.has_location = True
        spec.cached = cached
        return spec

    def stop(self) -> None:
        """Leave what is imported from now on to Python alone; harmless when called again."""
        if self not in sys.meta_path:
            return
        sys.meta_path.remove(self)
        self._known.update((name, copy[:3]) for name, copy in self._copies.items())  # another start may need them
        self._copies = {}
        for name in sys.modules.keys() - self._before:
            spec = getattr(sys.modules[name], "__spec__", None)
            if spec is not None and type(spec.loader) is SourceFileLoader and spec.name == name:
                self._known[name] = spec.origin, spec.cached, spec.submodule_search_locations is not None
                self._new.add(name)

    def write(self) -> None:
        """Keep all that is known now, in place of the file that was there; nothing where Python keeps nothing either."""
        if sys.dont_write_bytecode or not os.access(os.path.dirname(self._place), os.W_OK):
            return
        index, parts, at = {}, [], 0
        for name, (source, cached, is_package) in self._known.items():
            with suppress(OSError), open(cached, "rb") as file:
                compiled = file.read()
                if compiled.startswith(_UNCHECKED) and os.path.exists(source):
                    index[name] = source, cached, is_package, at, at + len(compiled)
                    parts.append(compiled)
                    at += len(compiled)
        if self._new.isdisjoint(index):  # what Python compiles at each start, or keeps in another way
            return
        new = f"{self._place}.{os.getpid()}"
        try:
            with open(new, "wb") as file:
                data = b"".join((marshal.dumps((_made_for(), at, index)), *parts))
                file.write(data + _CHECKSUM.pack(zlib.crc32(data)))
            os.replace(new, self._place)
        except OSError:  # a folder that cannot be written, a full disk
            with suppress(OSError):
                os.unlink(new)


class _Loader(SourceFileLoader):
    """Python's own loader, with the compiled code at hand."""

    def __init__(self, name: str, source: str, compiled: memoryview) -> None:
        super().__init__(name, source)
        self._compiled: memoryview | None = compiled

    def get_code(self, name: str) -> CodeType:
        """The code of the module; from the second time on, and where it was compiled in another place, as Python reads it."""
        compiled, self._compiled = self._compiled, None
        code = None if compiled is None else marshal.loads(compiled[_HEAD + 8:])
        return super().get_code(name) if code is None or code.co_filename != self.path else code


def _made_for() -> tuple:
    """What must be the same for the copies to be those that Python would find."""
    return MAGIC_NUMBER, sys.prefix, sys.pycache_prefix, tuple(sys.path[1:])


def _read(place: str) -> dict[str, tuple[str, str, bool, memoryview]]:
    """What `ImportCache` knows of each module in a file, with its compiled code; nothing where it is of no use."""
    try:
        with open(place, "rb") as file:
            data = file.read()
        end = max(0, len(data) - _CHECKSUM.size)
        if data[end:] != _CHECKSUM.pack(zlib.crc32(memoryview(data)[:end])):
            return {}
        made_for, size, index = marshal.loads(data)
        if made_for != _made_for():
            return {}
    except (OSError, EOFError, ValueError, TypeError):
        return {}
    whole = memoryview(data)[end - size:end]
    return {name: (*known, whole[begin:end]) for name, (*known, begin, end) in index.items()}
