"""The layout that is open: its history, its file, what is held. No widgets."""

from app.document.document import Document
from app.document.history import History

__all__ = ["Document", "History"]
