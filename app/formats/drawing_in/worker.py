"""The other process: `python -m app.formats.drawing_in.worker PATH UNIT JOIN SECONDS MEMORY_MB`.

UNIT is empty for the file's own. The answer goes to standard output as JSON, after lines that tell how far it is;
nothing else may, so anything printed by a library is sent to standard error.
"""

from __future__ import annotations

import gc
import os
import sys
import threading
import time
import warnings

from geometry.saying import LANGUAGE, say

ALONE = "--read-a-drawing"
"""The first word by which the one-file program, which is its own Python, is told to be this process."""

OUT_OF_TIME = 75
"""Exit code of a reading that used up its seconds of the processor."""


def main(arguments: list[str]) -> int:
    """Read one drawing within its limits and print the answer. 0, for a refusal is an answer too, or OUT_OF_TIME."""
    path, unit, join, seconds, memory_mb = arguments
    out = os.fdopen(os.dup(1), "wb")
    os.dup2(2, 1)
    warnings.simplefilter("ignore")
    gc.disable()  # a short life with very many things that all stay
    threading.Thread(target=_watch, args=(float(seconds),), daemon=True, name="time limit").start()
    _limit(float(seconds), int(memory_mb))
    from app.languages.catalogue import speak
    speak(os.environ.get(LANGUAGE, "en"))
    from app.formats.drawing_in.read import read_drawing
    from app.formats.drawing_in.wire import MARK, encode, encode_refusal
    from app.formats.errors import FormatError
    from geometry.errors import GeometryError

    def tell(part: float) -> None:
        out.write(MARK + b"%.3f\n" % part)
        out.flush()

    try:
        answer = encode(read_drawing(path, unit or None, float(join), tell))
    except FormatError as error:
        answer = encode_refusal(str(error))
    except GeometryError as error:
        answer = encode_refusal(say("The drawing cannot be read: {error}", error=error))
    except MemoryError:
        answer = encode_refusal(too_large(int(memory_mb)))
    except RecursionError:
        answer = encode_refusal(say("The drawing is nested too deeply to be read: ungroup it in the program that drew "
                                    "it."))
    out.write(answer)
    out.close()
    return 0


def too_large(memory_mb: int) -> str:
    """The sentence for a drawing that ran into the memory limit."""
    return say("The drawing needs more than {memory_mb} MB of memory to read: export only the outline, the slots and "
               "the holes.",
               memory_mb=memory_mb)


def _watch(seconds: float) -> None:
    """End this process when it has used so many seconds of the processor: by the clock it may wait for others as long again."""
    while (left := seconds - time.process_time()) > 0:
        time.sleep(min(0.1, left))
    os._exit(OUT_OF_TIME)


def _limit(seconds: float, memory_mb: int) -> None:
    """Limits that hold even when the program that started this one is gone; not every system has them."""
    try:
        import resource
    except ImportError:
        return
    _lower(resource, resource.RLIMIT_CPU, int(seconds) + 5)
    _lower(resource, resource.RLIMIT_AS, memory_mb * 1024 * 1024)


def _lower(resource, which: int, limit: int) -> None:
    """Set the limit, unless a lower one is in force or the system refuses it (macOS does for memory)."""
    _, hard = resource.getrlimit(which)
    if hard == resource.RLIM_INFINITY or hard > limit:
        try:
            resource.setrlimit(which, (limit, limit))
        except (ValueError, OSError):
            return


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
