"""Pictures of any common kind, read reduced and upright, as the JPEG that a layout carries."""

from __future__ import annotations

import io
import math
import os
import struct
import warnings
from pathlib import Path

import numpy as np
from msgspec import Struct
from PIL import ExifTags, Image, ImageChops, ImageDraw, ImageOps, UnidentifiedImageError

from app.formats.disk_words import why_unread
from app.formats.errors import FormatError
from geometry.layout.picture import MOST_BYTES, MOST_UNPACKED
from geometry.saying import say

LONGEST = 2400
"""Longer side of the picture kept, in points: 0.17 mm a point where it shows 400 mm."""
MOST_POINTS = 120_000_000
"""Larger pictures are refused unless they are JPEG, which is read reduced."""
MOST_JPEG = 178_000_000
LARGEST_FILE = 250_000_000
KINDS = ("JPEG", "PNG", "TIFF", "BMP", "WEBP", "GIF")
"""What is read as a picture. Of the other kinds that the library knows, some start another program or are programs."""
WANTED_BYTES = 1_500_000
ROUGHEST, FINEST = 96.5, 10_000.0
"""Points to the inch between which a scanner works: 72 and 96 are written for screens."""
BY_A_LENS = (ExifTags.Base.ExposureTime, ExifTags.Base.FNumber, ExifTags.Base.FocalLength)
"""Marks that only a camera writes (Exif)"""


class PictureRead(Struct, frozen=True):
    """A picture ready to be kept."""

    jpeg: bytes
    width: int
    height: int
    to_mm: float = 0.0
    """points to one mm of what was scanned, by what the scanner wrote into the file; 0 for photos and where nothing tells"""


def read_picture(path: Path) -> PictureRead:
    """Read a picture file: turned upright by its own mark, on white where it is transparent, longer side at most LONGEST.

    FormatError with one sentence when it is no picture, damaged, or too large.
    """
    path = Path(path)
    try:
        if path.exists() and not path.is_file():
            raise FormatError(say("{path} is no picture that can be read: save it as JPEG or PNG.", path=path.name))
        if path.stat().st_size > LARGEST_FILE:
            raise FormatError(say("{path} is {st_size:.0f} MB: save a smaller picture.",
                                  path=path.name, st_size=path.stat().st_size / 1e6))
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")
            with _Whole(io.FileIO(path)) as file, Image.open(file, formats=KINDS) as opened:
                return _reduced(opened, path.name)
    except FormatError:
        raise
    except MemoryError as error:
        raise FormatError(say("{path} takes more memory to read than there is: save a smaller picture.", path=path.name)) from error
    except UnidentifiedImageError as error:
        raise FormatError(say("{path} is no picture that can be read: save it as JPEG or PNG.",
                              path=path.name)) from error
    except Image.DecompressionBombError as error:
        raise FormatError(say("{path} claims to be far larger than any camera's picture: save a smaller one.",
                              path=path.name)) from error
    except (OSError, ValueError, SyntaxError, EOFError) as error:
        if isinstance(error, OSError) and error.strerror:
            raise FormatError(say("{path} cannot be read: {why}.", path=path.name, why=why_unread(error))) from error
        raise FormatError(say("{path} is damaged: save the picture again.", path=path.name)) from error


class _Whole(io.BufferedReader):
    """A file of which no more is asked than it holds: the library asks for as much as a part of a picture claims to be, and room
    for that would be made first, gigabytes for a file of a hundred bytes."""

    def read(self, size: int | None = -1, /) -> bytes:
        if size is not None and size > io.DEFAULT_BUFFER_SIZE:
            size = min(size, max(0, os.fstat(self.fileno()).st_size - self.tell()))
        return super().read(size)


def grey_of(jpeg: bytes) -> np.ndarray:
    """(height, width) grey levels 0..255 of a kept picture. FormatError when it is damaged."""
    return _points(jpeg, "L")


def colours_of(jpeg: bytes) -> np.ndarray:
    """(height, width, 3) levels of red, green and blue, 0..255, of a kept picture. FormatError when it is damaged."""
    return _points(jpeg, "RGB")


