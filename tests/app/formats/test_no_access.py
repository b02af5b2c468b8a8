"""No document makes the program open another file, connect to a place or start a program."""

import base64
import json
import os
import subprocess
import sys
from pathlib import Path

from tests.app.formats.drawing_in import dxf_text as dxf

ROOT = Path(__file__).parents[3]
SAMPLE = json.loads((ROOT / "samples" / "twelve-string-mixed.headstock.json").read_text(encoding="utf-8"))
EPS = b"%!PS-Adobe-3.0 EPSF-3.0\n%%BoundingBox: 0 0 90 90\n%%EndComments\n(secret) (r) file\nshowpage\n%%EOF\n"


def svg(body: str, before: str = "") -> str:
    return (f'<?xml version="1.0"?>{before}<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" '
            f'xmlns:xi="http://www.w3.org/2001/XInclude" width="100mm" height="100mm" viewBox="0 0 100 100">'
            f'<rect width="90" height="80" fill="none" stroke="black"/>{body}</svg>')


def files(folder: Path) -> dict[str, str | bytes]:
    """Hostile files of every kind that is read, each pointing at a secret file, or at a place in the net."""
    secret = folder.parent / "secret.txt"
    secret.write_text("M0 0H90V90Z")
    here, there = secret.as_uri(), "http://127.0.0.1:9/secret"
    made: dict[str, str | bytes] = {"a warming up.svg": svg(""), "a warming up.dxf": dxf.drawing(dxf.circle((0, 0), 30))}
    for name, place in (("file", here), ("net", there), ("share", "//127.0.0.1/share/secret")):
        made |= {
            f"image {name}.svg": svg(f'<image xlink:href="{place}" width="9" height="9"/><image href="{place}" width="9" height="9"/>'),
            f"use {name}.svg": svg(f'<use xlink:href="{place}#a"/><use href="{place}"/>'),
            f"entity {name}.svg": svg('<path d="&x;"/>', f'<!DOCTYPE svg [<!ENTITY x SYSTEM "{place}"><!ENTITY % p SYSTEM "{place}">%p;]>'),
            f"doctype {name}.svg": svg("", f'<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "{place}">'),
            f"sheet {name}.svg": svg(f'<style>@import url("{place}"); @font-face{{font-family:a;src:url({place})}} rect{{fill:url({place}#a)}}</style>',
                                     f'<?xml-stylesheet type="text/css" href="{place}"?>'),
            f"include {name}.svg": svg(f'<xi:include href="{place}" parse="text"/><script href="{place}"/><a href="{place}"><path d="M0 0H9"/></a>'),
            f"filter {name}.svg": svg(f'<filter id="f"><feImage href="{place}"/></filter><rect width="9" height="9" filter="url(#f)" '
                                      f'style="background:url({place})"/><foreignObject><iframe src="{place}"/></foreignObject>'),
            f"xref {name}.dxf": dxf.drawing(dxf.circle((0, 0), 30) + dxf.insert("X"), blocks=f"0\nBLOCK\n2\nX\n70\n4\n10\n0\n20\n0\n1\n{place}\n0\nENDBLK\n"),
            f"image {name}.dxf": dxf.drawing(dxf.circle((0, 0), 30) + f"0\nIMAGE\n8\n0\n340\nFF\n10\n0\n20\n0\n0\nIMAGEDEF\n5\nFF\n1\n{place}\n"
                                             + f"0\nPDFUNDERLAY\n8\n0\n340\nFE\n0\nPDFDEFINITION\n5\nFE\n1\n{place}\n0\nTEXT\n8\n0\n1\n{place}\n7\nS\n"),
            f"words {name}.headstock.json": json.dumps(SAMPLE | {"name": place, "about": f'<img src="{place}">'}),
        }
    picture = {"jpeg": base64.b64encode(EPS).decode(), "width": 90, "height": 90, "place": [1, 0, 0, 0, 1, 0, 0, 0, 1]}
    made["eps in it.headstock.json"] = json.dumps(SAMPLE | {"picture": picture})
    made |= {f"eps.{ending}": EPS for ending in ("eps", "jpg", "png", "tif")}
    made["vector.png"] = svg(f'<image href="{here}"/>')
    return made


def test_no_document_opens_connects_or_starts_anything(tmp_path):
    folder = tmp_path / "in"
    folder.mkdir()
    for name, content in files(folder).items():
        (folder / name).write_bytes(content if isinstance(content, bytes) else content.encode())
    done = subprocess.run([sys.executable, "-m", "tests.app.formats.watched", str(folder)], cwd=ROOT, capture_output=True, text=True,
                          env={**os.environ, "PYTHONDONTWRITEBYTECODE": "1"}, timeout=900)
    assert done.returncode == 0, done.stderr
    told = [json.loads(line) for line in done.stdout.splitlines()]
    assert told == ["read"], told[:5]
