"""What is loaded beside the window never meets what the window loads itself."""

import sys

import pytest

from app.threads.background import Background
from app.tools import Shown


@pytest.mark.parametrize("way", ["stage", "action", "line"])
def test_a_first_visit_waits_for_what_is_being_loaded(bench, tmp_path, monkeypatch, way):
    name = f"slow_to_load_{way}"
    (tmp_path / f"{name}.py").write_text("import time\ntime.sleep(0.4)\nloaded = True\n")
    monkeypatch.syspath_prepend(str(tmp_path))
    warming = bench.window.rooms._warming
    warming._rest.stop()
    warming._modules = [name]
    warming._begin()
    if way == "stage":
        bench.window.set_stage("strings")
    elif way == "line":
        bench.window._gesture(Shown(layout=bench.layout, line=((-40.0, 90.0), (40.0, 90.0))))
    else:
        bench.window.commands.run("fit")
    assert sys.modules[name].loaded


def test_nothing_is_loaded_while_something_that_may_load_works_beside_the_window(beside, bench):
    warming = bench.window.rooms._warming
    warming._rest.stop()
    warming._modules = ["not_there"]
    Background(lambda: None, bench.window).start()
    warming._begin()
    assert warming._thread is None and warming._rest.isActive()
    warming._rest.stop()
