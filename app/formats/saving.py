"""The one way in which files are saved: whole or not at all."""

from __future__ import annotations

import os
import tempfile
from pathlib import Path

from app.formats.errors import FormatError


def save_bytes(path: Path, data: bytes) -> None:
    """Write beside the target, flush to disk, then rename over it.

    A new file gets the usual permissions, a replaced one keeps its own.
    FormatError when the place cannot be written; an earlier file is then untouched.
    """
    path = Path(path)
    temporary = None
    try:
        handle, temporary = tempfile.mkstemp(prefix=f".{path.name}.", dir=path.parent)
        with os.fdopen(handle, "wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        os.chmod(temporary, path.stat().st_mode & 0o777 if path.exists() else _usual_mode())
        os.replace(temporary, path)
        temporary = None
    except OSError as error:
        raise FormatError(f"{path} cannot be written: {error.strerror or error}. "
                          "Choose another folder, or make room on the disk.") from error
    finally:
        if temporary is not None and os.path.exists(temporary):
            os.unlink(temporary)


def _usual_mode() -> int:
    mask = os.umask(0)
    os.umask(mask)
    return 0o666 & ~mask
