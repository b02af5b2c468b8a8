"""What is loaded beside the window never meets what the window loads itself."""

import sys

import pytest


@pytest.mark.parametrize("way", ["stage", "action"])
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
    else:
        bench.window.commands.run("fit")
    assert sys.modules[name].loaded
