"""The job book: hours and money, planned against actual, two pieces of one layout, and what the next job will take."""

from geometry.at_need import fetched

_HOMES: dict[str, tuple[str, ...]] = {
    "done": ("begun_steps", "done_steps", "made_by", "not_so_deep", "open_again", "otherwise", "tick_off", "ticked"),
    "edits": ("add_remark", "begin_anew", "drop_timer", "minutes_of", "put_price", "put_reading", "put_remark", "read_amount",
              "read_minutes", "remove_price", "remove_reading", "remove_remark", "running", "set_minutes",
              "start", "stop"),
    "money": ("cost", "money_words", "spent_on", "total_cost"),
    "planned": ("CHANGING", "Line", "Sum", "factors_of", "lines", "task_of", "tasks", "total"),
    "rates": ("Correction", "Learned", "corrected"),
    "remarks": ("open_remarks", "pinned_words"),
}
"""File to the names that others may use."""

__all__ = sorted(name for names in _HOMES.values() for name in names)
__getattr__ = fetched(__name__, _HOMES)
