"""`outline` with drawings of whole necks and with small gaps."""

import json

import ezdxf
import pytest

from tests.app.commands.calling import call, one_sentence

SIDE = [(28, -420), (21.5, 0), (43, 45), (38, 150), (20, 180)]
NECK = [*SIDE, *((-x, y) for x, y in reversed(SIDE))]


def drawn(path, corners, gap: float = 0.0):
    drawing = ezdxf.new("R2010", units=4)
    space = drawing.modelspace()
    for (x, y), to in zip(corners, [*corners[1:], corners[0]], strict=True):
        space.add_line((x, y + gap), to)
    drawing.saveas(path)
    return path


@pytest.mark.parametrize(("length", "told"), [(None, "where the straight sides of the neck end"), (190, "as you said")])
def test_the_headstock_of_a_neck_is_taken(tmp_path, length, told):
    out = tmp_path / "neck.headstock.json"
    done = call("outline", drawn(tmp_path / "neck.dxf", NECK), "--out", out, *([] if length is None else ["--nut-to-tip", str(length)]))
    assert (done.returncode, done.stderr) == (0, "") and told in done.stdout
    nodes = [node["at"] for node in json.loads(out.read_text())["outline"]["nodes"]]
    assert max(y for _, y in nodes) == pytest.approx(length or 180, abs=1e-3) and min(y for _, y in nodes) == pytest.approx(0, abs=1e-3)


@pytest.mark.parametrize(("corners", "length", "told"), [
    (SIDE[1:] + [(-x, y) for x, y in reversed(SIDE[1:])], 190, "leave --nut-to-tip out"), (NECK, 900, "does not cross the neck")])
def test_a_place_that_makes_no_sense_is_refused(tmp_path, corners, length, told):
    out = tmp_path / "neck.headstock.json"
    done = call("outline", drawn(tmp_path / "neck.dxf", corners), "--out", out, "--nut-to-tip", str(length))
    assert done.returncode == 2 and told in one_sentence(done) and not out.exists()


def test_gaps_that_the_window_closes_are_closed_here_too(tmp_path):
    done = call("outline", drawn(tmp_path / "head.dxf", SIDE[1:] + [(-x, y) for x, y in reversed(SIDE[1:])], 0.3), "--out",
                tmp_path / "head.headstock.json")
    assert done.returncode == 0 and "gaps were closed" in done.stdout
