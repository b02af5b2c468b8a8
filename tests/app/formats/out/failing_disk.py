"""A disk that fails at a chosen step: stands in for the `os` module inside app.formats.saving."""

from __future__ import annotations

import errno
import os

CALLS = ("open", "write", "fsync", "lseek", "read", "close", "chown", "chmod", "link", "replace", "stat", "fstat", "unlink")


class Died(BaseException):
    """The machine carries out nothing more."""


class FailingDisk:
    """Passes everything on to `os`; the call number `at` fails with `number`, or takes or gives one byte when that is "short",
    or zeros for the bytes and says nothing of it when that is "wrong".

    With "dies" that call and every later one raise Died, as if the program had been killed there: no tidying up runs.
    """

    def __init__(self, at: int, number: int | str) -> None:
        self._at, self._number = at, number
        self.calls: list[str] = []

    def __getattr__(self, name: str):
        real = getattr(os, name)
        return self._wrapped(name, real) if name in CALLS else real

    def _wrapped(self, name: str, real):
        def call(*arguments, **words):
            at = len(self.calls)
            self.calls.append(name)
            if self._number == "dies" and at >= self._at:
                raise Died
            if at != self._at:
                return real(*arguments, **words)
            if self._number == "short":
                if name == "write":
                    return real(arguments[0], bytes(arguments[1])[:1])
                return real(arguments[0], 1) if name == "read" else real(*arguments, **words)
            if self._number == "wrong":
                if name == "write":
                    return real(arguments[0], bytes(len(arguments[1])))
                return bytes(len(real(*arguments))) if name == "read" else real(*arguments, **words)
            if name == "close":
                real(*arguments)
            raise OSError(self._number, os.strerror(self._number))
        return call


ERRORS = (errno.ENOSPC, errno.EIO, errno.EACCES, "short", "wrong", "dies")
