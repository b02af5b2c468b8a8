"""`outline` with drawings of whole necks, with small gaps, at a scale, and of several heads."""

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


@pytest.mark.parametrize("mirrored", [(), ("--mirrored",)])
@pytest.mark.parametrize("slant", ["5", "-5"])
def test_the_nut_of_a_neck_is_slanted_as_it_is_given(tmp_path, slant, mirrored):
    out = tmp_path / "neck.headstock.json"
    done = call("outline", drawn(tmp_path / "neck.dxf", NECK), "--out", out, "--nut-slant", slant, *mirrored)
    assert "a nut slanted by 5.0 degrees" in done.stdout and json.loads(out.read_text())["nut"]["slant"] == float(slant)


def test_gaps_that_the_window_closes_are_closed_here_too(tmp_path):
    done = call("outline", drawn(tmp_path / "head.dxf", SIDE[1:] + [(-x, y) for x, y in reversed(SIDE[1:])], 0.3), "--out",
                tmp_path / "head.headstock.json")
    assert done.returncode == 0 and "gaps were closed" in done.stdout


HEAD = [(21.5, 0), (43, 45), (30, 180), (-30, 180), (-43, 45), (-21.5, 0)]


def made(file) -> tuple[list[tuple[float, float]], int]:
    """The corners of the outline, and how many holes there are."""
    layout = json.loads(file.read_text())
    return [tuple(node["at"]) for node in layout["outline"]["nodes"]], len(layout.get("holes", []))


def test_a_scale_in_the_drawing_is_told_and_taken_when_it_is_given(tmp_path):
    path = drawn(tmp_path / "half.dxf", [(x / 2, y / 2) for x, y in HEAD])
    drawing = ezdxf.readfile(path)
    drawing.modelspace().add_text("SCALE 1 : 2")
    drawing.saveas(path)
    out = tmp_path / "half.headstock.json"
    done = call("outline", path, "--out", out)
    assert "The drawing says 1:2, and was read as it is drawn: at that scale the outline measures 86.0 x 180.0 mm" in done.stdout
    assert "Give --scale 1:2 if it was drawn so." in done.stdout and max(y for _, y in made(out)[0]) == pytest.approx(90)
    for more in ((), ("--unit", "mm")):
        done = call("outline", path, "--out", out, "--scale", "1:2", *more)
        assert "one unit of the drawing is 2 mm, as you said" in done.stdout and "says 1:2" not in done.stdout
        assert max(y for _, y in made(out)[0]) == pytest.approx(180)


def test_of_several_heads_another_may_be_taken_turned_and_mirrored(tmp_path):
    path = drawn(tmp_path / "two.dxf", HEAD)
    drawing = ezdxf.readfile(path)
    space = drawing.modelspace()
    space.add_lwpolyline([(x + 150, y) for x, y in HEAD], close=True)
    space.add_circle((150 + 25, 60), 5)
    drawing.saveas(path)
    out = tmp_path / "two.headstock.json"
    done = call("outline", path, "--out", out)
    assert "The drawing has 2 heads of one size, as from face and back: number 2 from the left is taken." in done.stdout and made(out)[1] == 1
    done = call("outline", path, "--out", out, "--head", "1")
    assert "number" not in done.stdout and made(out)[1] == 0
    done = call("outline", path, "--out", out, "--head", "3")
    assert done.returncode == 2 and one_sentence(done) == "The drawing has 2 heads of that size: give --head a number up to that."
    call("outline", path, "--out", out, "--turn", "180", "--mirrored")
    assert json.loads(out.read_text())["holes"][0]["at"] == pytest.approx([25, 120]), "turned to the other side and mirrored back"
