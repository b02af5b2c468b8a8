"""What is freed goes back to the system."""

import ctypes
import subprocess
import sys

import pytest

from app.setup.places import CHECKOUT

WORK = """
import psutil
{begin}
large = b"x" * (8 << 20)
del large  # on its own the library would now keep blocks of this size as it keeps small ones
blocks = [bytes([k]) * (1 << 20) for k in range(120)]
full = psutil.Process().memory_info().rss
del blocks[::2]
print((full - psutil.Process().memory_info().rss) / (1 << 20))
"""


def given_back(begin: str) -> float:
    """MB that the system has back after every other one of 120 blocks of 1 MB was freed."""
    done = subprocess.run([sys.executable, "-c", WORK.format(begin=begin)], cwd=CHECKOUT, capture_output=True, text=True, check=True)
    return float(done.stdout)


@pytest.mark.skipif(sys.platform != "linux" or not hasattr(ctypes.CDLL(None), "mallopt"), reason="the library has no such switch")
def test_holes_between_blocks_go_back_to_the_system():
    assert given_back("from app.window.running.process import give_back; give_back()") > 50.0
    assert given_back("") < 20.0, "the library does it by itself now: give_back can go"
