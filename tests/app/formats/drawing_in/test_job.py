"""The import in another process: the same answer, cancelled, out of time, out of memory, crashed."""

import os
import sys
import time

import pytest

from app.formats.drawing_in import ImportJob, read_drawing, read_drawing_safely
from app.formats.drawing_in import job as job_module
from app.formats.errors import FormatError
from tests.app.formats.drawing_in import dxf_text as dxf
from tests.app.formats.drawing_in.reading import SAMPLES


def test_the_worker_gives_the_same_drawing_to_the_last_bit():
    for name in ("head-with-slots-and-holes.dxf", "head-in-millimetres.svg"):
        assert read_drawing_safely(SAMPLES / name) == read_drawing(SAMPLES / name)


def test_unit_and_tolerance_reach_the_worker(tmp_path):
    path = tmp_path / "gap.dxf"
    path.write_text(dxf.drawing(dxf.lines([(0, 0.2), (10, 0), (10, 6), (0, 6), (-0.2, 0)], closed=False)))
    found = read_drawing_safely(path, unit="cm", join=4)
    assert (found.unit, found.unit_source, len(found.loops)) == ("cm", "option", 1)


def test_a_refusal_comes_back_as_the_same_sentence(tmp_path):
    path = tmp_path / "empty.dxf"
    path.write_bytes(b"")
    for reader in (read_drawing, read_drawing_safely):
        with pytest.raises(FormatError, match="^The file is empty: save the drawing again and import that.$"):
            reader(path)


def test_a_missing_file_is_named(tmp_path):
    with pytest.raises(FormatError, match="nowhere.dxf' cannot be read: No such file"):
        read_drawing_safely(tmp_path / "nowhere.dxf")


def test_odd_names_are_no_trouble(tmp_path):
    path = tmp_path / "Kopf – 12 saitig 'neu' & --help.dxf"
    path.write_text(dxf.drawing(dxf.circle((0, 0), 50)))
    assert len(read_drawing_safely(path).loops) == 1


def test_poll_never_blocks_and_the_result_can_be_taken_when_it_is_true():
    job = ImportJob(SAMPLES / "head-in-inches.dxf", seconds=60).start()
    longest = 0.0
    while True:
        before = time.monotonic()
        done = job.poll()
        longest = max(longest, time.monotonic() - before)
        if done:
            break
        time.sleep(0.01)
    assert longest < 1.0, "far less than the reading itself, also on a machine that is busy"
    assert job.result().unit == "inch"


def slow_drawing(tmp_path):
    path = tmp_path / "slow.dxf"
    path.write_text(dxf.drawing(dxf.polyline([(i % 200, i // 200 * 0.1, 0) for i in range(100_000)])))
    return path


def test_cancelling_ends_the_worker_at_once(tmp_path):
    job = ImportJob(slow_drawing(tmp_path)).start()
    time.sleep(0.3)
    started = time.monotonic()
    job.cancel()
    assert job.poll()
    with pytest.raises(FormatError, match="cancelled"):
        job.result()
    assert time.monotonic() - started < 1
    job.cancel()


def test_the_time_limit_ends_the_worker(tmp_path):
    started = time.monotonic()
    with pytest.raises(FormatError, match="takes longer than 1 seconds"):
        read_drawing_safely(slow_drawing(tmp_path), seconds=1)
    assert time.monotonic() - started < 10


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="only Linux limits a process's memory reliably")
def test_the_memory_limit_ends_in_a_sentence(tmp_path):
    path = tmp_path / "large.dxf"
    path.write_text(dxf.drawing(dxf.circle((0, 0), 50), comment="x" * 45_000_000))
    with pytest.raises(FormatError, match="more than 400 MB of memory"):
        read_drawing_safely(path, memory_mb=400, seconds=20)


def test_a_worker_that_dies_ends_in_a_sentence(tmp_path, monkeypatch):
    fake = tmp_path / "python"
    fake.write_text("#!/bin/sh\necho no answer\n")
    fake.chmod(0o755)
    if os.name != "posix":
        pytest.skip("the stand-in for the interpreter is a shell script")
    monkeypatch.setattr(job_module.sys, "executable", str(fake))
    with pytest.raises(FormatError, match="stopped without an answer"):
        read_drawing_safely(SAMPLES / "head-in-inches.dxf")


def test_a_worker_that_cannot_start_ends_in_a_sentence(tmp_path, monkeypatch):
    monkeypatch.setattr(job_module.sys, "executable", str(tmp_path / "nothing"))
    with pytest.raises(FormatError, match="could not be started"):
        read_drawing_safely(SAMPLES / "head-in-inches.dxf")
