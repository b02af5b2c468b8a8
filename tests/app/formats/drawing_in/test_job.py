"""The import in another process: the same answer, cancelled, out of time, out of memory, crashed."""

import os
import sys
import time
from collections.abc import Callable

import pytest

from app.formats.drawing_in import ImportJob, read_drawing, read_drawing_safely
from app.formats.drawing_in import job as job_module
from app.formats.errors import FormatError
from tests.app.formats.drawing_in import dxf_text as dxf
from tests.app.formats.drawing_in.reading import SAMPLES
from tests.spent import times_as_long


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
    with pytest.raises(FormatError, match="nowhere.dxf' cannot be read: it is not there"):
        read_drawing_safely(tmp_path / "nowhere.dxf")


def test_odd_names_are_no_trouble(tmp_path):
    path = tmp_path / "Kopf – 12 saitig 'neu' & --help.dxf"
    path.write_text(dxf.drawing(dxf.circle((0, 0), 50)))
    assert len(read_drawing_safely(path).loops) == 1


def test_the_result_can_be_taken_when_poll_is_true():
    job = ImportJob(SAMPLES / "head-in-inches.dxf").start()
    while not job.poll():
        time.sleep(0.01)
    assert job.result().unit == "inch"


@pytest.fixture
def standstill(tmp_path, monkeypatch):
    """The worker stands still: it neither works nor answers."""
    stands = tmp_path / "python"
    stands.write_text("#!/bin/sh\nexec sleep 1000\n")
    stands.chmod(0o755)
    monkeypatch.setattr(job_module.sys, "executable", str(stands))


@pytest.mark.skipif(os.name == "nt", reason="the stand-in for the interpreter is a shell script")
def test_poll_does_not_wait_and_cancelling_ends_the_worker(standstill):
    job = ImportJob(SAMPLES / "head-in-inches.dxf").start()
    assert not job.poll() and not job.poll()
    job.cancel()
    assert job.poll() and job._process.returncode is not None
    with pytest.raises(FormatError, match="cancelled"):
        job.result()
    job.cancel()


def slow_drawing(tmp_path):
    path = tmp_path / "slow.dxf"
    path.write_text(dxf.drawing(dxf.polyline([(i % 200, i // 200 * 0.1, 0) for i in range(100_000)])))
    return path


def test_a_reading_may_use_so_much_of_the_processor_however_busy_the_machine_is(tmp_path, monkeypatch):
    monkeypatch.setattr(job_module, "BUSY", 1000.0)
    with pytest.raises(FormatError, match="takes longer than 1 seconds"):
        read_drawing_safely(slow_drawing(tmp_path), seconds=1)


@pytest.mark.skipif(os.name == "nt", reason="the stand-in for the interpreter is a shell script")
def test_a_reading_that_only_waits_ends_by_the_clock(standstill):
    with pytest.raises(FormatError, match="takes longer than 0.1 seconds"):
        read_drawing_safely(SAMPLES / "head-in-inches.dxf", seconds=0.1)


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="only Linux limits a process's memory reliably")
def test_the_memory_limit_ends_in_a_sentence(tmp_path):
    path = tmp_path / "large.dxf"
    path.write_text(dxf.drawing(dxf.circle((0, 0), 50), comment="x" * 45_000_000))
    with pytest.raises(FormatError, match="more than 400 MB of memory"):
        read_drawing_safely(path, memory_mb=400, seconds=60)


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


def crowd(tmp_path, loops: int):
    """A plate with that many small closed squares of separate lines."""
    lines = dxf.lines([(-200, 0), (200, 0), (200, 400), (-200, 400)])
    across = round(loops ** 0.5)
    for k in range(loops):
        x, y = -190 + 380 * (k % across) / across, 10 + 380 * (k // across) / across
        lines += dxf.lines([(x, y), (x + 2, y), (x + 2, y + 2), (x, y + 2)])
    path = tmp_path / f"crowd {loops}.dxf"
    path.write_text(dxf.drawing(lines))
    return path


def test_the_progress_of_a_reading_is_told_and_never_goes_back(tmp_path):
    job = ImportJob(crowd(tmp_path, 400), unit="mm").start()
    seen = [job.progress]
    while not job.poll():
        seen.append(job.progress)
        time.sleep(0.005)
    assert len(job.result().loops) == 401
    assert seen == sorted(seen) and job.progress >= 0.65


def test_joining_and_sorting_grow_in_step_with_the_loops(tmp_path):
    """Four times the loops, in processor time: 4 for what is linear, 16 for what compares each with each."""
    def reading(loops: int) -> Callable[[], object]:
        path = crowd(tmp_path, loops)
        assert len(read_drawing(path, "mm").loops) == loops + 1
        return lambda: read_drawing(path, "mm")
    assert times_as_long(reading(1600), reading(400), 7) <= 7


def test_a_large_file_may_take_longer_and_a_missing_one_no_longer(tmp_path):
    from app.formats.drawing_in.job import MOST_SECONDS, SECONDS, allowed
    large = tmp_path / "large.dxf"
    large.write_bytes(b"0" * 3_000_000)
    assert allowed(str(large)) == pytest.approx(SECONDS + 2.8 * 10)
    assert allowed(str(tmp_path / "none.dxf")) == SECONDS
    large.write_bytes(b"0" * 40_000_000)
    assert allowed(str(large)) == MOST_SECONDS
