"""The job book: hours and money, planned against actual, two pieces of one layout, and what the next job will take."""

from geometry.book.edits import (
    add_remark,
    drop_timer,
    minutes_of,
    put_price,
    put_reading,
    put_remark,
    read_amount,
    read_minutes,
    remove_price,
    remove_reading,
    remove_remark,
    running,
    set_minutes,
    start,
    stop,
)
from geometry.book.money import cost, money_words, spent_on, total_cost
from geometry.book.planned import CHANGING, Line, Sum, factors_of, lines, rate_of, tasks, total
from geometry.book.rates import Correction, Learned, corrected
from geometry.book.remarks import open_remarks, pinned_words

__all__ = ["CHANGING", "Correction", "Learned", "Line", "Sum", "add_remark", "corrected", "cost", "drop_timer",
           "factors_of", "lines", "minutes_of", "money_words", "open_remarks", "pinned_words", "put_price", "put_reading",
           "put_remark", "rate_of", "read_amount", "read_minutes", "remove_price", "remove_reading", "remove_remark", "running", "set_minutes", "spent_on", "start", "stop", "tasks",
           "total", "total_cost"]
