"""Pictures as they come: turned, huge, transparent, damaged."""

import io
import struct
import zlib

import numpy as np
import pytest
from PIL import ExifTags, Image

from app.formats import picture_in
from app.formats.errors import FormatError
from app.formats.picture_in import LONGEST, grey_of, read_picture
from geometry.layout.picture import MOST_BYTES
from tests.app.formats.pictures_made import chunk, half_dark


def test_the_mark_of_the_camera_turns_the_picture_upright(tmp_path):
    """Orientation 6 (EXIF 2.3): the picture's row 0 is the right side as seen, so left becomes top."""
    file = tmp_path / "turned.jpg"
    exif = Image.Exif()
    exif[0x0112] = 6
    half_dark(80, 40).save(file, exif=exif, quality=95)
    read = read_picture(file)
    assert (read.width, read.height) == (40, 80)
    grey = grey_of(read.jpeg)
    assert grey[:35].mean() < 10 and grey[45:].mean() > 245


@pytest.mark.parametrize("kind", ["jpg", "png"])
def test_a_large_picture_is_kept_reduced(tmp_path, kind):
    file = tmp_path / f"large.{kind}"
    half_dark(6000, 3000).save(file)
    read = read_picture(file)
    assert (read.width, read.height) == (LONGEST, LONGEST // 2)
    assert len(read.jpeg) < MOST_BYTES
    assert Image.open(io.BytesIO(read.jpeg)).size == (read.width, read.height)
    # The edge stays where it was: half way across, to a point.
    grey = grey_of(read.jpeg)
    assert grey[600, LONGEST // 2 - 3] < 40 and grey[600, LONGEST // 2 + 3] > 215


def test_noise_is_squeezed_under_the_cap(tmp_path):
    file = tmp_path / "noise.png"
    Image.fromarray(np.random.default_rng(1).integers(0, 256, (1800, 2400, 3), dtype=np.uint8)).save(file, compress_level=0)
    assert len(read_picture(file).jpeg) <= MOST_BYTES


def test_what_is_transparent_is_white(tmp_path):
    file = tmp_path / "clear.png"
    Image.new("RGBA", (60, 60), (0, 0, 0, 0)).save(file)
    assert grey_of(read_picture(file).jpeg).min() > 250


def test_sixteen_bits_are_levelled(tmp_path):
    file = tmp_path / "deep.tif"
    Image.fromarray(np.asarray(half_dark(80, 60), np.uint16) * 40 + 3000).save(file)
    grey = grey_of(read_picture(file).jpeg)
    assert grey[:, :30].max() < 20 and grey[:, 50:].min() > 235


def test_a_bomb_is_refused_before_it_is_unpacked(tmp_path):
    """A PNG whose head claims 60000 x 60000 points, in some hundred bytes."""
    file = tmp_path / "bomb.png"
    file.write_bytes(b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", struct.pack(">IIBBBBB", 60000, 60000, 8, 2, 0, 0, 0))
                     + chunk(b"IDAT", zlib.compress(bytes(1000))) + chunk(b"IEND", b""))
    with pytest.raises(FormatError, match="far larger|more than can be read"):
        read_picture(file)


def test_what_is_too_large_is_not_told_as_damage(tmp_path, monkeypatch):
    """It is sound, and what helps is a smaller picture."""
    file = tmp_path / "large.png"
    half_dark(80, 40).save(file)
    monkeypatch.setattr(picture_in, "MOST_POINTS", 3000)
    with pytest.raises(FormatError, match="has 80 x 40 points, more than can be read here"):
        read_picture(file)
    monkeypatch.setattr(picture_in, "LARGEST_FILE", 50)
    with pytest.raises(FormatError, match="MB: save a smaller picture"):
        read_picture(file)
    with pytest.raises(FormatError, match="is no picture that can be read"):
        read_picture(tmp_path)


def test_a_damaged_picture_is_a_sentence(tmp_path):
    whole, cut = io.BytesIO(), tmp_path / "cut.jpg"
    Image.fromarray(np.random.default_rng(2).integers(0, 256, (300, 300), dtype=np.uint8)).save(whole, "JPEG")
    cut.write_bytes(whole.getvalue()[: len(whole.getvalue()) // 2])
    with pytest.raises(FormatError, match="is damaged"):
        read_picture(cut)
    with pytest.raises(FormatError, match="cannot be read"):
        read_picture(tmp_path / "away.jpg")


def written(path, size=(600, 400), **more):
    Image.new("RGB", size, "white").save(path, **more)
    return read_picture(path)


@pytest.mark.parametrize("ending", ["png", "jpg", "tif"])
def test_a_scan_tells_its_points_to_the_mm(tmp_path, ending):
    assert written(tmp_path / f"scan.{ending}", dpi=(254, 254)).to_mm == pytest.approx(10, rel=1e-3)


def test_of_a_reduced_scan_they_are_those_of_what_is_kept(tmp_path):
    read = written(tmp_path / "large.jpg", (2 * LONGEST, LONGEST), dpi=(508, 508))
    assert read.width == LONGEST and read.to_mm == pytest.approx(10, rel=1e-3)


def test_no_size_is_made_of_points_for_screens_of_two_kinds_or_of_a_camera(tmp_path):
    exif = Image.Exif()
    exif.get_ifd(ExifTags.IFD.Exif)[ExifTags.Base.ExposureTime] = 0.01
    for name, more in (("none", {}), ("screen", {"dpi": (96, 96)}), ("fax", {"dpi": (204, 98)}), ("photo", {"dpi": (300, 300), "exif": exif})):
        assert written(tmp_path / f"{name}.jpg", **more).to_mm == 0, name
