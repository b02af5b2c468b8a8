"""Unsaved work is offered at the next start."""

from msgspec.structs import replace

from app.document.journal import Journal, leftovers
from app.window import ask
from app.window.demo import demo
from app.window.recovery import recover


def left_behind(folder):
    journal = Journal(folder)
    journal.note(replace(demo(), name="Half done"), None)
    journal.write()
    journal._lock.unlock()
    return leftovers(folder)


def test_it_comes_back_as_unsaved_work(bench, tmp_path, monkeypatch):
    bench.window.journal = Journal(tmp_path / "own", bench.window)
    found = left_behind(tmp_path)
    asked = []
    monkeypatch.setattr(ask, "recover", lambda _, text: asked.append(text) or "open")
    recover(bench.window, found)
    assert "Half done" in asked[0]
    assert bench.layout.name == "Half done"
    assert bench.window.document.unsaved
    assert leftovers(tmp_path) == []
    bench.window.journal.clear()


def test_it_can_wait_or_go(bench, tmp_path, monkeypatch):
    monkeypatch.setattr(ask, "recover", lambda *_: "later")
    recover(bench.window, left_behind(tmp_path))
    assert len(leftovers(tmp_path)) == 1
    monkeypatch.setattr(ask, "recover", lambda *_: "discard")
    recover(bench.window, leftovers(tmp_path))
    assert leftovers(tmp_path) == []
    assert bench.layout.name != "Half done"
