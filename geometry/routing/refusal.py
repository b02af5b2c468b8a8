"""Why something cannot be done, as data: one sentence for the maker."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Refusal:
    """`stage` says how far it got before it failed (higher is nearer to success); `reason` is one sentence."""

    stage: int
    reason: str
