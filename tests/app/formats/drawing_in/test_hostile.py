"""Files that are broken or built to hurt: one clear sentence, within 10 seconds and 1 GiB, from the worker process."""

import gzip
import io
import random
import zlib

import ezdxf
import numpy as np
import pytest

from app.formats.drawing_in import read_drawing_safely
from app.formats.errors import FormatError
from tests.app.formats.drawing_in import dxf_text as dxf
from tests.app.formats.drawing_in.reading import areas, read
from tests.spent import within

SVG = '<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="100mm" height="100mm" viewBox="0 0 100 100">'


def refusal(content: str | bytes, suffix: str = ".dxf") -> str:
    """The sentence with which a file is refused, in this process."""
    with pytest.raises(FormatError) as caught:
        read(content, suffix)
    return sentence(caught.value)


def sentence(error: FormatError) -> str:
    text = str(error)
    assert text.endswith(".") and text[0].isupper() and "\n" not in text and len(text) < 400
    assert not any(word in text for word in ("Traceback", "Error", "ezdxf", "expat", "object at", "None"))
    return text


@pytest.mark.parametrize("content,why", [
    (b"", "empty"), (b"\n \n", "empty"), (bytes(5000), "empty"), (b"AC1032\x00\x00\x00\x00\x00" + bytes(range(256)) * 9, "DWG"),
    (gzip.compress(b"0\nSECTION\n" * 99, mtime=0), "gzip"), (b"PK\x03\x04" + bytes(range(256)), "zip"), (b"\x89PNG\r\n\x1a\n" + bytes(range(256)), "picture"),
    (b"\xff\xd8\xff\xe0" + bytes(range(256)), "picture"), (b"%PDF-1.7\n%\xe2\xe3\n1 0 obj\n", "PDF"), (b"%!PS-Adobe-3.0\n", "PostScript"),
    (zlib.compress(b"x" * 99), "binary|neither"), (b"BZh91AY&SY" + bytes(range(256)), "bzip2"), (random.Random(1).randbytes(9000), "binary data"),
    (b"just some words\nover two lines\n", "neither"), (b"{\"a\": 1}", "neither"), (b"0\n0\n0\n", "neither")])
def test_what_is_no_drawing_is_named(content, why):
    text = refusal(content)
    assert any(w in text for w in why.split("|"))


def test_a_damaged_binary_drawing_is_refused():
    stream = io.BytesIO()
    ezdxf.new("R2000").write(stream, fmt="bin")
    signature = stream.getvalue()[:22]
    assert "damaged" in refusal(signature + random.Random(2).randbytes(4000))
    assert "damaged" in refusal(stream.getvalue()[:3000])


@pytest.mark.parametrize("seed", range(12))
def test_random_damage_ends_in_a_drawing_or_one_sentence(seed):
    chance = random.Random(seed)
    text = bytearray(dxf.drawing(dxf.polyline([(0, 0, 0), (90, 0, 0.4), (90, 70, 0)]) + dxf.insert("B", turn=20) + dxf.ellipse((0, 0), (40, 0), 0.5),
                                 blocks=dxf.block("B", dxf.circle((0, 0), 30))).encode())
    for _ in range(25):
        text[chance.randrange(len(text))] = chance.randrange(32, 127)
    try:
        read(bytes(text), unit="mm")
    except FormatError as error:
        sentence(error)


@pytest.mark.parametrize("seed", range(12))
def test_random_damage_to_an_svg_ends_in_a_drawing_or_one_sentence(seed):
    chance = random.Random(seed)
    text = bytearray((SVG + '<g transform="rotate(30)"><path d="M0 0C5 5 9 9 30 0A5 5 0 0 1 9 70Z"/><use href="#a"/><rect id="a" width="50%" height="9mm"'
                      ' style="fill:red"/></g><style>.a{fill:none}</style></svg>').encode())
    for _ in range(5):
        text[chance.randrange(200, len(text))] = chance.randrange(32, 127)
    try:
        read(bytes(text), ".svg", unit="mm")
    except FormatError as error:
        sentence(error)


def test_blocks_in_a_circle_are_refused():
    blocks = dxf.block("A", dxf.insert("B")) + dxf.block("B", dxf.line((0, 0), (1, 1)) + dxf.insert("a"))
    assert "contains itself" in refusal(dxf.drawing(dxf.insert("A"), blocks=blocks))


def test_blocks_too_deep_are_refused():
    blocks = dxf.block("N0", dxf.line((0, 0), (9, 9))) + "".join(dxf.block(f"N{i}", dxf.insert(f"N{i - 1}")) for i in range(1, 300))
    assert "deep" in refusal(dxf.drawing(dxf.insert("N299"), blocks=blocks))
    in_order = "".join(dxf.insert(f"N{i}") for i in range(300))
    assert "deep" in refusal(dxf.drawing(in_order, blocks=blocks))


def test_an_svg_that_clones_itself_is_refused():
    assert "inside that same shape" in refusal(SVG + '<g id="a"><use href="#b"/></g><g id="b"><use href="#a"/></g></svg>', ".svg")
    assert "inside that same shape" in refusal(SVG + '<use id="a" href="#a"/></svg>', ".svg")


