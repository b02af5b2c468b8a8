"""The sheets as they will be printed, page by page: the same display lists, painted by the same code."""

from app.preview.preview import SheetPreview

__all__ = ["SheetPreview"]
