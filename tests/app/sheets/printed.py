"""Pages of the specimens, made once for all tests, and what is printed on them."""

from functools import lru_cache
from pathlib import Path

from app.formats.headstock import read
from app.formats.paper import Page
from app.formats.pdf_out import pdf_bytes
from app.sheets import Work, pages, plan_work
from geometry.drawing import Label
from tests.app.formats.out.pdf_reading import open_pdf
from tests.app.sheets.specimens import demo, large
from tests.geometry.drawing.specimens import plain_head

SLOTTED = Path("samples/slotted-three-a-side.headstock.json")
LAYOUTS = {"demo": demo, "large": large, "plain": plain_head, "slotted": lambda: read(SLOTTED)}


@lru_cache(maxsize=8)
def layout(name: str):
    return LAYOUTS[name]()


@lru_cache(maxsize=8)
def work(name: str) -> Work:
    return plan_work(layout(name))


@lru_cache(maxsize=32)
def made(name: str, paper: str = "A4") -> tuple[Page, ...]:
    return tuple(pages(layout(name), paper, (), work(name)))


@lru_cache(maxsize=8)
def opened(name: str, paper: str = "A4"):
    """The pages as a PDF in PDFium."""
    return open_pdf(pdf_bytes(made(name, paper), name))


def words(page: Page) -> str:
    """Everything that is said on a page."""
    return " ".join(m.text for placed in page.content for m in placed.drawing if isinstance(m, Label))


def section(name: str, title: str, paper: str = "A4") -> str:
    """Everything that is said on the pages of a title, which may share their last one with others."""
    return " ".join(words(page) for page in made(name, paper) if title in page.sections)
