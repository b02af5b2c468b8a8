"""A sample is never written over: in whatever way its file is opened, a copy opens that is saved elsewhere."""

import pytest
from msgspec.structs import replace

from app.formats import headstock
from app.formats.reading import known
from app.window import ask
from app.window.demo import DEMO, is_sample, samples
from tests.gui.bench import Bench

SAMPLE = samples() / "six-in-line.headstock.json"
WORD = "A copy of the sample is open; the sample stays. Saving asks for a place."


def in_window(bench: Bench, path):
    assert bench.window.files.open(path)
    return bench.window


def in_another(bench: Bench, path):
    return bench.window.windows.open(path)


@pytest.mark.parametrize("way", [in_window, in_another])
@pytest.mark.parametrize("linked", [False, True])
def test_saving_an_opened_sample_asks_for_a_place(qtbot, tmp_path, monkeypatch, way, linked):
    bench, held, path = Bench(qtbot, tmp_path), SAMPLE.read_bytes(), SAMPLE
    if linked:
        path = tmp_path / "linked.headstock.json"
        path.symlink_to(SAMPLE)
    window = way(bench, path)
    if window is not bench.window:
        qtbot.addWidget(window)
    assert window.foot.said == WORD and window.document.path is None and not window.document.unsaved
    assert path not in window.files.recent() and SAMPLE not in window.files.recent()
    mine, asked = tmp_path / "mine.headstock.json", []

    def place(_, __, suggestion, ___):
        asked.append(suggestion)
        return mine

    monkeypatch.setattr(ask, "save_file", place)
    window.document.apply("Rename", replace(window.document.layout, name="Mine"))
    assert window.files.save() and window.files.save()
    assert len(asked) == 1 and str(samples()) not in asked[0]
    assert SAMPLE.read_bytes() == held and headstock.read(mine).name == "Mine" and window.document.path == mine


def test_only_what_lies_in_the_folder_of_samples_is_one(tmp_path):
    copied = tmp_path / DEMO
    copied.write_bytes((samples() / DEMO).read_bytes())
    assert not is_sample(known(copied))
    assert is_sample(known(samples() / DEMO))
    assert is_sample(known(samples() / ".." / "samples" / DEMO))
    assert not is_sample(known(samples().parent / "samples of mine" / DEMO))