def covered(width: int, height: int, border: np.ndarray) -> np.ndarray:
    """(height, width) of True for the points of a picture within a closed border, (n, 2) in picture coordinates."""
    mask = Image.new("1", (width, height))
    ImageDraw.Draw(mask).polygon([tuple(p) for p in (border - 0.5).tolist()], fill=1)
    return np.asarray(mask)


def _points(jpeg: bytes, mode: str) -> np.ndarray:
    try:
        with Image.open(io.BytesIO(jpeg), formats=("JPEG",)) as opened:
            if opened.width * opened.height > MOST_UNPACKED:
                raise ValueError("larger than any that is kept")
            return np.asarray(opened.convert(mode))
    except (OSError, ValueError, SyntaxError, Image.DecompressionBombError) as error:
        raise FormatError(say("The picture in this layout is damaged: lay it behind the drawing again.")) from error


def _reduced(opened: Image.Image, name: str) -> PictureRead:
    width, height = opened.size
    to_mm = _scanned(opened)
    most = MOST_JPEG if opened.format == "JPEG" else MOST_POINTS
    if width * height > most:
        raise FormatError(say("{name} has {width} x {height} points, more than can be read here: save it with a "
                              "longer side of about {longest} points.",
                              name=name, width=width, height=height, longest=LONGEST))
    if opened.format == "JPEG":
        opened.draft("RGB", (LONGEST, LONGEST))
    upright = ImageOps.exif_transpose(opened)
    if opened.format == "JPEG" and upright.mode == "CMYK" and "adobe" not in opened.info:
        upright = ImageChops.invert(upright)  # the library takes every JPEG of inks for one that keeps them inverted, as that mark says
    if upright.mode in ("RGBA", "LA", "PA") or "transparency" in upright.info:
        clear = upright.convert("RGBA")
        upright = Image.new("RGB", clear.size, "white")
        upright.paste(clear, mask=clear.getchannel("A"))
    elif upright.mode.startswith("I") or upright.mode == "F":
        upright = _levelled(upright)
    upright = upright.convert("RGB")
    upright.thumbnail((LONGEST, LONGEST), Image.Resampling.LANCZOS, reducing_gap=3.0)
    return PictureRead(_squeezed(upright, name), *upright.size, to_mm * max(upright.size) / max(width, height))


def _scanned(opened: Image.Image) -> float:
    """Points to one mm of a picture as it is in its file; 0 where that tells none, tells what is written for screens (ROUGHEST
    or less), or comes from a camera, to which the points to the inch mean nothing."""
    try:
        across, along = (float(one) for one in opened.info.get("dpi", (0, 0)))
        photo = any(tag in opened.getexif().get_ifd(ExifTags.IFD.Exif) for tag in BY_A_LENS)
    except (TypeError, ValueError, ZeroDivisionError, SyntaxError, OSError, KeyError, struct.error):
        return 0.0  # a damaged mark tells nothing; the picture may be whole
    if photo or not (ROUGHEST < across < FINEST and math.isclose(across, along, rel_tol=1e-3)):
        return 0.0
    return across / 25.4


def _levelled(deep: Image.Image) -> Image.Image:
    """A picture of 16 or 32 bits a point, its own darkest to lightest spread over 0..255; points that are no numbers are black."""
    values = np.asarray(deep, dtype=float)
    numbers = values[np.isfinite(values)]
    low, high = (float(numbers.min()), float(numbers.max())) if numbers.size else (0.0, 0.0)
    values = np.nan_to_num(values, nan=low, posinf=high, neginf=low)
    return Image.fromarray(((values - low) * (255.0 / max(high - low, 1e-9))).astype(np.uint8))


def _squeezed(picture: Image.Image, name: str) -> bytes:
    for quality in (88, 75, 60, 40):
        kept = io.BytesIO()
        picture.save(kept, "JPEG", quality=quality)
        if kept.tell() <= WANTED_BYTES:
            return kept.getvalue()
    if kept.tell() > MOST_BYTES:
        raise FormatError(say("{name} cannot be made small enough to keep: use a smaller picture.", name=name))
    return kept.getvalue()
