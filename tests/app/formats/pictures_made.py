"""Small pictures whose points are known, and pieces of a PNG file."""

import struct
import zlib

import numpy as np
from PIL import Image


def half_dark(width: int = 80, height: int = 60) -> Image.Image:
    """Left half black, right half white."""
    grey = np.full((height, width), 255, np.uint8)
    grey[:, : width // 2] = 0
    return Image.fromarray(grey)


def chunk(kind: bytes, data: bytes) -> bytes:
    """A piece of a PNG file, with its length and its sum."""
    return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))
