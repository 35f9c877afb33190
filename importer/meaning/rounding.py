"""How results are written: never finer than they are known, never coarser than a reader needs."""

from __future__ import annotations

from math import floor, isfinite, log10


def _order(value: float) -> int:
    return floor(log10(abs(value))) if value else 0


def round_exact(value: float, decimals: int = 0) -> float:
    """At least two decimals, at least four significant digits and at least ``decimals``, whichever is finest."""
    if not isfinite(value):
        return value
    return round(round(value, 12), max(2, decimals, 3 - _order(value)))


def round_to_spread(value: float, spread: float) -> float:
    """To a tenth of the spread or coarser: 42.75 ± 2.5 is 42.8."""
    if not isfinite(value) or spread <= 0:
        return round_exact(value)
    return round(round(value, 12), max(0, -_order(spread / 10)))


def round_spread(spread: float) -> float:
    """Two significant digits."""
    return round(spread, 1 - _order(spread)) if spread else 0.0
