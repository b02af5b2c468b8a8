"""The one way in which files are saved: whole or not at all.

The steps: write a new file in the same folder, flush it to the disk, read it
back, give the earlier file a second name, rename the new one over it, name the
earlier one `….before`, flush the folder. Whichever step fails or is the last
that the machine carries out, the name holds the earlier bytes or the new ones.

What is read back comes from the disk itself where the system can be asked for
that (Linux): a stick that holds less than it says, or a drive that loses what
it took, is then found out while the earlier file is still there.

A symbolic link is followed: it stays a link, and what it names is saved. Other
names of the same file (hard links) keep the earlier bytes, for the new file is
another one on the disk. To write into the file itself would reach them too, and
a loss of power in the middle would then leave neither the old layout nor the
new one; and the names that files have besides are mostly those of a backup that
shares what did not change, which such a saving would spoil. Whoever saves tells
the maker of them (`other_names`).
"""

from __future__ import annotations

import os
import time
from collections.abc import Callable, Mapping
from contextlib import suppress
from pathlib import Path

from app.formats.disk_words import CANNOT_FLUSH, why
from app.formats.errors import FormatError, Unconfirmed
from app.formats.reading import is_file
from geometry.saying import say

BEFORE = ".before"
"""What follows the name of a file in the name of the version before it. It stands beside the file and not in a
hidden place, so that it travels with its folder and can be found and renamed without this program."""
LONGEST = 255
"""Bytes of a name on most disks; on others its letters are counted, of which there are no more."""
PART, PART_END = ".pegwright-", ".part"
"""How the name of a file begins and ends that is still being written."""
STALE_SECONDS = 3600
"""Age past which such a file was left by a program that died."""
PIECE = 1 << 20
"""Bytes read back at once."""
TRIES, PAUSE = 6, 0.04
"""How often a renaming is tried where others may hold the file for a moment, and the seconds between."""


def save_bytes(path: Path, data: bytes, keep_before: bool = False, go_on: Callable[[], None] = lambda: None) -> bool:
    """Write `data` under that name, flushed to the disk, or leave the name as it was.

    A new file gets the usual permissions, a replaced one keeps its own; a link stays a link. With `keep_before` an
    earlier file with other bytes is kept as `before(path)`; False when only that failed, True otherwise. `go_on` is called
    before the name is touched and may raise: nothing is then there but what was.
    FormatError when the place cannot be written; Unconfirmed when the bytes are in place but the folder could not be
    flushed.
    """
    path = Path(path)
    try:
        target = Path(os.path.realpath(path))
        earlier = _earlier(target)
        part = _write_part(target.parent, data, earlier)
        second = None
        try:
            second, kept = _second_name(target, data, earlier) if keep_before else (None, True)
            go_on()
            _rename(part, target, data)
            part = None
            kept = _name_before(second, target) and kept
            second = None
        finally:
            for left in (part, second):
                if left is not None:
                    _remove(left)
    except (OSError, ValueError) as error:
        raise _not_written(path, error) from error
    _confirm(path, target.parent)
    return kept


def save_files(files: Mapping[Path, bytes]) -> None:
    """Write files that belong together, so that no folder is left of old ones and new: all are on the disk before the first takes its
    name, and where one cannot take it, as that of a file that another program holds, those before it are put back. FormatError and
    Unconfirmed as for `save_bytes`, with the file that it is about."""
    made: list[tuple[Path, Path, Path, Path | None, bool]] = []
    path = Path()
    try:
        for path, data in files.items():
            target = Path(os.path.realpath(path))
            earlier = _earlier(target)
            part = _write_part(target.parent, data, earlier)
            made.append((path, target, part, _second_name(target, data, earlier)[0], earlier is None))
        for at, (path, target, part, _, _) in enumerate(made):
            try:
                _rename(part, target, files[path])
            except OSError:
                for _, named, _, second, new in made[:at]:
                    _put_back(named, second, new)
                raise
    except (OSError, ValueError) as error:
        raise _not_written(path, error) from error
    finally:
        for _, _, part, second, _ in made:
            _remove(part)
            if second is not None:
                _remove(second)
    for folder, path in {Path(os.path.realpath(path)).parent: path for path in files}.items():
        _confirm(path, folder)


