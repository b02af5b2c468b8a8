"""Just enough of the ELF format to read which libraries a Linux library asks for.

Source: Tool Interface Standard, Executable and Linking Format, version 1.2,
and the System V ABI's 64-bit extension (`elf.h`).
"""

import struct
from pathlib import Path

PT_LOAD, PT_DYNAMIC = 1, 2
DT_NULL, DT_NEEDED, DT_STRTAB = 0, 1, 5


def needed(library: Path) -> list[str]:
    """Names of the libraries that a 64-bit little-endian library needs, in file order."""
    data = library.read_bytes()
    assert data[:6] == b"\x7fELF\x02\x01", f"{library.name} is no 64-bit little-endian ELF file"
    (table,) = struct.unpack_from("<Q", data, 32)
    size, count = struct.unpack_from("<HH", data, 54)
    segments = [struct.unpack_from("<IIQQQQQQ", data, table + i * size) for i in range(count)]
    dynamic = next(s for s in segments if s[0] == PT_DYNAMIC)
    entries = []
    for at in range(dynamic[2], dynamic[2] + dynamic[5], 16):
        tag, value = struct.unpack_from("<qQ", data, at)
        if tag == DT_NULL:
            break
        entries.append((tag, value))
    address = next(value for tag, value in entries if tag == DT_STRTAB)
    loaded = next(s for s in segments if s[0] == PT_LOAD and s[3] <= address < s[3] + s[5])
    strings = loaded[2] + address - loaded[3]
    offsets = [strings + value for tag, value in entries if tag == DT_NEEDED]
    return [data[at : data.index(b"\0", at)].decode("ascii") for at in offsets]
