"""Files made by grammar: each is nearly a drawing, a picture or a journal, and wrong in a way that mutations seldom hit."""

from __future__ import annotations

import io
import json
import math
import random

from PIL import Image

ODD = ("0", "-0", "1e300", "-1e300", "1e-300", "nan", "inf", "1e999", "99999999999999999999", "", " ", "1,5", "12mm", "5%", "--1", "1e", ".", "+")


def head(chance: random.Random, layout: bytes) -> bytes:
    """A layout with another outline, or another first slot, of up to twenty thousand nodes: smooth, a saw, a tangle or nearly one."""
    record, count = json.loads(layout), round(math.exp(chance.uniform(math.log(5), math.log(20_000))))
    tooth, stray = chance.choice((0.0, 0.0, 0.03, 1.5)), chance.choice((0.0, 0.0, 0.02, 3.0, 50.0))
    skip = chance.choice((1, 1, 1, 2, 7, count // 2))
    nodes = []
    for i in range(count):
        turn, far = 2 * math.pi * skip * i / count, 1 + tooth * (i % 2) / 40
        nodes.append({"at": [40 * far * math.cos(turn) + chance.uniform(-stray, stray), 90 + 95 * far * math.sin(turn) + chance.uniform(-stray, stray)]})
        if chance.random() < 0.01:
            nodes[-1] |= chance.choice(({"bulge": chance.uniform(-2, 2)}, {"handles": [[chance.uniform(-60, 60) for _ in "xy"] for _ in "ab"]}))
    if record["slots"] and chance.random() < 0.2:
        record["slots"][0]["shape"] = {"kind": "drawn", "loop": {"nodes": nodes[:2000]}}
    else:
        record["outline"] = {"nodes": nodes}
    return json.dumps(record).encode()


def number(chance: random.Random) -> str:
    return f"{chance.uniform(-50, 150):.3f}" if chance.random() < 0.93 else chance.choice(ODD)


def numbers(chance: random.Random, count: int) -> str:
    return chance.choice((" ", ",", " , ")).join(number(chance) for _ in range(count))


def svg(chance: random.Random) -> bytes:
    """An SVG of shapes, groups, clones, styles and transforms."""
    ids = [f"n{i}" for i in range(6)]
    return (f'<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" '
            f'width="{number(chance)}{chance.choice(("mm", "", "in", "%", "em"))}" height="100mm" viewBox="{numbers(chance, 4)}">'
            + "".join(_element(chance, ids, 0) for _ in range(chance.randrange(1, 12))) + "</svg>").encode()


def _element(chance: random.Random, ids: list[str], depth: int) -> str:
    about = f'id="{chance.choice(ids)}" ' if chance.random() < 0.3 else ""
    if chance.random() < 0.3:
        about += f'transform="{_transform(chance)}" '
    if chance.random() < 0.3:
        about += chance.choice(('style="fill:none;stroke:#000"', 'style="display:none"', 'class="a"', 'stroke="red" fill="none"', 'style=";;:"')) + " "
    kind = chance.randrange(10)
    if kind == 0 and depth < 5:
        return f"<g {about}>{''.join(_element(chance, ids, depth + 1) for _ in range(chance.randrange(4)))}</g>"
    if kind == 1:
        return f'<use {about}xlink:href="#{chance.choice(ids)}" x="{number(chance)}" y="{number(chance)}"/>'
    if kind == 2:
        return f'<rect {about}x="{number(chance)}" y="{number(chance)}" width="{number(chance)}" height="{number(chance)}" rx="{number(chance)}"/>'
    if kind == 3:
        return f'<ellipse {about}cx="{number(chance)}" cy="{number(chance)}" rx="{number(chance)}" ry="{number(chance)}"/>'
    if kind == 4:
        return f'<{chance.choice(("polyline", "polygon"))} {about}points="{numbers(chance, chance.randrange(0, 9))}"/>'
    if kind == 5 and depth < 5:
        return f"<symbol {about}>{_element(chance, ids, depth + 1)}</symbol>"
    return f'<path {about}d="{"".join(_command(chance) for _ in range(chance.randrange(1, 12)))}"/>'


def _transform(chance: random.Random) -> str:
    kind, count = chance.choice((("matrix", 6), ("translate", 2), ("scale", 2), ("rotate", 1), ("rotate", 3), ("skewX", 1), ("spin", 2)))
    return f"{kind}({numbers(chance, count if chance.random() < 0.9 else count + 1)})"


def _command(chance: random.Random) -> str:
    letter, count = chance.choice((("M", 2), ("m", 2), ("L", 2), ("l", 4), ("H", 1), ("v", 1), ("C", 6), ("c", 6), ("S", 4), ("Q", 4), ("t", 2), ("Z", 0), ("z", 0)))
    if chance.random() < 0.15:
        return f"A{number(chance)} {number(chance)} {number(chance)} {chance.randrange(3)} {chance.randrange(2)} {numbers(chance, 2)}"
    return letter + numbers(chance, count if chance.random() < 0.95 else count + 1)


def dxf(chance: random.Random) -> bytes:
    """A DXF of shapes and blocks that may hold one another, with group codes that are missing, doubled or of the wrong kind."""
    names = [f"B{i}" for i in range(4)]
    blocks = "".join(_pairs((0, "BLOCK"), (2, name), (10, "0"), (20, "0")) + "".join(
        _shape(chance, names) for _ in range(chance.randrange(3))) + _pairs((0, "ENDBLK")) for name in names)
    shapes = "".join(_shape(chance, names) for _ in range(chance.randrange(1, 10)))
    head = _pairs((9, "$INSUNITS"), (70, chance.choice(("4", "1", "0", "99", "x"))))
    return (_section("HEADER", head) + _section("BLOCKS", blocks) + _section("ENTITIES", shapes) + _pairs((0, "EOF"))).encode()


def _pairs(*pairs: tuple[int, str]) -> str:
    return "".join(f"{code}\n{value}\n" for code, value in pairs)


def _section(name: str, body: str) -> str:
    return _pairs((0, "SECTION"), (2, name)) + body + _pairs((0, "ENDSEC"))


def _shape(chance: random.Random, names: list[str]) -> str:
    kind, codes = chance.choice((
        ("LINE", (10, 20, 11, 21)), ("CIRCLE", (10, 20, 40)), ("ARC", (10, 20, 40, 50, 51)), ("ELLIPSE", (10, 20, 11, 21, 40, 41, 42)),
        ("LWPOLYLINE", (90, 70, 10, 20, 42, 10, 20, 42, 10, 20, 42)), ("INSERT", (10, 20, 41, 42, 43, 50, 70, 71, 44, 45)),
        ("SPLINE", (70, 71, 72, 73, 40, 40, 40, 40, 40, 40, 40, 40, 10, 20, 10, 20, 10, 20, 10, 20)),
        ("POINT", (10, 20)), ("SOLID", (10, 20, 11, 21, 12, 22, 13, 23)), ("TEXT", (10, 20, 40, 1)), ("HATCH", (10, 20, 70, 91, 92, 93))))
    pairs = [(code, number(chance) if code < 60 or code > 99 else str(chance.choice((0, 1, 2, 3, 4, 8, -1, 70000)))) for code in codes]
    if chance.random() < 0.15:
        pairs.pop(chance.randrange(len(pairs)))
    if kind == "INSERT":
        pairs.insert(0, (2, chance.choice(names)))
    return _pairs((0, kind), (8, chance.choice(("0", "outline", "\u00e4"))), *pairs)


KINDS = ("PNG", "JPEG", "BMP", "TIFF", "GIF", "WEBP")


def picture(chance: random.Random) -> bytes:
    """A small sound picture of any kind, depth and direction."""
    size = (chance.randrange(1, 60), chance.randrange(1, 60))
    mode = chance.choice(("L", "RGB", "RGBA", "P", "1", "CMYK", "I;16", "F"))
    kind = chance.choice(KINDS)
    made = Image.new("RGB", size, (chance.randrange(256), 80, 10)).convert(mode if mode not in ("I;16", "F") else "L")
    if mode in ("I;16", "F"):
        made, kind = made.convert("I" if mode == "F" else "I;16"), "TIFF" if mode == "F" else "PNG"
    exif = Image.Exif()
    exif[0x0112] = chance.randrange(0, 12)
    out = io.BytesIO()
    for saved in (made, made.convert("RGB"), made.convert("L").convert("RGB")):
        try:
            out = io.BytesIO()
            saved.save(out, kind, exif=exif)
            break
        except (OSError, ValueError, TypeError):
            continue
    return out.getvalue()


def journal(layout: bytes, chance: random.Random) -> bytes:
    """What a program that died left behind."""
    return json.dumps({"path": chance.choice((None, "/a/b.headstock.json", "", 5)), "seen": chance.choice((None, "0" * 64, 1)),
                       "layout": layout.decode()}).encode()