def _not_written(path: Path, error: OSError | ValueError) -> FormatError:
    return FormatError(say("{path} cannot be written: {why}. Choose another place; a file that was there before is "
                           "untouched.",
                           path=path, why=why(error)))


def _confirm(path: Path, folder: Path) -> None:
    """Have the folder keep the name. Unconfirmed when it does not say so."""
    try:
        _flush_folder(folder)
    except OSError as error:
        raise Unconfirmed(say("{path} is written, but the disk did not confirm that it will keep it: {why}. Save once "
                              "more, or in another place.",
                              path=path, why=why(error))) from error


def before(path: Path) -> Path:
    """Where the version before that of a file is kept."""
    return _before(Path(os.path.realpath(path)))


def _before(target: Path) -> Path:
    """The same of a name in which no link is left. A name that would be too long with the ending is cut, and ends in what tells it from
    others that begin alike."""
    name = target.name + BEFORE
    if len(os.fsencode(name)) > LONGEST:
        end = f"-{fingerprint(os.fsencode(target.name))[:8]}{BEFORE}"
        name = os.fsencode(target.name)[:LONGEST - len(end)].decode("utf-8", "ignore") + end
    return target.with_name(name)


def other_names(path: Path) -> int:
    """How many names the file has besides this one and those that lead to it as symbolic links; 0 when that is not known."""
    try:
        return max(0, os.stat(path).st_nlink - 1)
    except (OSError, ValueError):
        return 0


def fingerprint(data: bytes) -> str:
    """What tells these bytes from all others."""
    import hashlib  # here: it brings a library of a few megabytes, which a start need not wait for

    return hashlib.sha256(data).hexdigest()


def fingerprint_of(path: Path) -> str | None:
    """The fingerprint of a file as it is now; None when it cannot be read."""
    try:
        if not is_file(path):
            return None
        import hashlib

        with open(path, "rb") as file:
            return hashlib.file_digest(file, "sha256").hexdigest()
    except (OSError, ValueError):
        return None


def sweep(folder: Path) -> None:
    """Remove what programs that died while saving left half written in a folder.

    Whether one is old is asked of the clock here and of that of the drive, which has stamped what is newest there: either may be
    hours off, and what another program is writing just now must stay. What cannot be asked is left for the next time.
    """
    with suppress(OSError):
        old = [entry for entry in os.scandir(folder) if entry.name.startswith(PART) and entry.name.endswith(PART_END)
               and time.time() - _stamped(entry) > STALE_SECONDS]
        newest = max(map(_stamped, os.scandir(folder)), default=0.0) if old else 0.0
        for entry in old:
            with suppress(OSError):
                if newest - _stamped(entry) > STALE_SECONDS:
                    os.unlink(entry.path)


def _stamped(entry: os.DirEntry) -> float:
    """When a file was last written, by the clock of its drive. OSError when it is gone."""
    return entry.stat(follow_symlinks=False).st_mtime


# ---- steps ------------------------------------------------------------------
def _earlier(target: Path) -> os.stat_result | None:
    """What is known of the file that is to be replaced, None without one. OSError when it is not to be replaced."""
    try:
        there = os.stat(target)
    except FileNotFoundError:
        return None
    if not os.path.isfile(target):
        raise IsADirectoryError(say("there is a folder or a device of that name"))
    if not there.st_mode & 0o222:
        raise PermissionError(say("the file is protected against writing"))
    return there


def _part_name() -> str:
    import secrets  # here: only who writes needs it
    return f"{PART}{secrets.token_hex(8)}{PART_END}"