def test_groups_too_deep_are_refused():
    assert "deep" in refusal(SVG + "<g>" * 20000 + "</g>" * 20000 + "</svg>", ".svg")


def test_entities_in_entities_are_refused_and_the_harmless_ones_work():
    bomb = "".join(f'<!ENTITY l{i} "{f"&l{i - 1};" * 10}">' for i in range(1, 12))
    assert "entities" in refusal(f'<!DOCTYPE svg [<!ENTITY l0 "lol">{bomb}]>{SVG}<title>&l11;</title></svg>', ".svg")
    quadratic = f'<!DOCTYPE svg [<!ENTITY a "{"x" * 50000}">]>{SVG}<path id="{"&a;" * 20000}"/></svg>'
    assert "entities" in refusal(quadratic, ".svg")


def test_files_elsewhere_are_never_opened(tmp_path):
    secret = tmp_path / "secret.txt"
    secret.write_text("M0 0H90V90Z")
    text = (f'<!DOCTYPE svg [<!ENTITY x SYSTEM "{secret.as_uri()}">]>{SVG}<path d="&x;"/><use href="{secret.as_uri()}#a"/>'
            '<rect width="90" height="80"/></svg>')
    try:
        assert areas(read(text, ".svg")) == pytest.approx([7200])
    except FormatError as error:
        sentence(error)


def use_bomb() -> str:
    rows = "".join(f'<g id="u{i}">{f"<use href=&quot;#u{i - 1}&quot;/>" * 10}</g>'.replace("&quot;", '"') for i in range(1, 13))
    return SVG + f'<defs><rect id="u0" width="9" height="9"/>{rows}</defs><use href="#u12"/></svg>'


