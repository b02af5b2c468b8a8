"""Everything to print and cut: pages as data, and the files of a layout."""

from app.sheets.pages import pages
from app.sheets.write import write_sheets

__all__ = ["pages", "write_sheets"]