def _write_part(folder: Path, data: bytes, earlier: os.stat_result | None) -> Path:
    """A new file with these bytes, on the disk and not only in its cache, and found to be the same there."""
    part = folder / _part_name()
    rights = 0o666 if earlier is None else earlier.st_mode & 0o777
    handle = os.open(part, os.O_RDWR | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0), rights)
    try:
        try:
            rest = memoryview(data)
            while rest:
                written = os.write(handle, rest)
                if written <= 0:
                    raise OSError(say("nothing more is taken there"))
                rest = rest[written:]
            _flush(handle)
            if not _holds(handle, data):
                raise OSError(say("what arrived there is not what was written"))
        finally:
            os.close(handle)
        if earlier is not None:
            _give_rights(part, earlier)
    except BaseException:
        _remove(part)
        raise
    return part


def _flush(handle: int) -> None:
    """Have the disk itself take what was written; `fsync` of macOS leaves it in the memory of the disk."""
    try:
        import fcntl
        fcntl.fcntl(handle, fcntl.F_FULLFSYNC)
    except (ImportError, AttributeError, OSError):  # another system, or a drive that knows no such thing
        os.fsync(handle)


def _holds(handle: int, data: bytes) -> bool:
    """Whether a file that was flushed holds these bytes and no others."""
    with suppress(OSError, AttributeError):
        os.posix_fadvise(handle, 0, 0, os.POSIX_FADV_DONTNEED)  # else what is read comes from memory
    os.lseek(handle, 0, os.SEEK_SET)
    at = 0
    while piece := os.read(handle, PIECE):
        if piece != data[at:at + len(piece)]:
            return False
        at += len(piece)
    return at == len(data)


def _give_rights(part: Path, earlier: os.stat_result) -> None:
    """The owner, group and permissions of the earlier file, as far as that is allowed: until then the new one has fewer."""
    if hasattr(os, "chown"):
        for owner in (earlier.st_uid, -1):
            with suppress(OSError):
                os.chown(part, owner, earlier.st_gid)
                break
    with suppress(OSError):  # some network drives keep no permissions
        os.chmod(part, earlier.st_mode & 0o777)


def _second_name(target: Path, data: bytes, earlier: os.stat_result | None) -> tuple[Path | None, bool]:
    """Another name for the file as it is now, if it is there and not the same as `data`; and whether that went well."""
    try:
        if os.stat(target).st_size == len(data) and target.read_bytes() == data:
            return None, True
        second = target.parent / _part_name()
        try:
            os.link(target, second)
        except (OSError, AttributeError):
            # Memory cards and some network drives know no second names.
            second = _write_part(target.parent, target.read_bytes(), earlier)
        return second, True
    except FileNotFoundError:
        return None, True
    except OSError:
        return None, False


def _rename(part: Path, target: Path, data: bytes) -> None:
    """The new file under its name. OSError when it is not there afterwards."""
    for left in reversed(range(TRIES)):
        try:
            os.replace(part, target)
            return
        except PermissionError:
            # What searches or guards a disk under Windows holds a new file for a moment.
            if os.name != "nt" or not left:
                raise
            time.sleep(PAUSE)
        except OSError:
            # A network drive that lost its answer does the same again, and then says that there is no such file.
            if os.path.lexists(part) or fingerprint_of(target) != fingerprint(data):
                raise
            return


def _name_before(second: Path | None, target: Path) -> bool:
    """The earlier file under its own name; whether that went well. The new file is safe whatever happens here."""
    if second is None:
        return True
    try:
        os.replace(second, _before(target))
        return True
    except OSError:
        _remove(second)
        return False


def _put_back(target: Path, second: Path | None, new: bool) -> None:
    """What had the name before: the file that has a second one, nothing where it is `new`, or the same bytes. As far as it can be
    done: that the files are not written is told in any case."""
    with suppress(OSError):
        if new:
            os.unlink(target)
        elif second is not None:
            os.replace(second, target)


def _flush_folder(folder: Path) -> None:
    """Make the renaming last; systems that cannot flush a folder do so by themselves."""
    if os.name == "nt":
        return
    try:
        handle = os.open(folder, os.O_RDONLY)
    except PermissionError:
        return
    try:
        os.fsync(handle)
    except OSError as error:
        if error.errno not in CANNOT_FLUSH:
            raise
    finally:
        os.close(handle)


def _remove(path: Path) -> None:
    with suppress(OSError):
        os.unlink(path)
