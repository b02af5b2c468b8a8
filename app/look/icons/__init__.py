"""The program's own signs for tools and actions, drawn on one grid; `icon` gives them for buttons and menus."""

from app.look.icons.icon import button_icon, menu_icon
from app.look.icons.shapes import SHAPES

__all__ = ["SHAPES", "button_icon", "menu_icon"]
