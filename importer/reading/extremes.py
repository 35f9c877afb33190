"""Rows and columns of the lowest and highest values of the batches of a table, which are no limits."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from importer.reading.numbers import read_number
from importer.reading.values import split_value

# So many of the figures have to be those of the batches; one may have been rounded, or be a limit by chance.
SHARE = 0.8
LEAST = 2


def sums_up(role: str, pairs: Iterable[tuple[str, Sequence[str]]]) -> bool:
    """True where the figures of a row or column are the lowest ("min") or highest ("max") of those of the batches.

    ``pairs`` are each such figure and those of the batches, as printed. A limit equals the worst batch by chance only,
    and hardly ever for one parameter after the other.
    """
    total = hits = 0
    for text, others in pairs:
        figure, values = _number(text), [value for other in others if (value := _number(other)) is not None]
        if figure is None or len(values) < LEAST:
            continue
        total += 1
        hits += figure == (min(values) if role == "min" else max(values))
    return total >= LEAST and hits >= SHARE * total


def _number(text: str) -> float | None:
    number = read_number(split_value(text)[0], None)
    return number.value if number is not None and number.kind == "number" and number.bound is None else None
