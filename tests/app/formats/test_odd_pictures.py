"""Pictures of odd kinds: taken as they are seen, or refused with a sentence, soon and in little room. Against hand-made pixels."""

import io
import struct
import tracemalloc
import zlib

import numpy as np
import pytest
from PIL import Image, ImageCms

from app.formats import picture_in
from app.formats.errors import FormatError
from app.formats.picture_in import LONGEST, grey_of, read_picture
from tests.app.formats.pictures_made import chunk, half_dark
from tests.spent import within


def halves(file) -> tuple[float, float]:
    """Mean grey of the left and of the right, off the edge between them."""
    grey = grey_of(read_picture(file).jpeg)
    return float(grey[:, :30].mean()), float(grey[:, 50:].mean())


@pytest.mark.parametrize("kind", ["gif", "png", "webp"])
def test_of_a_moving_picture_the_first_is_taken(tmp_path, kind):
    file = tmp_path / f"moving.{kind}"
    others = [Image.new("L", (80, 60), 128).convert("RGB") for _ in range(3)]
    half_dark().convert("RGB").save(file, save_all=True, append_images=others, duration=50, loop=0, **({"lossless": True} if kind == "webp" else {}))
    with Image.open(file) as made:
        assert getattr(made, "n_frames", 1) >= 2
    dark, light = halves(file)
    assert dark < 15 and light > 240


@pytest.mark.parametrize("marked", [True, False])
def test_a_picture_for_the_press_is_seen_as_it_is_printed(tmp_path, marked):
    """Four inks: none is white, all of the black one is black. A mark "Adobe" says that 255 stands for no ink, else 0 does
    (the mark: from memory)."""
    file = tmp_path / "press.jpg"
    ink = np.zeros((60, 80, 4), np.uint8)
    ink[:, :40, 3] = 255
    out = io.BytesIO()
    # The library always writes the mark, and inverts.
    Image.frombytes("CMYK", (80, 60), (ink if marked else 255 - ink).tobytes()).save(out, "JPEG", quality=95)
    data = out.getvalue()
    at = data.index(b"\xff\xee\x00\x0eAdobe")
    file.write_bytes(data if marked else data[:at] + data[at + 16:])
    dark, light = halves(file)
    assert dark < 25 and light > 235


@pytest.mark.parametrize("kind", ["I;16", "I;16B", "I", "F"])
def test_deep_pictures_of_every_kind_are_levelled(tmp_path, kind):
    file = tmp_path / "deep.tif"
    values = np.asarray(half_dark(), np.float64) * 100 + 500
    dtype = {"I;16": "<u2", "I;16B": ">u2", "I": "<i4", "F": "<f4"}[kind]
    Image.frombytes(kind, (80, 60), values.astype(dtype).tobytes()).save(file)
    dark, light = halves(file)
    assert dark < 15 and light > 240


def test_a_deep_picture_with_points_that_are_no_numbers_is_taken_or_refused(tmp_path):
    values = np.asarray(half_dark(), np.float32).copy()
    values[0, 0], values[1, 1], values[2, 2] = np.nan, np.inf, -np.inf
    file = tmp_path / "broken.tif"
    Image.frombytes("F", (80, 60), values.tobytes()).save(file)
    dark, light = halves(file)
    assert dark < 15 and light > 240


def test_of_a_file_of_many_pages_the_first_is_taken(tmp_path):
    file = tmp_path / "pages.tif"
    half_dark().save(file, save_all=True, append_images=[Image.new("L", (400, 900), 128) for _ in range(40)])
    read = read_picture(file)
    assert (read.width, read.height) == (80, 60) and halves(file)[0] < 15


def exif(orientation: object = None, tail: bytes = b"", offset: int = 8) -> bytes:
    """A mark of the camera in the order of EXIF 2.3: head, one directory, one entry; made to be wrong by its arguments."""
    entry = struct.pack("<HHI", 0x0112, 3, 1) + (struct.pack("<HH", orientation, 0) if isinstance(orientation, int) else b"\xff\xff\xff\xff")
    return b"Exif\x00\x00II*\x00" + struct.pack("<I", offset) + struct.pack("<H", 1) + entry + struct.pack("<I", 0) + tail


HOSTILE = {
    "a direction that there is not": exif(77), "no direction": exif(None), "a directory outside the mark": exif(6, offset=60_000),
    "a directory that is itself the next": exif(1)[:-4] + struct.pack("<I", 8), "cut off": exif(6)[:14], "only its name": b"Exif\x00\x00",
    "as large as a mark may be": exif(6, tail=bytes(60_000)), "sixty thousand entries": b"Exif\x00\x00II*\x00" + struct.pack("<IH", 8, 65_535),
    "a long text": exif(6, tail=b"\xff" * 3000), "another name": b"http://ns.adobe.com/xap/1.0/\x00<x:xmpmeta xmlns:x='a' ><!ENTITY e SYSTEM 'file:///etc/passwd'>",
}


