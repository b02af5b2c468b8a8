"""Layouts without sense in the window: every stage shows each of them with its chances, and what holds a sheet back is a sentence."""

import pytest

from app.threads.background import running
from app.window.stages import STAGES
from geometry.layout import feature_ids
from tests.property.test_degenerate_derived import _ODD
from tests.waiting import until

SHOWN = ("tiny", "no tuners, no slots", "slot outside", "huge hole", "no width", "crossed slot", "empty rack")


@pytest.fixture(autouse=True)
def chances_come(monkeypatch: pytest.MonkeyPatch) -> None:
    """At once, of a few trials."""
    monkeypatch.setattr("app.window.chances.REST_MS", 1)
    monkeypatch.setattr("app.window.chances.TRIALS", 200)


def test_each_is_shown_on_every_stage(bench):
    window = bench.window
    window.show_solid(True)
    window.rooms.chances.show_on_canvas(True)
    for name in SHOWN:
        window.document.replace(_ODD[name], None)
        for stage in STAGES:
            window.set_stage(stage.key)
            window.document.hold(tuple(feature_ids(_ODD[name])[:1]) or ("outline",))
            bench.pump()
        until(lambda: window.rooms.chances.chances.fresh, "its chances are not told")
        until(lambda: not running(), "something runs beside the window without end")
        assert bench.layout is _ODD[name], name
        assert window.document.result.snags or name in ("no tuners, no slots", "no strings"), name
        window.commands.run("fit")
        bench.pump()
