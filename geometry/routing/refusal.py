"""Why something cannot be done, as data: one sentence for the maker."""

from __future__ import annotations

from msgspec import Struct


class Refusal(Struct, frozen=True):
    """`stage` says how far it got before it failed (higher is nearer to success); `reason` is one sentence."""

    stage: int
    reason: str
