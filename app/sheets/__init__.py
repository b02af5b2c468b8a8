"""Everything to print and cut: pages as data, and the files of a layout."""

from app.sheets.pages import pages
from app.sheets.work import Work, plan_work
from app.sheets.write import write_sheets

__all__ = ["Work", "pages", "plan_work", "write_sheets"]
