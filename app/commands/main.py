"""From the words of the command line to an exit code."""

import argparse
import gc
import importlib
import os
import sys
from types import ModuleType

from app.setup import start
from app.setup.system import display_missing, ensure_window_libraries
from app.setup.trouble import SetupTrouble

from .arguments import WITHOUT_WINDOW, parse, program
from .terminal import shown

FAILED = 2
STOPPED = 130
TRACE = "PEGWRIGHT_TRACE"
"""Set this in the environment to see where in the program a fault of its own arose."""


def main_with_setup(words: list[str]) -> int:
    """Do what the words ask, after setting up what is missing; the exit code.

    Words that make no sense, files that are not there and a display that is
    not there are told before anything is fetched.
    """
    for stream in (sys.stdout, sys.stderr):
        if stream is not None:
            # A name in a script that the console cannot show must not end a check half way.
            stream.reconfigure(errors="backslashreplace")
    request = parse(words)
    try:
        sentence = _hopeless(request)
        if sentence:
            return _say(sentence)
        start.ensure(["app"])
        if request.command == "window":
            ensure_window_libraries()
    except SetupTrouble as trouble:
        return _say(str(trouble))
    except KeyboardInterrupt:
        return STOPPED
    return run(request, alone=True)


def run(request: argparse.Namespace, alone: bool = False) -> int:
    """Carry out a request in a Python that has every part; the exit code.

    Whatever goes wrong with the maker's files ends as one sentence on standard
    error and exit code 2. With `alone` the process does nothing else.
    """
    # Matrices here are small: threads that the array library keeps for large ones cost a fifth of loading it, and idle.
    os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
    if request.command != "window":
        _speak(request)  # before the rooms are loaded: their constants are said as they are loaded
    from app.formats.errors import FormatError
    from geometry.errors import GeometryError

    try:
        command = _loaded(request.command, alone)
        code = command.run(request)
        if sys.stdout is not None:
            sys.stdout.flush()
        return code
    except (FormatError, GeometryError) as error:
        return _say(str(error))
    except BrokenPipeError:
        _forget_output()
        return FAILED
    except OSError as error:
        return _say(_about_file(error))
    except KeyboardInterrupt:
        return STOPPED
    except Exception as error:
        if os.environ.get(TRACE):
            raise
        return _say(
            f"Pegwright met a fault of its own ({type(error).__name__}: {error}); "
            f"please report it with what {TRACE}=1 in the environment shows."
        )


def _loaded(name: str, alone: bool) -> ModuleType:
    """The file of a command with all that it needs.

    In a process of its own the collector of garbage is kept from that for good: what is loaded stays, and to look through it,
    while it grows and later on, takes a twentieth of a check.
    """
    if not alone:
        return importlib.import_module(f"app.commands.{name}")
    gc.disable()
    command = importlib.import_module(f"app.commands.{name}")
    gc.freeze()
    gc.enable()
    return command


def _speak(request: argparse.Namespace) -> None:
    """Say what follows in the language that was asked for, without the toolkit; in English where none was."""
    if getattr(request, "language", None):
        from app.languages.catalogue import speak

        speak(request.language)


def _hopeless(request: argparse.Namespace) -> str | None:
    """Why this request cannot succeed whatever is installed, in one sentence; None if it may."""
    from geometry.saying import say  # of the standard library alone

    named = [getattr(request, "file", None), getattr(request, "drawing", None), *getattr(request, "more", [])]
    for path in filter(None, named):
        try:
            folder, there = path.is_dir(), path.exists()
        except OSError as error:  # its folder may not be looked into, or no disk takes so long a name
            _speak(request)
            return _about_file(error, read=True)
        if folder or not there:
            _speak(request)
            return (say("{path} is a folder: name a file in it.", path=path) if folder else
                    say("There is no file {path}: check its name and folder.", path=path))
    if request.command == "window" and display_missing(os.environ):
        _speak(request)
        return say("There is no display to open a window on (neither DISPLAY nor WAYLAND_DISPLAY is set): start from a desktop, "
                   "or use a command that needs none: {named} ({program} --help tells about them).",
                   named=", ".join(WITHOUT_WINDOW), program=program())
    return None


def _about_file(error: OSError, read: bool = False) -> str:
    """Why a file cannot be written, or `read`; in English where no language is in use yet."""
    from app.formats.disk_words import why, why_unread  # of the standard library alone: it may be told before the set-up
    from geometry.saying import say

    if not error.filename:
        return say("What was asked for could not be written: {why}.", why=why(error))
    return say("{file} cannot be used: {why}.", file=error.filename, why=(why_unread if read else why)(error))


def _say(sentence: str) -> int:
    """One sentence on standard error; the exit code that goes with it."""
    print(shown(" ".join(sentence.split())), file=sys.stderr)
    return FAILED


def _forget_output() -> None:
    """Whoever read our output has gone: let nothing more be written, nor complained about at exit."""
    nowhere = os.open(os.devnull, os.O_WRONLY)
    os.dup2(nowhere, sys.stdout.fileno())
    os.close(nowhere)
