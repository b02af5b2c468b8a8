"""The line that shows how far set-up is."""

import io

from app.setup.progress import Progress


class Terminal(io.StringIO):
    """A stream that says it is a terminal."""

    def isatty(self) -> bool:
        return True


def test_elsewhere_each_stage_is_one_plain_line() -> None:
    stream = io.StringIO()
    progress = Progress(stream)
    for stage in ("one", "one", "two"):
        progress.stage(stage)
        progress.tick()
    progress.close()
    assert stream.getvalue() == "Pegwright set-up: one\nPegwright set-up: two\n"


def test_on_a_terminal_one_line_is_rewritten_and_cleared() -> None:
    stream = Terminal()
    progress = Progress(stream)
    progress.stage("a long stage")
    progress.stage("short")
    progress.close()
    text = stream.getvalue()
    assert "\n" not in text
    shown = [line.rstrip() for line in text.split("\r") if line.strip()]
    assert shown == ["Pegwright set-up: a long stage (0 s)", "Pegwright set-up: short (0 s)"]
    assert text.endswith("\r")
    longest = max(len(line) for line in text.split("\r"))
    assert longest == len("Pegwright set-up: a long stage (0 s)"), "a shorter line must cover the longer one before it"


def test_without_a_console_nothing_is_shown_and_nothing_fails(monkeypatch) -> None:
    monkeypatch.setattr("sys.stderr", None)
    progress = Progress()
    progress.stage("anything")
    progress.tick()
    progress.close()
    assert not progress._terminal