@pytest.mark.parametrize("mark", HOSTILE.values(), ids=HOSTILE)
@pytest.mark.parametrize("kind", ["jpg", "png", "webp"])
def test_a_hostile_mark_of_the_camera_costs_at_most_the_turning(tmp_path, mark, kind):
    file = tmp_path / f"marked.{kind}"
    half_dark().convert("RGB").save(file, exif=mark, quality=95)
    with within(1):
        try:
            read = read_picture(file)
        except FormatError as error:
            assert str(error).startswith("marked.") and str(error).endswith(".")
        else:
            assert {read.width, read.height} == {80, 60}


@pytest.mark.parametrize("kind", [b"iCCP", b"zTXt", b"iTXt"])
def test_words_and_profiles_that_unpack_to_gigabytes_are_not_unpacked(tmp_path, kind):
    packed = zlib.compress(bytes(60_000_000), 1)
    head = {b"iCCP": b"name\x00\x00", b"zTXt": b"name\x00\x00", b"iTXt": b"name\x00\x01\x00\x00\x00"}[kind]
    out = io.BytesIO()
    half_dark().save(out, "PNG")
    data = out.getvalue()
    file = tmp_path / "packed.png"
    file.write_bytes(data[:33] + chunk(kind, head + packed) + data[33:])
    tracemalloc.start()
    try:
        assert halves(file)[0] < 15
    except FormatError as error:
        assert str(error).startswith("packed.png") and str(error).endswith(".")
    _, most = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    assert most < 15e6


def test_a_broken_colour_profile_is_no_matter(tmp_path):
    file = tmp_path / "profile.png"
    whole = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()
    half_dark().save(file, icc_profile=whole[:200] + b"\xff" * 100)
    assert halves(file)[0] < 15


def test_a_moving_bomb_is_not_played(tmp_path):
    """A GIF of a hundred thousand pictures of one byte each: only the first is looked at."""
    out = io.BytesIO()
    half_dark().convert("P").save(out, "GIF")
    data = out.getvalue()
    frame = b"\x2c" + struct.pack("<HHHHB", 0, 0, 1, 1, 0) + b"\x02\x02\x44\x01\x00"
    file = tmp_path / "bomb.gif"
    file.write_bytes(data[:-1] + frame * 100_000 + b"\x3b")
    with within(1):
        assert halves(file)[0] < 15


@pytest.mark.parametrize(("size", "kind"), [((1, 1), "png"), ((1, 20_000), "png"), ((20_000, 1), "jpg")])
def test_thin_pictures_stay_at_least_a_point_wide(tmp_path, size, kind):
    file = tmp_path / f"thin.{kind}"
    Image.new("L", size, 200).save(file)
    read = read_picture(file)
    assert min(read.width, read.height) >= 1 and max(read.width, read.height) <= LONGEST
    assert grey_of(read.jpeg).shape == (read.height, read.width)


def test_a_picture_in_a_layout_that_unpacks_to_gigabytes_is_refused():
    out = io.BytesIO()
    Image.new("L", (8000, 8000), 90).save(out, "JPEG")
    assert len(out.getvalue()) < 1_500_000
    with pytest.raises(FormatError, match="damaged"):
        grey_of(out.getvalue())


def claims(kind: str, claimed: int) -> bytes:
    """A small picture of which one part claims to have so many bytes."""
    out = io.BytesIO()
    half_dark().save(out, kind)
    data = bytearray(out.getvalue())
    at, order = {"PNG": (data.find(b"IDAT") - 4, ">I"), "WEBP": (data.find(b"VP8") + 4, "<I"), "BMP": (2, "<I"),
                 "TIFF": (struct.unpack_from("<I", data, 4)[0] + 2 + 4, "<I")}[kind]
    struct.pack_into(order, data, at, claimed)
    return bytes(data)


@pytest.mark.parametrize("claimed", [0x0F000000, 0xE9000000])
@pytest.mark.parametrize("kind", ["PNG", "WEBP", "BMP", "TIFF"])
def test_no_room_is_made_for_what_a_part_only_claims_to_hold(tmp_path, kind, claimed):
    """The library asks the file for as many bytes as a part claims; a file that makes room for them first takes gigabytes."""
    file = tmp_path / "claims"
    file.write_bytes(claims(kind, claimed))
    tracemalloc.start()
    try:
        read_picture(file)
    except FormatError as error:
        assert str(error).startswith("claims ")
    _, most = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    assert most < 15e6


def test_a_picture_for_which_there_is_no_memory_is_told_as_that(tmp_path, monkeypatch):
    file = tmp_path / "huge.png"
    half_dark().save(file)

    def full(*_):
        raise MemoryError
    monkeypatch.setattr(picture_in, "_reduced", full)
    with pytest.raises(FormatError, match=r"^huge\.png takes more memory to read than there is"):
        read_picture(file)
