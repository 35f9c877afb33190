"""Sets of names written as running text."""

from __future__ import annotations


def names(text: str) -> frozenset[str]:
    """The words of a text as a set."""
    return frozenset(text.split())
