"""`python3 -m tests.program_icon`: make the sizes of the program's picture anew from its SVG masters."""

from __future__ import annotations

import io
import os

from app.setup import start


def painted(size: int) -> bytes:
    """The picture at a size as the bytes of a PNG."""
    from PySide6.QtCore import QBuffer, QIODevice, QRectF, Qt
    from PySide6.QtGui import QImage, QPainter
    from PySide6.QtSvg import QSvgRenderer

    from app.look.program_sizes import FOLDER

    master = FOLDER / ("pegwright-small.svg" if size < 32 else "pegwright.svg")
    image = QImage(size, size, QImage.Format.Format_ARGB32)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    QSvgRenderer(str(master)).render(painter, QRectF(0, 0, size, size))
    painter.end()
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    image.save(buffer, "PNG")
    return bytes(buffer.data())


def main() -> None:
    """Write the PNG files, and the containers that Windows and macOS want."""
    from PIL import Image
    from PySide6.QtGui import QGuiApplication

    from app.look.program_sizes import FOLDER, SIZES, png

    application = QGuiApplication.instance() or QGuiApplication([])
    for size in SIZES:
        png(size).write_bytes(painted(size))
    sides = {size: Image.open(io.BytesIO(png(size).read_bytes())) for size in SIZES}
    in_ico = [size for size in SIZES if size <= 256]
    sides[256].save(FOLDER / "pegwright.ico", sizes=[(size, size) for size in in_ico],
                    append_images=[sides[size] for size in in_ico if size != 256])
    in_icns = [size for size in SIZES if size in (16, 32, 64, 128, 256, 512)]
    sides[512].save(FOLDER / "pegwright.icns", append_images=[sides[size] for size in in_icns if size != 512])
    del application


if __name__ == "__main__":
    start.ensure(["app"])
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    main()
