"""The layout model: what a headstock is before anything is computed from it."""

from geometry.layout.blank import OTHER, Blank, Ear, Side
from geometry.layout.book import (
    NOTHING,
    PIECES,
    Book,
    Bored,
    Clock,
    Done,
    Made,
    Piece,
    Price,
    Reading,
    Remark,
    Shaped,
    Spot,
    Task,
    Time,
)
from geometry.layout.drilled import Worked, cut, drilled, drilling_of, staying, staying_rows, worked
from geometry.layout.hardware import Bore, Button, Footprint, Pattern, Post
from geometry.layout.headstock import FORMAT, Headstock, Note
from geometry.layout.outline import Loop, Node, loop_of, loop_path
from geometry.layout.picture import Picture
from geometry.layout.rates import Rates
from geometry.layout.shop import (
    Accuracy,
    Drill,
    DrillPress,
    GuideBush,
    Margins,
    Rack,
    Route,
    Router,
    RouterBit,
    Template,
    Tool,
)
from geometry.layout.slots import DrawnSlot, Pin, Ramp, Retainer, SingleHole, Slot, StraightSlot, slot_path
from geometry.layout.strings import Nut, String
from geometry.layout.tuners import EdgePlace, EdgeRun, Flat, FreePlace, Place, Row, RowPlace, StraightRun, Tuner
from geometry.layout.validate import feature_ids, validate

__all__ = [
    "FORMAT", "NOTHING", "OTHER", "PIECES", "Accuracy", "Blank", "Book", "Bore", "Bored", "Button", "Clock", "Done", "DrawnSlot", "Drill",
    "DrillPress", "Ear", "EdgePlace", "EdgeRun", "Flat", "Footprint", "FreePlace", "GuideBush", "Headstock", "Loop", "Made", "Margins",
    "Node", "Note", "Nut", "Pattern", "Picture", "Piece", "Pin", "Place", "Post", "Price", "Rack", "Ramp", "Rates",
    "Reading", "Remark", "Retainer", "Route", "Router", "RouterBit", "Row", "RowPlace", "Shaped", "Side", "SingleHole", "Slot", "Spot",
    "StraightRun", "StraightSlot", "String", "Task", "Template", "Time", "Tool", "Tuner", "Worked", "cut", "drilled",
    "drilling_of", "feature_ids", "loop_of", "loop_path", "slot_path", "staying", "staying_rows",
    "validate", "worked",
]