BOMBS = {
    "ten million shapes by blocks": (".dxf", lambda: dxf.drawing(dxf.insert("B7"), blocks=dxf.block("B0", dxf.line((0, 0), (9, 9))) + "".join(
        dxf.block(f"B{i}", dxf.insert(f"B{i - 1}") * 10) for i in range(1, 8)))),
    "nine hundred million shapes by an array": (".dxf", lambda: dxf.drawing(
        dxf.insert("B", array=(30000, 30000, 1, 1)), blocks=dxf.block("B", dxf.circle((0, 0), 3)))),
    "a trillion shapes by clones": (".svg", use_bomb),
    "a path of three million points": (".svg", lambda: SVG + '<path d="M0 0' + "L1 2 3 4" * 750_000 + 'Z"/></svg>'),
    "two hundred thousand elements": (".svg", lambda: SVG + '<rect width="9" height="9"/>' * 200_000 + "</svg>"),
    "a tangle of crossing lines": (".dxf", lambda: dxf.drawing("".join(
        dxf.line((chance.uniform(0, 200), chance.uniform(0, 200)), (chance.uniform(0, 200), chance.uniform(0, 200))) for _ in range(3000)))
        if (chance := random.Random(5)) else ""),
    "a polyline of two hundred thousand corners": (".dxf", lambda: dxf.drawing(dxf.polyline(
        [(i % 200, i // 200 * 0.1, 0) for i in range(200_000)]))),
    "a file beyond the size limit": (".svg", lambda: SVG + "<!--" + "x" * 60_000_000 + "--></svg>"),
}


@pytest.mark.parametrize("name", BOMBS)
def test_bombs_end_in_time_with_a_drawing_or_one_sentence(name, tmp_path):
    """Three seconds here instead of the usual eight, so that the suite stays quick; `test_job` holds the limit itself."""
    suffix, content = BOMBS[name]
    path = tmp_path / f"bomb{suffix}"
    path.write_text(content())
    try:
        read_drawing_safely(path, "mm", seconds=3)
    except FormatError as error:
        sentence(error)


@pytest.mark.parametrize("body", [
    '<path d="M0 0L' + "1 2 " * 10_000_000 + 'Z"/>', '<polyline points="' + "1 2 " * 400_000 + '"/>',
    ('<polygon points="' + "1 2 9 4 " * 50 + '"/>') * 5_000,
    '<defs><polygon id="a" points="' + "1 2 9 4 " * 1000 + '"/></defs>' + '<use href="#a"/>' * 400], ids=["a path", "a polyline", "polygons", "clones"])
def test_millions_of_points_are_counted_and_refused(body):
    with within(8):
        assert "more than 300,000 points" in refusal(f"{SVG}{body}</svg>", ".svg")


def test_polylines_repeated_into_millions_of_corners_are_refused():
    blocks = dxf.block("B", dxf.polyline([(i % 100, i // 100, 0) for i in range(1000)]))
    assert "more than 300,000 points" in refusal(dxf.drawing(dxf.insert("B", array=(20, 20, 200, 200)), blocks=blocks))


@pytest.mark.parametrize("path", ["M10 10 H60 L10 10 Z", "M10 10 L60 10 L60 10 L10 10", "M0 0 A 5 5 0 0 1 10 0 A 5 5 0 0 0 0 0 Z"])
def test_a_line_that_only_goes_there_and_back_leaves_nothing_and_is_said(path):
    assert "crosses itself" in refusal(f'{SVG}<path d="{path}"/></svg>', ".svg")


@pytest.mark.parametrize("broken", ["nan", "inf", "1e300", "-1e300", "1e-300"])
@pytest.mark.parametrize("place", range(7))
def test_an_arc_with_broken_numbers_is_left_out_or_refused(place, broken):
    numbers = ["5", "5", "0", "0", "1", "9", "70"]
    numbers[place] = broken
    try:
        assert areas(read(f'{SVG}<rect width="90" height="80"/><path transform="scale(1,2)" d="M0 0A{" ".join(numbers)}Z"/></svg>', ".svg"))
    except FormatError as error:
        sentence(error)


@pytest.mark.parametrize("array", [None, (2, 3, 10.0, 10.0)])
def test_a_block_whose_plane_has_no_direction_is_left_out_and_named(array):
    frame = dxf.polyline([(0, 0, 0), (90, 0, 0), (90, 150, 0), (0, 150, 0)])
    broken = dxf.insert("B", array=array, extrusion_z=0)
    found = read(dxf.drawing(frame + dxf.insert("B") + broken, blocks=dxf.block("B", dxf.circle((40, 40), 10))))
    assert sorted(areas(found)) == pytest.approx([100 * np.pi, 90 * 150], rel=1e-6)
    assert "Left out: 1 damaged block." in found.warnings


def test_a_small_file_cannot_repeat_itself_into_a_huge_drawing():
    array = dxf.insert("B", array=(70, 100, 3, 3))
    assert "repeat" in refusal(dxf.drawing(array, blocks=dxf.block("B", dxf.circle((0, 0), 1))))
    rows = "".join(f'<g id="u{i}">{f"<use href=&quot;#u{i - 1}&quot;/>" * 10}</g>'.replace("&quot;", '"') for i in range(1, 5))
    assert "repeat" in refusal(f'{SVG}<defs><rect id="u0" width="9" height="9"/>{rows}</defs><use href="#u4"/></svg>', ".svg")


def test_a_block_of_many_shapes_is_read_when_the_file_writes_them_out():
    many = "".join(dxf.circle((x, y), 1) for x in range(0, 240, 4) for y in range(0, 340, 4))
    assert len(read(dxf.drawing(dxf.insert("B"), blocks=dxf.block("B", many))).loops) == 5100


def test_a_drawing_of_a_landscape_is_refused_and_one_of_a_hall_is_read():
    """Five hundred circles: 100 km across they would be followed by millions of chords, 20 m across they are read."""
    def circles(size: float) -> str:
        return dxf.drawing("".join(dxf.circle((size * (i % 25) / 25, size * (i // 25) / 25), size / 60) for i in range(500)))
    assert "too long" in refusal(circles(1e8))
    assert len(read(circles(2e4)).loops) == 500


@pytest.mark.parametrize("side", ["1e-300", "1e-200", "1e-14"])
def test_a_page_that_blows_its_drawing_up_beyond_all_bounds_is_not_taken_at_its_word(side):
    """One unit would be up to 1e+302 mm: the curve's own numbers are ordinary, what they come to is not."""
    text = (f'<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 {side} {side}">'
            '<path d="M0 0 C 10 20 30 20 40 0 Z"/></svg>')
    found = read(text, ".svg")
    assert found.instead is not None and not found.unit_certain and max(found.size_mm) < 1400 and "e+" in found.warnings[0]
    with pytest.raises(FormatError, match="mm to one unit the drawing is too large to be worked out: set its unit"):
        read(text, ".svg", unit=str(100 / float(side)))


def test_a_tangle_of_very_many_crossings_is_refused_at_once():
    chance = random.Random(5)
    def tangle(count: int) -> str:
        return dxf.drawing("".join(dxf.line((chance.uniform(0, 200), chance.uniform(0, 200)), (chance.uniform(0, 200), chance.uniform(0, 200)))
                                   for _ in range(count)))
    with within(2):
        assert "cross one another in more than 25,000 places" in refusal(tangle(1500))
    assert len(read(tangle(60)).loops) == 1


@pytest.mark.parametrize("far", [1e5, 1e7, 9e8, 1e12, 1e300])
def test_huge_coordinates_end_in_a_drawing_or_one_sentence(far):
    """Far from the origin, or between the origin and there; in every unit."""
    there = dxf.polyline([(far, far, 0), (far + 90, far, 0.4), (far + 90, far + 70, 0)])
    across = dxf.polyline([(0, 0, 0.3), (far, 0, 0.4), (far, far, 0)]) + dxf.circle((0, 0), far) + dxf.ellipse((0, 0), (far, 0), 0.5)
    for text in (there, across, there + across):
        for unit in (4, 6, 7):  # mm, m, km
            with within(2):
                try:
                    found = read(dxf.drawing(text, units=unit))
                    assert found.loops or found.open
                except FormatError as error:
                    sentence(error)
