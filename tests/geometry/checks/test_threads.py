"""Checks run beside each other: in the window, in the search for cures, in every further window."""

import subprocess
import sys
import threading

from app.setup.places import CHECKOUT
from app.window.demo import demo
from geometry.checks.scene import outline_wall
from geometry.edits.edge_places import _wall

TOGETHER = """
import threading
from app.window.demo import demo
from geometry.checks import LiveCheck, check
from geometry.edits import move_features
layout = demo()
moved = [move_features(layout, (tuner.id,), (by, 0.3)) for by in (0.5, -0.5) for tuner in layout.tuners if "face" in tuner.id]
wanted = [check(one) for one in moved]
wrong = []

def work():
    live = LiveCheck()
    for i, one in enumerate(moved * 3):
        if live.check(one) != wanted[i % len(moved)]:
            wrong.append(i)

threads = [threading.Thread(target=work) for _ in range(4)]
for thread in threads:
    thread.start()
for thread in threads:
    thread.join()
print("wrong", len(wrong))
"""


def test_what_is_prepared_for_one_thread_is_given_to_no_other():
    """The polygon library changes a prepared shape with every question; two threads at one shape end the program."""
    layout = demo()
    for made in (lambda: outline_wall(layout.outline), lambda: _wall(layout.outline, "treble")):
        found = []
        threads = [threading.Thread(target=lambda: found.append((made(), made()))) for _ in range(3)]
        for thread in threads:
            thread.start()
            thread.join()
        assert all(one is two for one, two in found), "remembered within a thread"
        assert len({id(one) for one, _ in found} | {id(made())}) == 4


def test_four_checks_at_once_end_well_and_agree():
    done = subprocess.run([sys.executable, "-c", TOGETHER], cwd=CHECKOUT, capture_output=True, text=True, timeout=900)
    assert (done.returncode, done.stdout) == (0, "wrong 0\n"), done.stderr
